package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// WC is one WC as its data sheet says, and the pipes that it stands on.
type WC struct {
	Name      string
	At        diag.Place
	Kind      WCKind
	KindAt    diag.Place
	Against   Name // the wall behind it
	Outlet    Name // the stub-out: a flange in the floor, or a pipe in the wall
	Supply    Name // the stub-out
	RoughIn   Value[unit.Length]
	Gap       Value[unit.Length] // what its sheet leaves behind the tank at that rough-in
	Length    Value[unit.Length] // from the back of the tank, or the finished wall, to the front of the bowl
	Width     Value[unit.Length] // of the bowl
	TankWidth Value[unit.Length]
	TankDepth Value[unit.Length]
	TankFrom  Value[unit.Length] // underside of the tank over the finished floor
	TankTo    Value[unit.Length] // its lid
	Seat      Value[unit.Length] // over the finished floor, or over the bolts of a wall-hung one
	Skirted   Value[bool]        // its foot runs back to the wall
	FlangeTop Value[unit.Length] // over the bare floor
	Bolts     Value[unit.Length] // length of the bolts over the flange
	BoltsNeed Value[unit.Length] // what they must reach over the flange
	OutletUp  Value[Span]        // of a horizontal outlet: its center over the finished floor
	InletLeft Value[unit.Length] // the supply's inlet left of the center line
	InletUp   Value[unit.Length] // over the finished floor
	InletOff  Value[unit.Length] // off the finished wall
	Foot      Value[Outline]     // what touches the floor, or the wall
	Weight    Value[int64]       // grams
	Carrier   Carrier
}

// WCKind is how a WC stands and where its outlet goes.
type WCKind uint8

const (
	FloorWC WCKind = iota // outlet down into a flange in the floor
	WallHungWC
	HorizontalWC // on the floor, outlet level into the wall
)

// Carrier is the frame in the wall that a wall-hung WC hangs on.
type Carrier struct {
	At       diag.Place
	Given    bool
	Behind   Value[unit.Length] // its front behind the face of the studs; − before it
	Wall     Value[Span]        // from its front to the finished face, as its label allows
	Bolts    Value[unit.Length] // length of its bolts before its front
	BoltNeed Value[unit.Length] // what must stand out of the finished face
	Pipe     Value[unit.Length] // length of the outlet pipe before its front
	PipeNeed Value[unit.Length] // what must stand out of the finished face
	BoltsUp  Value[unit.Length] // its bolts over the finished floor
}

var wcKind = choice("floor, wall-hung or horizontal", word[WCKind]{"floor", FloorWC}, word[WCKind]{"wall-hung", WallHungWC}, word[WCKind]{"horizontal", HorizontalWC})

var wc = record("a WC", func(w *WC, at diag.Place) { w.At = at },
	key[WC]{row{name: "kind", what: "how it stands: over a flange in the floor, hung on the wall, or on the floor with a horizontal outlet", need: true, example: "floor", shape: wcKind.shape}, func(r *reader, w *WC, n *text.Node) {
		w.Kind, _ = wcKind.read(r, n)
		w.KindAt = n.At
	}},
	part("against", "the wall behind it", called("wall"), func(w *WC) *Name { return &w.Against }).must().like("basin wall"),
	part("outlet", "the stub-out that it empties into", called("stub-out"), func(w *WC) *Name { return &w.Outlet }).must().like("drain"),
	part("supply", "the stub-out that fills it", called("stub-out"), func(w *WC) *Name { return &w.Supply }).like("cold"),
	fact("rough-in", "from the finished wall to the center of its outlet in the floor", length(over), func(w *WC) *Value[unit.Length] { return &w.RoughIn }).like("12"),
	fact("tank gap", "what its sheet leaves between tank and finished wall at that rough-in", length(within), func(w *WC) *Value[unit.Length] { return &w.Gap }).like("1/2"),
	fact("length", "from the back of its tank, or of a wall-hung one from the finished wall, to the front of its bowl", length(over), func(w *WC) *Value[unit.Length] { return &w.Length }).like("28"),
	fact("width", "the width of its bowl", length(over), func(w *WC) *Value[unit.Length] { return &w.Width }).like("14-1/2"),
	fact("tank width", "the width of its tank", length(over), func(w *WC) *Value[unit.Length] { return &w.TankWidth }).like("16-1/2"),
	fact("tank depth", "the depth of its tank, from back to front", length(over), func(w *WC) *Value[unit.Length] { return &w.TankDepth }).like("8"),
	fact("tank from", "the underside of its tank over the finished floor", length(over), func(w *WC) *Value[unit.Length] { return &w.TankFrom }).like("15-1/2"),
	fact("tank to", "the lid of its tank over the finished floor", length(over), func(w *WC) *Value[unit.Length] { return &w.TankTo }).like("30"),
	fact("seat", "the top of its seat over the finished floor; of a wall-hung one over its bolts", length(over), func(w *WC) *Value[unit.Length] { return &w.Seat }).like("16-1/2"),
	fact("skirted", "whether its foot runs back to the wall", yesNo, func(w *WC) *Value[bool] { return &w.Skirted }).like("no"),
	fact("flange top", "the top of the flange over the bare floor; − under it", length(eachWay), func(w *WC) *Value[unit.Length] { return &w.FlangeTop }).like("1"),
	fact("bolts", "the length of its bolts over the flange", length(over), func(w *WC) *Value[unit.Length] { return &w.Bolts }).like("2-1/4"),
	fact("bolts need", "how far they must reach over the flange when it stands on the finished floor with the flange level with it", length(over), func(w *WC) *Value[unit.Length] { return &w.BoltsNeed }).like("1-3/4"),
	fact("outlet up", "of a horizontal outlet: its center over the finished floor, and the range that its connector allows", lengthsForm, func(w *WC) *Value[Span] { return &w.OutletUp }).like("180 to 190 mm"),
	fact("inlet left", "the supply's inlet left of its center line; − right of it", length(eachWay), func(w *WC) *Value[unit.Length] { return &w.InletLeft }).like("6"),
	fact("inlet up", "the supply's inlet over the finished floor", length(over), func(w *WC) *Value[unit.Length] { return &w.InletUp }).like("15"),
	fact("inlet off", "the supply's inlet off the finished wall", length(over), func(w *WC) *Value[unit.Length] { return &w.InletOff }).like("4"),
	fact("foot", "the outline of what touches the floor, or of a wall-hung one the wall: width x depth", outlineForm, func(w *WC) *Value[Outline] { return &w.Foot }).like("oval 9 x 20"),
	fact("weight", "what the heaviest part to lift weighs", weight, func(w *WC) *Value[int64] { return &w.Weight }).like("95 lb"),
	part("carrier", "of a wall-hung one: the frame in the wall", carrier, func(w *WC) *Carrier { return &w.Carrier }).like("{behind: 0, wall: 10 to 70 mm}"),
)

var carrier = record("the frame in the wall that a WC hangs on", func(c *Carrier, at diag.Place) { c.At, c.Given = at, true },
	fact("behind", "how far its front stands behind the face of the studs; − before it", length(eachWay), func(c *Carrier) *Value[unit.Length] { return &c.Behind }).like("0"),
	fact("wall", "from its front to the finished face, as its label allows", lengthsForm, func(c *Carrier) *Value[Span] { return &c.Wall }).like("10 to 70 mm"),
	fact("bolts", "the length of its bolts before its front", length(over), func(c *Carrier) *Value[unit.Length] { return &c.Bolts }).like("180 mm"),
	fact("bolts need", "how far its bolts must stand out of the finished face", length(over), func(c *Carrier) *Value[unit.Length] { return &c.BoltNeed }).like("80 mm"),
	fact("pipe", "the length of its outlet pipe before its front", length(over), func(c *Carrier) *Value[unit.Length] { return &c.Pipe }).like("200 mm"),
	fact("pipe needs", "how far its outlet pipe must stand out of the finished face", length(over), func(c *Carrier) *Value[unit.Length] { return &c.PipeNeed }).like("55 mm"),
	fact("bolts up", "its bolts over the finished floor", length(over), func(c *Carrier) *Value[unit.Length] { return &c.BoltsUp }).like("320 mm"),
)
