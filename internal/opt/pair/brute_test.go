package pair

import "math/bits"

// fewest is the least number of blanks, by trying every place of every piece on
// the unit grid. Sizes, kerf and strip are whole numbers, so for rectangles the
// grid loses nothing: every piece can be pushed left and down until it is held
// by sums of whole numbers.
func fewest(p Problem) int {
	n := len(p.Pieces)
	can := make([]bool, 1<<n)
	best := make([]int, 1<<n)
	for mask := 1; mask < 1<<n; mask++ {
		can[mask] = partsCan(can, mask) && (share(p, mask, nil, 0) || bits.OnesCount(uint(mask)) == 1)
		best[mask] = n + 1
		low := mask & -mask
		for sub := mask; sub > 0; sub = (sub - 1) & mask {
			if sub&low != 0 && can[sub] {
				best[mask] = min(best[mask], 1+best[mask&^sub])
			}
		}
	}
	return best[1<<n-1]
}

// partsCan tells whether the set less any one piece shares a blank. A piece that
// breaks the least strip alone shares with none.
func partsCan(can []bool, mask int) bool {
	for m := mask; m > 0; m &= m - 1 {
		if rest := mask &^ (m & -m); rest != 0 && !can[rest] {
			return false
		}
	}
	return true
}

// share places the pieces of mask from number i on.
func share(p Problem, mask int, ls []lying, i int) bool {
	if i == 0 && area(p, mask) > 2*p.W*p.H {
		return false
	}
	if i == len(p.Pieces) {
		return blankOK(p, ls)
	}
	if mask>>i&1 == 0 {
		return share(p, mask, ls, i+1)
	}
	for _, q := range mayTurn(p.Pieces[i]) {
		at := lay(p.Pieces[i], q, 0, 0)
		for x := int64(0); x+at.x1 <= p.W; x++ {
			for y := int64(0); y+at.y1 <= p.H; y++ {
				l := at.moved(x, y)
				if l.sits(p) && freeOf(l, ls, p.Kerf) && share(p, mask, append(ls, l), i+1) {
					return true
				}
			}
		}
	}
	return false
}

// area is twice the area of the pieces of mask (shoelace formula).
func area(p Problem, mask int) (sum int64) {
	for i, pc := range p.Pieces {
		pts := lay(pc, 0, 0, 0).pts
		for j := range pts {
			a, b := pts[j], pts[(j+1)%len(pts)]
			if mask>>i&1 == 1 {
				sum += a.X*b.Y - a.Y*b.X
			}
		}
	}
	return sum
}

// freeOf tells whether l leaves the kerf to each of the others.
func freeOf(l lying, ls []lying, k int64) bool {
	for _, o := range ls {
		if !strip(l.pts, o.pts, k) {
			return false
		}
	}
	return true
}
