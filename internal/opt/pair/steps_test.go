package pair

import (
	"testing"

	"pgregory.net/rapid"
)

// Corner pieces and corner triangles cannot slide, so every set of them is
// decided exactly and the search must end with a proof.
func TestCornersAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := Problem{W: 12, H: rapid.SampledFrom([]int64{12, 9}).Draw(t, "h"), Kerf: rapid.Int64Range(0, 2).Draw(t, "kerf")}
		shapes := rapid.IntRange(0, 2).Draw(t, "shapes")
		for range rapid.IntRange(2, 7).Draw(t, "n") {
			p.Pieces = append(p.Pieces, drawCorner(t, p, shapes))
		}
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Fatalf("%v: %+v", err, p)
		}
		if want := fewest(p); r.Blanks != want || r.Lower != want || !r.Complete {
			t.Fatalf("%d blanks, lower %d by %s, brute force %d: %+v", r.Blanks, r.Lower, r.Proof, want, p)
		}
	})
}

// drawCorner draws a corner piece: a rectangle, a triangle, or a tile that lost
// a corner.
func drawCorner(t *rapid.T, p Problem, shapes int) Piece {
	w := rapid.Int64Range(2, p.W).Draw(t, "w")
	h := rapid.Int64Range(2, p.H).Draw(t, "h")
	pc := Piece{W: w, H: h, Keep: Left | Bottom, Turns: rapid.SampledFrom([]Turn{0, HalfTurns, AllTurns}).Draw(t, "turns")}
	switch rapid.IntRange(0, shapes).Draw(t, "shape") {
	case 1:
		pc.Shape = []Pt{{0, 0}, {w, 0}, {0, h}}
	case 2:
		pc.Shape = []Pt{{0, 0}, {w, 0}, {w, h / 2}, {w / 2, h}, {0, h}}
	}
	return pc
}

// Every heuristic alone gives what can be cut, whatever the others would make
// of it; and no bound alone passes it.
func TestEachStepAlone(t *testing.T) {
	steps := map[string]func(*solver){
		"shelve": (*solver).shelve, "nestle": (*solver).nestle, "first fit": (*solver).firstFit,
		"merge": (*solver).merge, "search": func(s *solver) { s.offer(s.pairUp(s.need)); s.search() },
	}
	names := []string{"shelve", "nestle", "first fit", "merge", "search"}
	rapid.Check(t, func(t *rapid.T) {
		p := countable(drawProblem(t, 12, rapid.Bool().Draw(t, "shapes")))
		kinds, unfit := group(p)
		loose, tight := newCutter(p, kinds).parted()
		for _, name := range names {
			s := newSolver(newCutter(p, loose), rapid.SampledFrom([]int{1, 50, 5000}).Draw(t, "budget"))
			s.counting()
			s.crowded()
			steps[name](s)
			if s.best == nil && s.loose == nil {
				continue // a step that does not apply
			}
			if err := check(p, s.written(p, unfit, tight)); err != nil {
				t.Fatalf("%s: %v: %+v", name, err, p)
			}
		}
	})
}
