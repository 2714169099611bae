package schedule

import (
	"fmt"
	"math/bits"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// person is somebody who works.
type person struct {
	name  string
	at    diag.Place
	hours calendar.Hours
}

// mostPeople keeps a set of them in the bits of a word, and the sets that compete few.
const mostPeople = 12

// usualHours is what is taken where the document gives no hours: evenings and Saturdays.
var usualHours = func() calendar.Hours {
	var h calendar.Hours
	for w := calendar.Monday; w <= calendar.Friday; w++ {
		h.Week[w] = []calendar.Span{{From: 18 * unit.Hour, To: 21 * unit.Hour}}
	}
	h.Week[calendar.Saturday] = []calendar.Span{{From: 8 * unit.Hour, To: 17 * unit.Hour}}
	return h
}()

// readPeople lists who works, and when.
func (m *maker) readPeople() {
	base := m.days.Hours.Hours
	if !m.days.Hours.Given {
		base = usualHours
		m.assume(m.days.At, practice, "work is done on weekdays 18:00 to 21:00 and Saturdays 8:00 to 17:00")
	}
	for _, h := range m.days.Hands {
		hours := base
		if h.Hours.Given {
			hours = h.Hours.Hours
		}
		m.people = append(m.people, person{h.Name, h.At, m.withHolidays(hours)})
	}
	if len(m.people) == 0 {
		m.people = []person{{"you", m.days.At, m.withHolidays(base)}}
	}
	if len(m.people) > mostPeople {
		m.found(diag.Look, "hands-many", m.days.At, "more than {0} people are named; the others are left out", "name those who work in the room", diag.N(mostPeople))
		m.people = m.people[:mostPeople]
	}
}

func (m *maker) withHolidays(h calendar.Hours) calendar.Hours {
	out := calendar.Hours{Week: h.Week, Except: h.Except[:len(h.Except):len(h.Except)]}
	for _, f := range m.days.Holidays {
		for d := f.From; d <= f.To; d++ {
			out.Except = append(out.Except, calendar.Exception{On: d})
		}
	}
	return out
}

// allow gives each task the set of people who may do it.
func (m *maker) allow() {
	all := uint32(1)<<len(m.people) - 1
	for i := range m.tasks {
		m.tasks[i].allowed = all
	}
	for p, h := range m.days.Hands[:min(len(m.days.Hands), len(m.people))] {
		if len(h.Does) > 0 {
			m.narrow(p, h.Does)
		}
	}
	for _, j := range m.days.Own {
		if me := m.named(j.Name); len(me) > 0 && len(j.By) > 0 {
			m.tasks[me[0]].allowed &= m.setOf(j.By)
		}
	}
	m.somebody()
}

// narrow takes a person off every job that is not among those that this person does.
func (m *maker) narrow(p int, does []document.Name) {
	may := map[int]bool{}
	for _, n := range does {
		for _, i := range m.refers(n) {
			may[i] = true
		}
	}
	for i := range m.tasks {
		if !may[i] {
			m.tasks[i].allowed &^= 1 << p
		}
	}
}

func (m *maker) setOf(names []document.Name) (set uint32) {
	for _, n := range names {
		for p := range m.people {
			if m.people[p].name == n.Text {
				set |= 1 << p
			}
		}
	}
	return set
}

// somebody tells of tasks that nobody may do, or that need more hands than there are. They are planned all the same, by
// everybody, and with the hands that there are, so that the rest can be seen.
func (m *maker) somebody() {
	var alone []*task
	for i := range m.tasks {
		t := &m.tasks[i]
		if t.State == Done {
			continue
		}
		if t.allowed == 0 {
			alone = append(alone, t)
			t.allowed = uint32(1)<<len(m.people) - 1
		}
		if n := bits.OnesCount32(t.allowed); t.Hands > n {
			m.found(diag.Look, "hands-few", t.At, "{0} takes {1} people, and {2} may do it", "name a helper under hands, with the helper's hours", diag.T(t.Name), diag.N(t.Hands), diag.N(n))
			t.Hands = n
		}
	}
	if len(alone) > 0 {
		m.found(diag.Stop, "nobody", m.placeOf(alone), "nobody may do {0}", "let somebody do it: add it to does, or take does out", diag.T(few(alone)))
	}
}

// placeOf is where a finding on several tasks points: at the one task, or where the days are told.
func (m *maker) placeOf(tasks []*task) diag.Place {
	if len(tasks) == 1 && tasks[0].At.Path != "" {
		return tasks[0].At
	}
	return m.days.At
}

// few names the first few of many tasks.
func few(tasks []*task) string {
	const named = 4
	var all []string
	for _, t := range tasks[:min(len(tasks), named)] {
		all = append(all, t.Name)
	}
	if rest := len(tasks) - named; rest > 0 {
		all = append(all, fmt.Sprintf("%d more", rest))
	}
	if last := len(all) - 1; last > 0 {
		return strings.Join(all[:last], ", ") + " and " + all[last]
	}
	return strings.Join(all, "")
}
