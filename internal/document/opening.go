package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

var centerLine = record("a center line on a wall", func(l *Line, at diag.Place) { l.At = at },
	part("in", "the wall", called("wall"), func(l *Line) *Name { return &l.In }).must().like("basin wall"),
	part("across", "where along the wall", across, func(l *Line) *Across { return &l.Across }).must().like("36 from A"),
)

var opening = record("a window, door, niche or plain hole", func(o *Opening, at diag.Place) { o.At = at },
	part("in", "the wall", called("wall"), func(o *Opening) *Name { return &o.In }).must().like("end wall"),
	sure("kind", "what it is", choice("window, door, niche or plain", word[OpeningKind]{"window", Window}, word[OpeningKind]{"door", Door}, word[OpeningKind]{"niche", Niche}, word[OpeningKind]{"plain", Plain}), func(o *Opening) *OpeningKind { return &o.Kind }).must().like("window"),
	part("across", "where along the wall", across, func(o *Opening) *Across { return &o.Across }).must().like("24 to 48 from B"),
	part("up", "how high", up, func(o *Opening) *Up { return &o.Up }).must().like("48 to 84 above floor"),
	fact("width", "the width, where only one edge or the center is located", length(over), func(o *Opening) *Value[unit.Length] { return &o.Width }).like("24"),
	fact("height", "the height, where only one edge or the center is located", length(over), func(o *Opening) *Value[unit.Length] { return &o.Height }).like("36"),
	fact("depth", "how deep it goes into the wall", length(over), func(o *Opening) *Value[unit.Length] { return &o.Depth }).like("3-1/2"),
	sure("build-up", "the layers on its reveals", layers, func(o *Opening) *[]Layer { return &o.BuildUp }).like("[board 1/4, bed 3/16, tile]").orUnknown(),
	key[Opening]{row{name: "edge", what: "how tile ends at its rim", example: "trim 3/8", unknown: true, shape: edge.shape}, func(r *reader, o *Opening, n *text.Node) {
		o.Edge, o.Trim = readEdge(r, n)
	}},
	fact("joint", "the joint between tile and frame where the reveal is not tiled", length(joint), func(o *Opening) *Value[unit.Length] { return &o.Joint }).like("1/4"),
	fact("sill fall", "how much the sill falls outward", slope, func(o *Opening) *Value[unit.Ratio] { return &o.SillFall }).like("2 %"),
	fact("may move", "how far it may still be moved each way", length(within), func(o *Opening) *Value[unit.Length] { return &o.Moves }).unless("it stays").like("2"),
)

var stub = record("a round pipe through a face", func(s *Stub, at diag.Place) { s.At = at },
	part("in", "the wall, or floor", called("face"), func(s *Stub) *Name { return &s.In }).must().like("basin wall"),
	part("across", "where along the wall its center is", across, func(s *Stub) *Across { return &s.Across }).like("4 left of basin line"),
	part("up", "how high its center is", up, func(s *Stub) *Up { return &s.Up }).like("center 21 above floor"),
	fact("diameter", "the diameter of the pipe", length(bore), func(s *Stub) *Value[unit.Length] { return &s.Diameter }).must().like("5/8"),
	fact("hole", "the diameter to drill", length(bore), func(s *Stub) *Value[unit.Length] { return &s.Hole }).unless("the pipe, room round it, and the next core bit").like("1-1/4"),
	part("off", "in a floor: its center square off the walls", atWalls, func(s *Stub) *[]AtWall { return &s.FloorAt }).like("{basin wall: 12-1/2, end wall: 20}"),
)

var box = record("an electrical box, a valve plate or an access panel", func(b *Box, at diag.Place) { b.At = at },
	part("in", "the wall, or floor", called("face"), func(b *Box) *Name { return &b.In }).must().like("basin wall"),
	part("across", "where along the wall", across, func(b *Box) *Across { return &b.Across }).like("center 48 from A"),
	part("up", "how high", up, func(b *Box) *Up { return &b.Up }).like("center 44 above floor"),
	fact("width", "its width", length(over), func(b *Box) *Value[unit.Length] { return &b.Width }).must().like("2-1/4"),
	fact("height", "its height", length(over), func(b *Box) *Value[unit.Length] { return &b.Height }).must().like("3-3/4"),
	part("off", "in a floor: its center square off the walls", atWalls, func(b *Box) *[]AtWall { return &b.FloorAt }).like("{basin wall: 12-1/2, end wall: 20}"),
)

var atWalls = form[[]AtWall]{&shape{kind: namedShape, say: "by wall: a length", names: "wall", item: length(within).shape}, func(r *reader, n *text.Node) ([]AtWall, bool) {
	if !r.want(n, text.Map, "a length for each wall, like {basin wall: 12-1/2}") {
		return nil, false
	}
	var all []AtWall
	for _, e := range n.Entries {
		r.refer(e.Key, e.At, "wall")
		if e.Value.Kind == text.Empty {
			r.empty(e, row{name: e.Key, shape: length(within).shape})
			continue
		}
		all = append(all, AtWall{e.Key, valueOf(r, length(within), e.Value)})
	}
	return all, true
}}

var buried = record("what is inside the wall", func(b *Buried, at diag.Place) { b.At = at },
	part("in", "the wall, or floor", called("face"), func(b *Buried) *Name { return &b.In }).must().like("basin wall"),
	sure("kind", "what it is", choice("stud, blocking, pipe, cable or nail plate", word[BuriedKind]{"stud", StudInWall}, word[BuriedKind]{"blocking", Blocking}, word[BuriedKind]{"pipe", Pipe}, word[BuriedKind]{"cable", Cable}, word[BuriedKind]{"nail plate", NailPlate}), func(b *Buried) *BuriedKind { return &b.Kind }).must().like("pipe"),
	part("across", "where along the wall", across, func(b *Buried) *Across { return &b.Across }).like("31 to 32 from A"),
	part("up", "how high", up, func(b *Buried) *Up { return &b.Up }).unless("over the whole height").like("0 to 40 above floor"),
)
