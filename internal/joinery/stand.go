package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Standing is how a cabinet comes level on a floor that is not: what legs, feet or shims add at its four corners.
type Standing struct {
	Known       bool
	Feet        [4]Foot
	Least, Most unit.Length // of the four
}

// Foot is one corner of a cabinet over the floor.
type Foot struct {
	Name  string
	X, Z  unit.Length // in the cabinet's frame
	Raise unit.Length
}

// locate puts the cabinet on its wall and on its floor.
func (r *room) locate(c *Cabinet, o outline) bool {
	x0, _, ok := r.shape.Across(o.doc.In.Text, o.doc.Across, o.w)
	if !ok {
		r.lacks(o.doc.At, "the place of "+o.doc.Name+" along its wall")
		return false
	}
	c.X = x0
	r.bringIn(c, o)
	r.pierce(c)
	r.screws(c, o)
	if o.doc.Stands.Or(document.OnFloor) != document.OnWall {
		c.Stands = r.standing(o, x0)
	}
	return true
}

// standing finds what has to be added under each corner so that the top is level at its height over the finished floor.
func (r *room) standing(o outline, x0 unit.Length) Standing {
	var s Standing
	f, ok := r.shape.Face(o.doc.In.Text)
	if !ok || !r.shape.FinishedKnown {
		r.lacks(o.doc.At, "the level of the finished floor under "+o.doc.Name)
		return s
	}
	g, ok := r.groundBefore(f)
	if !ok {
		r.lacks(o.doc.At, "the level of the floor at the corners round "+o.doc.Name)
		return s
	}
	s.Known = true
	for i, at := range []Foot{{"front left", 0, o.d, 0}, {"front right", o.w, o.d, 0}, {"rear left", 0, 0, 0}, {"rear right", o.w, 0, 0}} {
		at.Raise = r.shape.FinishedFloor - g.at(x0+at.X, at.Z)
		s.Feet[i] = at
		if i == 0 {
			s.Least, s.Most = at.Raise, at.Raise
		}
		s.Least, s.Most = min(s.Least, at.Raise), max(s.Most, at.Raise)
	}
	r.checkStanding(o, s)
	return s
}

// checkStanding holds what is needed under a cabinet against what its feet can give.
func (r *room) checkStanding(o outline, s Standing) {
	raise := o.doc.Raise
	switch {
	case s.Least < 0:
		r.stop("foot-high", o.doc.At, "the floor under {0} is up to {1} higher than the level that its height counts from", "cut that off its foot, or let heights count from the highest floor", diag.T(o.doc.Name), diag.L(-s.Least))
	case !raise.Known && s.Most > 0:
		r.assume(o.doc.At, "{0} is shimmed by up to {1} at its lowest corner", "no range is written for its feet (raise)", diag.T(o.doc.Name), diag.L(s.Most))
	case raise.Known && s.Most > raise.V.Most:
		r.look("raise-short", raise.At, "{0} has to be raised by {1} at its lowest corner; its feet give {2}", "use longer feet, or shims under them", diag.T(o.doc.Name), diag.L(s.Most), diag.X(raise.V.Most))
	case raise.Known && s.Least < raise.V.Least:
		r.look("raise-long", raise.At, "{0} may be raised by {1} only at its highest corner; its feet are {2} at least", "cut {3} off the height of its sides", diag.T(o.doc.Name), diag.L(s.Least), diag.X(raise.V.Least), diag.L(raise.V.Least-s.Least))
	}
}
