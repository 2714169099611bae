package tiling

import (
	"slices"
	"testing"

	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Running bond steps on from course to course, or goes to and fro where the document says so. A tile of 12 in with its
// joint of 1/8 in repeats every 12-1/8 in, which is 4,927,600 of the grid; a third of it is 1,642,533 and two thirds are
// 3,285,067, each rounded half up.
func TestToAndFro(t *testing.T) {
	for bond, want := range map[string][]unit.Length{
		"running 1/3":            {0, 1_642_533, 3_285_067, 0, 1_642_533, 3_285_067},
		"running 1/3 to and fro": {0, 1_642_533, 0, 1_642_533, 0, 1_642_533},
		"running 4 to and fro":   {0, 4 * unit.Inch, 0, 4 * unit.Inch, 0, 4 * unit.Inch},
	} {
		doc, solved := room(t, "A: 40, B: 40, C: 40, D: 40", `
tiles: {plank: {size: 12 x 4 x 3/8, kind: porcelain, joint: 1/8}}
lay: {back: {fields: {main: {tile: plank, bond: `+bond+`, pin: {across: 20 from left, up: 0 above level}}}}}
`)
		plan, _, _ := Make(doc, solved, Options{})
		field := plan.Faces[0].Fields[0]
		if field.Bond != bond && bond != "running 4 to and fro" {
			t.Errorf("%s is called %s", bond, field.Bond)
		}
		if got := starts(field, len(want)); !slices.Equal(got, want) {
			t.Errorf("%s: courses start at %d, want %d", bond, got, want)
		}
	}
}

// starts tells where the whole tiles of each course begin, against those of the course at the pin, within one repeat.
func starts(f Field, courses int) []unit.Length {
	const pitch, up = 97 * unit.Inch / 8, 33 * unit.Inch / 8
	out := make([]unit.Length, courses)
	at := f.Chosen().Origin
	for _, p := range f.Chosen().Pieces {
		if low := p.OnFace.Bounds().Min; whole(p) && low.Y >= at.Y && int((low.Y-at.Y)/up) < courses {
			out[(low.Y-at.Y)/up] = ((low.X-at.X)%pitch + pitch) % pitch
		}
	}
	return out
}

func whole(p piece.Piece) bool { return p.Whole }
