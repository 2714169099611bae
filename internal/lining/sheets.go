package lining

import (
	"fmt"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// sheets makes the pieces of a layout: what each cell covers of the face, and what is cut out of it.
func (m *maker) sheets(s document.Stock, f site.Face, l layout) []Sheet {
	thick, _, _ := s.Thickness()
	var out []Sheet
	for r, band := range l.cells {
		for c, cell := range band {
			for k, g := range f.Board.ClipRect(cell, [4]geom.Label{}).Parts() {
				x := Sheet{Name: fmt.Sprintf("%d-%d", r+1, c+1), Rect: g.Bounds(), Region: g}
				if k > 0 {
					x.Name += string(rune('a' + k%26))
				}
				x.Part = m.part(s, f, l.upright, x, thick)
				out = append(out, x)
			}
		}
	}
	return out
}

// part is a sheet as it lies on the bench, as seen from the room.
func (m *maker) part(s document.Stock, f site.Face, upright bool, x Sheet, thick unit.Length) part.Part {
	t := turner{x.Rect, upright}
	p := part.Part{Name: x.Name, For: f.Name, At: f.At, Count: 1, Stock: s.Name, Grain: part.Any, Size: part.Size{Length: x.Rect.W(), Width: x.Rect.H(), Thick: thick}}
	if upright {
		p.Size.Length, p.Size.Width = p.Size.Width, p.Size.Length
	}
	for _, q := range cutouts(x) {
		p.Cutouts = append(p.Cutouts, part.Cutout{Outline: t.ring(q)})
	}
	for _, h := range f.Holes {
		d := max(h.Drill, h.Diameter)
		r := geom.Point{X: d / 2, Y: d / 2}
		around := geom.Rect{Min: h.Center.Sub(r), Max: h.Center.Add(r)}
		switch {
		case d <= 0 || !around.Overlaps(x.Rect):
		case inside(around, x.Rect):
			p.Holes = append(p.Holes, part.Hole{At: t.point(h.Center), Diameter: d, Through: true, Depth: thick, For: h.Name})
		default: // it crosses a joint: each sheet is notched
			p.Cutouts = append(p.Cutouts, part.Cutout{Outline: t.ring(geom.RectRing(common(around, x.Rect), 0, 0, 0, 0)), For: h.Name})
		}
	}
	return p
}

func inside(r, of geom.Rect) bool {
	return r.Min.X > of.Min.X && r.Min.Y > of.Min.Y && r.Max.X < of.Max.X && r.Max.Y < of.Max.Y
}

func common(a, b geom.Rect) geom.Rect {
	return geom.Rect{Min: geom.Point{X: max(a.Min.X, b.Min.X), Y: max(a.Min.Y, b.Min.Y)}, Max: geom.Point{X: min(a.Max.X, b.Max.X), Y: min(a.Max.Y, b.Max.Y)}}
}

// cutouts are what the bounds of a sheet hold beside what it covers.
func cutouts(x Sheet) []geom.Ring {
	rest, err := geom.Region{geom.RectRing(x.Rect, 0, 0, 0, 0)}.Minus([]geom.Region{x.Region})
	if err != nil {
		return nil
	}
	var out []geom.Ring
	for _, r := range rest.Parts() {
		if r.Area() > 0 {
			out = append(out, r[0])
		}
	}
	return out
}

// turner brings the face's frame to the part's: an upright sheet is laid down clockwise, its lower end to the left.
type turner struct {
	of      geom.Rect
	upright bool
}

func (t turner) point(p geom.Point) geom.Point {
	if t.upright {
		return geom.Point{X: p.Y - t.of.Min.Y, Y: t.of.Max.X - p.X}
	}
	return p.Sub(t.of.Min)
}

func (t turner) ring(r geom.Ring) geom.Ring {
	out := make(geom.Ring, len(r))
	for i, v := range r {
		out[i] = geom.Vertex{P: t.point(v.P), Edge: v.Edge}
	}
	return out
}
