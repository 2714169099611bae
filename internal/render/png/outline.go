package png

import (
	"image"
	"image/draw"
	"math"

	page "dryfit/internal/draw"
)

// outline is a closed figure of straight lines and curves, made of contours.
type outline []contour

type contour []step

// step goes to its last point, by a curve over the others when there are more.
type step []pt

// fill paints the figure by winding number, within the smallest window that holds it.
func (c *canvas) fill(o outline, k page.Color) {
	window := o.reach().Intersect(c.into.Bounds())
	if window.Empty() {
		return
	}
	c.brush.Reset(window.Dx(), window.Dy())
	for _, line := range o {
		c.contour(line, float64(window.Min.X), float64(window.Min.Y))
	}
	c.ink(window, k)
}

// ink lays the brush's figure over the picture. A figure covers little of the window that holds it, and most of what it covers it
// covers whole, so it is taken as a mask first and only what is marked there is looked at.
func (c *canvas) ink(window image.Rectangle, k page.Color) {
	wide := window.Dx()
	if need := wide * window.Dy(); len(c.mask) < need {
		c.mask = make([]uint8, need)
	}
	mask := image.Alpha{Pix: c.mask, Stride: wide, Rect: image.Rect(0, 0, wide, window.Dy())}
	c.brush.DrawOp = draw.Src
	c.brush.Draw(&mask, mask.Rect, image.Opaque, image.Point{})
	for y := range window.Dy() {
		row := c.into.Pix[c.into.PixOffset(window.Min.X, window.Min.Y+y):]
		for x, m := range mask.Pix[y*wide : y*wide+wide] {
			switch m {
			case 0:
			case 255:
				row[4*x], row[4*x+1], row[4*x+2] = k.R, k.G, k.B
			default:
				row[4*x], row[4*x+1], row[4*x+2] = mixed(row[4*x], k.R, m), mixed(row[4*x+1], k.G, m), mixed(row[4*x+2], k.B, m)
			}
		}
	}
}

// mixed is a color over another that it covers by m in 255.
func mixed(under, over, m uint8) uint8 {
	return uint8((uint32(under)*(255-uint32(m)) + uint32(over)*uint32(m) + 127) / 255)
}

func (c *canvas) contour(line contour, x0, y0 float64) {
	var v [6]float32
	for i, s := range line {
		for j, p := range s {
			v[2*j], v[2*j+1] = float32(p.x-x0), float32(p.y-y0)
		}
		switch {
		case i == 0:
			c.brush.MoveTo(v[0], v[1])
		case len(s) == 1:
			c.brush.LineTo(v[0], v[1])
		case len(s) == 2:
			c.brush.QuadTo(v[0], v[1], v[2], v[3])
		default:
			c.brush.CubeTo(v[0], v[1], v[2], v[3], v[4], v[5])
		}
	}
	c.brush.ClosePath()
}

func (o outline) reach() image.Rectangle {
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, line := range o {
		for _, s := range line {
			for _, p := range s {
				x0, y0, x1, y1 = min(x0, p.x), min(y0, p.y), max(x1, p.x), max(y1, p.y)
			}
		}
	}
	if x0 > x1 {
		return image.Rectangle{}
	}
	return image.Rect(pixel(math.Floor(x0)), pixel(math.Floor(y0)), pixel(math.Ceil(x1)), pixel(math.Ceil(y1)))
}

// pixel keeps far-off places within what image rectangles can hold.
func pixel(v float64) int { return int(max(-1e6, min(1e6, v))) }

func round(v float64) int { return pixel(math.Floor(v + 0.5)) }

// polygon is a contour of straight lines.
func polygon(ring ...pt) contour {
	line := make(contour, len(ring))
	for i, p := range ring {
		line[i] = step{p}
	}
	return line
}

// area is twice the signed area of a ring.
func area(ring []pt) float64 {
	var a float64
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		a += p.x*q.y - q.x*p.y
	}
	return a
}

// turned gives the ring the wanted sense of rotation.
func turned(ring []pt, positive bool) []pt {
	if area(ring) > 0 == positive {
		return ring
	}
	back := make([]pt, len(ring))
	for i, p := range ring {
		back[len(ring)-1-i] = p
	}
	return back
}

// evenOdd makes a figure that fills by winding what the rings fill by even-odd: a ring within an odd number of
// others runs backward. Rings must not cross.
func evenOdd(rings [][]pt) outline {
	var o outline
	for i, ring := range rings {
		if len(ring) < 3 {
			continue
		}
		depth := 0
		for j, other := range rings {
			if i != j && within(ring[0], other) {
				depth++
			}
		}
		o = append(o, polygon(turned(ring, depth%2 == 0)...))
	}
	return o
}

func within(p pt, ring []pt) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if a.y > p.y != (b.y > p.y) && p.x < a.x+(b.x-a.x)*(p.y-a.y)/(b.y-a.y) {
			in = !in
		}
	}
	return in
}
