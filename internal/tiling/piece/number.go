package piece

import (
	"strconv"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/lay"
)

// Numbers turns lattice addresses into a setter's: courses from 1 at the bottom, columns from 1 at the left end of each
// course. They follow from the bond, the origin and the field's bounds alone, so that an opening that comes or goes
// within the field leaves every number where it was.
type Numbers struct {
	course int
	column map[int]int
}

// Number counts the courses and columns over a field's bounds in the pattern frame. What reaches into them by less than a
// piece is wide (lay.LeastWidth) has no number.
func Number(b bond.Bond, bounds geom.Rect, origin geom.Point) Numbers {
	in := geom.Point{X: lay.LeastWidth, Y: lay.LeastWidth}
	n := Numbers{column: map[int]int{}}
	first := true
	b.Each(geom.Rect{Min: bounds.Min.Add(in), Max: bounds.Max.Sub(in)}, origin, func(c bond.Cell) {
		if first || c.Course < n.course {
			n.course, first = c.Course, false
		}
		if least, ok := n.column[c.Course]; !ok || c.Column < least {
			n.column[c.Course] = c.Column
		}
	})
	return n
}

// Of returns the course and the column of a piece, from 1.
func (n Numbers) Of(p lay.Piece) (course, column int) {
	return p.Course - n.course + 1, p.Column - n.column[p.Course] + 1
}

// address words a piece's place: "3-5", and "3-5b", "3-5c" for further parts of one tile.
func address(mark string, course, column, part int) string {
	s := mark + strconv.Itoa(course) + "-" + strconv.Itoa(column)
	if part > 0 {
		s += letter(part)
	}
	return s
}

// letter returns a, b … z, aa, ab …
func letter(part int) string {
	if part >= 26 {
		return letter(part/26-1) + letter(part%26)
	}
	return string(rune('a' + part))
}
