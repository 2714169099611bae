package pair

import (
	"cmp"
	"slices"
)

// kind is a group of pieces that are equal in all that matters here.
type kind struct {
	poses   []pose // without those that no blank can hold; different from each other
	shaped  bool
	area    int64 // twice the area of the hull
	grown   int64 // area of the rectangle grown by the kerf on two sides
	corners int   // corners of the blank that a piece uses up, at least
	pinned  bool  // in every pose the place in the blank is settled
	spots   []spot
	pieces  []member
}

// member is a piece of a kind: pieces of one kind may be laid differently, so
// that one turn of one is another turn of another.
type member struct {
	index int
	turns []Turn // by pose
}

// group sorts the pieces of a problem into kinds by falling area, and lists those
// that no blank can give.
func group(p Problem) (kinds []kind, unfit []int) {
	for i, pc := range p.Pieces {
		if k, ok := newKind(p, i, pc); ok {
			kinds = addKind(kinds, k)
		} else {
			unfit = append(unfit, i)
		}
	}
	slices.SortStableFunc(kinds, func(a, b kind) int { return cmp.Compare(b.area, a.area) })
	return kinds, unfit
}

// addKind puts the piece of k into the kind equal to k, or opens one.
func addKind(kinds []kind, k kind) []kind {
	for j := range kinds {
		if kinds[j].same(k) {
			kinds[j].pieces = append(kinds[j].pieces, k.pieces...)
			return kinds
		}
	}
	return append(kinds, k)
}

func (k kind) same(o kind) bool {
	return k.area == o.area && k.shaped == o.shaped &&
		slices.EqualFunc(k.poses, o.poses, pose.same)
}

// newKind works out what piece i asks of a blank; false where none can give it.
func newKind(p Problem, i int, pc Piece) (kind, bool) {
	hull, ok := outline(pc)
	if !ok {
		return kind{}, false
	}
	k := kind{shaped: pc.Shape != nil, area: twiceArea(hull), pinned: true, corners: 4}
	for _, q := range pc.Turns.quarters() {
		ps := posed(pc, hull, q)
		if ps.fits(p.W, p.H) && !slices.ContainsFunc(k.poses, ps.same) {
			k.poses = append(k.poses, ps)
		}
	}
	slices.SortFunc(k.poses, pose.compare)
	m := member{index: i}
	for j, ps := range k.poses {
		k.note(p, j, ps)
		m.turns = append(m.turns, ps.turn)
	}
	k.pieces = []member{m}
	k.grown = (pc.W + p.Kerf) * (pc.H + p.Kerf)
	return k, len(k.poses) > 0
}

// note adds the spots of a pose, and what they say of corners and freedom.
func (k *kind) note(p Problem, index int, ps pose) {
	spots := ps.spots(index, p.W, p.H)
	k.spots = append(k.spots, spots...)
	k.pinned = k.pinned && len(spots) == 1
	used := 0
	if len(spots) == 1 {
		used = spots[0].corners(p.W, p.H)
	}
	k.corners = min(k.corners, used)
}

// outline is the convex hull of a piece; false for one without area or with a
// shape that leaves its rectangle.
func outline(pc Piece) ([]Pt, bool) {
	if pc.W <= 0 || pc.H <= 0 || pc.W > maxSize || pc.H > maxSize {
		return nil, false
	}
	if pc.Shape == nil {
		return box(pc.W, pc.H), true
	}
	for _, v := range pc.Shape {
		if v.X < 0 || v.Y < 0 || v.X > pc.W || v.Y > pc.H {
			return nil, false
		}
	}
	hull := convex(pc.Shape)
	return hull, hull != nil
}

// spot is a pose pushed to the ends of its travel in the blank.
type spot struct {
	pose int
	x, y int64
	ring []Pt
}

// spots lists the ends of travel of a pose: one where its place is settled.
func (ps pose) spots(index int, w, h int64) []spot {
	var out []spot
	for _, x := range ends(ps.keep&Left != 0, ps.keep&Right != 0, w-ps.w) {
		for _, y := range ends(ps.keep&Bottom != 0, ps.keep&Top != 0, h-ps.h) {
			ring := make([]Pt, len(ps.hull))
			for i, v := range ps.hull {
				ring[i] = Pt{v.X + x, v.Y + y}
			}
			out = append(out, spot{index, x, y, ring})
		}
	}
	return out
}

// ends are the extreme places along one axis with the given room to slide.
func ends(low, high bool, room int64) []int64 {
	switch {
	case room == 0 || low:
		return []int64{0}
	case high:
		return []int64{room}
	}
	return []int64{0, room}
}

// corners counts the corners of the blank that the spot fills: a sharper angle
// of a piece leaves the corner to be shared.
func (s spot) corners(w, h int64) int {
	n := 0
	for _, c := range box(w, h) {
		i := slices.Index(s.ring, c)
		if i < 0 {
			continue
		}
		before, after := s.ring[(i+len(s.ring)-1)%len(s.ring)], s.ring[(i+1)%len(s.ring)]
		if (before.X == c.X || before.Y == c.Y) && (after.X == c.X || after.Y == c.Y) {
			n++
		}
	}
	return n
}
