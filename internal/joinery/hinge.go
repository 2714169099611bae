package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Cup hinges, common practice where their data sheet is silent: a bore of 35 mm, 11.5 to 13 mm deep, its rim 3 to 6 mm from the
// door's edge, 75 to 100 mm from its ends; plates 37 mm behind the front of the carcass, their two holes 32 mm apart.
const (
	cupBore   = 35 * unit.Millimetre
	cupDeep   = 25 * unit.Millimetre / 2
	cupEdge   = 9 * unit.Millimetre / 2
	cupEnd    = 90 * unit.Millimetre
	plateBack = 37 * unit.Millimetre
	plateStep = 32 * unit.Millimetre
	plateHole = 5 * unit.Millimetre
	plateDeep = 12 * unit.Millimetre
	threeFrom = 1000 * unit.Millimetre // a door as high as this has three hinges
)

type hinging struct {
	bore, deep, edge, end, plate unit.Length
}

func (b *builder) hinges(o outline) hinging {
	h := o.doc.Hinges
	if !h.Bore.Known || !h.Deep.Known || !h.Edge.Known || !h.FromEnds.Known || !h.Plate.Known {
		b.r.assume(o.doc.At, "the hinges of {0}: cups of {1}, {2} deep, {3} from the edge and {4} from the ends, plates {5} behind the front", "common practice; a hinge's data sheet goes before it",
			diag.T(b.name), diag.X(h.Bore.Or(cupBore)), diag.X(h.Deep.Or(cupDeep)), diag.X(h.Edge.Or(cupEdge)), diag.X(h.FromEnds.Or(cupEnd)), diag.X(h.Plate.Or(plateBack)))
	}
	return hinging{h.Bore.Or(cupBore), h.Deep.Or(cupDeep), h.Edge.Or(cupEdge), h.FromEnds.Or(cupEnd), h.Plate.Or(plateBack)}
}

// hang bores a door for its cups, and the upright that it hangs on for their plates.
func (b *builder) hang(o outline, f *Front, s good) {
	h := b.hinges(o)
	n := o.doc.Hinges.Count.Or(2 + boolInt(f.Box.Size(yAxis) >= threeFrom))
	first, last := f.Box.Lo[yAxis]+h.end, f.Box.Hi[yAxis]-h.end
	if last-first < h.bore {
		b.r.stop("door-low", f.At, "{0} is {1} high: two cups {2} from its ends do not fit", "let them be nearer to the ends, or make the door higher", diag.T(f.Name), diag.X(f.Box.Size(yAxis)), diag.X(h.end))
		return
	}
	x := f.Box.Lo[xAxis] + h.edge + h.bore/2
	if f.Hinge == "right" {
		x = f.Box.Hi[xAxis] - h.edge - h.bore/2
	}
	for i := range n {
		y := first + (last-first)*unit.Length(i)/unit.Length(n-1)
		f.Cups = append(f.Cups, y)
		at := Point{x, y, f.Box.Lo[zAxis]}
		b.cup(*f, h, at)
		b.plates(o, *f, h, at)
	}
}

func (b *builder) cup(f Front, h hinging, at Point) {
	for _, p := range b.pieces {
		if p.Of != f.Name || p.Role != FrontRole || !p.holds(span(at[0]-h.bore/2, at[0]+h.bore/2, at[1]-h.bore/2, at[1]+h.bore/2, at[2], at[2]+h.deep)) {
			continue
		}
		p.hole(part.Hole{Diameter: h.bore, Depth: h.deep, For: "hinge cup"}, at, in)
		return
	}
	b.r.stop("cup-outside", f.At, "a hinge cup of {1} does not lie in one piece of {0} with wood behind it", "use a wider stile or thicker stock", diag.T(f.Name), diag.X(h.bore))
}

// plates bores both holes of a plate in the upright beside a door.
func (b *builder) plates(o outline, f Front, h hinging, at Point) {
	z := o.d - h.plate
	if !o.overlay() {
		z -= f.Box.Size(zAxis)
	}
	face, x := right, f.Behind.Lo[xAxis]
	if f.Hinge == "right" {
		face, x = left, f.Behind.Hi[xAxis]
	}
	for _, y := range []unit.Length{at[1] - plateStep/2, at[1] + plateStep/2} {
		p := b.beside(face, x, y, z)
		if p == nil {
			b.r.stop("plate-outside", f.At, "the plate of a hinge of {0} needs wood {1} behind the front of {2}, {3} up, and there is no upright", "use wider stiles, or a hinge whose plate sits nearer to the front", diag.T(f.Name), diag.X(o.d-z), diag.T(b.name), diag.L(y))
			return
		}
		p.hole(part.Hole{Diameter: plateHole, Depth: plateDeep, For: "hinge plate"}, Point{x, y, z}, face)
	}
}

// beside is the upright whose inner side lies at x and takes a plate's hole at a height and a depth.
func (b *builder) beside(face way, x, y, z unit.Length) *Piece {
	for _, p := range b.pieces {
		if p.touches(face, x, y, z) {
			return p
		}
	}
	return nil
}

// touches reports whether an upright's inner side lies at x and reaches over a height and a depth.
func (p *Piece) touches(face way, x, y, z unit.Length) bool {
	edge := p.Box.Hi[xAxis]
	if face.back {
		edge = p.Box.Lo[xAxis]
	}
	const r = plateHole / 2
	upright := p.Role == SideRole || p.Role == LegRole || p.Role == DividerRole
	return upright && edge == x && p.Box.Lo[yAxis]+r <= y && y+r <= p.Box.Hi[yAxis] && p.Box.Lo[zAxis]+r <= z && z+r <= p.Box.Hi[zAxis]
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}
