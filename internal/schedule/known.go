package schedule

import (
	"dryfit/internal/memo"
	"dryfit/internal/opt/sched"
)

// Known keeps the last few orders of jobs that were found, for runs that follow each other while a room is worked on. A plan is the
// same to the byte with it and without. The zero value is ready, nil keeps nothing, and runs may share it at the same time.
type Known struct {
	found memo.Memo[asked, sched.Result]
}

// asked is all that the search for an order sees.
type asked struct {
	problem sched.Problem
	steps   int
}

func (k *Known) solve(p *sched.Problem, steps int) sched.Result {
	search := func(q asked) sched.Result { return sched.Solve(&q.problem, sched.Options{Steps: q.steps}) }
	if k == nil {
		return search(asked{*p, steps})
	}
	return k.found.Of(asked{*p, steps}, search)
}
