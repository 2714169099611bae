package joinery

import (
	"cmp"
	"math"
	"slices"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// walls runs trim along walls, between corners, doors and cabinets.
func (m *trimmer) walls() {
	for _, f := range m.r.shape.Faces {
		if f.Kind == site.WallFace && m.wants(f.Name) && len(f.Bare) > 0 {
			for _, s := range m.stretches(f) {
				m.run(f, s)
			}
		}
	}
}

func (m *trimmer) wants(wall string) bool {
	return len(m.doc.Along) == 0 || slices.ContainsFunc(m.doc.Along, func(n document.Name) bool { return n.Text == wall })
}

// stretch is a part of a wall with what ends it.
type stretch struct {
	lo, hi unit.Length
	ends   [2]TrimEnd
}

// stretches cuts a wall at doors, with their casings, and at the cabinets that are named.
func (m *trimmer) stretches(f site.Face) []stretch {
	all := []stretch{m.whole(f)}
	for _, gap := range m.interruptions(f) {
		last := all[len(all)-1]
		if gap.hi <= last.lo || gap.lo >= last.hi {
			continue
		}
		rest := last
		last.hi, last.ends[1] = gap.lo-m.doc.Ends.Or(0), TrimEnd{What: gap.ends[0].What, Joint: "square"}
		rest.lo, rest.ends[0] = gap.hi+m.doc.Ends.Or(0), TrimEnd{What: gap.ends[1].What, Joint: "square"}
		all = append(all[:len(all)-1], last, rest)
	}
	return slices.DeleteFunc(all, func(s stretch) bool { return s.hi <= s.lo })
}

// whole is a wall from finished corner to finished corner.
func (m *trimmer) whole(f site.Face) stretch {
	l, r := m.r.shape.Survey.Corner(f.LeftCorner), m.r.shape.Survey.Corner(f.RightCorner)
	from := f.Bare[0].X
	return stretch{lo: from + along(l.Board, r.Board, l.Finished), hi: from + along(l.Board, r.Board, r.Finished), ends: [2]TrimEnd{m.corner(f, l, true), m.corner(f, r, false)}}
}

// along is how far a point is along the line from a to b, rounded once.
func along(a, b, p geom.Point) unit.Length {
	run, d := b.Sub(a), p.Sub(a)
	long := math.Hypot(float64(run.X), float64(run.Y))
	if long == 0 {
		return 0
	}
	return unit.FromFloat((float64(run.X)*float64(d.X) + float64(run.Y)*float64(d.Y)) / long)
}

// corner is how trim meets in a corner: mitered outside; inside as the document says, and square where nothing comes from the other
// wall. Of two that cope, the wall that stands first in the document runs square into the corner.
func (m *trimmer) corner(f site.Face, c site.Corner, atLeft bool) TrimEnd {
	e := TrimEnd{What: "corner " + c.Name, Joint: "square", Angle: c.Angle, Saw: wood.Miter(c.Angle)}
	other, ok := m.other(f, atLeft)
	inside := m.doc.Inside.Or(document.Coped)
	switch {
	case m.doc.Kind == document.Ledger || !ok || !m.wants(other.Name):
		e.Saw = 0
	case c.Outside || inside == document.Mitered:
		e.Joint = "mitered"
	case m.first(f.Name, other.Name):
		e.Saw = 0
	case inside == document.Coped:
		e.Joint = "coped"
	default:
		e.Joint, e.Saw = "butted", 0
	}
	return e
}

// other is the wall round a corner.
func (m *trimmer) other(f site.Face, atLeft bool) (site.Face, bool) {
	for _, o := range m.r.shape.Faces {
		if o.Kind == site.WallFace && (atLeft && o.RightCorner == f.LeftCorner || !atLeft && o.LeftCorner == f.RightCorner) {
			return o, true
		}
	}
	return site.Face{}, false
}

func (m *trimmer) first(a, b string) bool {
	for _, f := range m.r.shape.Faces {
		if f.Name == a || f.Name == b {
			return f.Name == a
		}
	}
	return false
}

// interruptions are the doors of a wall and the cabinets that the trim stops at, from the left.
func (m *trimmer) interruptions(f site.Face) []stretch {
	var all []stretch
	add := func(lo, hi unit.Length, left, right string) {
		all = append(all, stretch{lo, hi, [2]TrimEnd{{What: left}, {What: right}}})
	}
	for _, o := range f.Openings {
		if m.atFloor(f, o) && m.doc.Kind != document.Ledger {
			more := m.casingOf(o.Name)
			add(o.Rect.Min.X-more, o.Rect.Max.X+more, o.Name+", left", o.Name+", right")
		}
	}
	for _, name := range m.doc.Skip {
		if c, ok := m.r.made(name.Text); ok && c.Wall == f.Name {
			add(c.X, c.X+c.Asked.Hi[xAxis], c.Name, c.Name)
		}
	}
	slices.SortStableFunc(all, func(a, b stretch) int { return cmp.Compare(a.lo, b.lo) })
	return all
}

// atFloor reports whether an opening reaches down to where the trim runs.
func (m *trimmer) atFloor(f site.Face, o site.Opening) bool {
	return o.Kind != "box" && o.Rect.Min.Y < f.HighFloor+m.wide
}

// casingOf is how far the casing of an opening reaches beyond its edge.
func (m *trimmer) casingOf(opening string) unit.Length {
	for _, d := range m.r.doc.Trim {
		if d.Kind != document.Casing || !slices.ContainsFunc(d.Round, func(n document.Name) bool { return n.Text == opening }) {
			continue
		}
		if s, ok := m.r.doc.StockNamed(d.Stock.Text); ok && s.Width.Known {
			return s.Width.V + d.Reveal.Or(m.r.round(3*unit.Inch/16, 5*unit.Millimetre))
		}
	}
	return 0
}

// before is how thick the trim is that this one stands before: a shoe stands before the baseboard of its wall.
func (m *trimmer) before(wall string) unit.Length {
	if m.doc.Kind != document.Shoe {
		return 0
	}
	for _, d := range m.r.doc.Trim {
		b := trimmer{r: m.r, doc: d}
		if s, ok := m.r.doc.StockNamed(d.Stock.Text); d.Kind == document.Baseboard && b.wants(wall) && ok {
			thick, _, _ := s.Thickness()
			return thick
		}
	}
	return 0
}

// run makes the pieces of one stretch.
func (m *trimmer) run(f site.Face, s stretch) {
	off := m.before(f.Name)
	r := Run{Wall: f.Name, Where: "from " + s.ends[0].What + " to " + s.ends[1].What, From: s.lo, Length: s.hi - s.lo, Ends: s.ends}
	for _, e := range s.ends {
		if e.Angle != 0 { // what stands before other trim is shorter in an inside corner, and longer round an outside one
			r.Length -= unit.FromFloat(float64(off) * math.Tan(wood.Miter(e.Angle).Radians()))
		}
	}
	if g, ok := m.r.groundBefore(f); ok {
		r.Falls = (g.at(s.hi, 0) - g.at(s.lo, 0)).Abs()
	}
	r.Pieces = m.split(f, &r)
	m.ledger(f, &r)
	m.t.Runs = append(m.t.Runs, r)
}

// split cuts a run into as few pieces as the stick allows, joined by scarfs at 45° that lie on studs where these are recorded and within
// reach, else alike to the mark. A coped end is sawn as a miter first, from the corner itself, so the piece is sawn longer by the thickness
// of the other.
func (m *trimmer) split(f site.Face, r *Run) []Length {
	stick := m.good.stock.Length
	long, ends, over := m.ends(*r)
	n := unit.Length(1)
	for stick.Known && stick.V > m.good.thick && (long+over+(n-1)*m.good.thick+n-1)/n > stick.V {
		n++
	}
	whole := long + (n-1)*m.good.thick // each scarf laps by the thickness
	left, right := copes(onSide(ends, part.Left))*m.good.thick, copes(onSide(ends, part.Right))*m.good.thick
	joints, at := m.scarfs(f, m.startsAt(*r), whole, stick.V, int(n), left, right)
	r.Scarfs = at
	joints = append(joints, whole)
	var all []Length
	before := unit.Length(0)
	for i, end := range joints {
		size := end - before
		before = end
		var cut []part.End
		if i == 0 {
			cut = append(cut, onSide(ends, part.Left)...)
		} else {
			cut = append(cut, part.End{On: part.Left, Bevel: -45 * unit.Degree})
		}
		if i == len(joints)-1 {
			cut = append(cut, onSide(ends, part.Right)...)
		} else {
			cut = append(cut, part.End{On: part.Right, Bevel: 45 * unit.Degree})
		}
		p := m.piece(m.doc.Name+", "+r.Wall+", "+r.Where, size, cut...)
		p.Part.Over.Length = copes(cut) * m.good.thick
		all = append(all, p)
	}
	return all
}

// startsAt is where the left long point of a run lies along its wall.
func (m *trimmer) startsAt(r Run) unit.Length {
	switch e := r.Ends[0]; {
	case e.Joint == "coped" || e.Joint == "butted":
		return r.From + m.good.thick
	case e.Joint == "mitered" && e.Saw < 0:
		return r.From - unit.FromFloat(float64(m.good.thick)*math.Tan((-e.Saw).Radians()))
	}
	return r.From
}

func onSide(ends []part.End, s part.Side) []part.End {
	return slices.DeleteFunc(slices.Clone(ends), func(e part.End) bool { return e.On != s })
}

func copes(ends []part.End) unit.Length {
	n := unit.Length(0)
	for _, e := range ends {
		if e.Cope != "" {
			n++
		}
	}
	return n
}

// ends gives the length to the long points, the ends, and what is sawn longer for coping. The back lies on the wall: in an inside corner
// it keeps the long point, round an outside corner the face does.
func (m *trimmer) ends(r Run) (long unit.Length, ends []part.End, over unit.Length) {
	long = r.Length
	for i, e := range r.Ends {
		side := part.Left + part.Side(i)
		switch e.Joint {
		case "mitered":
			ends = append(ends, part.End{On: side, Bevel: -e.Saw})
			if e.Saw < 0 {
				long += unit.FromFloat(float64(m.good.thick) * math.Tan((-e.Saw).Radians()))
			}
		case "coped":
			ends = append(ends, part.End{On: side, Cope: m.doc.Name})
			long -= m.good.thick
			over += m.good.thick
		case "butted":
			long -= m.good.thick
		}
	}
	return long, ends, over
}
