// Package lining lays out the sheets of board, backer or membrane on the faces that they cover.
//
// It takes the solved room and the document's stock, of which each may cover faces, and gives for each face the sheets with their
// places and cut-outs, as parts that package cut finds stock for. Joints keep off the corners of openings, where a board that is
// jointed cracks; they land on studs where studs are recorded; in neighboring bands they are staggered. All of that is common
// practice. What can not be kept is told.
//
// A face is divided into bands and each band into sheets, lying or upright, whichever has fewer faults, then fewer sheets, then
// shorter joints. Sheets are in the frame of the face; a part lies as seen from the room, its length along the sheet's.
package lining

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Plan is the sheets of every covered face.
type Plan struct{ Faces []Face }

// Face is one face with its sheets.
type Face struct {
	Name    string
	At      diag.Place
	Stock   string
	Upright bool
	Sheets  []Sheet
}

// Sheet is one piece of board where it goes.
type Sheet struct {
	Name   string      // band and place: "2-1", from the lower left
	Rect   geom.Rect   // its bounds, in the face's frame
	Region geom.Region // what it covers
	Part   part.Part
}

// Parts lists what is to be cut.
func (p Plan) Parts() []part.Part {
	var out []part.Part
	for _, f := range p.Faces {
		for _, s := range f.Sheets {
			out = append(out, s.Part)
		}
	}
	return out
}

// Make lays out the sheets of every face that a stock covers.
func Make(doc document.Room, room site.Room) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: doc}
	done := map[string]bool{}
	for _, s := range doc.Stock {
		for _, c := range s.Sale.Covers {
			f, ok := room.Face(c.Text)
			if done[c.Text] || !ok || len(f.Board) == 0 {
				continue
			}
			done[c.Text] = true
			m.face(s, f, c.At)
		}
	}
	return m.plan, m.found.Sorted(), m.assumed
}

type maker struct {
	doc     document.Room
	plan    Plan
	found   diag.List
	assumed []diag.Assumption
}

// What joints keep to, all common practice: the gap between sheets, the distance off the corner of an opening, the stagger between
// neighboring bands, and the narrowest strip.
func (m *maker) limits() limits {
	if m.doc.Units == unit.Millimetres {
		return limits{gap: 3 * unit.Millimetre, off: 150 * unit.Millimetre, stagger: 300 * unit.Millimetre, least: 100 * unit.Millimetre, step: 25 * unit.Millimetre}
	}
	return limits{gap: unit.Inch / 8, off: 6 * unit.Inch, stagger: unit.Foot, least: 4 * unit.Inch, step: unit.Inch}
}

type limits struct{ gap, off, stagger, least, step unit.Length }

func (m *maker) face(s document.Stock, f site.Face, at diag.Place) {
	if !s.Length.Known || !s.Width.Known {
		m.found.Add(diag.Unchecked, "lining-unsized", s.At, "not laid out on {0}: the size of {1} is missing", "write its length x width x thickness", diag.T(f.Name), diag.T(s.Name))
		return
	}
	l := m.limits()
	best, ok := layout{}, false
	for _, upright := range []bool{false, true} {
		c := newCover(f, s, l, upright)
		if got := c.layout(); !ok || got.better(best) {
			best, ok = got, true
		}
	}
	m.judge(s, f, best, at)
	m.assumed = append(m.assumed, diag.Assumption{At: at, Text: "the sheets on {0} are {1} apart; joints keep {2} off the corners of openings", Values: []diag.Value{diag.T(f.Name), diag.X(l.gap), diag.X(l.off)}, Source: "common practice"})
	m.plan.Faces = append(m.plan.Faces, Face{Name: f.Name, At: f.At, Stock: s.Name, Upright: best.upright, Sheets: m.sheets(s, f, best)})
}

// judge tells what could not be kept and what is not known.
func (m *maker) judge(s document.Stock, f site.Face, best layout, at diag.Place) {
	if best.faults > 0 {
		m.found.Add(diag.Look, "lining-joints", at, "on {0} joints of {1} meet the corner of an opening, stand in line, or leave a narrow strip: {2} times", "cut a sheet round the corner, or take a larger sheet", diag.T(f.Name), diag.T(s.Name), diag.N(best.faults))
	}
	if f.Kind == site.WallFace && len(studsOf(f)) == 0 {
		m.found.Add(diag.Unchecked, "lining-studs", at, "not checked: whether the joints of {0} on {1} land on studs: where the studs are is missing", "write them under studs: of the wall while it is open", diag.T(s.Name), diag.T(f.Name))
	}
	if thick, _, known := s.Thickness(); known && f.BoardThick > 0 && thick != f.BoardThick {
		m.found.Add(diag.Look, "lining-thick", at, "{0} is {1} thick, and the board of {2} is {3}", "make the two agree: build-up: of the face, or size: of the stock", diag.T(s.Name), diag.X(thick), diag.T(f.Name), diag.X(f.BoardThick))
	}
}
