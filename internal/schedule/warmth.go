package schedule

import (
	"cmp"
	"slices"
	"strings"

	"dryfit/internal/calendar"
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// surface is what a face itself read.
type surface struct {
	document.SurfaceTemperature
	temps cure.History // none: it is written as unknown
}

// readTemperatures puts what the thermometer said into one history for the room, of the readings and of what was noted with done work, and one for
// each surface.
func (m *maker) readTemperatures() {
	m.temps = history(m.days.Rooms)
	for _, d := range m.days.Done {
		if d.Temp.Known && d.Started.Known {
			m.temps = append(m.temps, cure.Reading{From: unit.Minutes(d.Started.V.At), Temp: d.Temp.V})
		}
	}
	byTime(m.temps)
	for _, s := range m.days.Surfaces {
		m.faces = append(m.faces, surface{s, history(s.Read)})
	}
}

func history(read []document.RoomTemperature) (h cure.History) {
	for _, r := range read {
		from := unit.Minutes(r.From.At)
		if r.First {
			from = 0
		}
		h = append(h, cure.Reading{From: from, Temp: r.Temp})
	}
	byTime(h)
	return h
}

func byTime(h cure.History) {
	slices.SortStableFunc(h, func(a, b cure.Reading) int { return cmp.Compare(a.From, b.From) })
}

// surfaceOf is what was told of the surface of a subject: of an opening, of any of its faces, else of its wall.
func (m *maker) surfaceOf(subject string) (surface, bool) {
	for _, name := range []string{subject, m.wallOf(subject)} {
		i := slices.IndexFunc(m.faces, func(s surface) bool { return name != "" && (s.Face == name || strings.HasPrefix(s.Face, name+" > ")) })
		if i >= 0 {
			return m.faces[i], true
		}
	}
	return surface{}, false
}

// tempsOf is what hardens on a subject has: the colder of the room and the surface. Where nothing is told of the surface it is as warm as the
// room; where that is written as unknown, nothing is known.
func (m *maker) tempsOf(subject string) cure.History {
	s, told := m.surfaceOf(subject)
	switch {
	case !told:
		return m.temps
	case len(s.temps) == 0:
		return nil
	}
	return cure.Coldest(m.temps, s.temps)
}

// changing reports whether any temperature changes, so that a wait depends on when it runs.
func (m *maker) changing() bool {
	return len(m.temps) > 1 || slices.ContainsFunc(m.faces, func(s surface) bool { return len(s.temps) > 1 || len(s.temps) > 0 && len(m.temps) > 0 })
}

// assumeSurfaces lists the faces that are taken to be as warm as the room, where anything hardens on them.
func (m *maker) assumeSurfaces(waits []Wait, tasks []Task) {
	if len(m.temps) == 0 {
		return
	}
	var names []string
	for _, w := range waits {
		name := tasks[w.After].Subject
		if _, told := m.surfaceOf(name); w.AtKnown && !told && m.isFace(name) && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	for _, name := range names {
		m.assume(m.days.At, practice, "the surface of {0} is as warm as the room", diag.T(name))
	}
}

func (m *maker) isFace(name string) bool {
	return slices.ContainsFunc(m.room.Faces, func(f site.Face) bool { return f.Name == name || strings.HasPrefix(f.Name, name+" > ") })
}

// long is how long a wait that begins at a moment takes on its surface.
func (m *maker) long(w wait, from calendar.Moment) unit.Minutes {
	temps := m.tempsOf(w.subject)
	if !w.cement || len(temps) == 0 {
		return w.label.Time
	}
	return cure.Wait(cure.Cement, temps, w.label, unit.Minutes(from))
}

// shortest is how long a wait takes where it is as warm as was ever read: it is never less.
func (m *maker) shortest(w wait, from calendar.Moment) unit.Minutes {
	long, temps := m.waited(w, from), m.tempsOf(w.subject)
	if !w.cement || len(temps) == 0 {
		return long
	}
	_, warmest := temps.Range(0, ever)
	if warm := cure.Wait(cure.Cement, cure.History{{Temp: warmest}}, w.label, 0); warm != cure.Never {
		return min(long, warm)
	}
	return long
}

// ever is after all readings.
const ever unit.Minutes = 1 << 40

// checkWarmth tells of work that is done and hardens where it is colder or warmer than the label allows, in the room or on the surface, or where
// nothing hardens.
func (m *maker) checkWarmth(w wait, task *Task, to calendar.Moment) {
	if long := m.long(w, task.End); long == cure.Never {
		coldest, _ := m.tempsOf(w.subject).Range(unit.Minutes(task.Start), unit.Minutes(to))
		m.found(diag.Stop, "too-cold", task.At, "at {0} nothing hardens after {1}", "heat the room", diag.Temp(coldest), diag.T(task.Name))
		return
	}
	if w.warmth == nil {
		return
	}
	m.allowed(w, task, to, m.temps, "the room")
	s, told := m.surfaceOf(w.subject)
	switch {
	case told && len(s.temps) == 0:
		m.found(diag.Unchecked, "surface-temperature", s.At, "not checked: whether {0} is warm enough for what hardens on it, its temperature is missing", "lay a thermometer on it, and write what it reads", diag.T(s.Face))
	case told:
		m.allowed(w, task, to, s.temps, "the surface")
	}
}

// allowed holds what one thermometer read, from the beginning of the work to the end of the wait, against the label.
func (m *maker) allowed(w wait, task *Task, to calendar.Moment, temps cure.History, what string) {
	if len(temps) == 0 {
		return
	}
	coldest, warmest := temps.Range(unit.Minutes(task.Start), unit.Minutes(to))
	if coldest < w.warmth.from {
		m.found(diag.Look, "below-label", w.warmth.at, "{0} after {1}, {4} at {2}: the label allows no less than {3}", "heat the room and the surface before and while it cures", diag.T(w.what), diag.T(task.Name), diag.Temp(coldest), diag.Temp(w.warmth.from), diag.T(what))
	}
	if warmest > w.warmth.to {
		m.found(diag.Look, "above-label", w.warmth.at, "{0} after {1}, {4} at {2}: the label allows no more than {3}", "cool the room, or work in the morning", diag.T(w.what), diag.T(task.Name), diag.Temp(warmest), diag.Temp(w.warmth.to), diag.T(what))
	}
}
