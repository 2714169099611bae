// Package geom holds plane geometry on the exact grid of unit.Length: points, labelled rings and regions, the
// exact side-of-line test, clipping, insets and areas.
//
// Coordinates stay within ±unit.Reach, so products of two differences fit in an int64 and predicates need no
// tolerance. Only constructions round (an intersection, a rotation), half up, each in one named function. Every
// edge keeps a Label through clipping, so that a piece's edge still says whether it is a tile's factory side or
// the wall, opening or zone that cut it. x runs to the right, y up; outer rings run counter-clockwise, holes
// clockwise. Nothing here changes its operands, and results may share rings with them: write into no ring that another may
// hold.
package geom

import "dryfit/internal/unit"

// Point is a place in some frame; the frame is the caller's.
type Point struct {
	X unit.Length `json:"x"`
	Y unit.Length `json:"y"`
}

// Add returns p + q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns p - q.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Rect is an axis-parallel rectangle, Min not above Max.
type Rect struct {
	Min Point `json:"min"`
	Max Point `json:"max"`
}

// W returns the width.
func (r Rect) W() unit.Length { return r.Max.X - r.Min.X }

// H returns the height.
func (r Rect) H() unit.Length { return r.Max.Y - r.Min.Y }

// Label says what an edge is. Its meaning is the caller's: package tiling keeps a table of labels for each face.
// Zero is "no label".
type Label int32

// Vertex is a corner of a ring and the label of the edge that leaves it.
type Vertex struct {
	P    Point `json:"p"`
	Edge Label `json:"edge"`
}

// Ring is a closed outline, the last vertex joined to the first.
type Ring []Vertex

// Region is a set of points bounded by rings: outers counter-clockwise, holes clockwise, none crossing.
type Region []Ring
