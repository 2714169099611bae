package nest

import (
	"math/big"
	"math/bits"
)

// weights prove a bound: see Proof. They are by kind and by sheet.
type weights struct {
	by     string
	part   []int64
	excess []int64
}

// worth is the bound in units of the scale.
func (m *model) worth(w *weights) int64 {
	var sum int64
	for k, n := range m.need {
		sum += w.part[k] * int64(n)
	}
	for s, e := range w.excess {
		sum -= e * int64(m.sheets[s].count)
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
	if g == 0 { // all sheets are free
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
	for _, s := range m.sheets {
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
	for _, s := range m.sheets {
		for i := s.price / g; s.price > 0 && i <= end; i++ {
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

// areaWeights gives each kind its area at the price of the sheet that the last
// of the area comes from, when the cheapest for its area is taken first.
func (m *model) areaWeights() *weights {
	price, area := m.lastBought()
	if area == 0 {
		return nil
	}
	w := &weights{by: ProofArea}
	for _, k := range m.kinds {
		w.part = append(w.part, min(m.share(k.w*k.h, area, price), m.lack*m.scale))
	}
	for _, s := range m.sheets {
		most := m.share(s.w*s.h, area, price)
		if most > maxWorth/int64(m.total+1)-m.lack*m.scale {
			return nil
		}
		w.excess = append(w.excess, max(0, most-s.price*m.scale))
	}
	return w
}

// share is part/whole of the price in whole weights, rounded down.
func (m *model) share(part, whole, price int64) int64 {
	hi, lo := bits.Mul64(uint64(part), uint64(price*m.scale))
	if hi >= uint64(whole) {
		return maxWorth
	}
	q, _ := bits.Div64(hi, lo, uint64(whole))
	return int64(min(q, maxWorth))
}

// lastBought is the price and area of the dearest sheet for its area that is
// needed; 0, 0 where all sheets together do not hold the parts.
func (m *model) lastBought() (price, area int64) {
	want := new(big.Int)
	for k, n := range m.need {
		want.Add(want, times(m.kinds[k].w*m.kinds[k].h, n))
	}
	done := make([]bool, len(m.sheets))
	for want.Sign() > 0 {
		next := m.cheapest(done)
		if next < 0 {
			return 0, 0
		}
		done[next] = true
		price, area = m.sheets[next].price, m.sheets[next].w*m.sheets[next].h
		want.Sub(want, times(area, m.sheets[next].count))
	}
	return price, area
}

func times(a int64, n int) *big.Int {
	return new(big.Int).Mul(big.NewInt(a), big.NewInt(int64(n)))
}

// cheapest is the sheet of the least price for its area that is not done.
func (m *model) cheapest(done []bool) int {
	next := -1
	for i, s := range m.sheets {
		if done[i] {
			continue
		}
		if next < 0 || m.cheaper(s, m.sheets[next]) {
			next = i
		}
	}
	return next
}

func (m *model) cheaper(s, t sheet) bool {
	return lessRatio(s.price, s.w*s.h, t.price, t.w*t.h)
}

// lessRatio tells whether a/b < c/d.
func lessRatio(a, b, c, d int64) bool {
	ah, al := bits.Mul64(uint64(a), uint64(d))
	ch, cl := bits.Mul64(uint64(c), uint64(b))
	return ah < ch || ah == ch && al < cl
}

// ratio is v*num/den for num <= den, rounded down.
func ratio(v, num, den int64) int64 {
	hi, lo := bits.Mul64(uint64(v), uint64(num))
	q, _ := bits.Div64(hi, lo, uint64(den))
	return int64(q)
}
