package pair

import (
	"fmt"
	"slices"
)

// The checker trusts nothing of the package but its types. It takes a result
// apart by the rules in the package comment, in the slowest way that is plain.

// lying is a piece as it lies in a blank.
type lying struct {
	x0, y0, x1, y1 int64
	pts            []Pt
	keep           [4]bool // left, bottom, right, top
	shaped         bool
}

// turnOnce carries a piece at the origin through a quarter turn.
func (l lying) turnOnce() lying {
	h := l.y1
	out := lying{x1: h, y1: l.x1, shaped: l.shaped}
	for _, p := range l.pts {
		out.pts = append(out.pts, Pt{h - p.Y, p.X})
	}
	out.keep = [4]bool{l.keep[3], l.keep[0], l.keep[1], l.keep[2]} // left was top, bottom was left
	return out
}

func (l lying) moved(x, y int64) lying {
	pts := make([]Pt, len(l.pts))
	for i, p := range l.pts {
		pts[i] = Pt{p.X + x, p.Y + y}
	}
	l.x0, l.y0, l.x1, l.y1, l.pts = l.x0+x, l.y0+y, l.x1+x, l.y1+y, pts
	return l
}

// lay turns a piece by q quarters and moves its corner to x, y.
func lay(pc Piece, q int, x, y int64) lying {
	l := lying{x1: pc.W, y1: pc.H, pts: pc.Shape, shaped: pc.Shape != nil}
	if !l.shaped {
		l.pts = []Pt{{0, 0}, {pc.W, 0}, {pc.W, pc.H}, {0, pc.H}}
	}
	for i, s := range []Side{Left, Bottom, Right, Top} {
		l.keep[i] = pc.Keep&s != 0
	}
	for range q {
		l = l.turnOnce()
	}
	return l.moved(x, y)
}

// sits tells whether the piece is inside the blank with its kept sides on it.
func (l lying) sits(p Problem) bool {
	return l.x0 >= 0 && l.y0 >= 0 && l.x1 <= p.W && l.y1 <= p.H &&
		(!l.keep[0] || l.x0 == 0) && (!l.keep[1] || l.y0 == 0) &&
		(!l.keep[2] || l.x1 == p.W) && (!l.keep[3] || l.y1 == p.H)
}

// mayTurn lists the quarter turns that a piece allows.
func mayTurn(pc Piece) []int {
	var out []int
	for q, t := range []Turn{Turn0, Turn90, Turn180, Turn270} {
		if pc.Turns&t != 0 || pc.Turns == 0 && q == 0 {
			out = append(out, q)
		}
	}
	return out
}

// blankOK tells whether the pieces of one blank can be cut from it.
func blankOK(p Problem, ls []lying) bool {
	shaped := 0
	for _, l := range ls {
		if l.shaped {
			shaped++
		}
	}
	try := &straight{p.Kerf, p.LeastStrip, map[[4]int64]bool{}}
	if try.ok(lying{x1: p.W, y1: p.H}, ls, 0) {
		return true
	}
	return (shaped == len(ls) || shaped > 0 && p.LeastStrip == 0) && slantOK(ls, p.Kerf)
}

// straight tries every cut parallel to the sides that could matter. A panel tells
// which pieces are in it, so what failed once need not be tried again.
type straight struct {
	k, s   int64
	failed map[[4]int64]bool // by panel
}

// ok tries upright cuts and, by swapping the axes, level ones.
func (t *straight) ok(panel lying, ls []lying, swaps int64) bool {
	if len(ls) == 0 || len(ls) == 1 && ls[0].x0 == panel.x0 && ls[0].x1 == panel.x1 &&
		ls[0].y0 == panel.y0 && ls[0].y1 == panel.y1 {
		return true
	}
	if swaps == 1 {
		return t.ok(panel.swapped(), swappedAll(ls), 0)
	}
	key := [4]int64{panel.x0, panel.y0, panel.x1, panel.y1}
	if t.failed[key] {
		return false
	}
	ok := t.upright(panel, ls, 0) || t.upright(panel.swapped(), swappedAll(ls), 1)
	t.failed[key] = !ok
	return ok
}

func swappedAll(ls []lying) (out []lying) {
	for _, l := range ls {
		out = append(out, l.swapped())
	}
	return out
}

func (l lying) swapped() lying { return lying{x0: l.y0, y0: l.x0, x1: l.y1, y1: l.x1} }

func (t *straight) upright(panel lying, ls []lying, swaps int64) bool {
	k, s := t.k, t.s
	marks := []int64{panel.x0 + s, panel.x1 - s}
	for _, l := range ls {
		marks = append(marks, l.x0, l.x1, l.x0-s, l.x1+s)
	}
	for _, m := range marks {
		for _, cut := range [][2]int64{{m, m + k}, {m - k, m}} {
			if t.cut(panel, ls, max(cut[0], panel.x0), min(cut[1], panel.x1), swaps) {
				return true
			}
		}
	}
	return false
}

// cut takes c0..c1 out of the panel.
func (t *straight) cut(panel lying, ls []lying, c0, c1, swaps int64) bool {
	if c0 > c1 || c0 == c1 && (t.k > 0 || c0 == panel.x0 || c0 == panel.x1) {
		return false
	}
	var low, high []lying
	for _, l := range ls {
		switch {
		case l.x1 <= c0:
			low = append(low, l)
		case l.x0 >= c1:
			high = append(high, l)
		default:
			return false
		}
	}
	lowWidth, highWidth := c0-panel.x0, panel.x1-c1
	if len(low) == 0 {
		lowWidth = c1 - panel.x0
	}
	if len(high) == 0 {
		highWidth = panel.x1 - c0
	}
	a, b := panel, panel
	a.x1, b.x0 = c0, c1
	return lowWidth >= t.s && highWidth >= t.s && t.ok(a, low, swaps) && t.ok(b, high, swaps)
}

// slantOK divides the pieces in two in every way.
func slantOK(ls []lying, k int64) bool {
	if len(ls) < 2 {
		return true
	}
	for mask := 1; mask < 1<<len(ls)-1; mask++ {
		var part [2][]lying
		var pts [2][]Pt
		for i, l := range ls {
			part[mask>>i&1] = append(part[mask>>i&1], l)
			pts[mask>>i&1] = append(pts[mask>>i&1], l.pts...)
		}
		if strip(pts[0], pts[1], k) && slantOK(part[0], k) && slantOK(part[1], k) {
			return true
		}
	}
	return false
}

// strip tells whether a straight strip k wide divides the points. The widest
// one is square to a line through two points, or along one.
func strip(a, b []Pt, k int64) bool {
	all := slices.Concat(a, b)
	for _, p := range all {
		for _, q := range all {
			d := Pt{q.X - p.X, q.Y - p.Y}
			if p != q && (wide(a, b, d, k) || wide(a, b, Pt{-d.Y, d.X}, k)) {
				return true
			}
		}
	}
	return false
}

// wide measures the strip between a and b in direction d. Sizes in tests are
// small enough for squares of products.
func wide(a, b []Pt, d Pt, k int64) bool {
	most, least := int64(-1<<62), int64(1<<62)
	for _, p := range a {
		most = max(most, p.X*d.X+p.Y*d.Y)
	}
	for _, p := range b {
		least = min(least, p.X*d.X+p.Y*d.Y)
	}
	gap := least - most
	return gap >= 0 && gap*gap >= k*k*(d.X*d.X+d.Y*d.Y)
}

// possible tells whether any turn puts the piece into the blank.
func possible(p Problem, pc Piece) bool {
	one := Problem{Pieces: []Piece{pc}}
	if pc.W <= 0 || pc.H <= 0 || area(one, 1) == 0 {
		return false
	}
	for _, pt := range pc.Shape {
		if pt.X < 0 || pt.Y < 0 || pt.X > pc.W || pt.Y > pc.H {
			return false
		}
	}
	for _, q := range mayTurn(pc) {
		l := lay(pc, q, 0, 0)
		for _, x := range []int64{0, p.W - l.x1} {
			for _, y := range []int64{0, p.H - l.y1} {
				if l.moved(x, y).sits(p) {
					return true
				}
			}
		}
	}
	return false
}

// check gives the first thing that is wrong with a result.
func check(p Problem, r Result) error {
	if len(r.Placements) != len(p.Pieces) {
		return fmt.Errorf("%d placements of %d pieces", len(r.Placements), len(p.Pieces))
	}
	blanks := make([][]lying, r.Blanks)
	members := make([][]int, r.Blanks)
	for i, pl := range r.Placements {
		pc := p.Pieces[i]
		if (pl.Blank < 0) != slices.Contains(r.Unfit, i) || pl.Piece != i || pl.Blank >= r.Blanks {
			return fmt.Errorf("piece %d: placement %+v", i, pl)
		}
		if pl.Blank < 0 {
			if possible(p, pc) {
				return fmt.Errorf("piece %d is not unfit", i)
			}
			continue
		}
		q := slices.Index([]Turn{Turn0, Turn90, Turn180, Turn270}, pl.Turn)
		if !slices.Contains(mayTurn(pc), q) {
			return fmt.Errorf("piece %d: turn %v", i, pl.Turn)
		}
		l := lay(pc, q, pl.X, pl.Y)
		if !l.sits(p) {
			return fmt.Errorf("piece %d does not sit: %+v", i, pl)
		}
		blanks[pl.Blank] = append(blanks[pl.Blank], l)
		members[pl.Blank] = append(members[pl.Blank], i)
	}
	return checkBlanks(p, r, blanks, members)
}

func checkBlanks(p Problem, r Result, blanks [][]lying, members [][]int) error {
	if r.Lower > r.Blanks {
		return fmt.Errorf("lower %d above %d", r.Lower, r.Blanks)
	}
	for b, ls := range blanks {
		if len(ls) == 0 {
			return fmt.Errorf("blank %d is empty", b)
		}
		if len(ls) == 1 && slices.Contains(r.Tight, members[b][0]) {
			continue
		}
		if !blankOK(p, ls) {
			return fmt.Errorf("blank %d cannot be cut: %+v", b, ls)
		}
	}
	return nil
}
