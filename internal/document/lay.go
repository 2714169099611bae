package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Lay is what is to be set on one face. The face is a wall, `floor`, or a face of an opening: `niche > back`,
// `niche > sill`, `window > left`.
type Lay struct {
	Face         string
	At           diag.Place
	CenterOn     Value[string] // a center line; silent: the middle of the face
	LookFor      []Name        // a preset, or measures in order of importance
	Fields       []Field
	Sight        []Sight
	ContinueFrom Value[string] // joints are carried round the corner from this face
	Trowel       Value[Trowel]
	BackButter   Value[bool]
	Wet          Value[bool] // a shower, a tub, outdoors: 95 % of each back must be in mortar
}

// Sight is a line that the eye follows: a height at which a whole course should end: an opening's name, or a height.
type Sight struct {
	Opening string
	Up      Up
	At      diag.Place
}

// Field is one zone of a face. A later field takes its area from the earlier ones.
type Field struct {
	Name   string
	At     diag.Place
	Tile   Name
	Bond   Value[string] // "stack", "running 1/3", "vertical running 1/2", "diagonal", "herringbone", …
	Joint  Value[unit.Length]
	Turned Value[bool] // the tile's length stands upright
	Up     Up          // two heights, or silent for the whole face
	Across Across
	To     Up                 // `to: 84 above floor`: a field that stops at a height
	Border Value[unit.Length] // a border: this far in from the outline of the face
	Pin    Pin
}

// Pin holds a layout where the person wants it: `pin: {across: 36 from A, up: 12 above floor}` names a joint crossing;
// on the floor `pin: {off: {basin wall: 12, end wall: 20}}`.
type Pin struct {
	Given   bool
	Across  Across
	Up      Up
	FloorAt []AtWall
	At      diag.Place
}

var lay = record("what is set on one face", func(l *Lay, at diag.Place) { l.At = at },
	fact("center on", "the center line that the layout is balanced about", calledText("center line"), func(l *Lay) *Value[string] { return &l.CenterOn }).unless("the middle of the face").like("basin line"),
	part("look for", "what matters most: a preset, or measures in order of importance", lookFor, func(l *Lay) *[]Name { return &l.LookFor }).unless(Presets()[0]).like("even cuts"),
	part("sight lines", "where whole courses should end: an opening, or a height", list(sight), func(l *Lay) *[]Sight { return &l.Sight }).like("[window, 84 above floor]"),
	fact("continue from", "the face whose joints are carried round the corner", calledText("face"), func(l *Lay) *Value[string] { return &l.ContinueFrom }).like("end wall"),
	fact("trowel", "the trowel that its mortar is combed with", trowel, func(l *Lay) *Value[Trowel] { return &l.Trowel }).unless("one is proposed from the tile").like("square 1/4 x 3/8 x 1/4"),
	fact("back-butter", "whether the tile's back gets a skim of mortar too", yesNo, func(l *Lay) *Value[bool] { return &l.BackButter }).unless("where the tile or the place asks for it").like("yes"),
	fact("wet area", "whether water runs down it: a shower, a tub", yesNo, func(l *Lay) *Value[bool] { return &l.Wet }).unless("no").like("yes"),
	sure("fields", "the zones of the face by name; a later one takes its area from the earlier", named("field", field, func(f *Field, e text.Entry) { f.Name = e.Key }), func(l *Lay) *[]Field { return &l.Fields }).must().like("{main: {tile: slate, bond: running 1/3}}"),
)

var field = record("one zone of a face", func(f *Field, at diag.Place) { f.At = at },
	part("tile", "the tile", called("tile"), func(f *Field) *Name { return &f.Tile }).must().like("slate"),
	fact("bond", "the bond", bondForm, func(f *Field) *Value[string] { return &f.Bond }).unless("stack").like("running 1/3"),
	fact("joint", "the joint", length(joint), func(f *Field) *Value[unit.Length] { return &f.Joint }).unless("as the tile says").like("1/8"),
	fact("upright", "whether the tile's length stands upright", yesNo, func(f *Field) *Value[bool] { return &f.Turned }).unless("no").like("yes"),
	part("up", "the two heights that the field lies between, or the one that it starts at", up, func(f *Field) *Up { return &f.Up }).unless("the whole face").like("0 to 84 above floor"),
	part("across", "the two edges that the field lies between", across, func(f *Field) *Across { return &f.Across }).unless("the whole face").like("12 to 60 from A"),
	part("to", "the height that the field stops at", up, func(f *Field) *Up { return &f.To }).like("84 above floor"),
	fact("border", "makes the field a border: how far it goes in from the outline of the face", length(over), func(f *Field) *Value[unit.Length] { return &f.Border }).like("4"),
	part("pin", "holds the layout: where a joint crossing is", complete(pin), func(f *Field) *Pin { return &f.Pin }).unless("the best layout is looked for").like("{across: 36 from A, up: 12 above floor}"),
)

var pin = record("where a joint crossing is held", func(p *Pin, at diag.Place) { p.At, p.Given = at, true },
	part("across", "where along the wall", across, func(p *Pin) *Across { return &p.Across }).like("36 from A"),
	part("up", "how high", up, func(p *Pin) *Up { return &p.Up }).like("12 above floor"),
	part("off", "on the floor: how far square off two walls", atWalls, func(p *Pin) *[]AtWall { return &p.FloorAt }).like("{basin wall: 12-1/2, end wall: 20}"),
)

var bondForm = form[string]{&shape{brief: "a [bond](#bonds)", say: "a bond: " + strings.Join(BondNames(), ", "), pattern: bondSchema}, func(r *reader, n *text.Node) (string, bool) {
	if !r.want(n, text.Scalar, "a bond") {
		return "", false
	}
	b, why, mend := ParseBond(n.Text, r.units)
	if why != "" {
		r.stop("unknown-bond", n.At, why, mend, diag.T(short(n.Text)))
		return "", false
	}
	return b.String(), true
}}

// Presets lists the presets of `look for`; the first is the default.
func Presets() []string {
	return []string{"even cuts", "fewest tiles", "fewest cuts", "lines up", "holes safe"}
}

// Measures lists the measures that `look for` may name one by one.
func Measures() []string {
	return []string{"narrowest cut", "slivers in sight", "balance", "sight lines", "joints at openings", "holes clear of joints",
		"narrowest neck", "number of cuts", "tiles to buy"}
}

var lookFor = form[[]Name]{&shape{brief: "a preset or measures, [see below](#what-to-look-for)", kind: eitherShape, say: "a preset (" + strings.Join(Presets(), ", ") + "), or a list of measures: " + strings.Join(Measures(), ", "), any: []*shape{
	{kind: choiceShape, words: append(Presets(), Measures()...)},
	{kind: listShape, item: &shape{kind: choiceShape, words: append(Presets(), Measures()...)}},
}}, readLookFor}

func readLookFor(r *reader, n *text.Node) ([]Name, bool) {
	items := n.Items
	if n.Kind != text.List {
		items = []*text.Node{n}
	}
	var all []Name
	seen := map[string]bool{}
	known := choice("a preset or a measure", sameWords(append(Presets(), Measures()...))...)
	for _, c := range items {
		w, ok := known.read(r, c)
		if ok && seen[w] {
			r.found.Add(diag.Look, "measure-twice", c.At, "{0} is named twice; the first counts", "take this one out", diag.T(w))
			continue
		}
		if ok {
			seen[w] = true
			all = append(all, Name{w, c.At})
		}
	}
	return all, true
}

// sameWords makes a choice whose meanings are its words.
func sameWords(texts []string) []word[string] {
	words := make([]word[string], len(texts))
	for i, t := range texts {
		words[i] = word[string]{t, t}
	}
	return words
}

var sight = form[Sight]{&shape{say: "an opening, or a height like 84 above floor"}, func(r *reader, n *text.Node) (Sight, bool) {
	s := Sight{At: n.At}
	if !r.want(n, text.Scalar, "an opening or a height") {
		return s, false
	}
	typed := strings.TrimSpace(n.Text)
	if m := upPattern.FindStringSubmatch(typed); m != nil && !strings.HasPrefix(trailingUnit(m[2]), m[2]) {
		var ok bool
		s.Up, ok = readUp(r, n)
		return s, ok
	}
	s.Opening = typed
	r.refer(typed, n.At, "opening")
	return s, true
}}
