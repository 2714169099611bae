package lsq

import "math"

// network is a problem with its datum settled: which coordinate is which unknown.
type network struct {
	obs      []Observation
	slot     []int // of coordinate 2*point+axis: number of the unknown, or -1 when held
	unknowns int
}

// newNetwork numbers the unknowns of n points, all but those held.
func newNetwork(obs []Observation, n int, held []Hold) *network {
	w := &network{obs: obs, slot: make([]int, 2*n)}
	for _, h := range held {
		w.slot[2*h.Point+int(h.Axis)] = -1
	}
	for i, s := range w.slot {
		if s == 0 {
			w.slot[i] = w.unknowns
			w.unknowns++
		}
	}
	return w
}

// row is one line of the design matrix: partial derivatives of an observation with respect to the unknowns it names.
type row struct {
	col [4]int
	val [4]float64
	n   int
}

func (r *row) put(col int, v float64) {
	if col < 0 || v == 0 {
		return
	}
	r.col[r.n], r.val[r.n] = col, v
	r.n++
}

// dot is the product of the row with a vector of unknowns.
func (r *row) dot(x []float64) float64 {
	s := 0.0
	for k := 0; k < r.n; k++ {
		s += float64(r.val[k] * x[r.col[k]])
	}
	return s
}

// between is the row of an observation whose value grows by (ux, uy) for each unit that To moves away from From.
func (w *network) between(from, to int, ux, uy float64) (r row) {
	r.put(w.slot[2*from], -ux)
	r.put(w.slot[2*from+1], -uy)
	r.put(w.slot[2*to], ux)
	r.put(w.slot[2*to+1], uy)
	return r
}

// row gives the partial derivatives of an observation at the points.
func (w *network) row(o Observation, at []Point) row {
	ux, uy := 1.0, 0.0
	switch o.Kind {
	case OffsetY:
		ux, uy = 0, 1
	case Distance:
		ux, uy = direction(at[o.From], at[o.To])
	}
	return w.between(o.From, o.To, ux, uy)
}

// computed is the value that an observation would have at the points.
func computed(o Observation, at []Point) float64 {
	a, b := at[o.From], at[o.To]
	switch o.Kind {
	case OffsetX:
		return b.X - a.X
	case OffsetY:
		return b.Y - a.Y
	}
	return length(a, b)
}

func length(a, b Point) float64 {
	dx, dy := b.X-a.X, b.Y-a.Y
	return math.Sqrt(float64(dx*dx) + float64(dy*dy))
}

// direction is the unit vector from a to b; for coincident points, where there is none, +x.
func direction(a, b Point) (x, y float64) {
	d := length(a, b)
	if d == 0 {
		return 1, 0
	}
	return (b.X - a.X) / d, (b.Y - a.Y) / d
}

// cost is the weighted sum of the squared residuals.
func cost(obs []Observation, at []Point) float64 {
	s := 0.0
	for _, o := range obs {
		e := (computed(o, at) - o.Value) / o.Sigma
		s += float64(e * e)
	}
	return s
}

// rows gives the design matrix, each line divided by its standard deviation when weighted.
func (w *network) rows(at []Point, weighted bool) []row {
	rows := make([]row, len(w.obs))
	for i, o := range w.obs {
		rows[i] = w.row(o, at)
		if weighted {
			rows[i].scale(1 / o.Sigma)
		}
	}
	return rows
}

func (r *row) scale(f float64) {
	for k := 0; k < r.n; k++ {
		r.val[k] *= f
	}
}

// moved is the points after a step of the unknowns.
func (w *network) moved(at []Point, step []float64) []Point {
	out := make([]Point, len(at))
	for p := range at {
		out[p] = at[p]
		if s := w.slot[2*p]; s >= 0 {
			out[p].X += step[s]
		}
		if s := w.slot[2*p+1]; s >= 0 {
			out[p].Y += step[s]
		}
	}
	return out
}
