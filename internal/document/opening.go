package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Line is a center line that other things are located from: `basin line: {in: basin wall, across: 36 from A}`.
type Line struct {
	Name   string
	In     Name
	Across Across
	At     diag.Place
}

// Opening is a window, door, niche or any hole in a face.
type Opening struct {
	Name     string
	At       diag.Place
	In       Name
	Kind     OpeningKind
	Across   Across
	Up       Up
	Width    Value[unit.Length]
	Height   Value[unit.Length]
	Depth    Value[unit.Length]
	BuildUp  []Layer // of its reveals
	Edge     Value[EdgeRule]
	Trim     Value[unit.Length]
	Joint    Value[unit.Length] // between tile and frame where the reveal is not tiled
	SillFall Value[unit.Ratio]
	Moves    Value[unit.Length] // `may move: 2`: how far it may still be moved each way
	Leaf     Leaf               // of a door
	Tiled    bool               // its reveals appear in `lay`
}

// OpeningKind is what the opening is.
type OpeningKind uint8

const (
	Window OpeningKind = iota
	Door
	Niche
	Plain
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
	part("leaf", "of a door: its leaf", leaf, func(o *Opening) *Leaf { return &o.Leaf }).like("{hinge: left, opens: in}"),
)
