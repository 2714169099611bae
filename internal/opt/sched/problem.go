package sched

// Clock is the Calendar of a job that runs on every tick.
const Clock = -1

// A Problem is the jobs and all that binds them.
type Problem struct {
	Horizon   int // no job ends later
	Jobs      []Job
	Lags      []Lag
	Resources []Resource
	Calendars []Calendar
	Days      []int   // first tick of each day, ascending from 0; needed by limits and goals only
	Limits    []Limit // kept by every schedule
	Goals     []Goal  // after the earliest finish, in order of weight
}

// A Job is work of one kind without a gap of its own.
type Job struct {
	Duration int // ticks of work; 0 is an instant
	Calendar int // index into Problem.Calendars, or Clock
	Whole    bool
	Uses     []Use
	Release  int // no start before
	Due      int // no end after; 0: the horizon
	Fixed    bool
	Start    int // of a fixed job
}

// A Use is the part of a resource that a job holds while it works, with Through also while it pauses.
type Use struct {
	Resource, Amount int
	Through          bool
}

// A Resource is renewable: its level at a tick is what jobs may hold of it together. It is 0 before the first level.
type Resource []Level

// A Level holds from a tick until the next level.
type Level struct{ From, Amount int }

// Constant is a resource that never changes.
func Constant(amount int) Resource { return Resource{{0, amount}} }

// A Calendar is its working spans, ascending, apart.
type Calendar []Span

// A Span is the ticks from From to before To.
type Span struct{ From, To int }

// An Event is the start or the end of a job.
type Event struct {
	Job int
	End bool
}

// A Lag holds when To comes Ticks or more after From; negative Ticks let To come that much before From at the earliest.
type Lag struct {
	From, To Event
	Ticks    int
}

// Start is the event that the job starts.
func Start(job int) Event { return Event{Job: job} }

// End is the event that the job ends.
func End(job int) Event { return Event{Job: job, End: true} }

// AtLeast: to comes ticks or more after from.
func AtLeast(from, to Event, ticks int) Lag { return Lag{from, to, ticks} }

// AtMost: to comes no more than ticks after from.
func AtMost(from, to Event, ticks int) Lag { return Lag{to, from, -ticks} }

// A Goal counts days over some jobs; fewer are better.
type Goal struct {
	Kind GoalKind
	Jobs []int
}

// A Limit is the most days that a goal may count.
type Limit struct {
	Goal
	Most int
}

// GoalKind is what a goal counts.
type GoalKind uint8

// A trip is a day on which a job that needs the trip is done: DaysUsed. What is hired without giving it back between is
// DaysSpanned.
const (
	DaysUsed    GoalKind = iota // days on which any of the jobs works
	DaysSpanned                 // days from the first to the last of those
)

// Options bound the effort.
type Options struct {
	Steps int   // clauses visited, bound changes and, four to a step, placements tried; 0: DefaultSteps
	Known []int // starts of a schedule to better; nil, or one that breaks a rule: none is known
}

// DefaultSteps is some seconds of one core on the hardest problems; most need a small part of it.
const DefaultSteps = 20_000_000
