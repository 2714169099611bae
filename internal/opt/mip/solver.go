package mip

import "slices"

// solver is the problem and room to work in.
type solver struct {
	Problem
	vars  []Var
	rows  []Row
	uses  [][]int   // by row, the variables in it
	reach []float64 // by row, the sum of |A|·range
	scale []float64 // by variable, a power of two near 1 over its largest A
	worth float64   // cost of a unit missed, for the linear program alone: far more than it costs to mend one

	act     []int64
	frame   frame
	lp      program
	counted []int // the rows in the linear program
	value   []float64
	weight  []float64 // by row
	whole   []int64   // by row, rounded
	pull    []int64
	x       []float64 // what the linear program leans to
	need    []int64
	ones    []One
	boxes   []box // by depth
	try     []int64

	countWeight float64
	wholeCount  int64

	steps int
	spent bool
}

// Solve gives the smallest joint change: see the package. It panics on numbers out of bounds.
func Solve(p Problem) Result {
	p.check()
	if p.Budget == 0 {
		p.Budget = DefaultBudget
	}
	r := Result{X: make([]int64, len(p.Vars)), Complete: true}
	r.LeastMiss = p.fixedMiss()
	for _, g := range p.split() {
		part := p.part(g)
		part.Budget = p.Budget - r.Steps
		r.take(g, solve(part))
	}
	r.Short, r.Miss = p.short(r.X)
	r.Changed, r.Cost = p.measure(r.X)
	return r
}

// fixedMiss is what the rows without a variable lack.
func (p Problem) fixedMiss() (miss int64) {
	for i := range p.Rows {
		if p.Rows[i].firstVar() < 0 {
			miss += max(0, p.Rows[i].B)
		}
	}
	return miss
}

// take puts the result of a part into that of the whole.
func (r *Result) take(g group, part Result) {
	for k, j := range g.vars {
		r.X[j] = part.X[k]
	}
	r.LeastMiss += part.LeastMiss
	r.LeastChanged += part.LeastChanged
	r.LeastCost += part.LeastCost
	r.Steps += part.Steps
	r.Complete = r.Complete && part.Complete
}

// solve works on one part.
func solve(p Problem) Result {
	s := newSolver(p)
	r := Result{X: make([]int64, len(p.Vars)), Complete: true}
	r.LeastMiss = s.leastMiss(r.X)
	if !s.spent {
		s.leastChange(&r)
	}
	r.Steps, r.Complete = s.steps, !s.spent
	return r
}

func newSolver(p Problem) *solver {
	n, m := len(p.Vars), len(p.Rows)
	s := &solver{Problem: p, vars: p.Vars, rows: p.Rows, uses: make([][]int, m), reach: make([]float64, m), scale: make([]float64, n),
		act: make([]int64, m), frame: frame{from: make([]int64, n), rest: make([]int64, m)}, weight: make([]float64, m), whole: make([]int64, m),
		pull: make([]int64, n), x: make([]float64, n), need: make([]int64, 0, n), try: make([]int64, n)}
	largest := make([]int64, n)
	for i, r := range p.Rows {
		for j, a := range r.A {
			if a != 0 {
				s.uses[i] = append(s.uses[i], j)
				s.reach[i] += float64(float64(max(a, -a)) * float64(p.Vars[j].Hi-p.Vars[j].Lo))
				largest[j] = max(largest[j], a, -a)
			}
		}
	}
	for j, a := range largest {
		s.scale[j] = 1
		for ; a > 1; a /= 2 {
			s.scale[j] /= 2
		}
		s.worth = max(s.worth, float64(farMore*float64(1+p.Vars[j].Cost))*s.scale[j])
	}
	return s
}

const farMore = 64

// all is the box of all x.
func (s *solver) all() box {
	b := s.at(0)
	for j, v := range s.vars {
		b.lo[j], b.hi[j] = v.Lo, v.Hi
	}
	return b
}

// at returns the box of a depth of the search.
func (s *solver) at(depth int) box {
	for len(s.boxes) <= depth {
		s.boxes = append(s.boxes, newBox(len(s.vars)))
	}
	return s.boxes[depth]
}

// step counts one box; false when the budget is spent.
func (s *solver) step() bool {
	s.steps++
	s.spent = s.spent || s.steps > s.Budget
	return !s.spent
}

// side is a part of a box in one variable.
type side struct{ lo, hi int64 }

// parts splits a range that holds 0 inside into below, 0 and above.
func parts(lo, hi int64) []side {
	all := []side{{lo, -1}, {0, 0}, {1, hi}}
	return slices.DeleteFunc(all, func(p side) bool { return p.lo > p.hi })
}

// halves splits a range at a value: up to it, and from the next. Both are less than the whole.
func halves(lo, hi, at int64) []side {
	at = max(lo, min(at, hi-1))
	return []side{{lo, at}, {at + 1, hi}}
}
