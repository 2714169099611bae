package mip

// Var is a variable: how many steps it may go down (Lo <= 0) and up (Hi >= 0),
// and what each costs.
type Var struct{ Lo, Hi, Cost int64 }

// Row asks that the sum of A·x be at least B. A has an entry for each variable.
type Row struct {
	A []int64
	B int64
}

// Problem is the variables and the rows.
type Problem struct {
	Vars   []Var
	Rows   []Row
	Budget int // steps; 0 means DefaultBudget
}

// DefaultBudget is the number of steps spent where the caller names none. A step
// is one box.
const DefaultBudget = 20000

// Result is the best x that was found and what is proven of it.
type Result struct {
	X       []int64
	Miss    int64   // what the rows lack together
	Short   []int64 // what each row lacks
	Changed int
	Cost    int64

	LeastMiss    int64 // no x misses by less
	LeastChanged int   // none that misses by Miss changes fewer; 0 where that is not known
	LeastCost    int64 // none of these costs less; 0 where that is not known
	Steps        int
	Complete     bool // X is proven the best
}

// maxTotal bounds the sum of |A|·range + |B| over all rows, and that of the
// costs, so that weighted sums fit.
const maxTotal = 1 << 50

// check panics on numbers that only a bug of the caller can give.
func (p Problem) check() {
	cost := magnitude(0)
	for _, v := range p.Vars {
		require(v.Lo <= 0 && v.Hi >= 0 && v.Lo > -maxTotal && v.Hi < maxTotal, "a range does not hold 0, or is out of bounds")
		require(v.Cost >= 0 && v.Cost < maxTotal, "cost out of bounds")
		cost.add(v.Cost, max(-v.Lo, v.Hi))
	}
	require(cost < maxTotal, "costs out of bounds")
	total := magnitude(0)
	for _, r := range p.Rows {
		require(len(r.A) == len(p.Vars), "a row does not have an entry for each variable")
		total.add(r.B, 1)
		for j, a := range r.A {
			total.add(a, p.Vars[j].Hi-p.Vars[j].Lo)
		}
	}
	require(total < maxTotal, "rows out of bounds")
}

// magnitude adds up sizes of products; a float is near enough to tell what is
// out of bounds.
type magnitude float64

func (m *magnitude) add(a, b int64) {
	*m += magnitude(float64(max(float64(a), -float64(a)) * float64(b)))
}

func require(ok bool, what string) {
	if !ok {
		panic("mip: " + what)
	}
}

// short returns what each row lacks at x, and the sum.
func (p Problem) short(x []int64) (by []int64, miss int64) {
	by = make([]int64, len(p.Rows))
	for i := range p.Rows {
		by[i] = p.Rows[i].short(x)
		miss += by[i]
	}
	return by, miss
}

func (p Problem) miss(x []int64) (miss int64) {
	for i := range p.Rows {
		miss += p.Rows[i].short(x)
	}
	return miss
}

func (r *Row) short(x []int64) int64 {
	lacks := r.B
	for j, a := range r.A {
		lacks -= a * x[j]
	}
	return max(0, lacks)
}

// measure returns the changes and the cost of x.
func (p Problem) measure(x []int64) (changed int, cost int64) {
	for j, v := range p.Vars {
		if x[j] != 0 {
			changed++
		}
		cost += v.Cost * max(x[j], -x[j])
	}
	return changed, cost
}
