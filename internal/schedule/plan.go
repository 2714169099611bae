package schedule

import (
	"dryfit/internal/calendar"
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Plan is the days of a room. In the zero Plan none are planned.
type Plan struct {
	Planned  bool
	From     calendar.Moment // the rest is planned from here
	Finish   calendar.Moment // the last job is done
	Bound    calendar.Moment // no plan finishes earlier: proven
	Optimal  bool            // Finish is Bound
	Tasks    []Task          // by start
	Waits    []Wait          // by begin
	Cards    []Card          // one for each day with work, from the first
	Chain    []Link          // why it does not finish earlier
	Trips    Count           // days on which anybody works in the room
	Hires    []Hire
	Lacks    []Lack
	Promises []Promise
	Batches  []Batch // what is set in each session
}

// Count is a number of days with the least that is proven for this finish and for what went before it.
type Count struct{ Days, Least int }

// State is how far a task is.
type State uint8

const (
	Planned State = iota
	Begun
	Done
)

func (s State) String() string { return [...]string{"planned", "begun", "done"}[s] }

// Task is one job.
type Task struct {
	Name    string // stable: "set basin wall 1"
	Kind    Kind
	Subject string     // the face, the opening or the thing; "" of the whole room
	Part    int        // from 1 where a wall takes several days
	At      diag.Place // in the document
	Own     bool       // the user's own job
	Work    unit.Minutes
	Basis   Basis
	Hands   int
	Shop    bool
	Whole   bool // in one go
	Needs   []string
	Stops   []string // "water", "power", "WC": not there while it is done
	SignOff string
	Tools   []string // hired
	State   State
	Started bool // when is known

	Start, End calendar.Moment
	Sessions   []Session
	Latest     calendar.Moment // a start so late still allows the finish
	Slack      unit.Minutes
	Critical   bool // it is in the chain
}

// Session is one stretch of work without a pause.
type Session struct {
	From, To calendar.Moment
	Who      []string
}

// Basis is what a task's hours were reckoned from.
type Basis struct {
	Area        unit.Area
	Length      unit.Length
	Cuts, Holes int
	Speed       document.Speed
	OwnPace     bool
}

// Wait is a time in which something hardens, dries or is watched. It runs on the clock.
type Wait struct {
	After     int // index into Tasks
	Before    int // the first task that waits for it; -1: none, it holds the room alone
	What      string
	From      calendar.Moment
	To        calendar.Moment // at the earliest the next may begin
	Until     calendar.Moment // at the latest; 0: at any time
	Label     cure.Label      // what was given
	AtKnown   bool            // the temperature that it was given at
	Source    string
	Slower    bool // the room makes it longer than the label says
	Coldest   unit.Temperature
	Measured  bool // the room's temperature is known
	NoWalk    bool // nobody may be in the room
	Critical  bool
	Meanwhile []int // tasks that begin while it runs
}

// Card is one day of work.
type Card struct {
	Date    calendar.Date
	Work    []CardWork // by time
	Waiting []int      // waits that run at the end of its work, indices into Waits
}

// CardWork is one session of a task on a day.
type CardWork struct{ Task, Session int }

// Link is one link of the chain of causes, each kept from being earlier by the one before. The chain is that of a plan with the same
// finish in which nothing is put off to save a day.
type Link struct {
	Task int
	Why  Why
	From int          // the task that it waits for, or -1
	Wait int          // the wait between them, or -1
	Idle unit.Minutes // for so long it waits for hours alone
}

// Why is what keeps a task from starting earlier.
type Why uint8

const (
	FromStart   Why = iota // nothing earlier is possible
	AsHappened             // it has begun
	ForHours               // nobody who may do it has hours before
	ByPromise              // a date that is promised
	AfterTask              // its forerunner ends
	AfterWait              // what its forerunner left must harden
	WithinWait             // what follows it must not be too late
	ForHands               // all hands are at another task
	ForSpace               // the room is full, or nobody may walk in it
	ForAnything            // it could be earlier; the plan has another reason
)

// Hire is the days that a hired tool is kept.
type Hire struct {
	Tool     string
	At       diag.Place
	From, To calendar.Date
	Count    Count
}

// Lack is the days on which something is missing.
type Lack struct {
	What  string // "WC", "water", "power"
	At    diag.Place
	Dates []calendar.Date
	Count Count
	Limit int // -1: none
}

// Promise is a date that can not be moved.
type Promise struct {
	Name string
	At   diag.Place
	On   calendar.Moment
	Kept bool
}

// Batch is what is set in one session, piece by piece in the order of setting.
type Batch struct {
	Task, Session int
	Face          string
	Pieces        []string // addresses
	Area          unit.Area
}

// Task returns the task of that name.
func (p Plan) Task(name string) (Task, bool) {
	for _, t := range p.Tasks {
		if t.Name == name {
			return t, true
		}
	}
	return Task{}, false
}

// LatestStart is the latest start of the first task of a kind that has a subject, or of any where the subject is "": goods
// for it must be there by then.
func (p Plan) LatestStart(k Kind, subject string) (calendar.Moment, bool) {
	for _, t := range p.Tasks {
		if t.Kind == k && (subject == "" || t.Subject == subject) {
			return t.Latest, true
		}
	}
	return 0, false
}
