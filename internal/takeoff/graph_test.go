package takeoff

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// drawn makes pieces of a plan in letters: each letter is one piece, each character a square of 100 mm less half a joint at every side
// that is another letter's. A dot is no tile; what borders on it, or on the rim of the drawing, is cut there.
func drawn(plan string, joint unit.Length) []piece.Piece {
	lines := strings.Fields(plan)
	box := map[byte]geom.Rect{}
	var order []byte
	cell := 100 * mm
	for i, l := range lines {
		for j := range len(l) {
			c := l[j]
			if c == '.' {
				continue
			}
			p := geom.Point{X: unit.Length(j) * cell, Y: unit.Length(len(lines)-1-i) * cell}
			b, seen := box[c]
			if !seen {
				b, order = geom.Rect{Min: p, Max: p}, append(order, c)
			}
			box[c] = b.With(p).With(p.Add(geom.Point{X: cell, Y: cell}))
		}
	}
	at := func(p geom.Point) byte {
		x, y := int(p.X/cell), len(lines)-1-int(p.Y/cell)
		if p.X < 0 || p.Y < 0 || y < 0 || x >= len(lines[y]) || lines[y][x] == '.' {
			return 0
		}
		return lines[y][x]
	}
	var out []piece.Piece
	for _, c := range order {
		b := box[c]
		half := joint / 2
		label := func(out geom.Point, factory geom.Label) geom.Label {
			if at(out) == 0 {
				return 1
			}
			return factory
		}
		r := geom.RectRing(geom.Rect{Min: b.Min.Add(geom.Point{X: half, Y: half}), Max: b.Max.Sub(geom.Point{X: half, Y: half})},
			label(geom.Point{X: b.Min.X - 1, Y: b.Min.Y + 1}, -1), label(geom.Point{X: b.Min.X + 1, Y: b.Min.Y - 1}, -2),
			label(geom.Point{X: b.Max.X + 1, Y: b.Min.Y + 1}, -3), label(geom.Point{X: b.Min.X + 1, Y: b.Max.Y + 1}, -4))
		out = append(out, piece.Piece{Address: string(c), OnFace: geom.Region{r}, Area: r.Area()})
	}
	return out
}

// Counted by hand on the drawings.
func TestSurvey(t *testing.T) {
	for _, c := range []struct {
		plan                                string
		crosses, tees, straights, stretches int
	}{
		{"A", 0, 0, 0, 0},
		{"AABB", 0, 0, 2, 1},
		{"AABB CCDD", 1, 0, 4, 4},
		{"AABBCC DDEEFF", 2, 0, 6, 7},         // 4 uprights, 3 level
		{"AABBCC DDEEFF GGHHII", 4, 0, 8, 12}, // 6 and 6
		{"AABBCC DEEFFG", 0, 5, 7, 11},        // 2 + 3 uprights, each with a tee at the level joint and an end outside; the level one has 6 stretches and 2 ends
		{"AAAABBBB CCDDDDEE", 0, 3, 5, 7},     // 1 + 2 uprights; 4 stretches and 2 ends
		{"AAB CDB CEE", 0, 4, 4, 8},           // round D; each of the four others ends outside once
		{"AA.. BBCC", 0, 1, 2, 2},             // three pieces meet, one way is open
	} {
		got := survey(drawn(c.plan, 3*mm), 3*mm)
		if got.crosses != c.crosses || got.tees != c.tees || got.straights != c.straights || len(got.shared) != c.stretches {
			t.Errorf("%s: %d crosses, %d tees, %d straights, %d stretches; want %d, %d, %d, %d", c.plan, got.crosses, got.tees, got.straights, len(got.shared), c.crosses, c.tees, c.straights, c.stretches)
		}
	}
}

// The same joints are found whichever way the field lies, and in whatever order its pieces come.
func TestSurveyTurned(t *testing.T) {
	plans := []string{"AABBCC DDEEFF GGHHII", "AABBCC DEEFFG", "AAB CDB CEE"}
	rapid.Check(t, func(t *rapid.T) {
		plan := rapid.SampledFrom(plans).Draw(t, "plan")
		f := geom.Frame{Angle: unit.Angle(rapid.Int64Range(0, 360).Draw(t, "degrees")) * unit.Degree}
		straight := drawn(plan, 3*mm)
		var turned []piece.Piece
		for _, i := range rapid.Permutation(indexes(len(straight))).Draw(t, "order") {
			p := straight[i]
			p.OnFace = p.OnFace.Out(f)
			turned = append(turned, p)
		}
		a, b := survey(straight, 3*mm), survey(turned, 3*mm)
		if a.crosses != b.crosses || a.tees != b.tees || a.straights != b.straights || len(a.shared) != len(b.shared) {
			t.Fatalf("%s at %d: %+v, %+v", plan, f.Angle, a, b)
		}
	})
}

func indexes(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// A clip stands 2 in from each end of a stretch; both at one place are one; beyond 24 in one more for each begun foot (common practice).
func TestClips(t *testing.T) {
	for _, c := range []struct {
		long, edge unit.Length
		want       int
	}{{3 * in, 24 * in, 1}, {4 * in, 24 * in, 2}, {12 * in, 24 * in, 2}, {24 * in, 24 * in, 2}, {25 * in, 24 * in, 3}, {36 * in, 24 * in, 3}, {48 * in, 24 * in, 4}, {24 * in, 12 * in, 3}} {
		if got := clips(c.long, c.edge); got != c.want {
			t.Errorf("%d in: %d, want %d", c.long/in, got, c.want)
		}
	}
}
