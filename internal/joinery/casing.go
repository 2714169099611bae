package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// opening finds an opening on its wall.
func (r *room) opening(name string) (site.Face, site.Opening, bool) {
	for _, f := range r.shape.Faces {
		for _, o := range f.Openings {
			if o.Name == name && f.Kind == site.WallFace {
				return f, o, true
			}
		}
	}
	return site.Face{}, site.Opening{}, false
}

// usualReveal is how far a casing stands back from the inside of a jamb: 3/16 in, 5 mm (common practice).
func (m *trimmer) reveal() unit.Length {
	return m.r.usual(m.doc.Reveal, m.r.round(3*unit.Inch/16, 5*unit.Millimetre), m.doc.At, "the reveal of "+m.doc.Name)
}

// casings frame openings: legs and head mitered, all round where that is asked for. Front edges are the outer ones, which keep the
// long points.
func (m *trimmer) casings() {
	for _, name := range m.doc.Round {
		f, o, ok := m.r.opening(name.Text)
		if !ok {
			m.r.lacks(name.At, "the place of "+name.Text)
			continue
		}
		gap, w := m.reveal(), m.wide
		head := o.Rect.W() + 2*gap + 2*w
		leg := o.Rect.H() + gap + w
		all := m.doc.Sill.Or(false)
		ends := []part.End{miter(part.Left)}
		if all {
			leg += gap + w
			ends = append(ends, miter(part.Right))
		} else {
			leg -= m.floorUnder(f, o)
		}
		sides := []casingSide{{"left", leg, ends}, {"right", leg, ends}, {"head", head, []part.End{miter(part.Left), miter(part.Right)}}}
		if all {
			sides = append(sides, casingSide{"foot", head, sides[2].ends})
		}
		for _, s := range sides {
			m.side(f, o, s)
		}
	}
}

type casingSide struct {
	name string
	long unit.Length
	ends []part.End
}

// miter is an end at 45°, whose long point lies on the front edge.
func miter(on part.Side) part.End { return part.End{On: on, Miter: 45 * unit.Degree} }

// floorUnder is how far the finished floor stands over the lower edge of a door: its casing stands on the floor. The legs are cut to
// the higher floor of both.
func (m *trimmer) floorUnder(f site.Face, o site.Opening) unit.Length {
	g, ok := m.r.groundBefore(f)
	if !ok || o.Kind != "door" {
		return 0
	}
	return max(g.at(o.Rect.Min.X, 0), g.at(o.Rect.Max.X, 0)) - o.Rect.Min.Y
}

func (m *trimmer) side(f site.Face, o site.Opening, s casingSide) {
	what := o.Name + ", " + s.name
	m.fits(what, s.long)
	p := m.piece(m.doc.Name+" "+what, s.long, s.ends...)
	run := Run{Wall: f.Name, Where: what, Length: s.long, Pieces: []Length{p}}
	for i := range run.Ends {
		run.Ends[i] = TrimEnd{What: what, Joint: "square"}
	}
	for _, e := range s.ends {
		run.Ends[e.On-part.Left] = TrimEnd{What: what, Joint: "mitered", Angle: 90 * unit.Degree, Saw: e.Miter}
	}
	m.t.Runs = append(m.t.Runs, run)
}

// extensions bring a jamb out to the finished face where what lies on the studs is thicker than the jamb stands out.
func (m *trimmer) extensions() {
	if !m.r.known(m.doc.Jamb, m.doc.At, "how far the jamb stands before the studs ("+m.doc.Name+")") {
		return
	}
	for _, name := range m.doc.Round {
		f, o, ok := m.r.opening(name.Text)
		if !ok {
			m.r.lacks(name.At, "the place of "+name.Text)
			continue
		}
		finished := f.BoardThick + f.TileOff
		deep := finished - m.doc.Jamb.V
		switch {
		case deep < 0:
			m.r.look("jamb-proud", m.doc.Jamb.At, "the jamb of {0} stands {1} before the finished face: there is nothing to extend", "plane it, or build the wall up", diag.T(o.Name), diag.X(-deep))
			continue
		case deep == 0:
			m.r.found.Add(diag.Note, "jamb-flush", m.doc.Jamb.At, "the jamb of {0} is flush with the finished face", "", diag.T(o.Name))
			continue
		case deep > m.wide:
			m.r.stop("jamb-deep", m.doc.At, "the jamb of {0} has to come out by {1}, and {2} is {3} wide", "use a wider stick", diag.T(o.Name), diag.X(deep), diag.T(m.good.name), diag.X(m.wide))
			continue
		}
		m.extension(f, o, deep)
	}
}

// extension is the strips of one opening, ripped to the depth that lacks: the legs between floor or foot and head, head and foot over
// them.
func (m *trimmer) extension(f site.Face, o site.Opening, deep unit.Length) {
	wide := m.wide
	m.wide = deep
	head := o.Rect.W() + 2*m.good.thick
	leg := o.Rect.H()
	sides := []casingSide{{"left", leg, nil}, {"right", leg, nil}, {"head", head, nil}}
	if m.doc.Sill.Or(false) {
		sides = append(sides, casingSide{"foot", head, nil})
	} else {
		sides[0].long -= m.floorUnder(f, o)
		sides[1].long = sides[0].long
	}
	for _, s := range sides {
		m.side(f, o, s)
	}
	m.wide = wide
}
