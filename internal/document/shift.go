package document

import (
	"strings"

	"dryfit/internal/unit"
)

// Shift adds a length to the one figure of a value, and keeps its words and the unit that it was typed in: 34 above floor by 1/2 is
// 34-1/2 above floor, cement board 12.7 mm by 0.8 mm is cement board 13.5 mm. A place or a height with two edges is moved as a whole. False:
// the value has no figure or several, or what comes out can not be written as exactly.
func Shift(typed string, by unit.Length, units unit.System) (string, bool) {
	words := strings.Fields(typed)
	for _, m := range [][]string{upPattern.FindStringSubmatch(strings.Join(words, " ")), acrossPattern.FindStringSubmatch(strings.Join(words, " "))} {
		if m != nil && m[3] != "" {
			return shiftBoth(strings.Join(words, " "), m[2], m[3], by, units)
		}
	}
	from, to := figureIn(words, units)
	if from == to || figures(words[:from], units) || figures(words[to:], units) {
		return "", false
	}
	figure, ok := shiftFigure(strings.Join(words[from:to], " "), by, units)
	if !ok {
		return "", false
	}
	return strings.Join(append(append(append([]string{}, words[:from]...), figure), words[to:]...), " "), true
}

// shiftBoth moves both edges of a stretch.
func shiftBoth(typed, low, high string, by unit.Length, units unit.System) (string, bool) {
	a, ok := shiftFigure(low, by, units)
	b, too := shiftFigure(high, by, units)
	if !ok || !too {
		return "", false
	}
	return strings.Replace(typed, low+" to "+high, a+" to "+b, 1), true
}

// shiftFigure adds to a length and writes it as it was written.
func shiftFigure(typed string, by unit.Length, units unit.System) (string, bool) {
	l, err := unit.Parse(typed, units)
	if err != nil {
		return "", false
	}
	suffix, system := "", units
	if last := strings.ToLower(trailingUnit(typed)); last != "" {
		system = unit.Inches
		suffix = " in"
		if strings.Contains(last, "m") {
			system, suffix = unit.Millimetres, " mm"
		}
	}
	out := strings.TrimSuffix(unit.Style{System: system}.Exact(l+by), " "+system.String()) + suffix
	back, err := unit.Parse(out, units)
	return out, err == nil && back == l+by
}

// figureIn finds the longest run of words that is a length.
func figureIn(words []string, units unit.System) (from, to int) {
	for size := len(words); size > 0; size-- {
		for i := 0; i+size <= len(words); i++ {
			if _, err := unit.Parse(strings.Join(words[i:i+size], " "), units); err == nil {
				return i, i + size
			}
		}
	}
	return 0, 0
}

// figures reports whether any of these words could be a figure.
func figures(words []string, units unit.System) bool {
	from, to := figureIn(words, units)
	return from != to
}
