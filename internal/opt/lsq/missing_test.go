package lsq

import (
	"testing"
)

func TestTooFewReadings(t *testing.T) {
	for _, c := range []struct {
		what, readings string
		corners        int
		missing        int
		movable        string
		pairs, enough  string
	}{
		{"four sides", "A-B 70, B-C 96, C-D 71, D-A 95", 4, 1, "CD", "A-C B-D", ""},
		{"a tail of one", "A-B 70, B-C 96, C-A 119, C-D 50", 0, 1, "D", "", ""},
		{"two triangles at a point", "A-B 70, B-C 96, C-A 119, C-D 50, D-E 60, E-C 40", 0, 1, "DE", "", ""},
		{"a point with nothing", "A-B 70, B-C 96, C-A 119, B-D 80, B-E 9, E-C 93", 0, 1, "D", "", ""},
		{"five sides", "A-B 70, B-C 70, C-D 70, D-E 70, E-A 70", 5, 2, "CDE", "A-C A-D B-D B-E C-E", ""},
		{"one side of four points", "A-B 70, C-D 50", 0, 3, "CD", "", ""},
	} {
		obs := readings(t, c.readings, 0.1)
		_, v := Adjust(Problem{Observations: obs, Outline: Outline{Corners: c.corners}})
		if v.Outcome != TooFew || v.Missing != c.missing || names(v.Movable) != c.movable {
			t.Errorf("%s: %+v, want %d missing, %s movable", c.what, v, c.missing, c.movable)
		}
		if c.pairs != "" && !samePairs(v.Pairs, c.pairs) {
			t.Errorf("%s: pairs %s, want %s", c.what, pairList(v.Pairs), c.pairs)
		}
		if len(v.Enough) != c.missing {
			t.Errorf("%s: enough %s, want %d", c.what, pairList(v.Enough), c.missing)
		}
	}
}

func samePairs(got []Pair, want string) bool {
	if len(got) != (len(want)+1)/4 {
		return false
	}
	for _, p := range got {
		if !contains(want, pairList([]Pair{p})) {
			return false
		}
	}
	return true
}

func contains(list, one string) bool {
	for i := 0; i+3 <= len(list); i += 4 {
		if list[i:i+3] == one {
			return true
		}
	}
	return false
}

// A point on the line between two others can move aside however well its distances along the line are known; a reading
// from off the line holds it.
func TestPointOnALine(t *testing.T) {
	obs := readings(t, "A-B 200, A-C 150, B-C 250, A-D 100, D-B 100", 0.1)
	_, v := Adjust(Problem{Observations: obs})
	if v.Outcome != TooFew || names(v.Movable) != "D" || pairList(v.Pairs) != "C-D" {
		t.Errorf("%+v", v)
	}
	obs = append(obs, readings(t, "C-D 180.2776", 0.1)...)
	res := mustAdjust(t, Problem{Observations: obs})
	near(t, "x of D", res.Points[3].X, 100, 0.001)
	near(t, "y of D", res.Points[3].Y, 0, 0.001)
}

// The readings that the verdict asks for do fix the shape.
func TestEnoughIsEnough(t *testing.T) {
	at := points(t, "0,0 70,3 75,90 -4,88 30,40 90,30 50,-20")
	list := "AB BC CD DE FG"
	obs := measured(at, list, 0.1)
	_, v := Adjust(Problem{Start: at, Observations: obs})
	if v.Outcome != TooFew || v.Missing != 2*7-3-5 {
		t.Fatalf("%+v", v)
	}
	for _, p := range v.Enough {
		obs = append(obs, measured(at, name(p.From)+name(p.To), 0.1)...)
	}
	res := mustAdjust(t, Problem{Start: at, Observations: obs})
	if res.Freedom != 0 {
		t.Errorf("freedom %d after %s, want 0", res.Freedom, pairList(v.Enough))
	}
}

// Generic rigidity against Laman's theorem (G. Laman, On Graphs and Rigidity of Plane Skeletal Structures, 1970): the
// rank is the size of the largest set of edges of which no k points' worth holds more than 2k-3. All graphs on 5 points.
func TestRankAgainstLaman(t *testing.T) {
	at := points(t, "0,0 70,3 81,90 -14,77 33,41")
	all := "AB AC AD AE BC BD BE CD CE DE"
	every := measured(at, all, 1)
	for set := 1; set < 1<<10; set++ {
		var obs []Observation
		for i := range every {
			if set>>i&1 == 1 {
				obs = append(obs, every[i])
			}
		}
		w := newNetwork(obs, 5, []Hold{{0, X, 0}, {0, Y, 0}, {1, Y, 0}})
		if got, want := w.unknowns-len(w.freeMotions(at)), lamanRank(every, set); got != want {
			t.Fatalf("set %010b: rank %d, want %d", set, got, want)
		}
	}
}

// lamanRank adds edges greedily while they stay independent, which a matroid allows.
func lamanRank(every []Observation, set int) int {
	kept := 0
	for i := range every {
		if set>>i&1 == 1 && sparse(every, kept|1<<i) {
			kept |= 1 << i
		}
	}
	n := 0
	for ; kept != 0; kept &= kept - 1 {
		n++
	}
	return n
}

func sparse(every []Observation, set int) bool {
	for points := 0; points < 32; points++ {
		size, edges := 0, 0
		for p := 0; p < 5; p++ {
			size += points >> p & 1
		}
		for i, o := range every {
			if set>>i&1 == 1 && points>>o.From&1 == 1 && points>>o.To&1 == 1 {
				edges++
			}
		}
		if size >= 2 && edges > 2*size-3 {
			return false
		}
	}
	return true
}

func TestContradictory(t *testing.T) {
	for _, c := range []struct {
		readings string
		excess   float64
		want     string
	}{
		{"A-B 70, B-C 20, C-A 100", 10, "C-A B-C A-B"},
		{"A-B 70, B-C 96, C-D 71, D-A 95, A-C 119, B-D 300, B-E 3, E-C 95", 300 - 70 - 95, "B-D D-A A-B"},
		{"A-B 70, B-C 20, C-A 90.05", 0, ""},               // by chance
		{"A-B 70, B-C 20, C-A 100, C-A 89, A-B 71", 0, ""}, // the second C-A is possible
	} {
		obs := readings(t, c.readings, 0.1)
		_, v := Adjust(Problem{Observations: obs})
		if (v.Outcome == Contradictory) != (c.want != "") || pairs(obs, v.Readings) != c.want {
			t.Errorf("%s: %+v: %s, want %q", c.readings, v, pairs(obs, v.Readings), c.want)
		}
		near(t, c.readings, v.Excess, c.excess, 1e-9)
	}
}

// Too few and contradictory at once: both are told.
func TestTooFewAndContradictory(t *testing.T) {
	obs := readings(t, "A-B 70, B-C 96, C-D 71, D-A 295", 0.1)
	_, v := Adjust(Problem{Observations: obs, Outline: fourCorners})
	if v.Outcome != TooFew || v.Missing != 1 || pairs(obs, v.Readings) != "D-A C-D B-C A-B" {
		t.Errorf("%+v", v)
	}
	near(t, "excess", v.Excess, 295-70-96-71, 1e-9)
}
