package unit

import (
	"math/big"
	"strings"
)

// nearby words what can be written for a length that is finer than the grid: nothing is rounded here that a person has not chosen to round.
func nearby(text string, counts *big.Rat, bare System) string {
	if counts.Sign() < 0 {
		return nearby(text, new(big.Rat).Neg(counts), bare)
	}
	l := rounded(counts)
	if metric(text, bare) {
		return decimalOf(max(l.Round(Micrometre), Micrometre), Millimetre) + " mm"
	}
	decimal, mark := decimalInches(max(l.Round(Inch/100), Inch/100))+" in", inchesOf(tapeMark(l))+" in"
	if decimal == mark {
		return mark
	}
	return decimal + " or " + mark
}

// metric reports whether a length was typed in metric units. Every metric unit has an m, and no other has.
func metric(text string, bare System) bool {
	typed := normalise(text)
	return strings.Contains(typed, "m") || bare == Millimetres && !strings.ContainsAny(typed, `if'"`)
}

func rounded(counts *big.Rat) Length {
	twice := new(big.Rat).Add(new(big.Rat).Mul(counts, big.NewRat(2, 1)), oneMM)
	return Length(new(big.Int).Div(twice.Num(), new(big.Int).Mul(twice.Denom(), big.NewInt(2))).Int64())
}

// tapeMark is the coarsest mark of an inch tape within a 256th of an inch, which is as near as 128ths come.
func tapeMark(l Length) Length {
	const near = Inch/256 + 1
	for part := Length(1); part < 128; part *= 2 {
		if m := l.Round(Inch / part); m > 0 && (m-l).Abs() <= near {
			return m
		}
	}
	return max(l.Round(Inch/128), Inch/128)
}
