package site

import (
	"math"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// The oracle solves a room with leaning walls and skew corners in plain floating point, by formulas of its own: normals, line
// equations and Cramer's rule, with nothing of the solver's.
type oracleWall struct{ nx, ny, c float64 } // nx x + ny y = c, the normal pointing into the room

// wallLine is the line of a side from p to q whose ends have moved into the room by dp and dq.
func wallLine(p, q [2]float64, dp, dq float64) oracleWall {
	dx, dy := q[0]-p[0], q[1]-p[1]
	n := math.Hypot(dx, dy)
	ux, uy := dy/n, -dx/n // right of the direction: inward, for corners go clockwise
	a := [2]float64{p[0] + ux*dp, p[1] + uy*dp}
	b := [2]float64{q[0] + ux*dq, q[1] + uy*dq}
	dx, dy = b[0]-a[0], b[1]-a[1]
	n = math.Hypot(dx, dy)
	w := oracleWall{nx: dy / n, ny: -dx / n}
	w.c = w.nx*a[0] + w.ny*a[1]
	return w
}

func (w oracleWall) meet(v oracleWall) [2]float64 {
	det := w.nx*v.ny - w.ny*v.nx
	return [2]float64{(w.c*v.ny - w.ny*v.c) / det, (w.nx*v.c - w.c*v.nx) / det}
}

// Skew four-cornered rooms with leaning walls and boards of different thickness: every wall's board is what the oracle says, at the floor and at the
// ceiling, and the gaps at its corners are (q + p cos a)/sin a.
func TestSkewRoomsAgainstOracle(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, p := skewRoom(t, rt)
		got := r.solve()
		for i := range 4 {
			f := got.face(r.Walls[i].Name)
			plate, top := oracleRoom(r, p, 0), oracleRoom(r, p, 1)
			sideAgrees(rt, f, labelLeft, plate, top, i, i)
			sideAgrees(rt, f, labelRight, plate, top, i, (i+1)%4)
		}
		gapsAgree(rt, r, p, got)
	})
}

func skewRoom(t *testing.T, rt *rapid.T) (*room, [][2]float64) {
	off := func() float64 { return float64(rapid.IntRange(-12, 12).Draw(rt, "off")) }
	w, d := float64(rapid.IntRange(60, 150).Draw(rt, "w")), float64(rapid.IntRange(60, 150).Draw(rt, "d"))
	p := [][2]float64{{0, 0}, {w, 0}, {w + off(), -d + off()}, {off(), -d + off()}}
	r := polygon(t, document.Stud, "board 1/2", p...)
	for i := range r.Walls {
		wl := &r.Walls[i]
		wl.BuildUp[0].Thick = val(sixteenths(rt, 0, 1, "board"))
		wl.Lean = []document.AtCorner{{Corner: wl.Left, Value: val(sixteenths(rt, -1, 1, "lean"))}, {Corner: wl.Right, Value: val(sixteenths(rt, -1, 1, "lean"))}}
		r.lay("white", wl.Name)
	}
	r.order("A-B", "B-C", "C-D", "D-A")
	return r, p
}

// oracleRoom is the board's corners at the floor (0) or the ceiling (1).
func oracleRoom(r *room, p [][2]float64, height float64) [4][2]float64 {
	return oracleSurface(r, p, document.Board, height)
}

// sideAgrees compares how far a side of a wall goes over from floor to ceiling, and the wall's width at both, with the oracle's, along the board's own line
// at the floor.
func sideAgrees(rt *rapid.T, f Face, l geom.Label, plate, top [4][2]float64, wall, corner int) {
	a, b := plate[wall], plate[(wall+1)%4]
	n := math.Hypot(b[0]-a[0], b[1]-a[1])
	x := func(q [2]float64) float64 { return ((q[0]-a[0])*(b[0]-a[0]) + (q[1]-a[1])*(b[1]-a[1])) / n }
	leftPlate, leftTop := x(plate[wall]), x(top[wall])
	zero := leftPlate + (leftTop-leftPlate)*40/96 // x = 0 is the left side at the level line
	bottom, ceiling := side(f, l)
	for _, c := range []struct {
		got  unit.Length
		want float64
	}{{bottom.X, x(plate[corner]) - zero}, {ceiling.X, x(top[corner]) - zero}} {
		if math.Abs(c.got.In()-c.want) > 2e-5 { // inches: eight counts
			rt.Fatalf("%s, side %d: %.6f in, want %.6f", f.Name, l, c.got.In(), c.want)
		}
	}
}

// gapsAgree: the wall set first runs through. Its own angle at the corner is that of the raw outline; its tile's back and face end where the formula says.
func gapsAgree(rt *rapid.T, r *room, p [][2]float64, got solved) {
	const bed, finish, joint = 0.1875, 0.5625, 0.125
	for i := range 4 {
		c := (i + 1) % 4
		a := insideAngle(p[i], p[c], p[(c+1)%4])
		meet := func(p, q float64) float64 { return (q + p*math.Cos(a)) / math.Sin(a) }
		tight := func(q float64) float64 { return max(meet(bed, q), meet(finish, q)) }
		one, _ := got.Face(r.Walls[i].Name)
		two, _ := got.Face(r.Walls[c].Name)
		first, second := edgeAt(one, labelRight), edgeAt(two, labelLeft)
		if c == 0 { // A-B is set first of all
			first, second = second, first
		}
		for _, k := range []struct {
			got  unit.Length
			want float64
		}{{first.Gap, tight(joint)}, {first.Hidden, meet(finish, finish) - tight(joint)}, {second.Gap, tight(finish + joint)}} {
			if math.Abs(k.got.In()-k.want) > 2e-5 {
				rt.Fatalf("corner %d: %.6f in, want %.6f", c, k.got.In(), k.want)
			}
		}
	}
}

func edgeAt(f Face, l geom.Label) Edge { return f.Edges[l-1] }

// insideAngle is the angle at b between a and c.
func insideAngle(a, b, c [2]float64) float64 {
	ux, uy, vx, vy := a[0]-b[0], a[1]-b[1], c[0]-b[0], c[1]-b[1]
	return math.Acos((ux*vx + uy*vy) / math.Hypot(ux, uy) / math.Hypot(vx, vy))
}

// Readings taken to the stud, the board or the tile, at the plate, the level line or the ceiling, as chance has it, give back the studs at the plate.
func TestMixedReadingsAgainstOracle(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, p := skewRoom(t, rt)
		for k := range r.Survey.Tape {
			d := &r.Survey.Tape[k]
			to := document.Surface(rapid.IntRange(0, 2).Draw(rt, "to"))
			at := document.Height(rapid.IntRange(0, 2).Draw(rt, "at"))
			d.Touches, d.Where = val(to), val(at)
			c := oracleSurface(r, p, to, [...]float64{0, 40.0 / 96, 1}[at])
			a, b := c[d.From[0]-'A'], c[d.To[0]-'A']
			d.Length = unit.FromFloat(math.Hypot(a[0]-b[0], a[1]-b[1]) * float64(unit.Inch))
		}
		got := r.solve()
		for i, c := range got.Survey.Corners {
			if math.Abs(c.Raw.X.In()-p[i][0]) > 5e-5 || math.Abs(c.Raw.Y.In()-p[i][1]) > 5e-5 {
				rt.Fatalf("corner %s is at %.5f, %.5f, want %v; said:\n%s", c.Name, c.Raw.X.In(), c.Raw.Y.In(), p[i], got.said())
			}
		}
		if got.Survey.Verdict != Agree {
			rt.Fatalf("verdict %v", got.Survey.Verdict)
		}
	})
}

// oracleSurface is the room's corners on a surface at a height: finish 3/16 + 3/8 in on the board.
func oracleSurface(r *room, p [][2]float64, to document.Surface, height float64) (out [4][2]float64) {
	var lines [4]oracleWall
	for i := range lines {
		w := r.Walls[i]
		t := [...]float64{0, w.BuildUp[0].Thick.V.In(), w.BuildUp[0].Thick.V.In() + 0.5625}[to]
		lines[i] = wallLine(p[i], p[(i+1)%4], t+height*w.Lean[0].Value.V.In(), t+height*w.Lean[1].Value.V.In())
	}
	for i := range out {
		out[i] = lines[(i+3)%4].meet(lines[i])
	}
	return out
}
