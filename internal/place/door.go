package place

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Door is a door with its leaf.
type Door struct {
	Name        string
	Doc         document.Opening
	Wall        string
	Left, Right unit.Length   // of the opening, along the wall
	Width       figure.Figure // of the leaf
	Rise        figure.Figure // the highest floor in its sweep over the floor at the door
	RiseRead    bool          // Rise comes from the floor's readings along the wall
	FloorUp     figure.Figure // build-up of the floor
	Sweep       []geom.Point  // of a leaf that opens into the room: x along the wall, off it; nil: none or not known
	High        space.Span
}

func (p *placer) doors() {
	for _, d := range p.doc.Openings {
		if d.Kind != document.Door || !d.Leaf.Given {
			continue
		}
		w, ok := p.out.Wall(d.In.Text)
		door := Door{Name: d.Name, Doc: d, Wall: d.In.Text, FloorUp: p.FloorBuildUp(), Rise: figure.Missing(under(d.Leaf.At, "rise")), Width: figure.Missing(under(d.Leaf.At, "width"))}
		found := false
		for _, o := range w.Face.Openings {
			if ok && o.Name == d.Name {
				found = true
				door.Left, door.Right = o.Rect.Min.X, o.Rect.Max.X
				door.High = space.Span{Lo: p.room.FinishedFloor, Hi: o.Rect.Max.Y}
			}
		}
		if found {
			door.Width = factOr(d.Leaf.Width, d.Leaf.At, "width", door.Right-door.Left)
			if !d.Leaf.Width.Known && !d.Leaf.Width.Unknown {
				door.Width = door.Width.Using(under(d.At, "across"))
			}
			p.rise(&door, w)
			p.sweep(&door, w)
		}
		p.out.Doors = append(p.out.Doors, door)
	}
}

// rise is the highest floor in the sweep over that at the door: told, or read along the door's wall within the leaf's reach.
func (p *placer) rise(d *Door, w Wall) {
	l := d.Doc.Leaf
	if l.Rise.Known || l.Rise.Unknown {
		d.Rise = fact(l.Rise, l.At, "rise")
		return
	}
	at := w.floorAt(d.Left + (d.Right-d.Left)/2)
	high := at
	reach := d.Width.V
	for _, x := range []unit.Length{d.Left - reach, d.Left, d.Right, d.Right + reach} {
		high = max(high, w.floorAt(x))
	}
	for _, b := range w.Face.Bare {
		if b.X > d.Left-reach && b.X < d.Right+reach {
			high = max(high, b.Y)
		}
	}
	d.Rise, d.RiseRead = figure.Number(high-at).Using(downPath), true
}

// floorAt is the bare floor at a place along a wall.
func (w Wall) floorAt(x unit.Length) unit.Length {
	line := w.Face.Bare
	x = min(max(x, line[0].X), line[len(line)-1].X)
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if x <= b.X && b.X > a.X {
			return a.Y + (b.Y-a.Y).MulDiv(int64(x-a.X), int64(b.X-a.X))
		}
	}
	return line[len(line)-1].Y
}

// sweepSteps is how many corners stand for the arc of a leaf; they lie outside it.
const sweepSteps = 16

// sweep is the quarter circle that a leaf takes of the room, from its hinge on the finished face.
func (p *placer) sweep(d *Door, w Wall) {
	l := d.Doc.Leaf
	if !l.Hinge.Known || !l.Opens.Known || l.Opens.V == document.OpensOut || !d.Width.Known() {
		return
	}
	hinge, way := d.Left, float64(1)
	if l.Hinge.V == document.HingeRight {
		hinge, way = d.Right, -1
	}
	d.Sweep = []geom.Point{{X: hinge}}
	over := float64(d.Width.V) / math.Cos(math.Pi/4/sweepSteps)
	d.Sweep = append(d.Sweep, geom.Point{X: hinge + unit.Length(way)*d.Width.V})
	for i := range sweepSteps {
		a := (float64(i) + 0.5) * math.Pi / 2 / sweepSteps
		d.Sweep = append(d.Sweep, geom.Point{X: hinge + unit.FromFloat(way*float64(over*math.Cos(a))), Y: unit.FromFloat(over * math.Sin(a))})
	}
	d.Sweep = append(d.Sweep, geom.Point{X: hinge, Y: d.Width.V})
	e := space.Envelope{Name: d.Name + ", leaf", Owner: d.Doc.At.Path, At: d.Doc.Leaf.At, Kind: space.Leaf, Uses: append(facts(d.Width), under(d.Doc.At, "across"), under(l.At, "hinge"))}
	p.solid(w.Frame.Outline(e, d.Sweep, d.High))
}
