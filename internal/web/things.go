package web

import (
	"net/http"
	"net/url"

	"dryfit/internal/document"
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
	onWall         bool // not asked of a thing in the floor
	help           string
}

// kind is one collection of the document with what is asked of its things.
type kind struct {
	key, title, one, newName string
	asks                     []ask
	inFloor                  bool // it may be in the floor, so far off the walls
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
	}, false},
	{"stub-outs", "Pipes through the tile", "pipe", "cold water", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "across", onWall: true, label: "Along the wall, to its center", inches: "30 from A", metric: "760 from A"},
		{key: "up", onWall: true, label: "How high, to its center", inches: "center 21 above floor", metric: "center 530 above floor"},
		{key: "diameter", label: "Diameter", inches: "5/8", metric: "15", tape: true},
		{key: "hole", label: "Hole to drill", inches: "1-1/4", metric: "30", tape: true, help: "Empty: the pipe, room round it, and the next core bit."},
	}, true},
	{"boxes", "Electrical boxes and plates", "box", "outlet", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "across", onWall: true, label: "Along the wall", inches: "center 48 from A", metric: "center 1200 from A"},
		{key: "up", onWall: true, label: "How high", inches: "center 44 above floor", metric: "center 1100 above floor"},
		{key: "width", label: "Width", inches: "2-1/4", metric: "57", tape: true},
		{key: "height", label: "Height", inches: "3-3/4", metric: "95", tape: true},
	}, true},
	{"in the wall", "Inside the wall, while it is open", "thing in the wall", "cold pipe", []ask{
		{key: "in", label: "In which wall", wall: true},
		{key: "kind", label: "What it is", choices: []string{"stud", "blocking", "pipe", "cable", "nail plate"}},
		{key: "across", label: "Along the wall, edge to edge", inches: "31 to 32 from A", metric: "750 to 770 from A"},
		{key: "up", label: "How high", inches: "0 to 21 above floor", metric: "0 to 530 above floor"},
	}, false},
	{"center lines", "Center lines to measure from", "center line", "basin line", []ask{
		{key: "in", label: "On which wall", wall: true},
		{key: "across", label: "Along the wall", inches: "36 from A", metric: "900 from A"},
	}, false},
}

// things fills every collection.
func (v *view) things() ([]collection, error) {
	var out []collection
	for _, k := range kinds {
		c, err := v.collection(k)
		if err != nil {
			return nil, err
		}
		out = append(out, c)
	}
	return out, nil
}

func (v *view) collection(k kind) (collection, error) {
	c := collection{Title: k.title, One: k.one, Path: pathName([]string{k.key}), NewName: k.newName}
	if n := v.Tree.Get(k.key); n != nil {
		for _, e := range n.Entries {
			t, err := v.thing(k, e)
			if err != nil {
				return c, err
			}
			c.Things = append(c.Things, t)
		}
	}
	for _, a := range k.asks {
		c.Asks = append(c.Asks, v.dress(v.asked([]string{k.key}, a.key, a.label), a))
	}
	if k.inFloor {
		for _, w := range v.Plan.Document.Walls {
			c.Off = append(c.Off, v.asked([]string{k.key}, "off:"+w.Name, "Off "+w.Name).tape())
		}
	}
	if v.Typed["add"] == c.Path {
		c.Name, c.Says, c.Open = v.Typed["new.name"], v.refusals(), true
	}
	return c, nil
}

func (v *view) thing(k kind, e text.Entry) (thing, error) {
	t := thing{Name: e.Key, Path: pathName([]string{k.key, e.Key}), Called: v.rename("Name", k.key, e.Key), Says: v.about([]string{k.key, e.Key})}
	in := e.Value.Get("in")
	inFloor := k.inFloor && in != nil && in.Text == "floor"
	for _, a := range k.asks {
		if n := e.Value.Get(a.key); !inFloor || n != nil || !a.onWall {
			t.Fields = append(t.Fields, v.dress(v.field(a.label, k.key, e.Key, a.key), a))
		}
	}
	if inFloor {
		return t, v.inFloor(&t, k, e)
	}
	if in == nil {
		return t, nil
	}
	if f, ok := v.Plan.Room.Face(in.Text); ok && len(f.Board) > 0 {
		t.ID, t.Picture = idOf("picture"+t.Path), v.address("bare.svg", in.Text)
	}
	return t, nil
}

// inFloor asks how far a thing in the floor is off the walls, and draws it.
func (v *view) inFloor(t *thing, k kind, e text.Entry) error {
	for _, w := range v.Plan.Document.Walls {
		t.Fields = append(t.Fields, v.field("Off "+w.Name, k.key, e.Key, "off", w.Name).tape())
	}
	var off []document.AtWall
	for _, s := range v.Plan.Document.Stubs {
		if k.key == "stub-outs" && s.Name == e.Key {
			off = s.FloorAt
		}
	}
	for _, b := range v.Plan.Document.Boxes {
		if k.key == "boxes" && b.Name == e.Key {
			off = b.FloorAt
		}
	}
	var err error
	t.ID = idOf("off" + t.Path)
	t.Sketch, err = drawn(sheet.OffOnScreen(v.Plan, e.Key, off), t.ID)
	return err
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
