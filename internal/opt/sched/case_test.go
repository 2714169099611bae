package sched

import (
	"fmt"
	"strings"
	"testing"
)

// Small cases worked out by hand. want: outcome, finish, starts, goals.
var cases = []struct{ name, line, want string }{
	{"nothing to do", "h=5", "optimal 0 []"},
	{"no horizon", "h=0 A0", "optimal 0 [0]"},
	{"one after the other on one machine", "m=1 A2:m1 B3:m1", "optimal 5"},
	{"side by side on two", "m=2 A2:m1 B3:m1", "optimal 3 [0 0]"},
	{"curing runs through the night", "w=0-8,24-32 A8/w B20 C2/w A>B B>C", "optimal 30 [0 8 28]"},
	{"work pauses overnight", "w=0-8,24-32 A10/w", "optimal 26 [0]"},
	{"whole work waits for a long enough span", "w=0-4,24-32 A6/w!", "optimal 30 [24]"},
	{"an end at closing time is that day's end", "w=0-8,24-32 A8/w B3 A>B", "optimal 11 [0 8]"},
	{"a milestone is at any tick", "w=0-8,24-32 A8/w B0/w A>B+3", "optimal 11 [0 11]"},
	{"a helper on one day only", "m=0,24:1,32:0 A4 B3:m1 A>B", "optimal 27 [0 24]"},
	{"a level that falls", "m=2,3:1 A4:m1 B4:m1", "optimal 8"},
	{"a greatest lag draws the first job to the second", "m=1 A2 B6:m1[2,0] C1:m1 A>C A>C<1 A>B", "optimal 9 [0 3 2]"},
	{"and delays it where the second can not come sooner", "w=10-20 A2 B3/w A>B A>B<4", "optimal 13 [4 10]"},
	{"a tool is held in the pause", "m=1 w=0-2,10-12 A4/w:m1~ B3:m1", "optimal 15"},
	{"or is free in it", "m=1 w=0-2,10-12 A4/w:m1 B3:m1", "optimal 12 [0 2]"},
	{"release and due", "m=1 A2:m1[3,0] B4:m1[0,6] C1:m1", "optimal 7 [4 0 6]"},
	{"what has begun stays", "m=1 A5:m1@3 B3:m1 C2:m1", "optimal 10 [3 0 8]"},
	{"what is done is not judged", "m=1 A5:m1@0 B3:m1@1 C2:m1 A>B", "optimal 7 [0 1 5] broken [0]"},
	{"fewest days", "d=0,10,20 m=1 A5 B2:m1[0,0] C6:m1 D20 A>C+6 used=B,C", "optimal 20 goals [{1 1}]"},
	{"days of hire from first to last", "d=0,10,20,30 A2 B2[12,0] C30 A>B+5 span=A,B", "optimal 30 goals [{1 1}]"},
	{"the day before can not be saved", "d=0,10,20,30 A2 B2 C30 A>B+16 span=A,B used=A,B", "optimal 30 goals [{2 2} {2 2}]"},
	{"goals in order", "d=0,10,20 m=1 A6 B3:m1 C3:m1 D20 A>B A>C+5 used=A,B used=C,A", "optimal 20 goals [{1 1} {2 2}]"},

	{"a limit costs time", "d=0,10,20 m=1 A5:m1 B2:m1 C6 A>C+5 used<1=B,C", "optimal 16 [0 10 10]"},
	{"a limit that costs nothing", "d=0,10,20 m=1 A5:m1 B2:m1 C6 A>C+5 used<2=B,C", "optimal 16 [0 5 10]"},
	{"a span within a limit", "d=0,10,20,30 A2 B2 C30 A>B+5 span<1=A,B", "optimal 30"},

	{"over the limit", "d=0,10,20 A2 B2 A>B+42 span<1=A,B", "infeasible"},
	{"a limit of none", "d=0,10 A2 B2 used<0=B", "infeasible limit"},
	{"a ring", "A1 B1 C1 A>B B>C C>A", "infeasible cycle [0 1 2] lags [0 1 2]"},
	{"a greatest lag too short", "A1 B3 C1 A>B B>C A>C<2", "infeasible cycle [0 1 2] lags [0 1 2]"},
	{"no span long enough", "w=0-4,10-14 A5/w!", "infeasible room [0]"},
	{"more than there is", "m=2 A1 B1:m3", "infeasible room [1]"},
	{"too late", "A3 B4[0,6] A>B", "infeasible window [1]"},
	{"the window was missed", "w=0-8,24-32 A1@0 B1/w[20,0] A>B<6", "infeasible window [1]"},
	{"three in the time of two", "h=6 m=1 A2:m1 B2:m1 C3:m1", "infeasible"},
}

var outcomes = map[Outcome]string{Malformed: "malformed", Infeasible: "infeasible", Unknown: "unknown", Feasible: "feasible",
	Optimal: "optimal"}

var troubles = map[TroubleKind]string{Cycle: "cycle", NoRoom: "room", EmptyWindow: "window", NoneFits: "none",
	BadJob: "job", BadLag: "lag", BadResource: "resource", BadCalendar: "calendar", BadDays: "days", BadGoal: "goal",
	BadLimit: "limit", OverLimit: "limit", BadHorizon: "horizon", OverspentSearch: "steps"}

func TestCases(t *testing.T) {
	for _, c := range cases {
		p := parse(t, c.line)
		r := Solve(p, Options{})
		if bad := wrong(p, &r); bad != "" {
			t.Errorf("%s: %s", c.name, bad)
		}
		if got := describe(&r); !strings.HasPrefix(got, c.want) && !strings.HasPrefix(without(got, r.Starts), c.want) {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
	}
}

func describe(r *Result) string {
	if r.Outcome < Feasible {
		s := outcomes[r.Outcome] + " " + troubles[r.Trouble.Kind]
		if r.Trouble.Jobs != nil {
			s += fmt.Sprint(" ", r.Trouble.Jobs)
		}
		if r.Trouble.Lags != nil {
			s += fmt.Sprint(" lags ", r.Trouble.Lags)
		}
		return s
	}
	s := fmt.Sprint(outcomes[r.Outcome], " ", r.Finish, " ", r.Starts)
	if r.Goals != nil {
		s += fmt.Sprint(" goals ", r.Goals)
	}
	if r.Broken != nil {
		s += fmt.Sprint(" broken ", r.Broken)
	}
	return s
}

func without(s string, starts []int) string {
	return strings.Replace(s, fmt.Sprint(" ", starts), "", 1)
}

// What has no meaning is named, not solved.
func TestMalformed(t *testing.T) {
	for want, p := range map[string]*Problem{
		"horizon":    {Horizon: -1},
		"job [0]":    {Jobs: []Job{{Duration: -1, Calendar: Clock}}},
		"job [1]":    {Jobs: []Job{{Calendar: Clock}, {Calendar: 0}}},
		"lag lags":   {Jobs: []Job{{Calendar: Clock}}, Lags: []Lag{AtLeast(End(0), Start(1), 0)}},
		"resource":   {Resources: []Resource{{{3, 1}, {2, 1}}}},
		"calendar":   {Calendars: []Calendar{{{3, 5}, {4, 6}}}},
		"days":       {Goals: []Goal{{}}},
		"goal":       {Days: []int{0}, Goals: []Goal{{Jobs: []int{0}}}},
		"limit":      {Days: []int{0}, Limits: []Limit{{Most: -1}}},
		"limit no":   {Days: []int{0}, Limits: []Limit{{Goal: Goal{Jobs: []int{2}}}}},
		"days no":    {Limits: []Limit{{}}},
		"job [0] no": {Jobs: []Job{{Calendar: Clock, Uses: []Use{{Resource: 0, Amount: 1}}}}},
	} {
		r := Solve(p, Options{})
		if got, want := describe(&r), "malformed "+strings.TrimSuffix(want, " no"); !strings.HasPrefix(got, want) {
			t.Errorf("got %s, want %s", got, want)
		}
	}
}

// The chain in words of the case: job, why, what it waits for.
func TestChain(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"w=0-8,24-32 A8/w B20 C2/w D1 A>B B>C", "A at once; B lag 0 after A; C lag 1 after B"},
		{"w=0-8,24-32 A8/w B2 C2/w A>B B>C", "A at once; B lag 0 after A; C lag 1 after B, ready 10 of 24"},
		{"m=1 A2:m1 B3:m1 A>B+0 C1 ", "A at once; B lag 0 after A"},
		{"m=1 A2:m1@0 B3:m1", "A fixed; B resource 0 after A"},
		{"m=0,24:1 B3:m1", "A hours, ready 0 of 24"},
		{"A3[5,0] B1 A>B", "A released, ready 5 of 5; B lag 0 after A"},
		{"w=10-20 A2 B3/w C1 A>B A>B<4 A>C+20", "B hours, ready 0 of 10; A within lag 1 of B; C lag 2 after A"},
	} {
		p := parse(t, c.line)
		r := Solve(p, Options{})
		if bad := wrong(p, &r); bad != "" {
			t.Error(c.line, bad)
		}
		if got := chainWords(&r); got != c.want {
			t.Errorf("%s\n got %s\nwant %s", c.line, got, c.want)
		}
	}
}

func chainWords(r *Result) string {
	var out []string
	for _, l := range r.Chain {
		s := string(rune('A' + l.Job))
		from := string(rune('A' + l.From))
		switch l.Why {
		case AtOnce:
			s += " at once"
		case Released:
			s += " released"
		case AsFixed:
			s += " fixed"
		case ForHours:
			s += " hours"
		case ByChoice:
			s += " by choice"
		case AfterLag:
			s += fmt.Sprintf(" lag %d after %s", l.Lag, from)
		case WithinLag:
			s += fmt.Sprintf(" within lag %d of %s", l.Lag, from)
		case ForResource:
			s += fmt.Sprintf(" resource %d after %s", l.Resource, from)
		}
		if l.Ready != r.Starts[l.Job] || l.Why == Released {
			s += fmt.Sprintf(", ready %d of %d", l.Ready, r.Starts[l.Job])
		}
		out = append(out, s)
	}
	return strings.Join(out, "; ")
}
