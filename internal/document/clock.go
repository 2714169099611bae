package document

import (
	"strings"

	"dryfit/internal/unit"
)

// duration reads a length of time over 0.
var duration = scalar("a length of time: 30 min, 24 h, 1 h 30 min or 3 days", timePattern, func(s string) (unit.Minutes, string) {
	m, why := parseLasting(s)
	if why == "" && m <= 0 {
		why = "no time at all"
	}
	return m, why
})

// window reads two lengths of time; a unit behind the second counts for both.
var window = scalar("from when to when: 4 to 24 h", `^.+ to .+$`, func(s string) (TimeSpan, string) {
	from, to, ok := strings.Cut(s, " to ")
	if !ok {
		return TimeSpan{}, "one time and no second"
	}
	if strings.Trim(from, "0123456789. ") == "" {
		from += " " + strings.TrimLeft(to, "0123456789. ")
	}
	hi, why := parseLasting(to)
	if why != "" {
		return TimeSpan{}, why
	}
	lo, why := parseLasting(from)
	if why == "" && lo >= hi {
		why = "the first is not before the second"
	}
	return TimeSpan{lo, hi}, why
})

// warmths reads two temperatures; the scale behind the second counts for both.
var warmths = scalar("a range of temperatures: 50 to 90 F", `^.+ to .+$`, func(s string) (Warmth, string) {
	from, to, ok := strings.Cut(s, " to ")
	if !ok {
		return Warmth{}, "one temperature and no second"
	}
	if !strings.HasSuffix(from, "F") && !strings.HasSuffix(from, "C") {
		from += to[max(0, len(to)-1):]
	}
	hi, why := parseDegrees(to)
	if why != "" {
		return Warmth{}, why
	}
	lo, why := parseDegrees(from)
	if why == "" && lo >= hi {
		why = "the first is not below the second"
	}
	return Warmth{lo, hi}, why
})
