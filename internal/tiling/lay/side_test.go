package lay_test

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/unit"
)

// Factory sides left on cut pieces, in the tile's own frame, and in brackets those that no neighbor meets, since the field ends
// beyond the joint there.
func TestFactorySides(t *testing.T) {
	for _, c := range []struct{ face, bond, origin, want string }{
		{"450x402", "stack, 300x200, 2", "0,0", "0:0 =, 0:1 (bottom) left top, 1:0 =, 1:1 bottom left (top)"},
		{"450x402", "stack, 300x200, 2", "150,0", "0:-1 (bottom) right top, 0:0 =, 1:-1 bottom right (top), 1:0 ="},
		{"302.4x150", "stack, 300x200, 2", "0,0", "0:0 (bottom) (left) (right)"}, // beyond the joint 0.4 mm: dropped, no neighbor
		{"302.6x150", "stack, 300x200, 2", "0,0", "0:0 (bottom) (left) right, 0:1 (bottom) left"},
		{"402x150", "stack, 300x200, 2 upright", "0,0", "0:0 bottom (left) (top), 0:1 (bottom) (left) top"}, // own left is down, own top is at the left
		{"300x100", "herringbone, 197x97, 3", "0,0", "0:0 =, 0:1 (bottom) (right) top"},                     // standing: own top is at its left, own right is up
	} {
		got := sides(lay.Lay(laytest.Face(c.face), bondtest.Make(c.bond), laytest.Point(c.origin), nil))
		if got != c.want {
			t.Errorf("%s, %s:\n got %s\nwant %s", c.face, c.bond, got, c.want)
		}
	}
}

func sides(pieces []lay.Piece) string {
	names := []string{"", "left", "bottom", "right", "top"}
	var out []string
	for _, p := range pieces {
		line := strings.Fields(layout([]lay.Piece{p}))[0]
		if p.Whole {
			line += " ="
		}
		var has []geom.Label
		for _, v := range p.Shape[0] {
			if v.Edge < 0 && !p.Whole {
				has = append(has, v.Edge)
			}
		}
		slices.Sort(has)
		slices.SortFunc(has, func(a, b geom.Label) int { return strings.Compare(names[-a], names[-b]) })
		for _, l := range slices.Compact(has) {
			name := names[-l]
			if p.Free[-l] {
				name = "(" + name + ")"
			}
			line += " " + name
		}
		out = append(out, line)
	}
	return strings.Join(out, ", ")
}

// The light count agrees with the pieces: every tile that is whole, and every tile that the field's edge crosses.
func TestSurveyAgreesWithLay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		f := lay.On(laytest.Draw(t))
		pieces, dropped := f.Lay(b, geom.Point{}, nil)
		whole, cut := 0, map[geom.Point]bool{}
		for _, p := range append(pieces, dropped...) {
			if p.Whole {
				whole++
			} else {
				cut[p.At] = true
			}
		}
		n := f.Survey(b, geom.Point{})
		if n.Whole != whole || n.Cut < len(cut) {
			t.Fatalf("surveyed %+v, laid %d whole and %d cut", n, whole, len(cut))
		}
	})
}

// Turned by a quarter, face and pattern give the same pieces to the last count, since quarter turns do not round.
func TestQuarterTurnsAreExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := bondtest.Make(rapid.SampledFrom(bondtest.All).Draw(t, "bond"))
		g := laytest.Draw(t)
		frame := geom.Frame{Origin: geom.Point{X: 12345, Y: -777}, Angle: unit.Angle(rapid.IntRange(0, 3).Draw(t, "quarters")) * 90 * unit.Degree}
		pieces := lay.Lay(g.In(frame), b, geom.Point{}, nil)
		for _, p := range pieces {
			back := lay.OnPattern(p, b).Out(frame)
			if back.Area2() != p.Shape.Area2() {
				t.Fatalf("a piece of %d came back with %d", p.Shape.Area2(), back.Area2())
			}
			again := geom.Frame{}.Out(frame.In(back[0][0].P))
			if again != lay.OnPattern(p, b)[0][0].P {
				t.Fatalf("%v went to %v", lay.OnPattern(p, b)[0][0].P, again)
			}
		}
	})
}

// As it lies, a tile's left side is the one at the left, whichever way it is turned, and back again nothing has changed.
func TestLying(t *testing.T) {
	for _, line := range bondtest.All {
		b := bondtest.Make(line)
		for _, p := range b.Protos {
			own := lay.Factory(p)
			lies := lay.Lying(own, p)
			if got := lies.Bounds(); got != (geom.Rect{Max: geom.Point{X: p.W, Y: p.H}}) {
				t.Fatalf("%s: lies at %v", line, got)
			}
			if p.Ring == nil {
				want := geom.RectRing(lies.Bounds(), lay.Left, lay.Bottom, lay.Right, lay.Top)
				for _, v := range want {
					if !slices.Contains(lies[0], v) {
						t.Errorf("%s turned %d: %v lacks %v", line, p.Turn, lies, v)
					}
				}
			}
			if !slices.Equal(lay.Own(lay.Lying(lay.Factory(p), p), p)[0], own[0]) {
				t.Errorf("%s turned %d does not come back", line, p.Turn)
			}
			if p.Ring == nil && lay.LyingPoint(geom.Point{}, p) != cornerOf(lies, lay.TurnSide(lay.Left, p.Turn), lay.TurnSide(lay.Bottom, p.Turn)) {
				t.Errorf("%s turned %d: the own corner goes to %v", line, p.Turn, lay.LyingPoint(geom.Point{}, p))
			}
		}
	}
}

// cornerOf returns the corner where one side ends and the next begins.
func cornerOf(g geom.Region, side, next geom.Label) geom.Point {
	r := g[0]
	for i, v := range r {
		if r[(i+len(r)-1)%len(r)].Edge == side && v.Edge == next {
			return v.P
		}
	}
	panic("no such corner")
}
