package mip

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// Every problem of two variables and two rows with small numbers: 3^8 of them, with ranges that hold 0 at an end and inside.
func TestAllSmall(t *testing.T) {
	p := Problem{Vars: make([]Var, 2), Rows: []Row{{A: make([]int64, 2)}, {A: make([]int64, 2)}}}
	ranges := []Var{{-1, 2, 1}, {0, 3, 1}, {-2, 0, 2}}
	for code := range 6561 {
		next := func() int64 { d := int64(code % 3); code /= 3; return d }
		p.Vars[0], p.Vars[1] = ranges[next()], ranges[next()]
		for i := range p.Rows {
			p.Rows[i].A[0], p.Rows[i].A[1], p.Rows[i].B = next()*2-2, next()-1, next()*2-1
		}
		if err := check(p); err != nil {
			t.Fatal(err)
		}
	}
}

// The order of the rows changes nothing; rows and costs in other units change only those numbers.
func TestInvariance(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 300 {
		p := room(rng, 1+rng.IntN(7), rng.IntN(30), 6)
		r := Solve(p)
		if err := identities(p, r); err != nil {
			t.Fatal(err)
		}
		q := Problem{Vars: slices.Clone(p.Vars), Rows: slices.Clone(p.Rows)}
		rng.Shuffle(len(q.Rows), func(i, j int) { q.Rows[i], q.Rows[j] = q.Rows[j], q.Rows[i] })
		for j := range q.Vars {
			q.Vars[j].Cost *= 7
		}
		for i := range q.Rows {
			a := slices.Clone(q.Rows[i].A)
			for j := range a {
				a[j] *= 3
			}
			q.Rows[i] = Row{a, q.Rows[i].B * 3}
		}
		s := Solve(q)
		if !slices.Equal(r.X, s.X) || s.Miss != 3*r.Miss || s.Cost != 7*r.Cost {
			t.Fatalf("%s\n%+v\n%s\n%+v", p.line(), r, q.line(), s)
		}
	}
}

// Problems that fall apart are solved as one: two side by side give both answers.
func TestSideBySide(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for range 200 {
		p, q := random(rng), random(rng)
		both := Problem{Vars: append(slices.Clone(p.Vars), q.Vars...)}
		for _, r := range p.Rows {
			both.Rows = append(both.Rows, Row{append(slices.Clone(r.A), make([]int64, len(q.Vars))...), r.B})
		}
		for _, r := range q.Rows {
			both.Rows = append(both.Rows, Row{append(make([]int64, len(p.Vars)), r.A...), r.B})
		}
		got, a, b := Solve(both), Solve(p), Solve(q)
		if !slices.Equal(got.X, append(slices.Clone(a.X), b.X...)) || got.Miss != a.Miss+b.Miss {
			t.Fatalf("%s\n%+v\n%+v\n%+v", both.line(), got, a, b)
		}
	}
}

// With a small budget the answer is still an x within its ranges with honest bounds, and says whether it is proven.
func TestBudget(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	cut := 0
	for range 100 {
		p := room(rng, 8, 40, 8)
		whole := Solve(p)
		p.Budget = 3
		r := Solve(p)
		if err := identities(p, r); err != nil {
			t.Fatal(err)
		}
		if !r.Complete {
			cut++
		}
		if r.LeastMiss > whole.Miss || r.Miss < whole.Miss {
			t.Fatalf("%s\n%+v\n%+v", p.line(), r, whole)
		}
		if r.Miss == whole.Miss && (r.LeastChanged > whole.Changed || r.Changed == whole.Changed && r.LeastCost > whole.Cost) {
			t.Fatalf("%s: bounds above the best\n%+v\n%+v", p.line(), r, whole)
		}
	}
	if cut < 20 {
		t.Errorf("only %d of 100 were cut short", cut)
	}
}

func TestPanics(t *testing.T) {
	for name, p := range map[string]Problem{
		"range without 0": parse(t, "1..3"),
		"negative cost":   parse(t, "0..3@-1"),
		"short row":       parse(t, "0..3 0..3 | 1 >= 2"),
		"too large":       parse(t, "0..1000000000 | 1000000000 >= 2"),
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: no panic", name)
				}
			}()
			Solve(p)
		}()
	}
}

func FuzzSolve(f *testing.F) {
	f.Add([]byte{1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
	f.Add([]byte{3, 9, 1, 9, 2, 9, 3, 200, 100, 50, 3, 20, 100, 1, 2, 250})
	f.Add([]byte{2, 0, 0, 0, 255, 255, 255, 128, 127, 1, 1})
	f.Fuzz(func(t *testing.T, data []byte) {
		next := func() int64 {
			if len(data) == 0 {
				return 0
			}
			b := data[0]
			data = data[1:]
			return int64(b)
		}
		var p Problem
		for range 1 + next()%4 {
			c := next()
			p.Vars = append(p.Vars, Var{-(c % 4), c / 4 % 5, c / 32})
		}
		for len(data) > 0 && len(p.Rows) < 6 {
			r := Row{A: make([]int64, len(p.Vars)), B: next()*2 - 300}
			for j := range r.A {
				r.A[j] = next() - 128
			}
			p.Rows = append(p.Rows, r)
		}
		if err := check(p); err != nil {
			t.Error(err)
		}
	})
}
