package export_test

import (
	"math"
	"strings"
)

// saw: sizes as sawn are never above exact ones, whole marks of the tape and less than two below; what they leave is the joint and what
// was taken off; and the steps, cut one after the other out of the whole tile, make the piece.
func (r *rechecker) saw(s *setPiece, w readWork) {
	if s.Cut == nil {
		return
	}
	for _, c := range s.Cut.Steps {
		r.rounded(s, c)
		r.leaves(s, c, w)
		r.run(s, c)
	}
	r.looks(s, w)
	r.remade(s)
}

// rounded: a taper that is too small to set is cut parallel, to the lesser end.
func (r *rechecker) rounded(s *setPiece, c readStep) {
	mark := r.plan.Mark
	if c.SawFrom > c.From || c.SawTo > c.To {
		r.complain("%s: sawn to %v to %v mm, which is above %v to %v", s.ID, c.SawFrom.mm(), c.SawTo.mm(), c.From.mm(), c.To.mm())
	}
	if c.Chips > 0 {
		return
	}
	least := [2]num{mark, mark}
	if c.SawFrom == c.SawTo && c.From != c.To {
		least = [2]num{mark + max(0, c.From-c.To), mark + max(0, c.To-c.From)}
	}
	if c.From-c.SawFrom >= least[0] || c.To-c.SawTo >= least[1] {
		r.complain("%s: sawn to %v to %v mm, more than a mark below %v to %v", s.ID, c.SawFrom.mm(), c.SawTo.mm(), c.From.mm(), c.To.mm())
	}
	if c.SawFrom%mark != 0 || c.SawTo%mark != 0 {
		r.complain("%s: %v to %v mm is no mark of the tape", s.ID, c.SawFrom.mm(), c.SawTo.mm())
	}
}

func (r *rechecker) leaves(s *setPiece, c readStep, w readWork) {
	joint := c.Leaves - max(c.From-c.SawFrom, c.To-c.SawTo)
	for _, e := range w.Edges {
		if e.Joint == joint && strings.Contains(c.Meets, e.Name) {
			return
		}
	}
	r.complain("%s: at %q the joint would be %v mm before rounding, which no edge of that name has", s.ID, c.Meets, joint.mm())
}

// remade cuts the steps out of the whole tile, where all of them run right across it and are measured from its own sides.
func (r *rechecker) remade(s *setPiece) {
	exact, sawn := s.place, s.place
	_, hi := shape{s.place}.bounds()
	for _, c := range s.Cut.Steps {
		a, b, ok := cutLine(c, hi.x, hi.y, c.From.mm(), c.To.mm())
		if !ok {
			return
		}
		exact = left(exact, a, b)
		a, b, _ = cutLine(c, hi.x, hi.y, c.SawFrom.mm(), c.SawTo.mm())
		sawn = left(sawn, a, b)
	}
	if off := area(exact) - s.inTile.area(); math.Abs(off) > thin*s.inTile.around()/2 {
		r.complain("%s: its steps make a piece that differs by %.3f mm²", s.ID, off)
	}
	if area(sawn) > area(exact)+1e-6 {
		r.complain("%s: as sawn it is larger than exact", s.ID)
	}
}

// cutLine is the line of a cut in the tile, what is kept on its left; false where it is told in another way.
func cutLine(c readStep, l, w, from, to float64) (a, b pt, ok bool) {
	if c.Along != nil {
		return a, b, false
	}
	switch c.Keep {
	case "left":
		return pt{from, 0}, pt{to, w}, true
	case "right":
		return pt{l - to, w}, pt{l - from, 0}, true
	case "bottom":
		return pt{l, to}, pt{0, from}, true
	case "top":
		return pt{0, w - from}, pt{l, w - to}, true
	}
	return acrossCorner(c, l, w, from, to)
}

// acrossCorner is a cut from one side to the next: what is kept of each is given. Seen from inside, counter-clockwise, the cut runs from the
// end of what is kept of the first to the beginning of what is kept of the second.
func acrossCorner(c readStep, l, w, from, to float64) (a, b pt, ok bool) {
	first, second, ok := strings.Cut(c.Keep, " and ")
	ends := map[string]pt{"bottom": {from, 0}, "right": {l, from}, "top": {l - from, w}, "left": {0, w - from}}
	starts := map[string]pt{"bottom": {l - to, 0}, "right": {l, w - to}, "top": {to, w}, "left": {0, to}}
	a, okA := ends[first]
	b, okB := starts[second]
	return a, b, ok && okA && okB
}
