package bar

import (
	"math"
	"math/bits"
)

// weights prove a bound: see Proof. They are by kind and by stick.
type weights struct {
	by     string
	piece  []int64
	excess []int64
}

// times is how often the excess of a stick counts.
func (m *model) times(s int) int64 { return int64(min(m.sticks[s].count, m.total)) }

// worth is the bound in units of the scale.
func (m *model) worth(w *weights) int64 {
	var sum int64
	for k, n := range m.need {
		sum += w.piece[k] * int64(n)
	}
	for s, e := range w.excess {
		sum -= e * m.times(s)
	}
	return sum
}

// proves is the bound of cost that follows from weights.
func (m *model) proves(w *weights) int64 {
	worth := m.worth(w)
	if worth <= 0 {
		return 0
	}
	return m.reachable((worth + m.scale - 1) / m.scale)
}

// maxSums is the longest table of sums of prices that is made.
const maxSums = 1 << 18

// reachable is the least cost of at least atLeast that prices add up to.
func (m *model) reachable(atLeast int64) int64 {
	var lacks int64
	if m.scarce {
		lacks = atLeast / m.lack * m.lack
	}
	money := atLeast - lacks
	g, dearest := m.priceStep()
	if g == 0 { // all sticks are free
		if money > 0 && m.scarce {
			return lacks + m.lack
		}
		return lacks
	}
	money = (money + g - 1) / g * g
	if n := (money + dearest) / g; n <= maxSums && money > 0 {
		money = m.nextSum(money/g, n, g) * g
	}
	return lacks + money
}

// priceStep divides every price.
func (m *model) priceStep() (g, dearest int64) {
	for _, s := range m.sticks {
		if s.count == 0 {
			continue
		}
		dearest = max(dearest, s.price)
		a, b := g, s.price
		for b != 0 {
			a, b = b, a%b
		}
		g = a
	}
	return g, dearest
}

// nextSum is the least sum of prices from on, in steps of g, below end.
func (m *model) nextSum(from, end, g int64) int64 {
	sums := make([]bool, end+1)
	sums[0] = true
	for _, s := range m.sticks {
		if s.count == 0 || s.price == 0 {
			continue
		}
		for i := s.price / g; i <= end; i++ {
			sums[i] = sums[i] || sums[i-s.price/g]
		}
	}
	for i := from; i <= end; i++ {
		if sums[i] {
			return i
		}
	}
	return from
}

// material gives each kind its size at the price of the stick that the last of
// the material comes from, when the cheapest for its length is taken first.
func (m *model) material() *weights {
	price, size := m.lastBought()
	if size == 0 {
		return nil
	}
	w := &weights{by: ProofMaterial}
	for _, s := range m.sizes {
		w.piece = append(w.piece, min(m.share(s, size, price), m.lack*m.scale))
	}
	for _, s := range m.sticks {
		over := m.share(s.capacity(), size, price) + 1 - s.price*m.scale
		w.excess = append(w.excess, max(0, over))
		if over > maxWorth/int64(m.total+1) {
			return nil
		}
	}
	return w
}

// maxWorth keeps sums of weights within a word.
const maxWorth = 1 << 61

// share is part/size of the price in whole weights, rounded down.
func (m *model) share(part, size, price int64) int64 {
	hi, lo := bits.Mul64(uint64(part)*uint64(price), uint64(m.scale))
	if hi >= uint64(size)/4 {
		return maxWorth
	}
	q, _ := bits.Div64(hi, lo, uint64(size))
	return int64(q)
}

// lastBought is the price and size of the dearest stick for its size that is
// needed; 0, 0 where all sticks together do not hold the pieces.
func (m *model) lastBought() (price, size int64) {
	var want int64
	for k, n := range m.need {
		want += m.sizes[k] * int64(n)
	}
	done := make([]bool, len(m.sticks))
	for want > 0 {
		next := -1
		for s, st := range m.sticks {
			if done[s] || st.count == 0 || len(st.runs) == 0 {
				continue
			}
			if next < 0 || st.price*m.sticks[next].capacity() < m.sticks[next].price*st.capacity() {
				next = s
			}
		}
		if next < 0 {
			return 0, 0
		}
		done[next] = true
		price, size = m.sticks[next].price, m.sticks[next].capacity()
		want -= size * int64(m.sticks[next].count)
	}
	return price, size
}

// dualFeasible bounds a single kind of stick with one run: for a parameter a, a
// size above what leaves room for a weighs a whole stick, one below a nothing,
// others what they are (Martello and Toth, Discrete Applied Math. 28, 1990).
func (m *model) dualFeasible() *weights {
	if len(m.sticks) != 1 || len(m.sticks[0].runs) != 1 || m.sticks[0].price == 0 {
		return nil
	}
	var best *weights
	size, price := m.sticks[0].runs[0], m.sticks[0].price
	for _, a := range m.sizes {
		if 2*a > size {
			continue
		}
		w := &weights{by: ProofDual, excess: []int64{0}}
		for _, s := range m.sizes {
			switch {
			case s > size-a:
				s = size
			case s < a:
				s = 0
			}
			w.piece = append(w.piece, m.share(s, size, price))
		}
		if best == nil || m.worth(w) > m.worth(best) {
			best = w
		}
	}
	return best
}

// whole rounds a float of money down to the scale.
func (m *model) whole(v float64) int64 {
	return int64(math.Floor(min(max(v, 0), float64(m.lack)) * float64(m.scale)))
}
