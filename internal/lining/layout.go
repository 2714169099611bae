package lining

import (
	"slices"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// cover is a face that is divided one way. u runs along the sheets' length, v across the bands; lying sheets have u along x.
type cover struct {
	limits
	upright    bool
	box        geom.Rect // of the face, in u and v
	long, wide unit.Length
	corners    []geom.Point // of openings, in u and v
	studs      []unit.Length
}

// layout is a face divided into cells.
type layout struct {
	upright bool
	faults  int
	cells   [][]geom.Rect // by band, in the face's frame
	joints  unit.Length
}

func (l layout) count() (n int) {
	for _, band := range l.cells {
		n += len(band)
	}
	return n
}

func (l layout) better(o layout) bool {
	if l.faults != o.faults {
		return l.faults < o.faults
	}
	if l.count() != o.count() {
		return l.count() < o.count()
	}
	return l.joints < o.joints
}

func newCover(f site.Face, s document.Stock, l limits, upright bool) cover {
	c := cover{limits: l, upright: upright, long: s.Length.V, wide: s.Width.V, studs: studsOf(f)}
	if s.Sale.Trim.Known {
		c.long, c.wide = c.long-2*s.Sale.Trim.V, c.wide-2*s.Sale.Trim.V
	}
	c.box = c.swap(f.Board.Bounds())
	for _, o := range f.Openings {
		for _, p := range o.Rect.Corners() {
			c.corners = append(c.corners, c.turn(p))
		}
	}
	return c
}

// studsOf lists where studs stand, in the frame of the face.
func studsOf(f site.Face) []unit.Length {
	var out []unit.Length
	for _, s := range f.Shims {
		out = append(out, s.X)
	}
	for _, b := range f.Buried {
		if b.Kind == "stud" {
			out = append(out, (b.Rect.Min.X+b.Rect.Max.X)/2)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func (c cover) turn(p geom.Point) geom.Point {
	if c.upright {
		return geom.Point{X: p.Y, Y: p.X}
	}
	return p
}

func (c cover) swap(r geom.Rect) geom.Rect { return geom.Rect{Min: c.turn(r.Min), Max: c.turn(r.Max)} }

// layout divides the face into bands, and each band into sheets.
func (c cover) layout() layout {
	out := layout{upright: c.upright}
	across := c.marks(c.box.Min.Y, c.box.Max.Y, c.wide, c.upright)
	bands, faults := c.divide(c.box.Min.Y, c.box.Max.Y, c.wide, across, func(v unit.Length) int { return c.near(v, func(p geom.Point) unit.Length { return p.Y }, c.box, nil) })
	out.faults, out.joints = faults, c.box.W()*unit.Length(max(0, len(bands)-1))
	var before []unit.Length
	for _, b := range bands {
		band := geom.Rect{Min: geom.Point{X: c.box.Min.X, Y: b[0]}, Max: geom.Point{X: c.box.Max.X, Y: b[1]}}
		along := c.marks(c.box.Min.X, c.box.Max.X, c.long, !c.upright)
		cells, faults := c.divide(c.box.Min.X, c.box.Max.X, c.long, along, func(u unit.Length) int {
			return c.near(u, func(p geom.Point) unit.Length { return p.X }, band, before)
		})
		out.faults += faults
		out.joints += band.H() * unit.Length(max(0, len(cells)-1))
		before = nil
		var row []geom.Rect
		for i, k := range cells {
			row = append(row, c.swap(geom.Rect{Min: geom.Point{X: k[0], Y: b[0]}, Max: geom.Point{X: k[1], Y: b[1]}}))
			if i > 0 {
				before = append(before, k[0]-c.gap/2)
			}
		}
		out.cells = append(out.cells, row)
	}
	return out
}

// marks are where a joint may be: on studs across x where they are known, else at every step and at full sheets.
func (c cover) marks(from, to, most unit.Length, alongWall bool) []unit.Length {
	var out []unit.Length
	if alongWall && len(c.studs) > 0 {
		for _, s := range c.studs {
			if s > from && s < to {
				out = append(out, s)
			}
		}
		return out
	}
	for at := from + c.step; at < to; at += c.step {
		out = append(out, at)
	}
	for at := from + most + c.gap/2; at < to && most > 0; at += most + c.gap {
		out = append(out, at)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// near counts what speaks against a joint: corners of openings within reach in its band, and a joint of the band before in line.
func (c cover) near(at unit.Length, of func(geom.Point) unit.Length, band geom.Rect, before []unit.Length) (n int) {
	for _, p := range c.corners {
		if (of(p)-at).Abs() < c.off && p.X >= band.Min.X && p.X <= band.Max.X && p.Y >= band.Min.Y && p.Y <= band.Max.Y {
			n++
		}
	}
	for _, b := range before {
		if (b - at).Abs() < c.stagger {
			n++
		}
	}
	return n
}
