package pair

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// leastBins is the least number of bins for lengths, exactly: for each set of
// them the fewest bins, and of those the least room taken in the last one.
func leastBins(sizes []int64, bin, kerf int64) int {
	type state struct {
		bins int
		last int64
	}
	best := make([]state, 1<<len(sizes))
	for mask := 1; mask < len(best); mask++ {
		best[mask] = state{math.MaxInt, 0}
		for i, s := range sizes {
			if mask>>i&1 == 0 {
				continue
			}
			b := best[mask&^(1<<i)]
			if b.bins > 0 && b.last+kerf+s <= bin {
				b.last += kerf + s
			} else {
				b = state{b.bins + 1, s}
			}
			if b.bins < best[mask].bins || b.bins == best[mask].bins && b.last < best[mask].last {
				best[mask] = b
			}
		}
	}
	return best[len(best)-1].bins
}

// Strips across the blank against the exact answer of one dimension, with up to
// six strips to a blank. Few different sizes make for large groups.
func TestStripsAgainstExactBins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Problem{W: 100, H: 30, Kerf: rapid.Int64Range(0, 2).Draw(t, "kerf"), Budget: 1000000}
		size := rapid.Int64Range(15, rapid.SampledFrom([]int64{35, 50, 70}).Draw(t, "most"))
		stock := rapid.SliceOfN(size, 2, 8).Draw(t, "stock")
		var sizes []int64
		for range rapid.IntRange(1, 12).Draw(t, "n") {
			w := rapid.SampledFrom(stock).Draw(t, "w")
			sizes = append(sizes, w)
			p.Pieces = append(p.Pieces, Piece{W: w, H: 30})
		}
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Fatal(err)
		}
		if want := leastBins(sizes, p.W, p.Kerf); r.Blanks != want || r.Lower > want || r.Complete && r.Lower != want {
			t.Fatalf("%d blanks, lower %d by %s, exact %d: %v", r.Blanks, r.Lower, r.Proof, want, sizes)
		}
	})
}

// The standing example of first fit decreasing at its worst (11/9, Johnson 1973,
// from memory): 6 x (51+26+23) and 3 x (27+27+23+23) fill nine blanks of 100
// without waste, and the heuristic takes eleven.
func TestWhereFirstFitFails(t *testing.T) {
	p := read("100x10 6*51x10 6*27x10 6*26x10 12*23x10")
	var sizes []int64
	for _, pc := range p.Pieces {
		sizes = append(sizes, pc.W)
	}
	r := Pack(p)
	if err := check(p, r); err != nil {
		t.Fatal(err)
	}
	if heuristic := firstFitDecreasing(sizes, 100, 0); r.Blanks != 9 || r.Lower != 9 || heuristic != 11 {
		t.Errorf("%d blanks, lower %d by %s; first fit decreasing %d", r.Blanks, r.Lower, r.Proof, heuristic)
	}
}

// The best weights of small programs lie where as many constraints are tight as
// there are kinds; trying all such places is the check.
func TestWeightsAgainstEveryVertex(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows, need := drawProgram(t)
		y, _, ok := weights(rows, need, 1000)
		if !ok {
			t.Fatal("not finished")
		}
		got := 0.0
		for k, d := range need {
			got += y[k] * float64(d)
		}
		if want := bestVertex(rows, need); math.Abs(got-want) > 1e-6 {
			t.Fatalf("weights %v give %v, every vertex %v", y, got, want)
		}
	})
}

// drawProgram draws two kinds, each in some pattern.
func drawProgram(t *rapid.T) (rows [][]float64, need []int) {
	count := rapid.Float64Range(0, 4)
	for range rapid.IntRange(1, 6).Draw(t, "rows") {
		rows = append(rows, []float64{math.Floor(count.Draw(t, "a")), math.Floor(count.Draw(t, "b"))})
	}
	rows = append(rows, []float64{1, 0}, []float64{0, 1})
	n := rapid.IntRange(1, 9)
	return rows, []int{n.Draw(t, "need a"), n.Draw(t, "need b")}
}

// bestVertex tries each crossing of two lines of the program (Cramer's rule).
func bestVertex(rows [][]float64, need []int) (best float64) {
	lines := [][3]float64{{1, 0, 0}, {0, 1, 0}}
	for _, r := range rows {
		lines = append(lines, [3]float64{r[0], r[1], 1})
	}
	for _, l := range lines {
		for _, m := range lines {
			det := l[0]*m[1] - l[1]*m[0]
			if det == 0 {
				continue
			}
			x, y := (l[2]*m[1]-l[1]*m[2])/det, (l[0]*m[2]-l[2]*m[0])/det
			if feasible(rows, x, y) {
				best = max(best, x*float64(need[0])+y*float64(need[1]))
			}
		}
	}
	return best
}

func feasible(rows [][]float64, x, y float64) bool {
	const slack = 1e-9 // rounding of quotients of numbers below 100
	for _, r := range rows {
		if r[0]*x+r[1]*y > 1+slack {
			return false
		}
	}
	return x >= -slack && y >= -slack
}
