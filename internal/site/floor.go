package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// floorFace builds the floor's face in the plan frame. Its edges are the walls, in the order of the corners.
func (s *solver) floorFace() {
	if !s.floor.known || !s.allKnown() {
		return
	}
	b := s.floor
	f := Face{Name: floorName, At: s.doc.Floor.At, Kind: FloorFace, Set: b.set, Order: s.rank[floorName],
		BoardThick: b.board, BedThick: b.bed, TileThick: b.tile, BedLeast: b.least, BedMost: b.most, TileOff: b.finish()}
	f.LowFloor, f.HighFloor = s.floorRange()
	for i := range s.walls {
		f.Edges = append(f.Edges, s.edgeOfFloor(i))
	}
	outer := geom.Region{s.ring(document.Board).Clean()}
	s.floorLines(&f)
	holes := s.floorBoxes(&f, outer)
	s.cutOut(&f, outer, holes)
	s.floorHoles(&f)
	s.out.Faces = append(s.out.Faces, f)
}

func (s *solver) allKnown() bool {
	for _, w := range s.walls {
		if !w.build.known {
			return false
		}
	}
	return true
}

// floorRange is the lowest and the highest corner of the finished floor; zero where none was read.
func (s *solver) floorRange() (low, high unit.Length) {
	first := true
	for _, l := range s.levels {
		if !l.hasDown {
			continue
		}
		y := s.finishAt(-l.down)
		if first {
			low, high, first = y, y, false
		}
		low, high = min(low, y), max(high, y)
	}
	return low, high
}

// edgeOfFloor is the floor's edge along wall i: under the wall's tile, or against it.
func (s *solver) edgeOfFloor(i int) Edge {
	w := s.walls[i]
	e := Edge{Kind: InsideCorner, Name: w.name, At: w.doc.At, Other: w.name, Soft: true, Weight: weightFloor}
	e.Joint = s.jointOr(s.doc.Setting.PerimeterJoint)
	e.Runs = s.floor.set && w.build.set && s.rank[floorName] < s.rank[w.name]
	if e.Runs {
		e.Gap, e.Hidden = e.Joint, max(0, w.build.finish()-e.Joint)
	} else {
		e.Gap = w.build.finish() + e.Joint
	}
	return e
}

// floorLines carries the center lines of the first wall onto the floor, where they run square off that wall; and it says what the ends
// of the floor are: those of that wall.
func (s *solver) floorLines(f *Face) {
	f.LeftCorner, f.RightCorner = s.cornerName(0), s.cornerName(1)
	left, right := s.ends(0, document.Plate)
	for _, to := range []document.Surface{document.Stud, document.Board, document.TileFace} {
		f.shape.cornerLeft[to] = s.point(0, to, document.Plate).X
		f.shape.cornerEnd[to] = s.point(1, to, document.Plate).X
	}
	f.shape.width = right.X - left.X
	if w, ok := s.out.Face(s.walls[0].name); ok {
		for _, l := range w.Lines {
			f.Lines = append(f.Lines, CenterLine{l.Name, left.X + l.X - w.shape.left(w.Bare[0].Y)})
		}
	}
	s.centerLines(f)
}

// offWalls is the point at given distances square off two walls, from the surface that the tape touched.
func (s *solver) offWalls(list []document.AtWall) (geom.Point, bool) {
	if len(list) != 2 || !list[0].Value.Known || !list[1].Value.Known {
		return geom.Point{}, false
	}
	i, j := s.wallIndex(list[0].Wall), s.wallIndex(list[1].Wall)
	if i < 0 || j < 0 || i == j {
		return geom.Point{}, false
	}
	a, b := s.offWall(i, list[0].Value.V)
	c, d := s.offWall(j, list[1].Value.V)
	return geom.Intersect(a, b, c, d)
}

func (s *solver) offWall(i int, off unit.Length) (left, right geom.Point) {
	to := s.surface(s.out.tapedTo, document.Plate)
	return s.line(i, func(w, c int) unit.Length { return to(w, c) + off })
}

// floorHoles places the stub-outs in the floor.
func (s *solver) floorHoles(f *Face) {
	for _, b := range s.doc.Stubs {
		if b.In.Text != floorName {
			continue
		}
		if p, ok := s.offWalls(b.FloorAt); ok {
			s.pierce(f, b, p)
		} else {
			s.unplacedInFloor(b.At, b.Name)
		}
	}
}

func (s *solver) unplacedInFloor(at diag.Place, name string) {
	s.list.Add(diag.Stop, "place-unknown", at, "where {0} is in the floor can not be worked out", "write off: with its distances from two walls that meet", diag.T(name))
}

// floorBoxes cuts the boxes out of the floor; their distances are to their centers.
func (s *solver) floorBoxes(f *Face, outer geom.Region) []hole {
	var holes []hole
	for _, b := range s.doc.Boxes {
		if b.In.Text != floorName {
			continue
		}
		p, ok := s.offWalls(b.FloorAt)
		if !ok || b.Width.V <= 0 || b.Height.V <= 0 {
			s.unplacedInFloor(b.At, b.Name)
			continue
		}
		low := p.Sub(geom.Point{X: b.Width.V / 2, Y: b.Height.V / 2})
		r := geom.Rect{Min: low, Max: low.Add(geom.Point{X: b.Width.V, Y: b.Height.V})}
		if s.within(*f, outer, b.Name, b.At, r, false) {
			holes = s.cutBox(f, holes, b, r)
		}
	}
	s.overlaps(f)
	return holes
}
