package draw

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Cavalieri's principle: parallel lines d apart measure an area by d times their length within it, the error at
// most about d times the figure's height for a convex figure, since the lines start anywhere.
func TestHatchLinesMeasureTheArea(t *testing.T) {
	const apart = float64(hatchPitch) / math.Sqrt2
	rapid.Check(t, func(t *rapid.T) {
		b := drawnBox(t, "outer")
		hole := Span(b.Lo.X+b.W()/4, b.Lo.Y+b.H()/4, b.Lo.X+b.W()/2, b.Lo.Y+b.H()/2)
		want := float64(b.W())*float64(b.H()) - float64(hole.W())*float64(hole.H())
		slack := apart * 2 * (float64(b.W()+b.H()) + float64(hole.W()+hole.H()))
		for _, h := range []Hatch{Diagonal, Counter} {
			p := Path{Rings: [][]XY{b.Ring(), hole.Ring()}, Fill: Fill{Hatch: h}}
			if got := length(p.HatchLines()) * apart; math.Abs(got-want) > slack {
				t.Fatalf("hatch %d of %v less %v measures %.0f, want %.0f", h, b, hole, got, want)
			}
		}
	})
}

func drawnBox(t *rapid.T, name string) Box {
	um := rapid.Int64Range(0, 300_000)
	x, y := Um(um.Draw(t, name+" x")), Um(um.Draw(t, name+" y"))
	return Span(x, y, x+Um(um.Draw(t, name+" w"))+4, y+Um(um.Draw(t, name+" h"))+4)
}

func length(lines []Segment) float64 {
	var sum float64
	for _, s := range lines {
		sum += math.Hypot(float64(s.B.X-s.A.X), float64(s.B.Y-s.A.Y))
	}
	return sum
}

// Every point of a hatch line lies in the polygon: the textbook ray test (even-odd) against the clipper.
func TestHatchLinesStayInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ring := star(t)
		p := Path{Rings: [][]XY{ring}, Fill: Fill{Hatch: Cross}}
		for _, s := range p.HatchLines() {
			if length([]Segment{s}) < 10 {
				continue // ends are whole micrometres, so a shorter line has no inside to speak of
			}
			for _, k := range []float64{0.01, 0.3, 0.5, 0.99} {
				x := float64(s.A.X) + k*float64(s.B.X-s.A.X)
				y := float64(s.A.Y) + k*float64(s.B.Y-s.A.Y)
				if !inside(x, y, ring) && edgeDistance(x, y, ring) > 2 {
					t.Fatalf("line %v leaves %v at %.1f, %.1f", s, ring, x, y)
				}
			}
		}
	})
}

// star is a simple polygon: corners at rising angles about a middle.
func star(t *rapid.T) []XY {
	n := rapid.IntRange(3, 9).Draw(t, "corners")
	var ring []XY
	for i := range n {
		r := rapid.Float64Range(1000, 60_000).Draw(t, "r")
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		ring = append(ring, At(100_000+Um(r*cos), 100_000+Um(r*sin)))
	}
	return ring
}

func inside(x, y float64, ring []XY) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		ax, ay, bx, by := float64(a.X), float64(a.Y), float64(b.X), float64(b.Y)
		if ay > y != (by > y) && x < ax+(bx-ax)*(y-ay)/(by-ay) {
			in = !in
		}
	}
	return in
}

func edgeDistance(x, y float64, ring []XY) float64 {
	least := math.Inf(1)
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
		k := ((x-float64(a.X))*dx + (y-float64(a.Y))*dy) / max(dx*dx+dy*dy, 1)
		k = max(0, min(1, k))
		least = min(least, math.Hypot(x-float64(a.X)-k*dx, y-float64(a.Y)-k*dy))
	}
	return least
}

// A chord's ends lie on the circle.
func TestHatchOfCircle(t *testing.T) {
	for _, h := range []Hatch{Diagonal, Counter, Cross} {
		c := Circle{C: At(81_234, 45_678), R: 20_001, Fill: Fill{Hatch: h}}
		lines := c.HatchLines()
		if len(lines) < 15 {
			t.Errorf("hatch %d has %d lines in a circle of 40 mm", h, len(lines))
		}
		for _, s := range lines {
			for _, p := range []XY{s.A, s.B} {
				if r := math.Hypot(float64(p.X-c.C.X), float64(p.Y-c.C.Y)); math.Abs(r-20_001) > 3 {
					t.Errorf("hatch %d: end %v is %.1f from the center", h, p, r)
				}
			}
		}
	}
}

// Neighbors share one hatching: what two halves get is what the whole gets, cut at the seam.
func TestHatchRunsThroughNeighbors(t *testing.T) {
	hatched := func(b Box) float64 {
		return length(Path{Rings: [][]XY{b.Ring()}, Fill: Fill{Hatch: Diagonal}}.HatchLines())
	}
	whole := hatched(Span(10_000, 10_000, 90_000, 50_000))
	halves := hatched(Span(10_000, 10_000, 43_210, 50_000)) + hatched(Span(43_210, 10_000, 90_000, 50_000))
	if math.Abs(whole-halves) > 1 {
		t.Errorf("whole %.1f, halves %.1f", whole, halves)
	}
}

func TestDotsLieInside(t *testing.T) {
	b := Span(3_333, 4_444, 23_456, 14_567)
	dots := Path{Rings: [][]XY{b.Ring()}, Fill: Fill{Hatch: Dots}}.HatchLines()
	if n := len(dots); n < 40 || n > 60 { // 203 mm² at one dot to 4 mm²
		t.Errorf("%d dots", n)
	}
	for _, s := range dots {
		if !b.Holds(Box{s.A, s.B}) {
			t.Errorf("dot %v outside", s)
		}
	}
}

func TestRootIsFloorOfSquareRoot(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := Um(rapid.Int64Range(1, 1<<60).Draw(t, "v"))
		if r := root(v); r*r > v || (r+1)*(r+1) <= v {
			t.Fatalf("root(%d) = %d", v, r)
		}
	})
}

func TestNothingToHatch(t *testing.T) {
	for _, p := range []Path{
		{Fill: Fill{Hatch: Cross}},
		{Rings: [][]XY{{}}, Fill: Fill{Hatch: Dots}},
		{Rings: [][]XY{{At(1, 1)}}, Fill: Fill{Hatch: Diagonal}},
		{Rings: [][]XY{{At(0, 0), At(9000, 9000)}}, Fill: Fill{Hatch: Cross}},
		{Rings: [][]XY{Span(0, 0, 9000, 9000).Ring()}},
	} {
		if lines := p.HatchLines(); length(lines) > 0 {
			t.Errorf("%v has %v", p, lines)
		}
	}
	if (Circle{R: 0, Fill: Fill{Hatch: Cross}}).HatchLines() != nil {
		t.Error("a point has hatch lines")
	}
}
