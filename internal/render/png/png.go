// Package png paints a page as a PNG picture on white.
//
// Takes a page of package draw and a resolution; gives an RGB picture, or one with a palette where
// that holds its colors, with the resolution noted in it. Rules: lines
// keep their width down to one pixel, below which they are painted one pixel wide, so that a thin line never
// fades; curves and lettering are smoothed; nothing a page holds makes it fail but a size beyond MaxPixels.
package png

import (
	"fmt"
	"image"
	"image/draw"
	"io"

	page "dryfit/internal/draw"

	"golang.org/x/image/vector"
)

// MaxPixels bounds a picture's area: 400 million bytes of memory.
const MaxPixels = 100_000_000

// Write paints one page at so many dots per inch.
func Write(w io.Writer, p page.Page, dpi int) error {
	img, err := Paint(p, dpi)
	if err != nil {
		return err
	}
	data, err := encode(img, dpi)
	if err != nil {
		return err
	}
	_, err = w.Write(data)
	return err
}

// Paint gives the picture itself.
func Paint(p page.Page, dpi int) (*image.RGBA, error) {
	const umPerInch = 25_400
	scale := float64(dpi) / umPerInch
	wide, high := pixels(p.W, scale), pixels(p.H, scale)
	if dpi <= 0 || wide <= 0 || high <= 0 || wide > MaxPixels/high {
		return nil, fmt.Errorf("png: a page of %d by %d um at %d dpi is no picture that can be painted", p.W, p.H, dpi)
	}
	img := image.NewRGBA(image.Rect(0, 0, wide, high))
	draw.Draw(img, img.Bounds(), image.White, image.Point{}, draw.Src)
	c := &canvas{into: img, scale: scale, h: p.H}
	c.items(p.Items)
	return img, nil
}

func pixels(v page.Um, scale float64) int {
	const most = 1 << 20
	return int(min(float64(v)*scale+0.5, most))
}

// canvas paints into a part of the picture.
type canvas struct {
	into  *image.RGBA
	scale float64 // pixels in a micrometre
	h     page.Um
	brush vector.Rasterizer
	mask  []uint8 // of the figure that is painted
}

// pt is a place in the picture, y downward.
type pt struct{ x, y float64 }

func (c *canvas) at(p page.XY) pt { return pt{float64(p.X) * c.scale, float64(c.h-p.Y) * c.scale} }

func (c *canvas) items(items []page.Item) {
	for _, it := range items {
		switch it := it.(type) {
		case page.Path:
			c.path(it)
		case page.Circle:
			c.circle(it)
		case page.Text:
			c.text(it)
		case page.Group:
			c.group(it)
		default:
			panic(fmt.Sprintf("png: no such item: %T", it))
		}
	}
}

func (c *canvas) group(g page.Group) {
	whole := c.into
	if g.Clip != nil {
		lo, hi := c.at(g.Clip[0]), c.at(g.Clip[1])
		window := image.Rect(round(lo.x), round(hi.y), round(hi.x), round(lo.y))
		c.into = whole.SubImage(window).(*image.RGBA)
	}
	c.items(g.Items)
	c.into = whole
}
