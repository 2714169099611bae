package export_test

import (
	"math"
	"strings"
)

// survey: the outline's area is that of the corners; each reading that was used is its corners' distance but for its correction; and
// the corrections pull at every point in balance, which is what makes the sum of their squares the least.
func (r *rechecker) survey() {
	s := r.plan.Survey
	at := map[string]pt{}
	outline := readShape{nil}
	for _, c := range s.Corners {
		at[c.Name] = pt{c.Stud.X.mm(), c.Stud.Y.mm()}
		outline[0] = append(outline[0], readVertex{X: c.Stud.X, Y: c.Stud.Y})
	}
	for _, p := range s.Points {
		at[p.Name] = pt{p.P.X.mm(), p.P.Y.mm()}
	}
	if a := area2(outline); (max(a, -a)+1)/2 != int64(s.Area) {
		r.complain("survey: area is %d/2 squares, said to be %d", a, s.Area)
	}
	pull := map[string]pt{}
	for _, m := range s.Readings {
		from, to, _ := strings.Cut(m.Name, "-")
		a, b := at[from], at[to]
		if m.Use != "used" {
			continue
		}
		l := dist(a, b)
		if off := m.Reduced.mm() + m.Correction.mm() - l; math.Abs(off) > 3*grid {
			r.complain("reading %s: with its correction it is off its corners by %.5f mm", m.Name, off)
		}
		f := m.Correction.mm() / l
		pull[from] = pt{pull[from].x + f*(b.x-a.x), pull[from].y + f*(b.y-a.y)}
		pull[to] = pt{pull[to].x - f*(b.x-a.x), pull[to].y - f*(b.y-a.y)}
	}
	for name, p := range pull {
		if math.Hypot(p.x, p.y) > 0.001 {
			r.complain("corrections do not balance at %s: %.4f, %.4f", name, p.x, p.y)
		}
	}
}

// face: where tile may be lies behind each edge of the board by the gap of that edge; every label is listed; each soft edge has its
// movement joint.
func (r *rechecker) face(f readFace) {
	for _, s := range []readShape{f.Board, f.Cut} {
		for _, ring := range s {
			for _, v := range ring {
				if v.Edge < 1 || v.Edge > len(f.Edges) || f.Edges[v.Edge-1].Label != v.Edge {
					r.complain("%s: label %d is not among its edges", f.Name, v.Edge)
					return
				}
			}
		}
	}
	for _, e := range f.Edges {
		r.gapOf(f, e)
	}
	r.floorOf(f)
	for _, o := range f.Openings {
		r.opening(f, o)
	}
}

// gapOf holds the cut outline's sides with a label against the board's.
func (r *rechecker) gapOf(f readFace, e readEdge) {
	board, cut := sidesOf(f.Board, e.Label), sidesOf(f.Cut, e.Label)
	for _, c := range cut {
		best := math.Inf(1)
		for _, b := range board {
			l := dist(b[0], b[1])
			off := max(math.Abs(cross(b[0], b[1], c[0])/l-e.Gap.mm()), math.Abs(cross(b[0], b[1], c[1])/l-e.Gap.mm()))
			best = min(best, off)
		}
		if len(board) > 0 && best > 0.001 {
			r.complain("%s, %s: the cut outline is off its gap by %.4f mm", f.Name, e.Name, best)
		}
	}
}

// sidesOf lists the sides of an outline that bear a label.
func sidesOf(s readShape, label int) [][2]pt {
	var out [][2]pt
	for i, ring := range shapeOf(s) {
		for j, p := range ring {
			if s[i][j].Edge == label {
				out = append(out, [2]pt{p, ring[(j+1)%len(ring)]})
			}
		}
	}
	return out
}

// ledger: the first course reaches from the region's edge along the floor to the ledger's line, with a whole tile where one is enough.
func (r *rechecker) ledger(w readWork) {
	if w.Ledger == nil {
		return
	}
	for _, f := range w.Fields {
		if low, high, joint, ok := alongFloor(w, f); ok {
			r.ledgerAt(w, low, high, joint)
			return
		}
	}
	r.complain("%s: a ledger, and no field on the floor", w.Face)
}

// alongFloor is the lowest and the highest point of a field along the floor, and the joint there.
func alongFloor(w readWork, f readField) (low, high float64, joint num, ok bool) {
	for _, e := range w.Edges {
		if e.Kind != "floor" {
			continue
		}
		for _, s := range sidesOf(f.Region, e.Label) {
			if !ok {
				low, high, ok = s[0].y, s[0].y, true
			}
			low, high, joint = min(low, s[0].y, s[1].y), max(high, s[0].y, s[1].y), e.Joint
		}
	}
	return low, high, joint, ok
}

func (r *rechecker) ledgerAt(w readWork, low, high float64, joint num) {
	l := *w.Ledger
	short := l.JointMost.mm() - l.Joint.mm() // where the whole tile does not reach down to the joint
	cutLow := l.Y.mm() - high
	if short > 0 {
		cutLow = min(cutLow, l.CutHigh.mm())
	}
	for _, c := range []struct {
		what string
		off  float64
	}{
		{"height where the floor is low", l.Y.mm() - low - l.CutHigh.mm() - short},
		{"height where it is high", cutLow - l.CutLow.mm()},
		{"line above the floor", l.Y.mm() - low + l.Joint.mm() - l.AboveFloor.mm()},
		{"joint", l.Joint.mm() - joint.mm()},
	} {
		if math.Abs(c.off) > grid/2 || short < 0 {
			r.complain("%s: ledger, %s: off by %v mm", w.Face, c.what, c.off)
		}
	}
}

// movement: each soft side of a field has its joint, from end to end, and there is no other.
func (r *rechecker) movement(w readWork) {
	found := map[[4]num]string{}
	for _, m := range w.Movement {
		found[[4]num{m.From.X, m.From.Y, m.To.X, m.To.Y}] = m.Where
	}
	sides := 0
	for _, f := range w.Fields {
		for _, ring := range f.Region {
			for i, v := range ring {
				if v.Edge < 1 || v.Edge > len(w.Edges) || !w.Edges[v.Edge-1].Soft {
					continue
				}
				sides++
				q, e := ring[(i+1)%len(ring)], w.Edges[v.Edge-1]
				if found[[4]num{v.X, v.Y, q.X, q.Y}] != e.Name {
					r.complain("%s: no movement joint along %s", w.Face, e.Name)
				}
			}
		}
	}
	if sides != len(w.Movement) {
		r.complain("%s: %d movement joints along %d soft sides", w.Face, len(w.Movement), sides)
	}
}
