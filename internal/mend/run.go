package mend

import (
	"context"
	"fmt"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/fit"
	"dryfit/internal/opt/mip"
	"dryfit/internal/plan"
)

// mender carries one look for remedies.
type mender struct {
	ctx   context.Context
	trial plan.Trial
	base  plan.Plan
	out   Mends
	err   error

	names []string  // of the things, as checks call them
	vars  []mip.Var // the things in steps
	rows  []mip.Row // of all checks, in their order
	left  int       // runs that are still allowed
	tried map[string]outcome
}

// outcome is what a run said.
type outcome struct {
	ok     bool // it was run
	trial  Trial
	checks map[string]fit.Check
}

// checks makes the rows of the plan's checks.
func (m *mender) checks() {
	at := make([]int64, len(m.vars))
	for _, c := range m.base.Fit.Checks {
		m.rows = append(m.rows, m.row(c, at))
	}
}

// run makes the plan with x steps of each thing, once.
func (m *mender) run(x []int64) outcome {
	key := fmt.Sprint(x)
	if o, seen := m.tried[key]; seen {
		return o
	}
	changes, ops, ok := m.changes(x)
	if !ok || m.err != nil {
		return outcome{}
	}
	if m.left == 0 {
		m.out.All = false
		return outcome{}
	}
	m.left--
	m.out.Runs++
	p, ok, err := m.trial.With(m.ctx, ops)
	if m.err = err; err != nil || !ok {
		return outcome{}
	}
	o := outcome{ok: true, trial: Trial{Changes: changes, Ops: ops}, checks: map[string]fit.Check{}}
	for _, c := range p.Fit.Checks {
		o.checks[c.ID] = c
	}
	m.compare(&o, p)
	m.tried[key] = o
	return o
}

// compare notes what reads otherwise than before.
func (m *mender) compare(o *outcome, p plan.Plan) {
	for _, was := range m.base.Fit.Checks {
		now, there := o.checks[was.ID]
		if !there {
			now = fit.Check{ID: was.ID, State: fit.NotChecked}
		}
		if now.State != was.State || now.Margin != was.Margin || now.Value != was.Value {
			o.trial.Reads = append(o.trial.Reads, Read{was.ID, was.State, now.State, now.Value, now.Margin})
		}
		if good(was) && !good(now) {
			o.trial.Spoils = append(o.trial.Spoils, was.ID)
		}
	}
	before := map[string]bool{}
	for _, c := range m.base.Fit.Checks {
		before[c.ID] = true
	}
	for _, c := range p.Fit.Checks {
		if !before[c.ID] && c.State == fit.Misses {
			o.trial.Reads = append(o.trial.Reads, Read{c.ID, fit.Told, c.State, c.Value, c.Margin})
			o.trial.Spoils = append(o.trial.Spoils, c.ID)
		}
	}
	o.trial.Stops = newStops(m.base.Findings, p.Findings)
}

// good says that a check is as it should be.
func good(c fit.Check) bool { return c.State == fit.Fits || c.State == fit.Told }

// newStops lists the codes of findings that stop work and did not before. What a check misses is told as its state, not here.
func newStops(was, now diag.List) []string {
	before := map[string]bool{}
	for _, f := range was {
		before[f.Code+"\n"+f.At.Path] = true
	}
	var codes []string
	for _, f := range now {
		if f.Class == diag.Stop && !before[f.Code+"\n"+f.At.Path] && !strings.HasPrefix(f.Code, "misses-") {
			codes = append(codes, f.Code)
		}
	}
	return codes
}

// mended says that a run made a check good.
func (o outcome) mended(check string) bool {
	c, there := o.checks[check]
	return o.ok && there && c.State == fit.Fits
}

// clean says that a run spoiled nothing.
func (o outcome) clean() bool { return len(o.trial.Spoils) == 0 && len(o.trial.Stops) == 0 }
