package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Standing is how a cabinet comes level on a floor that is not.
type Standing struct {
	Known     bool
	High, Low unit.Length // of the finished floor under it, from the level line (negative)
	Raise     unit.Length // what legs, feet or shims have to add at the lowest place
}

// Screw is one screw into the wall.
type Screw struct {
	X, Y unit.Length // in the wall's frame
	Into string      // the stud or blocking that it lands in; "" for none that is recorded
	Hold unit.Length // how far it goes into that wood; 0 unknown
}

// locate puts the cabinet on its wall and on its floor.
func (r *room) locate(c *Cabinet, o outline) bool {
	x0, x1, ok := r.shape.Across(o.doc.In.Text, o.doc.Across, o.w)
	if !ok {
		r.lacks(o.doc.At, "the place of "+o.doc.Name+" along its wall")
		return false
	}
	c.X = x0
	if x1-x0 != o.w {
		o.w = x1 - x0
	}
	c.Stands = r.standing(o, x0, x1)
	return true
}

// standing finds the highest and the lowest finished floor under a cabinet. Its height counts from the highest.
func (r *room) standing(o outline, x0, x1 unit.Length) Standing {
	f, ok := r.shape.Face(o.doc.In.Text)
	if !ok || !r.shape.FinishedKnown || o.doc.Stands.Or(document.OnFloor) == document.OnWall {
		return Standing{}
	}
	s := Standing{Known: true, High: f.HighFloor, Low: f.LowFloor}
	s.Raise = s.High - s.Low
	if most := o.doc.Raise; most.Known && most.V.Most < s.Raise {
		r.look("raise-short", most.At, "the floor along {0} falls by {1}; legs or shims of {2} can add {3}", "use longer feet, or shims of {1}", diag.T(f.Name), diag.L(s.Raise), diag.T(o.doc.Name), diag.X(most.V.Most))
	}
	return s
}
