package document

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
)

// check holds facts of the document against each other that need no geometry.
func (r *reader) check(m *Room) {
	r.checkSurvey(&m.Survey)
	r.checkNames(m)
	walls := r.checkWalls(m)
	onWall := func(in Name, a Across) { r.onWall(walls, in, a) }
	for _, l := range m.Lines {
		onWall(l.In, l.Across)
	}
	for _, o := range m.Openings {
		onWall(o.In, o.Across)
		r.checkOpening(o)
		r.checkExtent(o)
	}
	for _, s := range m.Stubs {
		onWall(s.In, s.Across)
		r.located(s.Name, s.At, s.In, s.Across, s.Up, s.FloorAt)
	}
	for _, b := range m.Boxes {
		onWall(b.In, b.Across)
		r.located(b.Name, b.At, b.In, b.Across, b.Up, b.FloorAt)
	}
	for _, b := range m.InWall {
		onWall(b.In, b.Across)
	}
	for _, c := range m.Cabinets {
		onWall(c.In, c.Across)
	}
	for _, t := range m.Tops {
		r.checkTop(m, walls, t)
	}
	r.checkFixtures(m, walls)
	r.checkLays(m, walls)
	for _, t := range m.Tiles {
		r.checkTile(t)
	}
	r.checkDays(&m.Days)
	r.checkGoods(m)
}

// checkNames keeps the words that the grammar needs for itself out of the names.
func (r *reader) checkNames(m *Room) {
	for _, c := range m.Survey.Corners {
		if c.Text == "left" || c.Text == "right" || c.Text == "highest" {
			r.stop("name-reserved", c.At, "{0} has a meaning of its own and can not name a corner", "give the corner another name", diag.T(c.Text))
		}
	}
	for _, w := range m.Walls {
		r.faceName(w.Name, w.At)
	}
	for _, o := range m.Openings {
		r.faceName(o.Name, o.At)
	}
}

func (r *reader) faceName(name string, at diag.Place) {
	if name == floorFace || strings.Contains(name, ">") {
		r.stop("name-reserved", at, "{0} has a meaning of its own: floor is the floor, and > stands before a face of an opening", "give it another name", diag.T(short(name)))
	}
}

func (r *reader) checkSurvey(s *Survey) {
	if len(s.Corners) > 0 && len(s.Corners) < 3 {
		r.stop("corners-few", s.Corners[0].At, "a floor has at least three corners; here are {0}", "name every corner, clockwise seen from above", diag.N(len(s.Corners)))
	}
	for _, p := range s.Points {
		if slices.ContainsFunc(s.Corners, func(c Name) bool { return c.Text == p.Text }) {
			r.stop("name-twice", p.At, "{0} is a corner already", "give the point another name", diag.T(p.Text))
		}
	}
}

// checkWalls checks that each wall runs between neighboring corners, each pair once, and gives the walls by name.
func (r *reader) checkWalls(m *Room) map[string]Wall {
	walls := map[string]Wall{}
	taken := map[[2]string]string{}
	for _, w := range m.Walls {
		walls[w.Name] = w
		if w.Left == "" {
			continue
		}
		line := [2]string{w.Left, w.Right}
		if first, twice := taken[line]; twice {
			r.stop("wall-twice", w.At, "{0} and {1} both run along {2}-{3}", "give each wall its own two corners", diag.T(first), diag.T(w.Name), diag.T(w.Left), diag.T(w.Right))
		}
		taken[line] = w.Name
		r.neighbors(m.Survey.Corners, w)
		for _, c := range slices.Concat(w.Lean, w.Heights, w.Diagonals) {
			r.endOf(w, c)
		}
		for _, g := range w.Straightedge {
			r.onWall(map[string]Wall{w.Name: w}, Name{w.Name, w.At}, g.Across)
		}
	}
	return walls
}

// neighbors checks that a wall's corners follow each other, clockwise.
func (r *reader) neighbors(corners []Name, w Wall) {
	place := func(name string) int {
		return slices.IndexFunc(corners, func(c Name) bool { return c.Text == name })
	}
	left, right, n := place(w.Left), place(w.Right), len(corners)
	switch {
	case left < 0 || right < 0 || (left+1)%n == right:
	case (right+1)%n == left:
		r.stop("wall-reversed", w.At, "{0} runs from {1} to {2}, counter to the order of the corners", "write {2}-{1}: facing the wall, the first is on the left, and the corners go clockwise seen from above", diag.T(w.Name), diag.T(w.Left), diag.T(w.Right))
	default:
		r.stop("wall-skips", w.At, "{1} and {2} are no neighbors, so no wall runs between them", "write two corners that follow each other; {1} is followed by {3}", diag.T(w.Name), diag.T(w.Left), diag.T(w.Right), diag.T(corners[(left+1)%n].Text))
	}
}

func (r *reader) endOf(w Wall, c AtCorner) {
	if c.Corner != w.Left && c.Corner != w.Right {
		r.stop("corner-elsewhere", c.Value.At, "{0} is no end of {1}", "the ends are {2} and {3}", diag.T(c.Corner), diag.T(w.Name), diag.T(w.Left), diag.T(w.Right))
	}
}

// onWall checks that a place along a wall counts from an end of that wall.
func (r *reader) onWall(walls map[string]Wall, in Name, a Across) {
	w, ok := walls[in.Text]
	if !ok || !a.Given || a.Side != FromCorner || w.Left == "" {
		return
	}
	switch a.From {
	case w.Left, w.Right, "left", "right":
		return
	}
	r.stop("corner-elsewhere", a.At, "{0} is no end of {1}", "count from {2} or {3}, or from a center line", diag.T(a.From), diag.T(w.Name), diag.T(w.Left), diag.T(w.Right))
}

// checkOpening checks that both extents of an opening are told, once.
func (r *reader) checkOpening(o Opening) {
	if o.Across.Given && !o.Across.Both && !o.Width.Known && !o.Width.Unknown {
		r.stop("extent-missing", o.Across.At, "how wide is {0}?", "write both edges, 24 to 48 from B, or add width", diag.T(o.Name))
	}
	if o.Up.Given && !o.Up.Both && !o.Height.Known && !o.Height.Unknown {
		r.stop("extent-missing", o.Up.At, "how high is {0}?", "write both heights, 48 to 84 above floor, or add height", diag.T(o.Name))
	}
	if o.Across.Both && o.Width.Known && o.Across.Hi-o.Across.Lo != o.Width.V {
		r.stop("extent-twice", o.Width.At, "{0} is {1} wide by its edges and {2} by its width", "keep the one that is right", diag.T(o.Name), diag.X(o.Across.Hi-o.Across.Lo), diag.X(o.Width.V))
	}
	if o.Up.Both && o.Height.Known && o.Up.Hi-o.Up.Lo != o.Height.V {
		r.stop("extent-twice", o.Height.At, "{0} is {1} high by its edges and {2} by its height", "keep the one that is right", diag.T(o.Name), diag.X(o.Up.Hi-o.Up.Lo), diag.X(o.Height.V))
	}
}

// located checks that a thing has the places that its face needs.
func (r *reader) located(name string, at diag.Place, in Name, a Across, u Up, off []AtWall) {
	switch {
	case in.Text == floorFace && len(off) < 2:
		r.stop("not-located", at, "{0} in the floor needs its distance from two walls", "add off: {basin wall: 12-1/2, end wall: 20}", diag.T(name))
	case in.Text != "" && in.Text != floorFace && a.At.Line == 0:
		r.stop("not-located", at, "where along the wall is {0}?", "add across: 24 from A", diag.T(name))
	case in.Text != "" && in.Text != floorFace && u.At.Line == 0:
		r.stop("not-located", at, "how high is {0}?", "add up: center 21 above floor", diag.T(name))
	}
}

func (r *reader) checkLays(m *Room, walls map[string]Wall) {
	for _, l := range m.Lay {
		face := Name{l.Face, l.At}
		for _, f := range l.Fields {
			r.onWall(walls, face, f.Across)
			r.onWall(walls, face, f.Pin.Across)
			if f.Across.Given && !f.Across.Both {
				r.stop("field-edge", f.Across.At, "one figure does not say which way the field {0} goes from there", "write both edges: 12 to 60 from A", diag.T(f.Name))
			}
			r.pinned(l.Face, f)
			if f.Border.Known && f.Pin.Given {
				r.found.Add(diag.Look, "border-pinned", f.Pin.At, "a border follows the outline and can not be pinned", "take the pin out")
			}
		}
		if l.ContinueFrom.Known && l.ContinueFrom.V == l.Face {
			r.stop("continues-itself", l.ContinueFrom.At, "{0} can not continue from itself", "name the face round the corner", diag.T(l.Face))
		}
		r.checkCenter(m, l)
	}
	r.checkCircles(m)
}

// pinned: a pin on a wall needs a place along it and a height, one on the floor the distances off two walls.
func (r *reader) pinned(face string, f Field) {
	p := f.Pin
	switch {
	case !p.Given:
	case face == floorFace && len(p.FloorAt) != 2:
		r.stop("not-located", p.At, "a pin on the floor needs its distance from two walls", "write off: {basin wall: 12-1/2, end wall: 20}")
	case face != floorFace && len(p.FloorAt) == 0 && (!p.Across.Given || !p.Up.Given):
		r.stop("not-located", p.At, "a pin needs a place along the face and a height", "write {across: 36 from A, up: 12 above floor}")
	}
}

// checkCircles finds faces that carry their joints round the room back to themselves.
func (r *reader) checkCircles(m *Room) {
	next := map[string]string{}
	for _, l := range m.Lay {
		if l.ContinueFrom.Known {
			next[l.Face] = l.ContinueFrom.V
		}
	}
	for _, l := range m.Lay {
		face, steps := next[l.Face], 1
		for face != "" && face != l.Face && steps <= len(m.Lay) {
			face, steps = next[face], steps+1
		}
		if face == l.Face && steps > 1 {
			r.stop("continues-in-circle", l.ContinueFrom.At, "{0} continues from {1}, and that in the end from {0}", "let one of these faces start by itself", diag.T(l.Face), diag.T(l.ContinueFrom.V))
		}
	}
}

// checkCenter checks that the center line of a layout stands on its own face.
func (r *reader) checkCenter(m *Room, l Lay) {
	for _, c := range m.Lines {
		if l.CenterOn.Known && c.Name == l.CenterOn.V && c.In.Text != l.Face && c.In.Text != "" {
			r.stop("center-elsewhere", l.CenterOn.At, "{0} is a line on {1}, not on {2}", "name a center line of this face", diag.T(c.Name), diag.T(c.In.Text), diag.T(l.Face))
		}
	}
}

func (r *reader) checkTile(t Tile) {
	r.checkThickness(t)
	if t.Shape == Hexagon && t.Length.Known && t.Width.Known && t.Length.V != t.Width.V {
		r.stop("hexagon-size", t.Length.At, "the two widths of the hexagon {0} differ", "write its width across flats twice, as 4 x 4", diag.T(t.Name))
	}
	if d := t.DryLay; d.Given && d.Tiles > 0 && d.Joints != d.Tiles-1 && d.Joints != d.Tiles && d.Joints != d.Tiles+1 {
		r.stop("dry-lay-count", d.At, "{0} tiles in a row have {1} joints between them, not {2}", "count again", diag.N(d.Tiles), diag.N(d.Tiles-1), diag.N(d.Joints))
	}
}

// checkThickness: a liner may be thicker than it is wide, and is laid so on purpose; a tile as thick as it is long is a slip of the pen.
func (r *reader) checkThickness(t Tile) {
	switch {
	case !t.Thick.Known || !t.Width.Known || t.Thick.At.Line == 0:
	case t.Length.Known && t.Thick.V >= t.Length.V:
		r.stop("tile-absurd", t.Thick.At, "{0} is as thick as it is long", "write length x width x thickness", diag.T(t.Name))
	case t.Thick.V > t.Width.V:
		r.found.Add(diag.Look, "tile-thick", t.Thick.At, "{0} is thicker than it is wide", "if it is no liner, write length x width x thickness", diag.T(t.Name))
	}
}
