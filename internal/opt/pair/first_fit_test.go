package pair

import (
	"cmp"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// firstFitDecreasing is the textbook heuristic for one dimension (Johnson 1973):
// sizes by falling length, each in the first bin that has room, a kerf between.
func firstFitDecreasing(sizes []int64, bin, kerf int64) int {
	slices.SortFunc(sizes, func(a, b int64) int { return cmp.Compare(b, a) })
	var free []int64
	for _, s := range sizes {
		i := slices.IndexFunc(free, func(f int64) bool { return f >= s })
		if i < 0 {
			free = append(free, bin)
			i = len(free) - 1
		}
		free[i] -= s + kerf
	}
	return len(free)
}

// Strips across the whole blank without sides to keep are bin packing in one
// dimension. The bound below is that every two bins but one hold more than one
// bin together, so it does not depend on how good the heuristic is.
func TestStripsAgainstFirstFitDecreasing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Problem{W: 1000, H: 300, Kerf: rapid.Int64Range(0, 4).Draw(t, "kerf"), Budget: 4000}
		var sizes []int64
		var total int64
		for range rapid.IntRange(1, 60).Draw(t, "n") {
			w := rapid.Int64Range(80, 1000).Draw(t, "size")
			sizes = append(sizes, w)
			total += w
			p.Pieces = append(p.Pieces, Piece{W: w, H: 300})
		}
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Fatal(err)
		}
		if most := firstFitDecreasing(sizes, p.W, p.Kerf); r.Blanks > most {
			t.Fatalf("%d blanks, first fit decreasing %d", r.Blanks, most)
		}
		if least := int((total + p.W - 1) / p.W); r.Lower < least {
			t.Fatalf("lower %d, length alone gives %d", r.Lower, least)
		}
	})
}

// A field of bigger, mixed problems: whatever the budget, every result can be
// cut, its bound never passes it, and more budget never makes it worse.
func TestBigResultsCanBeCut(t *testing.T) {
	for _, p := range []Problem{
		wall(HalfTurns), wall(Turn0), wall(AllTurns), triangles(60, 200, 2900), triangles(60, 200, 1500),
		trims(60), distinct(80), mixed(80, 0), mixed(80, 60),
	} {
		last := len(p.Pieces) + 1
		for _, budget := range []int{1, 300, 3000, 30000} {
			p.Budget = budget
			r := Pack(p)
			if err := check(p, r); err != nil {
				t.Fatalf("%d x %d, budget %d: %v", p.W, p.H, budget, err)
			}
			if r.Blanks > last {
				t.Errorf("budget %d: %d blanks, %d with less", budget, r.Blanks, last)
			}
			last = r.Blanks
			t.Logf("%d pieces, budget %d: %d blanks, lower %d by %s, %d steps, complete %v",
				len(p.Pieces), budget, r.Blanks, r.Lower, r.Proof, r.Steps, r.Complete)
		}
	}
}

// mixed is rectangles, triangles and tapered strips together.
func mixed(n int, strip int64) Problem {
	p := Problem{W: 3000, H: 3000, Kerf: 20, LeastStrip: strip}
	s := sequence(19)
	for i := range n {
		w, h := s.between(300, 2800), s.between(300, 2800)
		pc := Piece{W: w, H: h, Keep: []Side{Left | Bottom, Left, 0, Right | Top}[s.between(0, 3)], Turns: HalfTurns}
		switch i % 3 {
		case 1:
			pc.Shape = []Pt{{0, 0}, {w, 0}, {0, h}}
		case 2:
			pc.H, pc.Keep = 3000, Left|Bottom|Top
			pc.Shape = []Pt{{0, 0}, {w, 0}, {w - 200, 3000}, {0, 3000}}
		}
		p.Pieces = append(p.Pieces, pc)
	}
	return p
}

func TestSameProblemSameResult(t *testing.T) {
	for _, p := range []Problem{wall(HalfTurns), mixed(60, 0)} {
		p.Budget = 3000
		a, b := Pack(p), Pack(p)
		if !slices.Equal(a.Placements, b.Placements) || a.Lower != b.Lower || a.Steps != b.Steps {
			t.Error("two runs differ")
		}
	}
}
