package site

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
)

const floorName = "floor"

// faceName brings the ways to name a face of an opening together: "window > left jamb" is read as "window > left", which is its one name in
// all that is said and shown.
func faceName(name string) string {
	owner, part, ok := strings.Cut(name, ">")
	if !ok {
		return strings.TrimSpace(name)
	}
	part = strings.TrimSuffix(strings.TrimSpace(part), " jamb")
	return strings.TrimSpace(owner) + " > " + part
}

// orderOfSetting ranks the faces that tile is set on. What is set first runs through and is covered at its edge by what butts
// against it later. The written order comes first; the rest follows the usual one, and is listed as assumed.
func (s *solver) orderOfSetting() {
	s.rank = map[string]int{}
	for _, n := range s.doc.Setting.Order {
		s.setNext(faceName(n.Text))
	}
	s.usualOrder()
}

func (s *solver) setNext(face string) {
	if s.rank[face] == 0 && s.tiled(face) {
		s.names = append(s.names, face)
		s.rank[face] = len(s.names)
	}
}

// tiled reports whether the document lays tile on the face.
func (s *solver) tiled(face string) bool {
	for _, l := range s.doc.Lay {
		if faceName(l.Face) == face {
			return true
		}
	}
	return false
}

// usualOrder: the floor runs under the wall tile; the back wall runs through; the side walls butt and hide its cuts; then the walls
// farther from it round the room. In an opening the back runs through, the sill runs under the jambs and the head over them.
func (s *solver) usualOrder() {
	at := s.doc.Setting.At
	if s.tiled(floorName) && s.rank[floorName] == 0 {
		s.setNext(floorName)
		s.assume(at, rule.Practice.String(), "the floor is set first and runs under the wall tile")
	}
	if back, before := s.backWall(), len(s.names); back >= 0 {
		for _, i := range fromBack(back, len(s.walls)) {
			s.setNext(s.walls[i].name)
		}
		if len(s.names) > before+1 {
			s.assume(at, rule.Practice.String(), "{0} is set first of the walls and runs through; the side walls butt and hide its cuts", diag.T(s.walls[back].name))
		}
	}
	for _, o := range s.doc.Openings {
		for _, part := range revealParts {
			s.setNext(o.Name + " > " + part)
		}
	}
}

// revealParts in the usual order of setting.
var revealParts = [...]string{"back", "sill", "head", "left", "right"}

// fromBack counts the walls outward from the back wall, the left one first.
func fromBack(back, n int) []int {
	order := []int{back}
	for k := 1; len(order) < n; k++ {
		order = append(order, (back-k+n)%n)
		if len(order) < n {
			order = append(order, (back+k)%n)
		}
	}
	return order
}

// backWall is the wall seen on entering: the one written, else the one across from the first door, else the first.
func (s *solver) backWall() int {
	if len(s.walls) == 0 {
		return -1
	}
	if b := s.doc.Setting.BackWall; b.Known {
		if i := s.wallIndex(b.V); i >= 0 {
			return i
		}
	}
	for _, o := range s.doc.Openings {
		if i := s.wallIndex(o.In.Text); o.Kind == document.Door && i >= 0 {
			return (i + len(s.walls)/2) % len(s.walls)
		}
	}
	return 0
}

func (s *solver) wallIndex(name string) int {
	for i, w := range s.walls {
		if w.name == name {
			return i
		}
	}
	return -1
}
