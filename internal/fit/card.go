package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/unit"
)

// Spot is one line of the rough-in card: a point in an open wall, told from the level line and from the edge of a stud, for work before any tile
// exists; and how thick the build-up will be there.
type Spot struct {
	Name       string
	What       string // "supply", "waste", "tap body", "box"
	At         diag.Place
	Wall       string
	X, Y       unit.Length // in the face's frame: from the left corner of its board, from the level line
	OverFloor  unit.Length // over the finished floor
	Level      unit.Length // from the level line: + up, − down
	Stud       string      // the stud that it is told from; "" where none is recorded
	FromStud   unit.Length // from the nearer edge of that stud: + to the right, − to the left
	Corner     string
	FromCorner unit.Length // from the left corner of the studs
	BuildUp    unit.Length
	Uses       []string
}

// card lists every point that is roughed in, in the document's order.
func (c *checker) card() {
	for _, s := range c.at.Stubs {
		if s.Wall != "" {
			c.spot(s.Name, "pipe", s.Doc.At, s.Wall, s.X, s.Y, s.BuildUp)
		}
	}
	for _, t := range c.at.Taps {
		if t.BuildUp.Known() && t.Y.Known() && t.Doc.Body.Given {
			c.spot(t.Name, "tap body", t.Doc.At, t.Wall, t.X, t.Y, t.BuildUp)
		}
	}
	for _, b := range c.at.Boxes {
		if b.Wall != "" {
			c.spot(b.Name, "box", b.Doc.At, b.Wall, b.X, b.Y, b.BuildUp)
		}
	}
	for _, f := range c.at.Fittings {
		if f.Wall != "" {
			c.spot(f.Name, f.Doc.Kind.String(), f.Doc.At, f.Wall, f.X, f.Y, f.BuildUp)
		}
	}
}

func (c *checker) spot(name, what string, at diag.Place, wall string, x, y, build figure.Figure) {
	w, ok := c.at.Wall(wall)
	all := x.Add(y).Add(build)
	if !ok || !all.Known() {
		return
	}
	s := Spot{Name: name, What: what, At: at, Wall: wall, X: x.V, Y: y.V, OverFloor: y.V - c.room.FinishedFloor, Level: y.V, BuildUp: build.V, Uses: all.Facts()}
	s.Stud, s.FromStud = nearestStud(w, x.V)
	s.Corner, s.FromCorner = w.Face.LeftCorner, x.V+w.LeftStud().V
	c.out.Card = append(c.out.Card, s)
}

// nearestStud is the recorded stud whose edge is nearest to a place along a wall.
func nearestStud(w place.Wall, x unit.Length) (name string, from unit.Length) {
	best := unit.Reach
	for _, b := range w.Face.Buried {
		if b.Kind != "stud" {
			continue
		}
		for _, edge := range []unit.Length{b.Rect.Min.X, b.Rect.Max.X} {
			if d := (x - edge).Abs(); d < best {
				best, name, from = d, b.Name, x-edge
			}
		}
	}
	return name, from
}
