package report

import (
	"strings"

	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// KindWords names the shape of a cut piece.
func KindWords(k piece.CutKind) string {
	return [...]string{"whole", "straight", "taper", "corner", "L", "U", "notch", "triangle", "corner off", "cut-out", "odd"}[k]
}

// PieceKind names the shape of a piece: whole, drilled, or how it is cut.
func PieceKind(c piece.Piece) string {
	if c.Uncut() && len(c.Holes) > 0 {
		return "drilled"
	}
	return KindWords(c.Cut.Kind)
}

// StepWords says one setting of the saw, rounded to fit.
func StepWords(s unit.Style, c piece.Step) string {
	return stepWords(s, c, c.SawFrom, c.SawTo)
}

// ExactStep says the same setting without rounding to fit; finer than the tape shows.
func ExactStep(s unit.Style, c piece.Step) string {
	f := fine(s)
	return span(f, c.From.Round(f.Mark), c.To.Round(f.Mark))
}

func stepWords(s unit.Style, c piece.Step, from, to unit.Length) string {
	words := "keep " + span(s, from, to) + " from " + keptEdge(c.Keep)
	if two := strings.Split(c.Keep, " and "); len(two) == 2 {
		words = "across the corner: keep " + s.Bare(from) + " along " + two[0] + ", " + s.Bare(to) + " along " + two[1]
	}
	if c.Chips > 0 {
		words += " (" + Count(c.Chips, "chip", "chips") + ")"
	}
	if c.Along != [2]unit.Length{} {
		words += ", over " + s.Bare(c.Along[0].Round(s.Mark)) + " to " + s.Bare(c.Along[1].Round(s.Mark)) + " along it"
	}
	return words
}

func span(s unit.Style, from, to unit.Length) string {
	if from == to {
		return s.Bare(from)
	}
	return s.Bare(from) + " to " + s.Bare(to)
}

func keptEdge(keep string) string {
	if at, ok := strings.CutPrefix(keep, "cut: "); ok {
		return "the cut at " + at
	}
	return keep
}

// CutWords says all settings of a piece in their order.
func CutWords(s unit.Style, c piece.Cut) string {
	return steps(c, func(x piece.Step) string { return StepWords(s, x) })
}

// ExactWords gives the exact numbers of all settings in their order.
func ExactWords(s unit.Style, c piece.Cut) string {
	return steps(c, func(x piece.Step) string { return ExactStep(s, x) })
}

func steps(c piece.Cut, say func(piece.Step) string) string {
	var out []string
	for _, x := range c.Steps {
		out = append(out, say(x))
	}
	return strings.Join(out, "; ")
}

// HoleWords says one hole: its size, bit, and center from the edges that a person measures from.
func HoleWords(s unit.Style, h piece.PieceHole) string {
	words := h.Name + " Ø" + s.Bare(h.Drill) + ": center " + off(s, h.FromX, h.EdgeX) + ", " + off(s, h.FromY, h.EdgeY)
	if h.CutEdgeX != "" {
		words += "; " + off(s, h.CutX, h.CutEdgeX)
	}
	if h.CutEdgeY != "" {
		words += "; " + off(s, h.CutY, h.CutEdgeY)
	}
	return words + "; " + bitWords(s, h)
}

func bitWords(s unit.Style, h piece.PieceHole) string {
	switch {
	case h.Bite:
		return "crosses the edge, cut as a notch"
	case h.Bit == 0:
		return "no bit of yours is wide enough"
	}
	return "bit " + s.Bare(h.Bit)
}

// HolesWords says all holes of a piece.
func HolesWords(s unit.Style, holes []piece.PieceHole) string {
	var out []string
	for _, h := range holes {
		out = append(out, HoleWords(s, h))
	}
	return strings.Join(out, ". ")
}

// KeptWords lists the factory edges that must stay on a piece.
func KeptWords(c piece.Piece) string {
	var out []string
	for _, e := range c.Edges {
		if e.Keep {
			out = append(out, strings.TrimPrefix(e.Name, "factory "))
		}
	}
	switch {
	case len(out) < len(c.Edges):
		return strings.Join(out, ", ")
	case len(out) == 0:
		return "none"
	}
	return "all"
}

// off says how far a center is from an edge. The center of a hole that only bites into the piece may lie beyond it: nobody measures a minus.
func off(s unit.Style, d unit.Length, edge string) string {
	if d.Round(s.Mark) < 0 {
		return s.Bare(-d) + " beyond " + keptEdge(edge)
	}
	return s.Bare(d) + " from " + keptEdge(edge)
}

// ToleranceWords says how far the wall may differ from a cut's numbers.
func ToleranceWords(s unit.Style, c piece.Cut) string {
	if c.Tolerance == 0 {
		return ""
	}
	return "±" + fine(s).Bare(c.Tolerance)
}
