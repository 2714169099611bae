package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// notes is what one layout measures, with the place that decides each measure.
type notes struct {
	costs  costs
	length [ranks]unit.Length
	where  [ranks]string
	set    [ranks]bool // there is something to measure
}

// assess measures one layout directly, at any origin, marked or not.
func (p *problem) assess(origin geom.Point) notes {
	if p.flip {
		origin = swap(origin)
	}
	n := notes{costs: blank()}
	courses := p.coursesAt(newBands(p.sides), origin.Y)
	legs := p.fullLegs()
	for _, c := range courses {
		for _, q := range c.band.passes {
			n.pass(p, 0, p.sides[q.side], q, origin.X+c.shift, 1, legs[0])
		}
		n.costs[cuts] += cutTiles(p.s, c.band, origin.X+c.shift)
	}
	for _, q := range p.crosses {
		s := p.turned[q.side]
		n.pass(p, 1, s, q, origin.Y, p.tilesAlong(s), legs[1])
	}
	n.openings(p, legs)
	n.lines(p, [2]unit.Length{origin.X, origin.Y})
	n.rims(p, origin)
	return n
}

// worse notes a cost that the worse of two decides.
func (n *notes) worse(m int, cost int64, l unit.Length, where string) {
	if !n.set[m] || cost > n.costs[m] || cost == n.costs[m] && l < n.length[m] && m != balance {
		n.costs[m], n.length[m], n.where[m], n.set[m] = cost, l, where, true
	}
}

// pass notes one judged edge within one course (or across the columns), tiles starting at start.
func (n *notes) pass(p *problem, k int, s side, q pass, start unit.Length, times int64, legs []unit.Length) {
	a, _ := p.axisOf(k)
	phase := a.mod(q.lo - start)
	if !s.upper() {
		phase = a.mod(start + a.size - q.hi)
	}
	w, cut := a.left(phase, q.hi-q.lo)
	if !cut {
		return
	}
	seen := max(0, min(w-s.about.Hidden, q.seen))
	n.worse(narrowest, a.narrowCost(seen), seen, s.about.Name)
	if seen < p.sliver {
		n.sliver(int64(s.about.Weight)*times, s.about.Name)
	}
	if s.about.Opening {
		j := p.jambOf[s.label]
		legs[j] = min(legs[j], w, q.gap)
	}
}

// sliver notes some; the first edge with any is named.
func (n *notes) sliver(weighted int64, where string) {
	if n.costs[slivers] == 0 && weighted > 0 {
		n.where[slivers] = where
	}
	n.costs[slivers] += weighted
}

// fullLegs starts the legs beside openings at whole tiles, along and across.
func (p *problem) fullLegs() [2][]unit.Length {
	return [2][]unit.Length{filled(p.jambs, p.s.size), filled(p.jambs, p.t.size)}
}

// openings adds up what is cut off the tiles beside openings and names the side where it is most.
func (n *notes) openings(p *problem, legs [2][]unit.Length) {
	most := unit.Length(-1)
	n.set[openings] = p.jambs > 0
	for _, s := range p.sides {
		j, is := p.jambOf[s.label]
		if !is || !s.about.Opening {
			continue
		}
		if off := p.s.size - legs[0][j] + p.t.size - legs[1][j]; off > most && off > 0 {
			most, n.where[openings] = off, s.about.Name
		}
	}
	for k, a := range [2]axis{p.s, p.t} {
		for _, leg := range legs[k] {
			n.costs[openings] += a.marks(a.size - leg)
			n.length[openings] += a.size - leg
		}
	}
}

// lines notes balance and sight lines.
func (n *notes) lines(p *problem, origin [2]unit.Length) {
	for k := range origin {
		if a, _ := p.axisOf(k); p.center[k].Given {
			twice := p.offBalance(k, origin[k])
			n.worse(balance, int64(twice/(2*judge.EvenWithin*a.mark)), twice/2, "")
			n.worse(evenness, int64(twice/(2*a.mark)), twice/2, "")
		}
	}
	k, most := p.sightAxis(), unit.Length(0)
	a, shifts := p.axisOf(k)
	for _, s := range p.sights {
		off := p.offSight(a, s.Y, origin[k], shifts)
		if off > most {
			most, n.where[sightLines] = off, s.Name
		}
		n.costs[sightLines] += a.marks(off)
		n.length[sightLines] += off
	}
	n.set[sightLines] = len(p.sights) > 0
}

// rims notes how far holes are from joints.
func (n *notes) rims(p *problem, origin geom.Point) {
	for _, h := range p.holes {
		start := origin.X + p.shift(p.holeCourse(h, origin.Y))
		x, y := p.s.clear(h.s, h.radius, start), p.t.clear(h.t, h.radius, origin.Y)
		n.worse(holes, p.holeCost(p.s, min(x, y)), min(x, y), h.name)
	}
}

// cutTiles counts the cut tiles of one course one by one.
func cutTiles(a axis, b *band, start unit.Length) (n int64) {
	if len(b.any) == 0 {
		return 0
	}
	first := floorDiv(int(b.any[0].lo-start), int(a.pitch))
	for c := first; ; c++ {
		lo := start + unit.Length(c)*a.pitch + a.ease
		hi := lo + a.size - 2*a.ease
		if lo >= b.any[len(b.any)-1].hi {
			return n
		}
		if meets(b.any, lo, hi) && !within(b.full, lo, hi) {
			n++
		}
	}
}

func meets(spans []span, lo, hi unit.Length) bool {
	for _, s := range spans {
		if s.lo < hi && lo < s.hi {
			return true
		}
	}
	return false
}

func within(spans []span, lo, hi unit.Length) bool {
	for _, s := range spans {
		if s.lo <= lo && hi <= s.hi {
			return true
		}
	}
	return false
}

// measure turns the notes into judged numbers.
func (n *notes) measure(m int) judge.Measure {
	out := judge.Measure{Name: coveredNames[m], Cost: n.costs[m], Exact: true, Where: n.where[m]}
	switch m {
	case slivers, cuts:
		out.IsCount, out.Count = true, int(n.costs[m])
	default:
		out.Length, out.None = n.length[m], !n.set[m]
	}
	return out
}
