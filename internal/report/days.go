package report

import (
	"fmt"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
	"dryfit/internal/unit"
)

// DaysAnswer says when all is done, and how sure that is.
func DaysAnswer(p plan.Plan) string {
	d := p.Days
	switch {
	case !p.Document.Days.Given:
		return "No days are planned: the document does not say when you work."
	case !d.Planned:
		return "No days could be planned; see the findings."
	case d.Optimal:
		return "All is done on " + d.Finish.Say() + ". No plan ends earlier."
	}
	return "All is done on " + d.Finish.Say() + ". It is proven that no plan ends before " + d.Bound.Say() + "; whether one ends between is not."
}

// DayFacts are what the days come to.
func DayFacts(p plan.Plan) Table {
	d := p.Days
	t := Table{Title: "What it comes to", Columns: text("", "Days", "At the least", "When"), Empty: "No days are planned."}
	if !d.Planned {
		return t
	}
	t.Columns = numbers(t.Columns, 1, 2)
	add := func(what string, c schedule.Count, when string) {
		t.Rows = append(t.Rows, []string{what, fmt.Sprint(c.Days), fmt.Sprint(c.Least), when})
	}
	add("with work in the room, from here on", d.Trips, "")
	for _, h := range d.Hires {
		add(h.Tool+", hired", h.Count, h.From.Say()+" to "+h.To.Say())
	}
	for _, l := range d.Lacks {
		add("without "+l.What+limitWords(l), l.Count, datesWords(l.Dates))
	}
	return t
}

func limitWords(l schedule.Lack) string {
	if l.Limit < 0 {
		return ""
	}
	return fmt.Sprintf(" (at most %d)", l.Limit)
}

// datesWords tells a run of dates by its ends, single ones each.
func datesWords(dates []calendar.Date) string {
	var out []string
	for i := 0; i < len(dates); {
		j := i
		for j+1 < len(dates) && dates[j+1] == dates[j]+1 {
			j++
		}
		if j > i {
			out = append(out, dates[i].Say()+" to "+dates[j].Say())
		} else {
			out = append(out, dates[i].Say())
		}
		i = j + 1
	}
	return strings.Join(out, "; ")
}

// ClipWords tells how many stems and caps of leveling clips have to be there; "" where none are used.
func ClipWords(p plan.Plan) string {
	c, ok := Clips(p)
	if !ok {
		return ""
	}
	return fmt.Sprintf("Leveling clips still to set: %d stems, which are used up; %d caps at one time, which come back when a wall is stripped.", c.Stems, c.Caps)
}

// Jobs lists every job by start.
func Jobs(p plan.Plan) Table {
	t := Table{Title: "Jobs", Columns: numbers(text("Job", "Work", "From", "To", "Who", "Can wait", "State"), 1), Empty: "No days are planned."}
	for _, j := range p.Days.Tasks {
		t.Rows = append(t.Rows, []string{j.Name, j.Work.String(), j.Start.Say(), j.End.Say(), WhoWords(j), slackWords(j), j.State.String()})
	}
	return t
}

// WhoWords names everybody who works on a job.
func WhoWords(j schedule.Task) string {
	var names []string
	for _, s := range j.Sessions {
		for _, w := range s.Who {
			if !contains(names, w) {
				names = append(names, w)
			}
		}
	}
	return list(names)
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

func slackWords(j schedule.Task) string {
	switch {
	case j.State != schedule.Planned:
		return ""
	case j.Slack == 0:
		return "no"
	}
	return j.Slack.String()
}

// Hardening lists what runs on the clock.
func Hardening(p plan.Plan) Table {
	t := Table{Title: "What hardens, dries or stands", Columns: text("After", "What", "From", "Until", "Said", "Here", "Source"), Empty: "Nothing hardens."}
	for _, w := range p.Days.Waits {
		t.Rows = append(t.Rows, []string{p.Days.Tasks[w.After].Name, w.What, w.From.Say(), w.To.Say(), saidWords(p, w), hereWords(p, w), w.Source})
	}
	return t
}

func saidWords(p plan.Plan, w schedule.Wait) string {
	s := w.Label.Time.String()
	if w.AtKnown {
		s += " at " + p.Style.Temperature(w.Label.At)
	}
	return s
}

// hereWords is how long it takes in this room.
func hereWords(p plan.Plan, w schedule.Wait) string {
	long := w.To.Since(w.From)
	switch {
	case !w.AtKnown:
		return long.String()
	case !w.Measured:
		return long.String() + ": the room's temperature is not known"
	case w.Slower:
		return long.Hours() + " at " + p.Style.Temperature(w.Coldest)
	}
	return long.String() + " at " + p.Style.Temperature(w.Coldest)
}

// CausesOf tells the chain of causes, one sentence a link, from the first to the last.
func CausesOf(p plan.Plan) []string {
	var out []string
	for _, l := range p.Days.Chain {
		out = append(out, capitalized(p.Days.Tasks[l.Task].Name)+": "+causeWords(p, l)+".")
	}
	return out
}

func capitalized(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func causeWords(p plan.Plan, l schedule.Link) string {
	d := p.Days
	from := ""
	if l.From >= 0 {
		from = d.Tasks[l.From].Name
	}
	switch l.Why {
	case schedule.AsHappened:
		return "it was begun on " + d.Tasks[l.Task].Start.Say()
	case schedule.ForHours:
		return "nobody who may do it has hours earlier"
	case schedule.ByPromise:
		return "it waits for a date that is promised"
	case schedule.AfterTask:
		return "it comes after " + from + hoursWords(l)
	case schedule.AfterWait:
		return waitWords(d, l, from) + hoursWords(l)
	case schedule.WithinWait:
		return "it may not be long before " + from
	case schedule.ForHands:
		return "all hands are at " + from + hoursWords(l)
	case schedule.ForSpace:
		return "the room is full until " + from + " is done" + hoursWords(l)
	case schedule.ForAnything:
		return "it could be a little earlier, and the finish would be the same"
	}
	return "nothing is earlier"
}

func waitWords(d schedule.Plan, l schedule.Link, from string) string {
	if l.Wait < 0 {
		return "it waits for what hardens after " + from
	}
	w := d.Waits[l.Wait]
	return fmt.Sprintf("after %s %s for %s", from, w.What, w.To.Since(w.From).Hours())
}

// hoursWords tells of the time in which it waits for hours alone.
func hoursWords(l schedule.Link) string {
	if l.Idle > 0 {
		return ", and then there are no hours for " + l.Idle.String()
	}
	return ""
}

// MeanwhileOf tells what there is to do while something hardens, where that is half a day or more.
func MeanwhileOf(p plan.Plan) []string {
	var out []string
	for _, w := range p.Days.Waits {
		if w.To.Since(w.From) < 12*unit.Hour || w.From < p.Days.From {
			continue
		}
		var names []string
		for _, j := range w.Meanwhile {
			names = append(names, p.Days.Tasks[j].Name)
		}
		if len(names) > 0 {
			out = append(out, fmt.Sprintf("While %s after %s, until %s: %s.", w.What, p.Days.Tasks[w.After].Name, w.To.Say(), list(names)))
		}
	}
	return out
}
