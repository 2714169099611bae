package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Front is a door, a drawer, a fixed panel or an open place. The fronts of a column stand under each other in the document's order.
type Front struct {
	Name   string
	At     diag.Place
	Kind   FrontKind
	Column Value[int]
	Height Value[unit.Length] // of the front itself; silent: what the others leave
	Made   Value[FrontMake]
	Hinge  Value[string] // "left" or "right"
	Opens  Value[int]    // degrees
	Leaves Value[int]    // two leaves of a door meet in the middle of its column
	Pull   Pull
	Box    Value[unit.Length] // `box height`: of a drawer's sides
	Long   Value[unit.Length] // `box length`: front to back, where not that of the slide
}

// FrontKind is what a front is.
type FrontKind uint8

const (
	DoorFront FrontKind = iota
	DrawerFront
	PanelFront
	OpenFront
)

// FrontMake is how a front is made.
type FrontMake uint8

const (
	SlabFront FrontMake = iota
	FramedFront
)

// FrontSet says where fronts lie.
type FrontSet uint8

const (
	Overlay FrontSet = iota
	Inset
)

// Pull is a grip routed in the edge of a front.
type Pull struct {
	Given               bool
	At                  diag.Place
	Edge                Value[string] // "top", "bottom", "left", "right"
	Length, Deep, Width Value[unit.Length]
}

// Hinges are cup hinges. Where a figure is silent the common practice stands in for it and is told.
type Hinges struct {
	At               diag.Place
	Bore, Deep, Edge Value[unit.Length] // `edge`: from the door's edge to the rim of the cup
	FromEnds, Plate  Value[unit.Length]
	Count            Value[int]
}

// Slides are drawer slides by their data sheet.
type Slides struct {
	At                               diag.Place
	Side, Length, Inside, Above, Low Value[unit.Length]
}

// DrawerBoxes are how the boxes of drawers are made.
type DrawerBoxes struct {
	At                 diag.Place
	Corner             Value[Joint]
	GrooveUp, GrooveIn Value[unit.Length]
	Slack              Value[unit.Length]
}

var front = record("a front", func(f *Front, at diag.Place) { f.At = at },
	sure("kind", "what it is", choice("door, drawer, panel or open", word[FrontKind]{"door", DoorFront}, word[FrontKind]{"drawer", DrawerFront}, word[FrontKind]{"panel", PanelFront}, word[FrontKind]{"open", OpenFront}), func(f *Front) *FrontKind { return &f.Kind }).must().like("door"),
	fact("column", "the column, counted from the left", count("a whole number from 1", 1, 12), func(f *Front) *Value[int] { return &f.Column }).unless("1").like("2"),
	fact("height", "its own height", length(over), func(f *Front) *Value[unit.Length] { return &f.Height }).unless("what the others of the column leave").like("6"),
	fact("made as", "one slab, or a frame with an inset panel", choice("slab or frame", word[FrontMake]{"slab", SlabFront}, word[FrontMake]{"frame", FramedFront}), func(f *Front) *Value[FrontMake] { return &f.Made }).unless("slab").like("frame"),
	fact("hinge", "the side that a door hangs on", choice("left or right", sameWords([]string{"left", "right"})...), func(f *Front) *Value[string] { return &f.Hinge }).unless("left").like("right"),
	fact("opens", "how far a door opens, in degrees", count("a whole number from 1", 1, 180), func(f *Front) *Value[int] { return &f.Opens }).unless("95").like("110"),
	fact("leaves", "one leaf, or two that hang at both sides and meet in the middle", count("1 or 2", 1, 2), func(f *Front) *Value[int] { return &f.Leaves }).unless("1").like("2"),
	part("pull", "a grip routed in its edge", pull, func(f *Front) *Pull { return &f.Pull }).unless("none").like("{edge: top, length: 5, deep: 5/8, width: 7/8}"),
	fact("box height", "the height of a drawer's sides", length(over), func(f *Front) *Value[unit.Length] { return &f.Box }).unless("the opening less 1 in or 25 mm").like("4"),
	fact("box length", "the length of a drawer's box, front to back", length(over), func(f *Front) *Value[unit.Length] { return &f.Long }).unless("the length of the slides").like("16"),
)

var pull = record("a grip routed in an edge", func(p *Pull, at diag.Place) { p.At, p.Given = at, true },
	fact("edge", "the edge that it is in", choice("top, bottom, left or right", sameWords([]string{"top", "bottom", "left", "right"})...), func(p *Pull) *Value[string] { return &p.Edge }).unless("top").like("top"),
	fact("length", "how long it is, in the middle of the edge", length(over), func(p *Pull) *Value[unit.Length] { return &p.Length }).must().like("5"),
	fact("deep", "how far it goes in from the edge", length(over), func(p *Pull) *Value[unit.Length] { return &p.Deep }).must().like("5/8"),
	fact("width", "how much of the thickness it takes, from the back", length(over), func(p *Pull) *Value[unit.Length] { return &p.Width }).like("1/2"),
)

var hinges = record("cup hinges", func(h *Hinges, at diag.Place) { h.At = at },
	fact("bore", "the diameter of the cup", length(bore), func(h *Hinges) *Value[unit.Length] { return &h.Bore }).unless("35 mm").like("35 mm"),
	fact("deep", "the depth of the bore", length(over), func(h *Hinges) *Value[unit.Length] { return &h.Deep }).unless("12.5 mm").like("12.5 mm"),
	fact("edge", "from the door's edge to the rim of the cup", length(within), func(h *Hinges) *Value[unit.Length] { return &h.Edge }).unless("4.5 mm").like("4.5 mm"),
	fact("from ends", "from the door's ends to the center of the first and last cup", length(over), func(h *Hinges) *Value[unit.Length] { return &h.FromEnds }).unless("90 mm").like("90 mm"),
	fact("plate", "from the front of the carcass to the plate's holes", length(over), func(h *Hinges) *Value[unit.Length] { return &h.Plate }).unless("37 mm").like("37 mm"),
	fact("count", "hinges to a door", count("a whole number from 2", 2, 6), func(h *Hinges) *Value[int] { return &h.Count }).unless("2; 3 from 40 in or 1 m").like("2"),
)

var slides = record("drawer slides", func(s *Slides, at diag.Place) { s.At = at },
	fact("side", "the room that a slide needs at each side of the box", length(within), func(s *Slides) *Value[unit.Length] { return &s.Side }).like("1/2"),
	fact("length", "the length of a slide", length(over), func(s *Slides) *Value[unit.Length] { return &s.Length }).like("16"),
	fact("least inside", "the least depth inside the cabinet", length(over), func(s *Slides) *Value[unit.Length] { return &s.Inside }).like("16-1/2"),
	fact("above", "the room that is needed over the box", length(within), func(s *Slides) *Value[unit.Length] { return &s.Above }).unless("1/4 in or 6 mm").like("1/4"),
	fact("below", "the room that is needed under the box", length(within), func(s *Slides) *Value[unit.Length] { return &s.Low }).unless("1/2 in or 13 mm").like("9/16"),
)

var drawerBoxes = record("the boxes of drawers", func(d *DrawerBoxes, at diag.Place) { d.At = at },
	fact("corner", "how front and back of the box meet its sides", woodJoint, func(d *DrawerBoxes) *Value[Joint] { return &d.Corner }).unless("butt").like("rabbet 1/4"),
	fact("groove up", "from the lower edge of the box to the groove of its bottom", length(within), func(d *DrawerBoxes) *Value[unit.Length] { return &d.GrooveUp }).unless("1/2 in or 12 mm").like("1/2"),
	fact("groove deep", "the depth of that groove", length(over), func(d *DrawerBoxes) *Value[unit.Length] { return &d.GrooveIn }).unless("1/4 in or 6 mm").like("1/4"),
	fact("slack", "what the bottom is smaller than its grooves allow, both edges together", length(fine), func(d *DrawerBoxes) *Value[unit.Length] { return &d.Slack }).unless("1/16 in or 2 mm").like("1/16"),
)
