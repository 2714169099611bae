package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/space"
)

// Cabinet is the outside of a cabinet: its carcass.
type Cabinet struct {
	Name               string
	Doc                document.Cabinet
	Wall               string
	Left, Right, Depth figure.Figure
	Bottom, Top        figure.Figure // over the level line
}

func (p *placer) cabinets() {
	for _, d := range p.doc.Cabinets {
		c := Cabinet{Name: d.Name, Doc: d, Wall: d.In.Text, Depth: fact(d.Depth, d.At, "depth")}
		w, ok := p.out.Wall(d.In.Text)
		if ok {
			width := figure.Number(0)
			if !d.Across.Both {
				width = fact(d.Width, d.At, "width")
			}
			c.Left, c.Right = w.across(d.Across, under(d.At, "across"), width)
		} else {
			c.Left, c.Right = figure.Missing(under(d.At, "in")), figure.Missing(under(d.At, "in"))
		}
		c.Top = p.floor().Add(fact(d.Height, d.At, "height"))
		c.Bottom = p.floor()
		if d.Stands.Or(document.OnFloor) == document.OnWall {
			c.Bottom = p.floor().Add(fact(d.Bottom, d.At, "bottom"))
		}
		p.out.Cabinets = append(p.out.Cabinets, c)
		p.box(w, ok, space.Envelope{Name: d.Name, Owner: d.At.Path, At: d.At, Kind: space.Carcass}, [2]figure.Figure{c.Left, c.Right}, [2]figure.Figure{c.Bottom, c.Top}, [2]figure.Figure{figure.Number(0), c.Depth})
	}
}

// box adds the envelope of a box before a wall where all its sides are known.
func (p *placer) box(w Wall, ok bool, e space.Envelope, x, y, z [2]figure.Figure) {
	xs, ok1 := span(x[0], x[1])
	ys, ok2 := span(y[0], y[1])
	zs, ok3 := span(z[0], z[1])
	if !ok || !ok1 || !ok2 || !ok3 {
		return
	}
	e.Uses = facts(x[0], x[1], y[0], y[1], z[0], z[1])
	p.solid(w.Frame.Box(e, xs, ys, zs))
}

// Cabinet returns the cabinet of that name.
func (pl Plan) Cabinet(name string) (Cabinet, bool) {
	for _, c := range pl.Cabinets {
		if c.Name == name {
			return c, true
		}
	}
	return Cabinet{}, false
}

// Top is a slab on a cabinet or on a wall.
type Top struct {
	Name                      string
	Doc                       document.Slab
	Wall                      string
	Left, Right, Depth, Back  figure.Figure // Back: from the finished wall to its back edge
	Underside, Surface, Thick figure.Figure
}

func (p *placer) tops() {
	for _, d := range p.doc.Tops {
		in := p.doc.WallOf(d)
		t := Top{Name: d.Name, Doc: d, Wall: in.Text, Depth: fact(d.Depth, d.At, "depth"), Thick: fact(d.Thickness, d.At, "thickness"), Back: factOr(d.Gap.Back, d.At, "gap > back", 0)}
		c, on := p.out.Cabinet(d.On.V)
		switch {
		case d.On.Known && on && !d.Up.Known:
			t.Underside = c.Top
		default:
			t.Underside = p.floor().Add(fact(d.Up, d.At, "up"))
		}
		t.Surface = t.Underside.Add(t.Thick)
		w, ok := p.out.Wall(in.Text)
		switch {
		case ok && d.Across.Given:
			width := figure.Number(0)
			if !d.Across.Both {
				width = fact(d.Width, d.At, "width")
			}
			t.Left, t.Right = w.across(d.Across, under(d.At, "across"), width)
		case on:
			t.Left = c.Left.Sub(factOr(d.Overhang.Left, d.At, "overhang > left", 0))
			t.Right = c.Right.Add(factOr(d.Overhang.Right, d.At, "overhang > right", 0))
		default:
			t.Left, t.Right = figure.Missing(under(d.At, "across")), figure.Missing(under(d.At, "across"))
		}
		p.out.Tops = append(p.out.Tops, t)
		p.box(w, ok, space.Envelope{Name: d.Name, Owner: d.At.Path, At: d.At, Kind: space.Top}, [2]figure.Figure{t.Left, t.Right}, [2]figure.Figure{t.Underside, t.Surface}, [2]figure.Figure{t.Back, t.Depth})
	}
}

// Top returns the top of that name.
func (pl Plan) Top(name string) (Top, bool) {
	for _, t := range pl.Tops {
		if t.Name == name {
			return t, true
		}
	}
	return Top{}, false
}

// RecessFor is the depth of the recess that a top has for a basin; 0 where it has none.
func (t Top) RecessFor(basin string) figure.Figure {
	r := t.Doc.Recess
	if !r.Given || r.For.Known && r.For.V != basin {
		return figure.Number(0)
	}
	return fact(r.Depth, r.At, "depth")
}
