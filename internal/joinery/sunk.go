package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// sunk are the holes that the basins and the deck taps on a top ask for, by what their data sheets say.
func (s *slab) sunk() {
	for _, b := range s.r.doc.Basins {
		if b.On.Text == s.t.Name {
			s.basin(b)
		}
	}
	for _, t := range s.r.doc.Taps {
		if t.Mounted == document.Deck && t.On.Text == s.t.Name {
			s.tapHole(t)
		}
	}
}

// middleOf is where the middle of a basin is on its top: its waste, and how far its outline is off that.
func (s *slab) middleOf(b document.Basin) (waste Point, x, z unit.Length, ok bool) {
	at, ok := s.along(b.Across)
	if !ok || !b.Off.Known {
		s.r.lacks(b.At, "the place of "+b.Name+" on "+s.t.Name)
		return waste, 0, 0, false
	}
	return Point{at, 0, b.Off.V}, at + b.Right.Or(0), b.Off.V + b.Forward.Or(0), true
}

// basin makes the hole for its waste, or the hole that it hangs in.
func (s *slab) basin(b document.Basin) {
	waste, x, z, ok := s.middleOf(b)
	if !ok {
		return
	}
	switch b.Kind {
	case document.Vessel:
		if !b.Hole.Known {
			s.r.lacks(b.At, "the diameter of the waste of "+b.Name)
			return
		}
		s.t.Holes = append(s.t.Holes, Hole{Name: b.Name + ", waste", At: b.At, X: waste[0], Z: waste[2], Outline: round(b.Hole.V), Passes: s.tailOf(b), Pipe: true})
	case document.DropIn, document.SemiRecessed:
		if !b.Foot.Known {
			s.r.lacks(b.At, "the outline of what of "+b.Name+" goes through "+s.t.Name+" (foot)")
			return
		}
		s.t.Holes = append(s.t.Holes, Hole{Name: b.Name, At: b.At, X: x, Z: z, Outline: s.grown(b.Foot.V, s.basinRoom(), b.At), Notch: b.Kind == document.SemiRecessed, Held: true})
	case document.Undermount:
		if !b.Outline.Known || !b.Rim.Known {
			s.r.lacks(b.At, "the outline of "+b.Name+", or the thickness of its rim")
			return
		}
		s.t.Holes = append(s.t.Holes, Hole{Name: b.Name, At: b.At, X: x, Z: z, Outline: s.grown(b.Outline.V, -b.Rim.V, b.At), Held: true})
	}
}

// basinRoom is kept round what goes through a top: 1/8 in, 3 mm (common practice; a data sheet's own cut-out goes before it).
func (s *slab) basinRoom() unit.Length {
	room := s.r.round(unit.Inch/8, 3*unit.Millimetre)
	s.r.assume(s.doc.At, "the cut-out in {0} has {1} of room round its basin", "common practice; a data sheet's own cut-out goes before it", diag.T(s.t.Name), diag.X(room))
	return room
}

func round(d unit.Length) document.Outline {
	return document.Outline{Kind: document.RoundOutline, Across: d, Deep: d}
}

// grown is an outline larger by so much on every side, or smaller.
func (s *slab) grown(o document.Outline, by unit.Length, at diag.Place) document.Outline {
	if o.Kind == document.PolygonOutline {
		s.r.found.Add(diag.Note, "outline-own", at, "{0}: an outline with corners is cut as it is written, without room round it", "write it with the room that it needs", diag.T(s.t.Name))
		return o
	}
	o.Across, o.Deep = o.Across+2*by, o.Deep+2*by
	if o.Radius > 0 {
		o.Radius = max(0, o.Radius+by)
	}
	return o
}

func (s *slab) tapHole(t document.Tap) {
	x, ok := s.along(t.Across)
	if !ok || !t.Off.Known || !t.Hole.Known {
		s.r.lacks(t.At, "the place or the hole of "+t.Name+" on "+s.t.Name)
		return
	}
	s.t.Holes = append(s.t.Holes, Hole{Name: t.Name, At: t.At, X: x, Z: t.Off.V, Outline: round(t.Hole.V), Held: true})
}

// tailOf is how thick the pipe is that goes down from a basin: the size of its trap; 0 where no waste says it. It leads to the wall, which
// stands still.
func (s *slab) tailOf(b document.Basin) unit.Length {
	for _, w := range s.r.doc.Wastes {
		if w.From.Text == b.Name && w.Trap.Size.Known {
			return w.Trap.Size.V
		}
	}
	return 0
}

// seat is the outline that a recess is cut to and its middle: as written, or the foot of the basin that sits in it.
func (s *slab) seat() (o document.Outline, x, z unit.Length, ok bool) {
	doc := s.doc.Recess
	if doc.Outline.Known {
		x, ok = s.along(doc.Across)
		return doc.Outline.V, x, doc.Off.V, ok && doc.Off.Known
	}
	for _, b := range s.r.doc.Basins {
		if b.On.Text != s.t.Name || doc.For.Known && doc.For.V != b.Name || !b.Foot.Known {
			continue
		}
		if _, x, z, ok = s.middleOf(b); ok {
			return b.Foot.V, x, z, true
		}
	}
	return o, 0, 0, false
}
