package site

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/opt/lsq"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Points of a wall's own network: the level line's left end, then the corners of the board.
const (
	onLevel = iota
	bottomLeft
	bottomRight
	topLeft
	topRight
)

// gauge is a wall's own readings before the solver, in millimetres, each with its name.
type gauge struct {
	s     *solver
	w     wall
	p     lsq.Problem
	names []string
	own   int // readings of the wall itself
}

// plumb adjusts a wall's shape to its own readings: widths, heights and diagonals, together with the level line, the width that the survey
// gives and the neighbors' leans. A side without a lean reading is held plumb, but loosely, so that diagonals can say otherwise. The
// floor and ceiling are adjusted for this wall only; what is printed for a corner stays as it was read from the level line.
func (s *solver) plumb(i int, e *elevation) {
	g := &gauge{s: s, w: s.walls[i]}
	if !g.start(*e) {
		return
	}
	g.widths(i)
	g.heights()
	g.diagonals(i)
	if g.own == 0 {
		return
	}
	g.surroundings(i, *e)
	res, v := lsq.Adjust(g.p)
	if v.Outcome != lsq.Adjusted {
		s.list.Add(diag.Look, "wall-unsolved", g.w.doc.At, "the readings of {0} fit no shape: they are left out", "take its widths, heights and diagonals again", diag.T(g.w.name))
		return
	}
	g.verdict(res)
	e.take(res.Points)
}

// start places the points by what is known without the wall's own readings. It is false where a height is missing.
func (g *gauge) start(e elevation) bool {
	l, r := g.s.levels[g.w.left], g.s.levels[g.w.right]
	width := e.plate().MM()
	g.p.Start = []lsq.Point{{}, {X: 0, Y: -l.down.MM()}, {X: width, Y: -r.down.MM()},
		{X: e.leanLeft.MM(), Y: l.up.MM()}, {X: width + e.leanRight.MM(), Y: r.up.MM()}}
	g.p.Fixed = []lsq.Hold{{Point: onLevel, Axis: lsq.X}, {Point: onLevel, Axis: lsq.Y}, {Point: bottomLeft, Axis: lsq.X}}
	return l.known() && r.known()
}

// plate is the width of the board at the floor.
func (e elevation) plate() unit.Length {
	return e.width - lean(e.leanRight, e.tallRight, e.downRight) + lean(e.leanLeft, e.tallLeft, e.downLeft)
}

func (g *gauge) add(kind lsq.Kind, from, to int, value, sigma float64, name string) {
	g.p.Observations = append(g.p.Observations, lsq.Observation{Kind: kind, From: from, To: to, Value: value, Sigma: sigma})
	g.names = append(g.names, name)
}

// tape adds a reading of the wall itself.
func (g *gauge) tape(from, to int, mm float64, name string) {
	g.add(lsq.Distance, from, to, mm, g.s.accuracy().MM(), name)
	g.own++
}

// widths adds the width at the bottom, unless the survey has used it, and at the top, both reduced to the board.
func (g *gauge) widths(i int) {
	bottom, top := g.reductions(i)
	if b := g.w.doc.WidthBottom; b.Known && !g.inSurvey(b.At) {
		g.tape(bottomLeft, bottomRight, (b.V + bottom).MM(), "the width at the bottom")
	}
	if t := g.w.doc.WidthTop; t.Known {
		g.tape(topLeft, topRight, (t.V + top).MM(), "the width at the top")
	}
}

func (g *gauge) inSurvey(at diag.Place) bool {
	for _, r := range g.s.out.Survey.Readings {
		if r.At == at {
			return true
		}
	}
	return false
}

// reductions are how much wider the board is than the surface that was taped to, at the bottom and at the top.
func (g *gauge) reductions(i int) (bottom, top unit.Length) {
	return g.wider(i, document.Plate), g.wider(i, document.Ceiling)
}

func (g *gauge) wider(i int, h document.Height) unit.Length {
	l, r := g.s.ends(i, h)
	to := g.tapedTo()
	return geom.Dist(l, r) - geom.Dist(g.s.point(g.w.left, to, h), g.s.point(g.w.right, to, h))
}

func (g *gauge) tapedTo() document.Surface { return g.w.doc.WidthTo.Or(g.s.out.tapedTo) }

// heights are from the bare floor to the ceiling, so they need no reduction.
func (g *gauge) heights() {
	for _, c := range []struct{ corner, bottom, top int }{{g.w.left, bottomLeft, topLeft}, {g.w.right, bottomRight, topRight}} {
		name := g.s.cornerName(c.corner)
		if h, ok := findCorner(g.w.doc.Heights, name); ok {
			g.tape(c.bottom, c.top, h.V.MM(), "the height at "+name)
		}
	}
}

// diagonals run from the bottom corner named to the opposite top corner; the reduction of a width shows in them by the part that
// they are level.
func (g *gauge) diagonals(i int) {
	bottom, top := g.reductions(i)
	for _, c := range []struct{ corner, from, to int }{{g.w.left, bottomLeft, topRight}, {g.w.right, bottomRight, topLeft}} {
		name := g.s.cornerName(c.corner)
		if d, ok := findCorner(g.w.doc.Diagonals, name); ok {
			a, b := g.p.Start[c.from], g.p.Start[c.to]
			dx, dy := math.Abs(b.X-a.X), b.Y-a.Y
			taped := dx - (bottom+top).MM()/2
			g.tape(c.from, c.to, d.V.MM()+root(dx, dy)-root(taped, dy), "the diagonal from "+name)
		}
	}
}

// root is the hypotenuse; products are converted so that no machine fuses them.
func root(x, y float64) float64 { return math.Sqrt(float64(x*x) + float64(y*y)) }

// surroundings adds what others say: the level line, the survey's width and the leans.
func (g *gauge) surroundings(i int, e elevation) {
	sigma := g.s.accuracy().MM()
	g.level(bottomLeft, g.w.left, g.s.doc.Survey.Down, -1)
	g.level(bottomRight, g.w.right, g.s.doc.Survey.Down, -1)
	g.level(topLeft, g.w.left, g.s.doc.Survey.Up, 1)
	g.level(topRight, g.w.right, g.s.doc.Survey.Up, 1)
	g.add(lsq.OffsetX, bottomLeft, bottomRight, e.plate().MM(), sigma, "the survey's width")
	n := len(g.s.walls)
	g.lean(bottomLeft, topLeft, e.leanLeft, (i+n-1)%n, g.w.left)
	g.lean(bottomRight, topRight, e.leanRight, (i+1)%n, g.w.right)
}

func (g *gauge) level(point, corner int, list []document.AtCorner, sign float64) {
	name := g.s.cornerName(corner)
	if v, ok := findCorner(list, name); ok {
		g.add(lsq.OffsetY, onLevel, point, sign*v.V.MM(), g.s.accuracy().MM(), "the level line at "+name)
	}
}

func (g *gauge) lean(bottom, top int, by unit.Length, neighbor, corner int) {
	name, sigma := g.s.cornerName(corner), g.s.accuracy()
	if _, ok := findCorner(g.s.walls[neighbor].doc.Lean, name); !ok {
		sigma = rule.PlumbUsual.Limit
		g.s.assume(g.w.doc.At, rule.PlumbUsual.Cite(), "{0} is plumb to {1} where its own readings do not say otherwise", diag.T(g.s.walls[neighbor].name), diag.F(sigma))
	}
	g.add(lsq.OffsetX, bottom, top, by.MM(), sigma.MM(), "the lean at "+name)
}

// verdict words what disagrees.
func (g *gauge) verdict(res lsq.Result) {
	if len(res.Suspects) == 0 {
		return
	}
	var names []string
	for _, k := range res.Suspects {
		names = append(names, g.names[k])
	}
	by := unit.FromMM(res.ClosingErrors[res.Suspects[0]]).Abs()
	if len(names) == 1 {
		g.s.list.Add(diag.Look, "wall-reading-suspect", g.w.doc.At, "the readings of {0} disagree by {1}; {2} is the likeliest to be wrong", "take {2} again",
			diag.T(g.w.name), diag.L(by), diag.T(names[0]))
		return
	}
	g.s.list.Add(diag.Look, "wall-readings-disagree", g.w.doc.At, "the readings of {0} disagree by {1}, and cannot tell which of them is wrong", "take {2} again",
		diag.T(g.w.name), diag.L(by), diag.T(join(names)))
}

// take rounds the adjusted shape to the grid, once.
func (e *elevation) take(p []lsq.Point) {
	width := unit.FromMM(p[bottomRight].X)
	e.downLeft, e.downRight = unit.FromMM(-p[bottomLeft].Y), unit.FromMM(-p[bottomRight].Y)
	e.upLeft, e.upRight = unit.FromMM(p[topLeft].Y), unit.FromMM(p[topRight].Y)
	e.leanLeft, e.leanRight = unit.FromMM(p[topLeft].X), unit.FromMM(p[topRight].X)-width
	e.tallLeft, e.tallRight = e.downLeft+e.upLeft, e.downRight+e.upRight
	end := e.cornerEnd
	was := e.width
	e.width = width + lean(e.leanRight, e.tallRight, e.downRight) - lean(e.leanLeft, e.tallLeft, e.downLeft)
	for k := range end {
		e.cornerEnd[k] = end[k] + e.width - was
	}
}
