package geom

import "fmt"

// InvalidError says that a region given to an operation is none: a ring crosses or touches itself, or two rings cross
// or share a stretch.
type InvalidError struct {
	Operand     int // 0 for the receiver, from 1 for the arguments
	Ring, Other int // the rings that clash; equal for one ring
	I, J        int // the first two edges that clash, of Ring and of Other
}

func (e *InvalidError) Error() string {
	return fmt.Sprintf("operand %d: edge %d of ring %d meets edge %d of ring %d", e.Operand, e.I, e.Ring, e.J, e.Other)
}

func valid(operands []Region) error {
	for k, g := range operands {
		if err := g.valid(k); err != nil {
			return err
		}
	}
	return nil
}

func (g Region) valid(operand int) error {
	for n, r := range g {
		if ok, i, j := r.Simple(); !ok {
			return &InvalidError{operand, n, n, i, j}
		}
		for m := range n {
			if i, j := g[m].crosses(r); i >= 0 {
				return &InvalidError{operand, m, n, i, j}
			}
		}
	}
	return nil
}

// crosses returns the first edges of two rings that cross or share a stretch; -1 if none do. Rings may touch.
func (r Ring) crosses(o Ring) (i, j int) {
	if !r.Bounds().touches(o.Bounds()) {
		return -1, -1
	}
	for i, v := range r {
		for j, w := range o {
			if cross(v.P, r.end(i), w.P, o.end(j)) {
				return i, j
			}
		}
	}
	return -1, -1
}

// cross reports whether two segments cross within both, or share a stretch.
func cross(a, b, c, d Point) bool {
	s, t := Side(a, b, c), Side(a, b, d)
	if s == 0 && t == 0 {
		lo, hi := min(dot(a, b, a, c), dot(a, b, a, d)), max(dot(a, b, a, c), dot(a, b, a, d))
		return hi > 0 && lo < dot(a, b, a, b)
	}
	return s*t < 0 && Side(c, d, a)*Side(c, d, b) < 0
}
