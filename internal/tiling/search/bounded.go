package search

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// A bounded search divides each lattice vector into finest parts at first, or fewer, down to roughest, where a face has so
// many tiles along its edges that budget looks at a tile would not do; deepened is how many of the best places are then
// refined, by halves down to the mark.
const (
	finest   = 7
	roughest = 4
	budget   = 60_000
	deepened = 3
)

// parts is into how many parts each lattice vector is divided.
func (c *climber) parts() int {
	n := finest
	for n > roughest && n*n*len(c.census.stretch) > budget {
		n--
	}
	return n
}

// climber looks for the best layouts of a bond whose measures do not part into two directions.
type climber struct {
	in     *Input
	census *census
	order  []int
	seen   map[geom.Point]costs
}

// bounded searches a grid over one cell of the lattice, then round the best places of it.
func bounded(in *Input) Result {
	names := order(in)
	c := &climber{in: in, census: newCensus(in), order: ranked(names), seen: map[geom.Point]costs{}}
	grid, step := c.grid()
	slices.SortStableFunc(grid, c.compare)
	winners := c.deepen(grid, step)
	for _, m := range c.order {
		winners = append(winners, c.leading(grid, m))
	}
	winners = append(winners, grid[:min(len(grid), 2*in.Keep)]...)
	res := Result{Resolution: in.Mark, Coarse: step, Evaluated: len(c.seen),
		Searched: judge.Because("{0} layouts on a grid of {1} over the pattern, the best of them refined to {2}: a bounded search",
			diag.N(len(c.seen)), diag.L(step), diag.X(in.Mark))}
	res.Finalists = finalists(in, winners, names, c.census.measures)
	return res
}

// cost judges an origin, once.
func (c *climber) cost(o geom.Point) costs {
	k, ok := c.seen[o]
	if !ok {
		k = c.census.costs(o)
		c.seen[o] = k
	}
	return k
}

// grid judges the coarse grid, and beside each of its places the nearest one that is centered: those lie on lines, which
// a grid misses and from which a climb does not get away. step is the widest spacing, rounded up to marks.
func (c *climber) grid() (out []found, step unit.Length) {
	b, n := &c.in.Bond, c.parts()
	share := func(l unit.Length, i int) unit.Length { return l.MulDiv(int64(i), int64(n)) }
	for j := range n {
		for i := range n {
			at := geom.Point{X: share(b.U.X, i) + share(b.V.X, j), Y: share(b.U.Y, i) + share(b.V.Y, j)}
			o := c.in.Zero.Add(geom.Point{X: at.X.Round(c.in.Mark), Y: at.Y.Round(c.in.Mark)})
			mid := c.census.centered(o)
			out = append(out, found{o, c.cost(o)}, found{mid, c.cost(mid)})
		}
	}
	for _, v := range []geom.Point{b.U, b.V} {
		step = max(step, v.X.Abs()/unit.Length(n), v.Y.Abs()/unit.Length(n))
	}
	return out, step.Ceil(c.in.Mark)
}

// compare orders two layouts by importance; of equal ones the first judged stands.
func (c *climber) compare(a, b found) int { return compareCosts(c.order, &a.costs, &b.costs) }

func compareCosts(order []int, a, b *costs) int {
	for _, m := range order {
		if a[m] != b[m] {
			if a[m] < b[m] {
				return -1
			}
			return 1
		}
	}
	return 0
}

// leading returns the best of the grid by one measure first.
func (c *climber) leading(grid []found, m int) found {
	o := leading(c.order, m)
	return slices.MinFunc(grid, func(a, b found) int { return compareCosts(o, &a.costs, &b.costs) })
}

// deepen refines the best few places that are not neighbors.
func (c *climber) deepen(grid []found, step unit.Length) (out []found) {
	for _, g := range grid {
		apart := func(o found) bool {
			d := wrap(&c.in.Bond, g.origin.Sub(o.origin))
			return d.X.Abs() <= step && d.Y.Abs() <= step
		}
		if len(out) < deepened && !slices.ContainsFunc(out, apart) {
			out = append(out, g)
		}
	}
	for i := range out {
		out[i] = c.climb(out[i], step)
	}
	return out
}

// climb moves to the best neighbor while one is better, and halves the step when none is.
func (c *climber) climb(at found, step unit.Length) found {
	for s := half(step, c.in.Mark); s >= c.in.Mark; s = half(s, c.in.Mark) {
		for range 2 {
			next := c.around(at, s)
			if c.compare(next, at) >= 0 {
				break
			}
			at = next
		}
		if s == c.in.Mark {
			break
		}
	}
	return at
}

// half halves a step to whole marks, at least one.
func half(s, mark unit.Length) unit.Length { return max(mark, (s / 2).Floor(mark)) }

// around returns the best of the eight neighbors.
func (c *climber) around(at found, s unit.Length) (best found) {
	for k := range 9 {
		if k == 4 {
			continue
		}
		o := at.origin.Add(geom.Point{X: s * unit.Length(k%3-1), Y: s * unit.Length(k/3-1)})
		if f := (found{o, c.cost(o)}); k == 0 || c.compare(f, best) < 0 {
			best = f
		}
	}
	return best
}
