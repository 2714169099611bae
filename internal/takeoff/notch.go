package takeoff

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Comb is the mean thickness of the bed that a notched trowel leaves: full notches, nothing slumped. Of a square notch w wide and d
// deep with teeth s it is d w/(w+s); of a V notch half of that; of a U notch, whose bottom is a half circle of radius
// r = w/2, [2r(d-r) + pi r²/2]/(w+s). A trowel that leans makes ridges lower by the sine of its angle.
func Comb(t document.Trowel) unit.Length {
	w, d, pitch := t.Width.MM(), t.Depth.MM(), (t.Width + t.Tooth).MM()
	if pitch <= 0 {
		return 0
	}
	section := w * d
	switch r := w / 2; t.Notch {
	case document.VNotch:
		section /= 2
	case document.UNotch:
		section = w*(d-r) + math.Pi*r*r/2
	}
	if t.Held > 0 {
		section *= math.Sin(t.Held.Radians())
	}
	return unit.FromMM(section / pitch)
}

// step is the trowel for tile whose longest edge is at most so long.
type step struct {
	edge   unit.Length
	trowel document.Trowel
}

func square(w, d, s unit.Length) document.Trowel {
	return document.Trowel{Notch: document.SquareNotch, Width: w, Depth: d, Tooth: s}
}

func equal(w unit.Length) document.Trowel { return square(w, w, w) }

const (
	in = unit.Inch
	mm = unit.Millimetre
)

// inchTrowels are what setters who measure in inches take: common practice.
var inchTrowels = []step{
	{2 * in, document.Trowel{Notch: document.VNotch, Width: 3 * in / 16, Depth: 5 * in / 32}},
	{6 * in, equal(in / 4)},
	{15 * in, square(in/4, 3*in/8, in/4)},
	{unit.Reach, equal(in / 2)},
}

// metricTrowels are the notch depths of DIN 18157-1 by the tile's edge (from memory), and 12 mm over 381 mm (common practice).
var metricTrowels = []step{
	{50 * mm, equal(3 * mm)}, {108 * mm, equal(4 * mm)}, {200 * mm, equal(6 * mm)}, {381 * mm, equal(8 * mm)}, {unit.Reach, equal(12 * mm)},
}

// propose gives the trowel for a tile by its longest edge, one step larger where its back is ribbed, and the source.
func propose(edge unit.Length, ribbed bool, sys unit.System) (document.Trowel, string) {
	list, source := inchTrowels, rule.Practice.String()
	if sys == unit.Millimetres {
		list = metricTrowels
		if edge <= 381*mm {
			source = "DIN 18157-1 (" + rule.FromMemory.String() + ")"
		}
	}
	i := 0
	for i < len(list)-1 && edge > list[i].edge {
		i++
	}
	if ribbed && i < len(list)-1 {
		i++
	}
	return list[i].trowel, source
}
