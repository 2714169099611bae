package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/space"
)

// Fitting is a fitting in its place. One in the ceiling, or without a place, has figures that miss it.
type Fitting struct {
	Name                     string
	Doc                      document.Fitting
	Wall                     string
	Left, Right, Bottom, Top figure.Figure
	X, Y                     figure.Figure // its middle
	BuildUp                  figure.Figure
	Screws                   []geom.Point // on the face; nil where they are not known
	ScrewsKnown              bool
	ScrewFacts               []string
}

func (p *placer) fittings() {
	for _, d := range p.doc.Fittings {
		f := Fitting{Name: d.Name, Doc: d, BuildUp: figure.Missing(under(d.At, "in"))}
		w, ok := p.out.Wall(d.In.Text)
		f.Wall = w.Name
		width, height := fact(d.Width, d.At, "width"), fact(d.Height, d.At, "height")
		point := !d.Width.Known && !d.Width.Unknown // told by its middle alone: a bar by its posts
		if point {
			width = factOr(d.Posts, d.At, "posts", 0).Add(factOr(d.Rose, d.At, "rose", 0))
		}
		if !d.Height.Known && !d.Height.Unknown {
			height = factOr(d.Bar, d.At, "bar", 0)
		}
		missing := figure.Missing(under(d.At, "across"))
		f.Left, f.Right, f.X = missing, missing, missing
		if ok {
			f.Left, f.Right = w.across(d.Across, under(d.At, "across"), width)
			f.X = mean(f.Left, f.Right)
		}
		f.Bottom, f.Top = p.up(w.Name, d.Up, under(d.At, "up"), height)
		f.Y = mean(f.Bottom, f.Top)
		if ok && f.X.Known() && f.Y.Known() {
			f.BuildUp = w.BuildUp(f.X.V, f.Y.V)
			p.screwsOf(&f)
		}
		p.out.Fittings = append(p.out.Fittings, f)
		p.box(w, ok, space.Envelope{Name: d.Name, Owner: d.At.Path, At: d.At, Kind: space.Fitting}, [2]figure.Figure{f.Left, f.Right}, [2]figure.Figure{f.Bottom, f.Top}, [2]figure.Figure{figure.Number(0), factOr(d.Depth, d.At, "depth", 0)})
	}
}

// screwsOf are told one by one, or stand in the middle of each fixing.
func (p *placer) screwsOf(f *Fitting) {
	d := f.Doc
	middle := geom.Point{X: f.X.V, Y: f.Y.V}
	f.ScrewFacts = facts(f.X, f.Y)
	switch {
	case d.Screws.Known:
		f.ScrewFacts = append(f.ScrewFacts, under(d.At, "screws"))
		for _, s := range d.Screws.V {
			f.Screws = append(f.Screws, middle.Add(geom.Point{X: s.Right, Y: s.Over}))
		}
	case d.Screws.Unknown || d.Posts.Unknown:
		return
	case d.Posts.Known:
		f.ScrewFacts = append(f.ScrewFacts, under(d.At, "posts"))
		half := d.Posts.V / 2
		f.Screws = []geom.Point{{X: middle.X - half, Y: middle.Y}, {X: middle.X + half, Y: middle.Y}}
	default:
		f.Screws = []geom.Point{middle}
	}
	f.ScrewsKnown = true
	for i, s := range f.Screws {
		e := space.Envelope{Name: d.Name + ", screw " + string(rune('1'+i%9)), Owner: d.At.Path, At: d.At, Kind: space.Screw, Wall: f.Wall, Round: true, Uses: f.ScrewFacts,
			X: space.Span{Lo: s.X, Hi: s.X}, Y: space.Span{Lo: s.Y, Hi: s.Y}, High: space.Span{Lo: s.Y, Hi: s.Y}}
		e.Z = space.Span{Lo: -d.Into.V, Hi: 0}
		e.Holds = d.Kind == document.GrabBar
		p.solid(e)
	}
}

// Box is an electrical box, a valve plate or a panel in its place.
type Box struct {
	Name    string
	Doc     document.Box
	Wall    string
	Rect    geom.Rect // on its face; valid if Placed
	Placed  bool
	X, Y    figure.Figure // its middle
	BuildUp figure.Figure
	Back    figure.Figure // its front edge behind the finished face
	Gap     figure.Figure
}

func (p *placer) boxes() {
	for _, d := range p.doc.Boxes {
		b := Box{Name: d.Name, Doc: d, BuildUp: figure.Missing(under(d.At, "in")), X: figure.Missing(under(d.At, "across")), Y: figure.Missing(under(d.At, "up"))}
		w, ok := p.out.Wall(d.In.Text)
		b.Gap = fact(d.Gap, d.At, "gap")
		if ok {
			b.Wall = w.Name
			lo, hi := w.across(d.Across, under(d.At, "across"), fact(d.Width, d.At, "width"))
			bottom, top := p.up(w.Name, d.Up, under(d.At, "up"), fact(d.Height, d.At, "height"))
			b.X, b.Y = mean(lo, hi), mean(bottom, top)
			if b.X.Known() && b.Y.Known() {
				b.Placed = true
				b.Rect = geom.Rect{Min: geom.Point{X: lo.V, Y: bottom.V}, Max: geom.Point{X: hi.V, Y: top.V}}
				b.BuildUp = w.BuildUp(b.X.V, b.Y.V)
			}
			b.silentGap(w)
		}
		b.Back = b.BuildUp.Sub(fact(d.Out, d.At, "stands out"))
		p.out.Boxes = append(p.out.Boxes, b)
	}
}

// silentGap: the joint that tile keeps from the box.
func (b *Box) silentGap(w Wall) {
	if b.Doc.Gap.Known || b.Doc.Gap.Unknown || !b.Placed || !w.Tiled(b.X.V, b.Y.V) {
		return
	}
	for _, e := range w.Face.Edges {
		if e.Name == b.Name+", left" {
			b.Gap = figure.Number(e.Gap).Using(under(b.Doc.At, "gap"))
		}
	}
}

// Box returns the box of that name.
func (pl Plan) Box(name string) (Box, bool) {
	for _, b := range pl.Boxes {
		if b.Name == name {
			return b, true
		}
	}
	return Box{}, false
}
