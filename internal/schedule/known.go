package schedule

import (
	"dryfit/internal/memo"
	"dryfit/internal/opt/sched"
)

// Known keeps the last few orders of jobs that were found, for runs that follow each other while a room is worked on. A plan is the
// same to the byte with it and without. The zero value is ready, nil keeps nothing, and runs may share it at the same time.
type Known struct {
	found  memo.Memo[asked, sched.Result]
	counts memo.Memo[askedDays, counted]
}

// asked is all that the search for an order sees.
type asked struct {
	problem sched.Problem
	options sched.Options
}

func (k *Known) solve(p *sched.Problem, o sched.Options) sched.Result {
	search := func(q asked) sched.Result { return sched.Solve(&q.problem, q.options) }
	if k == nil {
		return search(asked{*p, o})
	}
	return k.found.Of(asked{*p, o}, search)
}

// askedDays is all that the search for the fewest days of a goal sees, counted its answer.
type askedDays struct {
	problem sched.Problem
	goal    sched.Goal
}

type counted struct {
	sched.GoalValue
	found bool
}

func (k *Known) fewest(p *sched.Problem, g sched.Goal) (sched.GoalValue, bool) {
	search := func(q askedDays) counted {
		v, ok := sched.Fewest(&q.problem, q.goal, sched.Options{Steps: leastSteps})
		return counted{v, ok}
	}
	q := askedDays{*p, g}
	if k == nil {
		c := search(q)
		return c.GoalValue, c.found
	}
	c := k.counts.Of(q, search)
	return c.GoalValue, c.found
}
