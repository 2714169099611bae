package web

import (
	"html/template"
	"net/http"
	"slices"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

var daysPage = pageOf{name: "days", tab: "Days", fill: days, has: speaksOf("days", "lay"), whole: true, dated: true}

// daysBody is what to do on which day.
type daysBody struct {
	Planned     bool
	Behind      string // today's date where the plan counts from an earlier one
	Now         string // as the document would have it
	Next        *dayCard
	Later, Past []dayCard
	Facts       report.Table
	Why, While  []string
	Clips       string
	Chart       template.HTML
	Jobs        report.Table
	Hardening   report.Table
	Asks        []field
	Own, Hands  collection
	Enter       shelves
}

var daysEnter = shelves{Title: "All that the days are planned by", Page: "days", Back: "To the days", Help: "Dates that stand, work of your own, tools that cost by the day, and what happened."}

var daysShelves = []shelf{
	{"days > promises", "Dates that can not be moved", "promise", "rough inspection"},
	{"days > jobs", "Work of your own", "job", "paint the ceiling"},
	{"days > hands", "Who works", "hand", "Kim"},
	{"days > hired", "Hired tools", "hired tool", "wet saw"},
	{"days > done", "What was done", "job", "protect"},
}

// dayCard is a day with the forms that mark its jobs done.
type dayCard struct {
	report.DayCard
	Work []dayWork
}

// Jobs names each job of the day once.
func (c dayCard) Jobs() string {
	var all []string
	for _, w := range c.Work {
		if !slices.Contains(all, w.Job) {
			all = append(all, w.Job)
		}
	}
	return strings.Join(all, ", ")
}

type dayWork struct {
	report.DayWork
	Mark *doneMark
}

// doneMark notes what happened to a job: as planned by one button, or in its own times.
type doneMark struct {
	Label        string
	Quick, Value string // the input that sets the whole entry; none of what is done
	Fields       []field
	Open         bool
}

func days(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{}); err != nil {
		return nil, err
	}
	b := daysBody{Planned: v.Plan.Days.Planned, Enter: v.shelvesOf(daysShelves, daysEnter, r.FormValue("enter"))}
	if b.Enter.Shelf != nil {
		return &frame{Title: "Days", Question: "What do I do today, and what waits on what?", Answer: report.DaysAnswer(v.Plan), Body: b}, nil
	}
	v.askDays(&b)
	if b.Planned {
		if err := v.tellDays(&b); err != nil {
			return nil, err
		}
	}
	return &frame{Title: "Days", Question: "What do I do today, and what waits on what?", Answer: report.DaysAnswer(v.Plan), Body: b}, nil
}

// tellDays words the plan. Here alone there is a clock: the day that it is decides which card stands first.
func (v *view) tellDays(b *daysBody) (err error) {
	now := v.server.now()
	year, month, day := now.Date()
	today, _ := calendar.NewDate(year, int(month), day)
	if today > v.Plan.Days.From.Date() && v.Plan.Days.From < v.Plan.Days.Finish {
		at := today.At(unit.Minutes(now.Hour())*unit.Hour + unit.Minutes(now.Minute()))
		b.Behind, b.Now = today.Say(), at.String()
	}
	for _, c := range report.DayCardsOn(v.Plan, today) {
		card := dayCard{DayCard: c}
		for _, w := range c.Work {
			card.Work = append(card.Work, dayWork{w, v.mark(w)})
		}
		switch c.When {
		case "done":
			b.Past = append(b.Past, card)
		case "":
			b.Later = append(b.Later, card)
		default:
			b.Next = &card
		}
	}
	b.Facts, b.Jobs, b.Hardening = report.DayFacts(v.Plan), report.Jobs(v.Plan), report.Hardening(v.Plan)
	b.Clips = report.ClipWords(v.Plan)
	b.Why, b.While = report.CausesOf(v.Plan), report.MeanwhileOf(v.Plan)
	if chart, ok := sheet.BarsOnScreen(v.Plan); ok {
		b.Chart, err = drawn(chart, "bars")
	}
	return err
}

// mark is the form of a job that ends with a session: what happened, or what was noted of it.
func (v *view) mark(w report.DayWork) *doneMark {
	t := v.Plan.Days.Tasks[w.Task]
	if !w.Last {
		return nil
	}
	path := []string{"days", "done", t.Name}
	entry := &text.Node{Kind: text.Map}
	for _, e := range []struct{ key, value string }{{"started", t.Start.String()}, {"finished", t.End.String()}} {
		entry.Entries = append(entry.Entries, text.Entry{Key: e.key, Value: &text.Node{Kind: text.Scalar, Text: e.value}})
	}
	m := &doneMark{Label: "Done otherwise", Quick: doValue + ":" + pathName(path), Value: text.Flow(entry)}
	if w.Done {
		m.Label, m.Quick = "What was noted", ""
	}
	m.Open = len(v.Refused) > 0 && len(v.about(path)) > 0
	for _, f := range []struct{ key, label, like string }{
		{"started", "Started", t.Start.String()}, {"took", "Took", t.Work.String()}, {"finished", "Finished", t.End.String()}, {"temperature", "The room had", v.sample("62 F", "17 C")},
	} {
		m.Fields = append(m.Fields, v.field(f.label, append(path, f.key)...).like(f.like))
	}
	return m
}

// askDays asks for what the plan of days needs.
func (v *view) askDays(b *daysBody) {
	b.Asks = []field{
		v.field("First day of work", "days", "starts on").like("2026-03-07"),
		v.field("Plan the rest from", "days", "plan from").like("2026-03-09 18:00").help("Empty: from the end of the last thing done."),
		v.list("Hours on weekdays", "days", "hours", "weekdays").like("18:00 to 21:00"),
		v.list("Hours on Saturdays", "days", "hours", "Saturday").like("8:00 to 12:00, 13:00 to 17:00"),
		v.list("Hours on Sundays", "days", "hours", "Sunday").like("none"),
		v.list("Holidays", "days", "holidays").like("2026-04-03, 2026-04-06 to 2026-04-10"),
		v.field("What the room has", "days", "room temperature").like(v.sample("62 F", "17 C")).help("In a colder room cement takes longer than its label says."),
		v.field("How many can work in the room", "days", "room for").like("2"),
		v.list("What else is done", "days", "also").like("WC, basin, tap, mirror"),
		v.field("Days without WC at most", "days", "at most without", "WC").like("9"),
		v.field("Days without water at most", "days", "at most without", "water").like("2"),
	}
	b.Own = v.inDays("jobs", "Jobs of your own", "job", "paint the ceiling", []ask{
		{key: "takes", label: "How long it takes", inches: "3 h", metric: "3 h"}, {key: "hands", label: "How many people", inches: "1", metric: "1"},
		{key: "after", label: "After which job", inches: "grout floor", metric: "grout floor"}, {key: "before", label: "Before which job", inches: "WC", metric: "WC"},
		{key: "waits", label: "How long it dries", inches: "4 h", metric: "4 h"}, {key: "within", label: "What follows begins within", inches: "24 h", metric: "24 h"},
		{key: "place", label: "Where", choices: []string{"room", "shop"}},
	})
	b.Hands = v.inDays("hands", "Who works", "helper", "Robin", []ask{
		{key: "does", label: "Does which jobs", inches: "set, grout", metric: "set, grout", help: "Empty: all."},
	})
}

// inDays is a collection within the days.
func (v *view) inDays(key, title, one, newName string, asks []ask) collection {
	path := []string{"days", key}
	c := collection{Title: title, One: one, Path: pathName(path), NewName: newName}
	if n := text.At(v.Tree, path); n != nil {
		for _, e := range n.Entries {
			at := append(path[:2:2], e.Key)
			t := thing{Name: e.Key, Path: pathName(at), Called: v.rename("Name", at...), Says: v.about(at)}
			for _, a := range asks {
				t.Fields = append(t.Fields, v.dress(v.list(a.label, append(at, a.key)...), a))
			}
			c.Things = append(c.Things, t)
		}
	}
	for _, a := range asks {
		c.Asks = append(c.Asks, v.dress(v.asked(path, a.key, a.label), a))
	}
	if v.Typed["add"] == c.Path {
		c.Name, c.Says, c.Open = v.Typed["new.name"], v.refusals(), true
	}
	return c
}

// Day pairs the frame with a card, for a template of both.
func (f *frame) Day(c any) any {
	card, ok := c.(dayCard)
	if p, is := c.(*dayCard); is {
		card, ok = *p, true
	}
	if !ok {
		return nil
	}
	return struct {
		Frame *frame
		Card  dayCard
	}{f, card}
}
