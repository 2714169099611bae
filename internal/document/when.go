package document

import (
	"math/big"
	"regexp"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/unit"
)

// Moment is a date, with a time of day where one is written.
type Moment struct {
	At    calendar.Moment
	Timed bool
}

// day reads a date.
var day = scalar("a date as year-month-day: 2026-03-02", datePattern, func(s string) (calendar.Date, string) {
	d, ok := calendar.ParseDate(s)
	if !ok {
		return 0, "not a date"
	}
	return d, ""
})

const clockPattern = `([01]?[0-9]|2[0-4]):[0-5][0-9]`

// moment reads a date with a time of day, or a date alone.
var moment = scalar("a date, or a date and a time of day: 2026-03-02 18:30", strings.TrimSuffix(datePattern, "$")+`([ T]`+clockPattern+`)?$`, func(s string) (Moment, string) {
	m, timed, ok := calendar.ParseMoment(strings.Join(strings.Fields(s), " "))
	if !ok {
		return Moment{}, "no such date or time of day"
	}
	return Moment{m, timed}, ""
})

const (
	timeTermsPattern = `([0-9]+(\.[0-9]+)?\s*(weeks?|days?|hours?|hrs?|h|minutes?|mins?|min)\s*)+`
	timePattern      = `^` + timeTermsPattern + `$`
)

var (
	negative  = regexp.MustCompile(`^\s*[-−–]`)
	timeTerms = regexp.MustCompile(`([0-9]+(?:\.[0-9]+)?)\s*([a-z]+)`)
	timeWhole = regexp.MustCompile(timePattern)
)

// minutesOf are the units of a length of time.
var minutesOf = map[string]unit.Minutes{"week": 7 * unit.Day, "day": unit.Day, "hour": unit.Hour, "hr": unit.Hour, "h": unit.Hour, "minute": 1, "min": 1}

// longest is the most that one length of time can be: a year is more than any bathroom takes.
const longest = 366 * unit.Day

// lasting reads a length of time to the minute, rounded half up.
var lasting = scalar("a length of time: 45 min, 3 h, 1 h 30 min or 3 days", timePattern, parseLasting)

func parseLasting(s string) (unit.Minutes, string) {
	s = strings.ToLower(s)
	switch {
	case negative.MatchString(s):
		return 0, "less than no time"
	case !timeWhole.MatchString(s):
		return 0, "not a length of time"
	}
	sum := new(big.Rat)
	for _, term := range timeTerms.FindAllStringSubmatch(s, -1) {
		one, ok := minutesOf[term[2]]
		if !ok {
			one = minutesOf[strings.TrimSuffix(term[2], "s")]
		}
		v, ok := rational(term[1])
		if !ok {
			return 0, "not a length of time"
		}
		sum.Add(sum, v.Mul(v, big.NewRat(int64(one), 1)))
	}
	n, ok := whole(sum)
	if !ok || unit.Minutes(n) > longest {
		return 0, "more than a year"
	}
	return unit.Minutes(n), ""
}

var degrees = regexp.MustCompile(`^([-−]?)([0-9]+(?:\.[0-9]+)?)\s*°?\s*([FC])$`)

// Temperatures outside of these are a slip of the pen or of the unit: of a room in which somebody works.
const (
	coldestRoom = -40 * unit.Celsius
	hottestRoom = 60 * unit.Celsius
)

// roomDegrees reads degrees of either scale, rounded once to a thousandth of a degree Celsius.
var roomDegrees = scalar("a temperature: 54 F or 12 C", `^[-−]?[0-9]+(\.[0-9]+)?\s*°?\s*[FC]$`, parseDegrees)

func parseDegrees(s string) (unit.Temperature, string) {
	m := degrees.FindStringSubmatch(s)
	if m == nil {
		return 0, "not a temperature with its scale, F or C"
	}
	v, ok := rational(m[2])
	if !ok {
		return 0, "not a temperature"
	}
	thousandths, _ := whole(v.Mul(v, big.NewRat(1000, 1)))
	if m[1] != "" {
		thousandths = -thousandths
	}
	t := unit.Temperature(thousandths)
	if m[3] == "F" {
		t = unit.FromFahrenheit(thousandths)
	}
	if t < coldestRoom || t > hottestRoom {
		return 0, "colder or hotter than any room"
	}
	return t, ""
}
