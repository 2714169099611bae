package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Stub is a round penetration.
type Stub struct {
	Name     string
	At       diag.Place
	In       Name
	Across   Across
	Up       Up
	Diameter Value[unit.Length]
	Hole     Value[unit.Length] // diameter to drill; silent: diameter + clearance, next bit
	Out      Value[unit.Length] // how far its end stands out of the face of the studs; of a floor, of the bare floor
	FloorAt  []AtWall
}

// AtWall is a distance square off a wall, for things in the floor: `off: {basin wall: 12-1/2, end wall: 20}`.
type AtWall struct {
	Wall  string
	Value Value[unit.Length]
}

// Box is a rectangular penetration: an electrical box, a valve plate, an access panel.
type Box struct {
	Name          string
	At            diag.Place
	In            Name
	Across        Across
	Up            Up
	Width, Height Value[unit.Length]
	FloorAt       []AtWall
	Kind          Value[BoxKind]
	Out           Value[unit.Length] // its front edge out of the face of the studs; − behind it
	Burns         Value[bool]        // the wall's surface round it burns
	Gap           Value[unit.Length] // between the box and the surface round it
	PlateWide     Value[unit.Length]
	PlateHigh     Value[unit.Length]
}

// BoxKind is what a box is for.
type BoxKind uint8

const (
	ReceptacleBox BoxKind = iota
	SwitchBox
	LightBox
	FanBox
	ValvePlate
	AccessPanel
)

var boxKind = choice("receptacle, switch, light, fan, valve or access", word[BoxKind]{"receptacle", ReceptacleBox}, word[BoxKind]{"switch", SwitchBox}, word[BoxKind]{"light", LightBox},
	word[BoxKind]{"fan", FanBox}, word[BoxKind]{"valve", ValvePlate}, word[BoxKind]{"access", AccessPanel})

var stub = record("a round pipe through a face", func(s *Stub, at diag.Place) { s.At = at },
	part("in", "the wall, or floor", called("face"), func(s *Stub) *Name { return &s.In }).must().like("basin wall"),
	part("across", "where along the wall its center is, or both its edges", across, func(s *Stub) *Across { return &s.Across }).like("4 left of basin line"),
	part("up", "how high its center is, or both its edges", up, func(s *Stub) *Up { return &s.Up }).like("center 21 above floor"),
	fact("diameter", "the diameter of the pipe", length(bore), func(s *Stub) *Value[unit.Length] { return &s.Diameter }).must().like("5/8"),
	fact("hole", "the diameter to drill", length(bore), func(s *Stub) *Value[unit.Length] { return &s.Hole }).unless("the pipe, room round it, and the next core bit").like("1-1/4"),
	fact("stands out", "how far its end stands out of the face of the studs now; in a floor, of the bare floor", length(eachWay), func(s *Stub) *Value[unit.Length] { return &s.Out }).like("3"),
	part("off", "in a floor: its center square off the walls", atWalls, func(s *Stub) *[]AtWall { return &s.FloorAt }).like("{basin wall: 12-1/2, end wall: 20}"),
)

var box = record("an electrical box, a valve plate or an access panel", func(b *Box, at diag.Place) { b.At = at },
	part("in", "the wall, or floor", called("face"), func(b *Box) *Name { return &b.In }).must().like("basin wall"),
	part("across", "where along the wall", across, func(b *Box) *Across { return &b.Across }).like("center 48 from A"),
	part("up", "how high", up, func(b *Box) *Up { return &b.Up }).like("center 44 above floor"),
	fact("width", "its width", length(over), func(b *Box) *Value[unit.Length] { return &b.Width }).must().like("2-1/4"),
	fact("height", "its height", length(over), func(b *Box) *Value[unit.Length] { return &b.Height }).must().like("3-3/4"),
	fact("kind", "what it is for", boxKind, func(b *Box) *Value[BoxKind] { return &b.Kind }).like("receptacle"),
	fact("stands out", "how far its front edge stands out of the face of the studs; − behind it", length(eachWay), func(b *Box) *Value[unit.Length] { return &b.Out }).like("1/2"),
	fact("surface burns", "whether the surface round it is wood or anything else that burns", yesNo, func(b *Box) *Value[bool] { return &b.Burns }).like("no"),
	fact("gap", "what is open between it and the surface round it", length(fine), func(b *Box) *Value[unit.Length] { return &b.Gap }).unless("the joint at its edge").like("1/8"),
	fact("plate width", "the width of its cover plate", length(over), func(b *Box) *Value[unit.Length] { return &b.PlateWide }).like("2-3/4"),
	fact("plate height", "the height of its cover plate", length(over), func(b *Box) *Value[unit.Length] { return &b.PlateHigh }).like("4-1/2"),
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
