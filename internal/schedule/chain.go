package schedule

import (
	"slices"

	"dryfit/internal/opt/sched"
	"dryfit/internal/unit"
)

// chain carries the causes over from jobs to tasks: a block becomes the wait behind its task, a promise the date itself.
func (t *teller) chain() {
	n := len(t.m.tasks)
	for k, l := range t.q.early.Chain {
		if l.Job >= n {
			continue
		}
		out := Link{Task: t.place[l.Job], From: -1, Wait: -1, Idle: unit.Minutes(max(0, t.q.early.Starts[l.Job]-l.Ready)) * tick, Why: whys[l.Why]}
		switch {
		case l.From >= n+len(t.m.blocks):
			out.Why = ByPromise
		case l.From >= n:
			out.From = t.place[t.m.blocks[l.From-n].task]
			out.Why = AfterWait
			out.Wait = t.waitAfter(out.From, -1)
		case l.From >= 0:
			out.From = t.place[l.From]
			t.cause(&out, l)
		case k == 0 && l.Why == sched.Released:
			out.Why = FromStart
		}
		t.Chain = append(t.Chain, out)
		t.Tasks[out.Task].Critical = true
	}
}

// whys are the causes that need no look at the lag.
var whys = map[sched.Why]Why{sched.AtOnce: FromStart, sched.Released: FromStart, sched.AsFixed: AsHappened, sched.ForHours: ForHours,
	sched.ByChoice: ForAnything, sched.AfterLag: AfterTask, sched.WithinLag: WithinWait, sched.ForResource: ForHands}

// cause tells a wait from a mere order, and full hands from a full room.
func (t *teller) cause(out *Link, l sched.Link) {
	switch {
	case l.Why == sched.ForResource && l.Resource == t.q.space:
		out.Why = ForSpace
	case l.Why == sched.AfterLag && t.q.early.Lags[l.Lag].Ticks > 0:
		out.Why = AfterWait
		out.Wait = t.waitAfter(out.From, out.Task)
	}
}

// waitAfter is the wait behind a task that another has to keep; before < 0 is the one that keeps all out of the room.
func (t *teller) waitAfter(after, before int) int {
	i := slices.IndexFunc(t.Waits, func(w Wait) bool { return w.After == after && (w.Before == before || before < 0 && w.NoWalk) })
	if i < 0 { // another task waits for it first
		i = slices.IndexFunc(t.Waits, func(w Wait) bool { return w.After == after && t.waitEnds(w, before) })
	}
	if i >= 0 {
		t.Waits[i].Critical = true
	}
	return i
}

func (t *teller) waitEnds(w Wait, before int) bool {
	return before >= 0 && w.To <= t.Tasks[before].Start
}
