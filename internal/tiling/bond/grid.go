package bond

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// grid is a bond whose tiles cover whole squares of a module: a tile that is k modules long has the length k·module
// less one joint. Such a bond closes only if one module serves all sides.
type grid struct {
	roles [][2]int // modules long and wide, smallest area first
	u, v  [2]int   // the lattice in modules
	tiles []gridTile
	// Numbering along u and v.
	courseBy, columnBy [2]int
	courses            bool
}

// gridTile is a tile with its lower left corner at (x, y) modules.
type gridTile struct {
	role           int
	standing       bool
	x, y           int
	course, column int
}

// Our own sets: one tile of each size in the cell, no place where four corners meet, no joint longer than five modules (three
// sizes) or four (four sizes). Rows of height one, each shifted by v against the row below, fill up with the upper halves of the row
// below: for three sizes L L m m l l s (capital: lower half, small l: upper half of the large one from the row below).
var (
	modularThree = grid{
		roles: [][2]int{{1, 1}, {2, 1}, {2, 2}},
		u:     [2]int{7, 0}, v: [2]int{3, 1}, courseBy: [2]int{0, 1}, columnBy: [2]int{3, 0},
		tiles: []gridTile{{role: 2}, {role: 1, x: 2, column: 1}, {role: 0, x: 6, column: 2}},
	}
	modularFour = grid{
		roles: [][2]int{{1, 1}, {2, 1}, {2, 2}, {3, 2}},
		u:     [2]int{13, 0}, v: [2]int{9, 1}, courseBy: [2]int{0, 1}, columnBy: [2]int{4, 0},
		tiles: []gridTile{{role: 3}, {role: 0, x: 3, column: 1}, {role: 2, x: 7, column: 2}, {role: 1, x: 9, column: 3}},
	}
)

// basketweave makes square blocks of tiles that lie and stand by turns; as many in a block as the tile is wide in its length.
func basketweave(spec Spec, g Goods, found *diag.List) Bond {
	n := max(2, int((g.Sizes[0].Length+g.Joint).MulDiv(1, int64(g.Sizes[0].Width+g.Joint))))
	return weave(n).bond(spec, g, found)
}

// weave is the basketweave of n tiles in a block. A row of blocks is a course; columns count through the blocks.
func weave(n int) grid {
	out := grid{roles: [][2]int{{n, 1}}, u: [2]int{2 * n, 0}, v: [2]int{n, n},
		courseBy: [2]int{0, 1}, columnBy: [2]int{2 * n, n}, courses: true}
	for k := range n {
		out.tiles = append(out.tiles, gridTile{y: k, column: k})
	}
	for k := range n {
		out.tiles = append(out.tiles, gridTile{standing: true, x: n + k, column: n + k})
	}
	return out
}

// bond checks that the goods close and places the tiles.
func (r grid) bond(spec Spec, g Goods, found *diag.List) Bond {
	order := bySize(g.Sizes)
	sides := r.sides(g, order)
	if !sides.close(spec, g.Joint, found) {
		return Bond{}
	}
	at := sides.ruler(g.Joint)
	b := Bond{U: point(r.u, at), V: point(r.v, at), CourseBy: r.courseBy, ColumnBy: r.columnBy, Courses: r.courses}
	for _, t := range r.tiles {
		size := order[t.role]
		p := proto(g, size, lie(t.standing, g.Sizes[size]), at(t.x), at(t.y))
		p.Course, p.Column = t.course, t.column
		b.Protos = append(b.Protos, p)
	}
	return b
}

// lie returns the turn that makes a tile lie (or stand) whichever of its sides is called its length.
func lie(standing bool, s Size) geom.Turn {
	if standing != (s.Length < s.Width) {
		return 1
	}
	return 0
}

func point(modules [2]int, at func(int) unit.Length) geom.Point {
	return geom.Point{X: at(modules[0]), Y: at(modules[1])}
}

// bySize returns the indexes of the sizes, smallest area first; equal areas keep the document's order.
func bySize(sizes []Size) []int {
	order := make([]int, len(sizes))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(sizes[a].Length.Times(sizes[a].Width), sizes[b].Length.Times(sizes[b].Width))
	})
	return order
}

// sides lists every side of the goods with the modules that it must measure.
func (r grid) sides(g Goods, order []int) sides {
	var out sides
	for role, m := range r.roles {
		s := g.Sizes[order[role]]
		out = append(out, side{max(s.Length, s.Width), m[0]}, side{min(s.Length, s.Width), m[1]})
	}
	return out
}
