package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Stock is one good of wood or board as it is sold: `birch 3/4: {kind: sheet, size: 96 x 48 x 3/4, measured: 45/64}`.
type Stock struct {
	Name                 string
	At                   diag.Place
	Kind                 StockKind
	Length, Width, Thick Value[unit.Length] // as it is sold; length runs with the grain
	Measured             Value[unit.Length] // the thickness by a caliper; silent: the thickness as it is sold, told as assumed
	Species              Value[string]
	Rings                Value[Rings]
	Sale                 Sale
	Supply               Supply
}

// StockKind is the shape of a good.
type StockKind uint8

const (
	SheetStock StockKind = iota
	BoardStock           // solid wood of which wide parts are made
	StickStock           // trim, rails, molding: cut to length only
)

// Rings is how the growth rings lie in the face of a board.
type Rings uint8

const (
	FlatSawn Rings = iota
	QuarterSawn
	Between // bastard-sawn, or not looked at: the greater of the two movements is taken
)

// Thickness is what a groove for it is cut to: as measured, or else as it is sold.
func (s Stock) Thickness() (thick unit.Length, measured, known bool) {
	if s.Measured.Known {
		return s.Measured.V, true, true
	}
	return s.Thick.V, false, s.Thick.Known
}

var ringWords = choice("flat, quarter or between", word[Rings]{"flat", FlatSawn}, word[Rings]{"quarter", QuarterSawn}, word[Rings]{"between", Between})

var stock = record("wood or board as it is sold", func(s *Stock, at diag.Place) { s.At = at }, append([]key[Stock]{
	sure("kind", "a sheet, a board that parts are sawn from, or a stick that is only cut to length", choice("sheet, board or stick", word[StockKind]{"sheet", SheetStock}, word[StockKind]{"board", BoardStock}, word[StockKind]{"stick", StickStock}), func(s *Stock) *StockKind { return &s.Kind }).must().like("sheet"),
	key[Stock]{row{name: "size", what: "length, along the grain, x width x thickness", need: true, unknown: true, example: "96 x 48 x 3/4", shape: stockSize.shape}, readStockSize},
	fact("measured", "its thickness by a caliper, to which grooves are cut", length(thin), func(s *Stock) *Value[unit.Length] { return &s.Measured }).unless("the thickness as it is sold").like("45/64"),
	fact("species", "the wood", words, func(s *Stock) *Value[string] { return &s.Species }).like("white oak"),
	fact("rings", "how the growth rings lie in the face: flat-sawn, quarter-sawn or between", ringWords, func(s *Stock) *Value[Rings] { return &s.Rings }).unless("between: the greater movement is taken").like("flat"),
	fact("from", "who sells it", calledText("supplier"), func(s *Stock) *Value[string] { return &s.Supply.From }).like("lumber yard"),
	fact("lead time", "from the order to the delivery", duration, func(s *Stock) *Value[unit.Minutes] { return &s.Supply.LeadTime }).unless("as the supplier says").like("10 days"),
	fact("ordered on", "when it was ordered", date, func(s *Stock) *Value[string] { return &s.Supply.OrderedOn }).unless("not ordered yet").like("2026-03-02"),
}, saleKeys...)...)

var stockSize = form[size]{&shape{say: "a size: length x width x thickness", pattern: `^[^xX×]+[xX×][^xX×]+[xX×][^xX×]+$`}, func(r *reader, n *text.Node) (size, bool) {
	parts, ok := r.times(n, 3, 3)
	if !ok {
		return size{}, false
	}
	return size{r.side(n, parts[0], over), r.side(n, parts[1], over), r.side(n, parts[2], thin)}, true
}}

func readStockSize(r *reader, s *Stock, n *text.Node) {
	if isUnknown(n) {
		s.Length = Value[unit.Length]{Unknown: true, At: n.At}
		s.Width, s.Thick = s.Length, s.Length
		return
	}
	v, _ := stockSize.read(r, n)
	s.Length, s.Width, s.Thick = v.a, v.b, v.c
}
