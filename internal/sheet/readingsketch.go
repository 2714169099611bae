package sheet

import (
	"cmp"
	"slices"

	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Strip is one kind of readings along a wall.
type Strip uint8

const (
	ProfileStrip Strip = iota // the surface off the line from corner to corner
	StudStrip                 // the faces of the studs off that line
	FloorStrip                // from the level line down to the floor
	CeilingStrip              // from the level line up to the ceiling
)

const (
	sketchWide = 84 * draw.MM
	sketchHigh = 36 * draw.MM
	sketchSide = 9 * draw.MM
)

// StripOnScreen draws what readings along a wall mean, with those that are there: how far along is to scale, how far off
// is drawn larger than it is. Without a reading it shows a made-up one, dashed and without a number.
func StripOnScreen(p plan.Plan, w document.Wall, kind Strip) draw.Page {
	s := &strip{p: p, wall: w, kind: kind, read: stationsOf(w, kind)}
	s.within = draw.Span(0, 0, sketchWide, sketchHigh)
	page := draw.Page{Title: stripTitles[kind] + " of " + w.Name, W: sketchWide, H: sketchHigh}
	page.Items = s.items()
	return page
}

var stripTitles = [...]string{"Profile", "Studs", "Floor below the level line", "Ceiling above the level line"}

func stationsOf(w document.Wall, kind Strip) []document.Station {
	return [...][]document.Station{w.Profile, w.Studs, w.FloorLine, w.CeilingLine}[kind]
}

// strip is that drawing in the making.
type strip struct {
	crowd
	p    plan.Plan
	wall document.Wall
	kind Strip
	read []document.Station
}

func (s *strip) items() []draw.Item {
	out := append([]draw.Item{s.datum()}, s.corners()...)
	words := s.sideWords()
	if len(s.read) == 0 {
		return append(append(out, s.example()), words...)
	}
	for _, st := range s.read {
		out = append(out, s.station(st))
	}
	if s.kind != StudStrip {
		out = append(out, s.surface())
	}
	for _, st := range s.read {
		words = append(words, s.lettering(st)...)
	}
	return append(out, words...)
}

// base is the height of what the readings are taken from: the middle for both ways, an edge for one.
func (s *strip) base() draw.Um {
	switch s.kind {
	case FloorStrip:
		return sketchHigh - 6*draw.MM
	case CeilingStrip:
		return 10 * draw.MM
	}
	return 19 * draw.MM
}

// datum is the line that the readings are taken from.
func (s *strip) datum() draw.Item {
	line := draw.Stroke(draw.Pen{Width: draw.Normal, Color: draw.Blue, Dash: draw.Chain}, draw.At(sketchSide, s.base()), draw.At(sketchWide-sketchSide, s.base()))
	line.Class = "datum"
	return line
}

func (s *strip) corners() []draw.Item {
	var out []draw.Item
	for _, e := range []struct {
		name string
		x    draw.Um
	}{{s.wall.Left, sketchSide / 2}, {s.wall.Right, sketchWide - sketchSide/2}} {
		label, _ := s.label(parts.Label{Body: e.name, Size: parts.Large, Bold: true, Clear: true, Class: "corner"}, draw.At(e.x, s.base()))
		out = append(out, label...)
	}
	return out
}

// sideWords say which side is which.
func (s *strip) sideWords() []draw.Item {
	words := map[Strip]string{ProfileStrip: "+ into the room", StudStrip: "+ into the room", FloorStrip: "level line", CeilingStrip: "level line"}[s.kind]
	y := s.base() + 3*draw.MM
	switch s.kind {
	case CeilingStrip:
		y = s.base() - 3*draw.MM
	case ProfileStrip, StudStrip:
		y = sketchHigh - 2500
	}
	out, _ := s.label(parts.Label{Body: words, Clear: true, Class: "side"}, draw.At(sketchWide/2, y))
	return out
}

// long is how far the strip runs: the wall, or the farthest reading.
func (s *strip) long() unit.Length {
	var long unit.Length
	if f, ok := s.p.Room.Face(s.wall.Name); ok && len(f.Board) > 0 {
		long = f.Board.Bounds().W()
	}
	for _, st := range s.read {
		long = max(long, st.X)
	}
	return max(long, 1)
}

func (s *strip) x(st document.Station) draw.Um {
	return sketchSide + portion(st.X, s.long(), sketchWide-2*sketchSide)
}

// y is how high a reading is drawn: its difference from the others fills the room that there is.
func (s *strip) y(st document.Station) draw.Um {
	const far = 9 * draw.MM
	least, most := s.reach()
	switch s.kind {
	case FloorStrip:
		return s.base() - 8*draw.MM - portion(st.Value-least, most-least, far)
	case CeilingStrip:
		return s.base() + 8*draw.MM + portion(st.Value-least, most-least, far)
	}
	return s.base() + portion(st.Value, max(most, -least), far*4/5)
}

func (s *strip) reach() (least, most unit.Length) {
	by := func(a, b document.Station) int { return cmp.Compare(a.Value, b.Value) }
	return slices.MinFunc(s.read, by).Value, slices.MaxFunc(s.read, by).Value
}

// portion is room · v / of, rounded; nothing of nothing is nothing.
func portion(v, of unit.Length, room draw.Um) draw.Um {
	if of == 0 {
		return 0
	}
	return draw.Um(v.MulDiv(int64(room), int64(of)))
}

// station is the measure itself: from the line to what was measured.
func (s *strip) station(st document.Station) draw.Item {
	x, y := s.x(st), s.y(st)
	if s.kind == StudStrip {
		stud := draw.Rect(draw.Span(x-1500, y-6*draw.MM, x+1500, y), draw.Line(draw.Wide), draw.Fill{On: true, Color: draw.Pale})
		stud.Class = "stud"
		return stud
	}
	m := draw.Stroke(draw.Line(draw.Narrow), draw.At(x, s.base()), draw.At(x, y))
	m.Class = "measure"
	return m
}

// surface joins what was measured.
func (s *strip) surface() draw.Item {
	var at []draw.XY
	for _, st := range s.read {
		at = append(at, draw.At(s.x(st), s.y(st)))
	}
	line := draw.Stroke(draw.Line(draw.Heavy), at...)
	line.Class = "surface"
	return line
}

// lettering is a reading beside its place, and below how far along it was taken.
func (s *strip) lettering(st document.Station) []draw.Item {
	x, y := s.x(st), s.y(st)
	beyond := 2700 * draw.Um(1)
	if s.kind == FloorStrip || s.kind != CeilingStrip && st.Value < 0 {
		beyond = -beyond
	}
	if s.kind == StudStrip && beyond < 0 {
		beyond -= 6 * draw.MM
	}
	style := s.p.Style
	along, _ := s.label(parts.Label{Body: style.Bare(st.X), Clear: true, Class: "along"}, draw.At(x, 2200))
	value, _ := s.label(parts.Label{Body: style.Bare(st.Value), Bold: true, Clear: true, Class: "reading"},
		draw.At(x, y+beyond), draw.At(x, y-beyond), draw.At(x-6*draw.MM, y+beyond/2), draw.At(x+6*draw.MM, y+beyond/2))
	return append(along, value...)
}

// example is what a reading would look like.
func (s *strip) example() draw.Item {
	x0, x1, y := sketchSide, sketchWide-sketchSide, s.base()
	at := []draw.XY{draw.At(x0, y), draw.At(sketchWide/2, y+5*draw.MM), draw.At(x1, y)}
	switch s.kind {
	case FloorStrip:
		at = []draw.XY{draw.At(x0, y-10*draw.MM), draw.At(sketchWide/2, y-13*draw.MM), draw.At(x1, y-11*draw.MM)}
	case CeilingStrip:
		at = []draw.XY{draw.At(x0, y+16*draw.MM), draw.At(sketchWide/2, y+16*draw.MM), draw.At(x1, y+9*draw.MM)}
	}
	pen := draw.Pen{Width: draw.Normal, Color: draw.Gray, Dash: draw.Dashed}
	line := draw.Stroke(pen, at...)
	if s.kind == StudStrip {
		line = draw.Path{Pen: pen, Closed: true}
		for i, p := range at {
			top := y + draw.Um(1-i)*2*draw.MM
			line.Rings = append(line.Rings, draw.Span(p.X-1500, top-6*draw.MM, p.X+1500, top).Ring())
		}
	}
	line.Class = "example"
	return line
}
