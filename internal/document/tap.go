package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Tap is one basin tap as its data sheet says, and where it is wanted.
type Tap struct {
	Name      string
	At        diag.Place
	Serves    Name // the basin
	Mounted   TapMount
	MountedAt diag.Place
	In, On    Name // the wall of a wall tap; the top, or the basin itself, of a deck tap
	Across    Across
	Off       Value[unit.Length] // deck: from the finished wall to the center of its hole
	Up        Up                 // wall: the middle of its spout at the wall
	Reach     Value[unit.Length]
	Outlet    Outlet
	FixesTo   Value[TapFix]
	Body      TapBody
	Hole      Value[unit.Length] // diameter of its hole
	Plate     Value[unit.Length] // diameter of its cover plate, or of its foot
	Grips     Value[Span]        // deck: the thickness that it clamps
	Hoses     Value[unit.Length] // deck: its own hoses, from the underside of the deck
	Handle    Handle
}

// TapMount is where a tap stands.
type TapMount uint8

const (
	Deck TapMount = iota
	FromWall
)

// TapFix is what the spout of a wall tap fixes to: its reach counts from there.
type TapFix uint8

const (
	ToFace TapFix = iota // the finished wall
	ToBody               // the plate of the body in the wall
)

// Outlet is where and how the water leaves.
type Outlet struct {
	At      diag.Place
	Given   bool
	Height  Value[unit.Length] // deck: over the deck
	Drop    Value[unit.Length] // wall: under the middle of the spout at the wall
	Angle   Value[unit.Angle]  // off plumb, away from the wall
	Bore    Value[Span]        // of the stream
	Flow    Value[FlowRange]
	Opening Value[unit.Length] // effective opening, for the air gap
}

// TapBody is the part of a wall tap that is in the wall before any tile is.
type TapBody struct {
	At     diag.Place
	Given  bool
	Depth  Value[Span]        // label: from the plate to the finished face
	Behind Value[unit.Length] // how far the plate stands behind the face of the studs; − before it
}

// Handle is what the hand moves.
type Handle struct {
	At     diag.Place
	Given  bool
	Right  Value[unit.Length] // its center to the right of the tap's
	Over   Value[unit.Length] // its center over the tap's
	Off    Value[unit.Length] // its center off the wall (wall tap) or before the tap's hole (deck tap)
	Swings Value[unit.Length] // how far it reaches from its center, whichever way it is turned
}

var tapMount = choice("deck or wall", word[TapMount]{"deck", Deck}, word[TapMount]{"wall", FromWall})

var tap = record("a basin tap", func(t *Tap, at diag.Place) { t.At = at },
	part("serves", "the basin that it fills", called("basin"), func(t *Tap) *Name { return &t.Serves }).must().like("bowl"),
	key[Tap]{row{name: "mounted", what: "where it stands: on a deck, or out of a wall", need: true, example: "wall", shape: tapMount.shape}, func(r *reader, t *Tap, n *text.Node) {
		t.Mounted, _ = tapMount.read(r, n)
		t.MountedAt = n.At
	}},
	part("in", "the wall that it comes out of", called("wall"), func(t *Tap) *Name { return &t.In }).like("basin wall"),
	part("on", "the top that it stands on, or the basin", called("top", "basin"), func(t *Tap) *Name { return &t.On }).like("vanity top"),
	part("across", "where along the wall its center is", across, func(t *Tap) *Across { return &t.Across }).like("on basin line"),
	fact("off", "of a deck tap: from the finished wall to the center of its hole", length(over), func(t *Tap) *Value[unit.Length] { return &t.Off }).like("3"),
	part("up", "of a wall tap: how high the middle of its spout leaves the wall", up, func(t *Tap) *Up { return &t.Up }).like("center 44 above floor"),
	fact("reach", "to the middle of the outlet: from the center of its hole, from the finished wall, or from the plate of its body", length(over), func(t *Tap) *Value[unit.Length] { return &t.Reach }).like("7-1/2"),
	part("outlet", "where and how the water leaves", outlet, func(t *Tap) *Outlet { return &t.Outlet }).like("{drop: 1/2, angle: 10}"),
	fact("fixes to", "what the spout of a wall tap fixes to: the finished face, so that its reach stays, or its body, so that its reach loses what the build-up takes", choice("face or body", word[TapFix]{"face", ToFace}, word[TapFix]{"body", ToBody}), func(t *Tap) *Value[TapFix] { return &t.FixesTo }).like("face"),
	part("body", "the part of a wall tap that is in the wall", tapBody, func(t *Tap) *TapBody { return &t.Body }).like("{depth: 55 to 80 mm, behind: 1-1/8}"),
	fact("hole", "the diameter of its hole in the deck or the tile", length(bore), func(t *Tap) *Value[unit.Length] { return &t.Hole }).like("1-3/8"),
	fact("plate", "the diameter of its cover plate, or of its foot on a deck", length(bore), func(t *Tap) *Value[unit.Length] { return &t.Plate }).like("2-1/4"),
	fact("grips", "the thickness of deck that a deck tap clamps", lengthsForm, func(t *Tap) *Value[Span] { return &t.Grips }).like("0 to 1-3/4"),
	fact("hoses", "of a deck tap: the length of its own hoses, from the underside of the deck", length(over), func(t *Tap) *Value[unit.Length] { return &t.Hoses }).like("16"),
	part("handle", "what the hand moves", handle, func(t *Tap) *Handle { return &t.Handle }).like("{right: 4, swings: 3-1/2}"),
)

var outlet = record("where and how the water leaves", func(o *Outlet, at diag.Place) { o.At, o.Given = at, true },
	fact("height", "of a deck tap: the outlet over the deck", length(over), func(o *Outlet) *Value[unit.Length] { return &o.Height }).like("6"),
	fact("drop", "of a wall tap: the outlet under the middle of the spout at the wall; − over it", length(eachWay), func(o *Outlet) *Value[unit.Length] { return &o.Drop }).like("1/2"),
	fact("angle", "how far off plumb the stream leaves, away from the wall", tilt, func(o *Outlet) *Value[unit.Angle] { return &o.Angle }).like("10"),
	fact("bore", "the diameter of the stream at the outlet, or the range that it is likely in", lengthsForm, func(o *Outlet) *Value[Span] { return &o.Bore }).unless("8 to 15 mm, common practice").like("8 to 15 mm"),
	fact("flow", "what flows, or the range that it is likely in", flows, func(o *Outlet) *Value[FlowRange] { return &o.Flow }).unless("0.8 to 1.5 gpm").like("0.8 to 1.5 gpm"),
	fact("opening", "the effective opening that the air gap is reckoned from", length(over), func(o *Outlet) *Value[unit.Length] { return &o.Opening }).like("1/2"),
)

var tapBody = record("the part of a wall tap that is in the wall", func(b *TapBody, at diag.Place) { b.At, b.Given = at, true },
	fact("depth", "what its label allows from its plate to the finished face", lengthsForm, func(b *TapBody) *Value[Span] { return &b.Depth }).like("55 to 80 mm"),
	fact("behind", "how far its plate stands behind the face of the studs; − before it", length(eachWay), func(b *TapBody) *Value[unit.Length] { return &b.Behind }).like("1-1/8"),
)

var handle = record("the handle of a tap", func(h *Handle, at diag.Place) { h.At, h.Given = at, true },
	fact("right", "how far its center is to the right of the tap's center; − to the left", length(eachWay), func(h *Handle) *Value[unit.Length] { return &h.Right }).like("4"),
	fact("over", "how far its center is over the tap's center", length(eachWay), func(h *Handle) *Value[unit.Length] { return &h.Over }).like("0"),
	fact("off", "how far its center is off the wall, or before the hole of a deck tap", length(eachWay), func(h *Handle) *Value[unit.Length] { return &h.Off }).like("2"),
	fact("swings", "how far it reaches from its center, whichever way it is turned", length(over), func(h *Handle) *Value[unit.Length] { return &h.Swings }).like("3-1/2"),
)
