package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Slab is a top: a slab on a cabinet or on the wall. Depth runs from the finished wall to its front edge, width over its ends.
type Slab struct {
	Name      string
	At        diag.Place
	On        Value[string] // a cabinet
	In        Name          // the wall, where no cabinet says it
	Across    Across
	Width     Value[unit.Length]
	Up        Value[unit.Length] // its underside above the finished floor, where it is on no cabinet
	Made      Value[TopKind]
	Stock     Name
	Thickness Value[unit.Length]
	Depth     Value[unit.Length]
	Overhang  Overhang
	Gap       WallGap
	Staves    Staves
	Recess    Recess
	CutOuts   []CutOut
	Least     Value[unit.Length] // `least wood`: beside a cut-out, a hole or a recess
	LeastLow  Value[unit.Length] // `least under recess`
	Edges     TopEdges
	Alcove    []WidthAt
	Wood      WoodMoves
	Fixing    Fixing
}

// TopKind is what a top is made of.
type TopKind uint8

const (
	StaveTop TopKind = iota // staves glued edge to edge
	SheetTop
	StoneTop // made by others from the template
)

// Overhang is how far a top reaches past the carcass.
type Overhang struct{ Left, Right, Front Value[unit.Length] }

// WallGap is the room left between a top and the walls.
type WallGap struct{ Back, Left, Right Value[unit.Length] }

// Staves are the strips of a glued slab.
type Staves struct {
	Given     bool
	At        diag.Place
	Count     Value[int]
	Rough     Value[unit.Length] // width as sawn
	Allowance Value[unit.Length] // for jointing, at each edge
	Thick     Value[unit.Length] // as rough
	Trim      Value[unit.Length] // length to spare at each end
	Boards    []Value[unit.Length]
	Order     Value[RingOrder]
	Spacing   Value[unit.Length]
}

// RingOrder is how the growth rings of neighboring staves lie.
type RingOrder uint8

const (
	RingsTurned  RingOrder = iota // bark side up and down in turn
	RingsOneSide                  // heart side up throughout
)

// Recess is a bed sunk into a top for a basin to sit in.
type Recess struct {
	Given   bool
	At      diag.Place
	For     Value[string] // what sits in it
	Depth   Value[unit.Length]
	Room    Value[unit.Length] // round the outline
	Outline Value[Outline]     // where no basin says it
	Across  Across
	Off     Value[unit.Length] // its center off the finished wall
}

// CutOut is a hole through a top that no basin and no tap asks for.
type CutOut struct {
	Name    string
	At      diag.Place
	Across  Across
	Off     Value[unit.Length]
	Outline Value[Outline]
	Pipe    Value[unit.Length] // diameter of what passes, so that the room to move can be checked
}

// TopEdges are the profiles of a top's upper arrises.
type TopEdges struct {
	Front, Left, Right, Back, CutOuts Value[EdgeProfile]
}

// WidthAt is one width of an alcove, taken at a distance off its back wall and a height.
type WidthAt struct {
	Width unit.Length
	Off   Value[unit.Length]
	Up    Up
	At    diag.Place
}

// WoodMoves are the facts of a solid slab's movement.
type WoodMoves struct {
	At             diag.Place
	Species        Value[string]
	Rings          Value[Rings]
	Glued, InHouse Value[Shares]
}

// Fixing is how a solid slab is held so that it can move: one line is fixed, every other screw stands in a slot.
type Fixing struct {
	Given    bool
	At       diag.Place
	Fixed    Value[FixedLine]
	Screws   []Value[unit.Length] // rows, off the finished wall
	Along    []Value[unit.Length] // of the screws of a row, from the left end of the top
	Diameter Value[unit.Length]
	Head     Value[unit.Length] // diameter of head or washer, which has to cover the slot
}

// FixedLine is where a slab is held fast.
type FixedLine uint8

const (
	FixedBack FixedLine = iota
	FixedMiddle
	FixedFront
)

var topRecord = record("a top", func(t *Slab, at diag.Place) { t.At = at },
	fact("on", "the cabinet that it lies on", calledText("cabinet"), func(t *Slab) *Value[string] { return &t.On }).like("vanity"),
	part("in", "the wall that it is on, where no cabinet says it", called("wall"), func(t *Slab) *Name { return &t.In }).unless("the cabinet's wall").like("basin wall"),
	part("across", "where along the wall its ends are", across, func(t *Slab) *Across { return &t.Across }).unless("over the cabinet, with its overhangs").like("12 to 46 from A"),
	fact("width", "its width, where only one end or the middle is located", length(over), func(t *Slab) *Value[unit.Length] { return &t.Width }).like("34"),
	fact("up", "where it is on no cabinet: from the finished floor to its underside", length(over), func(t *Slab) *Value[unit.Length] { return &t.Up }).unless("the cabinet's height").like("32-1/2"),
	fact("made of", "staves, a sheet, or stone by others", choice("staves, sheet or stone", word[TopKind]{"staves", StaveTop}, word[TopKind]{"sheet", SheetTop}, word[TopKind]{"stone", StoneTop}), func(t *Slab) *Value[TopKind] { return &t.Made }).must().like("staves"),
	part("stock", "what it is cut from", called("stock"), func(t *Slab) *Name { return &t.Stock }).like("oak board"),
	fact("thickness", "its finished thickness", length(thin), func(t *Slab) *Value[unit.Length] { return &t.Thickness }).must().like("1-1/2"),
	fact("depth", "from the finished wall to its front edge", length(over), func(t *Slab) *Value[unit.Length] { return &t.Depth }).must().like("21"),
	part("overhang", "how far it reaches past the sides of the carcass", overhang, func(t *Slab) *Overhang { return &t.Overhang }).unless("0").like("{left: 1, right: 1}"),
	part("gap", "the room to leave between it and the walls", wallGap, func(t *Slab) *WallGap { return &t.Gap }).unless("0").like("{back: 1/8}"),
	part("staves", "the strips of a glued slab", staves, func(t *Slab) *Staves { return &t.Staves }).like("{count: 8, rough width: 3}"),
	part("recess", "a bed sunk into it for a basin", recess, func(t *Slab) *Recess { return &t.Recess }).unless("none").like("{depth: 3/8}"),
	part("cut-outs", "holes through it that no basin and no tap asks for, by name", named("cut-out", cutOut, func(c *CutOut, e text.Entry) { c.Name, c.At = e.Key, e.At }), func(t *Slab) *[]CutOut { return &t.CutOuts }).unless("none").like("{cable: {across: 4 right of basin line, off: 2, outline: round 2}}"),
	fact("least wood", "the least wood to keep beside a hole or a recess", length(over), func(t *Slab) *Value[unit.Length] { return &t.Least }).unless("2 in or 50 mm").like("2"),
	fact("least under", "the least wood to keep under a recess", length(over), func(t *Slab) *Value[unit.Length] { return &t.LeastLow }).unless("half of the thickness").like("1"),
	part("edges", "the profile of its upper edges", topEdges, func(t *Slab) *TopEdges { return &t.Edges }).unless("square").like("{front: round-over 1/8}"),
	part("alcove", "widths between two walls that it goes in between, as taped", list(complete(widthAt)), func(t *Slab) *[]WidthAt { return &t.Alcove }).unless("the room's walls").like("[{width: 59-7/8, off: 21}, {width: 60-1/8, off: 0}]"),
	part("wood", "what its movement is reckoned from", woodMoves, func(t *Slab) *WoodMoves { return &t.Wood }).unless("as the stock says").like("{species: white oak, rings: flat, glued at: 12 %, in the house: 6 to 11 %}"),
	part("fixing", "how it is held so that it can move", fixing, func(t *Slab) *Fixing { return &t.Fixing }).like("{fixed at: back, screws: [2, 10, 19], diameter: 3/16}"),
)

var overhang = record("how far a top reaches past the carcass", func(*Overhang, diag.Place) {},
	fact("left", "past the left side", length(eachWay), func(o *Overhang) *Value[unit.Length] { return &o.Left }).unless("0").like("1"),
	fact("right", "past the right side", length(eachWay), func(o *Overhang) *Value[unit.Length] { return &o.Right }).unless("0").like("1"),
	fact("front", "past the fronts, as a check of the depth", length(eachWay), func(o *Overhang) *Value[unit.Length] { return &o.Front }).unless("not checked").like("3/4"),
)

var wallGap = record("the room between a top and the walls", func(*WallGap, diag.Place) {},
	fact("back", "at the back", length(fine), func(g *WallGap) *Value[unit.Length] { return &g.Back }).unless("0").like("1/8"),
	fact("left", "at its left end", length(fine), func(g *WallGap) *Value[unit.Length] { return &g.Left }).unless("0").like("1/8"),
	fact("right", "at its right end", length(fine), func(g *WallGap) *Value[unit.Length] { return &g.Right }).unless("0").like("1/8"),
)

var staves = record("the strips of a glued slab", func(s *Staves, at diag.Place) { s.At, s.Given = at, true },
	fact("count", "how many there are", count("a whole number from 1", 1, 100), func(s *Staves) *Value[int] { return &s.Count }).like("8"),
	fact("rough width", "their width as sawn", length(over), func(s *Staves) *Value[unit.Length] { return &s.Rough }).like("3"),
	fact("allowance", "what jointing takes at each edge", length(fine), func(s *Staves) *Value[unit.Length] { return &s.Allowance }).unless("1/16 in or 1.5 mm").like("1/16"),
	fact("rough thickness", "their thickness before planing", length(thin), func(s *Staves) *Value[unit.Length] { return &s.Thick }).unless("the thickness of the stock").like("1-3/4"),
	fact("end trim", "the length to spare at each end", length(within), func(s *Staves) *Value[unit.Length] { return &s.Trim }).unless("1 in or 25 mm").like("1"),
	part("boards", "the rough widths of boards on hand, one stave each, in place of count and rough width", list(bareLength), func(s *Staves) *[]Value[unit.Length] { return &s.Boards }).like("[3-1/4, 2-7/8, 4]"),
	fact("rings", "bark side up and down in turn, or one side up", choice("turned or one side", word[RingOrder]{"turned", RingsTurned}, word[RingOrder]{"one side", RingsOneSide}), func(s *Staves) *Value[RingOrder] { return &s.Order }).unless("turned").like("turned"),
	fact("clamp spacing", "from clamp to clamp", length(over), func(s *Staves) *Value[unit.Length] { return &s.Spacing }).unless("twice the width of the outer stave").like("8"),
)

var recess = record("a bed sunk into a top", func(c *Recess, at diag.Place) { c.At, c.Given = at, true },
	fact("for", "the basin that sits in it", words, func(c *Recess) *Value[string] { return &c.For }).like("bowl"),
	fact("depth", "how deep it is", length(over), func(c *Recess) *Value[unit.Length] { return &c.Depth }).must().like("3/8"),
	fact("room", "the room round what sits in it", length(fine), func(c *Recess) *Value[unit.Length] { return &c.Room }).unless("1/16 in or 1.5 mm").like("1/16"),
	fact("outline", "its outline, where no basin says it", outlineForm, func(c *Recess) *Value[Outline] { return &c.Outline }).unless("the basin's foot").like("round 15"),
	part("across", "its middle along the wall, where no basin says it", across, func(c *Recess) *Across { return &c.Across }).like("on basin line"),
	fact("off", "its middle off the finished wall, where no basin says it", length(over), func(c *Recess) *Value[unit.Length] { return &c.Off }).like("11"),
)

var cutOut = record("a hole through a top", func(c *CutOut, at diag.Place) { c.At = at },
	part("across", "its middle along the wall", across, func(c *CutOut) *Across { return &c.Across }).must().like("on basin line"),
	fact("off", "its middle off the finished wall", length(over), func(c *CutOut) *Value[unit.Length] { return &c.Off }).must().like("11"),
	fact("outline", "its outline", outlineForm, func(c *CutOut) *Value[Outline] { return &c.Outline }).must().like("round 2"),
	fact("passes", "the diameter of what passes through it and stands still", length(bore), func(c *CutOut) *Value[unit.Length] { return &c.Pipe }).like("1-1/4"),
)

var topEdges = record("the profiles of a top", func(*TopEdges, diag.Place) {},
	fact("front", "the front edge", profile, func(e *TopEdges) *Value[EdgeProfile] { return &e.Front }).unless("square").like("round-over 1/8"),
	fact("left", "the left end", profile, func(e *TopEdges) *Value[EdgeProfile] { return &e.Left }).unless("square").like("chamfer 1/8"),
	fact("right", "the right end", profile, func(e *TopEdges) *Value[EdgeProfile] { return &e.Right }).unless("square").like("chamfer 1/8"),
	fact("back", "the back edge", profile, func(e *TopEdges) *Value[EdgeProfile] { return &e.Back }).unless("square").like("square"),
	fact("cut-outs", "the rims of cut-outs that show", profile, func(e *TopEdges) *Value[EdgeProfile] { return &e.CutOuts }).unless("square").like("round-over 1/16"),
)

var widthAt = record("a width between two walls", func(w *WidthAt, at diag.Place) { w.At = at },
	part("width", "the width", length(over), func(w *WidthAt) *unit.Length { return &w.Width }).must().like("59-7/8"),
	fact("off", "how far off the back wall it was taken", length(within), func(w *WidthAt) *Value[unit.Length] { return &w.Off }).like("21"),
	part("up", "how high it was taken", up, func(w *WidthAt) *Up { return &w.Up }).like("33 above floor"),
)

var woodMoves = record("what the movement of a slab is reckoned from", func(w *WoodMoves, at diag.Place) { w.At = at },
	fact("species", "the wood", words, func(w *WoodMoves) *Value[string] { return &w.Species }).unless("as the stock says").like("white oak"),
	fact("rings", "flat-sawn, quarter-sawn or between", ringWords, func(w *WoodMoves) *Value[Rings] { return &w.Rings }).unless("as the stock says").like("flat"),
	fact("glued at", "the moisture of the wood when it is glued and cut", percent, func(w *WoodMoves) *Value[Shares] { return &w.Glued }).unless("not checked").like("8 %"),
	fact("in the house", "the moisture that the wood will have over the year", percent, func(w *WoodMoves) *Value[Shares] { return &w.InHouse }).unless("from the hygrometer, or the climate's default").like("6 to 11 %"),
)

var fixing = record("how a slab is held", func(f *Fixing, at diag.Place) { f.At, f.Given = at, true },
	fact("fixed at", "the line that is held fast; the rest moves from there", choice("back, middle or front", word[FixedLine]{"back", FixedBack}, word[FixedLine]{"middle", FixedMiddle}, word[FixedLine]{"front", FixedFront}), func(f *Fixing) *Value[FixedLine] { return &f.Fixed }).must().like("back"),
	part("screws", "the rows of screws, off the finished wall", list(bareLength), func(f *Fixing) *[]Value[unit.Length] { return &f.Screws }).must().like("[2, 10, 19]"),
	part("along", "the screws of a row, from the left end of the top", list(bareLength), func(f *Fixing) *[]Value[unit.Length] { return &f.Along }).unless("3 in or 75 mm from the ends of the rail, no more than 12 in or 300 mm apart").like("[4, 15, 28]"),
	fact("diameter", "the diameter of a screw's shank", length(bore), func(f *Fixing) *Value[unit.Length] { return &f.Diameter }).like("3/16"),
	fact("head", "the diameter of head or washer", length(bore), func(f *Fixing) *Value[unit.Length] { return &f.Head }).like("3/4"),
)
