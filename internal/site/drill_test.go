package site

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// pipe, asked, bits -> drilled, in sixteenths of an inch: a 5/8 in pipe with 1/8 in all round needs 7/8 in.
func TestDrilled(t *testing.T) {
	const s = unit.Sixteenth
	for _, c := range []struct {
		pipe, asked unit.Length
		bits        []unit.Length
		want        unit.Length
	}{
		{10, 0, nil, 14}, {10, 0, []unit.Length{12, 16, 32}, 16}, {10, 0, []unit.Length{12}, 14},
		{10, 20, []unit.Length{32}, 20}, {0, 0, []unit.Length{16}, 0},
	} {
		var tools document.Tools
		for _, b := range c.bits {
			tools.CoreBits = append(tools.CoreBits, document.Value[unit.Length]{V: b * s, Known: true})
		}
		if got := (Hole{Diameter: c.pipe * s, Drill: c.asked * s}).Drilled(tools); got != c.want*s {
			t.Errorf("%+v: %v", c, got.In())
		}
	}
}

// A pipe at a hole's very center comes through it; a cable there would be drilled into.
func TestNearAtTheCenter(t *testing.T) {
	at := geom.Rect{Max: geom.Point{X: unit.Inch, Y: unit.Inch}}
	center := geom.Point{X: unit.Inch / 2, Y: unit.Inch / 2}
	for kind, want := range map[string]int{"pipe": 0, "cable": 1, "stud": 0} {
		f := Face{Buried: []Buried{{Name: "it", Kind: kind, Rect: at}}}
		if got := f.Near(center, unit.Inch); len(got) != want {
			t.Errorf("%s at the center: %d found, want %d", kind, len(got), want)
		}
	}
}
