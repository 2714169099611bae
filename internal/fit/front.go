package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// inFront holds what is clear straight before a fixture, over its width, against the requirements: to a wall, a fixture or a cabinet.
func (c *checker) inFront(s subject, wall string, x, width, front figure.Figure, of rule.Subject, name string) {
	a, ok := c.law(of, rule.AtLeast, "move it, or what stands before it")
	if !ok {
		return
	}
	d, by := c.ahead(wall, x, width, front)
	c.least(s, "clear in front", "{0}: clear in front, to {1}", d, a, diag.T(by))
}

// ahead is how far the nearest thing is before a front, over a width about a place along the wall, and what it is.
func (c *checker) ahead(wall string, x, width, front figure.Figure) (figure.Figure, string) {
	all := x.Add(width).Add(front)
	w, ok := c.at.Wall(wall)
	if !ok || !all.Known() {
		return all, "what stands before it"
	}
	strip := space.Span{Lo: x.V - width.V/2, Hi: x.V + width.V/2}
	z, by, found := c.opposite(w, strip, front.V)
	if !found {
		return figure.Missing("survey > corners"), "the wall before it"
	}
	d := c.across(w, by).Sub(front).Using(x.Facts()...).Using(width.Facts()...)
	for _, e := range c.at.Solids {
		if !standsInWay(e) || e.Wall == wall && e.Z.Lo < front.V {
			continue
		}
		if near, ok := nearest(w.Frame, e.Plan, strip, front.V); ok && near < z {
			z, by = near, e.Name
			d = front.Neg().Using(e.Uses...).Using(surveyPath).Using(x.Facts()...)
		}
	}
	return d.Moving(z - front.V), by
}

const surveyPath = "survey > tape"

// standsInWay reports whether an envelope is something that one bumps into: what hangs flat on a wall is not, nor is the way of a door.
func standsInWay(e space.Envelope) bool {
	return e.Kind == space.Fixture || e.Kind == space.Carcass || e.Kind == space.Top
}

// across is how far the finished face of a wall is from that of another before it, as far as it moves with facts.
func (c *checker) across(w place.Wall, by string) figure.Figure {
	d := figure.Fact(surveyPath, 0).Sub(w.Board()).Sub(w.Finish())
	if o, ok := c.at.Wall(by); ok {
		d = d.Sub(o.Board()).Sub(o.Finish())
	}
	return d
}

// opposite is how far off a wall the nearest other wall is that is met before a front.
func (c *checker) opposite(w place.Wall, strip space.Span, front unit.Length) (z unit.Length, name string, found bool) {
	corners := c.room.Survey.Corners
	z = unit.Reach
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		wall := c.wallBetween(a.Name, b.Name)
		if wall == w.Name {
			continue
		}
		if near, ok := nearest(w.Frame, geom.Ring{{P: a.Finished}, {P: b.Finished}}, strip, front); ok && near < z {
			z, name, found = near, wall, true
		}
	}
	return z, name, found
}

// nearest is the least distance off a wall, beyond a front, at which an outline enters a strip square to that wall.
func nearest(w space.Wall, r geom.Ring, strip space.Span, front unit.Length) (unit.Length, bool) {
	best, found := unit.Reach, false
	take := func(z unit.Length) {
		if z >= front && z < best {
			best, found = z, true
		}
	}
	for i, v := range r {
		ax, az := w.Of(v.P)
		bx, bz := w.Of(r[(i+1)%len(r)].P)
		if ax > strip.Lo && ax < strip.Hi {
			take(az)
		}
		for _, edge := range []unit.Length{strip.Lo, strip.Hi} {
			if (ax < edge) != (bx < edge) {
				take(az + (bz-az).MulDiv(int64(edge-ax), int64(bx-ax)))
			}
		}
	}
	return best, found
}
