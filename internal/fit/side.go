package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/geom"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// recessRoom is the room round what sits in a recess: 1/16 in, common practice.
const recessRoom = unit.Inch / 16

// sides are left and right along a wall.
var sides = [...]struct {
	name string
	way  unit.Length
}{{"left", -1}, {"right", 1}}

// floor is the finished floor over the level line with what it moves with.
func (c *checker) floor() figure.Figure { return c.at.Floor }

// beside holds a center line against the walls on both sides, at the depth that the thing takes.
func (c *checker) beside(s subject, wall string, x, middle, deep, high figure.Figure, of rule.Subject, what string) {
	a, ok := c.law(of, rule.AtLeast, "move it along the wall")
	if !ok {
		return
	}
	for _, side := range sides {
		d, other := c.toSide(wall, side.way, x, middle, deep, high)
		c.least(s, what+", "+side.name, "{0}: "+what+" on the {1} ({2})", d, a, diag.T(side.name), diag.T(other))
	}
}

// toSide is how far a place is, along its wall, from the nearest finished wall on one side: the least over the depth that is taken. The wall
// that is met first is named.
func (c *checker) toSide(wall string, way unit.Length, x, middle, deep, high figure.Figure) (figure.Figure, string) {
	w, ok := c.at.Wall(wall)
	f := x.Add(middle).Add(deep).Add(high)
	if !ok || !f.Known() {
		return f.Add(x), "the side wall"
	}
	least, by := unit.Reach, ""
	back, front := max(middle.V-deep.V/2, 0), middle.V+deep.V/2
	for i := range steps + 1 {
		z := back + (front-back).MulDiv(int64(i), steps)
		if d, name, ok := c.ray(w, x.V, z, way, high.V); ok && d < least {
			least, by = d, name
		}
	}
	if by == "" {
		return figure.Missing("survey > corners"), "the side wall"
	}
	return c.sideFigure(w, x, by, way).Moving(least).Using(middle.Facts()...), by
}

// steps is at how many depths a side wall is looked for; between two of them a straight wall is never nearer than at one of them, and one that
// starts between them stands out by no more than the depth of a step.
const steps = 12

// ray is how far the first wall is that one meets, going along a wall at a depth, and which it is. A wall that leans in is nearer by its lean.
func (c *checker) ray(w place.Wall, x, z, way unit.Length, y unit.Length) (unit.Length, string, bool) {
	from := w.Frame.At(x, z)
	to := w.Frame.At(x+way*unit.Metre, z)
	best, name, found := unit.Reach, "", false
	corners := c.room.Survey.Corners
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		p, ok := geom.Intersect(from, to, a.Finished, b.Finished)
		if !ok || !between(a.Finished, b.Finished, p) {
			continue
		}
		d := geom.Dist(from, p)
		if ahead(from, to, p) && d < best {
			best, name, found = d, c.wallBetween(a.Name, b.Name), true
		}
	}
	if !found {
		return 0, "", false
	}
	return best - c.leanIn(name, y), name, true
}

func between(a, b, p geom.Point) bool {
	return geom.Bound(a, b).With(p) == geom.Bound(a, b)
}

// ahead reports whether p lies on the ray from a point through another.
func ahead(from, to, p geom.Point) bool {
	d, q := to.Sub(from), p.Sub(from)
	return int64(d.X/1024)*int64(q.X/1024)+int64(d.Y/1024)*int64(q.Y/1024) > 0
}

func (c *checker) wallBetween(left, right string) string {
	for _, w := range c.doc.Walls {
		if w.Left == left && w.Right == right {
			return w.Name
		}
	}
	return left + "-" + right
}

// leanIn is how far a wall has come into the room at a height over the plate, at the end that leans more.
func (c *checker) leanIn(wall string, y unit.Length) unit.Length {
	w, ok := c.at.Wall(wall)
	if !ok {
		return 0
	}
	most := unit.Length(0)
	for _, d := range c.doc.Walls {
		if d.Name != wall {
			continue
		}
		for _, l := range d.Lean {
			k := c.room.Survey.Corner(l.Corner)
			if l.Value.Known && k.FloorKnown && k.CeilingKnown && k.CeilingY > k.BareFloor {
				most = max(most, l.Value.V.MulDiv(int64(y-k.BareFloor), int64(k.CeilingY-k.BareFloor)))
			}
		}
	}
	return min(most, w.Face.BoardThick+unit.Inch)
}

// sideFigure is how the distance to a side wall moves: with the place along the wall, and with what lies on both walls' studs.
func (c *checker) sideFigure(w place.Wall, x figure.Figure, by string, way unit.Length) figure.Figure {
	n, ok := c.at.Wall(by)
	if !ok {
		return x.Times(-int64(way), 1)
	}
	if way < 0 {
		return x.Sub(w.SideOf(n, way))
	}
	return w.SideOf(n, way).Sub(x)
}

// onSameWall lists the places of other fixtures on a wall, by name.
type fixture struct {
	name string
	at   diag.Place
	x    figure.Figure
}

func (c *checker) fixturesOn(wall string) []fixture {
	var out []fixture
	for _, b := range c.at.Basins {
		if b.Wall == wall {
			out = append(out, fixture{b.Name, b.Doc.At, b.X})
		}
	}
	for _, w := range c.at.WCs {
		if w.Wall == wall {
			out = append(out, fixture{w.Name, w.Doc.At, w.X})
		}
	}
	return out
}

// apart holds the centers of fixtures on one wall against each other, each pair once.
func (c *checker) apart(s subject, wall string, x figure.Figure, of rule.Subject) {
	a, ok := c.law(of, rule.AtLeast, "move one of them along the wall")
	if !ok {
		return
	}
	past := false
	for _, o := range c.fixturesOn(wall) {
		if o.name == s.name {
			past = true
			continue
		}
		if past {
			c.least(s, "centers: "+o.name, "{0}: center to the center of {1}", o.x.Sub(x).Abs(), a, diag.T(o.name))
		}
	}
}
