package lsq

import (
	"math"
	"testing"
)

var fourCorners = Outline{Corners: 4}

// Set A: braced quadrilateral printed in ISPRS XVII Congress 1992, Part B3 (Zaki, El Kady, Ahmed), after Laurila, Moffitt
// or Mikhail. The readings are published; corrections, s0 and adjusted values are computed from them for equal weights.
// The paper's own pairing of elements is kept only as far as X2 and X5 are the diagonals, the one way in which it closes.
func TestPublishedBracedQuadrilateral(t *testing.T) {
	obs := readings(t, "B-C 1341.785, B-D 2775.364, A-B 2167.437, C-D 1937.887, A-C 2173.715, D-A 1511.014", 0.010)
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	corrections := []float64{-3.513, 6.183, -4.129, -4.925, 4.724, -2.794}
	adjusted := []float64{1341.78149, 2775.37018, 2167.43287, 1937.88207, 2173.71972, 1511.01121}
	for i, o := range obs {
		near(t, "correction in mm of "+pairs(obs, []int{i}), res.Residuals[i]*1000, corrections[i], 0.0006)
		near(t, "adjusted "+pairs(obs, []int{i}), computed(o, res.Points), adjusted[i], 0.000006)
	}
	near(t, "s0 in mm", res.S0*10, 11.05, 0.006)
	near(t, "C-D from the others less measured", res.ClosingErrors[3], -0.0248, 0.00006)
	if res.Freedom != 1 || !res.Equal {
		t.Errorf("freedom %d, equal %v: want 1, true", res.Freedom, res.Equal)
	}
}

// Set B: surveying textbook, chapter Trilateration, example 3.3, p. 53 (read in a text corpus). The readings are
// published; the corrections, the misclosure and the area are computed from them.
func TestPublishedTrilateration(t *testing.T) {
	obs := readings(t, "A-B 1525.456, B-C 2176.945, C-D 1697.435, D-A 2401.435, A-C 3073.845, B-D 2483.115", 0.25)
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	for i, mm := range []float64{81.03, 112.80, 67.22, 97.48, -142.23, -112.86} {
		near(t, "correction in mm of "+pairs(obs, []int{i}), res.Residuals[i]*1000, mm, 0.006)
	}
	near(t, "s0 in mm", res.S0*250, 257, 0.6)
	near(t, "C-D from the others less measured, first order", res.ClosingErrors[2], 0.986, 0.002)
	near(t, "area by shoelace", shoelace(res.Points), 3578755.21, 0.006)
	near(t, "area after Bretschneider", bretschneider(obs, res.Points), 3578755.21, 0.006)
}

// bretschneider is the area of a quadrilateral from its sides a b c d and diagonals p q:
// K = 1/4 sqrt(4 p2 q2 - (b2 + d2 - a2 - c2)2).
func bretschneider(obs []Observation, at []Point) float64 {
	var q [6]float64
	for i, o := range obs {
		q[i] = computed(o, at) * computed(o, at)
	}
	f := q[1] + q[3] - q[0] - q[2]
	return math.Sqrt(4*q[4]*q[5]-f*f) / 4
}

func TestBretschneiderOfTheTest(t *testing.T) { // 3 x 4 rectangle, p = q = 5: K = 12
	at := points(t, "0,0 3,0 3,4 0,4")
	near(t, "area", bretschneider(measured(at, "AB BC CD DA AC BD", 1), at), 12, 1e-12)
}

// Set C: a room of 2400 x 1800 mm, corrections computed.
func TestRoomOfSixReadings(t *testing.T) {
	obs := readings(t, "A-B 2400, B-C 1802, C-D 2397, D-A 1799, A-C 3000, B-D 2999", 1)
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	for i, mm := range []float64{0.16, 0.12, 0.16, 0.12, -0.20, -0.20} {
		near(t, "correction of "+pairs(obs, []int{i}), res.Residuals[i], mm, 0.006)
	}
}

// The redundancy numbers of a rectangle, by hand: the one condition has the coefficients of a unit cosine for each side
// and -1 for each diagonal, so a side a has (a/d)^2 and a diagonal 1 of the sum 4. For 3 x 4: sides 9/25/4 and 16/25/4.
func TestRedundancyOfRectangle(t *testing.T) {
	obs := measured(points(t, "0,0 3,0 3,4 0,4"), "AB BC CD DA AC BD", 0.01)
	res := mustAdjust(t, Problem{Observations: obs, Outline: fourCorners})
	for i, r := range []float64{0.09, 0.16, 0.09, 0.16, 0.25, 0.25} {
		near(t, "redundancy of "+pairs(obs, []int{i}), res.Redundancy[i], r, 1e-9)
	}
}
