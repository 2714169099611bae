package unit

import (
	"fmt"
	"math"
	"math/big"
	"strings"
)

// Dimension is what an amount is an amount of.
type Dimension uint8

const (
	ByCount Dimension = iota
	ByMass
	ByVolume
	ByArea
	ByLength
)

func (d Dimension) String() string {
	return [...]string{"pieces", "weight", "volume", "area", "length"}[d]
}

// Quantity is an amount of some dimension, in that dimension's own counts: pieces, Mass, Volume, Area or Length.
type Quantity struct {
	Of Dimension `json:"of"`
	N  int64     `json:"n"`
}

func Count(n int) Quantity        { return Quantity{ByCount, int64(n)} }
func Weighs(m Mass) Quantity      { return Quantity{ByMass, int64(m)} }
func Fills(v Volume) Quantity     { return Quantity{ByVolume, int64(v)} }
func Spreads(a Area) Quantity     { return Quantity{ByArea, int64(a)} }
func Stretches(l Length) Quantity { return Quantity{ByLength, int64(l)} }

// Share returns the amount times num over den, rounded up to the next count: an amount that is bought must suffice.
func (q Quantity) Share(num, den int64) Quantity {
	return Quantity{q.Of, ceiling(q.N, num, den)}
}

// QuantityExamples is shown beside an unreadable amount.
const QuantityExamples = "50 lb, 10.1 fl oz, 1 gal, 95 sq ft, 3 x 5 ft, 30 ft, 25 kg, 300 mL, 20 m2, 100 pieces"

// measures lists the words for units of amounts, in their dimension's counts. Volumes are cubic millimetres: a US gallon is
// 231 cubic inches and a fluid ounce a 128th of that (16 CFR 500.19; exact, from the inch).
var measures = []struct {
	words []string
	of    Dimension
	one   *big.Rat
}{
	{[]string{"pounds", "pound", "lbs", "lb"}, ByMass, whole(int64(Pound))},
	{[]string{"ounces", "ounce", "oz"}, ByMass, whole(int64(Ounce))},
	{[]string{"kilograms", "kilogram", "kg"}, ByMass, whole(int64(Kilogram))},
	{[]string{"grams", "gram", "g"}, ByMass, whole(int64(Gram))},
	{[]string{"gallons", "gallon", "gal"}, ByVolume, cubicInches(231, 1)},
	{[]string{"quarts", "quart", "qt"}, ByVolume, cubicInches(231, 4)},
	{[]string{"pints", "pint", "pt"}, ByVolume, cubicInches(231, 8)},
	{[]string{"fl oz", "fl. oz."}, ByVolume, cubicInches(231, 128)},
	{[]string{"cu ft", "ft3", "ft³"}, ByVolume, cubicInches(1728, 1)},
	{[]string{"cu in", "in3", "in³"}, ByVolume, cubicInches(1, 1)},
	{[]string{"liters", "liter", "litres", "litre", "l"}, ByVolume, whole(int64(Liter))},
	{[]string{"ml"}, ByVolume, whole(int64(Liter / 1000))},
	{[]string{"m3", "m³"}, ByVolume, whole(1000 * int64(Liter))},
	{[]string{"sq ft", "sqft", "square feet", "ft2", "ft²"}, ByArea, whole(int64(SquareFoot))},
	{[]string{"sq in", "in2", "in²"}, ByArea, whole(int64(SquareInch))},
	{[]string{"sq m", "square metres", "square meters", "m2", "m²"}, ByArea, whole(int64(Metre.Times(Metre)))},
	{[]string{"yards", "yard", "yd"}, ByLength, whole(int64(Yard))},
	{[]string{"pieces", "piece", "pcs", "pc", "count", "each"}, ByCount, whole(1)},
}

func whole(n int64) *big.Rat { return big.NewRat(n, 1) }

// cubicInches gives a volume in cubic millimetres exactly.
func cubicInches(num, den int64) *big.Rat {
	return new(big.Rat).Mul(big.NewRat(num, den), big.NewRat(16_387_064, 1000))
}

// ParseQuantity reads an amount at the start of a text and gives what is written behind it: "50 lb bag" is 50 lb and
// "bag". Two lengths with an x between are an area. The amount is over 0; it is rounded half up to its dimension's count.
func ParseQuantity(text string, bare System) (q Quantity, rest string, err error) {
	s := &scanner{text: text, rest: normalise(text)}
	n, err := s.number()
	if err != nil {
		return q, "", &QuantityError{text, "it must start with a number"}
	}
	s.space()
	if side, ok := strings.CutPrefix(s.rest, "x"); ok {
		return s.sheet(n, side, bare)
	}
	if m, rest, ok := measureAt(s.rest); ok {
		q, err = s.amount(n.Mul(n, m.one), m.of)
		return q, rest, err
	}
	size, rest, err := s.lengthUnit(bare)
	if err != nil {
		return q, "", err
	}
	q, err = s.amount(n.Mul(n, size), ByLength)
	return q, rest, err
}

// QuantityError says why a text is no amount.
type QuantityError struct{ Text, Why string }

func (e *QuantityError) Error() string { return fmt.Sprintf("%q is no amount: %s", e.Text, e.Why) }

func measureAt(s string) (m struct {
	of  Dimension
	one *big.Rat
}, rest string, ok bool) {
	for _, unit := range measures {
		for _, w := range unit.words {
			if strings.HasPrefix(s, w) && ended(s[len(w):]) {
				m.of, m.one = unit.of, unit.one
				return m, strings.TrimSpace(s[len(w):]), true
			}
		}
	}
	return m, "", false
}

// ended reports whether a unit word stands at the end or before a space or a slash.
func ended(rest string) bool { return rest == "" || strings.ContainsRune(" /,.", rune(rest[0])) }

// lengthUnit takes a unit of length and gives its counts.
func (s *scanner) lengthUnit(bare System) (*big.Rat, string, error) {
	for _, u := range unitWords {
		if strings.HasPrefix(s.rest, u.word) && ended(s.rest[len(u.word):]) {
			return counts(u.mm), strings.TrimSpace(s.rest[len(u.word):]), nil
		}
	}
	if bareNumber := s.rest == ""; bareNumber {
		return nil, "", &QuantityError{s.text, "its unit is missing"}
	}
	return nil, "", &QuantityError{s.text, "unknown unit " + quote(s.rest)}
}

func counts(mm *big.Rat) *big.Rat { return new(big.Rat).Mul(mm, whole(int64(Millimetre))) }

// sheet reads the second side of an area; a unit behind it counts for both, none is the system's own.
func (s *scanner) sheet(first *big.Rat, side string, bare System) (Quantity, string, error) {
	second, size, rest, err := s.secondSide(side, bare)
	if err != nil {
		return Quantity{}, "", err
	}
	area := first.Mul(first, second)
	q, err := s.amount(area.Mul(area, size).Mul(area, size), ByArea)
	return q, rest, err
}

func (s *scanner) secondSide(side string, bare System) (second, size *big.Rat, rest string, err error) {
	t := &scanner{text: s.text, rest: strings.TrimLeft(side, " \t")}
	if second, err = t.number(); err != nil {
		return nil, nil, "", &QuantityError{s.text, "the second side is missing"}
	}
	t.space()
	if size, rest, err = t.lengthUnit(bare); err != nil {
		size, rest = counts(oneMM), t.rest
		if bare == Inches {
			size = counts(inchMM)
		}
	}
	return second, size, rest, nil
}

// Sides are the two sides of an amount that is written as a sheet: "3 x 5 ft sheet"; zero of any other text.
func Sides(text string, bare System) (sides [2]Length) {
	s := &scanner{text: text, rest: normalise(text)}
	first, err := s.number()
	s.space()
	side, sheet := strings.CutPrefix(s.rest, "x")
	if err != nil || !sheet {
		return sides
	}
	second, size, _, err := s.secondSide(side, bare)
	if err != nil {
		return sides
	}
	for i, n := range []*big.Rat{first, second} {
		q, err := s.amount(n.Mul(n, size), ByLength)
		if err != nil {
			return [2]Length{}
		}
		sides[i] = Length(q.N)
	}
	return sides
}

// amount rounds to counts.
func (s *scanner) amount(n *big.Rat, of Dimension) (Quantity, error) {
	if of == ByCount && !n.IsInt() {
		return Quantity{}, &QuantityError{s.text, "pieces are whole"}
	}
	n.Add(n, big.NewRat(1, 2))
	v := new(big.Int).Div(n.Num(), n.Denom())
	switch {
	case !v.IsInt64() || v.Int64() > mostCounts:
		return Quantity{}, &QuantityError{s.text, "too much"}
	case v.Sign() <= 0:
		return Quantity{}, &QuantityError{s.text, "nothing at all"}
	}
	return Quantity{of, v.Int64()}, nil
}

// mostCounts bounds what a pack or a label can say, with room to add up a thousand of them.
const mostCounts = math.MaxInt64 / 1024
