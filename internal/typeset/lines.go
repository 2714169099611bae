package typeset

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"dryfit/internal/draw"
)

// Ellipsis marks that a text was shortened.
const Ellipsis = "…"

// Fit returns the text, or the longest beginning of it with an ellipsis that is no wider than room. Where not even
// the ellipsis has room it returns nothing.
func Fit(text string, size draw.Um, bold bool, room draw.Um) string {
	text = Clean(text)
	if Width(text, size, bold) <= room {
		return text
	}
	runes := []rune(text)
	for n := headThatFits(runes, size, bold, room-Width(Ellipsis, size, bold)); n >= 0; n-- {
		short := strings.TrimRight(string(runes[:n]), " ") + Ellipsis
		if Width(short, size, bold) <= room {
			return short
		}
	}
	return ""
}

// headThatFits is how many runes from the start fit into room; -1 where room is below zero.
func headThatFits(runes []rune, size draw.Um, bold bool, room draw.Um) int {
	if room < 0 {
		return -1
	}
	f := FaceOf(bold)
	var units int64
	for i, r := range runes {
		units += int64(f.glyph(r).advance)
		if ceilDiv(units*int64(size), int64(f.Cap)) > room {
			return i
		}
	}
	return len(runes)
}

// Wrap breaks a text into lines no wider than room, between words; a word that is wider by itself is broken
// within, at least one character a line. Line feeds in the text break too. It returns at least one line.
func Wrap(text string, size draw.Um, bold bool, room draw.Um) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		lines = append(lines, wrapOne(Clean(paragraph), size, bold, room)...)
	}
	return lines
}

func wrapOne(text string, size draw.Um, bold bool, room draw.Um) []string {
	var lines []string
	line := ""
	for _, word := range words(text, func(w string) bool { return Width(w, size, bold) <= room }) {
		if line != "" && Width(line+" "+word, size, bold) <= room {
			line += " " + word
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		pieces := breakWord(word, size, bold, room)
		lines = append(lines, pieces[:len(pieces)-1]...)
		line = pieces[len(pieces)-1]
	}
	return append(lines, line)
}

// words splits a text at its spaces, but keeps a figure and its unit together where both have room on one line.
func words(text string, hasRoom func(string) bool) []string {
	var out []string
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return r == ' ' }) {
		if last := len(out) - 1; last >= 0 && isUnit(w) && endsInFigure(out[last]) && hasRoom(out[last]+" "+w) {
			out[last] += " " + w
			continue
		}
		out = append(out, w)
	}
	return out
}

func isUnit(w string) bool {
	switch strings.TrimRight(w, ".,;:)") {
	case "mm", "cm", "m", "m²", "in", "ft", "L", "mL", "qt", "kg", "g", "lb", "h", "min", "°C", "°F", "%":
		return true
	}
	return false
}

func endsInFigure(w string) bool {
	last, _ := utf8.DecodeLastRuneInString(w)
	return unicode.IsDigit(last)
}

func breakWord(word string, size draw.Um, bold bool, room draw.Um) []string {
	var pieces []string
	runes := []rune(word)
	for {
		n := headThatFits(runes, size, bold, max(room, 0))
		if n >= len(runes) {
			return append(pieces, string(runes))
		}
		n = max(n, 1)
		pieces, runes = append(pieces, string(runes[:n])), runes[n:]
	}
}

// Widest is the width of the widest word: the least room in which Wrap breaks no word and parts no figure from its unit.
func Widest(text string, size draw.Um, bold bool) draw.Um {
	var w draw.Um
	for _, word := range words(Clean(text), func(string) bool { return true }) {
		w = max(w, Width(word, size, bold))
	}
	return w
}
