package bond

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// row is one bond of the table: how many factory sizes it takes and how its cell is made.
type row struct {
	sizes int
	hex   bool
	build func(Spec, Goods, *diag.List) Bond
}

// table holds every bond. A new one is a row.
func table() map[Kind]row {
	return map[Kind]row{
		Stack:             {sizes: 1, build: axisBond},
		Running:           {sizes: 1, build: axisBond},
		Herringbone:       {sizes: 1, build: herringbone(1)},
		DoubleHerringbone: {sizes: 1, build: herringbone(2)},
		Basketweave:       {sizes: 1, build: basketweave},
		Hexagon:           {sizes: 1, hex: true, build: hexagon},
		Pinwheel:          {sizes: 2, build: pinwheel},
		ModularThree:      {sizes: 3, build: modularThree.bond},
		ModularFour:       {sizes: 4, build: modularFour.bond},
	}
}

// Make returns the bond for the goods' real sizes. If it can not be laid, the findings hold a stop and the Bond has
// no protos. Findings bear no place: the caller knows where the bond is asked for.
func Make(spec Spec, goods Goods) (Bond, diag.List) {
	var found diag.List
	r, ok := table()[spec.Kind]
	switch {
	case !ok:
		found.Add(diag.Stop, "bond-unknown", diag.Place{}, "no bond is called {0}", "", diag.T(string(spec.Kind)))
	case !r.suits(spec, goods, &found):
	default:
		return finish(r.build(spec, goods, &found), spec, goods), found
	}
	return Bond{}, found
}

// suits checks what every bond asks of its goods.
func (r row) suits(spec Spec, goods Goods, found *diag.List) bool {
	name := diag.T(spec.String())
	switch {
	case len(goods.Sizes) != r.sizes:
		found.Add(diag.Stop, "bond-sizes", diag.Place{}, "{0} is laid of {1} sizes of tile, and the tile has {2}",
			"choose a bond for {2} sizes, or give the tile's sizes as a set", name, diag.N(r.sizes), diag.N(len(goods.Sizes)))
	case goods.Hex != r.hex:
		found.Add(diag.Stop, "bond-shape", diag.Place{}, "{0} does not go with this shape of tile",
			"hexagons are laid in the bond hexagon, rectangles in any other", name)
	case !sound(goods):
		found.Add(diag.Stop, "bond-size-absurd", diag.Place{}, "a tile for {0} needs a length and a width from {1} to {2}, and a joint of zero or more",
			"correct the tile's sizes or the joint", name, diag.L(leastModule), diag.L(longest))
	case spec.Kind == Running && spec.Den < 0:
		found.Add(diag.Stop, "bond-offset", diag.Place{}, "the offset {0} is no share of a tile", "write a fraction such as 1/3, or a length", name)
	}
	return !found.Stops()
}

// longest bounds a tile's side so that a cell of any bond stays well within unit.Reach; 4 m is longer than any tile or
// panel sold.
const longest = 4 * unit.Metre

// leastModule is the shortest side laid: 5 mm, less than any tile or liner sold, keeps the number of tiles in a room within
// reason.
const leastModule = 5 * unit.Millimetre

func sound(g Goods) bool {
	ok := g.Joint >= 0 && g.Joint <= longest
	for _, s := range g.Sizes {
		ok = ok && s.Length >= leastModule && s.Width >= leastModule && s.Length <= longest && s.Width <= longest
	}
	return ok
}

// finish adds what all bonds share.
func finish(b Bond, spec Spec, goods Goods) Bond {
	if len(b.Protos) == 0 {
		return Bond{}
	}
	b.Name, b.Joint, b.Chips = spec.String(), goods.Joint, goods.Chips
	if spec.Diagonal {
		b.Angle = 45 * unit.Degree
	}
	if goods.Upright && !b.Axis {
		b.quarter()
	}
	return b
}

// quarter turns the whole pattern by a quarter, so that what ran across runs up. What was a column is now a course, and
// columns run on from the left.
func (b *Bond) quarter() {
	b.U, b.V = geom.Turn(1).Point(b.U), geom.Turn(1).Point(b.V)
	b.CourseBy, b.ColumnBy = b.ColumnBy, [2]int{-b.CourseBy[0], -b.CourseBy[1]}
	b.Courses = false
	for i, p := range b.Protos {
		lower := geom.Turn(1).Rect(geom.Rect{Min: p.At, Max: p.At.Add(geom.Point{X: p.W, Y: p.H})}).Min
		p.At, p.W, p.H, p.Turn = lower, p.H, p.W, (p.Turn+1)&3
		p.Course, p.Column = p.Column, -p.Course
		if p.Ring != nil {
			turned := geom.Region{geom.Turn(1).Ring(p.Ring)}
			p.Ring = turned.Move(geom.Point{X: p.W})[0]
		}
		b.Protos[i] = p
	}
}

// proto returns a tile of the given size lying turned by t with its lower left corner at (x, y).
func proto(g Goods, size int, t geom.Turn, x, y unit.Length) Proto {
	w, h := g.Sizes[size].Length, g.Sizes[size].Width
	if t&1 == 1 {
		w, h = h, w
	}
	return Proto{Size: size, Turn: t, At: geom.Point{X: x, Y: y}, W: w, H: h}
}
