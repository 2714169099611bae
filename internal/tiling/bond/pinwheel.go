package bond

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
)

// pinwheel lays large squares with a small one at every corner. With A and B for the sides and their joints, squares of A at the
// origin and B at (A, 0) repeat by (A, B) and (-B, A): the cell has area A² + B², and the pattern closes for any two squares.
func pinwheel(spec Spec, g Goods, found *diag.List) Bond {
	for _, s := range g.Sizes {
		if s.Length != s.Width {
			found.Add(diag.Stop, "bond-needs-squares", diag.Place{}, "{0} is laid of two squares, and a tile of this set measures {1} by {2}",
				"choose two square sizes, or another bond", diag.T(spec.String()), diag.X(s.Length), diag.X(s.Width))
			return Bond{}
		}
	}
	order := bySize(g.Sizes)
	small, large := order[0], order[1]
	a, c := g.Sizes[large].Length+g.Joint, g.Sizes[small].Length+g.Joint
	b := Bond{U: geom.Point{X: a, Y: c}, V: geom.Point{X: -c, Y: a}, CourseBy: [2]int{0, 1}, ColumnBy: [2]int{2, 0}}
	b.Protos = []Proto{proto(g, large, 0, 0, 0), proto(g, small, 0, a, 0)}
	b.Protos[1].Column = 1
	return b
}
