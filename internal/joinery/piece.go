package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Piece is one part at its place in its cabinet.
type Piece struct {
	Part part.Part
	Box  Box  // finished, tongues included
	Turn Turn // how it lies
	Role Role
	Of   string // the front or the drawer that it belongs to; "" of the carcass
}

// Role is what a piece does.
type Role uint8

const (
	SideRole Role = iota
	BottomRole
	TopRole
	BackRole
	DividerRole
	ShelfRole
	ToeRole
	LegRole
	FrontRole
	DrawerRole // of a drawer's box
)

// sideOf gives the side of a part that faces a way, and the part's axes that are the side's coordinates.
func (t Turn) sideOf(w way) (s part.Side, i, j int) {
	for k, v := range turns[t] {
		if v.axis != w.axis {
			continue
		}
		same := v.back == w.back
		switch {
		case k == 0 && same:
			return part.Right, 1, 2
		case k == 0:
			return part.Left, 1, 2
		case k == 1 && same:
			return part.Rear, 0, 2
		case k == 1:
			return part.Front, 0, 2
		case same:
			return part.Back, 0, 1
		}
		return part.Face, 0, 1
	}
	panic("joinery: a turn without an axis")
}

// channel cuts into a piece what another box takes of it, from the side that looks the given way, to where that box ends. A channel
// that touches an end or an edge of its side and lies along it is a rabbet, whatever was asked for.
func (p *Piece) channel(kind part.ChannelKind, o Box, facing way, what string) {
	in := p.Box.And(o)
	if in.Empty() {
		return
	}
	side, i, j := p.Turn.sideOf(facing)
	depth := p.Box.Hi[facing.axis] - in.Lo[facing.axis]
	if facing.back {
		depth = in.Hi[facing.axis] - p.Box.Lo[facing.axis]
	}
	p.Part.Channels = append(p.Part.Channels, part.Channel{Kind: kind, On: side, Area: p.Turn.area(p.Box, in, i, j), Depth: depth, For: what})
}

// hole bores a piece from the side that looks the given way; at is in the cabinet's frame, and only what lies along that side counts.
func (p *Piece) hole(h part.Hole, at Point, facing way) {
	side, i, j := p.Turn.sideOf(facing)
	local := p.Turn.local(p.Box, at)
	h.On, h.At = side, geom.Point{X: local[i], Y: local[j]}
	p.Part.Holes = append(p.Part.Holes, h)
}

// label writes words on the side that looks the given way.
func (p *Piece) label(facing way, words string) {
	side, _, _ := p.Turn.sideOf(facing)
	p.Part.Labels = append(p.Part.Labels, part.Label{On: side, Text: words})
}

// band puts edging on the side that looks the given way.
func (p *Piece) band(facing way, thick unit.Length) {
	side, _, _ := p.Turn.sideOf(facing)
	p.Part.Bands = append(p.Part.Bands, part.Band{On: side, Thick: thick, Name: "edge band"})
}

// builder collects the pieces of one cabinet.
type builder struct {
	r      *room
	name   string
	at     diag.Place
	pieces []*Piece
}

// add makes a piece of a stock that fills a box.
func (b *builder) add(name string, s good, box Box, turn Turn, role Role) *Piece {
	length, width, thick := turn.size(box)
	p := &Piece{Box: box, Turn: turn, Role: role, Part: part.Part{
		Name: name, At: b.at, For: b.name, Count: 1, Stock: s.name, Grain: part.Along,
		Size: part.Size{Length: length, Width: width, Thick: thick},
	}}
	p.Part.Labels = []part.Label{{On: part.Face, Text: "this face up"}, {On: part.Front, Text: "front edge"}}
	b.pieces = append(b.pieces, p)
	return p
}
