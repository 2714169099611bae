package tiling

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/tiling/search"
	"dryfit/internal/unit"
)

// pin returns the origin that the person holds the field to, in the pattern's frame: a joint crossing that is named,
// or the joints of another face carried round the corner.
func (m *maker) pin(g *ground, before []Face) (geom.Point, bool) {
	if g.field.Pin.Given {
		return m.named(g)
	}
	if g.lay.ContinueFrom.Known {
		return m.continued(g, before)
	}
	return geom.Point{}, false
}

// heldBy says what holds a layout where it is.
func (g *ground) heldBy() judge.Reason {
	if g.field.Pin.Given {
		return judge.Because("held where you pinned it")
	}
	return judge.Because("held so that the joints of {0} run on round the corner", diag.T(g.lay.ContinueFrom.V))
}

// named: the crossing's middle is half a joint off the tile's lower left corner, both ways.
func (m *maker) named(g *ground) (geom.Point, bool) {
	p, ok := m.crossing(g)
	if !ok {
		m.found(diag.Look, "pin-not-placed", g.field.Pin.At, "where the pin of {0} on {1} is can not be worked out; the best layout is looked for instead",
			"pin a wall by across and up, the floor by off: with two walls that meet", diag.T(g.field.Name), diag.T(g.canvas.face.Name))
		return geom.Point{}, false
	}
	half := g.good.joint.MulDiv(1, 2)
	return g.frame.In(p).Add(geom.Point{X: half, Y: half}), true
}

// crossing is the place that a pin names, in the face's frame.
func (m *maker) crossing(g *ground) (geom.Point, bool) {
	pin := g.field.Pin
	if g.canvas.face.Kind == site.FloorFace {
		return m.room.Off(pin.FloorAt)
	}
	x, _, okX := m.room.Across(g.canvas.face.Name, pin.Across, 0)
	y, _, okY := m.room.Up(g.canvas.face.Name, pin.Up, 0)
	return geom.Point{X: x, Y: y}, okX && okY
}

// continued unrolls the corner: what is seen of one wall ends where what is seen of the other begins, and the joints run
// on as if the two were one plane.
func (m *maker) continued(g *ground, before []Face) (geom.Point, bool) {
	from, origin, ok := m.laidBefore(g, before)
	if !ok {
		m.found(diag.Look, "continue-nothing", g.lay.At, "{0} can not continue the joints of {1}: no field there has the same tile in courses",
			"lay the same tile there, or drop continue from", diag.T(g.canvas.face.Name), diag.T(g.lay.ContinueFrom.V))
		return geom.Point{}, false
	}
	if _, floor := m.wallToContinue(g); floor {
		return m.downFromWall(g, from, origin), true
	}
	shift, ok := acrossCorner(from, g.canvas.face)
	if !ok {
		m.found(diag.Look, "continue-apart", g.lay.At, "{0} and {1} do not share a corner", "name a wall beside this one",
			diag.T(g.canvas.face.Name), diag.T(from.Name))
		return geom.Point{}, false
	}
	return g.frame.In(origin.Add(geom.Point{X: shift})), true
}

// downFromWall takes the columns of a wall onto the floor before it. The corner of the wall's board is the frame's
// origin, so the columns stand where they stand on the wall; the courses are free and take the best height.
func (m *maker) downFromWall(g *ground, wall site.Face, origin geom.Point) geom.Point {
	at := geom.Point{X: origin.X - footOf(wall)}
	in := m.input(g)
	in.Count = nil
	best, found := at, search.Candidate{}
	for y := unit.Length(0); y < g.bond.V.Y.Abs(); y += downStep {
		c := search.Judge(in, geom.Point{X: at.X, Y: -y})
		if y == 0 || betterOf(c, found) {
			best, found = c.Origin, c
		}
	}
	return best
}

// downStep is how finely the free courses of a continued floor are searched.
const downStep = unit.Inch / 8

// betterOf compares two candidates' measures in order of importance.
func betterOf(a, b search.Candidate) bool {
	for i := range a.Measures {
		if d := a.Measures[i].Cost - b.Measures[i].Cost; d != 0 {
			return d < 0
		}
	}
	return false
}

// footOf is the x, in the wall's frame, of the left corner of its board at the floor; its frame begins at the level line.
func footOf(wall site.Face) unit.Length {
	var foot geom.Point
	first := true
	for _, r := range wall.Board {
		for i, v := range r {
			e, ok := edgeOf(wall.Edges, v.Edge)
			if !ok || e.Name != "corner "+wall.LeftCorner {
				continue
			}
			for _, p := range []geom.Point{v.P, r[(i+1)%len(r)].P} {
				if first || p.Y < foot.Y {
					foot, first = p, false
				}
			}
		}
	}
	return foot.X
}

// laidBefore finds the field to continue: the same tile at the same joint, lying square, in the face named.
func (m *maker) laidBefore(g *ground, before []Face) (face site.Face, origin geom.Point, ok bool) {
	for _, f := range before {
		if f.Name != g.lay.ContinueFrom.V {
			continue
		}
		for _, field := range f.Fields {
			if field.Tile == g.good.tile.Name && field.Joint == g.good.joint && field.Angle == 0 && g.bond.Angle == 0 && len(field.Layouts) > 0 {
				face, ok = m.room.Face(f.Name)
				return face, field.Chosen().Origin, ok
			}
		}
	}
	return face, origin, false
}

// acrossCorner is what to add to an x of one wall to get the x of the same unrolled place on its neighbor.
func acrossCorner(from, to site.Face) (unit.Length, bool) {
	switch {
	case from.RightCorner != "" && from.RightCorner == to.LeftCorner:
		a, okA := seenEnd(from, from.RightCorner, -1)
		b, okB := seenEnd(to, to.LeftCorner, 1)
		return b - a, okA && okB
	case from.LeftCorner != "" && from.LeftCorner == to.RightCorner:
		a, okA := seenEnd(from, from.LeftCorner, 1)
		b, okB := seenEnd(to, to.RightCorner, -1)
		return b - a, okA && okB
	}
	return 0, false
}

// seenEnd is the x at the level line where what is seen of a wall ends at a corner; inward is the direction into the wall.
func seenEnd(f site.Face, corner string, inward unit.Length) (unit.Length, bool) {
	for _, r := range f.Cut {
		for i, v := range r {
			e, ok := edgeOf(f.Edges, v.Edge)
			if !ok || e.Name != "corner "+corner {
				continue
			}
			return atLevel(v.P, r[(i+1)%len(r)].P) + inward*e.Hidden, true
		}
	}
	return 0, false
}

// atLevel is the x of an upright edge at y = 0, or at its nearer end where it does not reach the level line.
func atLevel(a, b geom.Point) unit.Length {
	if a.Y > b.Y {
		a, b = b, a
	}
	y := min(max(0, a.Y), b.Y)
	if a.Y == b.Y {
		return a.X
	}
	return a.X + (b.X-a.X).MulDiv(int64(y-a.Y), int64(b.Y-a.Y))
}

// costOfPin says what holding the layout costs against the best that the search would offer.
func (m *maker) costOfPin(g *ground, in search.Input, origin geom.Point) {
	cost := search.Pin(in, origin, m.best(g, in)).WhyNot
	if cost.Text == "" {
		return
	}
	cost.Text = strings.TrimPrefix(cost.Text, "the pin costs: ")
	say := judge.Join("", judge.Because("{0} on {1} is held where it is, and that costs: ", diag.T(g.name()), diag.T(g.canvas.face.Name)), cost)
	m.found(diag.Note, "pin-costs", g.field.At, say.Text, "", say.Values...)
}
