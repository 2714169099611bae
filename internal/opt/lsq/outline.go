package lsq

import "math"

// straightTolerance is the sine of a turn below which a corner counts as both left and right: half a degree, more than
// a start from unadjusted tape readings is off.
const straightTolerance = 0.01

// cross is twice the signed area of the triangle a b c: positive when it turns left.
func cross(a, b, c Point) float64 {
	return float64((b.X-a.X)*(c.Y-a.Y)) - float64((b.Y-a.Y)*(c.X-a.X))
}

// sign is the sign of the turn a b c, 0 when it is nearly straight.
func sign(a, b, c Point) int {
	v := cross(a, b, c)
	if math.Abs(v) <= straightTolerance*float64(length(a, b)*length(b, c)) {
		return 0
	}
	if v > 0 {
		return 1
	}
	return -1
}

func (s Sense) sign() int {
	if s == Clockwise {
		return -1
	}
	return 1
}

func (t Turn) sign() int { return [...]int{0, 1, -1}[t] }

// meets tells whether two segments cross in their inner points.
func meets(a, b, c, d Point) bool {
	return float64(cross(a, b, c)*cross(a, b, d)) < 0 && float64(cross(c, d, a)*cross(c, d, b)) < 0
}

// area is twice the signed area of the outline.
func (o Outline) area(at []Point) float64 {
	s := 0.0
	for i := 0; i < o.Corners; i++ {
		s += cross(Point{}, at[i], at[(i+1)%o.Corners])
	}
	return s
}

// contains tells whether a point lies inside the outline: a ray to the right crosses it an odd number of times.
func (o Outline) contains(at []Point, q Point) bool {
	in := false
	for i := 0; i < o.Corners; i++ {
		a, b := at[i], at[(i+1)%o.Corners]
		if (a.Y > q.Y) != (b.Y > q.Y) && (cross(a, b, q) > 0) == (b.Y > a.Y) {
			in = !in
		}
	}
	return in
}

// faultsAt counts what placing corner k among those placed already breaks: its two sides that cross another side, and
// the turns told for it and its neighbors.
func (o Outline) faultsAt(at []Point, placed []bool, k int) int {
	if k >= o.Corners {
		return 0
	}
	prev, next := (k+o.Corners-1)%o.Corners, (k+1)%o.Corners
	faults := o.crossings(at, placed, prev) + o.crossings(at, placed, k)
	for _, c := range []int{prev, k, next} {
		faults += o.wrongTurn(at, placed, c)
	}
	return faults
}

// crossings counts the placed sides that cross the side from corner i to the next.
func (o Outline) crossings(at []Point, placed []bool, i int) (count int) {
	j := (i + 1) % o.Corners
	if !placed[i] || !placed[j] {
		return 0
	}
	for a := 0; a < o.Corners; a++ {
		b := (a + 1) % o.Corners
		apart := a != i && a != j && b != i
		if apart && placed[a] && placed[b] && meets(at[i], at[j], at[a], at[b]) {
			count++
		}
	}
	return count
}

// wrongTurn is 1 when corner c is known to turn the other way than it was told to.
func (o Outline) wrongTurn(at []Point, placed []bool, c int) int {
	if len(o.Turns) == 0 {
		return 0
	}
	a, b := (c+o.Corners-1)%o.Corners, (c+1)%o.Corners
	if !placed[a] || !placed[b] || !placed[c] {
		return 0
	}
	if o.Turns[c].sign()*sign(at[a], at[c], at[b]) < 0 {
		return 1
	}
	return 0
}

// wrongBy is how far the corners round k turn against what was told, as a sum of sines: it tells the better of two places
// that are both within the tolerance.
func (o Outline) wrongBy(at []Point, placed []bool, k int) (sum float64) {
	for _, c := range []int{(k + o.Corners - 1) % o.Corners, k, (k + 1) % o.Corners} {
		a, b := (c+o.Corners-1)%o.Corners, (c+1)%o.Corners
		if !placed[a] || !placed[b] || !placed[c] {
			continue
		}
		if sides := float64(length(at[a], at[c]) * length(at[c], at[b])); sides > 0 {
			sine := cross(at[a], at[c], at[b]) / sides
			sum += max(0, -sine*float64(o.Turns[c].sign()))
		}
	}
	return sum
}

// wholeFaults counts what can be told of the whole only: the wrong sense, and points that lie outside the outline.
func (o Outline) wholeFaults(at []Point, placed []bool) (faults int) {
	for i := range placed[:o.Corners] {
		if !placed[i] {
			return 0
		}
	}
	if o.Corners >= 3 && o.area(at)*float64(o.Sense.sign()) < 0 {
		faults++
	}
	for i := o.Corners; o.Corners >= 3 && i < len(at); i++ {
		if placed[i] && !o.contains(at, at[i]) {
			faults++
		}
	}
	return faults
}

// faults counts all that a finished shape breaks.
func (o Outline) faults(at []Point) int {
	all := make([]bool, len(at))
	for i := range all {
		all[i] = true
	}
	n := o.wholeFaults(at, all)
	for i := 0; i < o.Corners; i++ {
		n += o.crossings(at, all, i) + o.wrongTurn(at, all, i)
	}
	return n
}
