package schedule

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// pace is the user's own speed at a kind of job, else the default, which is told.
func (m *maker) pace(k Kind) (document.Speed, bool) {
	for _, p := range m.days.Pace {
		if sameName(p.Kind, string(k)) && p.Speed.Known {
			return p.Speed.V, true
		}
	}
	tr, _ := traitOf(k)
	m.assume(m.days.At, practice, "the pace of {0} is taken as {1}: tell your own under pace", diag.T(string(k)), diag.T(m.sayPace(tr.speed)))
	return tr.speed, false
}

// sayPace words a speed in the document's units.
func (m *maker) sayPace(s document.Speed) string {
	inches := m.doc.Units == unit.Inches
	at := func(share float64) string {
		return unit.Minutes(math.Floor(float64(s.Seconds)*share/60 + 0.5)).String()
	}
	switch {
	case s.Of == document.PerArea && inches:
		return at(squareFoot*10) + " for 10 sq ft"
	case s.Of == document.PerArea:
		return at(1) + " for a square meter"
	case s.Of == document.PerLength && inches:
		return at(foot*10) + " for 10 ft"
	case s.Of == document.PerLength:
		return at(1) + " for a meter"
	}
	return at(1)
}

// 16 CFR 500.19: a foot is 0.3048 m.
const (
	foot       = 0.3048
	squareFoot = foot * foot
)

// hours reckons the work of a task from what there is of it, to the minute, rounded half up.
func (m *maker) hours(t *Task) unit.Minutes {
	speed, own := m.pace(t.Kind)
	t.Basis.Speed, t.Basis.OwnPace = speed, own
	seconds := float64(speed.Seconds)
	switch speed.Of {
	case document.PerArea:
		seconds *= t.Basis.Area.M2()
	case document.PerLength:
		seconds *= t.Basis.Length.MM() / 1000
	}
	seconds += m.times(Cut, t.Basis.Cuts) + m.times(Drill, t.Basis.Holes)
	return unit.Minutes(math.Floor(seconds/60 + 0.5))
}

// times is the seconds for so many cuts or holes.
func (m *maker) times(k Kind, n int) float64 {
	if n == 0 {
		return 0
	}
	speed, _ := m.pace(k)
	return float64(n) * float64(speed.Seconds)
}

// checkPaces tells of paces for kinds that are none, or that count what the job has not.
func (m *maker) checkPaces() {
	for _, p := range m.days.Pace {
		tr, ok := traitNamed(p.Kind)
		switch {
		case !ok:
			m.stray(p.At, "kind of job", p.Kind, kindNames())
		case p.Speed.Known && p.Speed.V.Of != document.Each && p.Speed.V.Of != tr.speed.Of:
			m.found(diag.Stop, "pace-of", p.Speed.At, "the pace of {0} can not be for an area or a length of that kind", "write it like this: {1}",
				diag.T(p.Kind), diag.T(m.sayPace(tr.speed)))
		}
	}
}

func traitNamed(name string) (trait, bool) {
	for _, t := range traits {
		if sameName(string(t.kind), name) {
			return t, true
		}
	}
	return trait{}, false
}

func kindNames() []string {
	out := make([]string, len(traits))
	for i, t := range traits {
		out[i] = string(t.kind)
	}
	return out
}
