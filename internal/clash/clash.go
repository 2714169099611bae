// Package clash holds the envelopes of all trades against each other: screws against joints of tile and against what is in the wall, plumbing
// against shelves, drawers and panels, drawers and doors against what stands in their way. It knows no trade: it takes envelopes and gives
// meetings, each with how near two things come, and the cut-outs that clear plumbing out of drawers.
package clash

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/rule"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Meeting is what two things do where they come near each other.
type Meeting struct {
	ID     string // stable: the owners' paths and names
	At     diag.Place
	One    string // names
	Other  string
	What   string      // template over {0} and {1}, the names: "{0} to {1}"
	Apart  unit.Length // less than nothing: they share room
	Need   unit.Length // how far apart they must be
	Misses bool
	Class  diag.Class // of the finding, if it misses
	Rule   string
	Mend   string
	Uses   []string
}

// CutOut is what has to be cut out of a drawer so that plumbing clears it: open to the back, for the drawer comes forward past the pipe.
type CutOut struct {
	Drawer      string
	At          diag.Place
	For         []string    // what it clears
	From, To    unit.Length // from the left side of the drawer's box
	Deep        unit.Length // from the back of the box
	Up          unit.Length // from the underside of the box up to the lowest of what it clears; 0: through its bottom too
	Through     bool        // the bottom is cut too
	LeavesLeft  unit.Length
	LeavesRight unit.Length
}

// Plan is what came of it.
type Plan struct {
	Meetings []Meeting
	CutOuts  []CutOut
}

// holder carries one run.
type holder struct {
	all  []space.Envelope
	out  Plan
	list diag.List
}

// Make holds all envelopes against each other, in the order in which they come.
func Make(all []space.Envelope) (Plan, diag.List) {
	h := &holder{all: all}
	h.screws()
	h.plumbing()
	h.ways()
	slices.SortStableFunc(h.out.Meetings, func(a, b Meeting) int { return cmp.Compare(a.ID, b.ID) })
	h.findings()
	return h.out, h.list.Sorted()
}

// of lists the envelopes of some kinds.
func (h *holder) of(kinds ...space.Kind) []space.Envelope {
	var out []space.Envelope
	for _, e := range h.all {
		if slices.Contains(kinds, e.Kind) {
			out = append(out, e)
		}
	}
	return out
}

// ask is what a meeting is held against.
type ask struct {
	need  unit.Length
	over  bool // it must be more than need, not as much
	class diag.Class
	rule  string
	mend  string
}

// worth is how near two things must come to be listed at all.
const worth = 2 * unit.Inch

func (h *holder) meet(id, what string, a, b space.Envelope, apart unit.Length, k ask) {
	misses := apart < k.need || k.over && apart == k.need
	if !misses && apart > k.need+worth {
		return
	}
	h.out.Meetings = append(h.out.Meetings, Meeting{ID: a.Owner + " > " + a.Name + " > " + id + " > " + b.Name, At: a.At, One: a.Name, Other: b.Name, What: what, Apart: apart, Need: k.need,
		Misses: misses, Class: k.class, Rule: k.rule, Mend: k.mend, Uses: uses(a, b)})
}

func uses(a, b space.Envelope) []string {
	all := slices.Concat(a.Uses, b.Uses)
	slices.Sort(all)
	return slices.Compact(all)
}

func (h *holder) findings() {
	for _, m := range h.out.Meetings {
		if !m.Misses {
			continue
		}
		text := m.What + ": {2} apart, {3} is kept"
		v := []diag.Value{diag.T(m.One), diag.T(m.Other), diag.F(m.Apart), diag.F(m.Need)}
		if m.Apart <= 0 {
			text = m.What + ": they take {2} of each other's room"
			v[2] = diag.F(-m.Apart)
		}
		h.list.Add(m.Class, "clash-"+m.code(), m.At, text, m.Mend, v...).Rule = m.Rule
	}
	for _, c := range h.out.CutOuts {
		h.list.Add(diag.Look, "drawer-cut-out", c.At, "{0}: to clear {1} it is cut out from {2} to {3} off its left side, {4} deep from its back", "cut it before the drawer is glued, and close the cut with strips",
			diag.T(c.Drawer), diag.T(joined(c.For)), diag.L(c.From), diag.L(c.To), diag.L(c.Deep))
	}
}

func joined(names []string) string {
	s := ""
	for i, n := range names {
		if i > 0 {
			s += ", "
		}
		s += n
	}
	return s
}

// code is the part of the id between the two names.
func (m Meeting) code() string {
	switch {
	case m.Rule == rule.BuriedClear.ID:
		return "screw-buried"
	case m.Rule == rule.EdgeOfHole.ID:
		return "screw-joint"
	}
	return "room"
}
