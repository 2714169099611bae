package bond

import (
	"cmp"
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Cell is one tile placed in the plane. Its address follows from the lattice alone: it does not change when the bounds
// do, or when the origin moves a little.
type Cell struct {
	Course, Column int
	Proto          int
	Rect           geom.Rect // in the pattern frame
}

// Cover returns the cells whose rectangles share area with the bounds, course by course from the lowest, each from its first column.
// The origin is where proto 0 of the lattice's zero cell has its own At moved to.
func (b Bond) Cover(bounds geom.Rect, origin geom.Point) []Cell {
	cells := make([]Cell, 0, b.estimate(bounds))
	b.Each(bounds, origin, func(c Cell) { cells = append(cells, c) })
	slices.SortFunc(cells, func(a, b Cell) int {
		return cmp.Or(cmp.Compare(a.Course, b.Course), cmp.Compare(a.Column, b.Column))
	})
	return cells
}

// Each calls visit for the same cells as Cover, proto by proto: quicker where the order is of no matter.
func (b Bond) Each(bounds geom.Rect, origin geom.Point, visit func(Cell)) {
	for k, p := range b.Protos {
		base := origin.Add(p.At)
		b.steps(p.window(bounds, base), func(i, j int64, d geom.Point) {
			at := base.Add(d)
			visit(Cell{
				Course: p.Course + int(i)*b.CourseBy[0] + int(j)*b.CourseBy[1],
				Column: p.Column + int(i)*b.ColumnBy[0] + int(j)*b.ColumnBy[1],
				Proto:  k, Rect: geom.Rect{Min: at, Max: at.Add(geom.Point{X: p.W, Y: p.H})},
			})
		})
	}
}

// Ring returns the cell's outline in the pattern frame; labels are those of the proto's ring, none for a rectangle.
func (b Bond) Ring(c Cell) geom.Ring {
	if r := b.Protos[c.Proto].Ring; r != nil {
		return geom.Region{r}.Move(c.Rect.Min)[0]
	}
	return geom.RectRing(c.Rect, 0, 0, 0, 0)
}

// CellArea returns the area of the lattice's cell: of its tiles and their share of the joints.
func (b Bond) CellArea() unit.Area {
	return unit.Area(max(cross(b.U, b.V), -cross(b.U, b.V)))
}

// estimate is a guess at the number of cells, for memory only.
func (b Bond) estimate(bounds geom.Rect) int {
	w, h := bounds.W()+b.U.X.Abs()+b.V.X.Abs(), bounds.H()+b.U.Y.Abs()+b.V.Y.Abs()
	return int(int64(w)/64*(int64(h)/64)/(int64(b.CellArea())/4096+1)+1) * len(b.Protos)
}

// window returns the closed box of lattice points p for which base+p puts the proto over the bounds.
func (p Proto) window(bounds geom.Rect, base geom.Point) geom.Rect {
	return geom.Rect{
		Min: geom.Point{X: bounds.Min.X - base.X - p.W + 1, Y: bounds.Min.Y - base.Y - p.H + 1},
		Max: geom.Point{X: bounds.Max.X - base.X - 1, Y: bounds.Max.Y - base.Y - 1},
	}
}

// steps visits every i·U + j·V in the closed box.
func (b Bond) steps(box geom.Rect, visit func(i, j int64, d geom.Point)) {
	if box.Min.X > box.Max.X || box.Min.Y > box.Max.Y {
		return
	}
	lo, hi := b.rows(box)
	for j := lo; j <= hi; j++ {
		row := geom.Point{X: b.V.X * unit.Length(j), Y: b.V.Y * unit.Length(j)}
		x := between(box.Min.X-row.X, box.Max.X-row.X, b.U.X)
		y := between(box.Min.Y-row.Y, box.Max.Y-row.Y, b.U.Y)
		for i := max(x.lo, y.lo); i <= min(x.hi, y.hi); i++ {
			visit(i, j, row.Add(geom.Point{X: b.U.X * unit.Length(i), Y: b.U.Y * unit.Length(i)}))
		}
	}
}

// rows returns the range of j that can reach the box: j = U×p / U×V, least and greatest at its corners.
func (b Bond) rows(box geom.Rect) (lo, hi int64) {
	det := cross(b.U, b.V)
	for n, c := range box.Corners() {
		j := floorDiv(cross(b.U, c), det)
		if n == 0 {
			lo, hi = j, j
		}
		lo, hi = min(lo, j), max(hi, j)
	}
	return lo, hi
}

// span is a closed range of whole numbers.
type span struct{ lo, hi int64 }

// between returns the range of i with lo <= i·step <= hi.
func between(lo, hi, step unit.Length) span {
	switch {
	case step == 0 && lo <= 0 && hi >= 0:
		return span{-1 << 40, 1 << 40}
	case step == 0:
		return span{1, 0}
	case step < 0:
		return between(-hi, -lo, -step)
	}
	return span{-floorDiv(-int64(lo), int64(step)), floorDiv(int64(hi), int64(step))}
}

func cross(a, b geom.Point) int64 { return int64(a.X)*int64(b.Y) - int64(a.Y)*int64(b.X) }

// floorDiv returns the greatest whole number not above a/b.
func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}
