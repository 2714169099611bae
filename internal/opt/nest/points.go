package nest

import (
	"cmp"
	"slices"
)

// axis is the places where cuts of one direction are tried: sums of sizes of
// parts (normal patterns: Herz, IBM J. Res. Dev. 16, 1972), and the end of the
// sheet. A panel is taken for the largest point within it.
type axis struct {
	at   []int64
	down []int16 // down[i*n+a]: what is left of point i behind a cut at point a; -1 nothing
	full bool    // no sum was left out
	even bool    // parts lie in the next larger point
}

// maxPoints bounds the points of an axis, since filling a sheet takes their
// number to the third.
const maxPoints = 110

// newAxis makes the points up to end from sorted sizes. Where the sizes alone are
// many, sums would find no room: the points are then evenly spread and parts take
// the next larger one, or, if parts must lie in points of just their size, they
// are the sizes and some even ones.
func newAxis(sizes []int64, end int64, most int, just bool) *axis {
	x := &axis{}
	x.at, x.full = sums(sizes, end, most)
	if !x.full && len(sizes) > most/3 {
		x.at, x.even = evenly(end, most), !just
		if just {
			x.at = distinct(append(evenly(end, most/2), sizes...))
		}
	}
	if n := len(x.at); n == 0 || x.at[n-1] != end {
		x.at = append(x.at, end)
	}
	x.subtract()
	return x
}

// evenly spreads points over an axis, rounded down so that two of them together
// reach no farther than the point of their sum.
func evenly(end int64, n int) (at []int64) {
	for i := range int64(n) {
		at = append(at, (i+1)*end/int64(n))
	}
	return distinct(at)
}

// maxDense is the longest axis whose every place is looked at.
const maxDense = 2048

// sums lists the sums of sizes up to end in order, or the most useful of them
// where they are too many.
func sums(sizes []int64, end int64, most int) (at []int64, full bool) {
	if end <= maxDense {
		if at = denseSums(sizes, end); len(at) <= most {
			return at, true
		}
	}
	return fewSums(sizes, end, most)
}

func denseSums(sizes []int64, end int64) (at []int64) {
	reach := make([]bool, end+1)
	reach[0] = true
	for p := range end + 1 {
		if !reach[p] {
			continue
		}
		if p > 0 {
			at = append(at, p)
		}
		for _, s := range sizes {
			if p+s > end {
				break
			}
			reach[p+s] = true
		}
	}
	return at
}

// manySums bounds the sums that are compared where an axis has too many.
const manySums = 4096

// fewSums keeps the sizes themselves and, of their sums, those that leave least
// of the axis unused together with another sum.
func fewSums(sizes []int64, end int64, most int) (at []int64, full bool) {
	all, full := wideSums(sizes, end, manySums)
	slices.Sort(all)
	if len(all) <= most {
		return all, full
	}
	unused := map[int64]int64{}
	r := len(all) - 1
	for _, s := range all {
		for r >= 0 && all[r] > end-s {
			r--
		}
		unused[s] = end - s
		if r >= 0 {
			unused[s] -= all[r]
		}
	}
	for _, s := range sizes {
		unused[s] = -1
	}
	slices.SortStableFunc(all, func(a, b int64) int { return cmp.Compare(unused[a], unused[b]) })
	at = all[:most]
	slices.Sort(at)
	return at, false
}

// wideSums lists sizes, then sums of two, three and so on, as far as there is
// room.
func wideSums(sizes []int64, end int64, most int) (at []int64, full bool) {
	have := map[int64]bool{}
	add := func(v int64) bool {
		if v > end || have[v] {
			return true
		}
		if len(at) >= most {
			return false
		}
		have[v] = true
		at = append(at, v)
		return true
	}
	full = true
	for _, s := range sizes {
		full = add(s) && full
	}
	for from := 0; full && from < len(at); from++ {
		for _, s := range sizes {
			full = full && add(at[from]+s)
		}
	}
	return at, full
}

// subtract fills down.
func (x *axis) subtract() {
	n := len(x.at)
	x.down = make([]int16, n*n)
	for i := range n {
		r := i
		for a := range n {
			for r >= 0 && x.at[r] > x.at[i]-x.at[a] {
				r--
			}
			x.down[i*n+a] = int16(r)
		}
	}
}

// index of the first point that is no smaller; -1 beyond the end.
func (x *axis) index(v int64) int {
	if i, _ := slices.BinarySearch(x.at, v); i < len(x.at) {
		return i
	}
	return -1
}

// half is the last point a cut need be tried at in point i: what lies behind it
// is cut the same the other way round.
func (x *axis) half(i int) int {
	n, _ := slices.BinarySearch(x.at, x.at[i]/2+1)
	return n
}
