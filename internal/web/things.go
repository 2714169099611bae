package web

import (
	"net/http"
	"net/url"

	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/text"
)

// ask is one fact that a form asks of a thing.
type ask struct {
	key, label     string
	inches, metric string // examples
	choices        []string
	wall, tape     bool // one of the faces; a length
	help           string
}

// kind is one collection of the document with what is asked of its things.
type kind struct {
	key, title, one, newName string
	asks                     []ask
}

// kinds are the things on and in the walls, in the order in which a person meets them.
var kinds = [...]kind{
	{"openings", "Windows, doors, niches", "opening", "window", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "kind", label: "What it is", choices: []string{"window", "door", "niche", "plain"}},
		{key: "across", label: "Along the wall, edge to edge", inches: "24 to 48 from B", metric: "600 to 1200 from B"},
		{key: "up", label: "How high, edge to edge", inches: "48 to 84 above floor", metric: "1200 to 2100 above floor"},
		{key: "depth", label: "How deep", inches: "4-1/2", metric: "115", tape: true},
		{key: "edge", label: "How the tile ends at its rim", inches: "trim 3/8, miter or lap", metric: "trim 10, miter or lap"},
	}},
	{"stub-outs", "Pipes through the tile", "pipe", "cold water", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "across", label: "Along the wall, to its center", inches: "30 from A", metric: "760 from A"},
		{key: "up", label: "How high, to its center", inches: "center 21 above floor", metric: "center 530 above floor"},
		{key: "diameter", label: "Diameter", inches: "5/8", metric: "15", tape: true},
	}},
	{"boxes", "Electrical boxes and plates", "box", "outlet", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "across", label: "Along the wall", inches: "center 48 from A", metric: "center 1200 from A"},
		{key: "up", label: "How high", inches: "center 44 above floor", metric: "center 1100 above floor"},
		{key: "width", label: "Width", inches: "2-1/4", metric: "57", tape: true},
		{key: "height", label: "Height", inches: "3-3/4", metric: "95", tape: true},
	}},
	{"in the wall", "Inside the wall, while it is open", "thing in the wall", "cold pipe", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "kind", label: "What it is", choices: []string{"stud", "blocking", "pipe", "cable", "nail plate"}},
		{key: "across", label: "Along the wall, edge to edge", inches: "31 to 32 from A", metric: "750 to 770 from A"},
		{key: "up", label: "How high", inches: "0 to 21 above floor", metric: "0 to 530 above floor"},
	}},
	{"center lines", "Center lines to measure from", "center line", "basin line", []ask{
		{key: "in", label: "On which wall", wall: true},
		{key: "across", label: "Along the wall", inches: "36 from A", metric: "900 from A"},
	}},
}

// things fills every collection.
func (v *view) things() []collection {
	var out []collection
	for _, k := range kinds {
		out = append(out, v.collection(k))
	}
	return out
}

func (v *view) collection(k kind) collection {
	c := collection{Title: k.title, One: k.one, Path: pathName([]string{k.key}), NewName: k.newName}
	if n := v.Tree.Get(k.key); n != nil {
		for _, e := range n.Entries {
			c.Things = append(c.Things, v.thing(k, e))
		}
	}
	for _, a := range k.asks {
		f := v.dress(field{Name: "new." + a.key, ID: idOf(k.key + a.key), Label: a.label}, a)
		if v.Typed["add"] == c.Path {
			f.Value = v.Typed["new."+a.key]
			c.Open = true
			c.NewName = k.newName
		}
		c.Asks = append(c.Asks, f)
	}
	return c
}

func (v *view) thing(k kind, e text.Entry) thing {
	t := thing{Name: e.Key, Path: pathName([]string{k.key, e.Key}), Called: v.rename("Name", k.key, e.Key), Says: v.about([]string{k.key, e.Key})}
	for _, a := range k.asks {
		t.Fields = append(t.Fields, v.dress(v.field(a.label, k.key, e.Key, a.key), a))
	}
	in := e.Value.Get("in")
	if in == nil {
		return t
	}
	if f, ok := v.Plan.Room.Face(in.Text); ok && len(f.Board) > 0 {
		t.ID, t.Picture = idOf("picture"+t.Path), v.address("bare.svg", in.Text)
	}
	return t
}

func (v *view) dress(f field, a ask) field {
	f = f.like(v.sample(a.inches, a.metric)).help(a.help)
	switch {
	case a.wall:
		f = f.oneOf(v.faces()...)
	case a.choices != nil:
		f = f.oneOf(a.choices...)
	}
	f.Length = a.tape
	return f
}

// faces are the walls and the floor, by the names that the document gives them.
func (v *view) faces() []string {
	var out []string
	for _, w := range v.Plan.Document.Walls {
		out = append(out, w.Name)
	}
	return append(out, "floor")
}

// address is that of a drawing of a face, as the revision that is shown has it.
func (v *view) address(drawing, face string) string {
	return v.Address() + "/" + drawing + "?" + url.Values{"face": {face}, "at": {itoa(v.Head)}}.Encode()
}

// bare draws a face as it was measured.
func (s *Server) bare(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return err
	}
	screen, ok := sheet.BareOnScreen(v.Plan, r.FormValue("face"))
	if !ok {
		return fault{http.StatusNotFound, "The shape of that face is not known yet."}
	}
	w.Header().Set("Cache-Control", "private, max-age=3600")
	return sendDrawing(w, r, screen.Page)
}
