package takeoff

import (
	"math"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// bead is sealant where a thing meets what it stands on or hangs at: a joint as wide as the gap that is left there, else a fillet.
type bead struct {
	what  string // "round bowl"
	face  string
	stone bool // the thing itself is of stone
	long  unit.Length
	gap   unit.Length // 0: a fillet
	deep  unit.Length // of the joint
}

// beads reckons the sealant round basins, WCs and tops, each as long as its line is where it has been placed.
func (m *maker) beads() {
	for _, b := range m.places.Basins {
		m.roundBasin(b)
	}
	for _, w := range m.places.WCs {
		m.roundWC(w)
	}
	for _, t := range m.places.Tops {
		m.roundTop(t)
	}
}

func (m *maker) bead(b bead) {
	if b.long <= 0 {
		return
	}
	v := Fillet(b.long, catalog.FilletLeg)
	if b.gap > 0 {
		v = Bead(b.long, b.gap, rule.BeadDepth(b.gap, b.deep))
	}
	g, named := m.good(document.Sealant, b.face, anyGood)
	m.add(document.Sealant, "sealant", g, named, part{Part: Part{Face: b.face, For: b.what + ", " + m.say(unit.Stretches(b.long)), Amount: unit.Fills(v)}})
	m.stains(&soft{face: b.face, delicate: b.stone || m.delicate(b.face)}, g, named)
}

func (m *maker) say(q unit.Quantity) string { return unit.DefaultStyle(m.doc.Units).Say(q) }

// delicate: a face bears stone, or what is light.
func (m *maker) delicate(face string) bool {
	for _, f := range m.tiles.Faces {
		for _, z := range f.Fields {
			if t := m.tile(z.Tile); f.Name == face && len(z.Chosen().Pieces) > 0 && (t.Kind == document.Stone || t.Light.Or(false)) {
				return true
			}
		}
	}
	return false
}

// roundBasin: round the foot of a vessel, round the rim of what is sunk in a top, round the hole over one that hangs under it, along the wall where
// one hangs there.
func (m *maker) roundBasin(b place.Basin) {
	d := b.Doc
	line, key := d.Outline, "outline"
	if d.Kind == document.Vessel {
		line, key = d.Foot, "foot"
	}
	keep := func(geom.Point) bool { return true }
	switch top, on := m.places.Top(b.Top); {
	case !line.Known || !b.MidOff.Known():
		m.beadUnknown(d.At, d.Name, key)
		return
	case d.Kind == document.SemiRecessed && on && top.Depth.Known():
		keep = func(p geom.Point) bool { return p.Y <= top.Depth.V }
	case d.Kind == document.WallHungBasin:
		keep = func(p geom.Point) bool { return p.Y <= catalog.FilletLeg }
	}
	long := length(place.Line(line.V, geom.Point{Y: b.MidOff.V}), keep)
	where := "round "
	if d.Kind == document.WallHungBasin {
		where = "along the wall at "
	}
	m.sealed(d.At, d.Name)
	m.bead(bead{what: where + d.Name, face: b.Wall, stone: m.stoneTop(b.Top), long: long})
}

// roundWC: round what touches the floor, or of a wall-hung one the wall.
func (m *maker) roundWC(w place.WC) {
	d := w.Doc
	if !d.Foot.Known {
		m.beadUnknown(d.At, d.Name, "foot")
		return
	}
	face := "floor"
	if d.Kind == document.WallHungWC {
		face = w.Wall
	}
	m.sealed(d.At, d.Name)
	m.bead(bead{what: "round " + d.Name, face: face, long: length(place.Line(d.Foot.V, geom.Point{}), func(geom.Point) bool { return true })})
}

// roundTop: along the wall behind a top and at each end that meets one.
func (m *maker) roundTop(t place.Top) {
	d := t.Doc
	if !t.Left.Known() || !t.Right.Known() || !t.Depth.Known() || !t.Back.Known() {
		m.beadUnknown(d.At, d.Name, "place")
		return
	}
	stone := d.Made.Or(document.StaveTop) == document.StoneTop
	at := func(where string, long, gap unit.Length) {
		m.bead(bead{what: d.Name + where, face: t.Wall, stone: stone, long: long, gap: gap, deep: t.Thick.V})
	}
	at(" along the wall", t.Right.V-t.Left.V, t.Back.V)
	left, right := m.toNeighbors(t)
	for _, end := range []struct {
		where string
		told  document.Value[unit.Length]
		gap   unit.Length
	}{{" at its left end", d.Gap.Left, left}, {" at its right end", d.Gap.Right, right}} {
		if end.told.Known || end.gap >= 0 && end.gap <= meets {
			at(end.where, t.Depth.V-t.Back.V, end.told.Or(max(0, end.gap)))
		}
	}
}

// meets is how near an end of a top is to a wall that it is sealed to (our own judgment).
const meets = unit.Inch / 2

// toNeighbors is how far the ends of a top are from the finished faces of the walls beside it; less than nothing where there is none.
func (m *maker) toNeighbors(t place.Top) (left, right unit.Length) {
	w, ok := m.places.Wall(t.Wall)
	if !ok {
		return -1, -1
	}
	wide := geom.Dist(m.room.Survey.Corner(w.Face.LeftCorner).Board, m.room.Survey.Corner(w.Face.RightCorner).Board)
	left, right = -1, -1
	for _, f := range m.room.Faces {
		switch {
		case f.Kind != site.WallFace || f.Name == t.Wall:
		case f.RightCorner == w.Face.LeftCorner:
			left = t.Left.V - f.TileOff
		case f.LeftCorner == w.Face.RightCorner:
			right = wide - f.TileOff - t.Right.V
		}
	}
	return left, right
}

func (m *maker) stoneTop(name string) bool {
	t, ok := m.places.Top(name)
	return ok && t.Doc.Made.Or(document.StaveTop) == document.StoneTop
}

// sealed notes why there is a bead at all, and what it is taken to be.
func (m *maker) sealed(at diag.Place, name string) {
	m.assume(at, rule.FixtureSealed.Cite(), "where {0} meets wall, floor or top it is sealed, with a fillet of {1}", diag.T(name), diag.F(catalog.FilletLeg))
}

// beadUnknown tells of a line that is not known, where the document has a sealant that would go there.
func (m *maker) beadUnknown(at diag.Place, name, key string) {
	if _, named := m.good(document.Sealant, "", anyGood); named {
		m.found(diag.Unchecked, "bead-unknown", at, "not reckoned: sealant round {0}; its {1} is missing", "write it as the data sheet has it", diag.T(name), diag.T(key))
	}
}

// length is how long a closed line is, of the stretches whose ends both count.
func length(line []geom.Point, counts func(geom.Point) bool) unit.Length {
	sum := 0.0
	for i, p := range line {
		q := line[(i+1)%len(line)]
		if counts(p) && counts(q) {
			sum += math.Hypot(float64(p.X-q.X), float64(p.Y-q.Y))
		}
	}
	return unit.FromFloat(sum)
}
