package sched

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A brute tries every start of every job. First the earliest finish, then among those the goals.
type brute struct {
	p     *Problem
	at    []*placed
	best  []int // finish, goals
	first bool  // only the finish matters
}

// exact is the finish and the goals of the best schedule, or nil.
func exact(p *Problem) []int {
	b := &brute{p: p, at: make([]*placed, len(p.Jobs)), first: true}
	b.try(0, 0)
	if b.best != nil && len(p.Goals) > 0 {
		b.first = false
		b.best = append(b.best[:1], slices.Repeat([]int{p.Horizon + 2}, len(p.Goals))...)
		b.try(0, 0)
	}
	return b.best
}

func (b *brute) try(j, finish int) {
	if j == len(b.p.Jobs) {
		if overLimit(b.p, b.at) < 0 {
			b.keep(finish)
		}
		return
	}
	for s := 0; s <= b.p.Horizon; s++ {
		work, end, ok := ticksOf(b.p, j, s)
		if !ok || b.best != nil && (end > b.best[0] || b.first && end == b.best[0]) {
			continue
		}
		b.at[j] = &placed{s, end, work}
		if fault(b.p, b.at) == "" {
			b.try(j+1, max(finish, end))
		}
		b.at[j] = nil
	}
}

func (b *brute) keep(finish int) {
	value := []int{finish}
	if !b.first {
		for _, g := range b.p.Goals {
			value = append(value, countDays(b.p, g, b.at))
		}
	}
	if b.best == nil || slices.Compare(value, b.best) < 0 {
		b.best = value
	}
}

// outcome is what exact would say of a result, or nil.
func outcome(r *Result) []int {
	if r.Outcome == Infeasible {
		return nil
	}
	out := []int{r.Finish}
	for _, g := range r.Goals {
		out = append(out, g.Value)
	}
	return out
}

// drawProblem draws a small problem of any kind.
func drawProblem(t *rapid.T, most int) *Problem {
	n := rapid.IntRange(1, most).Draw(t, "jobs")
	p := &Problem{Horizon: rapid.IntRange(6, 13).Draw(t, "horizon")}
	for range rapid.IntRange(0, 2).Draw(t, "calendars") {
		p.Calendars = append(p.Calendars, drawCalendar(t))
	}
	for range rapid.IntRange(0, 2).Draw(t, "resources") {
		p.Resources = append(p.Resources, drawResource(t))
	}
	for i := range n {
		p.Jobs = append(p.Jobs, drawJob(t, p))
		for range rapid.IntRange(0, 2).Draw(t, "lags") {
			if i > 0 {
				p.Lags = append(p.Lags, drawLag(t, rapid.IntRange(0, i-1).Draw(t, "other"), i))
			}
		}
	}
	p.Days = [][]int{nil, {0, 4, 8}, {0, 3, 6, 9, 12}}[rapid.IntRange(0, 2).Draw(t, "days")]
	if p.Days != nil {
		for range rapid.IntRange(0, 2).Draw(t, "goals") {
			g := Goal{Kind: rapid.SampledFrom([]GoalKind{DaysUsed, DaysSpanned}).Draw(t, "kind")}
			g.Jobs = rapid.SliceOfNDistinct(rapid.IntRange(0, n-1), 0, n, rapid.ID[int]).Draw(t, "over")
			p.Goals = append(p.Goals, g)
		}
	}
	return p
}

// drawLimits puts some limits on days.
func drawLimits(t *rapid.T, p *Problem) {
	if p.Days == nil {
		return
	}
	n := len(p.Jobs)
	for range rapid.IntRange(0, 2).Draw(t, "limits") {
		l := Limit{Most: rapid.IntRange(0, 3).Draw(t, "most")}
		l.Kind = rapid.SampledFrom([]GoalKind{DaysUsed, DaysSpanned}).Draw(t, "limited")
		l.Jobs = rapid.SliceOfNDistinct(rapid.IntRange(0, n-1), 0, n, rapid.ID[int]).Draw(t, "limited jobs")
		p.Limits = append(p.Limits, l)
	}
}

func drawCalendar(t *rapid.T) Calendar {
	var c Calendar
	for at := rapid.IntRange(0, 2).Draw(t, "opens"); at < 13; at += rapid.IntRange(1, 3).Draw(t, "pause") {
		long := rapid.IntRange(1, 4).Draw(t, "open")
		c = append(c, Span{at, at + long})
		at += long
	}
	return c
}

func drawResource(t *rapid.T) Resource {
	r := Constant(rapid.IntRange(1, 3).Draw(t, "level"))
	if rapid.Bool().Draw(t, "changes") {
		r = append(r, Level{rapid.IntRange(1, 8).Draw(t, "from"), rapid.IntRange(0, 3).Draw(t, "then")})
	}
	return r
}

func drawJob(t *rapid.T, p *Problem) Job {
	j := Job{
		Duration: rapid.IntRange(0, 4).Draw(t, "duration"),
		Calendar: rapid.IntRange(Clock, len(p.Calendars)-1).Draw(t, "calendar"),
		Whole:    rapid.Bool().Draw(t, "whole"),
	}
	for r := range p.Resources {
		j.Uses = append(j.Uses, Use{r, rapid.IntRange(0, 2).Draw(t, "amount"), rapid.Bool().Draw(t, "through")})
	}
	switch rapid.IntRange(0, 9).Draw(t, "bound") {
	case 0:
		j.Release = rapid.IntRange(0, 4).Draw(t, "release")
	case 1:
		j.Due = rapid.IntRange(4, 13).Draw(t, "due")
	case 2:
		j.Fixed, j.Start = true, rapid.IntRange(0, 4).Draw(t, "start")
	}
	return j
}

func drawLag(t *rapid.T, i, j int) Lag {
	a := Event{i, rapid.Bool().Draw(t, "end")}
	b := Event{j, rapid.Bool().Draw(t, "end")}
	if rapid.IntRange(0, 2).Draw(t, "greatest") == 0 {
		return AtMost(a, b, rapid.IntRange(0, 4).Draw(t, "most"))
	}
	return AtLeast(a, b, rapid.IntRange(-1, 3).Draw(t, "least"))
}

// The clever code says what the obvious code says: finish, goals, or that nothing fits.
func TestAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 5)
		drawLimits(t, p)
		compare(t, p)
	})
}

// Eight jobs that all compete, with lags of both kinds and calendars.
func TestEightJobsAgainstBruteForce(t *testing.T) {
	for _, line := range []string{
		"h=13 m=2 A2:m1 B3:m2 C1:m1 D2:m1 E1:m2 F2:m1 G1:m1 H1:m1 A>D A>D<1 B>E+1 C>F D>G E>H<2",
		"h=15 m=1 w=0-4,6-10,12-16 A2/w:m1 B1/w:m1 C3 D1/w:m1 E2/w! F1/w:m1 G1:m1 H0 A>C C>D<2 B>E E>F A>G+2 G>H",
		"h=14 m=3 k=1,5:2 A2:m2 B2:m2:k1 C2:m1:k1 D3:m1 E1:k2 F1:m3 G2:m2 H1:k1 A>E B>F+1 C>G<3 D>H<0",
		"h=16 m=2 w=0-3,8-11,13-16 d=0,8 A1/w:m1 B1/w:m2 C4 D1/w:m1 E1/w:m1 F1/w:m1 G1/w:m1 H1/w A>B B>C C>D D>E<1 used=A,F,G span=E,H",
		"h=18 m=1 w=0-3,6-9,12-15 d=0,6,12 A1/w:m1 B1/w:m1 C4 D1/w:m1 E1/w:m1[0,13] F1/w:m1@0 G1/w:m1 H1/w:m1 A>C C>D F>A E>G+2 used<1=D,E span<2=A,G used=B,H",
		"h=14 m=2,6:1 w=0-4,6-9,10-14 d=0,5,10 A2/w:m1 B1/w:m1[3,0] C2 D1/w:m2 E1/w:m1 F1/w:m1 G2/w:m1~ H0@10 A>C C>D<1 B>D E>F<2 D>H span<2=A,D used<2=E,F,G",
		"h=12 m=2 A1:m1 B1:m1 C2:m2 D1:m1 E1:m1 F2:m2 G1:m1 H1:m2 A>C<0 B>C<0 D>F<1 E>F G>H+2 C>F<3",
	} {
		compare(t, parse(t, line))
	}
}

func compare(t interface {
	Fatalf(string, ...any)
}, p *Problem) {
	r := Solve(p, Options{})
	if bad := wrong(p, &r); bad != "" {
		t.Fatalf("%s\n%+v\n%+v", bad, p, r)
	}
	want := exact(p)
	if got := outcome(&r); fmt.Sprint(got) != fmt.Sprint(want) || r.Outcome == Feasible || r.Outcome == Unknown {
		t.Fatalf("brute force has %v, we have %v\n%+v\n%+v", want, got, p, r)
	}
	for i, g := range r.Goals {
		if g.Bound != g.Value {
			t.Fatalf("goal %d: %+v not proven", i, g)
		}
	}
}

// The least that a goal can be, whenever the schedule ends, is what trying all schedules finds.
func TestFewestAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t, 4)
		drawLimits(t, p)
		p.Goals = nil
		if p.Days == nil {
			return
		}
		g := Goal{Kind: rapid.SampledFrom([]GoalKind{DaysUsed, DaysSpanned}).Draw(t, "kind")}
		g.Jobs = rapid.SliceOfNDistinct(rapid.IntRange(0, len(p.Jobs)-1), 0, len(p.Jobs), rapid.ID[int]).Draw(t, "over")
		want := -1
		for _, starts := range schedules(p, p.Horizon) {
			at, _ := place(p, starts)
			if v := countDays(p, g, at); overLimit(p, at) < 0 && (want < 0 || v < want) {
				want = v
			}
		}
		got, ok := Fewest(p, g, Options{})
		if ok != (want >= 0) || ok && got != (GoalValue{want, want}) {
			t.Fatalf("%v %v, brute force has %d\n%+v", got, ok, want, p)
		}
	})
}
