package png

import (
	"math"

	page "dryfit/internal/draw"
)

// stroke paints a line through the points: a bar for each stretch and a disc at each bend, as round joins and
// butt ends have it.
func (c *canvas) stroke(line []pt, closed bool, pen page.Pen) {
	if pen.Width <= 0 || len(line) < 2 {
		return
	}
	if closed {
		line = append(line[:len(line):len(line)], line[0])
	}
	r := c.penWidth(pen) / 2
	for _, run := range dashed(line, pen, c.scale) {
		c.fill(bars(run, r), pen.Color)
	}
	if closed && pen.Dash == page.Solid {
		c.fill(outline{disc(line[0], r)}, pen.Color)
	}
}

func bars(line []pt, r float64) outline {
	var o outline
	for i := 1; i < len(line); i++ {
		if b := bar(line[i-1], line[i], r); b != nil {
			o = append(o, b)
		}
		if i > 1 {
			o = append(o, disc(line[i-1], r))
		}
	}
	return o
}

func bar(a, b pt, r float64) contour {
	d := math.Hypot(b.x-a.x, b.y-a.y)
	if d == 0 {
		return nil
	}
	nx, ny := -(b.y-a.y)/d*r, (b.x-a.x)/d*r
	ring := []pt{{a.x + nx, a.y + ny}, {b.x + nx, b.y + ny}, {b.x - nx, b.y - ny}, {a.x - nx, a.y - ny}}
	return polygon(turned(ring, true)...)
}

// disc is a circle of four curves, turning the same way as bars do.
func disc(at pt, r float64) contour { return circle(at, r, 1) }

// circle of four curves; sense -1 turns it backward, to cut a hole.
func circle(at pt, r, sense float64) contour {
	const kappa = 0.5522847498307936 // 4/3 (sqrt 2 - 1)
	k := r * kappa
	p := func(x, y float64) pt { return pt{at.x + x, at.y + sense*y} }
	return contour{
		{p(r, 0)},
		{p(r, k), p(k, r), p(0, r)},
		{p(-k, r), p(-r, k), p(-r, 0)},
		{p(-r, -k), p(-k, -r), p(0, -r)},
		{p(k, -r), p(r, -k), p(r, 0)},
	}
}

// strokeCircle paints a circle's line as what lies between two circles; a dashed one goes by short chords.
func (c *canvas) strokeCircle(at pt, r float64, pen page.Pen) {
	half := c.penWidth(pen) / 2
	switch {
	case pen.Width <= 0:
	case pen.Dash != page.Solid:
		c.stroke(chords(at, r), true, pen)
	case r <= half:
		c.fill(outline{disc(at, r+half)}, pen.Color)
	default:
		c.fill(outline{disc(at, r+half), circle(at, r-half, -1)}, pen.Color)
	}
}

// penWidth in pixels, at least one.
func (c *canvas) penWidth(pen page.Pen) float64 { return max(float64(pen.Width)*c.scale, 1) }

// chords of a circle: at 300 dpi the 96 corners lie within a quarter pixel of a circle of 40 mm.
func chords(at pt, r float64) []pt {
	const corners = 96
	ring := make([]pt, corners)
	for i := range ring {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		ring[i] = pt{at.x + r*cos, at.y + r*sin}
	}
	return ring
}

// dashed cuts a line into the pen's dashes; the pattern runs on round the bends.
func dashed(line []pt, pen page.Pen, scale float64) [][]pt {
	pattern := pen.Pattern()
	if pattern == nil {
		return [][]pt{line}
	}
	var out [][]pt
	run := []pt{line[0]}
	on, left, n := true, float64(pattern[0])*scale, 0
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		rest := math.Hypot(b.x-a.x, b.y-a.y)
		for rest > left {
			a, rest = toward(a, b, left/rest), rest-left
			if on {
				out = append(out, append(run, a))
			}
			on, n = !on, (n+1)%len(pattern)
			run, left = []pt{a}, float64(pattern[n])*scale
		}
		left -= rest
		run = append(run, b)
	}
	if on {
		out = append(out, run)
	}
	return out
}

func toward(a, b pt, t float64) pt { return pt{a.x + (b.x-a.x)*t, a.y + (b.y-a.y)*t} }
