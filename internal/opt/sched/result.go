package sched

// A Result is a schedule and what is proven about it. Starts is nil unless Outcome is Optimal or Feasible.
type Result struct {
	Outcome Outcome
	Starts  []int
	Ends    []int
	Finish  int   // the last end
	Bound   int   // no schedule finishes earlier: proven
	Proof   Proof // by what
	Goals   []GoalValue
	Latest  []int  // a start so late, of this one job, still allows the Finish
	Chain   []Link // why the Finish is not earlier, from the first job to the last
	Broken  []int  // lags between fixed jobs that did not hold
	Trouble Trouble
	Steps   int // spent
}

// Outcome is what became of a problem.
type Outcome uint8

// Optimal means the finish is proven the earliest; each goal says for itself.
const (
	Malformed  Outcome = iota // see Trouble
	Infeasible                // proven: no schedule within the horizon; see Trouble
	Unknown                   // neither a schedule nor a proof within the steps
	Feasible                  // Finish is above Bound
	Optimal
)

// Proof is what shows the bound.
type Proof uint8

// From the cheapest proof to the dearest.
const (
	ByPath     Proof = iota // lags, calendars, releases: the longest path
	ByCapacity              // what must be held within a span exceeds the capacity there, or a limit has no days left
	BySearch                // every schedule with an earlier finish was excluded
)

// A GoalValue is a goal's count in the schedule and the least count proven for this Finish and the goals before it.
type GoalValue struct{ Value, Bound int }

// Trouble says why there is no schedule.
type Trouble struct {
	Kind TroubleKind
	Jobs []int // that it concerns
	Lags []int
	Item int // index of the resource, calendar, day or goal that is wrong
}

// TroubleKind is the kind of a Trouble.
type TroubleKind uint8

// The malformed first, then the infeasible.
const (
	NoTrouble       TroubleKind = iota
	BadHorizon                  // below 0 or over MaxHorizon
	BadJob                      // Jobs[0]: negative duration, unknown calendar or resource, negative amount or fixed start
	BadLag                      // Lags[0]: unknown job, or longer than MaxHorizon
	BadResource                 // Item: levels not ascending or negative
	BadCalendar                 // Item: spans not ascending and apart
	BadDays                     // not ascending from 0, or goals without days
	BadGoal                     // Item: unknown job or kind
	BadLimit                    // Item: unknown job or kind, or fewer than no days
	Cycle                       // Lags in a ring that no times can satisfy, through Jobs
	NoRoom                      // Jobs[0] alone fits nowhere: no span is long enough, or no capacity wide enough
	EmptyWindow                 // Jobs[0] has no start left once lags, windows and compulsory use are followed
	OverLimit                   // Item: the limit; lags, windows and compulsory use alone take more days
	NoneFits                    // a complete search found no schedule
	OverspentSearch             // steps ran out before a first schedule
)
