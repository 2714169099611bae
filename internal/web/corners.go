package web

import (
	"html/template"
	"net/http"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/sheet"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// cornerForm is one corner as it can be named, made and taken out.
type cornerForm struct {
	Name    string
	Called  field
	Outside *field // how tile ends at it; nil at an inside corner
	Soft    *field // the width of its soft joint; nil at an outside corner
	ID      string
	Sketch  template.HTML
}

// cornerForms are the corners in their order, and what may be asked of their ring.
type cornerForms struct {
	All   []cornerForm
	Order field
	New   field
	After []string
	Says  []said
	Open  bool
}

func (v *view) cornerForms() (cornerForms, error) {
	var out cornerForms
	corners := v.Plan.Document.Survey.Corners
	for _, c := range corners {
		f, err := v.cornerForm(c.Text)
		if err != nil {
			return out, err
		}
		out.All, out.After = append(out.All, f), append(out.After, c.Text)
		out.Open = out.Open || len(f.Called.Says) > 0
	}
	out.Order = field{Name: "order", ID: "corner-order", Label: "Clockwise, seen from above", Value: strings.Join(out.After, " ")}
	out.New = field{Name: "name", ID: "corner-new", Label: "Name of the new corner", Example: freeLetter(out.After)}
	if v.Typed["corners"] != "" {
		out.Says, out.Open = v.refusals(), true
		out.New.Value = v.Typed["name"]
		if o := v.Typed["order"]; o != "" {
			out.Order.Value = o
		}
	}
	return out, nil
}

// cornerForm asks for what a corner is: until the shape of the room is known both kinds are asked.
func (v *view) cornerForm(name string) (cornerForm, error) {
	f := cornerForm{Name: name, Called: v.rename("Corner "+name, "survey", "corners", name), ID: idOf("corner " + name)}
	outside, known := false, v.Plan.Room.Survey.Fixed
	for _, c := range v.Plan.Room.Survey.Corners {
		outside = outside || c.Name == name && c.Outside
	}
	if outside || !known {
		e := v.field("How tile ends at outside corner "+name, "corners", name, "outside").like(v.sample("trim 3/8, miter or lap", "trim 10, miter or lap"))
		f.Outside = &e
		made := document.Corner{}
		for _, c := range v.Plan.Document.Corners {
			if c.Name == name {
				made = c
			}
		}
		if outside || made.Edge.Known {
			var err error
			if f.Sketch, err = drawn(sheet.EdgeOnScreen(v.Plan, name, made), f.ID); err != nil {
				return f, err
			}
		}
	}
	if !outside {
		s := v.field("Soft joint in corner "+name, "corners", name, "soft joint").like(v.sample("1/8", "4")).tape()
		f.Soft = &s
	}
	return f, nil
}

func freeLetter(taken []string) string {
	for c := 'A'; c <= 'Z'; c++ {
		if !slices.Contains(taken, string(c)) {
			return string(c)
		}
	}
	return "A2"
}

// changeCorners puts a corner in, takes one out or puts them into another order, with the walls between them.
func (s *Server) changeCorners(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	ops, found := cornerOps(base, r)
	if found.Stops() {
		v.Refused, v.Typed = found, typedIn(r)
		return s.render(w, requestFor(r, local(r.PostFormValue("back"))), v, measurePage, http.StatusUnprocessableEntity)
	}
	return s.change(w, r, v, base, ops)
}

func cornerOps(base store.Revision, r *http.Request) ([]text.Op, diag.List) {
	switch r.PostFormValue("corners") {
	case "add":
		return document.AddCorner(base.Text, r.PostFormValue("name"), r.PostFormValue("after"))
	case "order":
		return document.OrderCorners(base.Text, strings.FieldsFunc(r.PostFormValue("order"), func(c rune) bool { return c == ' ' || c == ',' }))
	}
	return document.RemoveCorner(base.Text, r.PostFormValue("take"))
}
