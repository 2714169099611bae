package pair

import (
	"testing"

	"pgregory.net/rapid"
)

func drawPoints(t *rapid.T, name string) []Pt {
	coord := rapid.Int64Range(0, 12)
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Pt {
		return Pt{coord.Draw(t, "x"), coord.Draw(t, "y")}
	}), 3, 7).Draw(t, name)
}

// The checker's strip tries every direction through two points.
func TestApartAgainstEveryDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		as, bs := drawPoints(t, "a"), drawPoints(t, "b")
		shift := rapid.Int64Range(-3, 16).Draw(t, "shift")
		for i := range bs {
			bs[i].X += shift
		}
		a, b := convex(as), convex(bs)
		if a == nil || b == nil {
			t.Skip("no area")
		}
		k := rapid.Int64Range(0, 5).Draw(t, "k")
		want := strip(as, bs, k) || strip(bs, as, k)
		if got := apart(a, b, k); got != want || apart(b, a, k) != want {
			t.Fatalf("apart %v, by every direction %v: %v %v kerf %d", got, want, a, b, k)
		}
	})
}

// Every point lies left of every edge of the hull, and the hull is made of them.
func TestConvexHoldsItsPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pts := drawPoints(t, "pts")
		hull := convex(pts)
		if hull == nil {
			return
		}
		if !inside(pts, hull) || twiceArea(hull) <= 0 {
			t.Fatalf("%v does not hold %v", hull, pts)
		}
	})
}

// By hand: two 3-4-5 triangles share their long side. Lifting the upper one by 5
// opens a gap of 4 square to that side.
func TestApartExactAtTheLimit(t *testing.T) {
	const m = maxSize / 8
	low := []Pt{{0, 0}, {4 * m, 0}, {0, 3 * m}}
	for _, c := range []struct {
		shift, k int64
		want     bool
	}{{0, 0, true}, {0, 1, false}, {5, 4, true}, {5, 5, false}, {500000, 400000, true}, {500000, 400001, false}} {
		high := []Pt{{4 * m, c.shift}, {4 * m, 3*m + c.shift}, {0, 3*m + c.shift}}
		if got := apart(low, high, c.k); got != c.want {
			t.Errorf("shift %d kerf %d: %v", c.shift, c.k, got)
		}
	}
}

func TestFourTurnsGiveThePieceBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 3, true)
		for _, pc := range p.Pieces {
			hull, _ := outline(pc)
			if hull == nil {
				continue
			}
			if !posed(pc, hull, 4).same(posed(pc, hull, 0)) {
				t.Fatalf("%+v", pc)
			}
			for q := range 4 {
				sameAsChecker(t, pc, hull, q)
			}
		}
	})
}

// sameAsChecker compares a pose with the checker's way to turn.
func sameAsChecker(t *rapid.T, pc Piece, hull []Pt, q int) {
	ps, l := posed(pc, hull, q), lay(pc, q, 0, 0)
	for i, s := range []Side{Left, Bottom, Right, Top} {
		if l.keep[i] != (ps.keep&s != 0) {
			t.Fatalf("%+v turned %d keeps %v", pc, q, ps.keep)
		}
	}
	if l.x1 != ps.w || l.y1 != ps.h || !inside(l.pts, ps.hull) {
		t.Fatalf("%+v turned %d: %+v", pc, q, ps)
	}
}
