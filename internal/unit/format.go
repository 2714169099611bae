package unit

import (
	"fmt"
	"strconv"
	"strings"
)

// Style is how lengths are shown to one reader.
type Style struct {
	System System
	// Mark is the finest mark that the reader's tape shows; lengths are rounded to it, half up.
	Mark Length
}

// Tape marks: what a common tape shows (1/16 in, 1 mm).
const (
	Sixteenth    = Inch / 16
	ThirtySecond = Inch / 32
)

// DefaultStyle rounds to 1/16 in or to 1 mm.
func DefaultStyle(s System) Style {
	if s == Millimetres {
		return Style{s, Millimetre}
	}
	return Style{s, Sixteenth}
}

// Fine is the style for tolerances, joints and residuals, which are smaller than a tape's marks: 1/64 in or 0.1 mm.
func (s Style) Fine() Style {
	if s.System == Millimetres {
		return Style{s.System, Millimetre / 10}
	}
	return Style{s.System, Inch / 64}
}

// Format shows a length rounded to the style's mark, with its unit: "59-3/4 in", "1520 mm".
func (s Style) Format(l Length) string { return s.Bare(l) + " " + s.System.String() }

// Bare shows a length rounded to the style's mark without its unit, for tables with the unit in the head.
func (s Style) Bare(l Length) string {
	r := l.Round(s.Mark)
	if s.System == Millimetres {
		return decimalOf(r, Millimetre)
	}
	return inchesOf(r)
}

// Exact shows a length without rounding: in inches as a fraction to 1/128 where it is one, else as a decimal;
// in millimetres always as a decimal.
func (s Style) Exact(l Length) string {
	if s.System == Millimetres {
		return decimalOf(l, Millimetre) + " mm"
	}
	return inchesOf(l) + " in"
}

// JSON is the exact number of millimetres as a JSON number; 1/16000 mm is 0.0000625, a finite decimal.
func (l Length) JSON() string { return decimalOf(l, Millimetre) }

// MarshalJSON writes the exact number of millimetres.
func (l Length) MarshalJSON() ([]byte, error) { return []byte(l.JSON()), nil }

// UnmarshalJSON reads an exact number of millimetres.
func (l *Length) UnmarshalJSON(b []byte) error {
	v, err := Parse(string(b), Millimetres)
	*l = v
	return err
}

// inchesOf prints whole inches and a fraction in lowest terms: "59-3/4", "-1/2", "12".
func inchesOf(l Length) string {
	sign := ""
	if l < 0 {
		sign, l = "-", -l
	}
	whole, rest := l/Inch, l%Inch
	if rest == 0 {
		return sign + strconv.FormatInt(int64(whole), 10)
	}
	const finest = 128
	if rest%(Inch/finest) != 0 {
		return sign + decimalInches(l)
	}
	n, d := int64(rest/(Inch/finest)), int64(finest)
	for n%2 == 0 {
		n, d = n/2, d/2
	}
	if whole == 0 {
		return fmt.Sprintf("%s%d/%d", sign, n, d)
	}
	return fmt.Sprintf("%s%d-%d/%d", sign, whole, n, d)
}

// decimalInches prints a positive length that is no 1/128 in to a thousandth of an inch, half up.
func decimalInches(l Length) string {
	t := l.MulDiv(1000, int64(Inch))
	return trimZeros(fmt.Sprintf("%d.%03d", t/1000, t%1000))
}

// decimalOf prints l/one exactly; one must divide 10^k for some small k, as a millimetre does (16000 | 10^7).
func decimalOf(l, one Length) string {
	sign := ""
	if l < 0 {
		sign, l = "-", -l
	}
	const places = 10_000_000 // seven decimals
	frac := int64(l%one) * places / int64(one)
	return sign + trimZeros(fmt.Sprintf("%d.%07d", l/one, frac))
}

func trimZeros(s string) string { return strings.TrimSuffix(strings.TrimRight(s, "0"), ".") }
