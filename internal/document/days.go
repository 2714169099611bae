package document

import (
	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Days is when and by whom the work is done, and what has been done.
type Days struct {
	Given    bool
	At       diag.Place
	Starts   Value[calendar.Date]
	Now      Value[Moment] // `plan from`
	Hours    WorkHours
	Holidays []Holiday
	Hands    []Hand
	RoomFor  Value[int]
	Pace     []Pace
	Reach    Value[unit.Length] // `height a day`
	Rooms    []RoomTemperature
	Surfaces []SurfaceTemperature
	Also     []Name // further standard jobs
	Own      []Job  // `jobs`
	Done     []Done
	Promises []Promise
	Without  Without
	Hired    []Hired
}

// Hand is a person who works.
type Hand struct {
	Name  string
	At    diag.Place
	Hours WorkHours
	Does  []Name // kinds of job, or jobs; silent: all
}

// RoomTemperature is what a thermometer in the room read, until the next reading.
type RoomTemperature struct {
	From  Moment
	Temp  unit.Temperature
	First bool // it holds from the beginning
	At    diag.Place
}

// Job is work of the user's own.
type Job struct {
	Name   string
	At     diag.Place
	Takes  Value[unit.Minutes]
	Hands  Value[int]
	By     []Name
	After  []Name
	Before []Name
	Waits  Value[unit.Minutes] // before what comes after it may begin
	Within Value[unit.Minutes] // what comes after it begins at the latest
	Shop   Value[bool]         // it is done outside of the room
	InOne  Value[bool]         // `in one go`
	Stops  []Name              // `without`: WC, water, power
	SignBy Value[string]       // `signed off by`
}

// Done is what happened to a job. Its name says which.
type Done struct {
	Name     string
	At       diag.Place
	Started  Value[Moment]
	Took     Value[unit.Minutes]
	Finished Value[Moment]
	Temp     Value[unit.Temperature]
}

// Promise is something with a date that cannot be moved: a delivery, an inspection.
type Promise struct {
	Name   string
	At     diag.Place
	On     Value[Moment]
	After  []Name // jobs that are done by then
	Before []Name // jobs that begin after it
}

// Without is how many days in all the only bathroom may lack something.
type Without struct {
	At               diag.Place
	WC, Water, Power Value[int]
}

// Hired is a tool that costs by the day.
type Hired struct {
	Name string
	At   diag.Place
	For  []Name
}

var days = record("when and by whom the work is done, and what has been done", func(d *Days, at diag.Place) { d.At, d.Given = at, true },
	fact("starts on", "the first day of work", day, func(d *Days) *Value[calendar.Date] { return &d.Starts }).like("2026-03-07"),
	fact("plan from", "from when on the rest is planned anew", moment, func(d *Days) *Value[Moment] { return &d.Now }).unless("from the end of the last thing done").like("2026-03-09 18:00"),
	part("hours", "the hours in which you work", workHours, func(d *Days) *WorkHours { return &d.Hours }).unless("Saturday 8:00 to 17:00 and weekdays 18:00 to 21:00").like("{weekdays: 18:00 to 21:00, Saturday: [8:00 to 12:00, 13:00 to 17:00]}"),
	part("holidays", "dates on which nobody works", list(holiday), func(d *Days) *[]Holiday { return &d.Holidays }).unless("none").like("[2026-04-03, 2026-04-06 to 2026-04-10]"),
	part("hands", "who works, by name", named("hand", hand, func(h *Hand, e text.Entry) { h.Name, h.At = e.Key, e.At }), func(d *Days) *[]Hand { return &d.Hands }).unless("you alone").like("{me: {does: [set]}}"),
	fact("room for", "how many can work in the room at once", count("a whole number from 1", 1, 20), func(d *Days) *Value[int] { return &d.RoomFor }).unless("2").like("2"),
	part("pace", "how fast you are, by the kind of job", paces, func(d *Days) *[]Pace { return &d.Pace }).unless("common practice").like("{set: 1.2 h/m2, grout: 30 sq ft/h, WC: 2 h}"),
	fact("height a day", "how high a wall may be set in one day before the lowest courses must have hardened", length(over), func(d *Days) *Value[unit.Length] { return &d.Reach }).unless("50 in (1270 mm), common practice").like("48"),
	part("room temperature", "what the room has, or by date what it read", roomTemperature, func(d *Days) *[]RoomTemperature { return &d.Rooms }).like("{2026-03-07: 62 F, 2026-03-14: 54 F}"),
	part("surface temperature", "what a wall or the floor itself has where it is not what the room has: a cold outside wall, a heated floor; or by date what it read", surfaceTemperatures, func(d *Days) *[]SurfaceTemperature { return &d.Surfaces }).unless("as warm as the room").like("{window wall: 50 F}"),
	part("also", "what else is done that the rest of the document does not tell", list(also), func(d *Days) *[]Name { return &d.Also }).unless("nothing").like("[WC, basin, tap, mirror]"),
	part("jobs", "work of your own, by name", named("job", job, func(j *Job, e text.Entry) { j.Name, j.At = e.Key, e.At }), func(d *Days) *[]Job { return &d.Own }).unless("none").like("{paint the ceiling: {takes: 3 h}}"),
	part("done", "what happened, by the name of the job", named("job", done, func(d *Done, e text.Entry) { d.Name, d.At = e.Key, e.At }), func(d *Days) *[]Done { return &d.Done }).unless("nothing yet").like("{protect: {started: 2026-03-07 8:00, took: 1 h}}"),
	part("promises", "what has a date that can not be moved, by name", named("promise", promise, func(p *Promise, e text.Entry) { p.Name, p.At = e.Key, e.At }), func(d *Days) *[]Promise { return &d.Promises }).unless("none").like("{rough inspection: {on: 2026-03-12 9:00}}"),
	part("at most without", "on how many days in all the WC, water or power may be off; the plan keeps to it, also where it ends later for it", withoutForm, func(d *Days) *Without { return &d.Without }).unless("as few as the earliest finish allows").like("{WC: 9, water: 2}"),
	part("hired", "tools that cost by the day, by name", named("tool", hired, func(h *Hired, e text.Entry) { h.Name, h.At = e.Key, e.At }), func(d *Days) *[]Hired { return &d.Hired }).unless("none").like("{wet saw: {for: [set]}}"),
)

var hand = record("a person who works", func(h *Hand, at diag.Place) { h.At = at },
	part("hours", "the hours of this person", workHours, func(h *Hand) *WorkHours { return &h.Hours }).unless("as `hours` says").like("{Saturday: 9:00 to 16:00}"),
	part("does", "jobs, or kinds of job, that this person does", list(jobName), func(h *Hand) *[]Name { return &h.Does }).unless("all").like("[set, grout]"),
)

var job = record("work of your own", func(j *Job, at diag.Place) { j.At = at },
	fact("takes", "how long it takes", lasting, func(j *Job) *Value[unit.Minutes] { return &j.Takes }).must().like("3 h"),
	fact("hands", "how many people it takes", count("a whole number", 0, 20), func(j *Job) *Value[int] { return &j.Hands }).unless("1").like("2"),
	part("by", "who may do it", list(called("hand")), func(j *Job) *[]Name { return &j.By }).unless("anyone").like("[me]"),
	part("after", "jobs that are done before it begins", list(jobName), func(j *Job) *[]Name { return &j.After }).unless("nothing").like("[grout basin wall]"),
	part("before", "jobs that begin after it", list(jobName), func(j *Job) *[]Name { return &j.Before }).unless("nothing").like("[WC]"),
	fact("waits", "how long it dries or hardens before what comes after it", lasting, func(j *Job) *Value[unit.Minutes] { return &j.Waits }).unless("not at all").like("4 h"),
	fact("within", "when at the latest what comes after it begins, counted from its end", lasting, func(j *Job) *Value[unit.Minutes] { return &j.Within }).unless("at any time").like("24 h"),
	fact("place", "whether it fills the room or is done in the shop", choice("room or shop", word[bool]{"room", false}, word[bool]{"shop", true}), func(j *Job) *Value[bool] { return &j.Shop }).unless("room").like("shop"),
	fact("in one go", "whether it can not be interrupted overnight", yesNo, func(j *Job) *Value[bool] { return &j.InOne }).unless("no").like("yes"),
	part("takes away", "what there is not from its start until its end", list(utility), func(j *Job) *[]Name { return &j.Stops }).unless("nothing").like("[water]"),
	fact("signed off by", "who must look at it before work goes on", words, func(j *Job) *Value[string] { return &j.SignBy }).unless("nobody").like("inspector"),
)

var done = record("what happened to a job", func(d *Done, at diag.Place) { d.At = at },
	fact("started", "when it was started", moment, func(d *Done) *Value[Moment] { return &d.Started }).like("2026-03-07 8:30"),
	fact("took", "how long the work took", lasting, func(d *Done) *Value[unit.Minutes] { return &d.Took }).like("3 h"),
	fact("finished", "when it was finished", moment, func(d *Done) *Value[Moment] { return &d.Finished }).like("2026-03-07 11:30"),
	fact("temperature", "what the room had", roomDegrees, func(d *Done) *Value[unit.Temperature] { return &d.Temp }).unless("as `room temperature` says").like("54 F"),
)

var promise = record("something with a date that can not be moved", func(p *Promise, at diag.Place) { p.At = at },
	fact("on", "when it is", moment, func(p *Promise) *Value[Moment] { return &p.On }).must().like("2026-03-12 9:00"),
	part("after", "jobs that must be done by then", list(jobName), func(p *Promise) *[]Name { return &p.After }).unless("nothing").like("[pressure test]"),
	part("before", "jobs that wait for it", list(jobName), func(p *Promise) *[]Name { return &p.Before }).unless("nothing").like("[board]"),
)

var withoutForm = record("days in all without something", func(w *Without, at diag.Place) { w.At = at },
	fact("WC", "days on which no WC is in place at night", count("a whole number", 0, 366), func(w *Without) *Value[int] { return &w.WC }).like("9"),
	fact("water", "days on which the water is off", count("a whole number", 0, 366), func(w *Without) *Value[int] { return &w.Water }).like("2"),
	fact("power", "days on which the power is off", count("a whole number", 0, 366), func(w *Without) *Value[int] { return &w.Power }).like("1"),
)

var hired = record("a tool that costs by the day", func(h *Hired, at diag.Place) { h.At = at },
	part("for", "the jobs, or kinds of job, that need it", list(jobName), func(h *Hired) *[]Name { return &h.For }).must().like("[set basin wall, set floor]"),
)

// jobName reads the name of a job or of a kind of job. Which there are follows from the whole plan, so the schedule looks them up.
var jobName = form[Name]{words.shape, func(r *reader, n *text.Node) (Name, bool) {
	s, ok := words.read(r, n)
	return Name{s, n.At}, ok
}}

// placed makes a choice of words remember where it stands.
func placed(f form[string]) form[Name] {
	return form[Name]{f.shape, func(r *reader, n *text.Node) (Name, bool) {
		s, ok := f.read(r, n)
		return Name{s, n.At}, ok
	}}
}

func meaning(texts ...string) []word[string] {
	out := make([]word[string], len(texts))
	for i, t := range texts {
		out[i] = word[string]{t, t}
	}
	return out
}

// alsoWords are jobs of which nothing else in a document may tell.
var alsoWords = []string{"WC", "basin", "tap", "mirror", "cabinet", "top", "trim", "shelf", "fan", "lights", "radiator", "shower", "door"}

var also = placed(choice("one of the jobs that most rooms have", meaning(alsoWords...)...))

var utility = placed(choice("WC, water or power", meaning("WC", "water", "power")...))

// roomTemperature reads one temperature, or temperatures by date.
var roomTemperature = form[[]RoomTemperature]{
	&shape{kind: eitherShape, say: "a temperature: 62 F, or temperatures by date", any: []*shape{roomDegrees.shape, {kind: namedShape, say: "by date: a temperature", names: "date", item: roomDegrees.shape}}},
	readRoomTemperature,
}

func readRoomTemperature(r *reader, n *text.Node) ([]RoomTemperature, bool) {
	if n.Kind != text.Map {
		t, ok := roomDegrees.read(r, n)
		return []RoomTemperature{{Temp: t, First: true, At: n.At}}, ok
	}
	var all []RoomTemperature
	for _, e := range n.Entries {
		key := &text.Node{Kind: text.Scalar, Text: e.Key, At: e.At}
		if e.Value.Kind == text.Empty {
			r.empty(e, row{name: e.Key, shape: roomDegrees.shape})
			continue
		}
		if isUnknown(e.Value) {
			r.unknown(e.Value, "the temperature of "+e.Key)
			continue
		}
		from, ok1 := moment.read(r, key)
		if t, ok2 := roomDegrees.read(r, e.Value); ok1 && ok2 {
			all = append(all, RoomTemperature{From: from, Temp: t, At: e.At})
		}
	}
	return all, len(all) > 0
}
