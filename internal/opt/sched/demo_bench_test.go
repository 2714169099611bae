package sched

import "testing"

// room is a project of the size of a bathroom: 40 jobs in ticks of a quarter hour over eight weeks, evenings and
// Saturdays, a helper on Saturdays, curing on the clock, a recoat window, a hired tool.
func room() *Problem {
	const hour, day = 4, 96
	p := &Problem{Horizon: 56 * day, Resources: []Resource{Constant(1), nil, Constant(2)}}
	var own Calendar
	helper := Resource{{0, 0}}
	for d := range 56 {
		p.Days = append(p.Days, d*day)
		switch d % 7 {
		case 5:
			own = append(own, Span{d*day + 8*hour, d*day + 18*hour})
			helper = append(helper, Level{d*day + 8*hour, 1}, Level{d*day + 16*hour, 0})
		case 6:
		default:
			own = append(own, Span{d*day + 18*hour, d*day + 21*hour})
		}
	}
	p.Calendars, p.Resources[1] = []Calendar{own}, helper
	for i := range 40 {
		j := Job{Duration: 2 + i*7%11, Uses: []Use{{Resource: 0, Amount: 1}, {Resource: 2, Amount: 1 + i%2}}}
		switch {
		case i%5 == 2:
			j = Job{Duration: (10 + i%30) * hour, Calendar: Clock}
		case i%13 == 4:
			j.Uses = append(j.Uses, Use{Resource: 1, Amount: 1})
		}
		p.Jobs = append(p.Jobs, j)
		if i >= 3 {
			p.Lags = append(p.Lags, AtLeast(End(i-3), Start(i), 0))
		}
		if i%5 == 3 && i > 4 {
			p.Lags = append(p.Lags, AtLeast(End(i-1), Start(i), 0), AtMost(End(i-1), Start(i), 9*day))
		}
	}
	p.Goals = []Goal{{DaysSpanned, []int{10, 14, 18}}, {DaysUsed, []int{0, 20, 30}}}
	return p
}

func TestRoom(t *testing.T) {
	p := room()
	r := Solve(p, Options{})
	if bad := wrong(p, &r); bad != "" || r.Outcome < Feasible {
		t.Fatal(bad, r.Outcome, r.Trouble)
	}
	t.Logf("outcome %d, finish %d, bound %d by %d, goals %v, %d links, %d steps", r.Outcome, r.Finish, r.Bound, r.Proof, r.Goals,
		len(r.Chain), r.Steps)
}

func BenchmarkRoom(b *testing.B) {
	p := room()
	for b.Loop() {
		Solve(p, Options{})
	}
}
