// Package lay sets a bond on a region: every tile that meets it, clipped, in the tile's own frame, with the holes
// that pierce it.
//
// The region comes in the pattern frame (rounded once there); tiles are exact, so a whole tile on a 45 degree
// floor has area exactly L*W. Edges of a piece keep a label: a factory side of the tile, or the label of the
// region's edge (wall, opening, neighbor field) that cuts it.
package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// Labels of factory sides. Region labels are positive (1 and up); factory sides are negative.
const (
	Left   geom.Label = -1
	Bottom geom.Label = -2
	Right  geom.Label = -3
	Top    geom.Label = -4
	// Hexagon sides count on: -1 … -6 counter-clockwise from the lower right side.
)

// Piece is one tile or part of one. All outlines are in the tile's own frame: the factory tile lies with its
// length along x, lower left corner at the origin, unturned.
type Piece struct {
	Course, Column, Part int        // the address; Part counts pieces of one tile from 0
	Proto                int        // index into the bond's protos
	Size                 int        // index into the goods' sizes
	Turn                 geom.Turn  // how the tile lies in the pattern
	At                   geom.Point // where the tile's lower left corner (as it lies) is, in the pattern frame, offset included
	Whole                bool
	Shape                geom.Region // in the tile's own frame; shared between whole tiles: do not change it
	// Free marks, by -label, factory sides beyond whose joint the field ends: no neighbor needs them.
	Free  [7]bool
	Holes []Hole
}

// Hole is a round hole through a piece, or a bite out of its edge.
type Hole struct {
	Index  int        // of the face's hole
	Center geom.Point // in the tile's own frame
	Drill  unit.Length
	Bite   bool // the circle crosses the piece's edge
}

// Hit is a hole to lay, in the pattern frame.
type Hit struct {
	Index  int
	Center geom.Point
	Drill  unit.Length
}

// Field is a region made ready for tile. It may be used for many bonds and origins.
type Field struct {
	region geom.Region
	bounds geom.Rect
	index  *geom.Index
}

// On makes a region (in the pattern frame) ready. The region must not be changed afterwards.
func On(region geom.Region) *Field {
	return &Field{region: region, bounds: region.Bounds(), index: geom.NewIndex(region)}
}

// Lay sets the bond on a region once; see Field.Lay.
func Lay(region geom.Region, b bond.Bond, origin geom.Point, hits []Hit) []Piece {
	pieces, _ := On(region).Lay(b, origin, hits)
	return pieces
}

// Lay returns every piece, course by course, and beside them what is too thin to be a piece (see LeastWidth): it falls
// into the joint. Pieces and dropped ones together are exactly the tiles' part of the region.
func (f *Field) Lay(b bond.Bond, origin geom.Point, hits []Hit) (pieces, dropped []Piece) {
	cells := b.Cover(f.bounds, origin)
	s := setter{Field: f, b: b, molds: molds(b), hits: hits, pieces: make([]Piece, 0, len(cells))}
	for _, c := range cells {
		s.set(c)
	}
	return s.pieces, s.dropped
}

// Count is the light form of a layout, for searches.
type Count struct {
	Whole int // tiles wholly in the field
	Cut   int // tiles that meet the field and its edge, thin ones included
}

// Survey counts without building pieces.
func (f *Field) Survey(b bond.Bond, origin geom.Point) Count {
	var n Count
	b.Each(f.bounds, origin, func(c bond.Cell) {
		switch f.lies(b, c) {
		case geom.Inside:
			n.Whole++
		case geom.Across:
			n.Cut++
		}
	})
	return n
}

func (f *Field) lies(b bond.Bond, c bond.Cell) geom.Where {
	if b.Protos[c.Proto].Ring == nil {
		return f.index.Classify(c.Rect)
	}
	return f.index.ClassifyConvex(b.Ring(c))
}
