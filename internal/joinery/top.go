package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Top is a slab on a cabinet or a wall. Its frame has x from its left end along the wall and z off the finished wall.
type Top struct {
	Name, Wall, On     string
	At                 diag.Place
	Kind               document.TopKind
	X                  unit.Length // of its left end in the wall's frame
	Up                 unit.Length // its underside over the finished floor
	Width, Depth, Back unit.Length // Back: of its rear edge, off the wall
	Thick              unit.Length
	Part               part.Part // none of stone, which others make from the template
	Made               bool      // there is a part
	Glue               Glue
	Holes              []Hole
	Woods              []Wood
	Moves              Moves
	Edges              []Edge
	Reaches            []Reach
	Passages           []Passage
}

// Edge is one upper edge with its profile.
type Edge struct {
	Name    string
	Profile document.EdgeProfile
}

// slab carries one top through the work.
type slab struct {
	r    *room
	doc  document.Slab
	good good
	cab  document.Cabinet
	on   bool
	t    Top
}

// top works one top out. It is false where its size is not known.
func (r *room) top(doc document.Slab) (Top, bool) {
	s := &slab{r: r, doc: doc}
	s.cab, s.on = r.doc.Cabinet(doc.On.V)
	s.t = Top{Name: doc.Name, At: doc.At, On: doc.On.V, Wall: r.doc.WallOf(doc).Text, Kind: doc.Made.V, Depth: doc.Depth.V, Thick: doc.Thickness.V, Back: doc.Gap.Back.Or(0)}
	if !r.sure(doc, doc.Name, "Wood", "Fixing", "Staves", "Alcove", "CutOuts", "Recess", "Least", "LeastLow") {
		return s.t, false
	}
	ok := r.known(doc.Depth, doc.At, "the depth of "+doc.Name)
	ok = r.known(doc.Thickness, doc.At, "the thickness of "+doc.Name) && ok
	if !doc.Made.Known {
		r.lacks(doc.At, "what "+doc.Name+" is made of")
		ok = false
	}
	if !ok || !s.across() || !s.height() {
		return s.t, false
	}
	if s.t.Depth <= s.t.Back {
		r.stop("top-none", doc.At, "{0} would be {1} deep: its gap takes all of it", "write a smaller gap", diag.T(doc.Name), diag.X(s.t.Depth-s.t.Back))
		return s.t, false
	}
	s.goods()
	s.alcove()
	s.r.carryIn(&s.t.Passages, s.t.Name, s.t.At, s.t.Width, s.t.Depth-s.t.Back, s.t.Thick)
	s.edges()
	s.holes()
	s.woods()
	s.movement()
	s.make()
	return s.t, true
}

// across finds the ends of a top: as written, over its cabinet, or as wide as the alcove that it goes in.
func (s *slab) across() bool {
	doc, r := s.doc, s.r
	width := doc.Width
	if !width.Known && len(doc.Alcove) > 0 {
		width.V, width.Known = widest(doc.Alcove), true
		width.V -= doc.Gap.Left.Or(0) + doc.Gap.Right.Or(0)
	}
	a, over := doc.Across, unit.Length(0)
	switch {
	case a.Given && a.Both:
		s.t.Width = a.Hi - a.Lo
	case a.Given:
		if !r.known(width, doc.At, "the width of "+doc.Name) {
			return false
		}
		s.t.Width = width.V
	case s.on:
		w, ok := r.width(s.cab, true)
		if !ok {
			return false
		}
		a, over = s.cab.Across, doc.Overhang.Left.Or(0)
		s.t.Width = w + over + doc.Overhang.Right.Or(0)
		x, _, ok := r.shape.Across(s.t.Wall, a, w)
		s.t.X = x - over
		return s.placed(ok)
	default:
		r.lacks(doc.At, "where along its wall "+doc.Name+" is")
		return false
	}
	x, _, ok := r.shape.Across(s.t.Wall, a, s.t.Width)
	s.t.X = x
	return s.placed(ok)
}

func (s *slab) placed(ok bool) bool {
	if !ok {
		s.r.lacks(s.doc.At, "the place of "+s.doc.Name+" along its wall")
	}
	return ok && s.t.Width > 0
}

// height is where the underside lies over the finished floor.
func (s *slab) height() bool {
	switch {
	case s.doc.Up.Known:
		s.t.Up = s.doc.Up.V
	case s.on && s.cab.Height.Known:
		s.t.Up = s.cab.Height.V
	default:
		s.r.lacks(s.doc.At, "how high "+s.doc.Name+" lies")
		return false
	}
	return true
}

func (s *slab) goods() {
	if s.doc.Made.V == document.StoneTop {
		return
	}
	s.good = s.r.good(s.doc.Stock, s.doc.Name+" and its like", s.doc.At)
	if s.doc.Made.V == document.SheetTop && s.good.known && s.good.thick != s.t.Thick {
		s.r.look("top-thickness", s.doc.Thickness.At, "{0} is to be {1} thick, and {2} is {3}", "write the thickness of the sheet, or name another", diag.T(s.doc.Name), diag.X(s.t.Thick), diag.T(s.good.name), diag.X(s.good.thick))
	}
	if s.doc.Made.V == document.StaveTop {
		s.glue()
	}
}

// edges lists the profiles of the upper edges.
func (s *slab) edges() {
	for _, e := range []struct {
		name string
		v    document.Value[document.EdgeProfile]
	}{{"front", s.doc.Edges.Front}, {"left", s.doc.Edges.Left}, {"right", s.doc.Edges.Right}, {"back", s.doc.Edges.Back}, {"cut-outs", s.doc.Edges.CutOuts}} {
		if e.v.Known {
			s.t.Edges = append(s.t.Edges, Edge{e.name, e.v.V})
		}
	}
}

// box is the slab in its own frame.
func (t Top) box() Box {
	return span(0, t.Width, t.Up, t.Up+t.Thick, t.Back, t.Depth)
}

// make turns the slab into a part with its profiles, cut-outs and recess.
func (s *slab) make() {
	if s.doc.Made.V == document.StoneTop || s.good.name == "" {
		return
	}
	s.reaches()
	b := &builder{r: s.r, name: s.t.Name, at: s.t.At}
	p := b.add(s.t.Name, s.good, s.t.box(), Flat, TopRole)
	p.Part.For = s.t.Name
	for _, e := range s.t.Edges {
		p.profile(e)
	}
	for _, h := range s.t.Holes {
		s.cut(p, h)
	}
	p.Part.Over = s.over()
	s.r.found = append(s.r.found, p.Part.Check()...)
	s.t.Part, s.t.Made = p.Part, true
}

// over is what is left on for scribing.
func (s *slab) over() part.Over {
	var over part.Over
	for _, d := range s.r.doc.Scribes {
		if d.For.Text != s.t.Name {
			continue
		}
		switch d.Edge.Or(document.ScribeBack) {
		case document.ScribeBack:
			over.Width += d.Leave.Or(0)
		case document.ScribeLeft, document.ScribeRight:
			over.Length += d.Leave.Or(0)
		}
	}
	return over
}

func (p *Piece) profile(e Edge) {
	side, known := map[string]part.Side{"front": part.Front, "left": part.Left, "right": part.Right, "back": part.Rear}[e.Name]
	kind, shaped := map[document.ProfileKind]part.ProfileKind{document.Chamfer: part.Chamfer, document.RoundOver: part.RoundOver}[e.Profile.Kind]
	if known && shaped {
		p.Part.Profiles = append(p.Part.Profiles, part.Profile{Kind: kind, A: part.Face, B: side, Reach: e.Profile.Size})
	}
}
