package schedule

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
)

// thing is what is built or put in at the end.
type thing struct {
	kind string // as the words of `also`
	name string
	at   diag.Place
}

// things lists what the document has to be put in: first what it describes, then what `also` adds.
func (m *maker) things() []thing {
	all := m.described()
	for _, n := range m.days.Also {
		if !slices.ContainsFunc(all, func(t thing) bool { return t.kind == n.Text }) {
			all = append(all, thing{n.Text, "", n.At})
		}
	}
	return all
}

// ends are the tasks that several others come after.
type ends struct {
	clean, floor []int // the haze is off: everywhere, on the floor
	cabinet, top []int // put in
	basin        []int
	wet          []int // water can run through
}

// put makes the jobs of everything that is built in the shop and put in the room.
func (m *maker) put(tiled []*subject) {
	e := ends{clean: m.of(Clean)}
	for _, s := range tiled {
		if s.floor {
			e.floor = append(e.floor, s.last)
		}
	}
	all := m.things()
	for _, do := range []struct {
		kind string
		make func(thing, *ends)
	}{
		{"cabinet", m.cabinet}, {"top", m.top}, {"basin", m.basin}, {"tap", m.tap}, {"WC", m.wc}, {"mirror", m.mirror}, {"trim", m.trim},
		{"shelf", m.fixed}, {"fan", m.fixed}, {"lights", m.fixed}, {"radiator", m.fixed}, {"shower", m.fixed}, {"door", m.fixed},
	} {
		for _, t := range all {
			if t.kind == do.kind {
				do.make(t, &e)
			}
		}
	}
	m.silicone(tiled, &e)
	m.tests(&e)
}

// subjectOf is the name of a thing, or its kind where it has none and the kind of job does not say it.
func (t thing) subject(said bool) string {
	if t.name != "" || said {
		return t.name
	}
	return t.kind
}

func (m *maker) behind(from []int, to int) {
	for _, f := range from {
		m.after(f, to)
	}
}

// coats is how many coats wood gets where no label says it (common practice).
const coats = 3

// finishWood makes the coats of a thing, each in its window after the one before.
func (m *maker) finishWood(t thing, after int) int {
	n := m.coatsOf(t)
	for i := 1; i <= n; i++ {
		c := m.add(Coat, t.subject(false), t.at, Basis{})
		m.tasks[c].Part, m.tasks[c].Name = i, nameOf(Coat, t.subject(false), i)
		w := m.waitFor(toRecoat, t.subject(false))
		if i == 1 {
			m.after(after, c)
		} else {
			m.links = append(m.links, link{from: after, to: c, wait: &w, most: m.recoatUntil(t)})
		}
		after = c
	}
	return after
}

func (m *maker) cabinet(t thing, e *ends) {
	build := m.add(Cabinet, t.subject(true), t.at, Basis{})
	glue := m.waitFor(toUnclamp, t.subject(false))
	first := len(m.tasks)
	last := m.finishWood(t, -1)
	m.waits(build, first, glue)
	in := m.add(Install, t.subject(false), t.at, Basis{})
	m.waits(last, in, m.waitFor(toUse, t.subject(false)))
	m.behind(e.clean, in)
	m.behind(e.floor, in)
	e.cabinet = append(e.cabinet, in)
}

func (m *maker) top(t thing, e *ends) {
	name := t.subject(false)
	glue := m.add(GlueUp, name, t.at, Basis{})
	scribe := m.add(Scribe, name, t.at, Basis{}) // at the tiled wall, before the holes are cut
	m.waits(glue, scribe, m.waitFor(toUnclamp, name))
	m.behind(e.clean, scribe)
	m.behind(e.cabinet, scribe)
	cut := m.add(CutOuts, name, t.at, Basis{})
	m.after(scribe, cut)
	last := m.finishWood(t, cut)
	in := m.add(Install, name, t.at, Basis{})
	m.waits(last, in, m.waitFor(toUse, name))
	e.top = append(e.top, in)
}

func (m *maker) basin(t thing, e *ends) {
	b := m.add(Basin, t.subject(true), t.at, Basis{})
	m.behind(e.clean, b)
	m.behind(e.cabinet, b)
	m.behind(e.top, b)
	e.basin = append(e.basin, b)
	e.wet = append(e.wet, b)
}

func (m *maker) tap(t thing, e *ends) {
	b := m.add(Tap, t.subject(true), t.at, Basis{})
	m.behind(e.clean, b)
	m.behind(e.basin, b)
	e.wet = append(e.wet, b)
}

func (m *maker) wc(t thing, e *ends) {
	b := m.add(WC, t.subject(true), t.at, Basis{})
	m.behind(e.clean, b)
	m.behind(e.floor, b)
	e.wet = append(e.wet, b)
}

func (m *maker) mirror(t thing, e *ends) {
	b := m.add(Mirror, t.subject(true), t.at, Basis{})
	m.behind(e.clean, b)
	m.behind(e.basin, b)
}

func (m *maker) trim(t thing, e *ends) {
	if walls, ok := m.ledgerOn(t.name); ok {
		m.ledger(t, walls)
		return
	}
	b := m.add(Trim, t.subject(true), t.at, Basis{})
	m.behind(e.clean, b)
	m.behind(e.floor, b)
	m.behind(e.cabinet, b)
}

// ledgerOn are the walls that a trim holds tile up on while it is set; false of any other trim.
func (m *maker) ledgerOn(name string) ([]document.Name, bool) {
	for _, t := range m.doc.Trim {
		if t.Name == name && t.Kind == document.Ledger {
			return t.Along, true
		}
	}
	return nil, false
}

// ledger goes up on the board of its walls, before their first course.
func (m *maker) ledger(t thing, walls []document.Name) {
	up := m.add(Ledger, t.subject(true), t.at, Basis{})
	for i := range m.tasks {
		on := slices.ContainsFunc(walls, func(n document.Name) bool { return n.Text == m.tasks[i].Subject })
		switch {
		case !on:
		case m.tasks[i].Kind == Board || m.tasks[i].Kind == Membrane:
			m.after(i, up)
		case m.tasks[i].Kind == Set && m.tasks[i].Part <= 1:
			m.after(up, i)
		}
	}
}

func (m *maker) fixed(t thing, e *ends) {
	b := m.add(Fix, t.subject(false), t.at, Basis{})
	m.behind(e.clean, b)
	if t.kind == "fan" || t.kind == "lights" {
		m.tasks[b].Stops = power
	}
	if t.kind == "radiator" || t.kind == "shower" {
		m.tasks[b].Stops = water
		e.wet = append(e.wet, b)
	}
}

// silicone fills the soft joints once the grout beside them is clean and what stands on them is in.
func (m *maker) silicone(tiled []*subject, e *ends) {
	if len(tiled) == 0 {
		return
	}
	s := m.add(Silicone, "", m.doc.Setting.At, Basis{Length: m.softLength()})
	m.behind(e.clean, s)
	m.behind(e.cabinet, s)
	m.behind(e.top, s)
	m.behind(e.basin, s)
}

// tests lets water run when the sealant has cured, and sweeps up when all else is done.
func (m *maker) tests(e *ends) {
	if len(e.wet) > 0 {
		t := m.add(WasteTest, "", m.days.At, Basis{})
		m.behind(e.wet, t)
		for _, s := range m.of(Silicone) {
			m.waits(s, t, m.waitFor(toWet, ""))
		}
	}
}

// frame puts protection first and cleaning last.
func (m *maker) frame() {
	in, out := make([]bool, len(m.tasks)), make([]bool, len(m.tasks))
	for _, l := range m.links {
		out[l.from] = true
		in[l.to] = in[l.to] || !m.tasks[l.from].Shop
	}
	n := len(m.tasks)
	protect, clean := m.add(Protect, "", m.days.At, Basis{}), m.add(FinalClean, "", m.days.At, Basis{})
	for i := range n {
		if !in[i] && !m.tasks[i].Shop {
			m.after(protect, i)
		}
		if !out[i] {
			m.after(i, clean)
		}
	}
}
