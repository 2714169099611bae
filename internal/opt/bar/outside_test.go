package bar

import (
	"math/rand/v2"
	"testing"

	"dryfit/internal/opt/outside"
)

// outsideCases is how many problems are held against a general solver.
const outsideCases = 60

// TestOutside: a general solver, given all fillings of the sticks as columns, finds
// a least cost that lies between bound and plan, and is both where they meet.
func TestOutside(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 61))
	for range outsideCases {
		p := some(r)
		res := Pack(p)
		checkPlan(t, p, res)
		least := fillings(p).Least(t)
		if res.Lower > least || least > res.Money || res.Complete && res.Lower != res.Money {
			t.Errorf("bound %d, least %d, plan %d, complete %v: %+v", res.Lower, least, res.Money, res.Complete, p)
		}
	}
}

// some is 6 to 20 pieces of up to five lengths, a stick that is sold, one that
// is shorter and cheaper, and a scrap.
func some(r *rand.Rand) Problem {
	p := Problem{Kerf: r.Int64N(4), Trim: r.Int64N(3)}
	for range 3 + r.IntN(3) {
		p.Pieces = append(p.Pieces, Piece{Length: 120 + r.Int64N(300), Count: 2 + r.IntN(3)})
	}
	p.Stocks = []Stock{
		{Length: 900 + r.Int64N(200), Price: 50 + r.Int64N(20), Count: Unlimited},
		{Length: 500 + r.Int64N(200), Price: 25 + r.Int64N(15), Count: Unlimited},
		{Length: 400 + r.Int64N(100), Count: 1 + r.IntN(2)},
	}
	return p
}

// fillings is the problem of choosing sticks, each filled in one of all ways that
// take no further piece.
func fillings(p Problem) *outside.Program {
	lp := &outside.Program{}
	cover := make([][]outside.Term, len(p.Pieces))
	for _, s := range p.Stocks {
		var used []outside.Term
		eachFilling(p, s.Length-2*p.Trim+p.Kerf, func(n []int) {
			x := lp.Var(s.Price, 0, outside.None)
			used = append(used, outside.Term{Var: x, Factor: 1})
			for i, c := range n {
				if c > 0 {
					cover[i] = append(cover[i], outside.Term{Var: x, Factor: int64(c)})
				}
			}
		})
		if s.Count != Unlimited && len(used) > 0 {
			lp.AtMost(used, int64(s.Count))
		}
	}
	for i, q := range p.Pieces {
		lp.AtLeast(cover[i], int64(q.Count))
	}
	return lp
}

// eachFilling tells all ways to fill a length with pieces that take no further one.
func eachFilling(p Problem, room int64, tell func(n []int)) {
	n := make([]int, len(p.Pieces))
	var from func(i int, room int64)
	from = func(i int, room int64) {
		if i < len(n) {
			size := p.Pieces[i].Length + p.Kerf
			for n[i] = 0; int64(n[i])*size <= room && n[i] <= p.Pieces[i].Count; n[i]++ {
				from(i+1, room-int64(n[i])*size)
			}
			n[i] = 0
			return
		}
		some := false
		for k, q := range p.Pieces {
			if n[k] < q.Count && q.Length+p.Kerf <= room {
				return
			}
			some = some || n[k] > 0
		}
		if some {
			tell(n)
		}
	}
	from(0, room)
}
