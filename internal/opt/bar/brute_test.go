package bar

import (
	"math/rand/v2"
	"testing"
)

// value is what a plan is judged by, in order.
type value struct {
	lacking        int
	money, remnant int64
}

func (a value) better(b value) bool {
	if a.lacking != b.lacking {
		return a.lacking < b.lacking
	}
	if a.money != b.money {
		return a.money < b.money
	}
	return a.remnant > b.remnant
}

// brute tries every way to put each piece into every run of every stick.
type brute struct {
	p      Problem
	sticks []bruteStick
	pieces []int64
	best   value
	found  bool
}

type bruteStick struct {
	stock int
	rest  []int64 // of each run, a kerf added
	used  int
}

func bruteBest(p Problem) value {
	b := &brute{p: p}
	for _, q := range p.Pieces {
		for range q.Count {
			if anyHolds(p, q.Length) {
				b.pieces = append(b.pieces, q.Length)
			}
		}
	}
	for s, st := range p.Stocks {
		n := st.Count
		if n == Unlimited || n > len(b.pieces)+1 {
			n = len(b.pieces) + 1
		}
		for range n {
			b.sticks = append(b.sticks, bruteStick{stock: s, rest: bruteRuns(p, st)})
		}
	}
	b.place(0, value{})
	return b.best
}

// bruteRuns walks along the stick unit by unit.
func bruteRuns(p Problem, s Stock) (runs []int64) {
	open := false
	for at := range s.Length {
		if !free(p, s, at, at+1) {
			open = false
			continue
		}
		if !open {
			runs, open = append(runs, p.Kerf), true
		}
		runs[len(runs)-1]++
	}
	return runs
}

func (b *brute) place(i int, v value) {
	if b.found && (v.lacking > b.best.lacking || v.lacking == b.best.lacking && v.money > b.best.money) {
		return
	}
	if i == len(b.pieces) {
		for _, s := range b.sticks {
			for _, r := range s.rest {
				if s.used > 0 || b.p.Stocks[s.stock].Price == 0 {
					v.remnant = max(v.remnant, r-b.p.Kerf)
				}
			}
		}
		if !b.found || v.better(b.best) {
			b.best, b.found = v, true
		}
		return
	}
	size := b.pieces[i] + b.p.Kerf
	fresh := map[int]bool{}
	for j := range b.sticks {
		s := &b.sticks[j]
		more := v
		if s.used == 0 {
			if fresh[s.stock] {
				continue // like the one before
			}
			fresh[s.stock] = true
			more.money += b.p.Stocks[s.stock].Price
		}
		for r := range s.rest {
			if s.rest[r] < size {
				continue
			}
			s.rest[r] -= size
			s.used++
			b.place(i+1, more)
			s.used--
			s.rest[r] += size
		}
	}
	v.lacking++
	b.place(i+1, v)
}

// random makes small problems of all sorts.
func random(r *rand.Rand) Problem {
	p := Problem{Kerf: r.Int64N(4), Trim: r.Int64N(3)}
	longest := 20 + r.Int64N(40)
	for n := 1 + r.IntN(8); n > 0; {
		q := Piece{1 + r.Int64N(longest*3/4), min(n, 1+r.IntN(3))}
		n -= q.Count
		p.Pieces = append(p.Pieces, q)
	}
	for range 1 + r.IntN(3) {
		s := Stock{Length: longest/2 + r.Int64N(longest), Price: r.Int64N(12), Count: r.IntN(6) - 1}
		if r.IntN(3) == 0 {
			s.Price, s.Count = 0, 1+r.IntN(2)
		}
		for range r.IntN(3) {
			at := r.Int64N(s.Length)
			s.Defects = append(s.Defects, Span{at, at + r.Int64N(6)})
		}
		p.Stocks = append(p.Stocks, s)
	}
	return p
}

func TestBruteForce(t *testing.T) {
	n := 3000
	if testing.Short() {
		n = 300
	}
	for seed := range n {
		p := random(rand.New(rand.NewPCG(uint64(seed), 1)))
		r := Pack(p)
		check(t, p, r)
		want := bruteBest(p)
		got := value{sum(r.Lacking), r.Money, r.Remnant.Length}
		if got != want {
			t.Fatalf("seed %d: %s\n%s\ngot %v, want %v", seed, notation(p), cuts(r), got, want)
		}
		if !r.Complete || r.Lower != r.Money || r.Fewest != want.lacking || r.Longest != want.remnant {
			t.Fatalf("seed %d: %s\nnot complete: %+v", seed, notation(p), r)
		}
	}
}
