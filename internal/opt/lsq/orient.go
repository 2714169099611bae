package lsq

// headings is how many directions of the whole network are tried; the adjustment finds the rest from within 4 degrees.
const headings = 64

// oriented turns a shape built from distances, which has no direction of its own, to where the held coordinates and the
// offset observations want it, and turns it over if that fits better and no outline says which side is up.
func (p *Problem) oriented(shape []Point) []Point {
	if len(p.Fixed) == 0 && !p.hasOffsets() {
		return shape
	}
	best, least := shape, p.strain(shape)
	for _, flip := range []float64{1, -1} {
		if flip < 0 && p.Outline.Corners >= 3 {
			break
		}
		for h := 0; h < headings; h++ {
			c := onCircle(h, headings)
			at := make([]Point, len(shape))
			for i, q := range shape {
				at[i] = turned(Point{q.X, q.Y * flip}, c.X, c.Y)
			}
			at = p.carried(at)
			if s := p.strain(at); s < least {
				best, least = at, s
			}
		}
	}
	return best
}

// carried moves the shape, without turning it, to where the held coordinates are on average.
func (p *Problem) carried(at []Point) []Point {
	var by Point
	var nx, ny float64
	for _, h := range p.Fixed {
		if h.Axis == X {
			by.X += at[h.Point].X - h.Value
			nx++
		} else {
			by.Y += at[h.Point].Y - h.Value
			ny++
		}
	}
	return shifted(at, Point{by.X / max(nx, 1), by.Y / max(ny, 1)})
}

// strain is the sum of squares by which a shape misses the held coordinates and the offsets.
func (p *Problem) strain(at []Point) float64 {
	s := 0.0
	for _, h := range p.Fixed {
		e := at[h.Point].X - h.Value
		if h.Axis == Y {
			e = at[h.Point].Y - h.Value
		}
		s += float64(e * e)
	}
	for _, o := range p.Observations {
		if o.Kind != Distance {
			e := computed(o, at) - o.Value
			s += float64(e * e)
		}
	}
	return s
}
