package typeset

import (
	"strings"
	"unicode"
)

// Missing stands for a character that the typeface lacks.
const Missing = '?'

// Clean makes any string printable: broken UTF-8 and characters that the typeface lacks become "?", white space
// becomes a space, control and format characters go. It is its own fixed point.
func Clean(s string) string {
	if isClean(s) {
		return s
	}
	return strings.Map(cleanRune, strings.ToValidUTF8(s, string(Missing)))
}

// isClean is quick and may say no of what is clean: it knows the printed characters of ASCII alone, all of which the typeface has.
func isClean(s string) bool {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > lastBasic {
			return false
		}
	}
	return true
}

func cleanRune(r rune) rune {
	switch {
	case unicode.IsSpace(r):
		if r == '\u00a0' {
			return r // keeps number and unit together
		}
		return ' '
	case unicode.IsControl(r), unicode.Is(unicode.Cf, r), isVariation(r):
		return -1
	case !has(r):
		return Missing
	}
	return r
}

// isVariation: selectors that follow a sign to ask for its colored form; nothing to see of their own.
func isVariation(r rune) bool { return r >= 0xFE00 && r <= 0xFE0F }

func has(r rune) bool {
	_, ok := regular().glyphs[r]
	if ok {
		_, ok = bold().glyphs[r]
	}
	return ok
}
