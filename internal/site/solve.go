package site

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// solver carries one room from readings to faces. Stages fill it in the order of Solve and never go back.
type solver struct {
	doc     document.Room
	out     Room
	list    diag.List
	assumed []diag.Assumption
	raw     []geom.Point       // the outline's corners at the studs, at the plate
	points  []int              // of the network: all corners, and the floor points that are fixed
	spots   map[int]geom.Point // where those floor points are
	levels  []level            // at each corner
	walls   []wall             // walls[i] runs from corner i to the next
	floor   build
	inner   map[string]build // of the inner faces of openings
	rank    map[string]int   // order of setting of a face, from 1
	names   []string         // faces in the order of setting
}

// wall is one side of the outline with what is written about it; doc is empty where nothing is.
type wall struct {
	doc         document.Wall
	written     bool
	name        string
	left, right int
	leanLeft    unit.Length // the top leans into the room by this much over the height
	leanRight   unit.Length
	twist       unit.Length // by how much the two differ
	build       build
}

// Solve turns readings into the true shape of the room. What can not be solved is left out and said in the findings; what
// the document is silent about is assumed, and listed.
func Solve(doc document.Room) (Room, diag.List, []diag.Assumption) {
	if doc.Survey.At.Path == "" && len(doc.Survey.Corners) == 0 && len(doc.Walls) == 0 && !doc.Floor.Given {
		return Room{}, nil, nil // nothing of a room is written, and nothing is assumed of it
	}
	s := &solver{doc: doc, inner: map[string]build{}}
	if s.doc.Setting.At.Path == "" {
		s.doc.Setting.At = diag.Place{Path: "setting"}
	}
	if s.doc.Floor.At.Path == "" {
		s.doc.Floor.At = diag.Place{Path: floorName}
	}
	s.out.tapedTo = doc.Survey.Touches.Or(document.Stud)
	s.placeWalls()
	s.readLevels()
	s.orderOfSetting()
	s.buildUps()
	if s.survey() {
		s.finishedFloor()
		s.corners()
		s.stationsOnWalls()
		s.wallFaces()
		s.floorFace()
		s.reveals()
		s.flatness()
		s.buried()
	}
	s.frame()
	return s.out, s.list.Sorted(), s.assumed
}

// assume lists a default, once.
func (s *solver) assume(at diag.Place, source, text string, values ...diag.Value) {
	for _, a := range s.assumed {
		if a.At == at && a.Text == text && slices.Equal(a.Values, values) {
			return
		}
	}
	s.assumed = append(s.assumed, diag.Assumption{At: at, Text: text, Values: values, Source: source})
}

// Face returns the face of that name.
func (r Room) Face(name string) (Face, bool) {
	name = faceName(name)
	for _, f := range r.Faces {
		if f.Name == name {
			return f, true
		}
	}
	return Face{}, false
}

// placeWalls makes one wall for each side of the outline. A side that no wall is written for is bare and untiled.
func (s *solver) placeWalls() {
	corners := s.doc.Survey.Corners
	n := len(corners)
	for i := range corners {
		w := wall{left: i, right: (i + 1) % n, name: corners[i].Text + "-" + corners[(i+1)%n].Text}
		w.doc.At = s.doc.Survey.At
		for _, d := range s.doc.Walls {
			s.claim(&w, d)
		}
		s.walls = append(s.walls, w)
	}
	for _, d := range s.doc.Walls {
		if !s.runsAlong(d) {
			s.list.Add(diag.Stop, "wall-not-a-side", d.At, "{0} does not run between two neighboring corners", "write along: the wall's left corner, a hyphen, its right corner", diag.T(d.Name))
		}
	}
}

// claim writes d on the side that it runs along. Seen from the room the outline's corners are met from left to right; a
// wall written the other way round is turned, for its readings name their corners.
func (s *solver) claim(w *wall, d document.Wall) {
	left, right := s.cornerName(w.left), s.cornerName(w.right)
	switch {
	case d.Left == right && d.Right == left:
		s.list.Add(diag.Look, "wall-turned", d.At, "facing {0}, {1} is on the left", "write along: {1}-{2}", diag.T(d.Name), diag.T(left), diag.T(right))
	case d.Left != left || d.Right != right:
		return
	}
	if w.written {
		s.list.Add(diag.Stop, "wall-twice", d.At, "{0} runs along {1}-{2} as {3} does", "give one of them another side", diag.T(d.Name), diag.T(left), diag.T(right), diag.T(w.name))
		return
	}
	w.doc, w.written, w.name = d, true, d.Name
	w.leanLeft, w.leanRight = atCorner(d.Lean, left), atCorner(d.Lean, right)
}

func (s *solver) runsAlong(d document.Wall) bool {
	for _, w := range s.walls {
		l, r := s.cornerName(w.left), s.cornerName(w.right)
		if d.Left == l && d.Right == r || d.Left == r && d.Right == l {
			return true
		}
	}
	return false
}

func (s *solver) cornerName(c int) string { return s.doc.Survey.Corners[c].Text }

// cornerIndex returns the number of a corner, or -1.
func (s *solver) cornerIndex(name string) int {
	for i, c := range s.doc.Survey.Corners {
		if c.Text == name {
			return i
		}
	}
	return -1
}

// atCorner returns the value written for a corner, 0 where none is.
func atCorner(list []document.AtCorner, name string) unit.Length {
	v, _ := findCorner(list, name)
	return v.V
}

func findCorner(list []document.AtCorner, name string) (document.Value[unit.Length], bool) {
	for _, a := range list {
		if a.Corner == name && a.Value.Known {
			return a.Value, true
		}
	}
	return document.Value[unit.Length]{}, false
}
