package geom

import (
	"errors"
	"fmt"
	"slices"

	"dryfit/internal/unit"
)

// FoldError says that an outline can not be moved so far: an edge would turn round, or two would cross. Edges are
// counted in the ring that was given.
type FoldError struct{ Edge, With int }

func (e *FoldError) Error() string {
	if e.Edge == e.With {
		return fmt.Sprintf("edge %d has no length left", e.Edge)
	}
	return fmt.Sprintf("edge %d runs into edge %d", e.Edge, e.With)
}

// OffsetRing moves every edge once by its own distance, positive to its left (inward for a counter-clockwise ring, into
// the region for a hole). Neighbors meet where their moved lines meet; neighbors in one line, or nearly so, that move
// by different amounts are joined by a jog across, which has the label of the edge that moved farther to the left. A
// corner is rounded half up once. A ring that folds, or has an edge of no length, gives a *FoldError.
func OffsetRing(r Ring, inset []unit.Length) (Ring, error) {
	n := len(r)
	if n == 0 {
		return nil, nil
	}
	if i := r.pointlike(); i >= 0 {
		return nil, &FoldError{i, i}
	}
	m := mover{out: make(Ring, 0, n), from: make([]int, 0, n)}
	for i := range r {
		m.corner(r, (i+n-1)%n, i, inset)
	}
	if slices.ContainsFunc(m.out, func(v Vertex) bool { return !within(v.P) }) {
		return nil, ErrReach
	}
	return m.out, m.folds(r)
}

// ErrReach says that an outline would move beyond unit.Reach.
var ErrReach = errors.New("outline moves out of reach")

// pointlike returns the first edge that has no length; -1 if all have.
func (r Ring) pointlike() int {
	for i, v := range r {
		if v.P == r.end(i) {
			return i
		}
	}
	return -1
}

// mover builds a moved ring; from holds for each new edge the old one, or -1 for a jog.
type mover struct {
	out  Ring
	from []int
}

// corner adds the moved corner between edge h and edge i, and with it the start of edge i.
func (m *mover) corner(r Ring, h, i int, inset []unit.Length) {
	v, u, w := r[i].P, r.end(h).Sub(r[h].P), r.end(i).Sub(r[i].P)
	if p, ok := miter(v, u, w, inset[h], inset[i]); ok {
		m.add(p, r[i].Edge, i)
		return
	}
	a, b := shifted(v, u, inset[h]), shifted(v, w, inset[i])
	if a != b {
		jog := r[i].Edge
		if inset[h] > inset[i] {
			jog = r[h].Edge
		}
		m.add(a, jog, -1)
	}
	m.add(b, r[i].Edge, i)
}

func (m *mover) add(p Point, l Label, from int) {
	m.out, m.from = append(m.out, Vertex{p, l}), append(m.from, from)
}

// folds finds an edge that has turned round, else two that cross.
func (m *mover) folds(r Ring) error {
	for k, v := range m.out {
		if i := m.from[k]; i >= 0 && dot(v.P, m.out.end(k), r[i].P, r.end(i)) <= 0 {
			return &FoldError{i, i}
		}
	}
	if ok, i, j := m.out.Simple(); !ok {
		return &FoldError{m.source(i), m.source(j)}
	}
	return nil
}

// source returns the old edge of a new one; for a jog the one that follows.
func (m *mover) source(k int) int {
	for m.from[k] < 0 {
		k = (k + 1) % len(m.from)
	}
	return m.from[k]
}

// OffsetEdges moves every edge of all rings by an amount that its label decides, positive into the region. Rings that
// run into each other give a *FoldError as well, with the edges counted through all rings.
func OffsetEdges(g Region, inset func(Label) unit.Length) (Region, error) {
	out, first := make(Region, len(g)), 0
	for i, r := range g {
		moved, err := OffsetRing(r, amounts(r, inset))
		if fold, ok := err.(*FoldError); ok {
			return nil, &FoldError{fold.Edge + first, fold.With + first}
		} else if err != nil {
			return nil, err
		}
		out[i], first = moved, first+len(r)
	}
	return out, out.ringsMeet()
}

func amounts(r Ring, inset func(Label) unit.Length) []unit.Length {
	out := make([]unit.Length, len(r))
	for k, v := range r {
		out[k] = inset(v.Edge)
	}
	return out
}

// ringsMeet returns a *FoldError for the first two rings that cross or touch along an edge.
func (g Region) ringsMeet() error {
	first := 0
	for i, r := range g {
		for k := range r {
			if j := g.metBy(i, r[k].P, r.end(k)); j >= 0 {
				return &FoldError{first + k, j}
			}
		}
		first += len(r)
	}
	return nil
}

// metBy returns the first edge, counted through all rings, of a ring after i that the segment a b meets; else -1.
func (g Region) metBy(i int, a, b Point) int {
	n := 0
	for j, r := range g {
		for k := range r {
			if j > i && segmentsMeet(a, b, r[k].P, r.end(k)) {
				return n + k
			}
		}
		n += len(r)
	}
	return -1
}
