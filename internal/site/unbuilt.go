package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// A wall that is left out for one missing fact can still have a slip of the pen in another. What is known of it is held against its
// length, so that a person hears of everything in one go.

// looseSlack is how far a thing may reach over a wall whose build-up or heights are not known: more than the layers at its ends (our own).
const looseSlack = 2 * unit.Inch

// unbuilt checks the places on a wall with a thickness that is not known. What its other readings say of each other is not told: they may
// have been taken to the surface that is not known.
func (s *solver) unbuilt(i int) {
	before := len(s.list)
	e, _ := s.elevation(i)
	said := s.list[before:]
	s.list = s.list[:before:before]
	for _, f := range said {
		if f.Code == "floor-unknown" || f.Code == "ceiling-unknown" {
			s.list = append(s.list, f)
		}
	}
	s.places(s.walls[i], e)
}

// places holds the things on a wall that gets no face against its width and, where they are known, its floor and ceiling.
func (s *solver) places(w wall, e elevation) {
	if e.width <= 0 {
		return
	}
	f := Face{Name: w.name, At: w.doc.At, Kind: WallFace, LeftCorner: s.cornerName(w.left), RightCorner: s.cornerName(w.right), Bare: e.floor, shape: e}
	s.centerLines(&f)
	for _, o := range s.doc.Openings {
		if o.In.Text == w.name {
			bottom, top, ok := s.bottomTop(f, o)
			s.beside(f, o.Name, o.At, o.Across, o.Width.V)
			s.overUnder(f, o.Name, o.At, bottom, top, ok && o.Kind != document.Door)
		}
	}
	for _, b := range s.doc.Boxes {
		if b.In.Text == w.name {
			bottom, top, ok := s.out.up(f, b.Up, b.Height.V)
			s.beside(f, b.Name, b.At, b.Across, b.Width.V)
			s.overUnder(f, b.Name, b.At, bottom, top, ok && b.Up.Given)
		}
	}
	for _, b := range s.doc.Stubs {
		if b.In.Text == w.name {
			y, _, ok := s.out.up(f, b.Up, 0)
			s.beside(f, b.Name, b.At, b.Across, 0)
			s.overUnder(f, b.Name, b.At, y, y, ok && b.Up.Given)
		}
	}
}

// beside says what reaches beyond an end of the wall. A place that names no corner of it has been told when the document was read.
func (s *solver) beside(f Face, name string, at diag.Place, a document.Across, width unit.Length) {
	lo, hi, ok := f.across(a, width, s.out.tapedTo, 0)
	if ok {
		s.over(f, name, at, max(-lo, hi-f.shape.width))
	}
}

// overUnder says what reaches above the ceiling or below the floor, where both are known.
func (s *solver) overUnder(f Face, name string, at diag.Place, bottom, top unit.Length, known bool) {
	if !known || len(f.shape.ceiling) == 0 || len(f.Bare) == 0 {
		return
	}
	low, _ := bounds(f.Bare)
	_, high := bounds(f.shape.ceiling)
	s.over(f, name, at, max(low-bottom, top-high))
}

func (s *solver) over(f Face, name string, at diag.Place, by unit.Length) {
	if by > looseSlack {
		s.list.Add(diag.Stop, "outside-wall", at, "{0} reaches {1} outside {2}, as far as that wall is known", "look at its place and size", diag.T(name), diag.L(by), diag.T(f.Name))
	}
}

// stationSlack is how far a station may be beyond the end of its wall: a hand's reading of where the level stood (our own).
const stationSlack = unit.Inch / 2

// stationsOnWalls says which readings along a wall are beyond its end.
func (s *solver) stationsOnWalls() {
	for _, i := range s.inDocumentOrder() {
		w, length := s.walls[i], s.longest(i)
		for _, k := range []struct {
			key  string
			list []document.Station
		}{{"floor", w.doc.FloorLine}, {"ceiling", w.doc.CeilingLine}, {"profile", w.doc.Profile}, {"studs", w.doc.Studs}} {
			for _, p := range k.list {
				if p.X > length+stationSlack {
					s.list.Add(diag.Stop, "station-beyond", stationPlace(w, p), "the {0} of {1} has a reading at {2}, and the wall is {3} long", "count from the wall's left end, and look at the unit",
						diag.T(k.key), diag.T(w.name), diag.X(p.X), diag.L(length))
				}
			}
		}
	}
}

func stationPlace(w wall, p document.Station) diag.Place {
	if p.At.Path == "" {
		return w.doc.At
	}
	return p.At
}

// longest is a wall's length between its corners, on that of its surfaces on which it is longest.
func (s *solver) longest(i int) unit.Length {
	var most unit.Length
	for _, to := range []document.Surface{document.Stud, document.Board, document.TileFace} {
		most = max(most, newAxis(s.point(s.walls[i].left, to, document.Plate), s.point(s.walls[i].right, to, document.Plate)).length)
	}
	return most
}
