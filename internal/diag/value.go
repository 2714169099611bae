package diag

import (
	"math/big"
	"strconv"
	"strings"

	"dryfit/internal/unit"
)

// Kind is what a Value holds.
type Kind uint8

const (
	KindText Kind = iota
	KindLength
	KindExact // a length shown without rounding to a tape mark
	KindFine  // a length shown finer than a tape: to 1/64 in or 0.1 mm
	KindCount
	KindAngle
	KindArea
	KindRatio // shown as a percentage
	KindTemperature
	KindMinutes // a length of time
)

// Value is one typed value of a finding. It is comparable.
type Value struct {
	Kind Kind   `json:"kind"`
	Text string `json:"text,omitempty"`
	Num  int64  `json:"num,omitempty"`
}

func T(s string) Value                        { return Value{Kind: KindText, Text: s} }
func L(l unit.Length) Value                   { return Value{Kind: KindLength, Num: int64(l)} }
func X(l unit.Length) Value                   { return Value{Kind: KindExact, Num: int64(l)} }
func F(l unit.Length) Value                   { return Value{Kind: KindFine, Num: int64(l)} }
func N[I ~int | ~int64](n I) Value            { return Value{Kind: KindCount, Num: int64(n)} }
func Angle(a unit.Angle) Value                { return Value{Kind: KindAngle, Num: int64(a)} }
func Area(a unit.Area) Value                  { return Value{Kind: KindArea, Num: int64(a)} }
func Percent(r unit.Ratio) Value              { return Value{Kind: KindRatio, Num: int64(r)} }
func Temp(t unit.Temperature) Value           { return Value{Kind: KindTemperature, Num: int64(t)} }
func Time(m unit.Minutes) Value               { return Value{Kind: KindMinutes, Num: int64(m)} }
func (f Finding) Say(s unit.Style) string     { return fill(f.Text, f.Values, s) }
func (f Finding) SayMend(s unit.Style) string { return fill(f.Mend, f.Values, s) }
func (a Assumption) Say(s unit.Style) string  { return fill(a.Text, a.Values, s) }

// Say words one value for a reader.
func (v Value) Say(s unit.Style) string {
	switch v.Kind {
	case KindLength:
		return s.Format(unit.Length(v.Num))
	case KindExact:
		return s.Exact(unit.Length(v.Num))
	case KindFine:
		return s.Fine().Format(unit.Length(v.Num))
	case KindCount:
		return strconv.FormatInt(v.Num, 10)
	case KindAngle:
		return decimal(v.Num, int64(unit.Degree), 2) + "°"
	case KindArea:
		return sayArea(unit.Area(v.Num), s.System)
	case KindRatio:
		return strings.TrimSuffix(strings.TrimRight(decimal(v.Num, int64(unit.One)/100, 4), "0"), ".") + " %"
	case KindTemperature:
		return s.Temperature(unit.Temperature(v.Num))
	case KindMinutes:
		return unit.Minutes(v.Num).String()
	}
	return v.Text
}

func sayArea(a unit.Area, s unit.System) string {
	if s == unit.Millimetres {
		return decimal(int64(a), int64(unit.Metre.Times(unit.Metre)), 2) + " m²"
	}
	return decimal(int64(a), int64(unit.SquareFoot), 1) + " sq ft"
}

// decimal words n/one with a fixed number of places, rounded half up as everything else is.
func decimal(n, one int64, places int) string {
	r := big.NewRat(n, one)
	scale := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(places)), nil)
	r.Mul(r, new(big.Rat).SetInt(scale)).Add(r, big.NewRat(1, 2))
	rounded := new(big.Int).Div(r.Num(), r.Denom())
	return new(big.Rat).SetFrac(rounded, scale).FloatString(places)
}

// fill puts the values into a template in one pass: a user's own text that holds "{1}" stays as it is. A number
// without a value stays too, so that a test can find it.
func fill(template string, values []Value, s unit.Style) string {
	var b strings.Builder
	for {
		before, rest, open := strings.Cut(template, "{")
		b.WriteString(before)
		if !open {
			return b.String()
		}
		number, after, closed := strings.Cut(rest, "}")
		i, err := strconv.Atoi(number)
		if !closed || err != nil || i < 0 || i >= len(values) {
			b.WriteString("{")
			template = rest
			continue
		}
		b.WriteString(values[i].Say(s))
		template = after
	}
}
