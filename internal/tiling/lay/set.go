package lay

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// setter lays one bond cell by cell.
type setter struct {
	*Field
	b               bond.Bond
	molds           []mold
	hits            []Hit
	pieces, dropped []Piece
}

func (s *setter) set(c bond.Cell) {
	switch s.lies(s.b, c) {
	case geom.Inside:
		p := s.piece(c)
		p.Whole, p.Shape = true, s.molds[c.Proto].own
		s.keep(p)
	case geom.Across:
		s.cut(c)
	}
}

func (s *setter) piece(c bond.Cell) Piece {
	proto := s.b.Protos[c.Proto]
	return Piece{Course: c.Course, Column: c.Column, Proto: c.Proto, Size: proto.Size, Turn: proto.Turn, At: c.Rect.Min}
}

// cut clips the tile by the region and sorts the parts from the lowest, from the left.
func (s *setter) cut(c bond.Cell) {
	outline := geom.Region{s.molds[c.Proto].lies}.Move(c.Rect.Min)[0]
	n := 0
	for _, part := range s.parts(c, s.index.ClipConvex(outline).Parts()) {
		p := s.shaped(c, part)
		p.Part = n
		if thin(p.Shape) {
			s.dropped = append(s.dropped, p)
			continue
		}
		p.Free = s.free(p)
		s.keep(p)
		n++
	}
}

// parts takes the hair-thin strips out of what a clip left and sorts the rest.
func (s *setter) parts(c bond.Cell, clipped []geom.Region) []geom.Region {
	var out []geom.Region
	for _, part := range clipped {
		left := []geom.Region{part}
		if s.b.Protos[c.Proto].Ring == nil && !thin(part) {
			var strips []geom.Region
			left, strips = unbridged(part, c.Rect)
			for _, strip := range strips {
				s.dropped = append(s.dropped, s.shaped(c, strip))
			}
		}
		out = append(out, left...)
	}
	slices.SortStableFunc(out, func(a, b geom.Region) int {
		p, q := a.Bounds().Min, b.Bounds().Min
		return cmp.Or(cmp.Compare(p.Y, q.Y), cmp.Compare(p.X, q.X))
	})
	return out
}

// shaped is a part of a tile, carried into the tile's own frame.
func (s *setter) shaped(c bond.Cell, part geom.Region) Piece {
	p := s.piece(c)
	p.Shape = tidy(s.molds[c.Proto].in(part.Move(geom.Point{X: -c.Rect.Min.X, Y: -c.Rect.Min.Y})))
	return p
}

// tidy takes out vertices that a clip left in the middle of a side.
func tidy(g geom.Region) geom.Region {
	out := g[:0]
	for _, r := range g {
		if c := r.Clean(); len(c) > 2 {
			out = append(out, c)
		}
	}
	return out
}

// LeastWidth is the width below which nobody can cut or set a strip: half a millimetre. It falls into the joint
// (our choice; common practice stops far earlier).
const LeastWidth = 500 * unit.Micrometre

// thin reports whether a part's mean width, its area over its longer extent, is below LeastWidth.
func thin(g geom.Region) bool {
	b := g.Bounds()
	return g.Area() < LeastWidth.Times(max(b.W(), b.H()))
}

func (s *setter) keep(p Piece) {
	for _, h := range s.hits {
		if hole, ok := s.pierce(p, h); ok {
			p.Holes = append(p.Holes, hole)
		}
	}
	s.pieces = append(s.pieces, p)
}
