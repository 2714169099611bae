package joinery

import (
	"math"

	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// walls beside a wall, as solved: how far apart their finished faces are, at a distance off it and a height. Each is the straight line between
// its finished corners at the plate, with what its own readings say of its lean and its belly.
type besides struct {
	left, right beside
	ok          bool // there is a wall on both sides
}

// beside is the wall at one end, in the frame of the wall between.
type beside struct {
	near, far         geom.Point  // along the wall, off its finished face
	leanNear, leanFar unit.Length // into the room over the height of each end
	foot, tall        unit.Length // y of the foot from the finished floor, and the height that the leans are over
	belly             []document.Station
	long              unit.Length
	read              bool // its lean was read
	fromFar           bool // the stations count from its far end
}

// between finds the walls at both ends of a wall. They are missing where a corner is an outside one: nothing stands there.
func (r *room) between(wall string) besides {
	f, ok := r.shape.Face(wall)
	all := r.shape.Survey.Corners
	n, i := len(all), cornerIndex(all, f.LeftCorner)
	if !ok || i < 0 || !r.shape.FinishedKnown || all[(i+1)%n].Name != f.RightCorner || len(f.Bare) == 0 {
		return besides{}
	}
	fr := frameOf(f, all[i], all[(i+1)%n])
	l, okL := r.besideOf(fr, all[i], all[(i+n-1)%n], true)
	rt, okR := r.besideOf(fr, all[(i+1)%n], all[(i+2)%n], false)
	return besides{l, rt, okL && okR}
}

// frame carries points of the plan into the frame of a wall: x along it, z off its finished face.
type frame struct {
	from geom.Point
	run  geom.Point
	long float64
	x0   unit.Length
	off  unit.Length
}

func frameOf(f site.Face, l, r site.Corner) frame {
	run := r.Board.Sub(l.Board)
	return frame{l.Board, run, math.Hypot(float64(run.X), float64(run.Y)), f.Bare[0].X, f.TileOff}
}

func (f frame) of(p geom.Point) geom.Point {
	d := p.Sub(f.from)
	x := (float64(d.X)*float64(f.run.X) + float64(d.Y)*float64(f.run.Y)) / f.long
	z := (float64(d.X)*float64(f.run.Y) - float64(d.Y)*float64(f.run.X)) / f.long
	return geom.Point{X: unit.FromFloat(x) + f.x0, Y: unit.FromFloat(z) - f.off}
}

func (r *room) besideOf(f frame, near, far site.Corner, onLeft bool) (beside, bool) {
	b := beside{near: f.of(near.Finished), far: f.of(far.Finished), long: geom.Dist(near.Board, far.Board), fromFar: onLeft}
	if near.Outside || b.far.Y <= b.near.Y || !near.FloorKnown || !near.CeilingKnown {
		return b, false
	}
	b.foot, b.tall = near.BareFloor-r.shape.FinishedFloor, near.CeilingY-near.BareFloor
	for _, w := range r.doc.Walls {
		if left, right := w.Left, w.Right; onLeft && left == far.Name && right == near.Name || !onLeft && left == near.Name && right == far.Name {
			b.leanNear, b.leanFar = leanAt(w, near.Name), leanAt(w, far.Name)
			b.read = len(w.Lean) > 0
			if s, ok := r.shape.Face(w.Name); !ok || !s.Set || w.Face.Or(document.Plane) != document.Plane {
				b.belly = w.Profile
			}
		}
	}
	return b, true
}

func leanAt(w document.Wall, corner string) unit.Length {
	for _, l := range w.Lean {
		if l.Corner == corner {
			return l.Value.Or(0)
		}
	}
	return 0
}

// into is how far the face stands into the stretch between the walls, off the place of its near corner, at z off the wall and y over the floor.
func (b beside) into(z, y unit.Length, sign float64) float64 {
	share := float64(z-b.near.Y) / float64(b.far.Y-b.near.Y)
	in := sign * float64(b.far.X-b.near.X) * share
	if b.tall > 0 {
		in += (float64(b.leanNear)*(1-share) + float64(b.leanFar)*share) * float64(y-b.foot) / float64(b.tall)
	}
	if len(b.belly) > 0 {
		in += float64(profileAt(b.belly, b.place(z)))
	}
	return in
}

// place is where a distance off the wall is along the wall beside it, as its readings count.
func (b beside) place(z unit.Length) unit.Length {
	if b.fromFar {
		return b.long - z
	}
	return z
}

// at is the width between both walls at z off the wall and y over the finished floor, rounded once.
func (s besides) at(z, y unit.Length) unit.Length {
	return unit.FromFloat(float64(s.right.near.X-s.left.near.X) - s.left.into(z, y, 1) - s.right.into(z, y, -1))
}

// narrowest is the least width over the depth and the height of a box. Between the corners of the box and the places where a belly was read
// the faces run straight, so the least is at one of these.
func (s besides) narrowest(box Box) (unit.Length, bool) {
	if !s.ok {
		return 0, false
	}
	all := []unit.Length{box.Lo[zAxis], box.Hi[zAxis]}
	for _, b := range []beside{s.left, s.right} {
		for _, p := range b.belly {
			if z := b.place(p.X); z > box.Lo[zAxis] && z < box.Hi[zAxis] {
				all = append(all, z)
			}
		}
	}
	least := unit.Reach
	for _, z := range all {
		least = min(least, s.at(z, box.Lo[yAxis]), s.at(z, box.Hi[yAxis]))
	}
	return least, true
}
