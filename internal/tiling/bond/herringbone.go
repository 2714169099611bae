package bond

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// herringbone returns the maker for blocks of n tiles side by side: 1 is herringbone, 2 is double herringbone.
//
// Let l = L + joint and w = n·(W + joint): a block and its share of the joint. Lying blocks step along (w, w), which
// makes a band with stairs of w by w on both sides. A standing block with its right foot at the end of a lying one, top
// flush (lower left corner at (l, w-l)), stepped the same way, fits those stairs exactly; under it comes the next lying
// band, at (l, -l). The cell of (w, w) and (l, -l) has area 2·l·w: the two blocks. So herringbone closes for any sizes.
func herringbone(n int) func(Spec, Goods, *diag.List) Bond {
	return func(_ Spec, g Goods, _ *diag.List) Bond {
		l, one := g.Sizes[0].Length+g.Joint, g.Sizes[0].Width+g.Joint
		w := one * unit.Length(n)
		b := Bond{U: geom.Point{X: w, Y: w}, V: geom.Point{X: l, Y: -l},
			CourseBy: [2]int{1, 0}, ColumnBy: [2]int{0, 2 * n}}
		for k := range n {
			step := one * unit.Length(k)
			lying, standing := proto(g, 0, 0, 0, step), proto(g, 0, 1, l+step, w-l)
			lying.Column, standing.Column = k, n+k
			b.Protos = append(b.Protos, lying, standing)
		}
		return b
	}
}
