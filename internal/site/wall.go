package site

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Labels of a wall's own edges; those of openings follow.
const (
	labelFloor   geom.Label = 1
	labelRight   geom.Label = 2
	labelCeiling geom.Label = 3
	labelLeft    geom.Label = 4
)

// wallFaces builds the face of every wall whose surroundings are known.
func (s *solver) wallFaces() {
	for _, i := range s.inDocumentOrder() {
		w := s.walls[i]
		if !s.solved(i) || !s.floor.known {
			s.list.Add(diag.Look, "face-unsolved", w.doc.At, "{0} is left out: a thickness that it ends at is not known", "write the thickness that is missing", diag.T(w.name))
			s.unbuilt(i)
			continue
		}
		e, ok := s.elevation(i)
		if !ok {
			s.places(w, e)
			continue
		}
		s.wallFace(i, e)
	}
}

// inDocumentOrder lists the walls that are written. Of the others nothing is said, and nothing can be wanted.
func (s *solver) inDocumentOrder() []int {
	var out []int
	for _, d := range s.doc.Walls {
		if i := s.wallIndex(d.Name); i >= 0 && s.walls[i].written && !slices.Contains(out, i) {
			out = append(out, i)
		}
	}
	return out
}

func (s *solver) wallFace(i int, e elevation) {
	w := s.walls[i]
	f := Face{Name: w.name, At: w.doc.At, Kind: WallFace, Set: w.build.set, Order: s.rank[w.name],
		BoardThick: w.build.board, BedThick: w.build.bed, TileThick: w.build.tile, BedLeast: w.build.least, BedMost: w.build.most,
		TileOff: w.build.finish(), Shims: shims(w.doc.Studs),
		LeftCorner: s.cornerName(w.left), RightCorner: s.cornerName(w.right), Bare: e.floor, shape: e}
	f.Edges = []Edge{s.edgeAtFloor(w), s.edgeAtCorner(i, w.right), s.edgeAtCeiling(w), s.edgeAtCorner(i, w.left)}
	board := e.raised(s.floor.board)
	finish := s.floor.board
	if !f.Edges[0].Runs {
		finish += s.floor.finish()
	}
	low, high := bounds(e.floor)
	f.LowFloor, f.HighFloor = low+finish, high+finish
	outer := geom.Region{wallRing(board, e.ceiling)}
	s.centerLines(&f)
	holes := s.openings(&f, outer)
	s.cutOut(&f, outer, holes)
	s.holes(&f)
	s.out.Faces = append(s.out.Faces, f)
}

// raised is the bare floor's line lifted to the floor's board; its ends stay on the leaning sides.
func (e elevation) raised(by unit.Length) []geom.Point {
	out := slices.Clone(e.floor)
	for i := range out {
		out[i].Y += by
	}
	last := len(out) - 1
	out[0].X, out[last].X = e.left(out[0].Y), e.right(out[last].Y)
	return out
}

// wallRing joins floor and ceiling lines, both from left to right, into a counter-clockwise outline.
func wallRing(floor, ceiling []geom.Point) geom.Ring {
	var r geom.Ring
	for _, p := range floor {
		r = append(r, geom.Vertex{P: p, Edge: labelFloor})
	}
	r[len(r)-1].Edge = labelRight
	for _, p := range slices.Backward(ceiling) {
		r = append(r, geom.Vertex{P: p, Edge: labelCeiling})
	}
	r[len(r)-1].Edge = labelLeft
	return r.Clean()
}

// hole is a rectangle cut out of a face: its four sides are labelled from first on, left, bottom, right, top.
type hole struct {
	rect  geom.Rect
	first geom.Label
}

func (h hole) region(r geom.Rect) geom.Region {
	return geom.Region{geom.RectRing(r, h.first, h.first+1, h.first+2, h.first+3)}
}

// grown is the hole with each side moved out by the gap at it: where no tile may be.
func (h hole) grown(f *Face) geom.Rect {
	r := h.rect
	r.Min.X -= f.gap(h.first)
	r.Min.Y -= f.gap(h.first + 1)
	r.Max.X += f.gap(h.first + 2)
	r.Max.Y += f.gap(h.first + 3)
	return r
}

// cutOut makes the board and the region where tile may be. Edges that leave nothing between them are said.
func (s *solver) cutOut(f *Face, outer geom.Region, holes []hole) {
	inner, err := geom.OffsetEdges(outer, f.gap)
	if err != nil {
		s.list.Add(diag.Stop, "face-too-small", f.At, "nothing is left of {0} between the joints at its edges", "look at its readings and joints", diag.T(f.Name))
		f.Board = outer
		return
	}
	var open, grown []geom.Region
	for _, h := range holes {
		open = append(open, h.region(h.rect))
		if g := h.grown(f); g.W() > 0 && g.H() > 0 {
			grown = append(grown, h.region(g))
		}
	}
	f.Board, f.Cut = s.less(f, outer, open), s.less(f, inner, grown)
}

func (s *solver) less(f *Face, g geom.Region, holes []geom.Region) geom.Region {
	if len(holes) == 0 {
		return g
	}
	out, err := g.Minus(holes)
	if err != nil {
		s.list.Add(diag.Stop, "face-broken", f.At, "the openings of {0} can not be cut out of it", "look at their places and sizes", diag.T(f.Name))
		return g
	}
	return out
}

func (f *Face) gap(l geom.Label) unit.Length {
	if l < 1 || int(l) > len(f.Edges) {
		return 0
	}
	return f.Edges[l-1].Gap
}

// edgeAtFloor: the wall tile ends a joint over the floor's tile, or runs down past it to a joint over the floor's board.
func (s *solver) edgeAtFloor(w wall) Edge {
	e := Edge{Kind: AtFloor, Name: floorName, At: w.doc.At, Other: floorName, Soft: true, Weight: weightFloor}
	e.Joint = s.jointOr(s.doc.Setting.FloorJoint)
	e.Runs = w.build.set && s.floor.set && s.rank[w.name] < s.rank[floorName]
	if e.Runs {
		e.Gap, e.Hidden = e.Joint, max(0, s.floor.finish()-e.Joint)
	} else {
		e.Gap = s.floor.finish() + e.Joint
	}
	return e
}

func (s *solver) edgeAtCeiling(w wall) Edge {
	j := s.jointOr(s.doc.Setting.CeilingJoint)
	return Edge{Kind: AtCeiling, Name: "ceiling", At: w.doc.At, Soft: true, Joint: j, Gap: j, Weight: weightCeiling}
}
