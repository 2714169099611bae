package search

import (
	"slices"
	"sync"

	"dryfit/internal/geom"
)

// found is one offset worth offering.
type found struct {
	origin geom.Point
	costs  costs
}

// sweep judges every markable offset of an axis bond and returns the winners: of the person's order first, then of
// each covered measure put first (in the order of importance), then of each part of the offsets. Parts of the rows are
// independent and are judged side by side; they are joined from the lowest up, so that the result is the same however
// many run at once.
func (p *problem) sweep(order []int) (winners []found, evaluated int) {
	across := p.across()
	var fields [regions]heat
	var all sync.WaitGroup
	for k := range fields {
		all.Go(func() {
			fields[k] = p.heat(order, across, k*p.t.steps/regions, (k+1)*p.t.steps/regions)
		})
	}
	all.Wait()
	whole := fields[0].whole
	var local []*race
	for k, f := range fields {
		for i, r := range f.whole {
			if k > 0 {
				whole[i].meet(r)
			}
		}
		local = append(local, f.parts...)
	}
	for _, r := range append(whole, local...) {
		if r.run {
			winners = append(winners, found{p.origin(r.row, r.col), r.best})
		}
	}
	return winners, p.s.steps * p.t.steps
}

// heat is the races over some rows.
type heat struct{ whole, parts []*race }

func (p *problem) heat(order []int, across *columns, from, to int) heat {
	h := heat{races(order, p.s.steps), parts(order, p.s.steps)}
	along, all := newRows(p), append(slices.Clone(h.whole), h.parts...)
	for j := from; j < to; j++ {
		cols, least := along.at(p.t.at(j))
		here := across.row(j)
		for _, r := range all {
			r.offer(j, cols, least, here)
		}
	}
	return h
}

// origin is the place of tile 0,0 at a step along and a step across, in the pattern frame.
func (p *problem) origin(row, col int) geom.Point {
	o := geom.Point{X: p.s.at(col), Y: p.t.at(row)}
	if p.flip {
		return swap(o)
	}
	return o
}
