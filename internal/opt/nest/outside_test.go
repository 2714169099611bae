package nest

import (
	"math/rand/v2"
	"testing"

	"dryfit/internal/opt/outside"
)

// outsideCases is how many problems are held against a general solver.
const outsideCases = 30

// TestOutside: more parts than are tried in full, on sheets so small that cutting
// at every place tells which sets of parts a sheet holds. A general solver that
// has all these sets as columns finds a least cost between bound and plan.
func TestOutside(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 62))
	for range outsideCases {
		p := some(r)
		res := Pack(p)
		if err := recheck(p, res); err != nil {
			t.Fatal(err)
		}
		least := holdings(p).Least(t)
		if res.Lower > least || least > res.Money {
			t.Errorf("bound %d, least %d, plan %d: %+v", res.Lower, least, res.Money, p)
		}
	}
}

// some is 7 or 8 parts, a sheet that is sold, a smaller one and a scrap.
func some(r *rand.Rand) Problem {
	p := Problem{Kerf: r.Int64N(2), First: Cut(r.IntN(3)), Budget: 2000}
	for n := ExactParts + 1 + r.IntN(2); n > 0; {
		q := Part{W: 1 + r.Int64N(5), H: 1 + r.Int64N(4), Count: 1 + r.IntN(min(n, 2)), Turns: r.IntN(2) == 0}
		p.Parts = append(p.Parts, q)
		n -= q.Count
	}
	p.Sheets = []Sheet{
		{W: 7 + r.Int64N(3), H: 6 + r.Int64N(3), Price: 10 + r.Int64N(6), Count: Unlimited},
		{W: 5 + r.Int64N(3), H: 4 + r.Int64N(2), Price: 5 + r.Int64N(4), Count: Unlimited},
		{W: 4 + r.Int64N(3), H: 3, Count: 1},
	}
	return p
}

// holdings is the problem of choosing sheets, each with a set of parts that it
// holds.
func holdings(p Problem) *outside.Program {
	lp := &outside.Program{}
	b := newBrute(p, nil)
	cover := make([][]outside.Term, len(b.part))
	for _, s := range p.Sheets {
		var used []outside.Term
		for set := 1; set < 1<<len(b.part); set++ {
			if b.area(set) > s.W*s.H || !b.sheet(s, set) {
				continue
			}
			x := lp.Var(s.Price, 0, 1)
			used = append(used, outside.Term{Var: x, Factor: 1})
			for i := range b.part {
				if set>>i&1 == 1 {
					cover[i] = append(cover[i], outside.Term{Var: x, Factor: 1})
				}
			}
		}
		if s.Count != Unlimited && len(used) > 0 {
			lp.AtMost(used, int64(s.Count))
		}
	}
	for _, c := range cover {
		lp.AtLeast(c, 1)
	}
	return lp
}
