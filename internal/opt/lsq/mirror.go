package lsq

import "slices"

// mirrors lists the sets of points that can be turned over about the line of two others (a hinge) unnoticed: no reading
// leads from them to the rest except to the hinge, none of theirs is an offset or held, and the outline stays as told.
func mirrors(p *Problem, at []Point) (list [][]int) {
	if p.hasOffsets() || len(p.Fixed) > 0 {
		return nil
	}
	far := distances(p.Observations, len(at))
	by := critical * coarsest(p.Observations)
	for i := range at {
		for j := i + 1; j < len(at); j++ {
			for _, part := range smallerParts(far, i, j) {
				other := flipped(at, part, at[i], at[j])
				if apart(at, other, by) && p.Outline.faults(other) == 0 && !within(list, part) {
					list = append(list, part)
				}
			}
		}
	}
	return list
}

// smallerParts are the sets into which the readings fall without the hinge, all but the largest, which counts as the
// rest. Turning all of it but one over is the same as turning that one.
func smallerParts(far [][]float64, i, j int) [][]int {
	seen := make([]bool, len(far))
	seen[i], seen[j] = true, true
	var parts [][]int
	largest := 0
	for k := range far {
		if seen[k] {
			continue
		}
		parts = append(parts, spread(far, seen, k))
		if len(parts[len(parts)-1]) > len(parts[largest]) {
			largest = len(parts) - 1
		}
	}
	if len(parts) == 0 {
		return nil
	}
	return slices.Delete(parts, largest, largest+1)
}

// spread is the set of unseen points that readings lead to from k, in order.
func spread(far [][]float64, seen []bool, k int) []int {
	seen[k] = true
	set := []int{k}
	for n := 0; n < len(set); n++ {
		for m, d := range far[set[n]] {
			if d > 0 && !seen[m] {
				seen[m] = true
				set = append(set, m)
			}
		}
	}
	slices.Sort(set)
	return set
}

// flipped turns some points over about the line a-b.
func flipped(at []Point, part []int, a, b Point) []Point {
	out := slices.Clone(at)
	ux, uy := direction(a, b)
	for _, k := range part {
		dx, dy := at[k].X-a.X, at[k].Y-a.Y
		along, aside := float64(dx*ux)+float64(dy*uy), float64(dy*ux)-float64(dx*uy)
		out[k] = Point{a.X + float64(along*ux) + float64(aside*uy), a.Y + float64(along*uy) - float64(aside*ux)}
	}
	return out
}

// apart tells whether two shapes differ by more than a distance somewhere: by less than a reading may be off, the other
// place is the same place, and a point on the hinge does not turn over.
func apart(a, b []Point, by float64) bool {
	for i := range a {
		if length(a[i], b[i]) > by {
			return true
		}
	}
	return false
}

// coarsest is the greatest standard deviation.
func coarsest(obs []Observation) float64 {
	m := 0.0
	for _, o := range obs {
		m = max(m, o.Sigma)
	}
	return m
}

func within(list [][]int, part []int) bool {
	for _, l := range list {
		if slices.Equal(l, part) {
			return true
		}
	}
	return false
}
