package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/unit"
)

// Names of what positions hang on beside single facts.
const (
	surveyPath = "survey > tape"
	downPath   = "survey > level line > down"
	upPath     = "survey > level line > up"
)

// across gives the two ends of a thing of a width along a wall. key is the path of the fact.
func (w Wall) across(a document.Across, path string, width figure.Figure) (lo, hi figure.Figure) {
	if !a.Given {
		return figure.Missing(path), figure.Missing(path)
	}
	x0, x1, ok := w.p.room.Across(w.Name, a, 0)
	if !ok {
		return figure.Missing(path), figure.Missing(path)
	}
	from := w.from(a, path)
	switch sign := w.sign(a); {
	case a.Both:
		return from.Moving(x0), from.Moving(x1)
	case a.Center || a.Side == document.On:
		lo = from.Moving(x0).Sub(width.Half())
		return lo, lo.Add(width)
	case sign < 0:
		return from.Moving(x1).Sub(width), from.Moving(x1)
	}
	return from.Moving(x0), from.Moving(x0).Add(width)
}

// middle is the center of a thing whose center, or both of whose edges, are told.
func (w Wall) middle(a document.Across, path string) figure.Figure {
	lo, hi := w.across(a, path, figure.Number(0))
	return mean(lo, hi)
}

// mean is the middle of two places. A width that parts them cancels where their middle is what was told.
func mean(lo, hi figure.Figure) figure.Figure {
	if !lo.Known() || !hi.Known() {
		return lo.Add(hi)
	}
	return lo.Add(hi).Half().Moving(lo.V + (hi.V-lo.V)/2)
}

// sign is +1 where a place counts to the right.
func (w Wall) sign(a document.Across) int64 {
	switch {
	case a.Side == document.LeftOf:
		return -1
	case a.Side == document.FromCorner && (a.From == "right" || a.From == w.Face.RightCorner):
		return -1
	}
	return 1
}

// from is what a place along the wall moves with: its own figure, the center line that it counts from, or the corner: where the tape touched
// that, x = 0 being the left corner of the board.
func (w Wall) from(a document.Across, path string) figure.Figure {
	own := figure.Fact(path, 0).Times(w.sign(a), 1)
	if a.Side == document.On {
		own = figure.Number(0).Using(path)
	}
	if a.Side != document.FromCorner {
		return own.Add(w.line(a.From))
	}
	touched := a.Touches.Or(w.p.doc.Survey.Touches.Or(document.Stud))
	if w.sign(a) > 0 {
		return own.Add(w.leftCorner(touched))
	}
	return own.Add(w.rightCorner(touched))
}

func (w Wall) line(name string) figure.Figure {
	for _, l := range w.p.doc.Lines {
		if l.Name == name && l.In.Text == w.Name {
			return w.from(l.Across, l.At.Path+" > across")
		}
	}
	return figure.Missing("center lines > " + name)
}

// leftCorner is how the left corner moves, on the surface that the tape touched, in the frame of the board.
func (w Wall) leftCorner(touched document.Surface) figure.Figure {
	n := w.neighbor(w.Face.LeftCorner)
	switch touched {
	case document.Board:
		return figure.Number(0)
	case document.TileFace:
		return n.Finish()
	}
	return n.Board().Neg()
}

// LeftStud is how far the left corner of the studs is to the left of the board's.
func (w Wall) LeftStud() figure.Figure { return w.neighbor(w.Face.LeftCorner).Board() }

// rightCorner: the length of the wall comes from the tape; what is on the studs of both neighbors comes off it.
func (w Wall) rightCorner(touched document.Surface) figure.Figure {
	studs := figure.Fact(surveyPath, 0).Sub(w.neighbor(w.Face.LeftCorner).Board())
	n := w.neighbor(w.Face.RightCorner)
	switch touched {
	case document.Board:
		return studs.Sub(n.Board())
	case document.TileFace:
		return studs.Sub(n.Board()).Sub(n.Finish())
	}
	return studs
}

// SideOf is where the finished face of another wall crosses this one, to its left (way < 0) or right, as far as it moves with facts.
func (w Wall) SideOf(n Wall, way unit.Length) figure.Figure {
	if way < 0 {
		return n.Finish()
	}
	left := w.neighbor(w.Face.LeftCorner)
	return figure.Fact(surveyPath, 0).Sub(left.Board()).Sub(n.Board()).Sub(n.Finish())
}

// neighbor is the wall on the other side of a corner; a wall without layers where none is told.
func (w Wall) neighbor(corner string) Wall {
	for _, o := range w.p.out.Walls {
		if o.Name != w.Name && (o.Face.LeftCorner == corner || o.Face.RightCorner == corner) {
			return o
		}
	}
	// The walls are being read in the document's order: a later one is looked up in the document.
	for _, d := range w.p.doc.Walls {
		if d.Name != w.Name && (d.Left == corner || d.Right == corner) {
			if f, ok := w.p.room.Face(d.Name); ok {
				return Wall{Name: d.Name, Face: f, Layers: w.p.layers(d.BuildUp, f, d.At.Path), p: w.p}
			}
		}
	}
	return Wall{}
}

// floor is the finished floor's height over the level line, with what it moves with.
func (p *placer) floor() figure.Figure {
	if !p.room.FinishedKnown {
		return figure.Missing(downPath)
	}
	return figure.Fact(downPath, 0).Add(p.FloorBuildUp()).Moving(p.room.FinishedFloor)
}

// FloorBuildUp is what lies on the bare floor.
func (p *placer) FloorBuildUp() figure.Figure {
	f, ok := p.room.Face("floor")
	if !ok {
		return figure.Missing("floor > build-up")
	}
	sum := figure.Number(0)
	for _, l := range p.layers(p.doc.Floor.BuildUp, f, "floor") {
		sum = sum.Add(l.Thick)
	}
	return sum
}

// up gives the bottom and the top of a thing of a height.
func (p *placer) up(wall string, u document.Up, path string, height figure.Figure) (lo, hi figure.Figure) {
	if !u.Given {
		return figure.Missing(path), figure.Missing(path)
	}
	from, sign := p.datum(u.Datum, wall)
	one := from.Add(figure.Fact(path, u.Lo).Times(sign, 1))
	switch {
	case u.Both:
		two := from.Add(figure.Fact(path, u.Hi).Times(sign, 1))
		return figure.Min(one, two), figure.Max(one, two)
	case u.Part == document.Middle:
		lo = one.Sub(height.Half())
		return lo, lo.Add(height)
	case u.Part == document.Top || sign < 0:
		return one.Sub(height), one
	}
	return one, one.Add(height)
}

// at is the height of a thing that has none itself: a pipe's center, a rim.
func (p *placer) at(wall string, u document.Up, path string) figure.Figure {
	lo, hi := p.up(wall, u, path, figure.Number(0))
	return mean(lo, hi)
}

// datum is what a height counts from, and which way.
func (p *placer) datum(d document.Datum, wall string) (from figure.Figure, sign int64) {
	switch d {
	case document.AboveFloor:
		return p.floor(), 1
	case document.AboveLevel:
		return figure.Number(0), 1
	case document.BelowLevelLine:
		return figure.Number(0), -1
	}
	return p.ceiling(wall), -1
}

// ceiling is the lowest that the ceiling was read at, or along one wall.
func (p *placer) ceiling(wall string) figure.Figure {
	if f, ok := p.room.Face(wall); ok && len(f.Board) > 0 {
		if lo, _, ok := p.room.Up(wall, document.Up{Given: true, Datum: document.BelowCeiling}, 0); ok {
			return figure.Fact(upPath, 0).Moving(lo)
		}
	}
	low, known := unit.Length(0), false
	for _, c := range p.room.Survey.Corners {
		if c.CeilingKnown && (!known || c.CeilingY < low) {
			low, known = c.CeilingY, true
		}
	}
	if !known {
		return figure.Missing(upPath)
	}
	return figure.Fact(upPath, 0).Moving(low)
}
