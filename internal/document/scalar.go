package document

import (
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// scalar makes a form out of a function that reads a trimmed text; why tells what is wrong with one that it refuses.
func scalar[V any](say, pattern string, parse func(string) (v V, why string)) form[V] {
	s := &shape{say: say, pattern: pattern}
	return form[V]{s, func(r *reader, n *text.Node) (V, bool) {
		var none V
		if !r.want(n, text.Scalar, say) {
			return none, false
		}
		v, why := parse(strings.TrimSpace(n.Text))
		if why != "" {
			r.misread(n, s, why)
			return none, false
		}
		return v, true
	}}
}

var words = scalar("some words", "", func(s string) (string, string) {
	if s == "" {
		return "", "nothing is written"
	}
	return s, ""
})

var isoDate = regexp.MustCompile(datePattern)

const datePattern = `^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$`

var date = scalar("a date as year-month-day: 2026-03-02", datePattern, func(s string) (string, string) {
	if !isoDate.MatchString(s) {
		return "", "not a date"
	}
	return s, ""
})

// count reads a whole number.
func count(say string, least, most int) form[int] {
	return scalar(say, `^[0-9]+$`, func(s string) (int, string) {
		n, err := strconv.Atoi(s)
		switch {
		case err != nil:
			return 0, "not a whole number"
		case n < least:
			return 0, "less than " + strconv.Itoa(least)
		case n > most:
			return 0, "more than " + strconv.Itoa(most)
		}
		return n, ""
	})
}

// word is one word of a choice with its meaning.
type word[E any] struct {
	text string
	is   E
}

// choice reads one of a few words.
func choice[E any](say string, words ...word[E]) form[E] {
	texts := make([]string, len(words))
	for i, w := range words {
		texts[i] = w.text
	}
	s := &shape{kind: choiceShape, say: say, words: texts}
	return form[E]{s, func(r *reader, n *text.Node) (none E, ok bool) {
		if !r.want(n, text.Scalar, say) {
			return none, false
		}
		for _, w := range words {
			if strings.EqualFold(strings.TrimSpace(n.Text), w.text) {
				return w.is, true
			}
		}
		r.strayWord(n.At, n.Text, texts)
		return none, false
	}}
}

func (r *reader) strayWord(at diag.Place, typed string, texts []string) {
	if near := nearest(typed, texts); near != "" {
		r.stop("unknown-word", at, "{0} is no choice here", "did you mean {1}?", diag.T(short(typed)), diag.T(near))
		return
	}
	r.stop("unknown-word", at, "{0} is no choice here", "write one of: {1}", diag.T(short(typed)), diag.T(strings.Join(texts, ", ")))
}

var yesNo = choice("yes or no", word[bool]{"yes", true}, word[bool]{"no", false}, word[bool]{"true", true}, word[bool]{"false", false})

const decimalPattern = `[0-9]+(\.[0-9]+)?([eE][+]?[0-9]{1,2})?`

// slope reads a fall: `2 %`, `1/50`, `0.02`, `none`.
var slope = scalar("a fall: 2 %, 1/50 or none", `^(none|[0-9]+(\.[0-9]+)?\s*%|[0-9]+/[0-9]+|0?\.[0-9]+|0)$`, func(s string) (unit.Ratio, string) {
	if s == "none" {
		return 0, ""
	}
	share, ok := ratioOf(s)
	switch {
	case !ok:
		return 0, "not a fall"
	case share > unit.One/4:
		return 0, "steeper than 25 %"
	}
	return share, ""
})

// ratioOf reads a share of one as a percentage, a fraction or a decimal, rounded half up to a millionth.
func ratioOf(s string) (unit.Ratio, bool) {
	number, percent := strings.CutSuffix(s, "%")
	v, ok := rational(strings.TrimSpace(number))
	if !ok {
		return 0, false
	}
	if percent {
		v.Quo(v, big.NewRat(100, 1))
	}
	n, ok := whole(v.Mul(v, big.NewRat(int64(unit.One), 1)))
	return unit.Ratio(n), ok
}

var plainNumber = regexp.MustCompile(`^([0-9]{1,12}/[0-9]{1,12}|[0-9]{0,12}\.?[0-9]{0,12}([eE]\+?[0-9]{1,2})?)$`)

// rational reads a number without a sign. Its length is bounded, so that a hostile one costs nothing.
func rational(s string) (*big.Rat, bool) {
	if !plainNumber.MatchString(s) {
		return nil, false
	}
	return new(big.Rat).SetString(s)
}

// whole rounds half up and reports whether the result fits.
func whole(v *big.Rat) (int64, bool) {
	twice := new(big.Rat).Add(new(big.Rat).Mul(v, big.NewRat(2, 1)), big.NewRat(1, 1))
	n := new(big.Int).Div(twice.Num(), new(big.Int).Mul(twice.Denom(), big.NewInt(2)))
	return n.Int64(), n.IsInt64()
}

// measured reads a number with one of a few units and gives it in the base unit, rounded half up.
func measured(say, pattern string, most *big.Rat, units ...word[*big.Rat]) form[int64] {
	return scalar(say, pattern, func(s string) (int64, string) {
		for _, u := range units {
			number, ok := strings.CutSuffix(s, u.text)
			if !ok {
				continue
			}
			v, ok := rational(strings.TrimSpace(number))
			if !ok {
				return 0, "not a number and a unit"
			}
			v.Mul(v, u.is)
			if v.Sign() == 0 || v.Cmp(most) > 0 {
				return 0, "too large or 0"
			}
			n, _ := whole(v)
			return n, ""
		}
		return 0, "no unit"
	})
}

// Pascals a pound-force per square inch and per square foot: NIST SP 811, table B.8 (6.894757 E+03, 4.788026 E+01),
// to more digits from 1 lbf = 4.4482216152605 N exactly.
var (
	psi = big.NewRat(6_894_757_293_168, 1_000_000_000)
	psf = big.NewRat(47_880_258_980, 1_000_000_000)
)

var modulus = measured("a stiffness: 1.6e6 psi or 11 GPa", `^`+decimalPattern+`\s*(psi|GPa|MPa)$`, big.NewRat(1e12, 1),
	word[*big.Rat]{"psi", psi}, word[*big.Rat]{"GPa", big.NewRat(1e9, 1)}, word[*big.Rat]{"MPa", big.NewRat(1e6, 1)})

var load = measured("a load: 50 psf or 2.4 kPa", `^`+decimalPattern+`\s*(psf|kPa|kN/m2|kN/m²)$`, big.NewRat(1e6, 1),
	word[*big.Rat]{"psf", psf}, word[*big.Rat]{"kPa", big.NewRat(1000, 1)},
	word[*big.Rat]{"kN/m2", big.NewRat(1000, 1)}, word[*big.Rat]{"kN/m²", big.NewRat(1000, 1)})

// yearlyRange reads a difference of temperature in thousandths of a kelvin.
var yearlyRange = measured("a difference of temperature: 115 F or 64 C", `^`+decimalPattern+`\s*°?\s*[FCK]$`, big.NewRat(150_000, 1),
	word[*big.Rat]{"°F", big.NewRat(5000, 9)}, word[*big.Rat]{"°C", big.NewRat(1000, 1)},
	word[*big.Rat]{"F", big.NewRat(5000, 9)}, word[*big.Rat]{"C", big.NewRat(1000, 1)}, word[*big.Rat]{"K", big.NewRat(1000, 1)})
