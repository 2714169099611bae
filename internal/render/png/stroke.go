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
	r := max(float64(pen.Width)*c.scale, 1) / 2
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
func disc(at pt, r float64) contour {
	const kappa = 0.5522847498307936 // 4/3 (sqrt 2 - 1)
	k := r * kappa
	return contour{
		{{at.x + r, at.y}},
		{{at.x + r, at.y + k}, {at.x + k, at.y + r}, {at.x, at.y + r}},
		{{at.x - k, at.y + r}, {at.x - r, at.y + k}, {at.x - r, at.y}},
		{{at.x - r, at.y - k}, {at.x - k, at.y - r}, {at.x, at.y - r}},
		{{at.x + k, at.y - r}, {at.x + r, at.y - k}, {at.x + r, at.y}},
	}
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
