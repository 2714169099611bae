package unit

import (
	"fmt"
	"math/big"
	"strings"
)

// System is the unit that a bare number takes and that a sheet prints in.
type System uint8

const (
	Inches System = iota
	Millimetres
)

func (s System) String() string {
	if s == Millimetres {
		return "mm"
	}
	return "in"
}

// ParseError says why a text is no length.
type ParseError struct {
	Text, Why string
	Instead   string // what can be written in its place, where that is known: "0.31 in or 5/16 in"
}

func (e *ParseError) Error() string { return fmt.Sprintf("%q is no length: %s", e.Text, e.Why) }

// Examples is shown beside every unreadable length.
const Examples = `98 3/8, 98-3/8 in, 8' 2-3/8", 8ft 2 3/8in, 2498 mm, 2.498 m, 12.7 cm`

// maxTyped is the longest length that a person can mean in one room: a kilometre.
var maxTyped = big.NewRat(1_000_000, 1)

// Parse reads a length as a person types it. A bare number takes the system's unit. The value is exact; a
// text that names a finer value than 1/16000 mm is refused rather than rounded.
func Parse(text string, bare System) (Length, error) {
	mm, err := parseRat(text, bare)
	if err != nil {
		return 0, err
	}
	return toGrid(text, mm, bare)
}

func toGrid(text string, mm *big.Rat, bare System) (Length, error) {
	if new(big.Rat).Abs(mm).Cmp(maxTyped) > 0 {
		return 0, &ParseError{Text: text, Why: "longer than a kilometre"}
	}
	counts := new(big.Rat).Mul(mm, big.NewRat(int64(Millimetre), 1))
	if !counts.IsInt() {
		return 0, &ParseError{text, "finer than 1/16000 mm", nearby(text, counts, bare)}
	}
	return Length(counts.Num().Int64()), nil
}

// parseRat returns millimetres: a sum of terms "number unit", each unit smaller than the one before.
func parseRat(text string, bare System) (*big.Rat, error) {
	s := &scanner{text: text, rest: normalise(text)}
	negative := s.sign()
	total, terms, last := new(big.Rat), 0, big.NewRat(1<<40, 1)
	for {
		s.between(terms)
		if s.rest == "" {
			break
		}
		mm, size, err := s.term(bare, terms, last)
		if err != nil {
			return nil, err
		}
		total.Add(total, mm)
		last, terms = size, terms+1
	}
	if terms == 0 {
		return nil, &ParseError{Text: text, Why: "nothing to read"}
	}
	if negative {
		total.Neg(total)
	}
	return total, nil
}

// term takes a number and its unit, which must be smaller than the last one.
func (s *scanner) term(bare System, terms int, last *big.Rat) (mm, size *big.Rat, err error) {
	n, err := s.number()
	if err != nil {
		return nil, nil, err
	}
	size, err = s.unit(bare, terms)
	if err != nil {
		return nil, nil, err
	}
	if size.Cmp(last) >= 0 {
		return nil, nil, &ParseError{Text: s.text, Why: "units must go from the larger to the smaller, each once"}
	}
	mm = n.Mul(n, size)
	if last.Cmp(footMM) == 0 && mm.Cmp(last) >= 0 {
		return nil, nil, &ParseError{Text: s.text, Why: "12 inches or more after feet"}
	}
	return mm, size, nil
}

var (
	inchMM = big.NewRat(254, 10)
	footMM = big.NewRat(3048, 10)
	oneMM  = big.NewRat(1, 1)
)

// unitWords lists every unit word; longer words stand before their own beginnings.
var unitWords = []struct {
	word string
	mm   *big.Rat
}{
	{"millimetres", oneMM}, {"millimeters", oneMM}, {"mm", oneMM},
	{"centimetres", big.NewRat(10, 1)}, {"centimeters", big.NewRat(10, 1)}, {"cm", big.NewRat(10, 1)},
	{"metres", big.NewRat(1000, 1)}, {"meters", big.NewRat(1000, 1)}, {"m", big.NewRat(1000, 1)},
	{"inches", inchMM}, {"inch", inchMM}, {"in.", inchMM}, {"in", inchMM}, {"\"", inchMM},
	{"feet", footMM}, {"foot", footMM}, {"ft.", footMM}, {"ft", footMM}, {"'", footMM},
}

// glyphs maps typographic characters to what they stand for, and drops what only keeps a line from breaking; fraction glyphs become "-n/d" joined to a whole number.
var glyphs = strings.NewReplacer(
	"′′", "\"", "’’", "\"", "′", "'", "’", "'", "″", "\"", "”", "\"", "''", "\"", "–", "-", "−", "-", "⁄", "/", "\u00a0", " ", "\u2060", "", "‑", "-",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⅓", " 1/3", "⅔", " 2/3",
)

func normalise(text string) string { return strings.ToLower(strings.TrimSpace(glyphs.Replace(text))) }
