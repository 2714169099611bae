package lsq

import "math"

const (
	// visitBudget bounds the search over mirror images: places tried, all branches together.
	visitBudget = 20000

	// unlike is the part of the distance between two mirror images by which their misfit to further readings has to
	// differ to decide between them. A reading that is wrong by less cannot turn a point over.
	unlike = 0.05
)

// builder places points one after another from two or more distances to points placed before.
type builder struct {
	outline Outline
	far     [][]float64 // mean measured distance, 0 where none
	order   []int       // points in the order of placing; the first two are the base
	anchors [][]int     // of each in order: the points placed before that it has distances to

	at     []Point
	placed []bool
	visits int

	best       []Point
	bestFaults int
}

// findStart builds approximate points from the observations.
func findStart(p *Problem) []Point {
	n := p.points()
	b := &builder{outline: p.Outline, far: distances(p.Observations, n), at: make([]Point, n), placed: make([]bool, n)}
	b.plan(n)
	b.place()
	if len(b.order) == n {
		return p.oriented(b.best)
	}
	return p.oriented(b.completed(p))
}

// distances is the mean of the distance readings of each pair.
func distances(obs []Observation, n int) [][]float64 {
	sum, count := square(n), square(n)
	for _, o := range obs {
		if o.Kind == Distance {
			a, b := min(o.From, o.To), max(o.From, o.To)
			sum[a][b] += o.Value
			count[a][b]++
		}
	}
	far := square(n)
	for a := range far {
		for b := a + 1; b < n; b++ {
			if count[a][b] > 0 {
				far[a][b] = sum[a][b] / count[a][b]
				far[b][a] = far[a][b]
			}
		}
	}
	return far
}

// plan takes as base the measured pair from which most points can be reached, the first of equals.
func (b *builder) plan(n int) {
	for i := 0; i < n; i++ {
		for j := i + 1; j < n; j++ {
			if b.far[i][j] == 0 {
				continue
			}
			if order, anchors := b.reach(i, j); len(order) > len(b.order) {
				b.order, b.anchors = order, anchors
			}
			if len(b.order) == n {
				return
			}
		}
	}
}

// reach lists what can be placed from a base, next always the point with the most distances to those placed.
func (b *builder) reach(i, j int) (order []int, anchors [][]int) {
	order, anchors = []int{i, j}, [][]int{nil, nil}
	in := make([]bool, len(b.far))
	in[i], in[j] = true, true
	for {
		next, most := -1, []int{0}
		for k := range b.far {
			if a := b.measuredTo(k, order); !in[k] && len(a) > len(most) {
				next, most = k, a
			}
		}
		if next < 0 {
			return order, anchors
		}
		in[next] = true
		order, anchors = append(order, next), append(anchors, most)
	}
}

func (b *builder) measuredTo(k int, order []int) (list []int) {
	for _, o := range order {
		if b.far[k][o] > 0 {
			list = append(list, o)
		}
	}
	return list
}

// place searches the mirror images depth first for the shape with the fewest faults of the outline, and ends at the
// first without any.
func (b *builder) place() {
	if len(b.order) == 0 {
		return
	}
	i, j := b.order[0], b.order[1]
	b.at[j] = Point{b.far[i][j], 0}
	b.placed[i], b.placed[j] = true, true
	b.extend(2, 0)
}

func (b *builder) extend(k, faults int) {
	if b.best != nil && (faults >= b.bestFaults || b.visits > visitBudget) {
		return
	}
	if k == len(b.order) {
		faults += b.outline.wholeFaults(b.at, b.placed)
		if b.best == nil || faults < b.bestFaults {
			b.best, b.bestFaults = append([]Point(nil), b.at...), faults
		}
		return
	}
	q := b.order[k]
	b.placed[q] = true
	for _, c := range b.images(q, b.anchors[k]) {
		b.visits++
		b.at[q] = c
		b.extend(k+1, faults+b.outline.faultsAt(b.at, b.placed, q))
	}
	b.placed[q] = false
}

// images gives the places that a point can have: two mirror images, the likelier first, or one where further distances
// decide.
func (b *builder) images(q int, anchors []int) []Point {
	i, j := b.sharpest(q, anchors)
	left, right := circles(b.at[i], b.far[i][q], b.at[j], b.far[j][q])
	ml, mr := b.misfit(q, left, anchors), b.misfit(q, right, anchors)
	if d := unlike * length(left, right); math.Abs(ml-mr) > d || d == 0 {
		if ml <= mr {
			return []Point{left}
		}
		return []Point{right}
	}
	first := b.prefersLeft(q, i, j)
	if l, r := b.wrongBy(q, left), b.wrongBy(q, right); l != r {
		first = l < r
	}
	if first {
		return []Point{left, right}
	}
	return []Point{right, left}
}

// wrongBy is how far a place for corner q would turn the outline against what was told.
func (b *builder) wrongBy(q int, at Point) float64 {
	if q >= len(b.outline.Turns) {
		return 0
	}
	b.at[q] = at
	return b.outline.wrongBy(b.at, b.placed, q)
}

// sharpest is the pair of anchors whose circles meet nearest to a right angle.
func (b *builder) sharpest(q int, anchors []int) (i, j int) {
	best := -1.0
	for n, x := range anchors {
		for _, y := range anchors[n+1:] {
			if s := squaredSine(b.far[x][q], b.far[y][q], length(b.at[x], b.at[y])); s > best {
				i, j, best = x, y, s
			}
		}
	}
	return i, j
}

// squaredSine is that of the angle between the sides a and b of a triangle with the third side c, 0 when the three do
// not close.
func squaredSine(a, b, c float64) float64 {
	cos := (float64(a*a) + float64(b*b) - float64(c*c)) / float64(2*a*b)
	return max(0, 1-float64(cos*cos))
}

// circles gives the two points at the distances from two centers, left and right of the line between them; where the
// circles do not meet, the point of that line on the first circle nearest to the second, twice.
func circles(a Point, ra float64, c Point, rc float64) (left, right Point) {
	d := length(a, c)
	ux, uy := direction(a, c)
	along := 0.0
	if d > 0 {
		along = (float64(d*d) + float64(ra*ra) - float64(rc*rc)) / (2 * d)
	}
	along = min(max(along, -ra), ra)
	h := math.Sqrt(float64(ra*ra) - float64(along*along))
	foot := Point{a.X + float64(along*ux), a.Y + float64(along*uy)}
	left = Point{foot.X - float64(h*uy), foot.Y + float64(h*ux)}
	right = Point{foot.X + float64(h*uy), foot.Y - float64(h*ux)}
	return left, right
}

// misfit is the mean disagreement of a place with the distances from it.
func (b *builder) misfit(q int, at Point, anchors []int) float64 {
	s := 0.0
	for _, i := range anchors {
		s += math.Abs(length(at, b.at[i]) - b.far[i][q])
	}
	return s / float64(len(anchors))
}

// prefersLeft tells on which side of the line i-j a point is likelier: three corners of a convex outline turn as the
// outline does, and any other point lies inward of a side.
func (b *builder) prefersLeft(q, i, j int) bool {
	left := b.outline.Sense == CounterClockwise
	n := b.outline.Corners
	switch {
	case i >= n || j >= n:
		return left
	case q < n:
		inOrder := i < j && j < q || j < q && q < i || q < i && i < j
		return inOrder == left
	}
	return (i == (j+1)%n) != left
}
