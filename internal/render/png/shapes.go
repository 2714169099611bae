package png

import (
	"math"

	page "dryfit/internal/draw"
	"dryfit/internal/typeset"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

func (c *canvas) path(p page.Path) {
	rings := make([][]pt, len(p.Rings))
	for i, ring := range p.Rings {
		for _, at := range ring {
			rings[i] = append(rings[i], c.at(at))
		}
	}
	if p.Fill.On {
		c.fill(evenOdd(rings), p.Fill.Color)
	}
	for _, ring := range rings {
		c.stroke(ring, p.Closed, p.Pen)
	}
	c.hatch(p.Fill.Hatch, p.HatchLines())
}

func (c *canvas) hatch(h page.Hatch, lines []page.Segment) {
	for _, s := range lines {
		c.stroke([]pt{c.at(s.A), c.at(s.B)}, false, page.HatchPen(h))
	}
}

func (c *canvas) circle(k page.Circle) {
	at, r := c.at(k.C), float64(k.R)*c.scale
	if k.Fill.On {
		c.fill(outline{disc(at, r)}, k.Fill.Color)
	}
	c.strokeCircle(at, r, k.Pen)
	c.hatch(k.Fill.Hatch, k.HatchLines())
}

func (c *canvas) text(t page.Text) {
	face := typeset.FaceOf(t.Bold)
	unit := float64(t.Size) * c.scale / float64(face.Cap)
	sin, cos := math.Sincos(float64(t.Turn) * math.Pi / 180)
	origin, x := c.at(typeset.Start(t)), 0.0
	var buf sfnt.Buffer
	var o outline
	for _, r := range typeset.Clean(t.Body) {
		put := func(p fixed.Point26_6) pt {
			u, v := (x+float64(p.X))*unit, float64(p.Y)*unit // v is downward
			return pt{origin.x + u*cos + v*sin, origin.y - u*sin + v*cos}
		}
		o = append(o, glyph(face, &buf, r, put)...)
		x += float64(face.Advance(r))
	}
	c.fill(o, t.Color)
}

// glyph loads a character's outline in font units; the face has every rune that Clean lets through.
func glyph(face *typeset.Face, buf *sfnt.Buffer, r rune, put func(fixed.Point26_6) pt) outline {
	i, err := face.Font.GlyphIndex(buf, r)
	if err != nil {
		return nil
	}
	segments, err := face.Font.LoadGlyph(buf, i, fixed.Int26_6(face.UnitEm), nil)
	if err != nil {
		return nil
	}
	var o outline
	for _, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			o = append(o, contour{{put(s.Args[0])}})
		case sfnt.SegmentOpLineTo:
			o[len(o)-1] = append(o[len(o)-1], step{put(s.Args[0])})
		case sfnt.SegmentOpQuadTo:
			o[len(o)-1] = append(o[len(o)-1], step{put(s.Args[0]), put(s.Args[1])})
		case sfnt.SegmentOpCubeTo:
			o[len(o)-1] = append(o[len(o)-1], step{put(s.Args[0]), put(s.Args[1]), put(s.Args[2])})
		}
	}
	return o
}
