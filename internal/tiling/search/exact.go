package search

import (
	"dryfit/internal/geom"
)

// found is one offset worth offering.
type found struct {
	origin geom.Point
	costs  costs
}

// sweep judges every markable offset of an axis bond and returns the winners: of the person's order first, then of
// each covered measure put first (in the order of importance), then of each part of the offsets.
func (p *problem) sweep(order []int) (winners []found, evaluated int) {
	across, along := p.across(), newRows(p)
	whole := races(order, p.s.steps)
	var local []*race
	sets := make([][]*race, regions)
	for i := range sets {
		sets[i] = parts(order, p.s.steps)
		local = append(local, sets[i]...)
	}
	for j := range p.t.steps {
		here, cols, least := across.row(j), (*columns)(nil), (*costs)(nil)
		cols, least = along.at(p.t.at(j))
		for _, r := range whole {
			r.offer(j, cols, least, here)
		}
		for _, r := range sets[j*regions/p.t.steps] {
			r.offer(j, cols, least, here)
		}
	}
	for _, r := range append(whole, local...) {
		if r.run {
			winners = append(winners, found{p.origin(r.row, r.col), r.best})
		}
	}
	return winners, p.s.steps * p.t.steps
}

// origin is the place of tile 0,0 at a step along and a step across, in the pattern frame.
func (p *problem) origin(row, col int) geom.Point {
	o := geom.Point{X: p.s.at(col), Y: p.t.at(row)}
	if p.flip {
		return swap(o)
	}
	return o
}
