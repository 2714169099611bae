package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// Glue is how a slab is glued up of staves.
type Glue struct {
	Known     bool
	Staves    []Stave // from the front
	Width     unit.Length
	Spare     unit.Length // what the slab is wider than is needed
	Length    unit.Length // rough
	Thick     unit.Length // rough
	Area      unit.Area   // of all joints
	Clamps    wood.Clamps
	BoardFeet wood.BoardFeet
	Sawn      unit.Volume // of the staves as sawn, without what is counted for thin stock
}

// Stave is one strip.
type Stave struct {
	Rough, Jointed unit.Length
	BarkUp         bool
}

// glue works the staves out: how wide the slab comes, what to buy, where the clamps stand.
func (s *slab) glue() {
	r := s.r
	s.doc.Staves.Rough = s.roughWidth()
	doc := s.doc.Staves
	if len(doc.Boards) == 0 && !doc.Rough.Known || !s.good.known {
		r.lacks(s.doc.At, "the staves of "+s.doc.Name+" (count, rough width)")
		return
	}
	each := r.usual(doc.Allowance, r.round(unit.Inch/16, 3*unit.Millimetre/2), s.doc.At, "what jointing takes off each edge of a stave of "+s.t.Name)
	need := s.t.Depth - s.t.Back + s.over().Width
	g := Glue{Known: true, Thick: doc.Thick.Or(s.good.thick)}
	g.Length = s.t.Width + s.over().Length + 2*r.usual(doc.Trim, r.round(unit.Inch, 25*unit.Millimetre), s.doc.At, "the length to spare at each end of the staves of "+s.t.Name)
	for i, w := range s.roughWidths(each, need) {
		st := Stave{Rough: w, Jointed: w - 2*each, BarkUp: doc.Order.Or(document.RingsTurned) == document.RingsOneSide || i%2 == 0}
		if st.Jointed <= 0 {
			r.stop("stave-none", doc.At, "a stave {1} wide is all taken by jointing {2} off each edge, for {0}", "use wider staves", diag.T(s.t.Name), diag.X(w), diag.X(each))
			return
		}
		g.Staves = append(g.Staves, st)
		g.Width += st.Jointed
		g.BoardFeet += wood.Feet(g.Thick, w, g.Length)
		g.Sawn += unit.VolumeOf(g.Thick.MM() * w.MM() * g.Length.MM())
	}
	g.Spare = g.Width - need
	s.checkGlue(g, need, each)
	joints := unit.Length(len(g.Staves) - 1)
	g.Area = (g.Length * joints).Times(g.Thick)
	g.Clamps = s.clamps(g)
	s.t.Glue = g
}

// roughWidth is how wide a stave is as sawn: as it is told, else the width that its board is sold in.
func (s *slab) roughWidth() document.Value[unit.Length] {
	told, sold := s.doc.Staves.Rough, s.good.stock.Width
	if told.Known || told.Unknown || len(s.doc.Staves.Boards) > 0 || !s.good.known || !sold.Known {
		return told
	}
	s.r.assume(s.doc.At, "the staves of {0} are as wide as {1} is sold: {2}", "our own", diag.T(s.t.Name), diag.T(s.good.name), diag.X(sold.V))
	return sold
}

// roughWidths are the widths of the staves as sawn: the boards on hand, or equal ones, as many as are told or needed.
func (s *slab) roughWidths(each, need unit.Length) []unit.Length {
	doc := s.doc.Staves
	var all []unit.Length
	for _, b := range doc.Boards {
		if b.Known {
			all = append(all, b.V)
		}
	}
	if len(doc.Boards) > 0 {
		return all
	}
	n := doc.Count.V
	if !doc.Count.Known {
		n = 1
		if jointed := doc.Rough.V - 2*each; jointed > 0 {
			n = int((need + jointed - 1) / jointed)
		}
	}
	for range n {
		all = append(all, doc.Rough.V)
	}
	return all
}

// checkGlue tells of a slab that comes out too narrow or too thin.
func (s *slab) checkGlue(g Glue, need, each unit.Length) {
	if g.Spare < 0 {
		s.r.stop("slab-narrow", s.doc.Staves.At, "{1} staves make a slab {2} wide after jointing; {0} needs {3}", "add a stave at least {4} wide as sawn", diag.T(s.t.Name), diag.N(len(g.Staves)), diag.X(g.Width), diag.X(need), diag.X(-g.Spare+2*each))
	}
	if g.Thick < s.t.Thick {
		s.r.stop("slab-thin", s.doc.Staves.At, "the staves of {0} are {1} thick before planing, and it is to be {2}", "use thicker stock, or write a thinner top", diag.T(s.t.Name), diag.X(g.Thick), diag.X(s.t.Thick))
	}
}

func (s *slab) clamps(g Glue) wood.Clamps {
	if len(g.Staves) < 2 {
		return wood.Clamps{}
	}
	outer := min(g.Staves[0].Jointed, g.Staves[len(g.Staves)-1].Jointed)
	if at := s.doc.Staves.Spacing; at.Known {
		outer = at.V / 2 // a clamp serves twice the width that it stands against
	}
	return wood.ClampRow(g.Length, outer)
}

// Sawn are the parts that are sawn for a top: its staves, rough; of a sheet the top itself; of stone none.
func (t Top) Sawn() []part.Part {
	if !t.Made {
		return nil
	}
	if t.Kind != document.StaveTop {
		return []part.Part{t.Part}
	}
	var all []part.Part
	for _, s := range t.Glue.Staves {
		all = counted(all, part.Part{Name: t.Name + ", stave", At: t.At, For: t.Name, Count: 1, Stock: t.Part.Stock, Grain: part.Along,
			Size: part.Size{Length: t.Glue.Length, Width: s.Rough, Thick: t.Glue.Thick}})
	}
	return all
}
