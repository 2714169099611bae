package sheet

import (
	"cmp"
	"slices"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/space"
)

// frontElevation shows a wall with all that stands and hangs before it, with heights.
func (b *book) frontElevation(wall string) {
	d, missing, ok := frontOf(b.p, wall)
	if !ok {
		return
	}
	f := b.fitDrawing(d, leaf{title: capital(wall), detail: "What stands before it, with heights", caution: pipeCaution}, fitBelow)
	f.paragraph("Facing the wall, on finished faces. Right: above the finished floor. Left: from the level line, below it with a minus. Below: along the wall from the finished face at its left end. "+
		"Dashed: behind what stands before it.", parts.Small, false)
	f.notKnown(missing)
}

// FrontOnScreen draws a wall with what stands and hangs before it. False where nothing does.
func FrontOnScreen(p plan.Plan, wall string, ids func(string) string) (Screen, bool) {
	d, _, ok := frontOf(p, wall)
	if !ok {
		return Screen{}, false
	}
	d.ids = ids
	d.ups, d.along = d.ups[len(d.ups)-1:], nil
	return d.screen(capital(wall) + ", what stands before it, with heights"), true
}

func frontOf(p plan.Plan, wall string) (*fitDrawing, []string, bool) {
	w, ok := p.Fit.Places.Wall(wall)
	heights, missing := report.HeightsOn(p, wall)
	across, more := report.AcrossOn(p, wall)
	shown := before(p, wall)
	if !ok || len(w.Face.Board) == 0 || len(shown) == 0 || len(heights)+len(across) == 0 {
		return nil, nil, false // of pipes alone the rough-in card tells all
	}
	left, right := report.FinishedEnds(p, w)
	for i := range across {
		across[i].At += left
	}
	d := &fitDrawing{p: p, area: w.Face.Board.Bounds()}
	d.area.Min.X, d.area.Max.X = left, right
	if p.Room.FinishedKnown {
		d.area.Min.Y = p.Room.FinishedFloor
	}
	d.area = d.area.With(geom.Point{X: left, Y: 0})
	d.of = d.area.Min
	d.ups = heightRuns(p, heights)
	d.along = []alongRun{{from: left, origin: "0 finished wall at " + w.Face.LeftCorner, marks: across}}
	for _, o := range w.Face.Openings {
		if o.Kind != "box" {
			d.names = append(d.names, named{o.Rect, o.Name})
		}
	}
	for _, e := range shown {
		if _, is := nameable[e.Kind]; is {
			d.names = append(d.names, named{e.Rect(), e.Name})
		}
	}
	d.paint = func(d *fitDrawing) []draw.Item { return d.frontItems(wall, shown) }
	return d, append(missing, more...), true
}

// heightRuns are heights from the level line, and with their names above the finished floor, or from the level line where that is not known.
func heightRuns(p plan.Plan, heights []report.Mark) []upRun {
	if !p.Room.FinishedKnown {
		return []upRun{{right: true, words: true, origin: "0 level line", marks: heights}}
	}
	return []upRun{{origin: "0 level line", marks: heights}, {right: true, words: true, from: p.Room.FinishedFloor, origin: "0 finished floor", marks: heights}}
}

// nameable are the kinds that bear their name in an elevation; seen are all that are drawn, dashed what is hidden as a rule.
var (
	nameable = map[space.Kind]bool{space.Carcass: true, space.Top: true, space.Fixture: true, space.Tap: true, space.Fitting: true}
	seen     = map[space.Kind]bool{space.Carcass: true, space.Top: true, space.Fixture: true, space.Tap: true, space.Fitting: true, space.Trap: true, space.Stop: true}
)

// before are the envelopes before a wall, those nearest to it first.
func before(p plan.Plan, wall string) []space.Envelope {
	var out []space.Envelope
	for _, e := range p.Fit.Solids {
		if e.Wall == wall && seen[e.Kind] {
			out = append(out, e)
		}
	}
	slices.SortStableFunc(out, func(a, b space.Envelope) int { return cmp.Compare(a.Z.Hi, b.Z.Hi) })
	return out
}

func (d *fitDrawing) frontItems(wall string, shown []space.Envelope) []draw.Item {
	w, _ := d.p.Fit.Places.Wall(wall)
	out := []draw.Item{draw.Path{Class: "board", Rings: d.rings(outer(w.Face.Board)), Closed: true, Pen: draw.Line(draw.Heavy)}}
	for _, o := range w.Face.Openings {
		if o.Kind != "box" {
			out = append(out, crossed(d.box(o.Rect))...)
		}
	}
	out = append(out, d.across("level line", 0, levelPen))
	if d.p.Room.FinishedKnown {
		out = append(out, d.across("finished floor", d.p.Room.FinishedFloor, floorPen))
	}
	for _, b := range d.p.Fit.Places.Boxes {
		if b.Wall == wall && b.Placed {
			r := draw.Rect(d.box(b.Rect), draw.Line(draw.Normal), draw.Fill{})
			out = append(out, d.thing(b.Doc.At.Path, "box", b.Name, r))
		}
	}
	var hidden []draw.Item
	for _, e := range shown {
		if e.Kind == space.Trap || e.Kind == space.Stop {
			hidden = append(hidden, d.thing(e.Owner, "hidden", e.Name, draw.Rect(d.box(e.Rect()), hiddenPen, draw.Fill{})))
			continue
		}
		fill := draw.Fill{On: true, Color: draw.White}
		if e.Kind == space.Fixture {
			fill.Color = draw.Pale
		}
		out = append(out, d.thing(e.Owner, "solid", e.Name, draw.Rect(d.box(e.Rect()), draw.Line(draw.Normal), fill)))
	}
	out = append(out, hidden...)
	for _, s := range d.p.Fit.Places.Stubs {
		if s.Wall == wall && s.X.Known() && s.Y.Known() {
			c := d.point(geom.Point{X: s.X.V, Y: s.Y.V})
			r := max(d.um(s.Doc.Diameter.Or(0))/2, 500)
			out = append(out, d.thing(s.Doc.At.Path, "pipe", s.Name, draw.Circle{C: c, R: r, Pen: hiddenPen}))
		}
	}
	return out
}

func sortMarks(all []report.Mark) {
	slices.SortStableFunc(all, func(a, b report.Mark) int { return cmp.Compare(a.At, b.At) })
}
