// Package calendar is civil time without a clock: dates, times of day, and the hours in which someone works.
//
// A Date is a number of days, a Moment a number of minutes, both from the first minute of 1970-01-01 as a wall calendar and
// a wall clock show them. There is no time zone and no change to summer time: a day has 1440 minutes.
package calendar

import (
	"fmt"
	"strconv"

	"dryfit/internal/unit"
)

// Date counts days from 1970-01-01.
type Date int

// Moment counts minutes from the start of 1970-01-01.
type Moment int64

// NewDate gives the date of a day in the Gregorian calendar; false if there is no such day. Counting follows the era of 400
// years, which has 146,097 days, with years that begin in March so that the leap day comes last.
func NewDate(year, month, day int) (Date, bool) {
	if year < 1600 || year > 2999 || month < 1 || month > 12 || day < 1 || day > 31 {
		return 0, false
	}
	y, m := year, month-3
	if m < 0 {
		y, m = y-1, m+12
	}
	era, of := y/400, y%400
	d := Date(era*daysOfEra + of*365 + of/4 - of/100 + (153*m+2)/5 + day - 1 - daysTo1970)
	gotYear, gotMonth, gotDay := d.Civil()
	return d, gotYear == year && gotMonth == month && gotDay == day
}

const (
	daysOfEra  = 146_097
	daysTo1970 = 719_468 // from 0000-03-01 to 1970-01-01
)

// Civil gives year, month and day.
func (d Date) Civil() (year, month, day int) {
	n := int(d) + daysTo1970
	era, of := n/daysOfEra, n%daysOfEra
	y := (of - of/1460 + of/36_524 - of/146_096) / 365
	left := of - (365*y + y/4 - y/100)
	m := (5*left + 2) / 153
	year, month, day = y+era*400, m+3, left-(153*m+2)/5+1
	if month > 12 {
		year, month = year+1, month-12
	}
	return year, month, day
}

// ParseDate reads 2026-03-02.
func ParseDate(s string) (Date, bool) {
	if len(s) != len("2026-03-02") || s[4] != '-' || s[7] != '-' {
		return 0, false
	}
	y, err1 := strconv.ParseUint(s[:4], 10, 16)
	m, err2 := strconv.ParseUint(s[5:7], 10, 16)
	d, err3 := strconv.ParseUint(s[8:], 10, 16)
	if err1 != nil || err2 != nil || err3 != nil {
		return 0, false
	}
	return NewDate(int(y), int(m), int(d))
}

// String gives 2026-03-02.
func (d Date) String() string {
	y, m, day := d.Civil()
	return fmt.Sprintf("%04d-%02d-%02d", y, m, day)
}

// Weekday is a day of the week; Monday is 0.
type Weekday int

// Days of the week.
const (
	Monday Weekday = iota
	Tuesday
	Wednesday
	Thursday
	Friday
	Saturday
	Sunday
)

// WeekdayNames are the days of the week in English, from Monday.
var weekdayNames = [...]string{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"}

var monthNames = [...]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}

func (w Weekday) String() string { return weekdayNames[w] }

// Weekday gives the day of the week; 1970-01-01 was a Thursday.
func (d Date) Weekday() Weekday { return Weekday(((int(d)+int(Thursday))%7 + 7) % 7) }

// Say words a date for a person: "Sat, March 7".
func (d Date) Say() string {
	_, m, day := d.Civil()
	return d.Weekday().String()[:3] + ", " + monthNames[m-1] + " " + strconv.Itoa(day)
}

// At gives a moment of the date.
func (d Date) At(time unit.Minutes) Moment { return Moment(d)*Moment(unit.Day) + Moment(time) }

// Date gives the day in which a moment falls.
func (m Moment) Date() Date { return Date(floorDiv(int64(m), int64(unit.Day))) }

// Time gives the minutes since midnight.
func (m Moment) Time() unit.Minutes { return unit.Minutes(int64(m) - int64(m.Date())*int64(unit.Day)) }

// Plus gives a later moment.
func (m Moment) Plus(d unit.Minutes) Moment { return m + Moment(d) }

// Since gives the time from another moment to this one.
func (m Moment) Since(o Moment) unit.Minutes { return unit.Minutes(m - o) }

// String gives 2026-03-02 18:30.
func (m Moment) String() string { return m.Date().String() + " " + Clock(m.Time()) }

// Say words a moment for a person: "Sat, March 7, 18:30".
func (m Moment) Say() string { return m.Date().Say() + ", " + Clock(m.Time()) }

// ParseMoment reads "2026-03-02 18:30"; a date alone is its midnight.
func ParseMoment(s string) (m Moment, timed, ok bool) {
	if len(s) == len("2026-03-02") {
		d, ok := ParseDate(s)
		return d.At(0), false, ok
	}
	if len(s) < len("2026-03-02 8:30") || s[10] != ' ' && s[10] != 'T' {
		return 0, false, false
	}
	d, ok1 := ParseDate(s[:10])
	t, ok2 := ParseClock(s[11:])
	return d.At(t), true, ok1 && ok2
}

// Clock words a time of day: "18:30".
func Clock(t unit.Minutes) string { return fmt.Sprintf("%d:%02d", t/unit.Hour, t%unit.Hour) }

// ParseClock reads "18:30", "8:00" or "18"; 24:00 is the end of the day.
func ParseClock(s string) (unit.Minutes, bool) {
	h, m, colon := cut(s)
	hour, err1 := strconv.ParseUint(h, 10, 8)
	minute, err2 := strconv.ParseUint(m, 10, 8)
	t := unit.Minutes(hour)*unit.Hour + unit.Minutes(minute)
	if err1 != nil || err2 != nil || minute > 59 || t > unit.Day || colon && len(m) != 2 {
		return 0, false
	}
	return t, true
}

func cut(s string) (hour, minute string, colon bool) {
	for i, c := range s {
		if c == ':' {
			return s[:i], s[i+1:], true
		}
	}
	return s, "0", false
}

func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}
