package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// level is what the level line says at one corner: down to the bare floor, up to the ceiling.
type level struct {
	down, up       unit.Length
	hasDown, hasUp bool
}

func (l level) known() bool { return l.hasDown && l.hasUp && l.down+l.up > 0 }

// endLevels are the heights at a wall's ends: read at the corners, else the nearest station along the wall, else level with the other end.
func (s *solver) endLevels(w wall) (left, right level) {
	left, right = s.levels[w.left], s.levels[w.right]
	floor, ceiling := w.doc.FloorLine, w.doc.CeilingLine
	left = left.or(first(floor), first(ceiling))
	right = right.or(last(floor), last(ceiling))
	l, r := left, right
	return left.or(r.downEnd(), r.upEnd()), right.or(l.downEnd(), l.upEnd())
}

// or takes what is not read from the ends given. It counts as read from then on.
func (l level) or(down, up end) level {
	if !l.hasDown {
		l.down, l.hasDown = down.v, down.read
	}
	if !l.hasUp {
		l.up, l.hasUp = up.v, up.read
	}
	return l
}

func (l level) downEnd() end { return end{l.down, l.hasDown} }
func (l level) upEnd() end   { return end{l.up, l.hasUp} }

func first(list []document.Station) end {
	if len(list) == 0 {
		return end{}
	}
	return end{list[0].Value, true}
}

func last(list []document.Station) end {
	if len(list) == 0 {
		return end{}
	}
	return end{list[len(list)-1].Value, true}
}

// readLevels collects the readings from the level line. Where one is missing, a wall's height at that corner gives it.
func (s *solver) readLevels() {
	for c, name := range s.doc.Survey.Corners {
		var l level
		if v, ok := findCorner(s.doc.Survey.Down, name.Text); ok {
			l.down, l.hasDown = v.V, true
		}
		if v, ok := findCorner(s.doc.Survey.Up, name.Text); ok {
			l.up, l.hasUp = v.V, true
		}
		for _, w := range s.walls {
			if w.left == c || w.right == c {
				l.complete(w.doc.Heights, name.Text)
			}
		}
		s.levels = append(s.levels, l)
	}
}

func (l *level) complete(heights []document.AtCorner, corner string) {
	h, ok := findCorner(heights, corner)
	switch {
	case ok && l.hasDown && !l.hasUp:
		l.up, l.hasUp = h.V-l.down, true
	case ok && l.hasUp && !l.hasDown:
		l.down, l.hasDown = h.V-l.up, true
	}
}

// finishAt is the height of the finished floor over a bare floor.
func (s *solver) finishAt(bare unit.Length) unit.Length {
	return bare + s.floor.board + s.floor.finish()
}

// finishedFloor settles what "above finished floor" counts from, by one rule for the whole room.
func (s *solver) finishedFloor() {
	f := s.doc.Survey.Finished
	switch f.Rule {
	case document.BelowLevel:
		s.out.FinishedFloor, s.out.FinishedKnown = -f.Below, true
		s.out.FinishedRule = "the height written below the level line"
	case document.AtNamedCorner:
		if c := s.cornerIndex(f.Corner); c >= 0 && s.levels[c].hasDown {
			s.out.FinishedFloor, s.out.FinishedKnown = s.finishAt(-s.levels[c].down), true
			s.out.FinishedRule = "the finished floor at corner " + f.Corner
		}
	default:
		s.highestFloor()
	}
}

// highestFloor takes the highest point of the finished floor that was read: at the corners and along the walls.
func (s *solver) highestFloor() {
	take := func(down unit.Length, where string) {
		if y := s.finishAt(-down); !s.out.FinishedKnown || y > s.out.FinishedFloor {
			s.out.FinishedFloor, s.out.FinishedKnown = y, true
			s.out.FinishedRule = "the highest point of the finished floor, " + where
		}
	}
	for c, l := range s.levels {
		if l.hasDown {
			take(l.down, "at corner "+s.cornerName(c))
			continue
		}
		s.list.Add(diag.Unchecked, "floor-unread", s.doc.Survey.At, "not read: the floor at corner {0}; the highest point may be there", "measure down from the level line at corner {0}", diag.T(s.cornerName(c)))
	}
	for _, w := range s.walls {
		for _, p := range w.doc.FloorLine {
			take(p.Value, "along "+w.name)
		}
	}
}
