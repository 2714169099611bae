package pair

import (
	"cmp"
	"slices"
)

// quarters lists the turns of a set as numbers of quarter turns.
func (t Turn) quarters() []int {
	if t == 0 {
		return []int{0}
	}
	var qs []int
	for q := range 4 {
		if t&(1<<q) != 0 {
			qs = append(qs, q)
		}
	}
	return qs
}

// turned carries a set of sides through q quarter turns.
func (s Side) turned(q int) Side {
	return (s<<q | s>>(4-q)) & allSides
}

// has tells whether every side of o is in s.
func (s Side) has(o Side) bool { return s&o == o }

// pose is a piece in one of its turns.
type pose struct {
	turn Turn
	w, h int64
	keep Side
	hull []Pt // counterclockwise from its first point, in the frame of the turned rectangle
}

// posed turns a piece by q quarters. hull is its convex hull as laid.
func posed(pc Piece, hull []Pt, q int) pose {
	w, h := pc.W, pc.H
	pts := slices.Clone(hull)
	for range q {
		for i, p := range pts {
			pts[i] = Pt{h - p.Y, p.X}
		}
		w, h = h, w
	}
	return pose{1 << q, w, h, pc.Keep.turned(q), fromFirst(pts)}
}

// fits tells whether the pose can lie in a w x h blank with its kept sides on
// the blank's.
func (p pose) fits(w, h int64) bool {
	return p.w <= w && p.h <= h &&
		(p.w == w || !p.keep.has(Left|Right)) &&
		(p.h == h || !p.keep.has(Bottom|Top))
}

// compare orders poses by what they ask of a blank; the turn is not part of it.
func (p pose) compare(o pose) int {
	return cmp.Or(cmp.Compare(p.w, o.w), cmp.Compare(p.h, o.h), cmp.Compare(p.keep, o.keep),
		slices.CompareFunc(p.hull, o.hull, Pt.compare))
}

func (p pose) same(o pose) bool { return p.compare(o) == 0 }

// compare orders points from left to right, then upward.
func (p Pt) compare(o Pt) int {
	return cmp.Or(cmp.Compare(p.X, o.X), cmp.Compare(p.Y, o.Y))
}

// fromFirst lets a ring begin at its first point in order.
func fromFirst(ring []Pt) []Pt {
	first := 0
	for i, p := range ring {
		if p.compare(ring[first]) < 0 {
			first = i
		}
	}
	return slices.Concat(ring[first:], ring[:first])
}
