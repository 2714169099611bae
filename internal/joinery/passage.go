package joinery

import (
	"math"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Passage is a place that a cabinet or a top has to go through on its way in, as it leaves the shop: put together.
type Passage struct {
	Way    PassWay
	Needs  [2]unit.Length // between walls a width alone; through a door the two lesser sides, the least first; tipped up a height alone
	Has    [2]unit.Length
	Source string // "widths as taped", "the solved walls", the door's name
	Passes bool
}

// PassWay is what is passed.
type PassWay uint8

const (
	BetweenWalls PassWay = iota // slid in level, from the front
	ThroughDoor
	TippedUp // stood up in the room from lying on its back
)

// bringIn holds a cabinet against all that it has to pass.
func (r *room) bringIn(c *Cabinet, o outline) {
	box := c.Asked
	box.Hi[zAxis] += c.Proud
	r.slideIn(c, o.doc.Alcove, box)
	r.carryIn(&c.Passages, c.Name, c.At, box.Size(xAxis), c.Asked.Hi[zAxis], box.Size(yAxis))
	if o.doc.Stands.Or(document.OnFloor) != document.OnWall {
		r.tipUp(c, box)
	}
}

// slideIn holds a cabinet's width against the walls beside it, as taped or as solved.
func (r *room) slideIn(c *Cabinet, taped []document.WidthAt, box Box) {
	p := Passage{Way: BetweenWalls, Source: "widths as taped"}
	p.Needs[0] = box.Size(xAxis)
	at := c.At
	if len(taped) > 0 {
		w, ok := r.narrowestTaped(taped, c.Wall, box)
		if !ok {
			r.lacks(taped[0].At, "a width of the alcove between the foot and the top of "+c.Name)
			return
		}
		p.Has[0], at = w.Width, w.At
	} else {
		least, ok := r.between(c.Wall).narrowest(box)
		if !ok {
			return // it stands between no two walls
		}
		p.Has[0], p.Source = least, "the solved walls"
	}
	p.Passes = p.Needs[0] <= p.Has[0]
	c.Passages = append(c.Passages, p)
	if !p.Passes {
		r.stop("cabinet-slides", at, "{0}, {1} wide, can not be slid in: the walls beside it are {2} apart at the narrowest ({3}), {4} too little", "make it narrower by {4} and fill the rest with a strip that is scribed in place, or build it in place",
			diag.T(c.Name), diag.X(p.Needs[0]), diag.L(p.Has[0]), diag.T(p.Source), diag.L(p.Needs[0]-p.Has[0]))
	}
}

// narrowestTaped is the least of the widths that were taped where a box passes. One whose height is not written counts.
func (r *room) narrowestTaped(taped []document.WidthAt, wall string, box Box) (least document.WidthAt, ok bool) {
	for _, w := range taped {
		if y, _, known := r.shape.Up(wall, w.Up, 0); known && r.shape.FinishedKnown {
			if y -= r.shape.FinishedFloor; y < box.Lo[yAxis] || y > box.Hi[yAxis] {
				continue
			}
		}
		if !ok || w.Width < least.Width {
			least, ok = w, true
		}
	}
	return least, ok
}

// carryIn holds a box against the doors of the room: turned as it may be, its two lesser sides go through first. It is enough that one door
// lets it pass. Fronts are hung in the room, so they do not count.
func (r *room) carryIn(to *[]Passage, name string, at diag.Place, sides ...unit.Length) {
	slices.Sort(sides)
	best := Passage{}
	for _, f := range r.shape.Faces {
		for _, o := range f.Openings {
			if o.Kind != "door" || f.Kind != site.WallFace {
				continue
			}
			p := Passage{Way: ThroughDoor, Needs: [2]unit.Length{sides[0], sides[1]}, Source: o.Name}
			if p.Has, p.Passes = r.clearDoor(f, o); p.Has[0] <= 0 {
				continue
			}
			p.Passes = p.Needs[0] <= min(p.Has[0], p.Has[1]) && p.Needs[1] <= max(p.Has[0], p.Has[1])
			if best.Source == "" || p.Passes && !best.Passes {
				best = p
			}
		}
	}
	if best.Source == "" {
		return // no door is known
	}
	*to = append(*to, best)
	if !best.Passes {
		r.look("door-narrow", at, "{0} put together does not pass {1}: its two lesser sides are {2} and {3}, and the door is {4} wide and {5} high in the clear", "glue it up in the room, take the leaf off its hinges, or make it in two parts",
			diag.T(name), diag.T(best.Source), diag.X(best.Needs[0]), diag.X(best.Needs[1]), diag.L(best.Has[0]), diag.L(best.Has[1]))
	}
}

// clearDoor is the width and the height that a door leaves clear: less its leaf's thickness, which stands in it when it is open, and from
// the finished floor.
func (r *room) clearDoor(f site.Face, o site.Opening) (clear [2]unit.Length, ok bool) {
	clear = [2]unit.Length{o.Rect.W(), o.Rect.H()}
	if r.shape.FinishedKnown {
		clear[1] = o.Rect.Max.Y - max(o.Rect.Min.Y, f.HighFloor)
	}
	for _, d := range r.doc.Openings {
		if d.Name == o.Name && d.Leaf.Given {
			clear[0] = d.Leaf.Width.Or(clear[0]) - d.Leaf.Thick.Or(0)
			clear[1] = min(clear[1], d.Leaf.Height.Or(clear[1]))
		}
	}
	return clear, clear[0] > 0 && clear[1] > 0
}

// tipUp holds a cabinet that stands on the floor against the ceiling: it comes in lying and its diagonal is higher than it is.
func (r *room) tipUp(c *Cabinet, box Box) {
	high, ok := r.highestCeiling()
	if !ok {
		return
	}
	d, h := float64(c.Asked.Hi[zAxis]), float64(box.Size(yAxis))
	p := Passage{Way: TippedUp, Source: "the ceiling where it is highest"}
	p.Needs[0], p.Has[0] = unit.FromFloat(math.Sqrt(float64(d*d)+float64(h*h))), high
	p.Passes = p.Needs[0] <= p.Has[0]
	c.Passages = append(c.Passages, p)
	if !p.Passes {
		r.look("cabinet-tips", c.At, "{0} can not be stood up in the room: its diagonal is {1}, and the ceiling is {2} over the floor at the highest", "bring it in upright, or put it together where it stands", diag.T(c.Name), diag.L(p.Needs[0]), diag.L(p.Has[0]))
	}
}

// highestCeiling is the greatest height of a corner of the room over the finished floor.
func (r *room) highestCeiling() (unit.Length, bool) {
	most, ok := unit.Length(0), r.shape.FinishedKnown
	for _, k := range r.shape.Survey.Corners {
		if !k.CeilingKnown {
			return 0, false
		}
		most = max(most, k.CeilingY-r.shape.FinishedFloor)
	}
	return most, ok && most > 0
}
