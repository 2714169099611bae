package search

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Shift tells, for each opening that may still be moved, how far to move it so that its edges fall on joints of the
// layout at origin: least is cut off the tiles beside it, then most sides fall on joints, then the move is the
// shortest. An opening is moved only in a direction in which there is tile on both its sides. Those for which no move
// is better by what is worth telling are left out, and so is everything where the joints are not straight both ways.
func Shift(in Input, origin geom.Point) []Move {
	in.settle()
	if !in.straight() || len(in.Region) == 0 || len(in.Bond.Protos) == 0 {
		return nil
	}
	p := newProblem(&in)
	if p.flip {
		origin = swap(origin)
	}
	var out []Move
	for _, o := range in.Openings {
		m := mover{p: p, origin: origin, rect: o.Rect, limit: o.Moves.Floor(in.Mark), tiled: tiledRound(in.Region, o.Rect)}
		if p.flip {
			m.rect, m.tiled = geom.Rect{Min: swap(o.Rect.Min), Max: swap(o.Rect.Max)}, [2]bool{m.tiled[1], m.tiled[0]}
		}
		if move, better := m.best(o.Name); better {
			out = append(out, move)
		}
	}
	return out
}

// tiledRound tells whether there is tile at the left and right, and below and above.
func tiledRound(g geom.Region, r geom.Rect) [2]bool {
	x, y := (r.Min.X+r.Max.X)/2, (r.Min.Y+r.Max.Y)/2
	in := func(x, y unit.Length) bool { return g.Contains(geom.Point{X: x, Y: y}) > 0 }
	return [2]bool{in(r.Min.X-1, y) && in(r.Max.X+1, y), in(x, r.Min.Y-1) && in(x, r.Max.Y+1)}
}

// mover moves one opening, in the frame of the courses.
type mover struct {
	p      *problem
	origin geom.Point
	rect   geom.Rect
	limit  unit.Length
	tiled  [2]bool // along s, along t
}

// best moves across the courses first: that decides which courses stand beside the opening.
func (m *mover) best(name string) (Move, bool) {
	now := m.fit(geom.Point{})
	var d geom.Point
	if m.tiled[1] {
		d = m.along(d, geom.Point{Y: m.p.t.mark})
	}
	if m.tiled[0] {
		d = m.along(d, geom.Point{X: m.p.s.mark})
	}
	then := m.fit(d)
	if m.p.flip {
		d = swap(d)
	}
	least := worth * m.p.s.mark
	return Move{Opening: name, Across: d.X, Up: d.Y, JointsNow: now.joints, JointsMoved: then.joints,
		Why: shiftWords(now, then, least)}, then.joints > now.joints || now.off-then.off >= least
}

// along tries moves by whole steps up to the limit, the shortest first, to the right or up before left or down.
func (m *mover) along(from, step geom.Point) (best geom.Point) {
	best = from
	least := m.fit(from)
	for k := unit.Length(1); k*(step.X+step.Y) <= m.limit; k++ {
		for _, n := range []unit.Length{k, -k} {
			d := from.Add(geom.Point{X: n * step.X, Y: n * step.Y})
			if f := m.fit(d); f.better(least) {
				best, least = d, f
			}
		}
	}
	return best
}

// fit is how the sides of an opening meet the joints.
type fit struct {
	off    unit.Length // cut off the tiles beside it, in all
	joints int         // sides on joints
}

func (f fit) better(o fit) bool { return f.off < o.off || f.off == o.off && f.joints > o.joints }

// fit measures the sides that have tile beside them, after a move.
func (m *mover) fit(d geom.Point) (f fit) {
	lo, hi := m.rect.Min.Add(d), m.rect.Max.Add(d)
	s, t := m.p.s, m.p.t
	if m.tiled[1] {
		f.add(t, t.whole(t.mod(lo.Y-m.origin.Y)))
		f.add(t, t.whole(t.mod(m.origin.Y+t.size-hi.Y)))
	}
	if !m.tiled[0] {
		return f
	}
	left, right := s.size, s.size
	for c := floorDiv(int(lo.Y-m.origin.Y), int(t.pitch)); ; c++ {
		from := m.origin.Y + unit.Length(c)*t.pitch
		if from+t.ease >= hi.Y {
			break
		}
		if from+t.size-t.ease > lo.Y {
			start := m.origin.X + m.p.shift(c)
			left = min(left, s.whole(s.mod(lo.X-start)))
			right = min(right, s.whole(s.mod(start+s.size-hi.X)))
		}
	}
	f.add(s, left)
	f.add(s, right)
	return f
}

// whole is left, of an edge that does not lean; the whole tile where nothing is cut.
func (a axis) whole(phase unit.Length) unit.Length {
	if w, cut := a.left(phase, 0); cut {
		return w
	}
	return a.size
}

func (f *fit) add(a axis, leg unit.Length) {
	f.off += a.size - leg
	if leg == a.size {
		f.joints++
	}
}

// shiftWords says what a move gains, and what it gives up for that; what is as good as before is not worth a word.
func shiftWords(now, then fit, least unit.Length) judge.Reason {
	var joints, off judge.Reason
	if then.joints != now.joints {
		joints = judge.Because(sidesOnJoints(then.joints)+" instead of {1}", diag.N(then.joints), orNone(now.joints))
	}
	if (now.off - then.off).Abs() >= least {
		off = judge.Because("a total of {0} is cut off the tiles beside it instead of {1}", diag.L(then.off), diag.L(now.off))
	}
	return judge.Join("; ", joints, off)
}

func sidesOnJoints(n int) string {
	switch n {
	case 0:
		return "none of its sides falls on a joint"
	case 1:
		return "{0} of its sides falls on a joint"
	}
	return "{0} of its sides fall on joints"
}

func orNone(n int) diag.Value {
	if n == 0 {
		return diag.T("none")
	}
	return diag.N(n)
}
