package unit

import (
	"math/big"
	"strings"
)

// scanner walks one typed length from left to right.
type scanner struct{ text, rest string }

func (s *scanner) space() { s.rest = strings.TrimLeft(s.rest, " \t") }

// between takes the space, and the hyphen of 8'-2", between two terms.
func (s *scanner) between(terms int) {
	s.space()
	if rest, hyphen := strings.CutPrefix(s.rest, "-"); hyphen && terms > 0 && rest != "" {
		s.rest = rest
		s.space()
	}
}

// sign takes a leading plus or minus.
func (s *scanner) sign() (negative bool) {
	switch {
	case strings.HasPrefix(s.rest, "-"):
		s.rest = s.rest[1:]
		return true
	case strings.HasPrefix(s.rest, "+"):
		s.rest = s.rest[1:]
	}
	return false
}

// number takes "98", "98.5", "3/8", "98 3/8" or "98-3/8".
func (s *scanner) number() (*big.Rat, error) {
	whole := s.digits(true)
	if whole == "" {
		return nil, &ParseError{Text: s.text, Why: "a number is missing before " + quote(s.rest)}
	}
	if strings.HasPrefix(s.rest, "/") {
		return s.fraction(whole)
	}
	n, ok := decimal(whole)
	if !ok {
		return nil, &ParseError{Text: s.text, Why: quote(whole) + " is no number"}
	}
	if part, ok := s.joined(); ok {
		if strings.Contains(whole, ".") {
			return nil, &ParseError{Text: s.text, Why: "a decimal and a fraction together"}
		}
		f, err := s.fraction(part)
		if err != nil {
			return nil, err
		}
		if f.Cmp(oneMM) >= 0 {
			return nil, &ParseError{Text: s.text, Why: "the fraction after a whole number is 1 or more"}
		}
		n.Add(n, f)
	}
	return n, nil
}

// joined looks for the numerator of a fraction joined to a whole number by a space or a hyphen.
func (s *scanner) joined() (numerator string, ok bool) {
	ahead := &scanner{text: s.text, rest: strings.TrimLeft(s.rest, " \t")}
	ahead.rest = strings.TrimLeft(strings.TrimPrefix(ahead.rest, "-"), " \t")
	numerator = ahead.digits(false)
	if numerator == "" || !strings.HasPrefix(ahead.rest, "/") || ahead.rest == s.rest {
		return "", false
	}
	s.rest = ahead.rest
	return numerator, true
}

// fraction takes "/8" after its numerator.
func (s *scanner) fraction(numerator string) (*big.Rat, error) {
	s.rest = s.rest[1:]
	denominator := s.digits(false)
	n, ok1 := decimal(numerator)
	d, ok2 := decimal(denominator)
	if !ok1 || !ok2 || d.Sign() == 0 || strings.Contains(numerator, ".") {
		return nil, &ParseError{Text: s.text, Why: "the fraction " + quote(numerator+"/"+denominator) + " can not be read"}
	}
	return n.Quo(n, d), nil
}

// digits takes a run of digits, with one decimal point if allowed.
func (s *scanner) digits(point bool) string {
	i, seen := 0, false
	for i < len(s.rest) {
		c := s.rest[i]
		if c == '.' && point && !seen {
			seen = true
		} else if c < '0' || c > '9' {
			break
		}
		i++
	}
	if i > maxDigits {
		i = maxDigits
	}
	run := s.rest[:i]
	s.rest = s.rest[i:]
	return run
}

// maxDigits bounds one number so that a hostile text costs nothing; no length has more.
const maxDigits = 18

func decimal(digits string) (*big.Rat, bool) {
	if digits == "" || digits == "." {
		return nil, false
	}
	return new(big.Rat).SetString(strings.TrimSuffix(digits, "."))
}

// unit takes a unit word. A bare first number takes the document's unit; a bare number after feet is inches.
func (s *scanner) unit(bare System, term int) (*big.Rat, error) {
	s.space()
	rest, hyphen := strings.CutPrefix(s.rest, "-")
	s.rest = strings.TrimLeft(rest, " \t")
	for _, u := range unitWords {
		if strings.HasPrefix(s.rest, u.word) && !wordGoesOn(u.word, s.rest[len(u.word):]) {
			s.rest = s.rest[len(u.word):]
			return u.mm, nil
		}
	}
	if s.rest != "" {
		return nil, &ParseError{Text: s.text, Why: "unknown unit or stray text " + quote(s.rest)}
	}
	if hyphen {
		return nil, &ParseError{Text: s.text, Why: "it ends in a hyphen"}
	}
	if term > 0 || bare == Inches {
		return inchMM, nil
	}
	return oneMM, nil
}

// wordGoesOn reports whether letters follow a unit word without a space: "inchs" is no unit.
func wordGoesOn(word, rest string) bool {
	letter := func(c byte) bool { return c >= 'a' && c <= 'z' }
	return rest != "" && letter(rest[0]) && letter(word[len(word)-1])
}

func quote(s string) string {
	if s == "" {
		return "the end"
	}
	if len(s) > 20 {
		s = s[:20] + "…"
	}
	return "\"" + strings.ToValidUTF8(s, "?") + "\""
}
