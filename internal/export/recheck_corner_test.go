package export_test

import "math"

// corners: boards and finished faces stand off the studs by the layers of the walls that meet there, and the angle is that of the finished
// corners.
func (r *rechecker) corners() {
	all := r.plan.Survey.Corners
	n := len(all)
	for i, c := range all {
		before, after := all[(i+n-1)%n], all[(i+1)%n]
		u := pt{before.Finished.X.mm() - c.Finished.X.mm(), before.Finished.Y.mm() - c.Finished.Y.mm()}
		v := pt{after.Finished.X.mm() - c.Finished.X.mm(), after.Finished.Y.mm() - c.Finished.Y.mm()}
		angle := math.Atan2(u.x*v.y-u.y*v.x, u.x*v.x+u.y*v.y) * 180 / math.Pi
		if angle <= 0 {
			angle += 360
		}
		if off := math.Abs(angle - float64(c.Angle)/1e6); off > 0.0001 || c.Outside != (angle > 180) {
			r.complain("corner %s: the angle of its finished faces is %.6f", c.Name, angle)
		}
		for _, f := range r.plan.Faces {
			if f.Kind == "wall" && (f.Left == c.Name || f.Right == c.Name) {
				r.offStuds(f, c.Name, c.Board, f.Layers.Board)
				r.offStuds(f, c.Name, c.Finished, f.Layers.Board+f.Layers.Bed+f.Layers.Tile)
			}
		}
	}
}

// offStuds: a wall's corner lies square off the line of its studs, in the room.
func (r *rechecker) offStuds(f readFace, corner string, p readXY, by num) {
	a, b := r.stud(f.Left), r.stud(f.Right)
	if off := -cross(a, b, pt{p.X.mm(), p.Y.mm()})/dist(a, b) - by.mm(); math.Abs(off) > 2*grid {
		r.complain("%s at corner %s: its layers are %v mm, the corner is off by %.4f", f.Name, corner, by.mm(), off)
	}
}

func (r *rechecker) stud(name string) pt {
	for _, c := range r.plan.Survey.Corners {
		if c.Name == name {
			return pt{c.Stud.X.mm(), c.Stud.Y.mm()}
		}
	}
	return pt{}
}

// closing: the largest closing error is one of the readings', and no other is larger; a reading more than the corners and points need is one
// of freedom; a superseded reading tells by how much a later one of the same line differs.
func (r *rechecker) closing() {
	s := r.plan.Survey
	most, used := num(0), 0
	for _, m := range s.Readings {
		if m.Use == "used" {
			used++
		}
		if m.Closing != nil {
			most = max(most, *m.Closing, -*m.Closing)
		}
		if m.Use == "superseded" && !r.replaced(m.Name, m.Differs, m.Measured) {
			r.complain("reading %s: no later one differs by that", m.Name)
		}
	}
	if s.Closing != nil && max(*s.Closing, -*s.Closing) != most {
		r.complain("survey: the largest closing error is %v, said to be %v", most.mm(), s.Closing.mm())
	}
	if free := used - 2*(len(s.Corners)+len(s.Points)) + 3; len(s.Corners) > 0 && s.Freedom != max(0, free) {
		r.complain("survey: freedom is %d, said to be %d", free, s.Freedom)
	}
}

func (r *rechecker) replaced(name string, differs *num, measured num) bool {
	for _, m := range r.plan.Survey.Readings {
		if m.Name == name && m.Use == "used" && differs != nil && m.Measured-measured == *differs {
			return true
		}
	}
	return false
}

// setFaces: the faces that the document lays tile on are those with tile work, and no two have one place in the order of setting.
func (r *rechecker) setFaces() {
	laid, place := map[string]bool{}, map[int]string{}
	for _, w := range r.plan.Tiling {
		laid[w.Face] = true
	}
	for _, f := range r.plan.Faces {
		if f.Set != laid[f.Name] {
			r.complain("%s: set: %v, and laid: %v", f.Name, f.Set, laid[f.Name])
		}
		if other, ok := place[f.Order]; ok && f.Order > 0 {
			r.complain("%s and %s are both number %d in the order of setting", f.Name, other, f.Order)
		}
		place[f.Order] = f.Name
	}
}

// floorOf: a wall's board stands on the floor's board; bed and tile over that make the floor that is told of the wall.
func (r *rechecker) floorOf(f readFace) {
	low, high, ok := math.Inf(1), math.Inf(-1), false
	for _, e := range f.Edges {
		for _, s := range sidesOf(f.Board, e.Label) {
			if e.Kind == "floor" {
				low, high, ok = min(low, s[0].y, s[1].y), max(high, s[0].y, s[1].y), true
			}
		}
	}
	for _, o := range r.plan.Faces {
		if o.Kind == "floor" {
			low, high = low+o.Layers.Bed.mm()+o.Layers.Tile.mm(), high+o.Layers.Bed.mm()+o.Layers.Tile.mm()
		}
	}
	if ok && f.Floor != nil && (math.Abs(low-f.Floor.Low.mm()) > grid || math.Abs(high-f.Floor.High.mm()) > grid) {
		r.complain("%s: its floor is from %v to %v, said to be %v to %v", f.Name, low, high, f.Floor.Low.mm(), f.Floor.High.mm())
	}
}

// opening: nothing of the board lies in an opening, and each of its corners that stands in the face is one of the board's outline.
func (r *rechecker) opening(f readFace, o readOpening) {
	lo, hi := pt{o.Rect.Left.mm(), o.Rect.Bottom.mm()}, pt{o.Rect.Right.mm(), o.Rect.Top.mm()}
	box := shape{{lo, {hi.x, lo.y}, hi, {lo.x, hi.y}}}
	board := shapeOf(f.Board)
	if in := common(box, board); in > grid*box.around() {
		r.complain("%s: %.3f mm² of its board lie in %s", f.Name, in, o.Name)
	}
	for _, c := range box[0] {
		at := math.Inf(1)
		for _, ring := range board {
			for _, p := range ring {
				at = min(at, dist(p, c))
			}
		}
		if (shape{board[0]}).holds(c) && at > grid/2 {
			r.complain("%s: a corner of %s is not on the board's outline", f.Name, o.Name)
		}
	}
}

// sameEdges: the edges that pieces meet are the face's own, then those between fields.
func (r *rechecker) sameEdges(w readWork, f readFace) {
	if len(w.Edges) < len(f.Edges) {
		r.complain("%s: fewer edges than the face has", w.Face)
		return
	}
	for i, e := range f.Edges {
		if w.Edges[i] != e {
			r.complain("%s: edge %d is not the face's", w.Face, e.Label)
		}
	}
	for i, e := range w.Edges {
		if e.Label != i+1 {
			r.complain("%s: edge %d has label %d", w.Face, i+1, e.Label)
		}
	}
}
