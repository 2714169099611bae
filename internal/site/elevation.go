package site

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// elevation is the shape of one wall in its face's frame: x from the left end of its board at the level line, y from the level line.
// The sides lean as the neighbors' faces do. What the wall itself leans changes lengths on it by less than 0.001 in in 8 ft and is left out.
type elevation struct {
	width                 unit.Length // of the board at the level line
	leanLeft, leanRight   unit.Length // how far right the sides have moved over their heights
	tallLeft, tallRight   unit.Length // the heights that the leans are over
	downLeft, downRight   unit.Length // from the level line to the bare floor and to the ceiling, at the sides
	upLeft, upRight       unit.Length
	floor, ceiling        []geom.Point
	cornerLeft, cornerEnd [3]unit.Length // x of the corners on each surface, at the level line
}

// left and right are where the sides are at a height.
func (e elevation) left(y unit.Length) unit.Length { return lean(e.leanLeft, e.tallLeft, y) }
func (e elevation) right(y unit.Length) unit.Length {
	return e.width + lean(e.leanRight, e.tallRight, y)
}

func lean(by, over, y unit.Length) unit.Length {
	if over <= 0 {
		return 0
	}
	return by.MulDiv(int64(y), int64(over))
}

// elevation solves the shape of wall i. ok is false where the floor or the ceiling is not known.
func (s *solver) elevation(i int) (e elevation, ok bool) {
	w := s.walls[i]
	plateL, plateR := s.ends(i, document.Plate)
	topL, topR := s.ends(i, document.Ceiling)
	a := newAxis(plateL, plateR)
	lv, rv := s.endLevels(w)
	e.downLeft, e.downRight, e.upLeft, e.upRight = lv.down, rv.down, lv.up, rv.up
	e.leanLeft, e.tallLeft = a.x(topL), lv.down+lv.up
	e.leanRight, e.tallRight = a.x(topR)-a.length, rv.down+rv.up
	start := lean(e.leanLeft, e.tallLeft, lv.down)
	e.width = a.length + lean(e.leanRight, e.tallRight, rv.down) - start
	for _, to := range []document.Surface{document.Stud, document.Board, document.TileFace} {
		e.cornerLeft[to] = a.x(s.point(w.left, to, document.LevelLine)) - start
		e.cornerEnd[to] = a.x(s.point(w.right, to, document.LevelLine)) - start
	}
	s.plumb(i, &e)
	return e, s.lines(i, &e)
}

// ends are the corners of wall i's board at a height.
func (s *solver) ends(i int, h document.Height) (left, right geom.Point) {
	d := s.surface(document.Board, h)
	_, left = s.at(s.walls[i].left, d)
	right, _ = s.at(s.walls[i].right, d)
	return left, right
}

// lines draws the bare floor and the ceiling along the wall, from its left side to its right.
func (s *solver) lines(i int, e *elevation) bool {
	w := s.walls[i]
	l, r := s.levels[w.left], s.levels[w.right]
	down := s.stations(w, e, w.doc.FloorLine, end{e.downLeft, l.hasDown}, end{e.downRight, r.hasDown})
	up := s.stations(w, e, w.doc.CeilingLine, end{e.upLeft, l.hasUp}, end{e.upRight, r.hasUp})
	if len(down) == 0 {
		s.missing(w, "floor-unknown", "where the floor is along {0} is not known", "down")
	}
	if len(up) == 0 {
		s.missing(w, "ceiling-unknown", "where the ceiling is along {0} is not known", "up")
	}
	if len(down) == 0 || len(up) == 0 {
		return false
	}
	if !e.sane(down) || !e.sane(up) {
		s.empty(w)
		return false
	}
	e.floor, e.ceiling = e.polyline(down, -1), e.polyline(up, 1)
	return s.open(w, e)
}

// sane: a wall that has no width, is lower than an inch or leans more than it is high is a slip of the pen.
func (e elevation) sane(list []document.Station) bool {
	for _, p := range list {
		if p.Value.Abs() > farthest {
			return false
		}
	}
	stands := func(lean, tall unit.Length) bool { return lean == 0 || tall > unit.Inch && lean.Abs() < tall }
	return e.width > 0 && stands(e.leanLeft, e.tallLeft) && stands(e.leanRight, e.tallRight)
}

func (s *solver) empty(w wall) {
	s.list.Add(diag.Stop, "wall-empty", w.doc.At, "{0} has no width or no height", "look at its readings, and at those from the level line", diag.T(w.name))
}

func (s *solver) missing(w wall, code, text, key string) {
	s.list.Add(diag.Stop, code, w.doc.At, text, "measure from the level line at corner {1} and write it under level line > {2}", diag.T(w.name), diag.T(s.cornerName(w.left)), diag.T(key))
}

// end is a reading at one end of a wall.
type end struct {
	v    unit.Length
	read bool
}

// stations merges what is read at the corners with what is read along the wall, whose places count from its left corner. A corner
// without a reading is taken level with the nearest station.
func (s *solver) stations(w wall, e *elevation, along []document.Station, left, right end) []document.Station {
	var out []document.Station
	from := e.cornerLeft[s.doc.Survey.Touches.Or(document.Stud)]
	first, last := unit.Length(0), e.width
	if left.read {
		out = append(out, document.Station{X: first, Value: left.v})
	}
	for _, p := range along {
		x := p.X + from
		s.disagrees(w, p, x <= first, left)
		s.disagrees(w, p, x >= last, right)
		if (x > first || !left.read) && (x < last || !right.read) {
			out = append(out, document.Station{X: min(max(x, first), last), Value: p.Value})
		}
	}
	slices.SortStableFunc(out, func(a, b document.Station) int { return cmp.Compare(a.X, b.X) })
	if right.read {
		out = append(out, document.Station{X: last, Value: right.v})
	}
	return s.closed(w, out, last)
}

// disagrees says where a station at the end of a wall is not what was read at the corner; the corner's reading counts.
func (s *solver) disagrees(w wall, p document.Station, atEnd bool, corner end) {
	if by := (p.Value - corner.v).Abs(); atEnd && corner.read && by > levelSlack {
		s.list.Add(diag.Look, "levels-disagree", p.At, "{0} along {1} is {2} off what is read at its corner", "measure there again from the level line",
			diag.X(p.Value), diag.T(w.name), diag.X(by))
	}
}

// levelSlack is how far two readings of one height may differ before it is worth a word: a tape's 1/16 in twice (our own).
const levelSlack = unit.Inch / 8

// closed carries the first and the last station level to the ends of the wall.
func (s *solver) closed(w wall, list []document.Station, last unit.Length) []document.Station {
	if len(list) == 0 {
		return nil
	}
	open := func(corner int) {
		s.list.Add(diag.Unchecked, "level-unread", w.doc.At, "not read at corner {0} from the level line: {1} is taken level to there", "measure up and down from the level line at corner {0}",
			diag.T(s.cornerName(corner)), diag.T(w.name))
	}
	if list[0].X > 0 {
		list = append([]document.Station{{X: 0, Value: list[0].Value}}, list...)
		open(w.left)
	}
	if end := list[len(list)-1]; end.X < last {
		list = append(list, document.Station{X: last, Value: end.Value})
		open(w.right)
	}
	return list
}

// polyline turns stations into points; its ends lie on the leaning sides.
func (e elevation) polyline(list []document.Station, sign unit.Length) []geom.Point {
	out := make([]geom.Point, 0, len(list))
	for k, p := range list {
		at := geom.Point{X: p.X, Y: sign * p.Value}
		switch k {
		case 0:
			at.X = e.left(at.Y)
		case len(list) - 1:
			at.X = e.right(at.Y)
		}
		out = append(out, at)
	}
	return out
}

// open checks that the wall has a width and that the ceiling is over the floor.
func (s *solver) open(w wall, e *elevation) bool {
	_, top := bounds(e.floor)
	low, _ := bounds(e.ceiling)
	if low <= top || e.left(top) >= e.right(top) || e.left(low) >= e.right(low) {
		s.empty(w)
		return false
	}
	return true
}

// bounds returns the lowest and the highest y of a line.
func bounds(line []geom.Point) (low, high unit.Length) {
	low, high = line[0].Y, line[0].Y
	for _, p := range line {
		low, high = min(low, p.Y), max(high, p.Y)
	}
	return low, high
}

// heightAt is the y of a line at x.
func heightAt(line []geom.Point, x unit.Length) unit.Length {
	for k := 1; k < len(line); k++ {
		a, b := line[k-1], line[k]
		if x <= b.X || k == len(line)-1 {
			if b.X == a.X {
				return max(a.Y, b.Y)
			}
			return a.Y + (b.Y-a.Y).MulDiv(int64(x-a.X), int64(b.X-a.X))
		}
	}
	return line[0].Y
}
