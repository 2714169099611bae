package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Reach says how a tool of the person's own gets through a slab.
type Reach struct {
	What  string // "saw for the ends", "bit for cut-outs"
	Known bool   // some tool of the kind has its reach written
	Tool  string
	Deep  unit.Length
	Sides int // 1: through from one face; 2: from both; 0: it does not meet in the middle
}

// reaches holds the tools against the thickness of a slab: its ends are sawn, its cut-outs routed.
func (s *slab) reaches() {
	tools := s.r.doc.Tools
	saw := Reach{What: "saw"}
	for _, w := range tools.Saws {
		if w.Reach.Known && w.Reach.V > saw.Deep {
			saw.Known, saw.Tool, saw.Deep = true, w.Name, w.Reach.V
		}
	}
	s.reach(saw, tools.At, "trim its ends")
	bit := Reach{What: "bit"}
	for _, b := range tools.Bits {
		if b.Reach.Known && b.Reach.V > bit.Deep {
			bit.Known, bit.Tool, bit.Deep = true, b.Name, b.Reach.V
		}
	}
	if s.through() {
		s.reach(bit, tools.At, "make its cut-outs")
	}
}

// through reports whether something goes through the slab.
func (s *slab) through() bool {
	for _, h := range s.t.Holes {
		if h.Recess == 0 {
			return true
		}
	}
	return false
}

func (s *slab) reach(t Reach, at diag.Place, work string) {
	switch {
	case !t.Known:
		s.r.found.Add(diag.Unchecked, "reach-missing", s.t.At, "whether a {1} reaches through {0} to {2} is not checked: its reach is missing", "write it under tools", diag.T(s.t.Name), diag.T(t.What), diag.T(work))
	case t.Deep >= s.t.Thick:
		t.Sides = 1
	case 2*t.Deep >= s.t.Thick:
		t.Sides = 2
		s.r.look("reach-half", s.t.At, "{1} reaches {2} into {0}, which is {3} thick: to {4}, work from both faces, from one line squared round", "mark both faces from the same edge", diag.T(s.t.Name), diag.T(t.Tool), diag.X(t.Deep), diag.X(s.t.Thick), diag.T(work))
	default:
		s.r.stop("reach-short", s.t.At, "{1} reaches {2} into {0}, which is {3} thick: it can not {4} even from both faces", "use a tool that reaches {3}, or half of it", diag.T(s.t.Name), diag.T(t.Tool), diag.X(t.Deep), diag.X(s.t.Thick), diag.T(work))
	}
	s.t.Reaches = append(s.t.Reaches, t)
}
