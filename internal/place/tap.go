package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/space"
)

// Tap is a tap in its place.
type Tap struct {
	Name      string
	Doc       document.Tap
	Wall      string
	X, Y, Off figure.Figure // its center: of the hole of a deck tap on its deck, of the spout of a wall tap on its face
	OutletY   figure.Figure
	OutletOff figure.Figure // off the finished wall
	// Depth is, of a wall tap, from the plate of its body to the finished face.
	Depth   figure.Figure
	BuildUp figure.Figure // at a wall tap
	// Handle is its center, and Swings how far it reaches.
	HandleX, HandleY, HandleOff, Swings figure.Figure
}

func (p *placer) taps() {
	for _, d := range p.doc.Taps {
		t := Tap{Name: d.Name, Doc: d, Wall: p.doc.WallOfTap(d).Text}
		w, ok := p.out.Wall(t.Wall)
		t.X = figure.Missing(under(d.At, "across"))
		if ok {
			t.X = w.middle(d.Across, under(d.At, "across"))
		}
		if b, served := p.out.Basin(d.Serves.Text); served && !d.Across.Given && d.Across.At.Line == 0 && d.On.Text == b.Name {
			t.X = b.MidX // in the hole that the basin has for it
		}
		if d.Mounted == document.FromWall {
			p.wallTap(&t, w, ok)
		} else {
			p.deckTap(&t)
		}
		h := d.Handle
		t.HandleX = t.X.Add(factOr(h.Right, d.At, "handle > right", 0))
		t.HandleY = t.Y.Add(factOr(h.Over, d.At, "handle > over", 0))
		t.HandleOff = t.Off.Add(factOr(h.Off, d.At, "handle > off", 0))
		t.Swings = fact(h.Swings, d.At, "handle > swings")
		p.out.Taps = append(p.out.Taps, t)
		p.spout(w, ok, t)
	}
}

// wallTap: its spout fixes to the finished face, and its reach stays; or to its body, and what the build-up takes is lost.
func (p *placer) wallTap(t *Tap, w Wall, ok bool) {
	d := t.Doc
	t.Y = p.at(t.Wall, d.Up, under(d.At, "up"))
	t.Off = figure.Number(0)
	t.BuildUp = figure.Missing(under(d.At, "in"))
	if ok && t.X.Known() && t.Y.Known() {
		t.BuildUp = w.BuildUp(t.X.V, t.Y.V)
	}
	t.Depth = t.BuildUp.Add(fact(d.Body.Behind, d.At, "body > behind"))
	t.OutletY = t.Y.Sub(fact(d.Outlet.Drop, d.At, "outlet > drop"))
	t.OutletOff = fact(d.Reach, d.At, "reach")
	switch {
	case !d.FixesTo.Known:
		t.OutletOff = t.OutletOff.Add(figure.Missing(under(d.At, "fixes to")))
	case d.FixesTo.V == document.ToBody:
		t.OutletOff = t.OutletOff.Sub(t.Depth)
	}
}

// deckTap stands on a top, or on the basin's own rim.
func (p *placer) deckTap(t *Tap) {
	d := t.Doc
	t.Off = fact(d.Off, d.At, "off")
	t.Y = figure.Missing(under(d.At, "on"))
	if top, ok := p.out.Top(d.On.Text); ok {
		t.Y = top.Surface
	}
	if b, ok := p.out.Basin(d.On.Text); ok {
		t.Y = b.Rim
	}
	t.OutletY = t.Y.Add(fact(d.Outlet.Height, d.At, "outlet > height"))
	t.OutletOff = t.Off.Add(fact(d.Reach, d.At, "reach"))
}

// spout adds the envelope of a tap: from its base to its outlet, as wide as its plate, and the swing of its handle.
func (p *placer) spout(w Wall, ok bool, t Tap) {
	half := factOr(t.Doc.Plate, t.Doc.At, "plate", 0).Half()
	e := space.Envelope{Name: t.Name, Owner: t.Doc.At.Path, At: t.Doc.At, Kind: space.Tap}
	p.box(w, ok, e, [2]figure.Figure{t.X.Sub(half), t.X.Add(half)}, [2]figure.Figure{figure.Min(t.OutletY, t.Y.Sub(half)), figure.Max(t.OutletY, t.Y)}, [2]figure.Figure{t.Off, t.OutletOff})
	if t.Doc.Handle.Given {
		e.Name += ", handle"
		p.box(w, ok, e, [2]figure.Figure{t.HandleX.Sub(t.Swings), t.HandleX.Add(t.Swings)}, [2]figure.Figure{t.HandleY.Sub(t.Swings), t.HandleY.Add(t.Swings)}, [2]figure.Figure{t.HandleOff.Sub(half), t.HandleOff.Add(half)})
	}
}

// Tap returns the tap of that name.
func (pl Plan) Tap(name string) (Tap, bool) {
	for _, t := range pl.Taps {
		if t.Name == name {
			return t, true
		}
	}
	return Tap{}, false
}
