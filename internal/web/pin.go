package web

import (
	"fmt"
	"net/http"
	"strconv"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// pin holds a pattern where a hand has moved it, or at one of the layouts, or lets it go.
func (s *Server) pin(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	from := *v
	if base.Number != v.Head {
		from.take(base.Text)
	}
	ops, err := from.pinOps(r)
	if err != nil {
		return err
	}
	return s.change(w, r, v, base, ops)
}

func pinPath(face, field string) []string { return []string{"lay", face, "fields", field, "pin"} }

// pinOps reads what the hand did.
func (v *view) pinOps(r *http.Request) ([]text.Op, error) {
	face, field := r.PostFormValue("face"), r.PostFormValue("field")
	if face == "" || field == "" || text.At(v.Tree, pinPath(face, field)[:4]) == nil {
		return nil, fault{http.StatusUnprocessableEntity, "That face is not laid in the document."}
	}
	if r.PostFormValue("free") != "" {
		if text.At(v.Tree, pinPath(face, field)) == nil {
			return nil, nil
		}
		return []text.Op{{Do: text.Remove, Path: pinPath(face, field)}}, nil
	}
	if k := r.PostFormValue("layout"); k != "" {
		return v.chooseLayout(face, field, k)
	}
	return v.moveBy(face, field, umOf(r, "dx"), umOf(r, "dy"))
}

// umOf reads a distance in micrometres of the room. What is no number, or larger than any room, is none.
func umOf(r *http.Request, name string) unit.Length {
	um, err := strconv.ParseFloat(r.PostFormValue(name), 64)
	if err != nil || um != um || um > 1e7 || um < -1e7 {
		return 0
	}
	return unit.FromMM(um / 1000)
}

// chooseLayout holds one of the layouts that the search found. The best one needs no holding.
func (v *view) chooseLayout(face, field, k string) ([]text.Op, error) {
	free, err := v.free(face, field)
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(k)
	_, z, ok := free.laid(face, field)
	if err != nil || !ok || n < 0 || n >= len(z.Layouts) {
		return nil, fault{http.StatusUnprocessableEntity, "There is no such layout any more: the room has changed."}
	}
	if n > 0 {
		op, ok := free.hold(face, z, z.Layouts[n])
		return []text.Op{op}, heldOr(ok)
	}
	if text.At(v.Tree, pinPath(face, field)) == nil {
		return nil, nil
	}
	return []text.Op{{Do: text.Remove, Path: pinPath(face, field)}}, nil
}

// moveBy holds the joint crossing so far from where it is, at a mark of the tape.
func (v *view) moveBy(face, field string, dx, dy unit.Length) ([]text.Op, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToTiling, Face: face, Quick: true}); err != nil {
		return nil, err
	}
	_, z, ok := v.laid(face, field)
	if !ok || z.Name != field {
		return nil, fault{http.StatusUnprocessableEntity, "That face can not be laid yet."}
	}
	c, ok := v.crossing(face, z)
	if !ok {
		return nil, fault{http.StatusUnprocessableEntity, "The pattern of this face can not be held by hand."}
	}
	op, ok := v.holdAt(face, z, geom.Point{X: c.X + dx, Y: c.Y + dy})
	return []text.Op{op}, heldOr(ok)
}

func heldOr(ok bool) error {
	if !ok {
		return fault{http.StatusUnprocessableEntity, "There is no place on this face to hold the pattern at there."}
	}
	return nil
}

// crossing is the middle of the joint crossing at the lower left corner of the pattern's first tile, on the face. False
// where the document has no words to hold one there.
func (v *view) crossing(face string, z plan.Field) (geom.Point, bool) {
	c := v.corner(z, z.Chosen().Origin)
	_, ok := v.holdAt(face, z, c)
	return c, ok
}

func (v *view) corner(z plan.Field, origin geom.Point) geom.Point {
	half := z.Joint.MulDiv(1, 2)
	return geom.Frame{Origin: origin, Angle: z.Angle}.Out(geom.Point{X: -half, Y: -half})
}

func (v *view) hold(face string, z plan.Field, l plan.Layout) (text.Op, bool) {
	return v.holdAt(face, z, v.corner(z, l.Origin))
}

// holdAt words a pin in the document's unit. False where the document has no words for that place.
func (v *view) holdAt(face string, z plan.Field, c geom.Point) (text.Op, bool) {
	s := unit.DefaultStyle(v.Plan.Document.Units)
	s.Mark = s.Mark.MulDiv(1, 2) // the search's marks: 1/32 in or 0.5 mm
	words := v.heightPin
	if face == "floor" {
		words = v.floorPin
	}
	pin, ok := words(s, z, face, c)
	return text.Op{Do: text.Set, Path: pinPath(face, z.Name), Value: pin}, ok
}

// heightPin: from the left end of the face, or from the right end where it lies beyond the left one, and from the level
// line.
func (v *view) heightPin(s unit.Style, _ plan.Field, face string, c geom.Point) (string, bool) {
	left, _, okL := v.Plan.Room.Across(face, document.Across{Given: true, From: "left"}, 0)
	right, _, okR := v.Plan.Room.Across(face, document.Across{Given: true, From: "right"}, 0)
	_, _, okUp := v.Plan.Room.Up(face, document.Up{Given: true, Datum: document.AboveLevel}, 0)
	across := s.Bare(c.X-left) + " from left"
	if c.X < left {
		across = s.Bare(right-c.X) + " from right"
	}
	up := s.Bare(c.Y) + " above level"
	if c.Y.Round(s.Mark) < 0 {
		up = s.Bare(-c.Y) + " below level"
	}
	return fmt.Sprintf("{across: %s, up: %s}", across, up), okL && okR && okUp
}

// floorPin: square off two walls, those that it was told off before if they will do.
func (v *view) floorPin(s unit.Style, z plan.Field, face string, c geom.Point) (string, bool) {
	var before []string
	if off := text.At(v.Tree, append(pinPath(face, z.Name), "off")); off != nil {
		for _, e := range off.Entries {
			before = append(before, e.Key)
		}
	}
	list, ok := v.Plan.Room.OffTwo(c, before...)
	off := &text.Node{Kind: text.Map}
	for _, a := range list {
		off.Entries = append(off.Entries, text.Entry{Key: a.Wall, Value: &text.Node{Kind: text.Scalar, Text: s.Bare(a.Value.V)}})
	}
	return "{off: " + text.Flow(off) + "}", ok
}

// with is the view after one more operation, not kept.
func (v *view) with(op text.Op) (*view, error) {
	next, refused := v.server.plans.texts.try(v.Text, []text.Op{op})
	if len(refused) > 0 {
		return nil, fault{http.StatusUnprocessableEntity, capital(refused[0].Say(v.Plan.Style)) + "."}
	}
	out := *v
	out.take(next)
	return &out, out.make(plan.Options{UpTo: plan.UpToTiling, Face: op.Path[1], Quick: true})
}

// free is the view with no pin on a field, planned for its face.
func (v *view) free(face, field string) (*view, error) {
	if text.At(v.Tree, pinPath(face, field)) != nil {
		return v.with(text.Op{Do: text.Remove, Path: pinPath(face, field)})
	}
	out := *v
	return &out, out.make(plan.Options{UpTo: plan.UpToTiling, Face: face})
}
