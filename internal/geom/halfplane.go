package geom

// HalfPlane returns the part of g that lies left of the directed line a->b. Edges along the line, new or old, have the
// label l; a ring that the line does not touch is shared with g, not copied. A part that only touches the line from the
// right vanishes, and a hole that only touches it stays a hole. A line of no length keeps all.
//
// The line is thought of as moved to the left by less than any distance in g, so that it meets no vertex: what lies on
// it counts as cut off. Then every ring falls into chains on the left, each with a place where it enters and one where
// it leaves; sorted along the line, leaving and entering places alternate, and the stretch from each leaving place to
// the next entering one is an edge of the result. Places are put back on the line at the end. The order along the line
// is decided by exact predicates on whole edges, never by rounded places.
func (g Region) HalfPlane(a, b Point, l Label) Region {
	if a == b {
		return g
	}
	var c clipper
	return c.clip(g, lineThrough(a, b, l)).unknotted()
}
