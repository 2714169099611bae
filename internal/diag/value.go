package diag

import (
	"fmt"
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
		return fmt.Sprintf("%.2f°", float64(v.Num)/float64(unit.Degree))
	case KindArea:
		return sayArea(unit.Area(v.Num), s.System)
	case KindRatio:
		return strconv.FormatFloat(float64(v.Num)/float64(unit.One)*100, 'f', -1, 64) + " %"
	}
	return v.Text
}

func sayArea(a unit.Area, s unit.System) string {
	if s == unit.Millimetres {
		return fmt.Sprintf("%.2f m²", a.M2())
	}
	return fmt.Sprintf("%.1f sq ft", a.SqFt())
}

func fill(template string, values []Value, s unit.Style) string {
	for i, v := range values {
		template = strings.ReplaceAll(template, "{"+strconv.Itoa(i)+"}", v.Say(s))
	}
	return template
}
