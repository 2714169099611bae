package sched

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// result solves, checks what can be checked, and gives what exact would.
func result(t *rapid.T, p *Problem, o Options) ([]int, Result) {
	r := Solve(p, o)
	if bad := wrong(p, &r); bad != "" {
		t.Fatalf("%s\n%+v\n%+v", bad, p, r)
	}
	return outcome(&r), r
}

func same(t *rapid.T, what string, a, b []int) {
	if !slices.Equal(a, b) {
		t.Fatalf("%s: %v and %v", what, a, b)
	}
}

// The order in which jobs are written down does not matter.
func TestOrderOfJobsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 9)
		a, _ := result(t, p, Options{})
		q := *p
		place := rapid.Permutation(indices(len(p.Jobs))).Draw(t, "places")
		q.Jobs, q.Lags, q.Goals = make([]Job, len(p.Jobs)), slices.Clone(p.Lags), slices.Clone(p.Goals)
		for j, k := range place {
			q.Jobs[k] = p.Jobs[j]
		}
		for i := range q.Lags {
			q.Lags[i].From.Job, q.Lags[i].To.Job = place[q.Lags[i].From.Job], place[q.Lags[i].To.Job]
		}
		for i := range q.Goals {
			q.Goals[i].Jobs = nil
			for _, j := range p.Goals[i].Jobs {
				q.Goals[i].Jobs = append(q.Goals[i].Jobs, place[j])
			}
		}
		b, _ := result(t, &q, Options{})
		same(t, "in another order", a, b)
	})
}

func indices(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// With ticks of half the length every time doubles.
func TestFinerTicks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 6)
		for i := range p.Jobs { // an instant, or a start on the clock, may use the new ticks; work can not gain by it
			if p.Jobs[i].Fixed {
				p.Jobs[i].Fixed = false
			}
		}
		a, _ := result(t, p, Options{})
		b, _ := result(t, finer(p), Options{})
		if a != nil && (b == nil || b[0] > 2*a[0]) {
			t.Fatalf("%v with whole ticks, %v with half", a, b)
		}
	})
}

func finer(p *Problem) *Problem {
	q := &Problem{Horizon: 2 * p.Horizon, Lags: slices.Clone(p.Lags), Goals: p.Goals}
	for _, j := range p.Jobs {
		j.Duration, j.Release, j.Due = 2*j.Duration, 2*j.Release, 2*j.Due
		q.Jobs = append(q.Jobs, j)
	}
	for i := range q.Lags {
		q.Lags[i].Ticks *= 2
	}
	for _, r := range p.Resources {
		r = slices.Clone(r)
		for i := range r {
			r[i].From *= 2
		}
		q.Resources = append(q.Resources, r)
	}
	for _, c := range p.Calendars {
		c = slices.Clone(c)
		for i := range c {
			c[i] = Span{2 * c[i].From, 2 * c[i].To}
		}
		q.Calendars = append(q.Calendars, c)
	}
	for _, d := range p.Days {
		q.Days = append(q.Days, 2*d)
	}
	return q
}

// More hands never finish later, another lag never sooner; what was infeasible stays so under one more lag.
func TestMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 9)
		p.Goals = nil
		a, _ := result(t, p, Options{})
		more := *p
		more.Resources = nil
		for _, r := range p.Resources {
			r = slices.Clone(r)
			for i := range r {
				r[i].Amount++
			}
			more.Resources = append(more.Resources, r)
		}
		if b, _ := result(t, &more, Options{}); a != nil && (b == nil || b[0] > a[0]) {
			t.Fatalf("%v, and with more of each resource %v", a, b)
		}
		if len(p.Jobs) < 2 {
			return
		}
		lag := *p
		lag.Lags = append(slices.Clone(p.Lags), drawLag(t, 0, len(p.Jobs)-1))
		if b, _ := result(t, &lag, Options{}); b != nil && (a == nil || b[0] < a[0]) {
			t.Fatalf("%v, and with another lag %v", a, b)
		}
	})
}

// Written backward (every lag turned around), a project on the clock takes as long.
func TestBackward(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 9)
		p.Goals, p.Calendars = nil, nil
		for i := range p.Jobs {
			j := &p.Jobs[i]
			j.Calendar, j.Release, j.Due, j.Fixed = Clock, 0, 0, false
		}
		for r := range p.Resources {
			p.Resources[r] = p.Resources[r][:1]
		}
		q := *p
		q.Lags = nil
		for _, l := range p.Lags {
			q.Lags = append(q.Lags, Lag{Event{l.To.Job, !l.To.End}, Event{l.From.Job, !l.From.End}, l.Ticks})
		}
		a, _ := result(t, p, Options{})
		b, _ := result(t, &q, Options{})
		same(t, "backward", a, b)
	})
}

// With few steps the result may be less, never false; the same steps give the same result.
func TestFewSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 9)
		best, _ := result(t, p, Options{})
		few := Options{Steps: rapid.IntRange(1, 300).Draw(t, "steps")}
		_, r := result(t, p, few)
		switch {
		case r.Outcome == Infeasible && best != nil, r.Outcome >= Feasible && best == nil:
			t.Fatalf("with few steps %v, else %v", r, best)
		case r.Outcome >= Feasible && (r.Bound > best[0] || r.Finish < best[0]):
			t.Fatalf("%d to %d does not hold %v", r.Bound, r.Finish, best)
		}
		if _, again := result(t, p, few); fmt.Sprint(again) != fmt.Sprint(r) {
			t.Fatalf("twice the same: %v and %v", r, again)
		}
	})
}

// With next to no steps, a schedule that is known is kept, and one that breaks a rule is not taken for one.
func TestKnown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 6)
		drawLimits(t, p)
		p.Goals = nil
		best, r := result(t, p, Options{})
		if best == nil {
			return
		}
		known := slices.Clone(r.Starts)
		_, again := result(t, p, Options{Steps: 1, Known: known})
		if again.Starts == nil || again.Finish != r.Finish {
			t.Fatalf("%d known, %+v found", r.Finish, again)
		}
		known[rapid.IntRange(0, len(known)-1).Draw(t, "job")] += rapid.IntRange(-4, 4).Draw(t, "moved")
		if _, again = result(t, p, Options{Steps: 1, Known: known}); again.Starts != nil && again.Finish < r.Finish {
			t.Fatalf("%d is the best, %+v", r.Finish, again)
		}
	})
}

// Each job alone can start as late as its Latest, the others as they may, and all still finish in time.
func TestLatest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 6)
		p.Goals = nil
		a, r := result(t, p, Options{})
		if a == nil {
			return
		}
		for j, s := range r.Latest {
			if p.Jobs[j].Fixed {
				continue
			}
			q := *p
			q.Jobs = slices.Clone(p.Jobs)
			q.Jobs[j].Release = s
			b, _ := result(t, &q, Options{})
			same(t, "a later start", a, b)
		}
	})
}
