package nest

import (
	"fmt"
	"math/big"
)

// recheck cuts every sheet again by its tree and counts what falls off. It knows
// nothing of how the plan was made.
func recheck(p Problem, r Result) error {
	c := &recut{p: p, r: r, got: make([]int, len(p.Parts)), used: make([]int, len(p.Sheets))}
	var money int64
	for i, b := range r.Boards {
		money += p.Sheets[b.Sheet].Price
		c.used[b.Sheet]++
		if err := c.board(i, b); err != nil {
			return fmt.Errorf("board %d: %w", i, err)
		}
	}
	if money != r.Money {
		return fmt.Errorf("money %d, sheets cost %d", r.Money, money)
	}
	for _, check := range []func() error{c.counts, c.offcut, c.claims, c.proof} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

type recut struct {
	p         Problem
	r         Result
	got, used []int
	largest   int64
	found     bool // the offcut that is named
}

func (c *recut) board(i int, b Board) error {
	s := c.p.Sheets[b.Sheet]
	q := b.Clear
	if q.X != s.Trim || q.Y != s.Trim || q.W != s.W-2*s.Trim || q.H != s.H-2*s.Trim {
		return fmt.Errorf("clear sheet %+v", q)
	}
	depth, err := c.panel(i, q)
	if err != nil {
		return err
	}
	if c.p.First != Whole && q.Cut != Whole && q.Cut != c.p.First {
		if depth != 1 {
			return fmt.Errorf("first cut is %v", q.Cut)
		}
		depth = 2
	}
	if c.p.Stages > 0 && depth > c.p.Stages {
		return fmt.Errorf("%d stages", depth)
	}
	return nil
}

// panel cuts a panel from its low edge on.
func (c *recut) panel(i int, q Panel) (depth int, err error) {
	if q.W <= 0 || q.H <= 0 {
		return 0, fmt.Errorf("size of %+v", q)
	}
	if q.Cut == Whole {
		return 0, c.leaf(i, q)
	}
	if q.Part != NoPart || len(q.Into) == 0 {
		return 0, fmt.Errorf("divided panel %+v", q)
	}
	left := q
	for n, k := range q.Into {
		if k.Cut == q.Cut {
			return 0, fmt.Errorf("a stage within its own: %+v", k)
		}
		if err := c.piece(&left, k, q.Cut, n == len(q.Into)-1); err != nil {
			return 0, err
		}
		d, err := c.panel(i, k)
		if err != nil {
			return 0, err
		}
		depth = max(depth, d)
	}
	if k := q.Into[0]; len(q.Into) == 1 && k.W == q.W && k.H == q.H {
		return 0, fmt.Errorf("no cut in %+v", q)
	}
	return depth + 1, nil
}

// piece takes a panel off what is left: it lies at its low edge and reaches
// across. Behind the last one lies nothing, or less than the kerf.
func (c *recut) piece(left *Panel, k Panel, cut Cut, last bool) error {
	size, of := k.W, left.W
	fits := k.X == left.X && k.Y == left.Y && k.H == left.H
	if cut == Rip {
		size, of = k.H, left.H
		fits = k.X == left.X && k.Y == left.Y && k.W == left.W
	}
	if !fits || size > of || last && of-size > c.p.Kerf {
		return fmt.Errorf("%+v does not lie in %+v", k, *left)
	}
	if cut == Rip {
		left.Y, left.H = left.Y+size+c.p.Kerf, of-size-c.p.Kerf
	} else {
		left.X, left.W = left.X+size+c.p.Kerf, of-size-c.p.Kerf
	}
	return nil
}

func (c *recut) leaf(i int, q Panel) error {
	if len(q.Into) > 0 {
		return fmt.Errorf("whole panel %+v", q)
	}
	if q.Part == NoPart {
		if min(q.W, q.H) >= c.p.LeastSide {
			c.largest = max(c.largest, q.W*q.H)
		}
		o := c.r.Offcut
		c.found = c.found || o == Offcut{i, q.X, q.Y, q.W, q.H}
		return nil
	}
	d := c.p.Parts[q.Part]
	if q.Turned {
		if !d.Turns {
			return fmt.Errorf("part %d is turned", q.Part)
		}
		d.W, d.H = d.H, d.W
	}
	if q.W != d.W || q.H != d.H {
		return fmt.Errorf("part %d is %dx%d", q.Part, q.W, q.H)
	}
	c.got[q.Part]++
	return nil
}

func (c *recut) counts() error {
	unfit := map[int]bool{}
	for _, i := range c.r.Unfit {
		unfit[i] = true
	}
	for i, q := range c.p.Parts {
		if n := c.got[i] + c.r.Lacking[i]; !unfit[i] && n != q.Count || unfit[i] && n != 0 {
			return fmt.Errorf("part %d: %d cut or lacking", i, n)
		}
	}
	for i, s := range c.p.Sheets {
		if s.Count != Unlimited && c.used[i] > s.Count {
			return fmt.Errorf("sheet %d: %d used", i, c.used[i])
		}
	}
	return nil
}

func (c *recut) offcut() error {
	o := c.r.Offcut
	if o.Area() != c.largest {
		return fmt.Errorf("offcut %+v, largest is %d", o, c.largest)
	}
	if o.Board >= 0 && !c.found {
		return fmt.Errorf("no such offcut: %+v", o)
	}
	return nil
}

func (c *recut) lacks() (n int) {
	for _, v := range c.r.Lacking {
		n += v
	}
	return n
}

// claims hold between what is proven and what is found.
func (c *recut) claims() error {
	r := c.r
	lack := c.lacks()
	if r.Fewest > lack || r.Fewest == lack && r.Lower > r.Money || r.Offcut.Area() > r.Largest {
		return fmt.Errorf("bounds: %d of %d lack, %d of %d money, offcut %d of %d",
			r.Fewest, lack, r.Lower, r.Money, r.Offcut.Area(), r.Largest)
	}
	whole := r.Fewest == lack && r.Lower == r.Money && r.Offcut.Area() == r.Largest
	if whole != r.Complete {
		return fmt.Errorf("complete: %v", r.Complete)
	}
	return nil
}

// proof adds up the weights: between what they prove and Lower lies no sum of
// prices.
func (c *recut) proof() error {
	q := c.r.Proof
	if q.By == ProofExhaustive || len(c.r.Boards) == 0 {
		return nil
	}
	total, parts := new(big.Int), 0
	for i, d := range c.p.Parts {
		total.Add(total, times(q.Weights[i], d.Count))
		parts += d.Count
		if q.Weights[i] > q.Penalty*q.Scale {
			return fmt.Errorf("part %d weighs more than one left out", i)
		}
	}
	for _, i := range c.r.Unfit {
		parts -= c.p.Parts[i].Count
	}
	for i, s := range c.p.Sheets {
		n := parts
		if s.Count != Unlimited {
			n = min(n, s.Count)
		}
		total.Sub(total, times(q.Excess[i], n))
	}
	claim := new(big.Int).Add(big.NewInt(c.r.Lower), times(q.Penalty, c.r.Fewest))
	proven, over := new(big.Int).DivMod(total, big.NewInt(q.Scale), new(big.Int))
	if over.Sign() > 0 {
		proven.Add(proven, big.NewInt(1))
	}
	if proven.Cmp(claim) >= 0 || c.lacks() > 0 {
		return nil
	}
	return c.noSum(proven.Int64(), c.r.Lower)
}

// noSum tells that no sum of prices lies from a on and below b.
func (c *recut) noSum(a, b int64) error {
	sums := map[int64]bool{0: true}
	for v := int64(0); v < b; v++ {
		if sums[v] && v >= a {
			return fmt.Errorf("weights prove %d, claimed is %d", a, b)
		}
		for _, s := range c.p.Sheets {
			if sums[v] && s.Count != 0 && min(s.W, s.H) > 2*s.Trim {
				sums[v+s.Price] = true
			}
		}
	}
	return nil
}
