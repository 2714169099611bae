package schedule

import (
	"slices"
	"strconv"

	"dryfit/internal/calendar"
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Make plans the days of a room. A document that says nothing of days gets none.
func Make(doc document.Room, room site.Room, tiles tiling.Plan) (Plan, diag.List, []diag.Assumption) {
	return (*Known)(nil).Make(doc, room, tiles)
}

// Make plans likewise, and takes what it can from runs before.
func (k *Known) Make(doc document.Room, room site.Room, tiles tiling.Plan) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: doc, known: k, days: doc.Days, room: room, tiles: tiles}
	if !m.days.Given {
		return Plan{}, nil, nil
	}
	p := m.plan()
	return p, m.findings, m.assumed
}

// maker carries one run: its inputs and what it collects.
type maker struct {
	doc   document.Room
	known *Known
	days  document.Days
	room  site.Room
	tiles tiling.Plan

	tasks  []task
	links  []link
	people []person
	now    calendar.Moment
	zero   calendar.Moment // the first tick
	temps  cure.History    // of the room
	faces  []surface       // what faces read that are not as warm as the room

	pending  []pending  // what lies under tile and must dry
	blocks   []block    // floors that nobody may walk on
	promised []promised // what each promise binds

	fewest [len(lacks)]Count // days without each, where the wish for fewer can not be met

	findings diag.List
	assumed  []diag.Assumption
}

// task is a job while the plan is made. Others refer to it by its place in maker.tasks.
type task struct {
	Task
	pieces  []placed // of setting: in order
	allowed uint32   // a bit for each person who may do it
	done    document.Done
	marked  bool            // done says something of it
	there   calendar.Moment // what it needs has come
	implied bool            // it is taken as done because what comes after it is
}

// link keeps two tasks in order.
type link struct {
	from, to int
	wait     *wait        // what hardens between them; nil: nothing
	most     unit.Minutes // to starts at most so long after from ends; 0: at any time
	lapsed   bool         // the window can not be met: it is sanded, or primed anew, first
	again    bool         // it is of a coat that is primed anew already
}

func (m *maker) found(c diag.Class, code string, at diag.Place, text, mend string, values ...diag.Value) {
	m.findings.Add(c, code, at, text, mend, values...)
}

// assume notes a default once.
func (m *maker) assume(at diag.Place, source, text string, values ...diag.Value) {
	a := diag.Assumption{At: at, Text: text, Values: values, Source: source}
	if !slices.ContainsFunc(m.assumed, func(b diag.Assumption) bool {
		return a.At == b.At && a.Text == b.Text && slices.Equal(a.Values, b.Values)
	}) {
		m.assumed = append(m.assumed, a)
	}
}

const practice = "common practice"

// add makes a task of a kind for a subject and gives its place.
func (m *maker) add(k Kind, subject string, at diag.Place, b Basis) int {
	tr, _ := traitOf(k)
	t := task{Task: Task{Kind: k, Subject: subject, At: at, Basis: b, Hands: tr.hands, Shop: tr.shop, Whole: tr.whole, Stops: tr.stops, SignOff: tr.sign}}
	t.Name = nameOf(k, subject, 0)
	t.Work = max(tr.least, m.hours(&t.Task))
	m.tasks = append(m.tasks, t)
	return len(m.tasks) - 1
}

func nameOf(k Kind, subject string, part int) string {
	name := document.JobName(string(k), subject)
	if part > 0 {
		return name + " " + strconv.Itoa(part)
	}
	return name
}

// after puts a task behind another; from < 0 is none.
func (m *maker) after(from, to int) {
	if from >= 0 && to >= 0 && from != to {
		m.links = append(m.links, link{from: from, to: to})
	}
}

// waits puts a task behind another with time between them.
func (m *maker) waits(from, to int, w wait) {
	if from >= 0 && to >= 0 {
		m.links = append(m.links, link{from: from, to: to, wait: &w})
	}
}

// of lists the tasks of some kinds.
func (m *maker) of(kinds ...Kind) []int {
	var out []int
	for i := range m.tasks {
		if slices.Contains(kinds, m.tasks[i].Kind) {
			out = append(out, i)
		}
	}
	return out
}
