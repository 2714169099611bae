package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// WC is a WC in its place.
type WC struct {
	Name string
	Doc  document.WC
	Wall string
	X    figure.Figure // its center line along the wall
	// Off is, of a WC over a flange, from the finished wall to the center of its outlet.
	Off   figure.Figure
	Back  figure.Figure // from the finished wall to the back of the tank
	Front figure.Figure // from the finished wall to the front of the bowl
	Floor figure.Figure // the finished floor's height
	// FlangeOver is the flange's top over the finished floor.
	FlangeOver figure.Figure
	BuildUp    figure.Figure // of the wall behind it, at its outlet or carrier
	Seat       figure.Figure // over the finished floor
}

func (p *placer) wcs() {
	for _, d := range p.doc.WCs {
		c := WC{Name: d.Name, Doc: d, Wall: d.Against.Text, Floor: p.floor(), Off: figure.Missing(under(d.At, "outlet")), X: figure.Missing(under(d.At, "outlet")), BuildUp: figure.Missing(under(d.At, "against"))}
		w, ok := p.out.Wall(d.Against.Text)
		s, there := p.out.Stub(d.Outlet.Text)
		switch {
		case !ok || !there:
		case s.InFloor:
			c.X, c.Off = p.overFlange(w, s)
			c.BuildUp = w.Board().Add(w.Finish())
		default:
			c.X = s.X
			c.BuildUp = s.BuildUp
		}
		p.backAndFront(&c)
		c.FlangeOver = fact(d.FlangeTop, d.At, "flange top").Sub(p.FloorBuildUp())
		c.Seat = fact(d.Seat, d.At, "seat")
		if d.Kind == document.WallHungWC {
			c.Seat = c.Seat.Add(fact(d.Carrier.BoltsUp, d.At, "carrier > bolts up"))
		}
		p.out.WCs = append(p.out.WCs, c)
		p.pan(w, ok, c)
	}
}

// overFlange is where a flange in the floor is on the wall behind the WC. Its distances were taped to what the survey's tape touched.
func (p *placer) overFlange(w Wall, s Stub) (x, off figure.Figure) {
	xv, zv := w.Frame.Of(s.At)
	touched := p.doc.Survey.Touches.Or(document.Stud)
	x, off = figure.Number(0), figure.Missing(under(s.Doc.At, "off"))
	for _, a := range s.Doc.FloorAt {
		path := under(s.Doc.At, "off > "+a.Wall)
		n, ok := p.out.Wall(a.Wall)
		switch {
		case !a.Value.Known || !ok:
			return figure.Missing(path), figure.Missing(path)
		case n.Name == w.Name:
			off = figure.Fact(path, 0).Sub(beyond(n, touched)).Moving(zv)
		default:
			x = w.side(n, path, touched).Moving(xv)
		}
	}
	return x, off
}

// beyond is what lies on the surface that the tape touched.
func beyond(w Wall, touched document.Surface) figure.Figure {
	switch touched {
	case document.Board:
		return w.Finish()
	case document.TileFace:
		return figure.Number(0)
	}
	return w.Board().Add(w.Finish())
}

// side is how a place moves along the wall that counts square off another one.
func (w Wall) side(n Wall, path string, touched document.Surface) figure.Figure {
	if n.Face.RightCorner == w.Face.LeftCorner {
		return figure.Fact(path, 0).Add(w.leftCorner(touched))
	}
	return figure.Fact(path, 0).Neg().Add(w.rightCorner(touched))
}

// backAndFront: over a flange the pan stands where the flange is, with the gap that its sheet leaves at its rough-in; a pan that is hung or has
// its outlet in the wall stands against the wall.
func (p *placer) backAndFront(c *WC) {
	d := c.Doc
	if d.Kind == document.FloorWC {
		c.Back = c.Off.Sub(fact(d.RoughIn, d.At, "rough-in").Sub(fact(d.Gap, d.At, "tank gap")))
	} else {
		c.Back = factOr(d.Gap, d.At, "tank gap", 0)
	}
	c.Front = c.Back.Add(fact(d.Length, d.At, "length"))
}

// pan adds the envelopes of bowl and tank.
func (p *placer) pan(w Wall, ok bool, c WC) {
	d := c.Doc
	half := fact(d.Width, d.At, "width").Half()
	e := space.Envelope{Name: c.Name, Owner: d.At.Path, At: d.At, Kind: space.Fixture}
	bottom := c.Floor
	if d.Kind == document.WallHungWC {
		bottom = c.Floor.Plus(wallHungClear)
	}
	from := c.Back
	if d.TankFrom.Known && d.TankDepth.Known && !d.Skirted.Or(false) {
		from = c.Back.Add(fact(d.TankDepth, d.At, "tank depth").Half())
	}
	p.box(w, ok, e, [2]figure.Figure{c.X.Sub(half), c.X.Add(half)}, [2]figure.Figure{bottom, c.Floor.Add(c.Seat)}, [2]figure.Figure{from, c.Front})
	tank := fact(d.TankWidth, d.At, "tank width").Half()
	e.Name += ", tank"
	p.box(w, ok, e, [2]figure.Figure{c.X.Sub(tank), c.X.Add(tank)}, [2]figure.Figure{c.Floor.Add(fact(d.TankFrom, d.At, "tank from")), c.Floor.Add(fact(d.TankTo, d.At, "tank to"))},
		[2]figure.Figure{c.Back, c.Back.Add(fact(d.TankDepth, d.At, "tank depth"))})
}

// wallHungClear is what is open under a wall-hung WC: its envelope starts there. Common practice 2 to 3 in and more; less keeps the check safe.
const wallHungClear = 2 * unit.Inch

// WC returns the WC of that name.
func (pl Plan) WC(name string) (WC, bool) {
	for _, c := range pl.WCs {
		if c.Name == name {
			return c, true
		}
	}
	return WC{}, false
}
