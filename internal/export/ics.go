package export

import (
	"fmt"
	"hash/fnv"
	"strings"
	"unicode/utf8"

	"dryfit/internal/calendar"
	"dryfit/internal/plan"
	"dryfit/internal/report"
)

// Calendar returns the days as iCalendar after RFC 5545: an event for each session of work and for what hardens or stands. Times are
// those of the wall clock wherever the calendar is read ("floating", 3.3.5), for the document knows no time zone. The identity of
// an event is made of the room's name, the job and the number of its session, so that reading the file again moves events and
// adds none. DTSTAMP is the moment from which the rest is planned: there is no clock here.
func Calendar(p plan.Plan) []byte {
	c := &icalendar{stamp: icsTime(p.Days.From), room: p.Name}
	c.line("BEGIN", "VCALENDAR")
	c.line("VERSION", "2.0")
	c.line("PRODID", "-//dryfit//days//EN")
	c.line("CALSCALE", "GREGORIAN")
	c.line("X-WR-CALNAME", escaped(p.Name))
	for _, d := range report.DayCards(p) {
		for i, w := range d.Work {
			c.work(p, w, p.Days.Cards[c.day].Work[i].Session)
		}
		c.day++
	}
	for _, w := range p.Days.Waits {
		job := p.Days.Tasks[w.After].Name
		c.event("wait "+job+" "+w.What, w.From, w.To, job+": "+w.What, w.Source, "TRANSPARENT")
	}
	c.line("END", "VCALENDAR")
	return []byte(c.String())
}

type icalendar struct {
	strings.Builder
	stamp, room string
	day         int
}

func (c *icalendar) work(p plan.Plan, w report.DayWork, session int) {
	t := p.Days.Tasks[w.Task]
	s := t.Sessions[session]
	title := t.Name
	if w.Who != "" {
		title += " (" + w.Who + ")"
	}
	notes := w.Notes
	if w.Part != "" {
		notes = append([]string{w.Part}, notes...)
	}
	c.event(fmt.Sprintf("work %s %d", t.Name, session+1), s.From, s.To, title, strings.Join(notes, "\n"), "OPAQUE")
}

func (c *icalendar) event(id string, from, to calendar.Moment, title, notes, busy string) {
	h := fnv.New128a()
	h.Write([]byte(c.room + "\x00" + id))
	c.line("BEGIN", "VEVENT")
	c.line("UID", fmt.Sprintf("%x@dryfit", h.Sum(nil)))
	c.line("DTSTAMP", c.stamp+"Z")
	c.line("DTSTART", icsTime(from))
	c.line("DTEND", icsTime(to))
	c.line("SUMMARY", escaped(title))
	if notes != "" {
		c.line("DESCRIPTION", escaped(notes))
	}
	c.line("TRANSP", busy)
	c.line("END", "VEVENT")
}

func icsTime(m calendar.Moment) string {
	year, month, day := m.Date().Civil()
	return fmt.Sprintf("%04d%02d%02dT%02d%02d00", year, month, day, m.Time()/60, m.Time()%60)
}

// escaped writes text after RFC 5545, 3.3.11. Other control characters have no place in it.
func escaped(s string) string {
	s = strings.NewReplacer("\\", "\\\\", ";", "\\;", ",", "\\,", "\r\n", "\\n", "\n", "\\n").Replace(strings.ToValidUTF8(s, "?"))
	return strings.Map(func(r rune) rune {
		if r < ' ' && r != '\t' || r == 0x7f {
			return -1
		}
		return r
	}, s)
}

// icsLine is the longest line in octets, without its end (RFC 5545, 3.1).
const icsLine = 75

// line writes a content line, folded before a rune that would not fit.
func (c *icalendar) line(name, value string) {
	rest, room := name+":"+value, icsLine
	for len(rest) > room {
		cut := room
		for !utf8.RuneStart(rest[cut]) {
			cut--
		}
		c.WriteString(rest[:cut] + "\r\n ")
		rest, room = rest[cut:], icsLine-1
	}
	c.WriteString(rest + "\r\n")
}
