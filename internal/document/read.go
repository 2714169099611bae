package document

import (
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Version is the newest version of the document that is read. Every older one is read for ever.
const Version = 1

var root = record("a room document", func(*Room, diag.Place) {},
	key[Room]{row{name: "dryfit", what: "the version of the document", need: true, example: "1", shape: &shape{kind: choiceShape, say: "1", words: []string{"1"}}}, readVersion},
	sure("name", "what the room is called", words, func(m *Room) *string { return &m.Name }).must().like("Boathouse washroom"),
	sure("units", "the unit of every bare number", units, func(m *Room) *unit.System { return &m.Units }).must().like("in"),
	fact("mark", "the finest mark that cuts are read to", length(mark), func(m *Room) *Value[unit.Length] { return &m.Mark }).unless("1/16 in or 1 mm").like("1/16"),
	sure("survey", "the corners, and what the tape and the level line say", survey, func(m *Room) *Survey { return &m.Survey }).must().like("{corners: A B C D, tape: {A-B: 71-3/8}}"),
	part("walls", "the walls by name", named("wall", wall, func(w *Wall, e text.Entry) { w.Name, w.At = e.Key, e.At }), func(m *Room) *[]Wall { return &m.Walls }).like("{basin wall: {along: A-B}}"),
	part("floor", "the floor", floor, func(m *Room) *Floor { return &m.Floor }).like("{build-up: [board 1/2, bed 3/16, tile]}"),
	part("corners", "single corners by name", corners, func(m *Room) *[]Corner { return &m.Corners }).like("{C: {outside: trim 3/8}}"),
	part("setting", "order of setting and joints between faces", setting, func(m *Room) *Setting { return &m.Setting }).like("{back wall: end wall}"),
	part("center lines", "lines on walls that other things are located from, by name", named("center line", centerLine, func(l *Line, e text.Entry) { l.Name, l.At = e.Key, e.At }), func(m *Room) *[]Line { return &m.Lines }).like("{basin line: {in: basin wall, across: 36 from A}}"),
	part("openings", "windows, doors, niches and plain holes by name", named("opening", opening, func(o *Opening, e text.Entry) { o.Name, o.At = e.Key, e.At }), func(m *Room) *[]Opening { return &m.Openings }).like("{window: {in: end wall, kind: window, across: 24 to 48 from B, up: 48 to 84 above floor}}"),
	part("stub-outs", "round pipes through a face by name", named("stub-out", stub, func(s *Stub, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(m *Room) *[]Stub { return &m.Stubs }).like("{cold: {in: basin wall, across: 4 left of basin line, up: center 21 above floor, diameter: 5/8}}"),
	part("boxes", "electrical boxes, valve plates and access panels by name", named("box", box, func(b *Box, e text.Entry) { b.Name, b.At = e.Key, e.At }), func(m *Room) *[]Box { return &m.Boxes }).like("{outlet: {in: basin wall, across: center 48 from A, up: center 44 above floor, width: 2-1/4, height: 3-3/4}}"),
	part("in the wall", "what is inside the walls, recorded while they are open", named("thing in the wall", buried, func(b *Buried, e text.Entry) { b.Name, b.At = e.Key, e.At }), func(m *Room) *[]Buried { return &m.InWall }).unless("not checked").like("{supply: {in: basin wall, kind: pipe, across: 31 to 32 from A}}"),
	part("tiles", "the tiles by name", named("tile", tile, func(t *Tile, e text.Entry) { t.Name, t.At = e.Key, e.At }), func(m *Room) *[]Tile { return &m.Tiles }).like("{slate: {size: 24 x 12 x 3/8, kind: stone}}"),
	part("goods", "goods for setting and finishing by name, with what their labels say", labels, func(m *Room) *[]Good { return &m.Goods }).like("{white mortar: {kind: mortar, color: white, packs: {50 lb bag: 28.50}}}"),
	part("buying", "what prices are in, and who sells", buying, func(m *Room) *Buying { return &m.Buying }).like("{currency: USD, tax: 8.25 %}"),
	part("tools", "what is there to cut with", tools, func(m *Room) *Tools { return &m.Tools }).like("{kerf: 3/32, core bits: [1-1/4, 2]}"),
	part("lay", "what is set on which face", lays, func(m *Room) *[]Lay { return &m.Lay }).like("{basin wall: {fields: {main: {tile: slate, bond: running 1/3}}}}"),
	part("days", "when and by whom the work is done, and what has been done", days, func(m *Room) *Days { return &m.Days }).unless("no days are planned").like("{starts on: 2026-03-07, hours: {weekdays: 18:00 to 21:00}}"),
	part("stock", "wood and board as it is sold, by name", named("stock", stock, func(s *Stock, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(m *Room) *[]Stock { return &m.Stock }).like("{birch 3/4: {kind: sheet, size: 96 x 48 x 3/4}}"),
	part("kits", "plain lists of parts to cut, by name", named("kit", kit, func(k *Kit, e text.Entry) { k.Name, k.At = e.Key, e.At }), func(m *Room) *[]Kit { return &m.Kits }).like("{step: {parts: {tread: {size: 18 x 11, stock: birch 3/4}}}}"),
	part("cabinets", "cabinets by name", named("cabinet", cabinet, func(c *Cabinet, e text.Entry) { c.Name, c.At = e.Key, e.At }), func(m *Room) *[]Cabinet { return &m.Cabinets }).like("{vanity: {in: basin wall, across: 14 to 44 from A, height: 32-1/2, depth: 20}}"),
	part("tops", "slabs on cabinets or walls, by name", named("top", topRecord, func(t *Slab, e text.Entry) { t.Name, t.At = e.Key, e.At }), func(m *Room) *[]Slab { return &m.Tops }).like("{vanity top: {on: vanity, made of: staves, thickness: 1-1/2, depth: 21}}"),
	part("scribes", "offsets to scribe edges by, by name", named("scribe", scribe, func(s *Scribe, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(m *Room) *[]Scribe { return &m.Scribes }).like("{top back: {for: vanity top, offsets: {0: 1/8, 12: 1/4}}}"),
	part("trim", "baseboards, casings, jamb extensions, shoes and ledgers by name", named("trim", trim, func(t *Trim, e text.Entry) { t.Name, t.At = e.Key, e.At }), func(m *Room) *[]Trim { return &m.Trim }).like("{baseboard: {kind: baseboard, stock: base 5-1/4}}"),
	part("finish", "what is brushed or wiped on wood, by name", named("finish", finish, func(f *Finish, e text.Entry) { f.Name, f.At = e.Key, e.At }), func(m *Room) *[]Finish { return &m.Finish }).like("{clear oil: {on: [vanity], coats: 3}}"),
	part("rules", "what the room is held against", chosen, func(m *Room) *Chosen { return &m.Rules }).unless("US residential").like("{sets: [US residential]}"),
	fact("accessible", "whether the room has to be accessible", yesNo, func(m *Room) *Value[bool] { return &m.Accessible }).unless("no").like("no"),
	part("basins", "the basins by name", named("basin", basin, func(b *Basin, e text.Entry) { b.Name, b.At = e.Key, e.At }), func(m *Room) *[]Basin { return &m.Basins }).like("{bowl: {kind: vessel, on: vanity top, across: on basin line, off: 11}}"),
	part("taps", "the basin taps by name", named("tap", tap, func(t *Tap, e text.Entry) { t.Name, t.At = e.Key, e.At }), func(m *Room) *[]Tap { return &m.Taps }).like("{basin tap: {serves: bowl, mounted: wall, in: basin wall}}"),
	part("wastes", "what leads from basins into the wall, by name", named("waste", waste, func(w *Waste, e text.Entry) { w.Name, w.At = e.Key, e.At }), func(m *Room) *[]Waste { return &m.Wastes }).like("{basin waste: {from: bowl, to: drain}}"),
	part("stops", "the stop valves by name", named("stop valve", stopValve, func(s *StopValve, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(m *Room) *[]StopValve { return &m.Stops }).like("{cold stop: {on: cold, serves: basin tap}}"),
	part("WCs", "the WCs by name", named("WC", wc, func(w *WC, e text.Entry) { w.Name, w.At = e.Key, e.At }), func(m *Room) *[]WC { return &m.WCs }).like("{WC: {kind: floor, against: basin wall, outlet: drain}}"),
	part("fittings", "what is fixed to the faces at the end, by name: mirrors, lights, fans, bars", named("fitting", fitting, func(f *Fitting, e text.Entry) { f.Name, f.At = e.Key, e.At }), func(m *Room) *[]Fitting { return &m.Fittings }).like("{mirror: {kind: mirror, in: basin wall, across: on basin line, up: bottom 42 above floor}}"),
	part("people", "those who use the room, by name", named("person", person, func(p *Person, e text.Entry) { p.Name, p.At = e.Key, e.At }), func(m *Room) *[]Person { return &m.People }).like("{tall one: {eyes: 66}}"),
	part("may move", "what may still move, and how far: by the words that lead to a figure of the document", moves, func(m *Room) *[]Move { return &m.Moves }).unless("everything stays").like("{vanity > height: -1 to 1/2}"),
	part("climate", "the place and its weather", climate, func(m *Room) *Climate { return &m.Climate }).like("{exterior: no}"),
)

var units = choice("in or mm", word[unit.System]{"in", unit.Inches}, word[unit.System]{"mm", unit.Millimetres})

var corners = referring(named("corner", corner, func(c *Corner, e text.Entry) { c.Name, c.At = e.Key, e.At }), "corner")

var lays = referring(named("face", lay, func(l *Lay, e text.Entry) { l.Face, l.At = e.Key, e.At }), "face")

// referring makes the names of a map refer to things of a kind.
func referring[T any](f form[T], kind string) form[T] {
	return form[T]{f.shape, func(r *reader, n *text.Node) (T, bool) {
		for _, e := range n.Entries {
			r.refer(e.Key, e.At, kind)
		}
		return f.read(r, n)
	}}
}

// Read reads a room document. It always returns a Room with all that could be read, and every finding about the
// document as text: what stops a dependent stage has class Stop. The name is that of the file; it is not opened.
func Read(name string, src []byte) (Room, diag.List) { return ReadFrom(name, text.Parsed(src)) }

// ReadFrom reads a text that is parsed already. The tree is not changed.
func ReadFrom(name string, src text.Source) (Room, diag.List) {
	return (&reader{found: slices.Clone(src.Faults)}).document(name, src.Tree)
}

// document reads a whole document from its tree.
func (r *reader) document(name string, tree *text.Node) (Room, diag.List) {
	room, read := r.room(name, tree)
	if read {
		room.Survey.Unread = r.unread
		r.leadTo(tree, &room)
		r.resolve(&room)
		r.check(&room)
		room.markTiled()
	}
	return room, r.found.Sorted()
}

// unread are the codes of findings that say: this text, or a part of it, is no document that can be read here. What is read all the same is
// for showing more findings, not for building on.
var unread = [...]string{"syntax", "quote-trap", "not-utf8", "control-character", "too-large", "no-document", "version-newer"}

// Unreadable reports whether the findings of Read say that the text itself could not be read: broken YAML, another encoding, no text at
// all, or a version of the document that is not known here. A wrong word or figure in a document that reads is not meant.
func Unreadable(found diag.List) bool {
	return slices.ContainsFunc(found, func(f diag.Finding) bool { return slices.Contains(unread[:], f.Code) })
}

func (r *reader) room(name string, tree *text.Node) (room Room, read bool) {
	if tree.Kind != text.Map {
		switch {
		case r.found.Stops():
		case tree.Kind == text.Empty:
			r.stop("no-document", tree.At, "{0} is empty: no room is written in it", "let `dryfit new` write a first room, and put your readings in", diag.T(name))
		default:
			r.stop("no-document", tree.At, "{0} holds no room document", "start with `dryfit: 1`, or let `dryfit new` write a first one", diag.T(name))
		}
		return room, false
	}
	if !r.readable(tree) {
		return room, false
	}
	r.units = r.unitsOf(tree)
	return root.read(r, tree)
}

// unitsOf looks the unit of bare numbers up before anything is read; where it is missing, that is told with the rest.
func (r *reader) unitsOf(tree *text.Node) unit.System {
	if n := tree.Get("units"); n != nil && strings.TrimSpace(strings.ToLower(n.Text)) == "mm" {
		return unit.Millimetres
	}
	return unit.Inches
}

// readable refuses a document of a version that is not known here: its keys may mean something else.
func (r *reader) readable(tree *text.Node) bool {
	n := tree.Get("dryfit")
	if n == nil || n.Kind != text.Scalar {
		return true
	}
	v, err := strconv.Atoi(strings.TrimSpace(n.Text))
	if err != nil || v <= Version {
		return true
	}
	r.stop("version-newer", n.At, "this document has version {0}; this program reads up to {1}", "use a newer dryfit", diag.N(v), diag.N(Version))
	return false
}

func readVersion(r *reader, m *Room, n *text.Node) {
	v, err := strconv.Atoi(strings.TrimSpace(n.Text))
	if err != nil || v < 1 {
		r.stop("version-unreadable", n.At, "{0} is no version", "write dryfit: 1", diag.T(short(n.Text)))
		return
	}
	m.Version = v
}

// markTiled notes the openings whose reveals are tiled.
func (m *Room) markTiled() {
	for i, o := range m.Openings {
		for _, l := range m.Lay {
			if strings.HasPrefix(l.Face, o.Name+" > ") {
				m.Openings[i].Tiled = true
			}
		}
	}
}
