package web

import (
	"html/template"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/sheet"
	"dryfit/internal/text"
)

// readings are several of one kind with a drawing of what they mean: at distances along a wall, or under a straightedge.
type readings struct {
	Title, Help, ID string
	Sketch          template.HTML
	Rows            [][]field // of one reading each
	Takes           []string  // for the button that takes a row of several inputs out: its path
	Verb, Path      string    // how another is added
	Asks            []field
	Says            []said
	Open            bool
}

// Read and Whole pair the frame with readings, and with all of its page, for templates of both.
func (f *frame) Read(of readings) framedReadings { return framedReadings{f, of} }
func (f *frame) Whole() framedReadings           { return framedReadings{Frame: f} }

type framedReadings struct {
	Frame *frame
	Of    readings
}

// stripKind is one of the readings along a wall as it is asked for.
type stripKind struct {
	key, title, help, off string
	inches, metric        [2]string
	draw                  sheet.Strip
}

var stripKinds = [...]stripKind{
	{"profile", "Profile: how flat the surface is", "Stretch a string from corner to corner, or lay a long straightedge. At each distance from the left end: how far the surface stands into the room, with a minus how far it stands back.",
		"The surface, + into the room", [2]string{"35", "1/4"}, [2]string{"800", "4"}, sheet.ProfileStrip},
	{"studs", "Studs: how far each stands off a straight line", "At the center of each stud, from the left end: how far its face stands into the room, with a minus how far it stands back.",
		"The stud's face, + into the room", [2]string{"16", "-1/8"}, [2]string{"400", "-3"}, sheet.StudStrip},
	{"floor", "Floor along this wall", "From the level line down to the bare floor, at distances from the left end.",
		"Down to the bare floor", [2]string{"35", "40-1/4"}, [2]string{"800", "1004"}, sheet.FloorStrip},
	{"ceiling", "Ceiling along this wall", "From the level line up to the ceiling, at distances from the left end. Where it breaks or slopes, measure at each break.",
		"Up to the ceiling", [2]string{"36", "55"}, [2]string{"900", "1380"}, sheet.CeilingStrip},
}

// strips asks for the readings along a wall.
func (v *view) strips(w document.Wall) ([]readings, error) {
	var out []readings
	for _, k := range stripKinds {
		path := []string{"walls", w.Name, k.key}
		s := readings{Title: k.title, Help: k.help, Verb: "pair"}
		if err := v.sketch(&s, path, sheet.StripOnScreen(v.Plan, w, k.draw)); err != nil {
			return nil, err
		}
		if n := text.At(v.Tree, path); n != nil {
			for _, e := range n.Entries {
				f := v.field("at "+e.Key, append(path[:3:3], e.Key)...).tape()
				s.Rows = append(s.Rows, []field{f})
			}
		}
		s.Asks = []field{v.asked(path, "at", "From the left end").like(v.sample(k.inches[0], k.metric[0])).tape(),
			v.asked(path, "off", k.off).like(v.sample(k.inches[1], k.metric[1])).tape()}
		out = append(out, s)
	}
	return out, nil
}

// gaps asks for the readings under a straightedge on a wall or the floor.
func (v *view) gaps(on string, read []document.Gap, path []string, asks []ask) (readings, error) {
	s := readings{Title: "Straightedge on " + on, Help: "Lay a straight edge on the surface, where it looks worst and across. The widest gap under it is what the reading says.", Verb: "behind"}
	if err := v.sketch(&s, path, sheet.GapsOnScreen(v.Plan, on, read)); err != nil {
		return s, err
	}
	if n := text.At(v.Tree, path); n != nil {
		for _, at := range gapPaths(n, path) {
			var row []field
			for _, a := range asks {
				row = append(row, v.dress(v.field(a.label, append(at[:len(at):len(at)], a.key)...), a))
			}
			s.Rows, s.Takes = append(s.Rows, row), append(s.Takes, pathName(at))
		}
	}
	for _, a := range asks {
		s.Asks = append(s.Asks, v.dress(v.asked(path, a.key, a.label), a))
	}
	return s, nil
}

// gapPaths are where the readings stand: one alone, or in a list.
func gapPaths(n *text.Node, path []string) [][]string {
	var out [][]string
	if n.Kind == text.Map {
		return [][]string{path}
	}
	for i := range n.Items {
		out = append(out, append(path[:len(path):len(path)], text.Item(i)))
	}
	return out
}

var wallGapAsks = []ask{
	{key: "length", label: "Length of the straightedge", inches: "6 ft", metric: "2000", tape: true},
	{key: "gap", label: "Widest gap under it", inches: "3/16", metric: "4", tape: true},
	{key: "across", label: "Where: its middle along the wall", inches: "30 from A", metric: "800 from A"},
	{key: "up", label: "Where: how high", inches: "20 above floor", metric: "500 above floor"},
}

// sketch gives readings their drawing, their place on the page, and what was refused of them.
func (v *view) sketch(s *readings, path []string, page draw.Page) error {
	s.Path, s.ID = pathName(path), idOf("readings"+pathName(path))
	s.Open = v.Typed[s.Verb] == s.Path
	var err error
	s.Sketch, err = drawn(page, s.ID)
	if s.Open {
		s.Says = v.refusals()
	}
	return err
}

// asked is an input of a form that adds something; what was refused stands in it still.
func (v *view) asked(collection []string, key, label string) field {
	of := pathName(collection)
	f := field{Name: "new." + key, ID: idOf(of + key), Label: label}
	for _, verb := range [...]string{"add", "pair", "behind", "gives"} {
		if v.Typed[verb] == of {
			f.Value = v.Typed["new."+key]
		}
	}
	return f
}

// refusals are why the form that was sent is refused.
func (v *view) refusals() []said {
	var out []said
	for _, f := range v.Refused {
		if f.Class != diag.Note {
			out = append(out, v.say(f))
		}
	}
	return out
}
