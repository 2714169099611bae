package schedule

import (
	"cmp"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// subject is what is worked on as one: a wall, the floor, or all faces of one opening.
type subject struct {
	name   string
	at     diag.Place
	floor  bool
	layers []document.Layer
	area   unit.Area // of the board
	faces  []tiling.Face
	order  int // of setting: the first of its faces
	meets  []string
	stone  bool
	dense  bool // impervious tile: porcelain, glass

	ready, set, last int // tasks: the last before setting, the last of setting, the last of all; -1: none
	first            int // the first of setting
}

// subjects lists walls, floor and openings: those that get board and those that get tile.
func (m *maker) subjects() []*subject {
	var all []*subject
	byName := map[string]*subject{}
	for _, f := range m.room.Faces {
		name, _, _ := strings.Cut(f.Name, " > ")
		s := byName[name]
		if s == nil {
			s = &subject{name: name, at: f.At, floor: f.Kind == site.FloorFace, layers: m.layers(name), ready: -1, set: -1, last: -1, first: -1}
			byName[name] = s
			all = append(all, s)
		}
		s.area += f.Board.Area()
		for _, e := range f.Edges {
			s.meets = append(s.meets, e.Other)
		}
		m.laidOn(s, f)
	}
	return all
}

// laidOn adds a face's tile to its subject.
func (m *maker) laidOn(s *subject, f site.Face) {
	for _, t := range m.tiles.Faces {
		if t.Name != f.Name || len(t.Setting) == 0 {
			continue
		}
		s.faces = append(s.faces, t)
		if s.order == 0 || f.Order > 0 && f.Order < s.order {
			s.order = f.Order
		}
		for _, field := range t.Fields {
			s.tileOf(m.doc.Tiles, field.Tile)
		}
	}
	slices.SortStableFunc(s.faces, func(a, b tiling.Face) int { return cmp.Compare(m.orderOf(a.Name), m.orderOf(b.Name)) })
}

func (s *subject) tileOf(tiles []document.Tile, name string) {
	for _, t := range tiles {
		if t.Name == name {
			s.stone = s.stone || t.Kind == document.Stone
			s.dense = s.dense || t.Kind == document.Porcelain || t.Kind == document.Glass
		}
	}
}

func (m *maker) orderOf(face string) int {
	f, _ := m.room.Face(face)
	return f.Order
}

// layers is the build-up that the document gives a subject.
func (m *maker) layers(name string) []document.Layer {
	for _, w := range m.doc.Walls {
		if w.Name == name {
			return w.BuildUp
		}
	}
	for _, o := range m.doc.Openings {
		if o.Name == name {
			return o.BuildUp
		}
	}
	return m.doc.Floor.BuildUp
}

// wall is the wall that an opening is in; "" of a wall or the floor.
func (m *maker) wallOf(name string) string {
	for _, o := range m.doc.Openings {
		if o.Name == name {
			return o.In.Text
		}
	}
	return ""
}

// faceTasks makes the jobs of every face: board, what goes under tile, tile, grout, sealer.
func (m *maker) faceTasks() []*subject {
	all := m.subjects()
	tests := m.pressureTest()
	for _, s := range all {
		m.under(s, tests)
	}
	tiled := slices.DeleteFunc(slices.Clone(all), func(s *subject) bool { return len(s.faces) == 0 })
	slices.SortStableFunc(tiled, func(a, b *subject) int { return cmp.Compare(a.order, b.order) })
	for _, s := range tiled {
		m.tile(s)
		m.finish(s)
	}
	m.inOrder(tiled)
	return tiled
}

// pressureTest is a job where pipes come out of a wall that gets board: it comes before the board hides them.
func (m *maker) pressureTest() int {
	for _, s := range m.doc.Stubs {
		if s.In.Text != "floor" && hasBoard(m.layers(s.In.Text)) {
			return m.add(PressureTest, "", s.At, Basis{})
		}
	}
	return -1
}

// boards are the last words of layers that are put up as sheets.
var boards = []string{"board", "plywood", "underlayment"}

func hasBoard(layers []document.Layer) bool {
	return slices.ContainsFunc(layers, func(l document.Layer) bool { return l.What == document.BoardLayer && lastWord(l.Label, boards...) })
}

func lastWord(label string, of ...string) bool {
	words := strings.Fields(strings.ToLower(label))
	return len(words) > 0 && slices.Contains(of, words[len(words)-1])
}

// under makes the jobs under the tile, layer by layer.
func (m *maker) under(s *subject, test int) {
	if m.wallOf(s.name) == "" && hasBoard(s.layers) {
		s.ready = m.add(Board, s.name, s.at, Basis{Area: s.area})
		m.after(test, s.ready)
	}
	if len(s.faces) == 0 {
		return
	}
	if at, asked := m.primerNamed(s); asked {
		m.next(s, Prime, at, toPrimed)
	}
	for _, l := range s.layers {
		switch {
		case l.What != document.MembraneLayer:
		case lastWord(l.Label, "primer"):
			m.next(s, Prime, l.At, toPrimed)
		default:
			m.next(s, Membrane, l.At, toTile)
			if s.floor {
				m.floodTest(s)
			}
			if s.dense && m.layerWater(l) {
				m.found(diag.Note, "dense-on-membrane", l.At, "impervious tile on a membrane on {0} lets the mortar dry far slower than on board", "go by the mortar's label for that case", diag.T(s.name))
			}
		}
	}
}

// layerWater reports whether a layer holds water back.
func (m *maker) layerWater(l document.Layer) bool { return lastWord(l.Label, "membrane") }

// next adds a job on a subject after the one before, and remembers what it waits for.
func (m *maker) next(s *subject, k Kind, at diag.Place, n need) {
	t := m.add(k, s.name, at, Basis{Area: s.area})
	m.onto(s, t)
	s.ready = t
	m.pending = append(m.pending, pending{t, m.waitFor(n, s.name), m.openFor(k, s.name)})
	if s.floor {
		m.block(t, m.waitFor(n, s.name))
	}
}

// floodTest lets water stand on a floor's membrane before tile hides it.
func (m *maker) floodTest(s *subject) {
	t := m.add(FloodTest, s.name, s.at, Basis{})
	m.waits(s.ready, t, m.waitFor(toFlood, s.name))
	s.ready = t
	m.pending = append(m.pending, pending{t, m.waitFor(flooded, s.name), 0})
	m.block(t, m.waitFor(flooded, s.name))
}

// onto links a task behind what lies under it.
func (m *maker) onto(s *subject, t int) {
	if s.ready < 0 {
		return
	}
	if p, ok := m.lastUnder(s); ok {
		m.links = append(m.links, link{from: p.task, to: t, wait: &p.wait, most: p.most})
		return
	}
	m.after(s.ready, t)
}

// still puts a later part of a setting within the time for which what lies under it takes it.
func (m *maker) still(s *subject, t int) {
	if p, ok := m.lastUnder(s); ok && p.most > 0 {
		m.links = append(m.links, link{from: p.task, to: t, wait: &p.wait, most: p.most})
	}
}

// lastUnder is the wait that the last job under a subject's tile leaves.
func (m *maker) lastUnder(s *subject) (pending, bool) {
	for _, p := range m.pending {
		if p.task == s.ready {
			return p, true
		}
	}
	return pending{}, false
}

// pending is a wait that the next job on the subject must keep, and how long at most it takes one; 0: for ever.
type pending struct {
	task int
	wait wait
	most unit.Minutes
}

// finish makes the jobs from the set tile to the sealed one.
func (m *maker) finish(s *subject) {
	var tileArea unit.Area
	for _, i := range m.of(Set) {
		if m.tasks[i].Subject == s.name {
			tileArea += m.tasks[i].Basis.Area
		}
	}
	b := Basis{Area: tileArea}
	clips := m.add(ClipsOff, s.name, s.at, b)
	m.waits(s.set, clips, m.waitFor(toGrout, s.name))
	grout := m.add(GroutFace, s.name, s.at, b)
	if s.stone {
		pre := m.add(PreSeal, s.name, s.at, b)
		m.after(clips, pre)
		m.waits(pre, grout, m.waitFor(toSealed, s.name))
	} else {
		m.after(clips, grout)
	}
	clean := m.add(Clean, s.name, s.at, b)
	m.waits(grout, clean, m.waitFor(toClean, s.name))
	seal := m.add(Seal, s.name, s.at, b)
	m.waits(grout, seal, m.waitFor(toSeal, s.name))
	m.after(clean, seal)
	s.last = seal
	if s.floor {
		m.block(s.set, m.waitFor(toWalk, s.name))
		m.block(grout, m.waitFor(toWalkGrout, s.name))
	}
}

// inOrder keeps the order of setting where faces meet: what is set first runs through behind what is set later.
func (m *maker) inOrder(tiled []*subject) {
	for i, b := range tiled {
		for _, a := range tiled[:i] {
			if a.touches(b, m) || b.touches(a, m) {
				m.after(a.set, b.first)
			}
		}
	}
}

func (s *subject) touches(o *subject, m *maker) bool {
	return slices.Contains(s.meets, o.name) || m.wallOf(s.name) == o.name || slices.ContainsFunc(s.meets, func(n string) bool { return strings.HasPrefix(n, o.name+" > ") })
}

// softLength is the length of the soft joints of all tiled faces; one that two of them share counts once.
func (m *maker) softLength() unit.Length {
	var sum unit.Length
	for _, f := range m.room.Faces {
		if !f.Set {
			continue
		}
		for i, e := range f.Edges {
			if !e.Soft {
				continue
			}
			long := along(f.Board, geom.Label(i+1))
			if o, ok := m.room.Face(e.Other); ok && o.Set {
				long /= 2
			}
			sum += long
		}
	}
	return sum
}

// along is the length of the edges with a label.
func along(g geom.Region, l geom.Label) unit.Length {
	var sum unit.Length
	for _, r := range g {
		for i, v := range r {
			if v.Edge == l {
				sum += geom.Dist(v.P, r[(i+1)%len(r)].P)
			}
		}
	}
	return sum
}
