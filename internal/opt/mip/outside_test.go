package mip

import (
	"math/rand/v2"
	"testing"

	"dryfit/internal/opt/outside"
)

// outsideCases is how many problems are held against a general solver.
const outsideCases = 60

// TestOutside: the miss, the changes and the cost, weighed so that none of the later
// ones outweighs an earlier one, are the least that a general solver finds.
func TestOutside(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 63))
	for range outsideCases {
		p := random(rng)
		r := Solve(p)
		if !r.Complete {
			t.Fatalf("%s: not complete", p.line())
		}
		change, miss := weights(p)
		got := r.Miss*miss + int64(r.Changed)*change + r.Cost
		if least := changes(p, change, miss).Least(t); got != least {
			t.Errorf("%s: %d, a general solver finds %d", p.line(), got, least)
		}
	}
}

// weights of one change and of a miss of one.
func weights(p Problem) (change, miss int64) {
	change = 1
	for _, v := range p.Vars {
		change += v.Cost * max(-v.Lo, v.Hi)
	}
	return change, change * int64(len(p.Vars)+1)
}

// changes has for each variable how far it goes down and up and whether it is
// changed, and for each row what it lacks.
func changes(p Problem, change, miss int64) *outside.Program {
	lp := &outside.Program{}
	terms := make([][]outside.Term, len(p.Rows))
	for j, v := range p.Vars {
		down, up, is := lp.Var(v.Cost, 0, -v.Lo), lp.Var(v.Cost, 0, v.Hi), lp.Var(change, 0, 1)
		lp.AtMost([]outside.Term{{Var: down, Factor: 1}, {Var: is, Factor: v.Lo}}, 0)
		lp.AtMost([]outside.Term{{Var: up, Factor: 1}, {Var: is, Factor: -v.Hi}}, 0)
		for i, r := range p.Rows {
			terms[i] = append(terms[i], outside.Term{Var: down, Factor: -r.A[j]}, outside.Term{Var: up, Factor: r.A[j]})
		}
	}
	for i, r := range p.Rows {
		lp.AtLeast(append(terms[i], outside.Term{Var: lp.Var(miss, 0, outside.None), Factor: 1}), r.B)
	}
	return lp
}
