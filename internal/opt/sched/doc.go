// Package sched finds when to do the jobs of a project: the earliest finish under precedence, time lags, resources of
// limited capacity and calendars, and among the earliest the one that wants the fewest days of what is hired.
//
// It takes numbers and gives numbers. Time is whole ticks from 0 to Problem.Horizon; the caller chooses the tick.
//
// A job works a number of ticks. On a calendar it starts in a working tick and pauses where the calendar pauses, unless
// it is Whole; on the Clock (curing, drying) every tick counts. It holds its resources while it works, or from start to
// end where the use says Through.
//
// A lag says that one event (start or end of a job) comes at least so many ticks after another. A negative one is a
// greatest lag seen from the other side, so both kinds are one: AtLeast and AtMost write them.
//
// A job that has begun or is done is Fixed. What happened is not judged: a fixed start need not be a working tick, lags
// between two fixed jobs are not enforced (those that are broken are named in the Result), and what fixed jobs hold
// beyond capacity is allowed to them alone.
//
// The way there, each stage in Options.Steps and without a clock or a random source:
//
//   - windows of each job from lags, calendars and compulsory use of resources; a destructive lower bound by energy
//   - schedules by serial and parallel generation under priority rules, justified to the right and to the left
//     (Valls, Ballestin, Quintanilla, EJOR 165 (2005) 375-386), improved by iterated search over job lists
//   - complete search with learned nogoods over bounds of starts (lazy clause generation: Ohrimenko, Stuckey, Codish,
//     Constraints 14 (2009) 357-391; for this problem Schutt, Feydy, Stuckey, Wallace, Constraints 16 (2011) 250-282)
//     from both sides: better than the best schedule, and at the bound; two jobs that can never run at once are given a
//     switch of their own for which comes first
//   - the same search in the vicinity of the best schedule: some jobs free, all others about where they are
//   - each further goal in turn, the earlier ones held
//
// A Limit is a count of days that every schedule keeps: a rule of all searches. Fewest tells the least it could be.
//
// The result never claims more than was proven: Bound is a proven least finish and Proof says by what.
package sched
