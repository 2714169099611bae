package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/money"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Sale is in which sizes a stock is sold, for how much, and what of it is on hand.
type Sale struct {
	Plain  Value[bool]         // `grain: none`: parts may be turned whatever they ask for
	Trim   Value[unit.Length]  // what is cut off at each edge, or each end of a stick, before parts are
	Price  Value[money.Amount] // of the size that the stock names
	Others []SaleSize
	OnHand []OnHand
	Sold   Value[bool] // silent: yes
	Covers []Name      // faces whose board layer it is
}

// SaleSize is one more size that is sold. Width is 0 where it is that of the stock.
type SaleSize struct {
	At            diag.Place
	Length, Width unit.Length
	Price         Value[money.Amount]
}

// OnHand is a piece that is there already: an offcut, a whole sheet, a board. Width is 0 where it is that of the stock.
type OnHand struct {
	Name          string
	At            diag.Place
	Length, Width Value[unit.Length]
	Count         Value[int]
	Bad           []Stretch // along the length, over the whole width
}

// Stretch is from one place along a length to another.
type Stretch struct{ From, To unit.Length }

// Covered reports whether the sheets of a stock are laid out on a face.
func (m *Room) Covered(face string) bool {
	for _, s := range m.Stock {
		for _, c := range s.Sale.Covers {
			if c.Text == face {
				return true
			}
		}
	}
	return false
}

// saleKeys are the keys of a stock that tell about buying it and what is there.
var saleKeys = []key[Stock]{
	fact("grain", "whether it has a grain that parts must follow; parts of what has none may be turned", choice("along or none", word[bool]{"along", false}, word[bool]{"none", true}), func(s *Stock) *Value[bool] { return &s.Sale.Plain }).unless("along the length").like("along"),
	fact("edge trim", "what is cut off each edge, or each end of a stick, before parts are cut; the trimming cut is in it", length(fine), func(s *Stock) *Value[unit.Length] { return &s.Sale.Trim }).unless("nothing").like("1/4"),
	fact("price", "what one of that size costs", price, func(s *Stock) *Value[money.Amount] { return &s.Sale.Price }).unless("the fewest square feet, or feet of stick, are bought").like("72.00"),
	part("other sizes", "more sizes that it is sold in, each with its price: length x width, or the length alone", saleSizes, func(s *Stock) *[]SaleSize { return &s.Sale.Others }).like("{48 x 48: 41.00, 48 x 24: unknown}"),
	part("on hand", "pieces that are there already, by name; they are used first", named("piece on hand", pieceOnHand, func(p *OnHand, e text.Entry) { p.Name, p.At = e.Key, e.At }), func(s *Stock) *[]OnHand { return &s.Sale.OnHand }).unless("nothing is on hand").like("{half sheet: 48 x 48, strips: {size: 96 x 8, count: 2}}"),
	fact("sold", "whether more can be bought; if not, what is on hand is all there is", yesNo, func(s *Stock) *Value[bool] { return &s.Sale.Sold }).unless("yes").like("yes"),
	part("covers", "the faces whose board it is; its sheets are then laid out on them", list(called("face")), func(s *Stock) *[]Name { return &s.Sale.Covers }).like("[basin wall, end wall]"),
}

const saleSizeSay = "a size: length x width, or the length alone"

// flatSize reads `48 x 24` or `8 ft`.
func (r *reader) flatSize(at diag.Place, typed string) (length, width Value[unit.Length]) {
	n := &text.Node{Kind: text.Scalar, Text: typed, At: at}
	if isUnknown(n) {
		return Value[unit.Length]{Unknown: true, At: at}, Value[unit.Length]{Unknown: true, At: at}
	}
	if !strings.ContainsAny(typed, "xX×") {
		return r.side(n, typed, over), Value[unit.Length]{At: at}
	}
	parts, ok := r.times(n, 2, 2)
	if !ok {
		return length, width
	}
	return r.side(n, parts[0], over), r.side(n, parts[1], over)
}

// saleSizes reads sizes with their prices.
var saleSizes = form[[]SaleSize]{&shape{kind: namedShape, say: "sizes, each with its price", names: "size: 48 x 24", item: price.shape}, func(r *reader, n *text.Node) ([]SaleSize, bool) {
	if !r.want(n, text.Map, "sizes with their prices") {
		return nil, false
	}
	var all []SaleSize
	for _, e := range n.Entries {
		l, w := r.flatSize(e.At, e.Key)
		if !l.Known {
			if l.Unknown {
				r.misread(&text.Node{Kind: text.Scalar, Text: e.Key, At: e.At}, &shape{say: saleSizeSay}, "a size that is not known can not be cut from")
			}
			continue
		}
		s := SaleSize{At: e.At, Length: l.V, Width: w.V}
		if e.Value.Kind == text.Empty {
			s.Price = Value[money.Amount]{Unknown: true, At: e.At}
		} else {
			s.Price = valueOf(r, price, e.Value)
		}
		all = append(all, s)
	}
	r.alike(n.Entries, "size")
	return all, true
}}

// bareOnHand reads a piece by its size alone.
var bareOnHand = form[OnHand]{&shape{say: saleSizeSay, pattern: `^[^xX×]+([xX×][^xX×]+)?$`}, func(r *reader, n *text.Node) (OnHand, bool) {
	p := OnHand{At: n.At}
	if !r.want(n, text.Scalar, saleSizeSay) {
		return p, false
	}
	p.Length, p.Width = r.flatSize(n.At, n.Text)
	return p, p.Length.Known || p.Length.Unknown
}}

var pieceOnHand = either(bareOnHand, record("a piece that is there already", func(p *OnHand, at diag.Place) { p.At = at },
	key[OnHand]{row{name: "size", what: "length, along the grain, x width; of a stick the length alone", need: true, unknown: true, example: "48 x 23-1/2", shape: bareOnHand.shape}, func(r *reader, p *OnHand, n *text.Node) {
		s, _ := bareOnHand.read(r, n)
		p.Length, p.Width = s.Length, s.Width
	}},
	fact("count", "how many alike there are", count("a whole number from 1", 1, 1000), func(p *OnHand) *Value[int] { return &p.Count }).unless("1").like("2"),
	part("bad", "stretches along the length that can not be used: knots, splits", list(stretch), func(p *OnHand) *[]Stretch { return &p.Bad }).unless("none").like("[40 to 44]"),
))

// stretch reads `40 to 44`.
var stretch = form[Stretch]{&shape{say: "from one length to another: 40 to 44", pattern: `^.+ to .+$`}, func(r *reader, n *text.Node) (Stretch, bool) {
	const say = "from one length to another: 40 to 44"
	if !r.want(n, text.Scalar, say) {
		return Stretch{}, false
	}
	from, to, ok := strings.Cut(n.Text, " to ")
	if !ok {
		r.misread(n, &shape{say: say}, "there is no \"to\" in it")
		return Stretch{}, false
	}
	a, ok1 := r.length(n, from, within)
	b, ok2 := r.length(n, to, within)
	if ok1 && ok2 && a >= b {
		r.misread(n, &shape{say: say}, "it ends before it begins")
		return Stretch{}, false
	}
	return Stretch{a, b}, ok1 && ok2
}}
