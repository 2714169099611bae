package tiling

import (
	"math"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/tiling/search"
	"dryfit/internal/unit"
)

// ground is one zone with its bond, carried into the pattern's frame: everything that laying it needs.
type ground struct {
	zone
	canvas *canvas
	lay    document.Lay
	mark   string // prefix of its addresses where the face has several fields
	bond   bond.Bond
	frame  geom.Frame // of the pattern in the face; its origin is the point that offsets are marked from
	region geom.Region
	floor  *lay.Field
	hits   []lay.Hit
	known  map[geom.Point]laidOut // what was laid already, by origin

	settled *settled // what a run before this one found of the same field
}

// laidOut is a field laid at one origin.
type laidOut struct {
	pieces []piece.Piece
	count  count
}

// ground readies a zone; false where its bond can not be laid.
func (m *maker) ground(c *canvas, l document.Lay, z zone, mark string) (*ground, bool) {
	spec, ok := m.spec(z.field)
	if !ok {
		return nil, false
	}
	b, found := bond.Make(spec, bond.Goods{Sizes: z.good.sizes, Joint: z.good.joint,
		Hex: z.good.tile.Shape == document.Hexagon, Upright: z.stands(), Chips: chips(z.good.tile)})
	for _, f := range found {
		f.At = z.field.At
		m.findings = append(m.findings, f)
	}
	if len(b.Protos) == 0 || m.tooMany(z) {
		return nil, false
	}
	m.rules(z.field, z.good, share(spec, b))
	g := &ground{zone: z, canvas: c, lay: l, mark: mark, bond: b, known: map[geom.Point]laidOut{}}
	g.frame = m.frame(g)
	g.region = z.region.In(g.frame)
	g.floor = lay.On(g.region)
	g.hits = m.hits(g)
	return g, true
}

// stands: the tile's length stands upright, in the face or along a border's run that goes up.
func (z zone) stands() bool {
	return z.field.Turned.Or(false) != (z.side != nil && z.side.upright)
}

// name is the field's own, or that of one run of a border.
func (z zone) name() string {
	if z.side != nil {
		return z.side.name
	}
	return z.field.Name
}

// mostPieces bounds a field: more than any room has, and few enough to lay, search and draw in seconds.
const mostPieces = 40_000

// tooMany stops a field of absurdly small tile before it is laid.
func (m *maker) tooMany(z zone) bool {
	least := z.good.sizes[0].Length.Times(z.good.sizes[0].Width)
	for _, s := range z.good.sizes {
		least = min(least, s.Length.Times(s.Width))
	}
	if z.region.Area()/max(least, 1) <= mostPieces {
		return false
	}
	m.found(diag.Stop, "pieces-too-many", z.field.At, "{0} would take more than {1} pieces of {2}",
		"look at the tile's size; chips are laid as sheets: give the sheet as the size and the chip as chip",
		diag.T(z.field.Name), diag.N(mostPieces), diag.T(z.good.tile.Name))
	return true
}

// frame is where the pattern lies: along a border's run; else at the point that offsets are marked from, or, on a floor that continues a wall's
// joints, along that wall from the left corner of its board.
func (m *maker) frame(g *ground) geom.Frame {
	if g.side != nil {
		return geom.Frame{Origin: g.side.frame.Origin, Angle: g.side.frame.Angle + g.bond.Angle}
	}
	f := geom.Frame{Origin: g.zero(), Angle: g.bond.Angle}
	if wall, ok := m.wallToContinue(g); ok {
		left, right := m.room.Survey.Corner(wall.LeftCorner).Board, m.room.Survey.Corner(wall.RightCorner).Board
		d := right.Sub(left)
		f.Origin, f.Angle = left, f.Angle+unit.AngleOf(math.Atan2(float64(d.Y), float64(d.X)))
	}
	return f
}

// wallToContinue is the wall whose joints a floor continues.
func (m *maker) wallToContinue(g *ground) (site.Face, bool) {
	if g.canvas.face.Kind != site.FloorFace || !g.lay.ContinueFrom.Known {
		return site.Face{}, false
	}
	wall, ok := m.room.Face(g.lay.ContinueFrom.V)
	return wall, ok && wall.Kind == site.WallFace
}

// zero is the point that offsets are marked from: the center line, or the middle of the field, at its lowest edge on
// a wall and in the middle of a floor. The balanced layout and the whole first course are then among those searched.
func (g *ground) zero() geom.Point {
	box := g.zone.region.Bounds()
	p := geom.Point{X: (box.Min.X + box.Max.X).MulDiv(1, 2), Y: box.Min.Y}
	if g.canvas.face.Kind == site.FloorFace {
		p.Y = (box.Min.Y + box.Max.Y).MulDiv(1, 2)
	}
	if x, ok := g.centerLine(); ok {
		p.X = x
	}
	return p
}

func (g *ground) centerLine() (unit.Length, bool) {
	for _, l := range g.canvas.face.Lines {
		if g.lay.CenterOn.Known && l.Name == g.lay.CenterOn.V {
			return l.X, true
		}
	}
	return 0, false
}

func chips(t document.Tile) *bond.Chips {
	if t.Kind != document.Mosaic || !t.Chip.Known {
		return nil
	}
	return &bond.Chips{Size: t.Chip.V, Joint: t.ChipJoint.Or(0)}
}

// share is a running bond's offset as a share of the tile, for the published limit.
func share(s bond.Spec, b bond.Bond) unit.Ratio {
	switch {
	case s.Kind != bond.Running:
		return 0
	case s.Den > 0:
		return unit.Ratio(int64(s.Num) * int64(unit.One) / int64(s.Den))
	}
	pitch := b.Pitch.X
	if s.Vertical {
		pitch = b.Pitch.Y
	}
	return unit.Ratio(int64(s.Shift) * int64(unit.One) / int64(pitch))
}

// hits are the holes to drill that touch the field, in the pattern's frame.
func (m *maker) hits(g *ground) []lay.Hit {
	var out []lay.Hit
	for i, h := range g.canvas.face.Holes {
		d := m.drill(h)
		touches := g.zone.region.Contains(h.Center) >= 0 || 2*lay.Rim(g.zone.region, h.Center) < d
		if d > 0 && touches {
			out = append(out, lay.Hit{Index: i, Center: g.frame.In(h.Center), Drill: d})
		}
	}
	return out
}

// holeRoom is how far a hole's rim need be from a joint: twice what a tile needs beside a hole, so that a hole drilled a
// little off still leaves enough. Farther is no better.
const holeRoom = 20 * unit.Millimetre

// drill is the diameter to drill; what is assumed for it, and that it is not known, is said.
func (m *maker) drill(h site.Hole) unit.Length {
	d := h.Drilled(m.doc.Tools)
	switch {
	case d == 0:
		m.found(diag.Unchecked, "hole-unknown", h.At, "not checked: the hole for {0}, its diameter is missing",
			"give its diameter, or the hole to drill", diag.T(h.Name))
	case h.Drill == 0:
		m.assume(h.At, "hole for {0} taken {1} wider than the pipe all round, and then the next core bit", "common practice", diag.T(h.Name), diag.F(site.HoleClearance))
	}
	return d
}

// at lays the field at an origin of the pattern's frame, describes every piece and counts the tiles; once for each origin.
func (m *maker) at(g *ground, origin geom.Point) laidOut {
	if out, ok := g.known[origin]; ok {
		return out
	}
	if out, ok := g.settled.laidBest(origin); ok {
		return out
	}
	laid, _ := g.floor.Lay(g.bond, origin, g.hits)
	out := laidOut{pieces: make([]piece.Piece, len(laid))}
	describe := m.describer(g, piece.Number(g.bond, g.region.Bounds(), origin))
	for i, p := range laid {
		out.pieces[i] = describe(p)
	}
	out.count = m.count(g.good, out.pieces)
	g.known[origin] = out
	return out
}

// layouts searches the best few, or takes the pinned one, and fills the first with its pieces.
func (m *maker) layouts(g *ground, faces []Face) (f Field) {
	f = Field{Name: g.name(), At: g.field.At, Tile: g.good.tile.Name, Bond: g.bond.Name, Joint: g.good.joint,
		Region: g.zone.region, Angle: g.frame.Angle, Sizes: real(g.good)}
	in := m.input(g)
	chosen, held := m.pin(g, faces)
	if held {
		f.Held = true
		held := m.layout(g, search.Judge(in, chosen))
		held.Why = g.heldBy()
		f.Layouts = []Layout{held}
		if !m.options.Quick {
			m.costOfPin(g, in, chosen)
		}
	} else {
		r := m.best(g, in)
		f.Searched = r.Searched
		for _, c := range r.Finalists {
			f.Layouts = append(f.Layouts, m.layout(g, c))
		}
		if len(r.Finalists) > 0 {
			chosen = r.Finalists[0].Origin
			f.Moves = m.moves(g, in, chosen)
		}
	}
	if len(f.Layouts) > 0 { // the others are drawn from their origin
		f.Layouts[0].Pieces = m.at(g, chosen).pieces
	}
	return f
}

func real(g good) []Size {
	out := make([]Size, len(g.sizes))
	for i, s := range g.sizes {
		out[i] = Size{s.Name, s.Length, s.Width}
	}
	return out
}

func (m *maker) layout(g *ground, c search.Candidate) Layout {
	n := m.counted(g, c.Origin)
	return Layout{Origin: g.frame.Out(g.handy(c.Origin)), Measures: c.Measures, Why: c.Why, WhyNot: c.WhyNot,
		Whole: n.whole, CutCount: n.cut, Tiles: n.tiles, TilesLeast: n.least}
}

// input is what the search sees of a field.
func (m *maker) input(g *ground) search.Input {
	face := g.canvas.face
	region, boxes := g.withoutBoxes()
	in := search.Input{Region: region, Holes: boxes, Bond: g.bond, Edges: searchEdges(g.canvas), Mark: m.searchMark(g)}
	in.Order, _ = judge.OrderOf(names(g.lay.LookFor))
	in.Enough = holeRoom
	if _, ok := g.centerLine(); ok && g.bond.Angle == 0 && g.side == nil {
		in.Center = search.Line{Given: true} // the frame's origin is on it
	}
	for _, h := range g.hits {
		in.Holes = append(in.Holes, search.Hole{Name: face.Holes[h.Index].Name, Center: h.Center, Drill: h.Drill})
	}
	in.Sights = m.sights(g)
	in.Openings = g.movable()
	in.Count = func(origin geom.Point) search.Count {
		n := m.at(g, origin).count
		return search.Count{Tiles: n.whole + n.tiles, Least: n.whole + n.least, Neck: n.neck, NeckAt: n.neckAt}
	}
	return in
}

func searchEdges(c *canvas) []search.Edge {
	out := make([]search.Edge, len(c.edges))
	for i, e := range c.edges {
		opening := e.Kind == site.OpeningEdge && !c.atBox(e)
		out[i] = search.Edge{Name: e.Name, Opening: opening, Hidden: e.Hidden, Weight: e.Weight}
	}
	return out
}

// searchMark is the finest mark that a layout is set out by: on the small faces of openings a mark of the tape.
func (m *maker) searchMark(g *ground) unit.Length {
	if g.canvas.face.Kind == site.RevealFace {
		return unit.DefaultStyle(m.doc.Units).Mark
	}
	return search.DefaultMark(m.doc.Units)
}

// withoutBoxes fills the boxes that lie within the field: a tile is notched round them as it is drilled for a pipe, so the
// search takes them as round holes of their longer side, to be kept clear of joints, and not as edges to cut to.
func (g *ground) withoutBoxes() (geom.Region, []search.Hole) {
	var out geom.Region
	var boxes []search.Hole
	for _, r := range g.region {
		name, ok := g.boxRing(r)
		if !ok {
			out = append(out, r)
			continue
		}
		b := r.Bounds()
		middle := geom.Point{X: b.Min.X + b.W()/2, Y: b.Min.Y + b.H()/2}
		boxes = append(boxes, search.Hole{Name: name, Center: middle, Drill: max(b.W(), b.H())})
	}
	return out, boxes
}

// boxRing reports whether a ring is the hole that one box leaves, and which.
func (g *ground) boxRing(r geom.Ring) (name string, ok bool) {
	for _, v := range r {
		e, known := edgeOf(g.canvas.edges, v.Edge)
		if !known || !g.canvas.atBox(e) {
			return "", false
		}
		name, _, _ = strings.Cut(e.Name, ", ")
	}
	return name, r.Area2() < 0
}

// atBox reports whether an edge bounds a box: its plate hides the cut, and nobody looks for joints at its edges.
func (c *canvas) atBox(e site.Edge) bool {
	return slices.ContainsFunc(c.face.Openings, func(o site.Opening) bool {
		return o.Kind == "box" && strings.HasPrefix(e.Name, o.Name+", ")
	})
}

func names(list []document.Name) []string {
	out := make([]string, len(list))
	for i, n := range list {
		out[i] = n.Text
	}
	return out
}

// sights are the heights where a whole course should end, in the pattern's frame; only a pattern that lies square has any.
func (m *maker) sights(g *ground) []search.Sight {
	if g.bond.Angle != 0 || g.side != nil {
		return nil
	}
	var out []search.Sight
	at := func(name string, y unit.Length) {
		out = append(out, search.Sight{Name: name, Y: y - g.frame.Origin.Y})
	}
	for _, s := range g.lay.Sight {
		for _, o := range g.canvas.face.Openings {
			if o.Name == s.Opening {
				at(o.Name+", bottom", o.Rect.Min.Y)
				at(o.Name+", top", o.Rect.Max.Y)
			}
		}
		if s.Up.Given {
			if y, _, ok := m.room.Up(g.canvas.face.Name, s.Up, 0); ok {
				at("sight line", y)
			}
		}
	}
	return out
}
