package piece

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/unit"
)

// Input is one laid piece and all that its field says.
type Input struct {
	Laid lay.Piece
	Field
}

// Field is what all pieces of a field share.
type Field struct {
	Bond    bond.Bond
	Frame   geom.Frame // of the pattern in the face
	Numbers Numbers
	Mark    string // prefix of addresses, where a face has several fields
	Edges   map[geom.Label]Edge
	Holes   []string // names, by a hit's index
	Tools   Tools
}

// Edge is what the face says of one of its edges, by the label that its cuts bear.
type Edge struct {
	Name  string      // "corner A", "window sill"
	Joint unit.Length // between the cut and what it meets
	// Forgive is by how much a cut may be off before its joint is too narrow or shows too wide.
	Forgive unit.Length
	Hidden  unit.Length // how much of the piece the other face's tile covers
}

// Tools is what the person cuts and measures with, and how sure the sizes are.
type Tools struct {
	Mark       unit.Length   // finest mark of the tape; cuts are rounded to it
	Bits       []unit.Length // core bits, in any order
	LeastStrip unit.Length   // the narrowest strip that can be snapped off
	// Tolerance is how far a size may be off: the tile's size variation and the accuracy of measuring, added up.
	Tolerance unit.Length
}

// edge returns what is known of a cut edge. A label without an entry is an edge without a name that forgives nothing.
func (f Field) edge(l geom.Label) Edge {
	if e, ok := f.Edges[l]; ok {
		return e
	}
	return Edge{Name: "edge"}
}
