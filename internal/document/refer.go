package document

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// A reference is a name that must stand elsewhere in the document. References are noted while reading and looked
// up at the end, so that the order of the document does not matter.
type reference struct {
	kinds []string // of which one must have the name
	name  string
	at    diag.Place
}

func (r *reader) refer(name string, at diag.Place, kinds ...string) {
	r.refs = append(r.refs, reference{kinds, name, at})
}

// called reads the name of something of one of the kinds.
func called(kinds ...string) form[Name] {
	say := "the name of " + an(strings.Join(kinds, ", or "))
	return form[Name]{&shape{say: say, refers: kinds}, func(r *reader, n *text.Node) (Name, bool) {
		if !r.want(n, text.Scalar, say) {
			return Name{}, false
		}
		name := strings.TrimSpace(n.Text)
		r.refer(name, n.At, kinds...)
		return Name{name, n.At}, true
	}}
}

// an puts the article before a noun.
func an(noun string) string {
	if noun != "" && strings.ContainsRune("aeiou", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}

// calledText is called for fields that hold the bare text.
func calledText(kinds ...string) form[string] {
	f := called(kinds...)
	return form[string]{f.shape, func(r *reader, n *text.Node) (string, bool) {
		name, ok := f.read(r, n)
		return name.Text, ok
	}}
}

// floorFace names the floor among the faces.
const floorFace = "floor"

// names lists the names of every kind, in document order.
func (room *Room) names() map[string][]string {
	all := map[string][]string{"face": {floorFace}}
	add := func(kind, name string) { all[kind] = append(all[kind], name) }
	for _, c := range room.Survey.Corners {
		add("corner", c.Text)
		add("point", c.Text)
	}
	for _, p := range room.Survey.Points {
		add("point", p.Text)
	}
	for _, w := range room.Walls {
		add("wall", w.Name)
		add("face", w.Name)
	}
	for _, o := range room.Openings {
		add("opening", o.Name)
		for _, part := range o.Kind.Faces() {
			add("face", o.Name+" > "+part)
		}
		if o.Kind != Niche { // another way to write its left and right: read, and not offered
			add("face", o.Name+" > left"+jamb)
			add("face", o.Name+" > right"+jamb)
		}
	}
	for _, l := range room.Lines {
		add("center line", l.Name)
	}
	for _, t := range room.Tiles {
		add("tile", t.Name)
	}
	for _, h := range room.Days.Hands {
		add("hand", h.Name)
	}
	for _, j := range room.Days.Own {
		add("job", j.Name)
	}
	room.woodNames(add)
	for _, g := range room.Goods {
		add("good", g.Name)
	}
	for _, s := range room.Buying.Suppliers {
		add("supplier", s.Name)
	}
	room.fixtureNames(add)
	return all
}

// Faces are the faces of an opening that can be tiled.
func (k OpeningKind) Faces() []string {
	if k == Niche {
		return []string{"back", "left", "right", "head", "sill"}
	}
	return []string{"left", "right", "head", "sill"}
}

const jamb = " jamb"

// otherway reports whether a name is that of a jamb as it is read and not offered.
func otherway(name string) bool {
	return strings.Contains(name, " > ") && strings.HasSuffix(name, jamb)
}

// resolve looks every reference up.
func (r *reader) resolve(room *Room) {
	names := room.names()
	for _, ref := range r.refs {
		var known []string
		for _, k := range ref.kinds {
			known = append(known, names[k]...)
		}
		known = each(known)
		if !slices.Contains(known, ref.name) {
			r.strayName(ref, slices.DeleteFunc(known, otherway))
		}
	}
}

func (r *reader) strayName(ref reference, known []string) {
	kinds := strings.Join(ref.kinds, " or ")
	near := nearest(ref.name, known)
	switch {
	case near != "":
		r.stop("unknown-name", ref.at, "there is no {0} called {1}", "did you mean {2}?", diag.T(kinds), diag.T(short(ref.name)), diag.T(near))
	case len(known) > 0:
		r.stop("unknown-name", ref.at, "there is no {0} called {1}", "there are: {2}", diag.T(kinds), diag.T(short(ref.name)), diag.T(few(known)))
	default:
		r.stop("unknown-name", ref.at, "there is no {0} called {1}; the document has none", "add it, or take this out", diag.T(kinds), diag.T(short(ref.name)))
	}
}

// each keeps the first of equal names: a wall is both a wall and a face.
func each(names []string) []string {
	var out []string
	for _, n := range names {
		if !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	return out
}

// few joins names, not more than a reader takes in.
func few(names []string) string {
	const most = 12
	if len(names) > most {
		return strings.Join(names[:most], ", ") + ", …"
	}
	return strings.Join(names, ", ")
}
