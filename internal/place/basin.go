package place

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Basin is a basin in its place.
type Basin struct {
	Name   string
	Doc    document.Basin
	Wall   string
	Top    string        // the top that it is on; "" on a wall
	X, Off figure.Figure // the center of its waste
	// MidX and MidOff are the middle of its outline.
	MidX, MidOff figure.Figure
	Wide, Deep   figure.Figure // of its outline
	Rim          figure.Figure // the height that water could rise to
	Edge         figure.Figure // thickness of its wall at the rim; what of it lies over a top is solid
	Bottom       figure.Figure // inside, at the waste
	Underside    figure.Figure // of the basin at its foot or, sunk in a top, of its bowl
	Surface      figure.Figure // of the top
	Recess       figure.Figure
	Outline      document.Outline
	OutlineKnown bool
}

func (p *placer) basins() {
	for _, d := range p.doc.Basins {
		b := Basin{Name: d.Name, Doc: d, Wall: p.doc.WallOfBasin(d).Text, Top: d.On.Text}
		b.Outline, b.OutlineKnown = d.Outline.V, d.Outline.Known
		w, ok := p.out.Wall(b.Wall)
		b.X, b.Off = figure.Missing(under(d.At, "across")), fact(d.Off, d.At, "off")
		if ok {
			b.X = w.middle(d.Across, under(d.At, "across"))
		}
		b.MidX = b.X.Add(factOr(d.Right, d.At, "right", 0))
		b.MidOff = b.Off.Add(factOr(d.Forward, d.At, "forward", 0))
		b.Wide, b.Deep = figure.Missing(under(d.At, "outline")), figure.Missing(under(d.At, "outline"))
		if d.Outline.Known {
			b.Wide, b.Deep = figure.Fact(under(d.At, "outline"), d.Outline.V.Across), figure.Fact(under(d.At, "outline"), d.Outline.V.Deep)
		}
		p.heights(&b)
		p.out.Basins = append(p.out.Basins, b)
		p.bowl(w, ok, b)
	}
}

// heights are the basin's rim and what lies under it. The rim of a basin under a top is the top itself.
func (p *placer) heights(b *Basin) {
	d := b.Doc
	t, onTop := p.out.Top(d.On.Text)
	b.Surface, b.Recess = figure.Missing(under(d.At, "on")), figure.Number(0)
	if onTop {
		b.Surface, b.Recess = t.Surface, t.RecessFor(d.Name)
	}
	depth := fact(d.Depth, d.At, "depth")
	thick := fact(d.Bottom, d.At, "bottom")
	b.Edge = fact(d.Rim, d.At, "rim")
	switch d.Kind {
	case document.Vessel:
		b.Underside = b.Surface.Sub(b.Recess)
		b.Rim = b.Underside.Add(fact(d.Height, d.At, "height"))
		b.Bottom = b.Rim.Sub(depth)
	case document.SemiRecessed, document.DropIn:
		b.Rim = b.Surface.Add(fact(d.Lip, d.At, "lip"))
		b.Bottom = b.Rim.Sub(depth)
		b.Underside = b.Bottom.Sub(thick)
	case document.Undermount:
		b.Rim = b.Surface
		b.Bottom = b.Surface.Sub(t.thickOr(onTop, d)).Sub(depth)
		b.Underside = b.Bottom.Sub(thick)
	default:
		b.Rim = p.at(b.Wall, d.Up, under(d.At, "up"))
		b.Bottom = b.Rim.Sub(depth)
		b.Underside = b.Bottom.Sub(thick)
	}
}

func (t Top) thickOr(known bool, d document.Basin) figure.Figure {
	if !known {
		return figure.Missing(under(d.At, "on"))
	}
	return t.Thick
}

// bowl adds the envelope of a basin.
func (p *placer) bowl(w Wall, ok bool, b Basin) {
	high, known := span(b.Underside, b.Rim)
	if !ok || !known || !b.MidX.Known() || !b.MidOff.Known() || !b.OutlineKnown {
		return
	}
	e := space.Envelope{Name: b.Name, Owner: b.Doc.At.Path, At: b.Doc.At, Kind: space.Fixture, Uses: facts(b.MidX, b.MidOff, b.Wide, b.Underside, b.Rim)}
	p.solid(w.Frame.Outline(e, Shape(b.Outline, geom.Point{X: b.MidX.V, Y: b.MidOff.V}), high))
}

// corners is how many corners stand for a curve. They lie outside it, so that what clears them clears the curve.
const corners = 48

// Shape is an outline about a middle: x along the wall, y off it.
func Shape(o document.Outline, middle geom.Point) []geom.Point {
	half := geom.Point{X: o.Across / 2, Y: o.Deep / 2}
	switch o.Kind {
	case document.RoundOutline, document.OvalOutline:
		return arcs(middle, half, half, corners, 1/math.Cos(math.Pi/corners))
	case document.PolygonOutline:
		var out []geom.Point
		for _, c := range o.Points {
			out = append(out, middle.Sub(half).Add(geom.Point{X: c.Right, Y: c.Off}))
		}
		return out
	}
	return arcs(middle, half, geom.Point{X: o.Radius, Y: o.Radius}, corners, 1/math.Cos(math.Pi/corners))
}

// Line is the line of an outline about a middle, so fine that its length is that of the curve to a thousandth of a percent.
func Line(o document.Outline, middle geom.Point) []geom.Point {
	const fine = 720
	half := geom.Point{X: o.Across / 2, Y: o.Deep / 2}
	switch o.Kind {
	case document.RoundOutline, document.OvalOutline:
		return arcs(middle, half, half, fine, 1)
	case document.PolygonOutline:
		return Shape(o, middle)
	}
	return arcs(middle, half, geom.Point{X: o.Radius, Y: o.Radius}, fine, 1)
}

// arcs is a rectangle about a middle with an arc of the given radii in each corner, an ellipse where these are all of it; each curve of so many
// corners, moved out by so much.
func arcs(middle, half, radius geom.Point, corners int, over float64) []geom.Point {
	at := middle.Sub(half)
	if radius == (geom.Point{}) {
		return []geom.Point{at, {X: at.X + 2*half.X, Y: at.Y}, middle.Add(half), {X: at.X, Y: at.Y + 2*half.Y}}
	}
	var out []geom.Point
	for i := range corners {
		angle := (float64(i) + 0.5) * 2 * math.Pi / float64(corners)
		c, s := math.Cos(angle), math.Sin(angle)
		center := geom.Point{X: middle.X + sign(c)*(half.X-radius.X), Y: middle.Y + sign(s)*(half.Y-radius.Y)}
		out = append(out, geom.Point{
			X: center.X + unit.FromFloat(float64(float64(radius.X)*c)*over),
			Y: center.Y + unit.FromFloat(float64(float64(radius.Y)*s)*over),
		})
	}
	return out
}

func sign(v float64) unit.Length {
	if v < 0 {
		return -1
	}
	return 1
}

// Basin returns the basin of that name.
func (pl Plan) Basin(name string) (Basin, bool) {
	for _, b := range pl.Basins {
		if b.Name == name {
			return b, true
		}
	}
	return Basin{}, false
}
