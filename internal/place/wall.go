package place

import (
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Wall is one wall with its build-up as figures.
type Wall struct {
	Name   string
	Face   site.Face
	Frame  space.Wall
	Layers []Layer
	doc    document.Wall
	lays   []document.Field
	p      *placer
}

// Layer is one layer of a build-up.
type Layer struct {
	Label string
	Thick figure.Figure
	Under bool // board or membrane: below what is tiled
}

// walls reads the faces that were solved.
func (p *placer) walls() {
	for _, d := range p.doc.Walls {
		f, ok := p.room.Face(d.Name)
		if !ok || f.Kind != site.WallFace || len(f.Bare) == 0 {
			continue
		}
		w := Wall{Name: d.Name, Face: f, doc: d, p: p}
		w.Layers = p.layers(d.BuildUp, f, d.At.Path)
		w.Frame = p.frame(f)
		for _, l := range p.doc.Lay {
			if l.Face == d.Name {
				w.lays = l.Fields
			}
		}
		p.out.Walls = append(p.out.Walls, w)
	}
}

// Wall returns the wall of that name.
func (pl Plan) Wall(name string) (Wall, bool) {
	for _, w := range pl.Walls {
		if w.Name == name {
			return w, true
		}
	}
	return Wall{}, false
}

// frame is the finished face of a wall in the plan, at the plate.
func (p *placer) frame(f site.Face) space.Wall {
	l, r := p.room.Survey.Corner(f.LeftCorner).Board, p.room.Survey.Corner(f.RightCorner).Board
	w := space.Wall{Name: f.Name, Left: l, Right: r, From: f.Bare[0].X}
	off := f.TileOff
	w.Left, w.Right = w.At(w.From, off), w.At(w.From+geom.Dist(l, r), off)
	return w
}

// layers are the layers of a face from the studs outward. What the solved face has more or less than is written (a tile face that is a
// plane over the wall's high spots) is in its bed.
func (p *placer) layers(written []document.Layer, f site.Face, path string) []Layer {
	var out []Layer
	last := -1
	for i, l := range written {
		if l.What == document.BoardLayer || l.What == document.MembraneLayer {
			last = i
		}
	}
	whole, bed := f.BoardThick+f.TileOff, -1
	for i, l := range written {
		if !f.Set && f.TileOff == 0 && i > last {
			continue // nothing lies on the board
		}
		layer := Layer{Label: l.Label, Under: i <= last}
		switch {
		case l.Thick.Known:
			layer.Thick = figure.Fact(l.At.Path, l.Thick.V)
		case l.What == document.TileLayer:
			layer.Thick = p.tileThick(f)
		default:
			layer.Thick = figure.Number(0).Using(l.At.Path)
		}
		if l.What == document.BedLayer && !layer.Under {
			bed = len(out)
		}
		whole -= layer.Thick.V
		out = append(out, layer)
	}
	switch {
	case whole == 0:
	case bed >= 0:
		out[bed].Thick = out[bed].Thick.Plus(whole)
	default:
		out = append(out, Layer{Label: "bed and tile", Thick: figure.Number(whole).Using(path + " > build-up")})
	}
	return out
}

// tileThick is the thickness of the thickest tile that is laid on a face: what the goods say.
func (p *placer) tileThick(f site.Face) figure.Figure {
	best := figure.Number(f.TileThick)
	for _, l := range p.doc.Lay {
		for _, field := range l.Fields {
			for _, t := range p.doc.Tiles {
				if l.Face == f.Name && t.Name == field.Tile.Text && t.Thick.Known && t.Thick.V == f.TileThick {
					return figure.Fact(t.At.Path+" > size", t.Thick.V)
				}
			}
		}
	}
	return best
}

// Board is the thickness from the studs to what is tiled.
func (w Wall) Board() figure.Figure { return w.thick(func(l Layer) bool { return l.Under }) }

// Finish is the thickness of what lies on the board, where it is tiled.
func (w Wall) Finish() figure.Figure { return w.thick(func(l Layer) bool { return !l.Under }) }

func (w Wall) thick(of func(Layer) bool) figure.Figure {
	sum := figure.Number(0)
	for _, l := range w.Layers {
		if of(l) {
			sum = sum.Add(l.Thick)
		}
	}
	return sum
}

// BuildUp is what lies on the studs at a place of the wall: board alone where no tile is laid.
func (w Wall) BuildUp(x, y unit.Length) figure.Figure {
	if w.Tiled(x, y) {
		return w.Board().Add(w.Finish())
	}
	return w.Board()
}

// Tiled reports whether a field of tile covers a place of the wall; walls on which nothing is laid are tiled all over if they bear a tile.
func (w Wall) Tiled(x, y unit.Length) bool {
	if len(w.lays) == 0 {
		return w.Face.TileOff > 0
	}
	for _, f := range w.lays {
		if w.covers(f, x, y) {
			return true
		}
	}
	return false
}

func (w Wall) covers(f document.Field, x, y unit.Length) bool {
	if f.Up.Given {
		lo, hi, ok := w.p.room.Up(w.Name, f.Up, 0)
		if ok && (y < lo || f.Up.Both && y > hi) {
			return false
		}
	}
	if f.To.Given {
		if _, hi, ok := w.p.room.Up(w.Name, f.To, 0); ok && y > hi {
			return false
		}
	}
	if f.Across.Given && f.Across.Both {
		if lo, hi, ok := w.p.room.Across(w.Name, f.Across, 0); ok && (x < lo || x > hi) {
			return false
		}
	}
	return true
}
