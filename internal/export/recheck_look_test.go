package export_test

import (
	"math"
	"strings"
)

// run: a cut that stops within the tile begins and ends where its outline turns, or where another cut lies as sawn.
func (r *rechecker) run(s *setPiece, c readStep) {
	if c.Along == nil {
		return
	}
	_, hi := shape{s.place}.bounds()
	along := func(p pt) float64 { return p.y }
	ends := map[string]bool{"left": true, "right": true}
	if !ends[c.Keep] && !strings.HasPrefix(c.Keep, "cut: ") {
		along = func(p pt) float64 { return p.x }
	}
	places := []float64{}
	for _, ring := range s.lying {
		for _, p := range ring {
			places = append(places, along(p))
			if strings.HasPrefix(c.Keep, "cut: ") {
				places = append(places, p.x, p.y)
			}
		}
	}
	for _, o := range s.Cut.Steps {
		for _, at := range []num{o.SawFrom, o.SawTo} {
			places = append(places, at.mm(), hi.x-at.mm(), hi.y-at.mm())
		}
	}
	for _, end := range []float64{c.Along.From.mm(), c.Along.To.mm()} {
		if nearest(places, end) > grid/2 || end < -grid {
			r.complain("%s: a cut that begins or ends at %v mm, where nothing is", s.ID, end)
		}
	}
}

func nearest(places []float64, x float64) float64 {
	best := math.Inf(1)
	for _, p := range places {
		best = min(best, math.Abs(p-x))
	}
	return best
}

// looks: what is seen of a piece is no more than the wider end of the narrowest cut, and no less than that without what the face's edges hide; a
// taper shows where the ends differ by more than a tenth of the lesser; a neck is no wider than the piece.
func (r *rechecker) looks(s *setPiece, w readWork) {
	least, most, hidden := num(math.MaxInt64), num(math.MaxInt64), num(0)
	for _, c := range s.Cut.Steps {
		least, most = min(least, c.From, c.To), min(most, max(c.From, c.To))
		for _, e := range w.Edges {
			if strings.Contains(c.Meets, e.Name) || strings.Contains(c.Keep, e.Name) || s.slid {
				hidden = max(hidden, e.Hidden)
			}
		}
	}
	if v := s.Cut.Visible; v > most && !s.slid || v < 0 || v < least-2*hidden-num(thin*mm) {
		r.complain("%s: shows %v mm of %v to %v, of which at most %v are hidden at a side", s.ID, v.mm(), least.mm(), most.mm(), hidden.mm())
	}
	if k := s.Cut.Kind; k == "straight" || k == "taper" {
		c := s.Cut.Steps[0]
		shows := c.SawFrom != c.SawTo && 10*max(c.From-c.To, c.To-c.From) > min(c.From, c.To)
		if shows != s.Cut.TaperShows {
			r.complain("%s: from %v to %v mm, the taper shows: %v", s.ID, c.From.mm(), c.To.mm(), s.Cut.TaperShows)
		}
	}
	if n := s.Cut.Neck; n != nil {
		r.neck(s, n.mm())
	}
}

// neck: no inward corner is nearer to a side than that.
func (r *rechecker) neck(s *setPiece, neck float64) {
	best := math.Inf(1)
	for _, ring := range s.inTile {
		n := len(ring)
		for i, p := range ring {
			if cross(ring[(i+n-1)%n], p, ring[(i+1)%n]) < 0 {
				best = min(best, s.across(ring, i))
			}
		}
	}
	if neck > best+2*grid {
		r.complain("%s: the neck is %v mm, and an inward corner is %.4f from a side", s.ID, neck, best)
	}
	lo, hi := s.inTile.bounds()
	if neck <= 0 || neck > max(hi.x-lo.x, hi.y-lo.y) {
		r.complain("%s: a neck of %v mm", s.ID, neck)
	}
}

// across is the distance from an inward corner to the nearest side that faces it squarely, through the piece. Its own sides and those next to
// them do not count.
func (s *setPiece) across(ring []pt, i int) float64 {
	best, n := math.Inf(1), len(ring)
	p := ring[i]
	own := map[pt]bool{p: true, ring[(i+n-1)%n]: true, ring[(i+1)%n]: true}
	for _, other := range s.inTile {
		for j, a := range other {
			b := other[(j+1)%len(other)]
			l := dist(a, b)
			if t := ((p.x-a.x)*(b.x-a.x) + (p.y-a.y)*(b.y-a.y)) / l / l; own[a] || own[b] || t < 0 || t > 1 {
				continue
			}
			d, n := cross(a, b, p)/l, outward(a, b)
			if mid := (pt{p.x + n.x*d/2, p.y + n.y*d/2}); d > 0 && s.inTile.holds(mid) {
				best = min(best, d)
			}
		}
	}
	return best
}

// measures: what can be counted of the layout that is laid is what its measures say.
func (r *rechecker) measures(face readFace, f readField, pieces []*setPiece) {
	if len(f.Layouts) == 0 {
		return
	}
	l := f.Layouts[0]
	neck := num(math.MaxInt64)
	for _, p := range f.Pieces {
		if p.Cut != nil && p.Cut.Neck != nil {
			neck = min(neck, *p.Cut.Neck)
		}
	}
	least, most := cutTiles(pieces, boxes(face))
	for _, m := range l.Measures {
		switch {
		case m.None != (m.Length == nil && m.Count == nil):
			r.complain("%s, %s: %s is there and is not", face.Name, f.Name, m.Name)
		case m.None:
		case m.Name == "tiles to buy" && *m.Count != l.Whole+l.Tiles:
			r.complain("%s, %s: tiles to buy are %d, said to be %d", face.Name, f.Name, l.Whole+l.Tiles, *m.Count)
		case m.Name == "narrowest neck" && *m.Length != neck:
			r.complain("%s, %s: the narrowest neck is %v, said to be %v", face.Name, f.Name, neck.mm(), m.Length.mm())
		case m.Name == "number of cuts" && (*m.Count < least || *m.Count > most+lost):
			r.complain("%s, %s: %d to %d tiles are cut, said to be %d", face.Name, f.Name, least, most, *m.Count)
		}
	}
}

// lost is how many tiles may be counted as cut and have no piece, since all that is left of them is too thin to be one.
const lost = 2

// boxes are the labels of edges of boxes: what is cut out for one counts no more than a hole.
func boxes(f readFace) map[int]bool {
	out := map[int]bool{}
	for _, o := range f.Openings {
		for _, e := range f.Edges {
			if o.Kind == "box" && strings.HasPrefix(e.Name, o.Name+",") {
				out[e.Label] = true
			}
		}
	}
	return out
}

// cutTiles counts the tiles that more than a thin trim is taken off, for other than a box, and all that are not whole.
func cutTiles(pieces []*setPiece, box map[int]bool) (least, most int) {
	kept, around, full, other := map[[2]int]float64{}, map[[2]int]float64{}, map[[2]int]float64{}, map[[2]int]bool{}
	for _, p := range pieces {
		if p.Whole {
			continue
		}
		key := [2]int{p.Course, p.Column}
		kept[key] += p.inTile.area()
		around[key], full[key] = shape{p.blank}.around(), area(p.blank)
		for _, e := range p.Sides {
			other[key] = other[key] || e.Label > 0 && !box[e.Label]
		}
	}
	for key, a := range kept {
		if other[key] && full[key]-a > thin*around[key] {
			least++
		}
	}
	return least, len(kept)
}

// origin: of a stack or a running bond lying square, every tile stands whole courses from the origin, and of a stack whole columns.
func (r *rechecker) origin(f readField, pieces []*setPiece) {
	running := strings.HasPrefix(f.Bond, "running")
	if f.Angle != 0 || len(f.Layouts) == 0 || f.Bond != "stack" && !running {
		return
	}
	for _, p := range pieces {
		if p.slid {
			continue
		}
		lo, hi := shape{p.tile}.bounds()
		x := (lo.x - f.Layouts[0].Origin.X.mm()) / (hi.x - lo.x + f.Joint.mm())
		y := (lo.y - f.Layouts[0].Origin.Y.mm()) / (hi.y - lo.y + f.Joint.mm())
		if off := math.Abs(y - math.Round(y)); off > 1e-4 || !running && math.Abs(x-math.Round(x)) > 1e-4 {
			r.complain("%s: does not stand whole tiles from the origin", p.ID)
			return
		}
	}
}
