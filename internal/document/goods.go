package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Tile is one tile good.
type Tile struct {
	Name                 string
	At                   diag.Place
	Length, Width, Thick Value[unit.Length] // `size: 24 x 12 x 3/8`; length is the longer side as the tile is sold
	Kind                 TileKind
	KindAt               diag.Place
	Joint                Value[unit.Length]
	Edges                Value[TileEdge]
	Turns                Value[Turns] // `turns: any`, `half`, `none`
	PerBox               Value[int]
	Lot                  Value[string] // lot or shade as the boxes say; several with commas between
	Caliber              Value[string]
	Warpage              Value[unit.Length]
	Variation            Value[unit.Length]
	Breakage             Value[int]
	Spares               Value[int]
	DryLay               DryLay
	Chip                 Value[unit.Length] // of a mosaic sheet, chips are square
	ChipJoint            Value[unit.Length]
	Shape                TileShape
	Set                  []SetSize // sizes of a modular set; empty for a plain tile
	Polished             Value[bool]
	LeastStrip           Value[unit.Length]
	Price                Value[TilePrice]
	Supply               Supply
	BoxWeighs            Value[unit.Quantity]
	Porosity             Value[Porosity]
	Ribbed               Value[bool] // its back
	Light                Value[bool] // what is behind it shows, or stains it
}

// Porosity is how much sealer a face drinks.
type Porosity uint8

const (
	Open Porosity = iota // brick, very porous stone
	Medium
	Dense
)

// TileShape is the outline of one tile.
type TileShape uint8

const (
	Rectangle TileShape = iota
	Hexagon             // `size` gives the width across flats twice
)

// SetSize is one size of a modular set: `set: {large: 16 x 16, tall: 16 x 8, small: 8 x 8}`.
type SetSize struct {
	Name          string
	Length, Width unit.Length
	At            diag.Place
}

// TileKind is what the tile is made of.
type TileKind uint8

const (
	Ceramic TileKind = iota
	Porcelain
	Stone
	Glass
	Mosaic
)

// TileEdge is how the factory edge is made.
type TileEdge uint8

const (
	Calibrated TileEdge = iota
	Rectified
	Cushioned
	Glazed
)

// Turns is how a tile, or a piece of it, may be turned and still look right.
type Turns uint8

const (
	AnyTurn  Turns = iota // no direction
	HalfTurn              // a vein or a grain: upside down is fine
	NoTurn                // a direction
)

// DryLay is a dry-lay reading: `dry lay: {tiles: 10, joints: 9, joint: 3 mm, length: 3021 mm}`.
type DryLay struct {
	Given  bool
	Tiles  int
	Joints int
	Joint  unit.Length
	Length unit.Length
	Along  Value[string] // "length" (default) or "width"
	At     diag.Place
}

var tile = record("a tile as it is sold", func(t *Tile, at diag.Place) { t.At = at },
	key[Tile]{row{name: "size", what: "length x width x thickness of one tile; of a mosaic, of the sheet", need: true, unknown: true, example: "24 x 12 x 3/8", shape: sizeForm.shape}, readTileSize},
	key[Tile]{row{name: "kind", what: "what it is made of", need: true, example: "porcelain", shape: tileKind.shape}, func(r *reader, t *Tile, n *text.Node) {
		t.Kind, _ = tileKind.read(r, n)
		t.KindAt = n.At
	}},
	fact("joint", "the joint that it is set with", length(joint), func(t *Tile) *Value[unit.Length] { return &t.Joint }).like("1/8"),
	fact("edges", "how the factory edge is made", choice("calibrated, rectified, cushioned or glazed", word[TileEdge]{"calibrated", Calibrated}, word[TileEdge]{"rectified", Rectified}, word[TileEdge]{"cushioned", Cushioned}, word[TileEdge]{"glazed", Glazed}), func(t *Tile) *Value[TileEdge] { return &t.Edges }).like("rectified"),
	fact("turns", "how it may be turned and still look right: any way, upside down (half), or not at all", choice("any, half or none", word[Turns]{"any", AnyTurn}, word[Turns]{"half", HalfTurn}, word[Turns]{"none", NoTurn}), func(t *Tile) *Value[Turns] { return &t.Turns }).like("half"),
	fact("per box", "how many are in a box", count("a whole number from 1", 1, 10_000), func(t *Tile) *Value[int] { return &t.PerBox }).like("8"),
	fact("lot", "the lot or shade on the boxes; more than one with commas between", words, func(t *Tile) *Value[string] { return &t.Lot }).like("A14, A15"),
	fact("caliber", "the caliber on the boxes; more than one with commas between", words, func(t *Tile) *Value[string] { return &t.Caliber }).like("9"),
	fact("warpage", "how far the face is from flat", length(fine), func(t *Tile) *Value[unit.Length] { return &t.Warpage }).like("1/32"),
	fact("variation", "how much the sizes in a box differ", length(fine), func(t *Tile) *Value[unit.Length] { return &t.Variation }).like("1/32"),
	fact("breakage", "whole tiles to have for breakage", count("a whole number", 0, 10_000), func(t *Tile) *Value[int] { return &t.Breakage }).like("2"),
	fact("spares", "whole tiles to keep for later", count("a whole number", 0, 10_000), func(t *Tile) *Value[int] { return &t.Spares }).like("3"),
	part("dry lay", "a row laid dry and measured; it replaces the label", complete(dryLay), func(t *Tile) *DryLay { return &t.DryLay }).like("{tiles: 10, joints: 9, joint: 3 mm, length: 3021 mm}"),
	fact("chip", "the side of one chip of a mosaic sheet", length(tileSide), func(t *Tile) *Value[unit.Length] { return &t.Chip }).like("1"),
	fact("chip joint", "the joint between the chips of a sheet", length(joint), func(t *Tile) *Value[unit.Length] { return &t.ChipJoint }).like("1/8"),
	sure("shape", "the outline; the size of a hexagon is its width across flats, twice", choice("rectangle or hexagon", word[TileShape]{"rectangle", Rectangle}, word[TileShape]{"hexagon", Hexagon}), func(t *Tile) *TileShape { return &t.Shape }).unless("rectangle").like("hexagon"),
	part("set", "the sizes of a set for a modular bond, by name", named("size", setSize, func(s *SetSize, e text.Entry) { s.Name, s.At = e.Key, e.At }), func(t *Tile) *[]SetSize { return &t.Set }).like("{large: 16 x 16, tall: 16 x 8, small: 8 x 8}"),
	fact("polished", "whether the face is polished", yesNo, func(t *Tile) *Value[bool] { return &t.Polished }).like("no"),
	fact("least strip", "the narrowest strip of this tile that can be cut", length(fine), func(t *Tile) *Value[unit.Length] { return &t.LeastStrip }).unless("as tools says").like("1/2"),
	fact("price", "what it costs", tilePrice, func(t *Tile) *Value[TilePrice] { return &t.Price }).like("84.00 per box"),
	fact("from", "who sells it", calledText("supplier"), func(t *Tile) *Value[string] { return &t.Supply.From }).like("tile yard"),
	fact("lead time", "from the order to the delivery", duration, func(t *Tile) *Value[unit.Minutes] { return &t.Supply.LeadTime }).unless("as the supplier says").like("10 days"),
	fact("ordered on", "when it was ordered", date, func(t *Tile) *Value[string] { return &t.Supply.OrderedOn }).unless("not ordered yet").like("2026-03-02"),
	fact("box weighs", "what a full box weighs", heavy, func(t *Tile) *Value[unit.Quantity] { return &t.BoxWeighs }).like("48 lb"),
	fact("porosity", "how much sealer its face drinks", choice("open, medium or dense", word[Porosity]{"open", Open}, word[Porosity]{"medium", Medium}, word[Porosity]{"dense", Dense}), func(t *Tile) *Value[Porosity] { return &t.Porosity }).like("medium"),
	fact("ribbed", "whether its back has deep ribs", yesNo, func(t *Tile) *Value[bool] { return &t.Ribbed }).like("no"),
	fact("light", "whether what lies behind it shows through or stains it: light stone, glass", yesNo, func(t *Tile) *Value[bool] { return &t.Light }).like("no"),
)

// heavy reads a weight.
var heavy = form[unit.Quantity]{&shape{say: "a weight: 48 lb or 22 kg", pattern: `^[0-9].*$`}, func(r *reader, n *text.Node) (unit.Quantity, bool) {
	q, ok := quantity.read(r, n)
	if ok && q.Of != unit.ByMass {
		r.misread(n, &shape{say: "a weight: 48 lb or 22 kg"}, "no weight")
		return q, false
	}
	return q, ok
}}

var tileKind = choice("ceramic, porcelain, stone, glass or mosaic", word[TileKind]{"ceramic", Ceramic}, word[TileKind]{"porcelain", Porcelain}, word[TileKind]{"stone", Stone}, word[TileKind]{"glass", Glass}, word[TileKind]{"mosaic", Mosaic})

func readTileSize(r *reader, t *Tile, n *text.Node) {
	if isUnknown(n) {
		t.Length = Value[unit.Length]{Unknown: true, At: n.At}
		t.Width, t.Thick = t.Length, t.Length
		return
	}
	s, _ := sizeForm.read(r, n)
	t.Length, t.Width, t.Thick = s.a, s.b, s.c
}

var setSize = form[SetSize]{&shape{say: "a size: length x width", pattern: `^[^xX×]+[xX×][^xX×]+$`}, func(r *reader, n *text.Node) (SetSize, bool) {
	parts, ok := r.times(n, 2, 2)
	if !ok {
		return SetSize{}, false
	}
	a, b := r.side(n, parts[0], tileSide), r.side(n, parts[1], tileSide)
	return SetSize{Length: max(a.V, b.V), Width: min(a.V, b.V)}, a.Known && b.Known
}}

var dryLay = record("a row of tiles laid dry", func(d *DryLay, at diag.Place) { d.At, d.Given = at, true },
	part("tiles", "how many tiles", count("a whole number from 1", 1, 1000), func(d *DryLay) *int { return &d.Tiles }).must().like("10"),
	part("joints", "how many joints", count("a whole number", 0, 1000), func(d *DryLay) *int { return &d.Joints }).must().like("9"),
	part("joint", "the width of one joint in the row", length(joint), func(d *DryLay) *unit.Length { return &d.Joint }).must().like("3 mm"),
	part("length", "the length of the row", length(over), func(d *DryLay) *unit.Length { return &d.Length }).must().like("3021 mm"),
	fact("along", "which side of the tile lies along the row", choice("length or width", word[string]{"length", "length"}, word[string]{"width", "width"}), func(d *DryLay) *Value[string] { return &d.Along }).unless("length").like("width"),
)
