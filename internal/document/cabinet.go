package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Cabinet is a box of wood on a wall. Its outside is asked for; every part follows. Height runs from the finished floor (the
// level that all heights count from) to the top of the carcass, width over the sides, depth from the finished wall to the front
// edge of the carcass; fronts that lie over the carcass stand before that.
type Cabinet struct {
	Name      string
	At        diag.Place
	In        Name
	Across    Across
	Width     Value[unit.Length]
	Stands    Value[Stand]
	Height    Value[unit.Length]
	Bottom    Value[unit.Length] // of a wall-hung one: its underside above the finished floor
	Depth     Value[unit.Length]
	Made      Value[CarcassKind]
	Stock     CabinetStock
	Joints    CabinetJoints
	Frame     FrameSize
	Top       Value[TopOfCarcass]
	TopRail   Value[unit.Length] // `top rail`: the width of the two rails on top
	BackSet   Value[unit.Length] // `back set`: the room behind the back
	Toe       ToeSpace
	Legs      Legs
	Raise     Value[Span] // `raise`: what legs, feet or shims can add under it
	Columns   []Value[unit.Length]
	Shelves   []Shelf
	Set       Value[FrontSet]
	Reveal    Value[unit.Length]
	EdgeShows Value[unit.Length] // `edge reveal`: of overlay fronts, what shows of the carcass at its outside
	Fronts    []Front
	Matched   Value[bool]
	Hinges    Hinges
	Slides    Slides
	Drawers   DrawerBoxes
	Banding   Value[unit.Length] // `banding`: the thickness of the edge band on edges that show
	Leave     Leave
	Alcove    []WidthAt
	Screws    Fastening
}

// Stand is what a cabinet stands on.
type Stand uint8

const (
	OnFloor Stand = iota // sides run to the floor, with a toe space or without
	OnLegs
	OnWall
)

// CarcassKind is how the sides are made.
type CarcassKind uint8

const (
	PanelCarcass CarcassKind = iota // plywood panels
	FrameCarcass                    // stiles and rails with a panel in a groove
)

// TopOfCarcass closes the carcass under the top.
type TopOfCarcass uint8

const (
	TopRails TopOfCarcass = iota
	TopPanel
	TopOpen
)

// CabinetStock names the good that each kind of part is cut from.
type CabinetStock struct {
	Panels, Back, Shelves, Fronts, FrontPanels, Frame, Legs, Drawers, DrawerBottoms, Toe Name
}

// CabinetJoints are the joints of a carcass.
type CabinetJoints struct {
	Bottom, Top, Shelf, Divider, Back, Frame, Panel Value[Joint]
}

// FrameSize is the width of the members of a frame.
type FrameSize struct{ Stile, Rail, Gap Value[unit.Length] }

// ToeSpace is the recess at the foot.
type ToeSpace struct {
	Given      bool
	High, Deep Value[unit.Length]
	At         diag.Place
}

// Legs are four square legs; the carcass stands between or on them.
type Legs struct {
	Given    bool
	Section  Value[unit.Length]
	Tapers   []TaperFace
	From, To Value[unit.Length] // below the carcass where the taper starts; the section at the foot
	At       diag.Place
}

// TaperFace is a face of a leg that is tapered.
type TaperFace uint8

const (
	TaperInner TaperFace = iota // the two faces that look under the cabinet
	TaperOuter
	TaperFront
	TaperBack
	TaperSides
)

// Shelf is one shelf of a column.
type Shelf struct {
	Name   string
	At     diag.Place
	Column Value[int]
	Up     Value[unit.Length] // its underside above the inside bottom
	Depth  Value[unit.Length]
	Fixed  Value[bool]
}

// Leave is the extra width left on an edge for scribing it to a wall.
type Leave struct{ Left, Right, Back Value[unit.Length] }

// Fastening is how a cabinet is screwed to the wall: rows of screws.
type Fastening struct {
	Given    bool
	At       diag.Place
	Length   Value[unit.Length]
	Diameter Value[unit.Length]
	Down     Value[unit.Length]   // the row below the top of the carcass
	From     []Value[unit.Length] // from the left side of the carcass
	Least    Value[unit.Length]   // least length in solid wood
}

var cabinet = record("a cabinet", func(c *Cabinet, at diag.Place) { c.At = at },
	part("in", "the wall that it stands at", called("wall"), func(c *Cabinet) *Name { return &c.In }).must().like("basin wall"),
	part("across", "where along the wall its sides are, outside to outside", across, func(c *Cabinet) *Across { return &c.Across }).must().like("14 to 44 from A"),
	fact("width", "its width over the sides, where only one edge or the center is located", length(over), func(c *Cabinet) *Value[unit.Length] { return &c.Width }).like("30"),
	fact("stands", "on the floor, on legs, or on the wall", choice("floor, legs or wall", word[Stand]{"floor", OnFloor}, word[Stand]{"legs", OnLegs}, word[Stand]{"wall", OnWall}), func(c *Cabinet) *Value[Stand] { return &c.Stands }).unless("floor").like("wall"),
	fact("height", "from the finished floor to the top of the carcass; where the floor under it is lower, legs, feet or shims take the rest", length(over), func(c *Cabinet) *Value[unit.Length] { return &c.Height }).must().like("32-1/2"),
	fact("bottom", "of a cabinet on the wall: from the finished floor to its underside", length(over), func(c *Cabinet) *Value[unit.Length] { return &c.Bottom }).like("9"),
	fact("depth", "from the finished wall to the front edge of the carcass, without fronts that lie over it", length(over), func(c *Cabinet) *Value[unit.Length] { return &c.Depth }).must().like("20"),
	fact("made of", "panels, or frames with panels in them", choice("panels or frames", word[CarcassKind]{"panels", PanelCarcass}, word[CarcassKind]{"frames", FrameCarcass}), func(c *Cabinet) *Value[CarcassKind] { return &c.Made }).unless("panels").like("panels"),
	part("stock", "what its parts are cut from", cabinetStock, func(c *Cabinet) *CabinetStock { return &c.Stock }).unless("parts have no thickness and are not worked out").like("{panels: birch 3/4, back: birch 1/4}"),
	part("joints", "how its parts meet", cabinetJoints, func(c *Cabinet) *CabinetJoints { return &c.Joints }).unless("butt").like("{bottom: dado 1/4, back: rabbet 3/8}"),
	part("frame", "the members of framed sides and framed fronts", frameSize, func(c *Cabinet) *FrameSize { return &c.Frame }).like("{stile: 2-1/4, rail: 2-1/4}"),
	fact("top", "what closes it under the top: two rails, a panel, or nothing", choice("rails, panel or open", word[TopOfCarcass]{"rails", TopRails}, word[TopOfCarcass]{"panel", TopPanel}, word[TopOfCarcass]{"open", TopOpen}), func(c *Cabinet) *Value[TopOfCarcass] { return &c.Top }).unless("rails").like("rails"),
	fact("top rail", "the width of the rails on top", length(over), func(c *Cabinet) *Value[unit.Length] { return &c.TopRail }).unless("4 in").like("4"),
	fact("back set", "the room between the finished wall and the back", length(within), func(c *Cabinet) *Value[unit.Length] { return &c.BackSet }).unless("0").like("3/4"),
	part("toe space", "the recess at the foot", toeSpace, func(c *Cabinet) *ToeSpace { return &c.Toe }).unless("none").like("{high: 4, deep: 3}"),
	part("legs", "square legs at the four corners", legs, func(c *Cabinet) *Legs { return &c.Legs }).unless("none").like("{section: 1-3/4, tapered on: [inner], from: 2, to: 1}"),
	fact("raise", "what legs, feet or shims can add under it", lengthsForm, func(c *Cabinet) *Value[Span] { return &c.Raise }).like("0 to 3/4"),
	part("columns", "the clear widths of its columns from the left", list(bareLength), func(c *Cabinet) *[]Value[unit.Length] { return &c.Columns }).unless("alike").like("[13-1/2, 13-1/2]"),
	part("shelves", "its shelves by name", named("shelf", shelf, func(s *Shelf, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(c *Cabinet) *[]Shelf { return &c.Shelves }).unless("none").like("{towels: {up: 10}}"),
	fact("fronts are", "set into the carcass or over it", choice("inset or overlay", word[FrontSet]{"inset", Inset}, word[FrontSet]{"overlay", Overlay}), func(c *Cabinet) *Value[FrontSet] { return &c.Set }).unless("overlay").like("inset"),
	fact("reveal", "the gap round an inset front, and between two fronts", length(fine), func(c *Cabinet) *Value[unit.Length] { return &c.Reveal }).unless("1/8 in or 3 mm").like("3/32"),
	fact("edge reveal", "what shows of the carcass outside fronts that lie over it", length(fine), func(c *Cabinet) *Value[unit.Length] { return &c.EdgeShows }).unless("half of the reveal").like("1/16"),
	part("fronts", "doors, drawers and fixed panels by name, in each column from the top", named("front", front, func(f *Front, e text.Entry) { f.Name, f.At = e.Key, e.At }), func(c *Cabinet) *[]Front { return &c.Fronts }).unless("open").like("{left door: {kind: door, hinge: left}}"),
	fact("matched", "whether the grain runs on from front to front, so that all come from one piece", yesNo, func(c *Cabinet) *Value[bool] { return &c.Matched }).unless("no").like("yes"),
	part("hinges", "the hinges of its doors", hinges, func(c *Cabinet) *Hinges { return &c.Hinges }).like("{bore: 35 mm, deep: 12.5 mm}"),
	part("slides", "the slides of its drawers, as their data sheet says", slides, func(c *Cabinet) *Slides { return &c.Slides }).like("{side: 1/2, length: 16}"),
	part("drawer boxes", "how the boxes of its drawers are made", drawerBoxes, func(c *Cabinet) *DrawerBoxes { return &c.Drawers }).like("{corner: rabbet 1/4, groove up: 3/8}"),
	fact("banding", "the thickness of the band that is glued on edges that show", length(fine), func(c *Cabinet) *Value[unit.Length] { return &c.Banding }).unless("none").like("0.5 mm"),
	part("leave", "extra width to leave for scribing", leave, func(c *Cabinet) *Leave { return &c.Leave }).unless("none").like("{left: 1/2}"),
	part("alcove", "widths between two walls that it goes in between, as taped", list(complete(widthAt)), func(c *Cabinet) *[]WidthAt { return &c.Alcove }).unless("the room's walls").like("[{width: 30-1/4, off: 20, up: 30 above floor}, {width: 30-1/8, off: 0}]"),
	part("screws", "how it is screwed to the wall", fastening, func(c *Cabinet) *Fastening { return &c.Screws }).like("{length: 3, down: 1-1/2, from left: [2, 18, 28]}"),
)

var cabinetStock = record("what the parts are cut from", func(*CabinetStock, diag.Place) {},
	part("panels", "sides, bottom, rails, dividers", called("stock"), func(s *CabinetStock) *Name { return &s.Panels }).like("birch 3/4"),
	part("back", "the back", called("stock"), func(s *CabinetStock) *Name { return &s.Back }).unless("no back").like("birch 1/4"),
	part("shelves", "the shelves", called("stock"), func(s *CabinetStock) *Name { return &s.Shelves }).unless("as panels").like("birch 3/4"),
	part("fronts", "slab fronts, or the frames of framed ones", called("stock"), func(s *CabinetStock) *Name { return &s.Fronts }).unless("as panels").like("oak board"),
	part("front panels", "the panels in framed fronts", called("stock"), func(s *CabinetStock) *Name { return &s.FrontPanels }).like("birch 1/4"),
	part("frame", "stiles and rails of framed sides", called("stock"), func(s *CabinetStock) *Name { return &s.Frame }).like("oak board"),
	part("legs", "the legs", called("stock"), func(s *CabinetStock) *Name { return &s.Legs }).like("oak square"),
	part("drawers", "the boxes of drawers", called("stock"), func(s *CabinetStock) *Name { return &s.Drawers }).unless("as panels").like("birch 1/2"),
	part("drawer bottoms", "the bottoms of drawers", called("stock"), func(s *CabinetStock) *Name { return &s.DrawerBottoms }).unless("as the back").like("birch 1/4"),
	part("toe", "the board behind the toe space", called("stock"), func(s *CabinetStock) *Name { return &s.Toe }).unless("as panels").like("birch 3/4"),
)

var cabinetJoints = record("how the parts of a carcass meet", func(*CabinetJoints, diag.Place) {},
	fact("bottom", "the bottom in the sides", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Bottom }).unless("butt").like("dado 1/4"),
	fact("top", "the top, or its rails, in the sides", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Top }).unless("butt").like("half-lap 3/8"),
	fact("shelf", "fixed shelves in the sides", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Shelf }).unless("butt").like("dado 1/4"),
	fact("divider", "dividers in bottom and top", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Divider }).unless("butt").like("dado 1/4"),
	fact("back", "the back in sides, bottom and top", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Back }).unless("butt: it lies behind the sides").like("rabbet 3/8"),
	fact("frame", "rails in stiles", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Frame }).unless("butt").like("tongue 3/8"),
	fact("panel", "a panel in its frame", woodJoint, func(j *CabinetJoints) *Value[Joint] { return &j.Panel }).unless("groove 3/8 in or 10 mm").like("groove 3/8"),
)

var frameSize = record("the members of a frame", func(*FrameSize, diag.Place) {},
	fact("stile", "the width of the upright members", length(over), func(f *FrameSize) *Value[unit.Length] { return &f.Stile }).unless("2-1/4 in or 57 mm").like("2-1/4"),
	fact("rail", "the width of the level members", length(over), func(f *FrameSize) *Value[unit.Length] { return &f.Rail }).unless("as the stiles").like("2-1/4"),
	fact("gap", "the room at each edge of a panel in its groove", length(fine), func(f *FrameSize) *Value[unit.Length] { return &f.Gap }).unless("what the wood needs to move").like("1/8"),
)

var toeSpace = record("the recess at the foot", func(t *ToeSpace, at diag.Place) { t.At, t.Given = at, true },
	fact("high", "how high it is", length(over), func(t *ToeSpace) *Value[unit.Length] { return &t.High }).must().like("4"),
	fact("deep", "how far it goes back from the front of the carcass", length(over), func(t *ToeSpace) *Value[unit.Length] { return &t.Deep }).must().like("3"),
)

var legs = record("four square legs", func(l *Legs, at diag.Place) { l.At, l.Given = at, true },
	fact("section", "the side of the square", length(over), func(l *Legs) *Value[unit.Length] { return &l.Section }).must().like("1-3/4"),
	part("tapered on", "the faces that taper", list(taperFace), func(l *Legs) *[]TaperFace { return &l.Tapers }).unless("none").like("[inner]"),
	fact("from", "how far below the carcass the taper starts", length(within), func(l *Legs) *Value[unit.Length] { return &l.From }).unless("0").like("1"),
	fact("to", "the side of the square at the foot", length(over), func(l *Legs) *Value[unit.Length] { return &l.To }).like("1"),
)

var taperFace = choice("inner, outer, front, back or sides", word[TaperFace]{"inner", TaperInner}, word[TaperFace]{"outer", TaperOuter}, word[TaperFace]{"front", TaperFront}, word[TaperFace]{"back", TaperBack}, word[TaperFace]{"sides", TaperSides})

var bareLength = form[Value[unit.Length]]{length(over).shape, func(r *reader, n *text.Node) (Value[unit.Length], bool) {
	v := valueOf(r, length(over), n)
	return v, v.Known || v.Unknown
}}

var shelf = record("a shelf", func(s *Shelf, at diag.Place) { s.At = at },
	fact("column", "the column, counted from the left", count("a whole number from 1", 1, 12), func(s *Shelf) *Value[int] { return &s.Column }).unless("1").like("1"),
	fact("up", "from the inside bottom to its underside", length(over), func(s *Shelf) *Value[unit.Length] { return &s.Up }).must().like("10"),
	fact("depth", "how deep it is, from the back", length(over), func(s *Shelf) *Value[unit.Length] { return &s.Depth }).unless("the depth inside").like("14"),
	fact("fixed", "whether it is joined in", yesNo, func(s *Shelf) *Value[bool] { return &s.Fixed }).unless("no: it lies on pins").like("yes"),
)

var leave = record("extra width to scribe", func(*Leave, diag.Place) {},
	fact("left", "the width of a filler strip at the left side, before it is scribed", length(within), func(l *Leave) *Value[unit.Length] { return &l.Left }).unless("0").like("1/2"),
	fact("right", "the width of a filler strip at the right side", length(within), func(l *Leave) *Value[unit.Length] { return &l.Right }).unless("0").like("1/2"),
	fact("back", "at the back edges of the sides", length(within), func(l *Leave) *Value[unit.Length] { return &l.Back }).unless("0").like("1/4"),
)

var fastening = record("a row of screws into the wall", func(f *Fastening, at diag.Place) { f.At, f.Given = at, true },
	fact("length", "the length of a screw", length(over), func(f *Fastening) *Value[unit.Length] { return &f.Length }).like("3"),
	fact("diameter", "the diameter of its shank", length(bore), func(f *Fastening) *Value[unit.Length] { return &f.Diameter }).like("3/16"),
	fact("down", "how far the row is below the top of the carcass", length(over), func(f *Fastening) *Value[unit.Length] { return &f.Down }).like("1-1/2"),
	part("from left", "where the screws are, from the left side of the carcass", list(bareLength), func(f *Fastening) *[]Value[unit.Length] { return &f.From }).like("[2, 18, 28]"),
	fact("least hold", "the least length of a screw in stud or blocking", length(over), func(f *Fastening) *Value[unit.Length] { return &f.Least }).unless("1-1/4 in or 32 mm").like("1-1/4"),
)
