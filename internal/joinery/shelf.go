package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// shelves lays the shelves of every column: fixed ones in their joints, others on pins with a little room at both ends.
func (b *builder) shelves(o outline, lefts, rights []*Piece) {
	cols, _ := o.columnsOf(b.r.mark())
	for _, s := range o.doc.Shelves {
		col := s.Column.Or(1)
		if col > len(cols) {
			b.r.stop("column-none", s.At, "{0} is to stand in column {1}; {2} has {3}", "write a column that there is, or add to columns", diag.T(s.Name), diag.N(col), diag.T(b.name), diag.N(len(cols)))
			continue
		}
		if !b.r.known(s.Up, s.At, "the height of "+s.Name) {
			continue
		}
		b.shelf(o, s, cols[col-1], b.neighbors(cols, col, lefts, true), b.neighbors(cols, col, rights, false))
	}
}

// neighbors are the uprights at one side of a column: the sides of the cabinet, or a divider.
func (b *builder) neighbors(cols [][2]unit.Length, col int, sides []*Piece, onLeft bool) []*Piece {
	if onLeft && col == 1 || !onLeft && col == len(cols) {
		return sides
	}
	at := cols[col-1][1]
	if onLeft {
		at = cols[col-2][1]
	}
	for _, p := range b.pieces {
		if p.Role == DividerRole && p.Box.Lo[xAxis] == at {
			return []*Piece{p}
		}
	}
	return nil
}

func (b *builder) shelf(o outline, s document.Shelf, col [2]unit.Length, lefts, rights []*Piece) {
	stock := b.r.good(or(o.doc.Stock.Shelves, o.doc.Stock.Panels), "the shelves", s.At)
	if !stock.known {
		return
	}
	front := o.d
	if !o.overlay() {
		front -= b.r.frontThickness(o) + b.r.reveal(o)
	}
	y := o.floor + s.Up.V
	box := span(col[0], col[1], y, y+stock.thick, o.backFace, front)
	if s.Depth.Known {
		box.Hi[zAxis] = o.backFace + s.Depth.V
	}
	switch {
	case box.Hi[zAxis] > front:
		b.r.stop("shelf-deep", s.Depth.At, "{0} is {1} deep and there is room for {2}", "make it less deep", diag.T(s.Name), diag.X(s.Depth.V), diag.X(front-o.backFace))
		return
	case box.Hi[yAxis] > o.ceiling:
		b.r.stop("shelf-high", s.Up.At, "{0} at {1} does not lie in {2}, which is {3} high inside", "put it lower", diag.T(s.Name), diag.X(s.Up.V), diag.T(b.name), diag.X(o.ceiling-o.floor))
		return
	}
	if !s.Fixed.Or(false) {
		slack := b.r.round(unit.Inch/16, 3*unit.Millimetre/2) // at each end; common practice
		b.r.assume(o.doc.At, "loose shelves of {0} have {1} of room at each end", "common practice", diag.T(b.name), diag.X(slack))
		box.Lo[xAxis], box.Hi[xAxis] = box.Lo[xAxis]+slack, box.Hi[xAxis]-slack
		b.bandFront(o, b.add(s.Name, stock, box, Flat, ShelfRole), stock)
		return
	}
	joint := b.fit(o.doc.Joints.Shelf, "fixed shelves", document.ButtJoint, document.Dado)
	b.bandFront(o, b.level(o, s.Name, stock, box, joint, ShelfRole, lefts, rights), stock)
}
