package sheet

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/figure"
	"dryfit/internal/fit"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// sideSection shows a basin cut through its waste, with all that meets there: top, tap, water, trap, pipe.
func (b *book) sideSection(basin string) {
	d, missing, ok := sideOf(b.p, basin)
	if !ok {
		return
	}
	f := b.fitDrawing(d, leaf{title: capital(basin), detail: "Section through its waste", caution: pipeCaution}, fitBelow)
	f.paragraph("Seen from the left, the finished wall at 0. Right: above the finished floor. Left: from the level line, below it with a minus. Below: off the finished wall. "+
		"Told points are to scale; the curve of the basin, the tap and the pipes between them are drawn simply.", parts.Small, false)
	f.key(d.sideKey())
	f.notKnown(missing)
}

// SideOnScreen draws a basin cut through its waste. False where too little is known of it.
func SideOnScreen(p plan.Plan, basin string, ids func(string) string) (Screen, bool) {
	d, _, ok := sideOf(p, basin)
	if !ok {
		return Screen{}, false
	}
	d.ids = ids
	d.ups, d.along = d.ups[len(d.ups)-1:], nil
	return d.screen(capital(basin) + ", section from the side"), true
}

func (d *fitDrawing) sideKey() []parts.Entry {
	return []parts.Entry{
		{Pen: draw.Line(draw.Narrow), Fill: draw.Fill{Hatch: draw.Diagonal}, Text: "cut: basin, board"},
		{Pen: draw.Line(draw.Narrow), Fill: draw.Fill{Hatch: draw.Counter}, Text: "cut: top, cabinet, tile with its bed"},
		{Pen: waterPen, Fill: draw.Fill{On: true, Color: draw.SkyBlue.Tint(40)}, Text: "where the middle of the water may run"},
		{Pen: hiddenPen, Line: true, Text: "beside the cut; drawers"},
	}
}

var waterPen = draw.Pen{Width: draw.Narrow, Color: draw.Blue, Dash: draw.Dashed}

// basinCut is what a section through a basin shows.
type basinCut struct {
	b    place.Basin
	w    place.Wall
	back unit.Length // thickness of what lies on the studs
}

const (
	studStrip  = 2 * unit.Inch // of the studs, behind the wall
	sideMargin = 4 * unit.Inch // over and before the things
)

func sideOf(p plan.Plan, basin string) (*fitDrawing, []string, bool) {
	b, ok := p.Fit.Places.Basin(basin)
	w, onWall := p.Fit.Places.Wall(b.Wall)
	heights, missing := report.SideHeights(p, basin)
	offs, more := report.SideOffs(p, basin)
	if !ok || !onWall || len(heights) == 0 || len(offs) == 0 {
		return nil, nil, false
	}
	s := &basinCut{b: b, w: w, back: w.Board().Add(w.Finish()).V}
	low := heights[0].At
	if p.Room.FinishedKnown {
		low = p.Room.FinishedFloor
	}
	d := &fitDrawing{p: p}
	d.area = geom.Rect{Min: geom.Point{X: -s.back - studStrip, Y: low - 2*unit.Inch}, Max: geom.Point{X: offs[len(offs)-1].At + sideMargin, Y: heights[len(heights)-1].At + sideMargin}}
	for _, t := range s.taps(p) {
		if t.Doc.Mounted == document.FromWall && t.Y.Known() {
			d.area.Max.Y = max(d.area.Max.Y, t.Y.V+sideMargin)
		}
	}
	d.area = d.area.With(geom.Point{X: 0, Y: 0})
	d.of = d.area.Min
	d.ups = heightRuns(p, heights)
	d.along = []alongRun{{origin: "0 finished wall", marks: offs}}
	d.names = s.names(p)
	d.paint = func(d *fitDrawing) []draw.Item { return s.items(d) }
	return d, append(missing, more...), true
}

func (s *basinCut) taps(p plan.Plan) []place.Tap {
	var out []place.Tap
	for _, t := range p.Fit.Places.Taps {
		if t.Doc.Serves.Text == s.b.Name {
			out = append(out, t)
		}
	}
	return out
}

func known(list ...figure.Figure) bool {
	for _, f := range list {
		if !f.Known() {
			return false
		}
	}
	return true
}

func rect(x0, y0, x1, y1 unit.Length) geom.Rect {
	return geom.Rect{Min: geom.Point{X: min(x0, x1), Y: min(y0, y1)}, Max: geom.Point{X: max(x0, x1), Y: max(y0, y1)}}
}

// names are the words of the section, each on a place of what it names.
func (s *basinCut) names(p plan.Plan) []named {
	var out []named
	at := func(x, y figure.Figure, word string) {
		if known(x, y) {
			out = append(out, named{rect(x.V, y.V, x.V+1, y.V+1), word})
		}
	}
	b := s.b
	at(b.MidOff.Add(b.Deep.Half()).Sub(b.Edge), b.Rim.Add(b.Bottom).Half(), b.Name)
	if t, ok := p.Fit.Places.Top(b.Top); ok {
		at(t.Depth.Plus(-unit.Inch), t.Surface.Add(t.Underside).Half(), t.Name)
		if c, ok := p.Fit.Places.Cabinet(t.Doc.On.V); ok {
			out = appendCabinet(out, c)
		}
	}
	for _, t := range s.taps(p) {
		at(t.OutletOff.Add(t.Off).Half(), figure.Max(t.OutletY, t.Y), t.Name)
	}
	for _, w := range p.Fit.Places.Wastes {
		if w.Basin == b.Name {
			at(b.Off, w.TailY, w.Name)
		}
	}
	return out
}

func appendCabinet(out []named, c place.Cabinet) []named {
	if !known(c.Depth, c.Bottom, c.Top) {
		return out
	}
	return append(out, named{rect(c.Depth.V*2/3, c.Bottom.V, c.Depth.V, c.Bottom.V+(c.Top.V-c.Bottom.V)/4), c.Name})
}

func (s *basinCut) items(d *fitDrawing) []draw.Item {
	out := s.wall(d)
	out = append(out, s.hungBeside(d)...)
	out = append(out, s.carcasses(d)...)
	out = append(out, s.built(d)...)
	out = append(out, s.bowl(d)...)
	for _, w := range d.p.Fit.Places.Wastes {
		if w.Basin == s.b.Name {
			out = append(out, s.drain(d, w)...)
		}
	}
	for _, j := range d.p.Fit.Jets {
		if j.Basin == s.b.Name {
			out = append(out, jetBand(d, j))
		}
	}
	for _, t := range s.taps(d.p) {
		out = append(out, s.tap(d, t)...)
	}
	out = append(out, d.across("level line", 0, levelPen))
	if d.p.Room.FinishedKnown {
		out = append(out, d.across("finished floor", d.p.Room.FinishedFloor, floorPen))
	}
	return append(out, s.handGap(d)...)
}

// handGap is the dimension from the rim up to the outlet, before the basin. The list of checks has it too.
func (s *basinCut) handGap(d *fitDrawing) []draw.Item {
	front := s.b.MidOff.Add(s.b.Deep.Half())
	for _, t := range s.taps(d.p) {
		k, ok := d.p.Fit.Find(t.Doc.At.Path + " > hand gap")
		if !ok || k.State == fit.NotChecked || !known(front, s.b.Rim, t.OutletY) {
			continue
		}
		dim := parts.Dimension{Vertical: true, From: d.y(s.b.Rim.V), To: d.y(t.OutletY.V), Feature: d.x(front.V), Line: d.x(front.V) + 5*draw.MM, Text: k.Value.Say(d.p.Style)}
		if items := dim.Items(); d.fits(items) {
			return []draw.Item{draw.Group{Class: "run", Items: items}}
		}
	}
	return nil
}

// wall is what lies on the studs, cut.
func (s *basinCut) wall(d *fitDrawing) []draw.Item {
	low, high := d.area.Min.Y, d.area.Max.Y
	finish := s.w.Finish().V
	pen := draw.Line(draw.Narrow)
	studs := draw.Rect(d.box(rect(-s.back-studStrip, low, -s.back, high)), draw.Line(draw.Fine), draw.Fill{Hatch: draw.Dots})
	board := draw.Rect(d.box(rect(-s.back, low, -finish, high)), pen, draw.Fill{On: true, Color: draw.White, Hatch: draw.Diagonal})
	tile := draw.Rect(d.box(rect(-finish, low, 0, high)), pen, draw.Fill{On: true, Color: draw.White, Hatch: draw.Counter})
	face := draw.Stroke(draw.Line(draw.Wide), d.point(geom.Point{Y: low}), d.point(geom.Point{Y: high}))
	studs.Class, board.Class, tile.Class = "studs", "board", "tile"
	return []draw.Item{studs, board, tile, face}
}

// hungBeside are the mirror and whatever else serves the basin, and stop valves, beside the cut.
func (s *basinCut) hungBeside(d *fitDrawing) []draw.Item {
	var out []draw.Item
	serves := map[string]bool{}
	for _, f := range d.p.Fit.Places.Fittings {
		serves[f.Doc.At.Path] = f.Doc.Serves.Text == s.b.Name
	}
	for _, v := range d.p.Fit.Places.Stops {
		for _, t := range s.taps(d.p) {
			serves[v.Doc.At.Path] = serves[v.Doc.At.Path] || v.Serves == t.Name
		}
	}
	for _, e := range d.p.Fit.Solids {
		if !serves[e.Owner] || e.Wall != s.w.Name || e.Kind == space.Screw || e.Y.Lo > d.area.Max.Y {
			continue
		}
		r := draw.Rect(d.box(rect(e.Z.Lo, e.Y.Lo, e.Z.Hi, min(e.Y.Hi, d.area.Max.Y))), hiddenPen, draw.Fill{})
		out = append(out, d.thing(e.Owner, "hidden", e.Name, r))
	}
	return out
}

// built is the cabinet, outlined, and the top, cut.
func (s *basinCut) built(d *fitDrawing) []draw.Item {
	t, ok := d.p.Fit.Places.Top(s.b.Top)
	if !ok {
		return nil
	}
	var out []draw.Item
	if c, ok := d.p.Fit.Places.Cabinet(t.Doc.On.V); ok && known(c.Depth, c.Bottom, c.Top) {
		out = append(out, d.thing(c.Doc.At.Path, "solid", c.Name, draw.Rect(d.box(rect(0, c.Bottom.V, c.Depth.V, c.Top.V)), draw.Line(draw.Normal), draw.Fill{})))
	}
	if !known(t.Back, t.Depth, t.Underside, t.Surface) {
		return out
	}
	var rings [][]draw.XY
	for _, r := range s.slab(t) {
		rings = append(rings, d.ring(r))
	}
	return append(out, d.thing(t.Doc.At.Path, "solid", t.Name,
		draw.Path{Rings: rings, Closed: true, Pen: draw.Line(draw.Normal), Fill: draw.Fill{On: true, Color: draw.White, Hatch: draw.Counter}}))
}

func (d *fitDrawing) ring(points []geom.Point) []draw.XY {
	var out []draw.XY
	for _, p := range points {
		out = append(out, d.point(p))
	}
	return out
}

// slab is a top cut through the basin: with its recess under a basin that stands on it, open where the basin goes through.
func (s *basinCut) slab(t place.Top) [][]geom.Point {
	back, front, low, high := t.Back.V, t.Depth.V, t.Underside.V, t.Surface.V
	corners := func(r geom.Rect) []geom.Point {
		return []geom.Point{r.Min, {X: r.Max.X, Y: r.Min.Y}, r.Max, {X: r.Min.X, Y: r.Max.Y}}
	}
	whole := [][]geom.Point{corners(rect(back, low, front, high))}
	b := s.b
	if !known(b.MidOff, b.Deep) {
		return whole
	}
	if b.Doc.Kind == document.Vessel {
		half := s.foot() / 2
		if !b.Recess.Known() || b.Recess.V == 0 {
			return whole
		}
		l, r, deep := b.MidOff.V-half, b.MidOff.V+half, high-b.Recess.V
		return [][]geom.Point{{{X: back, Y: low}, {X: front, Y: low}, {X: front, Y: high}, {X: r, Y: high}, {X: r, Y: deep}, {X: l, Y: deep}, {X: l, Y: high}, {X: back, Y: high}}}
	}
	half := (b.Deep.V/2 - b.Edge.V).Abs()
	var out [][]geom.Point
	if l := b.MidOff.V - half; l > back {
		out = append(out, corners(rect(back, low, l, high)))
	}
	if r := b.MidOff.V + half; r < front {
		out = append(out, corners(rect(r, low, front, high)))
	}
	return out
}

// foot is how deep the foot of a basin is: as told, or drawn as six tenths of its outline.
func (s *basinCut) foot() unit.Length {
	if s.b.Doc.Foot.Known {
		return s.b.Doc.Foot.V.Deep
	}
	return s.b.Deep.V.MulDiv(6, 10)
}

// bowl is the basin, cut; its outline alone where its inside is not told.
func (s *basinCut) bowl(d *fitDrawing) []draw.Item {
	b := s.b
	if !known(b.MidOff, b.Deep, b.Rim, b.Underside) {
		return nil
	}
	half, foot := b.Deep.V/2, s.foot()/2
	mid := b.MidOff.V
	outside := []geom.Point{{X: mid - half, Y: b.Rim.V}, {X: mid - foot, Y: b.Underside.V}, {X: mid + foot, Y: b.Underside.V}, {X: mid + half, Y: b.Rim.V}}
	fill := draw.Fill{On: true, Color: draw.White}
	if known(b.Edge, b.Bottom) && b.Bottom.V > b.Underside.V {
		in, flat := half-b.Edge.V, foot*8/10
		outside = append(outside, geom.Point{X: mid + in, Y: b.Rim.V}, geom.Point{X: mid + flat, Y: b.Bottom.V}, geom.Point{X: mid - flat, Y: b.Bottom.V}, geom.Point{X: mid - in, Y: b.Rim.V})
		fill.Hatch = draw.Diagonal
	}
	return []draw.Item{d.thing(b.Doc.At.Path, "solid", b.Name, draw.Path{Rings: [][]draw.XY{d.ring(outside)}, Closed: true, Pen: draw.Line(draw.Normal), Fill: fill})}
}

// pipe draws a pipe of a width along points: a wide black line with a white one in it.
func (d *fitDrawing) pipe(wide unit.Length, points ...geom.Point) []draw.Item {
	at := d.ring(points)
	w := max(d.um(wide), 3*draw.Normal)
	outer, inner := draw.Stroke(draw.Line(w), at...), draw.Stroke(draw.Pen{Width: w - 2*draw.Narrow, Color: draw.White}, at...)
	return []draw.Item{outer, inner}
}

// spoutWide is how wide a tap is drawn, where its plate says nothing of its spout.
const spoutWide = 3 * unit.Inch / 4

func (s *basinCut) tap(d *fitDrawing, t place.Tap) []draw.Item {
	if !known(t.Off, t.Y, t.OutletOff, t.OutletY) {
		return nil
	}
	from, out := geom.Point{X: t.Off.V, Y: t.Y.V}, geom.Point{X: t.OutletOff.V, Y: t.OutletY.V}
	var items []draw.Item
	if t.Doc.Mounted == document.FromWall {
		bend := geom.Point{X: out.X, Y: from.Y}
		items = d.pipe(spoutWide, from, bend, geom.Point{X: out.X, Y: min(out.Y, from.Y-spoutWide/2)})
	} else {
		high := max(out.Y+spoutWide, from.Y+spoutWide)
		items = d.pipe(spoutWide, from, geom.Point{X: from.X, Y: high}, geom.Point{X: out.X, Y: high}, out)
	}
	c := d.point(out)
	items = append(items, draw.Circle{C: c, R: 500, Pen: draw.Line(draw.Normal), Fill: draw.Fill{On: true, Color: draw.Black}})
	return []draw.Item{d.thing(t.Doc.At.Path, "tap", t.Name, items...)}
}

// drain is tailpiece, trap, arm and the pipe in the wall.
func (s *basinCut) drain(d *fitDrawing, w place.Waste) []draw.Item {
	pipe, ok := d.p.Fit.Places.Stub(w.Stub)
	b := s.b
	if !ok || !known(b.Off, b.Bottom, w.TailY) {
		return nil
	}
	size := w.Doc.Trap.Size.Or(pipe.Doc.Diameter.Or(5 * unit.Inch / 4))
	in := geom.Point{X: b.Off.V, Y: b.Bottom.V}
	tail := geom.Point{X: b.Off.V, Y: w.TailY.V}
	items := d.pipe(size, in, tail)
	if pipe.Y.Known() {
		end := geom.Point{X: -s.back - studStrip, Y: pipe.Y.V}
		items = append(d.pipe(size, s.trapWay(w, tail, pipe.Y.V, end)...), items...)
	}
	return []draw.Item{d.thing(w.Doc.At.Path, "drain", w.Name, items...)}
}

// trapWay is the middle of the pipe from the end of the tailpiece to the wall. A trap of which nothing is told is drawn as a bend.
func (s *basinCut) trapWay(w place.Waste, tail geom.Point, y unit.Length, end geom.Point) []geom.Point {
	t := w.Doc.Trap
	if !t.Weir.Known || !t.Below.Known {
		return []geom.Point{tail, {X: tail.X, Y: y}, {X: 0, Y: y}, end}
	}
	low := y - t.Below.V + t.Size.Or(0)/2
	weir := y
	if w.Drop.Known() {
		weir = tail.Y - w.Drop.V
	}
	if t.Kind.Known && t.Kind.V == document.BottleTrap {
		return []geom.Point{tail, {X: tail.X, Y: low}, {X: tail.X, Y: weir}, {X: 0, Y: y}, end}
	}
	return []geom.Point{tail, {X: tail.X, Y: low}, {X: tail.X - t.Weir.V, Y: low}, {X: tail.X - t.Weir.V, Y: weir}, {X: 0, Y: y}, end}
}

// jetSteps is how many straight strokes stand for the way of the water.
const jetSteps = 12

// jetBand is between the nearest and the farthest way of the middle of the water: each is the parabola that leaves the outlet at its angle and
// lands where the plan says.
func jetBand(d *fitDrawing, j fit.Jet) draw.Item {
	near, far := jetWay(j, j.Nearest), jetWay(j, j.Farthest)
	ring := near
	for i := len(far) - 1; i >= 0; i-- {
		ring = append(ring, far[i])
	}
	path := draw.Path{Rings: [][]draw.XY{d.ring(ring)}, Closed: true, Pen: waterPen, Fill: draw.Fill{On: true, Color: draw.SkyBlue.Tint(40)}}
	t, _ := d.p.Fit.Places.Tap(j.Tap)
	return d.thing(t.Doc.At.Path+" > outlet", "water", "water of "+j.Tap, path)
}

// jetWay: level the water goes at one speed, so at the share s of the time it is at s of its throw; of its fall H it has done a·s + (H-a)·s²,
// where a = throw/tan(angle off plumb) is what it would have fallen straight along its first direction.
func jetWay(j fit.Jet, lands unit.Length) []geom.Point {
	throw, fall := float64(lands-j.OutletOff), float64(j.OutletY-j.Bottom)
	a := fall
	if tan := math.Tan(j.Angle.Radians()); tan != 0 {
		a = min(throw/tan, fall)
	}
	var out []geom.Point
	for i := range jetSteps + 1 {
		s := float64(i) / jetSteps
		out = append(out, geom.Point{X: j.OutletOff + unit.FromFloat(throw*s), Y: j.OutletY - unit.FromFloat(float64(a*s)+float64((fall-a)*s*s))})
	}
	return out
}
