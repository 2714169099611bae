package mend

import (
	"cmp"
	"slices"

	"dryfit/internal/fit"
	"dryfit/internal/opt/mip"
	"dryfit/internal/unit"
)

// remedies looks for what mends each check that misses.
func (m *mender) remedies() {
	for i, c := range m.base.Fit.Checks {
		if c.State == fit.Misses {
			m.out.Remedies = append(m.out.Remedies, m.remedy(i, c))
		}
	}
}

func (m *mender) remedy(i int, c fit.Check) Remedy {
	r := Remedy{Check: c.ID}
	row := m.rows[i]
	if !measured(c) || !m.touches(row) {
		r.Needs = max(0, -c.Margin)
		r.Misses = r.Needs
		return r
	}
	r.Touched, r.Needs, r.Misses = true, -c.Margin, m.lacks(row)
	for j := range m.vars {
		if row.A[j] != 0 {
			m.single(&r, j, row)
		}
	}
	slices.SortStableFunc(r.Single, func(a, b Trial) int { return cmp.Compare(a.Changes[0].By.Abs(), b.Changes[0].By.Abs()) })
	return r
}

// single tries one thing: so far as the check that misses asks and the others allow; where they do not, so far as it asks alone.
func (m *mender) single(r *Remedy, j int, row mip.Row) {
	one := mip.One{A: row.A[j], B: row.B}
	alone := mip.Single(m.vars[j], []mip.One{one})
	if alone.Miss > 0 {
		if alone.X != 0 {
			r.Short = append(r.Short, Short{Thing: j, By: unit.Length(alone.Miss)})
		}
		return
	}
	if f := mip.Single(m.vars[j], append(m.holdsWith(j), one)); f.Miss == 0 {
		if o := m.confirm(r.Check, j, f.X); o.ok {
			m.keep(r, o)
			return
		}
	}
	if o := m.confirm(r.Check, j, alone.X); o.ok {
		m.keep(r, o)
	}
}

func (m *mender) keep(r *Remedy, o outcome) {
	if o.clean() {
		r.Single = append(r.Single, o.trial)
	} else {
		r.Spoils = append(r.Spoils, o.trial)
	}
}

// further bounds how many more steps than reckoned are tried where a check does not move in step with a thing.
const further = 4

// confirm finds the fewest steps of a thing, from those reckoned, at which a run says that the check is mended. A run that reads another margin
// than was reckoned tells that the check does not move in step; then fewer steps are tried as well.
func (m *mender) confirm(check string, j int, steps int64) outcome {
	way := int64(1)
	if steps < 0 {
		way = -1
	}
	o := m.at(j, steps)
	for n := int64(0); n < further && o.ok && !o.mended(check); n++ {
		steps += way
		if steps < m.vars[j].Lo || steps > m.vars[j].Hi {
			return outcome{}
		}
		o = m.at(j, steps)
	}
	if !o.mended(check) {
		return outcome{}
	}
	for n := int64(0); n < further && steps != way && !m.inStep(check, j, steps, o); n++ {
		less := m.at(j, steps-way)
		if !less.mended(check) {
			break
		}
		o, steps = less, steps-way
	}
	return o
}

// inStep says that a check reads what its dependence on the thing has foretold, to a step's hundredth.
func (m *mender) inStep(check string, j int, steps int64, o outcome) bool {
	for i, c := range m.base.Fit.Checks {
		if c.ID == check {
			told := int64(c.Margin) + m.rows[i].A[j]*steps
			return (o.checks[check].Margin - unit.Length(told)).Abs() <= m.out.Things[j].Step/100
		}
	}
	return false
}

// at runs the plan with one thing moved.
func (m *mender) at(j int, steps int64) outcome {
	x := make([]int64, len(m.vars))
	x[j] = steps
	return m.run(x)
}
