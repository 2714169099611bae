package bar

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"
)

// shop is a problem of the size of a job: lengths in 1/16000 mm, prices in
// cents, three lengths to buy, a few offcuts on hand.
func shop(seed uint64, kinds int) Problem {
	r := rand.New(rand.NewPCG(seed, 2))
	const mm = 16000
	p := Problem{Kerf: 51200, Trim: 10 * mm}
	for range kinds {
		p.Pieces = append(p.Pieces, Piece{(250 + r.Int64N(2100)) * mm / 10 * 10, 1 + r.IntN(3)})
	}
	p.Stocks = []Stock{
		{Length: 2438 * mm, Price: 899, Count: Unlimited},
		{Length: 3048 * mm, Price: 1199, Count: Unlimited},
		{Length: 3658 * mm, Price: 1399, Count: 6},
		{Length: (600 + r.Int64N(1500)) * mm, Count: 1},
		{Length: (600 + r.Int64N(1500)) * mm, Count: 1, Defects: []Span{{200 * mm, 230 * mm}}},
	}
	return p
}

// outcome is what must not change.
func outcome(r Result) value { return value{sum(r.Lacking), r.Money, r.Remnant.Length} }

func TestInvariance(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(r *rand.Rand, p *Problem) (remnant func(int64) int64)
	}{
		{"pieces in another order", func(r *rand.Rand, p *Problem) func(int64) int64 {
			r.Shuffle(len(p.Pieces), func(i, j int) { p.Pieces[i], p.Pieces[j] = p.Pieces[j], p.Pieces[i] })
			return nil
		}},
		{"stocks in another order", func(r *rand.Rand, p *Problem) func(int64) int64 {
			r.Shuffle(len(p.Stocks), func(i, j int) { p.Stocks[i], p.Stocks[j] = p.Stocks[j], p.Stocks[i] })
			return nil
		}},
		{"pieces one by one", func(_ *rand.Rand, p *Problem) func(int64) int64 {
			var one []Piece
			for _, q := range p.Pieces {
				one = append(one, slices.Repeat([]Piece{{q.Length, 1}}, q.Count)...)
			}
			p.Pieces = one
			return nil
		}},
		{"sticks seen from the other end", func(_ *rand.Rand, p *Problem) func(int64) int64 {
			for i := range p.Stocks {
				s := &p.Stocks[i]
				for j, d := range s.Defects {
					s.Defects[j] = Span{s.Length - max(d.To, d.From+p.Kerf), s.Length - d.From}
					if d.To <= d.From {
						s.Defects[j] = Span{}
					}
				}
			}
			return nil
		}},
		{"another unit of length", func(_ *rand.Rand, p *Problem) func(int64) int64 {
			p.Kerf, p.Trim = p.Kerf*7000, p.Trim*7000
			for i := range p.Pieces {
				p.Pieces[i].Length *= 7000
			}
			for i := range p.Stocks {
				s := &p.Stocks[i]
				s.Length *= 7000
				for j, d := range s.Defects {
					s.Defects[j] = Span{d.From * 7000, d.To * 7000}
				}
			}
			return func(n int64) int64 { return n * 7000 }
		}},
		{"the trim cut off beforehand", func(_ *rand.Rand, p *Problem) func(int64) int64 {
			for i := range p.Stocks {
				s := &p.Stocks[i]
				s.Length = max(s.Length-2*p.Trim, 1)
				for j, d := range s.Defects {
					s.Defects[j] = Span{d.From - p.Trim, d.To - p.Trim}
				}
			}
			p.Trim = 0
			return nil
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			for seed := range uint64(150) {
				r := rand.New(rand.NewPCG(seed, 3))
				p := random(r)
				want := outcome(Pack(p))
				q := random(rand.New(rand.NewPCG(seed, 3)))
				if f := c.change(r, &q); f != nil {
					want.remnant = f(want.remnant)
				}
				if got := outcome(Pack(q)); got != want {
					t.Fatalf("%s\n%s\ngot %v, want %v", notation(p), notation(q), got, want)
				}
			}
		})
	}
}

// More to take from never costs more, and a stick on hand of every piece's
// length makes the rest as if that piece were not wanted, or better.
func TestMonotone(t *testing.T) {
	for seed := range uint64(300) {
		r := rand.New(rand.NewPCG(seed, 4))
		p := random(r)
		before := outcome(Pack(p))
		p.Stocks = append(p.Stocks, Stock{Length: 10 + r.Int64N(50), Count: 1})
		after := outcome(Pack(p))
		before.remnant, after.remnant = 0, 0
		wasUnfit := len(Pack(p).Unfit)
		p.Stocks = p.Stocks[:len(p.Stocks)-1]
		if before.better(after) && len(Pack(p).Unfit) == wasUnfit {
			t.Fatalf("%s\nbefore %v, after %v", notation(p), before, after)
		}
	}
}

// Whatever the budget, the plan is valid and the bounds hold.
func TestBudget(t *testing.T) {
	for seed := range uint64(4) {
		p := shop(seed, 7)
		full := Pack(p)
		checkPlan(t, p, full)
		for _, budget := range []int{1, 10, 100, 1000, 10000} {
			p.Budget = budget
			r := Pack(p)
			checkPlan(t, p, r)
			if r.Lower > full.Money || full.Lower > r.Money || r.Complete && outcome(r) != outcome(full) {
				t.Fatalf("seed %d, budget %d: %d to %d against %d to %d", seed, budget, r.Lower, r.Money, full.Lower, full.Money)
			}
			if r.Money == full.Money && r.Longest < full.Remnant.Length {
				t.Fatalf("seed %d, budget %d: longest %d, but %d is left", seed, budget, r.Longest, full.Remnant.Length)
			}
		}
	}
}

func TestDeterministic(t *testing.T) {
	p := shop(5, 6)
	if a, b := Pack(p), Pack(p); !reflect.DeepEqual(a, b) {
		t.Error("twice the same, two results")
	}
}
