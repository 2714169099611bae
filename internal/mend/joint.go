package mend

import (
	"slices"

	"dryfit/internal/fit"
	"dryfit/internal/opt/mip"
	"dryfit/internal/unit"
)

// joint looks for the smallest change that mends all checks at once, or misses least; where it can not mend all and advice is among them, also for
// the smallest that mends what codes and data sheets ask and leaves advice aside.
func (m *mender) joint() {
	if !m.partMisses() {
		return
	}
	all := m.jointly(true)
	m.out.Joint = &all
	if !all.Mends && m.adviceCounts() {
		if asked := m.jointly(false); asked.Mends {
			m.out.Asked = &asked
		}
	}
}

// partMisses lists the checks that miss and that nothing that may move is in; it says whether there are others.
func (m *mender) partMisses() (others bool) {
	for i, c := range m.base.Fit.Checks {
		switch {
		case c.State != fit.Misses:
		case m.touches(m.rows[i]):
			others = true
		default:
			m.out.Without = append(m.out.Without, c.ID)
		}
	}
	return others
}

// adviceCounts says that some advice is missed or could be, and some check that is more than advice misses.
func (m *mender) adviceCounts() bool {
	advice, asked := false, false
	for i, c := range m.base.Fit.Checks {
		if measured(c) && m.touches(m.rows[i]) {
			advice = advice || c.Advice
			asked = asked || !c.Advice && c.State == fit.Misses
		}
	}
	return advice && asked
}

// rounds bounds how often the dependences are made anew from a run that did not confirm them.
const rounds = 6

// jointly solves, runs, and where the run reads otherwise than reckoned solves again with what it read.
func (m *mender) jointly(advice bool) Joint {
	rows := slices.Clone(m.rows)
	last := Joint{}
	for range rounds {
		r := mip.Solve(m.problem(rows, advice))
		o := m.run(r.X)
		if !o.ok {
			return last
		}
		j := m.judge(o, advice)
		j.Proven = r.Complete
		if better(j, last) {
			last = j
		}
		if j.Mends || !m.learn(rows, r, o) {
			return last
		}
	}
	return last
}

// better prefers what mends, then what leaves less.
func better(a, b Joint) bool {
	if a.Mends != b.Mends || b.Ops == nil && b.Left == nil {
		return a.Mends || b.Ops == nil && b.Left == nil
	}
	return total(a.Left) < total(b.Left)
}

func total(left []Left) (sum unit.Length) {
	for _, l := range left {
		sum += l.By
	}
	return sum
}

// problem holds the rows that count: of checks that pass, and of those that miss and can be touched. Where not all can be mended, what codes and
// data sheets ask goes before advice, and nothing that passes is given up for either.
func (m *mender) problem(rows []mip.Row, advice bool) mip.Problem {
	p := mip.Problem{Vars: m.vars, Budget: jointBudget}
	for i, c := range m.base.Fit.Checks {
		if !measured(c) || c.Advice && !advice || !m.touches(rows[i]) {
			continue
		}
		r := rows[i]
		switch {
		case c.State == fit.Fits:
			r = times(r, before*before)
		case !c.Advice:
			r = times(r, before)
		}
		p.Rows = append(p.Rows, r)
	}
	return p
}

// before is how much more a unit that is missed counts than one of what it goes before.
const before = 64

func times(r mip.Row, n int64) mip.Row {
	out := mip.Row{A: make([]int64, len(r.A)), B: r.B * n}
	for j, a := range r.A {
		out.A[j] = a * n
	}
	return out
}

// jointBudget bounds one search to some milliseconds.
const jointBudget = 2000

// judge reads from a run what is mended and what is left.
func (m *mender) judge(o outcome, advice bool) Joint {
	j := Joint{Trial: o.trial, Mends: len(o.trial.Changes) > 0}
	for i, was := range m.base.Fit.Checks {
		now := o.checks[was.ID]
		counts := advice || !was.Advice
		if !m.touches(m.rows[i]) && was.State == fit.Misses {
			continue
		}
		if now.State == fit.Misses {
			j.Left = append(j.Left, Left{was.ID, max(0, -now.Margin)})
		}
		if counts && (now.State == fit.Misses || good(was) && !good(now)) {
			j.Mends = false
		}
	}
	j.Mends = j.Mends && len(o.trial.Stops) == 0
	return j
}

// learn makes the rows anew from what a run read; false: it read what was reckoned, or nothing would come of it.
func (m *mender) learn(rows []mip.Row, r mip.Result, o outcome) bool {
	news := false
	for i, was := range m.base.Fit.Checks {
		now, there := o.checks[was.ID]
		if !there || !measured(now) {
			continue
		}
		row := m.row(now, r.X)
		if row.B != rows[i].B || !slices.Equal(row.A, rows[i].A) {
			rows[i], news = row, true
		}
	}
	return news
}
