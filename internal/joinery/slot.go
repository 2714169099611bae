package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Screws of a row stand this far from the ends of their rail and no farther apart where the document says nothing: 3 in and 12 in, 75 and 300
// mm (common practice).
func (s *slab) usualEnd() unit.Length  { return s.r.round(3*unit.Inch, 75*unit.Millimetre) }
func (s *slab) usualStep() unit.Length { return s.r.round(12*unit.Inch, 300*unit.Millimetre) }

// bore cuts the slots of a row into the rail of the cabinet that lies under it, each at its place along the rail and set off to the side to
// which the slab is expected to move. Without a rail it is told.
func (s *slab) bore(slot *Slot, screw unit.Length) {
	if !s.on {
		return
	}
	for i := range s.r.plan.Cabinets {
		c := &s.r.plan.Cabinets[i]
		if c.Name != s.cab.Name {
			continue
		}
		if rail := railUnder(c, *slot, s.besideSlot()); rail != nil {
			slot.Rail = rail.Part.Name
			slot.Along = s.places(c, rail, screw)
			for _, x := range slot.Along {
				rail.slot(Point{x + s.t.X - c.X, rail.Box.Hi[yAxis], slot.Middle}, screw, slot.Long, "screw up into "+s.t.Name)
			}
			return
		}
		s.r.stop("screw-norail", s.doc.Fixing.At, "no rail of {1} lies under the screws {2} off the wall that hold {0}, with {3} of slot and wood on both sides of it", "move the row over a rail, or make the rails wider", diag.T(s.t.Name), diag.T(s.cab.Name), diag.X(slot.Z), diag.L(slot.Long))
	}
}

// besideSlot is the least wood between a slot and the edge of its rail: 1/4 in, 6 mm (common practice).
func (s *slab) besideSlot() unit.Length { return s.r.round(unit.Inch/4, 6*unit.Millimetre) }

// railUnder is the flat piece at the top of a carcass that takes a whole slot in its width, with wood on both sides.
func railUnder(c *Cabinet, slot Slot, beside unit.Length) *Piece {
	half := slot.Long/2 + beside
	for i := range c.Pieces {
		p := &c.Pieces[i]
		if p.Role == TopRole && p.Turn == Flat && p.Box.Hi[yAxis] == c.Asked.Hi[yAxis] && p.Box.Lo[zAxis] <= slot.Middle-half && slot.Middle+half <= p.Box.Hi[zAxis] {
			return p
		}
	}
	return nil
}

// slot bores a slot that runs off the wall; a round hole where it is no longer than the screw is thick.
func (p *Piece) slot(at Point, wide, long unit.Length, what string) {
	p.hole(part.Hole{Diameter: wide, Depth: p.Box.Size(yAxis), Through: true, Slot: long - wide, Along: part.UpAxis, For: what}, at, up)
}

// places are where the screws of a row stand, from the left end of the top: as written, or spread over the rail.
func (s *slab) places(c *Cabinet, rail *Piece, screw unit.Length) []unit.Length {
	off := c.X - s.t.X
	lo, hi := rail.Box.Lo[xAxis]+off, rail.Box.Hi[xAxis]+off
	var all []unit.Length
	for _, x := range s.doc.Fixing.Along {
		switch {
		case !x.Known:
			s.r.lacks(x.At, "the place of a screw along "+s.t.Name)
		case x.V-screw/2 <= lo || x.V+screw/2 >= hi:
			s.r.stop("screw-outside", x.At, "a screw {1} from the left end of {0} does not stand in {2}, which is from {3} to {4} there", "move it over the rail", diag.T(s.t.Name), diag.X(x.V), diag.T(rail.Part.Name), diag.X(lo), diag.X(hi))
		default:
			all = append(all, x.V)
		}
	}
	if len(s.doc.Fixing.Along) > 0 {
		return all
	}
	end, step := s.usualEnd(), s.usualStep()
	s.r.assume(s.doc.Fixing.At, "the screws of {0} stand {1} from the ends of their rails and no farther apart than {2}", "common practice", diag.T(s.t.Name), diag.X(end), diag.X(step))
	run := hi - lo - 2*end
	if run <= 0 {
		return []unit.Length{((lo + hi) / 2).Round(s.r.mark())}
	}
	n := (run + step - 1) / step
	for i := range n + 1 {
		all = append(all, (lo + end + run*i/n).Round(s.r.mark()))
	}
	return all
}
