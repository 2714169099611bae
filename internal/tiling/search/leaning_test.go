package search

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// leaningRoom has a leaning right wall, a falling floor and up to two openings.
func leaningRoom(rng *rand.Rand) string {
	w, h := 600+rng.IntN(600), 500+rng.IntN(500)
	line := fmt.Sprintf("room %d %d | taper %d | fall %d", w, h, rng.IntN(60)-30, rng.IntN(40)-20)
	xs, ys := spread(rng, w-40), spread(rng, h-40)
	for i := range rng.IntN(3) {
		x0, x1, y0, y1 := xs[2*i], xs[2*i+1], ys[2*i], ys[2*i+1]
		line += fmt.Sprintf(" | open o%d %d %d %d %d", i, min(x0, x1), 20+min(y0, y1), max(x0, x1), 20+max(y0, y1))
	}
	bonds := []string{"stack", "running 1/2", "running 1/3", "vertical running 1/2"}
	return line + fmt.Sprintf(" | tile %d %d %d | %s | mark %d | hidden right %d", 80+rng.IntN(220), 80+rng.IntN(220),
		rng.IntN(6), bonds[rng.IntN(len(bonds))], 5+rng.IntN(12), rng.IntN(20))
}

// The costs at every offset, filled by sweeping, are those of each layout measured by itself.
func TestSweepAgainstAssessOnLeaningRooms(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 100 {
		line := leaningRoom(rng)
		in := read(t, line)
		p := newProblem(&in)
		across, along := p.across(), newRows(p)
		for j := range p.t.steps {
			cols, _ := along.at(p.t.at(j))
			for i := rng.IntN(4); i < p.s.steps; i += 4 {
				if got, want := joined(cols, across, i, j), p.assess(p.origin(j, i)).costs; got != want {
					t.Fatalf("%s\nstep %d %d: swept %v, measured %v", line, j, i, got, want)
				}
			}
		}
	}
}

// Which tiles are cut is asked of package geom tile by tile: a tile counts where its core crosses the outline.
func TestCutCountAgainstClassifyingEveryTile(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 300 {
		line := leaningRoom(rng)
		in := read(t, line)
		p, b, ix := newProblem(&in), newBrute(&in, 0), geom.NewIndex(in.Region)
		o := p.origin(rng.IntN(p.t.steps), rng.IntN(p.s.steps))
		want := int64(0)
		b.each(o, func(r geom.Rect, _, _ int) {
			e := easeOf(in.Mark)
			core := geom.Rect{Min: r.Min.Add(geom.Point{X: e, Y: e}), Max: r.Max.Sub(geom.Point{X: e, Y: e})}
			if ix.Classify(core) == geom.Across {
				want++
			}
		})
		if got := p.assess(o).costs[cuts]; got != want {
			t.Fatalf("%s\norigin %v: %d cut, want %d", line, o, got, want)
		}
	}
}

// The narrowest cut is sampled: at 201 places of every edge, in every tile whose core holds the place, straight across
// to the tile's side or to the next edge. The search may find less than the samples, by what an edge leans from one
// sample to the next; never more.
func TestNarrowestAgainstSamples(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for range 200 {
		line := leaningRoom(rng)
		in := read(t, line)
		p := newProblem(&in)
		o := p.origin(rng.IntN(p.t.steps), rng.IntN(p.s.steps))
		got, want := p.assess(o), sampled(newBrute(&in, 0), o)
		seen := got.length[narrowest].MM()
		const step = 60.0 / 200 // an edge leans by at most 30; both that face each other may
		if !got.set[narrowest] {
			seen = math.Inf(1)
		}
		if seen == 0 && want < p.s.ease.MM()+step {
			continue // it runs out to nothing: the samples end where the ease begins
		}
		if seen > want+0.01 || seen < want-step-0.01 {
			t.Errorf("%s\norigin %v: shows %.3f, sampled %.3f", line, o, seen, want)
		}
	}
}

// sampled works in floating millimetres and looks at single places only.
func sampled(b *brute, o geom.Point) float64 {
	least := math.Inf(1)
	for _, ring := range b.in.Region {
		for i, v := range ring {
			p, q := v.P, ring[(i+1)%len(ring)].P
			for k := range 201 {
				f := min(1-1e-9, max(1e-9, float64(k)/200))
				x := p.X.MM() + f*(q.X.MM()-p.X.MM())
				y := p.Y.MM() + f*(q.Y.MM()-p.Y.MM())
				least = min(least, b.sample(o, x, y, p, q, edgeOf(b.in.Edges, v.Edge)))
			}
		}
	}
	return least
}

// sample is what shows beside one place of the edge p q.
func (b *brute) sample(o geom.Point, x, y float64, p, q geom.Point, e Edge) float64 {
	upright := (p.X - q.X).Abs() < (p.Y - q.Y).Abs()
	plain := upright == b.in.Bond.Vertical
	least := math.Inf(1)
	ease := b.ease().MM()
	b.each(o, func(r geom.Rect, _, _ int) {
		near, far, at := r.Min.X.MM(), r.Max.X.MM(), x
		lo, hi, on := r.Min.Y.MM(), r.Max.Y.MM(), y
		into := -float64(sign(q.Y - p.Y))
		if !upright {
			near, far, at, lo, hi, on = lo, hi, y, near, far, x
			into = float64(sign(q.X - p.X))
		}
		if at <= near+ease || at >= far-ease || !plain && (on <= lo+ease || on >= hi-ease) {
			return
		}
		width := at - near
		if into > 0 {
			width = far - at
		}
		gap, by := b.ahead(x, y, upright, into)
		least = min(least, max(0, min(width-e.Hidden.MM(), gap-e.Hidden.MM()-by.Hidden.MM())))
	})
	return least
}

// ahead is how far it is to the next edge, if that runs the same way: where a wall meets the floor it is no gap.
func (b *brute) ahead(x, y float64, upright bool, into float64) (float64, Edge) {
	best, by, other := math.Inf(1), Edge{}, false
	for _, ring := range b.in.Region {
		for i, v := range ring {
			p, q := v.P, ring[(i+1)%len(ring)].P
			a, c, d, f, at, on := p.X.MM(), p.Y.MM(), q.X.MM(), q.Y.MM(), x, y
			if !upright {
				a, c, d, f, at, on = c, a, f, d, y, x
			}
			if (c < on) == (f < on) {
				continue
			}
			dist := (a + (on-c)/(f-c)*(d-a) - at) * into
			if dist > 0.001 && dist < best {
				best, by, other = dist, edgeOf(b.in.Edges, v.Edge), math.Abs(d-a) >= math.Abs(f-c)
			}
		}
	}
	if other {
		return math.Inf(1), Edge{}
	}
	return best, by
}

// Outlines of any kind: nothing panics, and sweeping agrees with measuring.
func TestAnyOutline(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	for range 300 {
		in := read(t, "room 900 700 | tile 170 130 2 | running 1/2 | mark 7 | hole 400 300 50 | sight 400")
		n := 3 + rng.IntN(9)
		ring := make(geom.Ring, n)
		for i := range ring {
			turn := 2 * math.Pi * (float64(i) + 0.8*rng.Float64()) / float64(n)
			reach := 30 + 500*rng.Float64()
			ring[i] = geom.Vertex{P: geom.Point{X: unit.FromMM(reach * math.Cos(turn)), Y: unit.FromMM(reach * math.Sin(turn))},
				Edge: geom.Label(rng.IntN(6))}
		}
		in.Region = geom.Region{ring}
		p := newProblem(&in)
		across, along := p.across(), newRows(p)
		for j := 0; j < p.t.steps; j += 3 {
			cols, _ := along.at(p.t.at(j))
			i := rng.IntN(p.s.steps)
			if got, want := joined(cols, across, i, j), p.assess(p.origin(j, i)).costs; got != want {
				t.Fatalf("%v step %d %d: swept %v, measured %v", ring, j, i, got, want)
			}
		}
	}
}
