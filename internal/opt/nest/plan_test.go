package nest

import (
	"fmt"
	"reflect"
	"testing"
)

// TestPlans: what each line must give is worked out by hand: money, parts that
// lack, area of the largest offcut.
func TestPlans(t *testing.T) {
	for _, c := range []struct{ why, line, want string }{
		{"a sheet divided without rest", "10x10$7 | 5x5*4 |", "7 0 0"},
		{"with a kerf only one goes in: 5+1+5 > 10", "10x10$7 | 5x5*4 | kerf 1", "28 0 40"},
		{"5+2+5 > 11", "11x5$1 | 5x5*2 | kerf 2", "2 0 20"},
		{"5+2+5 = 12", "12x5$1 | 5x5*2 | kerf 2", "1 0 0"},
		{"the last cut shaves 1 off", "13x5$1 | 5x5*2 | kerf 2", "1 0 0"},
		{"behind the last cut stays 15-5-2-5-2", "15x5$1 | 5x5*2 | kerf 2", "1 0 5"},
		{"the same offcut is too narrow to be of use", "15x5$1 | 5x5*2 | kerf 2 least 2", "1 0 0"},
		{"trim takes 1 at each side", "12x12$1-1 | 10x10 |", "1 0 0"},
		{"trim takes too much", "12x12$1-1 | 11x10 |", "0 0 0 unfit 0"},
		{"turned", "10x4$3 | 4x10r |", "3 0 0"},
		{"grain is fixed", "10x4$3 | 4x10 |", "0 0 0 unfit 0"},
		{"four round one need no second sheet, but for straight cuts", "5x5$1 | 3x2r*4 1x1 |", "2 0 15"},
		{"one stage does not free a part at all sides", "4x4$1 | 2x2*4 | stages 1", "0 0 0 unfit 0"},
		{"two do", "4x4$1 | 2x2*4 | stages 2", "1 0 0"},
		{"strips of one stage", "4x4$1 | 4x2*2 | stages 1", "1 0 0"},
		{"2 in a strip of 3 must be trimmed: a third stage", "5x3$1 | 3x3 2x2 | stages 2", "1 0 2"},
		{"a high part beside two low ones: crosscut", "6x4$1 | 3x4 3x2*2 | crosscut", "1 0 0"},
		{"rip first needs another sheet", "6x4$1 | 3x4 3x2*2 | rip", "2 0 12"},
		{"nothing to rip: all parts reach across", "6x4$1 | 3x4*2 | rip", "1 0 0"},
		{"the large sheet for two, the small for one", "10x10$10 10x5$6 | 10x5*3 |", "16 0 0"},
		{"the offcut on hand costs nothing", "10x10$10 10x5$0*1 | 10x5*3 |", "10 0 0"},
		{"one sheet, two parts", "10x10$10*1 | 10x10*2 |", "10 1 0"},
		{"nothing wanted", "10x10$10 | 3x3*0 |", "0 0 0"},
		{"no sheet", " | 3x3 |", "0 0 0 unfit 0"},
	} {
		p := parse(t, c.line)
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Errorf("%s: %v", c.line, err)
		}
		if got := told(r); got != c.want {
			t.Errorf("%s: %s: got %s, want %s", c.why, c.line, got, c.want)
		}
	}
}

func told(r Result) string {
	lack := 0
	for _, n := range r.Lacking {
		lack += n
	}
	s := fmt.Sprintf("%d %d %d", r.Money, lack, r.Offcut.Area())
	for _, i := range r.Unfit {
		s += fmt.Sprintf(" unfit %d", i)
	}
	return s
}

// kitchen is a made-up job on plywood of two sizes, in tenths of a millimeter.
const kitchen = "24400x12200$62-50 15250x15250$55-50 8000x6000$0*1 | " +
	"7200x5600*8 5640x5600*4 5640x1000r*8 7160x3970*6 7160x4470*2 3000x5000r*7 " +
	"9000x3000*3 4500x1200r*12 18000x6000*2 | kerf 32 least 1000"

// TestSame: the same problem gives the same plan.
func TestSame(t *testing.T) {
	p := parse(t, kitchen+" budget 3000")
	a, b := Pack(p), Pack(p)
	if !reflect.DeepEqual(a, b) {
		t.Error("two plans differ")
	}
}

// TestSaw: what the saw can do binds the plan and costs no less than freedom.
func TestSaw(t *testing.T) {
	free := Pack(parse(t, kitchen+" budget 5000"))
	for _, saw := range []string{"", " rip", " crosscut", " stages 2", " stages 3", " rip stages 3", " crosscut stages 4"} {
		p := parse(t, kitchen+" budget 5000"+saw)
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Errorf("%s: %v", saw, err)
		}
		if r.Money < free.Lower {
			t.Errorf("%s: %d is below the bound %d", saw, r.Money, free.Lower)
		}
		t.Logf("%s: %d to %d by %s, offcut %d of %d, %d sheets, %d steps", saw, r.Lower, r.Money, r.Proof.By, r.Offcut.Area(), r.Largest, len(r.Boards), r.Steps)
	}
}

// TestRefused: numbers that only a bug of the caller can give.
func TestRefused(t *testing.T) {
	good := parse(t, "4x4$1 | 2x2 |")
	for _, spoil := range []func(*Problem){
		func(p *Problem) { p.Kerf = -1 },
		func(p *Problem) { p.First = 3 },
		func(p *Problem) { p.Stages = -1 },
		func(p *Problem) { p.Parts = []Part{{W: 0, H: 1, Count: 1}} },
		func(p *Problem) { p.Parts = []Part{{W: 1, H: maxSize + 1, Count: 1}} },
		func(p *Problem) { p.Parts = []Part{{W: 1, H: 1, Count: maxParts}, {W: 1, H: 1, Count: 1}} },
		func(p *Problem) { p.Sheets = []Sheet{{W: 1, H: 0}} },
		func(p *Problem) { p.Sheets = []Sheet{{W: 1, H: 1, Price: -1}} },
		func(p *Problem) { p.Sheets = []Sheet{{W: 1, H: 1, Count: -2}} },
		func(p *Problem) { p.Sheets = []Sheet{{W: 1, H: 1, Trim: -1}} },
	} {
		p := good
		spoil(&p)
		if !panics(p) {
			t.Errorf("taken: %+v", p)
		}
	}
	if panics(good) {
		t.Error("refused")
	}
}

func panics(p Problem) (yes bool) {
	defer func() { yes = recover() != nil }()
	Pack(p)
	return false
}
