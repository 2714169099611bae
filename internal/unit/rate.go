package unit

import (
	"math"
	"math/big"
)

// Rate is one amount for another: 200 sq ft per gal, 1.6 kg per L.
type Rate struct {
	Amount Quantity `json:"amount"`
	Per    Quantity `json:"per"`
}

// For turns an amount of one side into what goes with it of the other, rounded up to the next count; false where the
// rate is of other dimensions, or of nothing.
func (r Rate) For(q Quantity) (Quantity, bool) {
	switch {
	case r.Amount.N <= 0 || r.Per.N <= 0:
		return Quantity{}, false
	case q.Of == r.Per.Of:
		return Quantity{r.Amount.Of, ceiling(q.N, r.Amount.N, r.Per.N)}, true
	case q.Of == r.Amount.Of:
		return Quantity{r.Per.Of, ceiling(q.N, r.Per.N, r.Amount.N)}, true
	}
	return Quantity{}, false
}

// ceiling is n*num/den rounded up; den is over 0.
func ceiling(n, num, den int64) int64 {
	v := new(big.Int).Mul(big.NewInt(n), big.NewInt(num))
	v.Neg(v).Div(v, big.NewInt(den)).Neg(v)
	if !v.IsInt64() {
		return math.MaxInt64
	}
	return v.Int64()
}

// Rate words a rate for one of the reader's own units: "200 sq ft per gal", "13.4 lb per gal", "1.6 kg per L".
func (s Style) Rate(r Rate) string {
	one, word := s.one(r.Per.Of)
	amount, ok := r.For(one)
	if !ok {
		return s.Say(r.Amount) + " per " + s.Say(r.Per)
	}
	return s.Say(amount) + " per " + word
}

// one is the unit that rates of a dimension are told for.
func (s Style) one(of Dimension) (Quantity, string) {
	metric := s.System == Millimetres
	switch of {
	case ByMass:
		if metric {
			return Weighs(Kilogram), "kg"
		}
		return Weighs(Pound), "lb"
	case ByVolume:
		if metric {
			return Fills(Liter), "L"
		}
		return Quantity{ByVolume, gallon + 1}, "gal"
	case ByArea:
		if metric {
			return Spreads(Metre.Times(Metre)), "m²"
		}
		return Spreads(SquareFoot), "sq ft"
	case ByLength:
		if metric {
			return Stretches(Metre), "m"
		}
		return Stretches(Foot), "ft"
	}
	return Count(1), "piece"
}
