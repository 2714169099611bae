package mip

import (
	"cmp"
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"
)

// brute goes through every x.
func brute(p Problem) (x []int64, miss int64, changed int, cost int64) {
	at := make([]int64, len(p.Vars))
	for j, v := range p.Vars {
		at[j] = v.Lo
	}
	for {
		m := p.miss(at)
		k, c := p.measure(at)
		if x == nil || cmp.Or(cmp.Compare(m, miss), cmp.Compare(k, changed), cmp.Compare(c, cost)) < 0 {
			x, miss, changed, cost = slices.Clone(at), m, k, c
		}
		j := len(at) - 1
		for ; j >= 0; j-- {
			if at[j]++; at[j] <= p.Vars[j].Hi {
				break
			}
			at[j] = p.Vars[j].Lo
		}
		if j < 0 {
			return x, miss, changed, cost
		}
	}
}

// check holds a result against every x and against the identities of the package.
func check(p Problem) error {
	r := Solve(p)
	x, miss, changed, cost := brute(p)
	if !r.Complete || !slices.Equal(r.X, x) || r.Miss != miss || r.Changed != changed || r.Cost != cost {
		return fmt.Errorf("%s\ngot %+v\nwant %v miss %d changed %d cost %d", p.line(), r, x, miss, changed, cost)
	}
	return identities(p, r)
}

func identities(p Problem, r Result) error {
	by, miss := p.short(r.X)
	changed, cost := p.measure(r.X)
	ok := slices.Equal(by, r.Short) && miss == r.Miss && changed == r.Changed && cost == r.Cost &&
		r.LeastMiss <= r.Miss && r.LeastChanged <= r.Changed && r.LeastCost <= r.Cost
	if r.Complete {
		ok = ok && r.LeastMiss == r.Miss && r.LeastChanged == r.Changed && r.LeastCost == r.Cost
	}
	for j, v := range p.Vars {
		ok = ok && r.X[j] >= v.Lo && r.X[j] <= v.Hi
	}
	if p.miss(make([]int64, len(p.Vars))) == 0 && changed != 0 {
		ok = false
	}
	if !ok {
		return fmt.Errorf("%s\n%+v breaks an identity", p.line(), r)
	}
	return nil
}

// random makes a problem of up to five variables with short ranges, its rows sparse as those of a room are.
func random(rng *rand.Rand) Problem {
	var p Problem
	n := 1 + rng.IntN(5)
	for range n {
		v := Var{Lo: -rng.Int64N(5), Hi: rng.Int64N(5), Cost: rng.Int64N(4)}
		p.Vars = append(p.Vars, v)
	}
	size := []int64{1, 3, 20}[rng.IntN(3)]
	for range rng.IntN(8) {
		r := Row{A: make([]int64, n), B: rng.Int64N(8*size) - 6*size}
		for j := range r.A {
			if rng.IntN(2) == 0 {
				r.A[j] = rng.Int64N(2*size+1) - size
			}
		}
		p.Rows = append(p.Rows, r)
	}
	return p
}

func TestAgainstEveryX(t *testing.T) {
	cases := 6000
	if testing.Short() {
		cases = 600
	}
	rng := rand.New(rand.NewPCG(1, 2))
	missed, joint := 0, 0
	for range cases {
		p := random(rng)
		if err := check(p); err != nil {
			t.Fatal(err)
		}
		if r := Solve(p); r.Miss > 0 {
			missed++
		} else if r.Changed > 1 {
			joint++
		}
	}
	if missed < cases/10 || joint < cases/40 {
		t.Errorf("%d cases miss and %d change several: too few to test with", missed, joint)
	}
}

// A row more or a range narrowed never gives a smaller miss.
func TestNarrowing(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		p := random(rng)
		before := Solve(p).Miss
		if more := append(slices.Clone(p.Rows), random(rng).Rows...); len(more) > len(p.Rows) && len(more[len(more)-1].A) == len(p.Vars) {
			q := Problem{Vars: p.Vars, Rows: append(slices.Clone(p.Rows), more[len(more)-1])}
			if after := Solve(q).Miss; after < before {
				t.Fatalf("%s misses by %d, without its last row by %d", q.line(), after, before)
			}
		}
		q := Problem{Vars: slices.Clone(p.Vars), Rows: p.Rows}
		q.Vars[0].Hi /= 2
		if after := Solve(q).Miss; after < before {
			t.Fatalf("%s misses by %d, with more range by %d", q.line(), after, before)
		}
	}
}

// Single is Solve of one variable.
func TestSingle(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 4000 {
		v := Var{Lo: -rng.Int64N(12), Hi: rng.Int64N(12), Cost: 1}
		p := Problem{Vars: []Var{v}}
		var ones []One
		for range rng.IntN(6) {
			o := One{rng.Int64N(9) - 4, rng.Int64N(61) - 30}
			ones = append(ones, o)
			p.Rows = append(p.Rows, Row{[]int64{o.A}, o.B})
		}
		f, r := Single(v, ones), Solve(p)
		if f.X != r.X[0] || f.Miss != r.Miss {
			t.Fatalf("%s: single %+v, joint %+v", p.line(), f, r)
		}
	}
}

// Worked by hand.
func TestByHand(t *testing.T) {
	for _, c := range []struct {
		line string
		x    []int64
		miss int64
	}{
		{"0..9", []int64{0}, 0},
		{"-9..9 | 2 >= 7", []int64{4}, 0},                                     // 2·3 = 6 is one short
		{"-9..9 | -2 >= 7", []int64{-4}, 0},                                   //
		{"0..3 | 2 >= 7", []int64{3}, 1},                                      // all there is, one short
		{"0..9@1 0..9@9 | 1 2 >= 8", []int64{8, 0}, 0},                        // 8 steps of 1 are cheaper than 4 of 9
		{"0..9@3 0..9@5 | 1 2 >= 8", []int64{0, 4}, 0},                        // 20 against 24
		{"0..9 0..9 | 1 1 >= 4", []int64{0, 4}, 0},                            // one change, the first in order
		{"0..3 0..3 | 1 1 >= 4", []int64{1, 3}, 0},                            // two changes, cost 4, first in order
		{"-5..5 -5..5 | 1 0 >= 3 | -1 1 >= 0", []int64{3, 3}, 0},              // what mends one takes the other along
		{"-5..5 -5..5 -5..5 | 1 0 0 >= 3 | -1 1 1 >= 0", []int64{3, 0, 3}, 0}, //
		{"-5..5 | 1 >= 3 | -1 >= -1", []int64{1}, 2},                          // 3 or more and 1 or less: 2 apart, nearest to 0
		{"-5..5 | 3 >= 3 | -1 >= 4", []int64{1}, 5},                           // the steep row first: at 1 the other lacks 5
		{"-10..10 0..2 | 1 -1 >= 5 | -1 1 >= -4", []int64{4, 0}, 1},           // at least 5 and at most 4: always one short, at 4 or 5
		{"0..40 0..40 0..40 | 1 1 1 >= 100", []int64{20, 40, 40}, 0},          // three changes, cost 100 whatever way
		{"0..1@0 0..1@0 | 1 1 >= 1", []int64{0, 1}, 0},                        // nothing costs
		{"-3..3 -3..3 | 0 0 >= 5 | 1 0 >= 1", []int64{1, 0}, 5},               // a row that nothing moves
	} {
		p := parse(t, c.line)
		if r := Solve(p); !slices.Equal(r.X, c.x) || r.Miss != c.miss || !r.Complete {
			t.Errorf("%s: %+v, want %v missing %d", c.line, r, c.x, c.miss)
		}
		if err := check(p); err != nil && len(p.Vars) < 3 {
			t.Error(err)
		}
	}
}
