package mend

import (
	"dryfit/internal/fit"
	"dryfit/internal/opt/mip"
	"dryfit/internal/unit"
)

// row is what a check asks of the steps: its margin and what they add to it must not be less than nothing. It is made at the steps x that its
// check was read at. A check whose margin moves with nothing gives a row without entries.
func (m *mender) row(c fit.Check, x []int64) mip.Row {
	r := mip.Row{A: make([]int64, len(m.vars)), B: -int64(c.Margin)}
	for _, t := range c.Moves {
		for j, name := range m.names {
			if name == t.Path {
				r.A[j] += int64(t.Per.Of(m.out.Things[j].Step))
			}
		}
	}
	for j, a := range r.A {
		r.B += a * x[j]
	}
	return r
}

// touches reports whether a row has an entry that can do something.
func (m *mender) touches(r mip.Row) bool {
	for j, a := range r.A {
		if a != 0 && (m.vars[j].Lo < 0 || m.vars[j].Hi > 0) {
			return true
		}
	}
	return false
}

// measured reports whether a check has a margin.
func measured(c fit.Check) bool {
	return c.Length && (c.State == fit.Fits || c.State == fit.Misses)
}

// holdsWith lists what the checks that pass ask of one thing.
func (m *mender) holdsWith(j int) []mip.One {
	var ones []mip.One
	for i, c := range m.base.Fit.Checks {
		if r := m.rows[i]; measured(c) && c.State == fit.Fits && r.A[j] != 0 {
			ones = append(ones, mip.One{A: r.A[j], B: r.B})
		}
	}
	return ones
}

// lacks is what a row lacks at its best.
func (m *mender) lacks(r mip.Row) unit.Length {
	best := int64(0)
	for j, a := range r.A {
		best += max(a*m.vars[j].Lo, a*m.vars[j].Hi)
	}
	return unit.Length(max(0, r.B-best))
}
