package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// A foot that is scribed follows the floor's own readings: the floor line along the wall where one was read, the corners else. The part is
// sawn down to the lowest floor under it, set level, and loses everywhere what the floor is higher.

// footScribes are the lines of one foot: of a cabinet its two sides and its front, of trim each run.
func (r *room) footScribes(doc document.Scribe) []Scribe {
	var all []Scribe
	add := func(what, wall string, long unit.Length, at func(unit.Length) (x, z unit.Length)) {
		if s, ok := r.footLine(doc, what, wall, long, at); ok {
			all = append(all, s)
		}
	}
	if c, ok := r.made(doc.For.Text); ok {
		w, front := c.Asked.Size(xAxis), c.Asked.Hi[zAxis]
		for _, p := range c.Pieces {
			if p.Role == ToeRole {
				front = p.Box.Hi[zAxis]
			}
		}
		add("left side", c.Wall, c.Asked.Hi[zAxis], func(l unit.Length) (x, z unit.Length) { return c.X, l })
		add("right side", c.Wall, c.Asked.Hi[zAxis], func(l unit.Length) (x, z unit.Length) { return c.X + w, l })
		add("front", c.Wall, w, func(l unit.Length) (x, z unit.Length) { return c.X + l, front })
	}
	for _, t := range r.plan.Trim {
		for _, run := range t.Runs {
			if t.Name == doc.For.Text && (t.Kind == document.Baseboard || t.Kind == document.Shoe) {
				add(run.Wall+", "+run.Where, run.Wall, run.Length, func(l unit.Length) (x, z unit.Length) { return run.From + l, 0 })
			}
		}
	}
	if len(all) == 0 {
		r.lacks(doc.At, "offsets for "+doc.Name+", or readings of the floor under "+doc.For.Text)
		return nil
	}
	worst := all[0]
	for _, s := range all {
		if s.Needs > worst.Needs {
			worst = s
		}
	}
	r.checkScribe(doc, worst, "")
	return all
}

// footLine is one line along the floor. A way along the part gives places before the wall.
func (r *room) footLine(doc document.Scribe, what, wall string, long unit.Length, at func(unit.Length) (x, z unit.Length)) (Scribe, bool) {
	s := Scribe{Name: doc.Name + ", " + what, For: doc.For.Text, At: doc.At, Edge: document.ScribeFoot, Source: "the floor's own readings", Leave: doc.Leave.V, LeaveKnown: doc.Leave.Known, Length: long, Origin: "left end", Turned: true}
	if what == "left side" || what == "right side" { // their inner faces are up
		s.Origin, s.Turned = "back", what == "right side"
	}
	f, ok := r.shape.Face(wall)
	if !ok {
		return s, false
	}
	g, ok := r.groundBefore(f)
	if !ok {
		return s, false
	}
	places := []unit.Length{0, long}
	x0, z0 := at(0)
	if x1, z1 := at(long); z1 == z0 { // along the wall: where the floor line was read
		places = places[:1]
		for _, b := range f.Bare {
			if b.X > x0 && b.X < x1 {
				places = append(places, b.X-x0)
			}
		}
		places = append(places, long)
	}
	high := -unit.Reach
	heights := make([]unit.Length, len(places))
	for i, l := range places {
		x, z := at(l)
		heights[i] = g.at(x, z) + beyondStraight(f, x)
		high = max(high, heights[i])
	}
	low := high
	for _, h := range heights {
		low = min(low, h)
	}
	for i, l := range places {
		s.Line = append(s.Line, ScribePoint{l, high - heights[i], heights[i] - low})
	}
	s.Needs = high - low
	if len(f.Bare) > 2 {
		r.assume(doc.At, "the floor before {0} is as uneven as its floor line says, out to the front of {1}", "our own; take offsets where it matters", diag.T(wall), diag.T(doc.For.Text))
	}
	return s, true
}

// beyondStraight is how much higher the floor line of a wall is at x than the straight line between its ends.
func beyondStraight(f site.Face, x unit.Length) unit.Length {
	line := f.Bare
	if len(line) < 3 {
		return 0
	}
	var all []document.Station
	for _, b := range line {
		all = append(all, document.Station{X: b.X, Value: b.Y})
	}
	return profileAt(all, x) - profileAt([]document.Station{all[0], all[len(all)-1]}, x)
}

// footLeave is what is left on the foot of a cabinet for scribing.
func (r *room) footLeave(name string) unit.Length {
	for _, s := range r.doc.Scribes {
		if s.For.Text == name && s.Edge.Or(document.ScribeBack) == document.ScribeFoot {
			return s.Leave.Or(0)
		}
	}
	return 0
}

// besideReadings are offsets of the solved wall beside a part: of a cabinet up its front, from its foot; of a top along its end, from the
// back. They are how far the wall is behind its own nearest place.
func (r *room) besideReadings(s *Scribe) []document.Station {
	var wall string
	var places []unit.Length
	var at func(unit.Length) (z, y unit.Length)
	if c, ok := r.made(s.For); ok {
		box := c.Asked
		wall, places = c.Wall, []unit.Length{0, box.Size(yAxis)}
		at = func(l unit.Length) (z, y unit.Length) { return box.Hi[zAxis], box.Lo[yAxis] + l }
	}
	for _, t := range r.plan.Tops {
		if t.Name == s.For {
			wall, places = t.Wall, []unit.Length{0, t.Depth - t.Back}
			at = func(l unit.Length) (z, y unit.Length) { return t.Back + l, t.Up }
		}
	}
	w := r.between(wall)
	b, sign := w.left, 1.0
	if s.Edge == document.ScribeRight {
		b, sign = w.right, -1
	}
	if at == nil || !w.ok || !b.read && len(b.belly) == 0 {
		return nil
	}
	z0, _ := at(places[0])
	if z1, _ := at(places[1]); z1 != z0 {
		places = b.within(z0, places[1])
	}
	s.Source = "the solved wall beside it"
	var out []document.Station
	near := -unit.Reach
	for _, l := range places {
		z, y := at(l)
		in := unit.FromFloat(b.into(z, y, sign))
		near = max(near, in)
		out = append(out, document.Station{X: l, Value: in})
	}
	for i := range out {
		out[i].Value = near - out[i].Value
	}
	return out
}

// within are the places, from z0 on, at which a belly was read, with both ends.
func (b beside) within(z0, long unit.Length) []unit.Length {
	all := []unit.Length{0}
	for i := range b.belly {
		p := b.belly[i]
		if b.fromFar {
			p = b.belly[len(b.belly)-1-i]
		}
		if z := b.place(p.X) - z0; z > 0 && z < long {
			all = append(all, z)
		}
	}
	return append(all, long)
}
