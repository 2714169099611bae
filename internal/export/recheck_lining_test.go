package export_test

import (
	"encoding/json"
	"math"
)

// readBoarded is what plan.json says of the sheets on a face.
type readBoarded struct {
	Face, Stock string
	Upright     bool
	Sheets      []readSheet
}

type readSheet struct {
	Name, Piece string
	Rect        readBox4
	Covers      readShape
}

type readBox4 struct{ Left, Bottom, Right, Top num }

func (b readBox4) ring() []pt {
	return []pt{{b.Left.mm(), b.Bottom.mm()}, {b.Right.mm(), b.Bottom.mm()}, {b.Right.mm(), b.Top.mm()}, {b.Left.mm(), b.Top.mm()}}
}

// In millimetres: the widest gap between sheets, and how far joints keep off the corners of openings; both common practice.
const (
	widestJoint = 4
	offCorners  = 150
)

// boards holds the sheets against the face that they cover.
func (r *rechecker) boards(text []byte) {
	var p struct {
		Lining []readBoarded
		Stock  struct {
			Pieces []struct {
				Name, Stock string
				Sawn        struct{ Length, Width num }
			}
		}
		Findings []struct {
			Code string
			At   struct{ Path string }
		}
	}
	if err := json.Unmarshal(text, &p); err != nil {
		r.complain("lining: %v", err)
		return
	}
	sawn := map[string][2]num{}
	for _, q := range p.Stock.Pieces {
		sawn[q.Stock+"\n"+q.Name] = [2]num{q.Sawn.Length, q.Sawn.Width}
	}
	told := map[string]bool{}
	for _, f := range p.Findings {
		told[f.Code] = true
	}
	for _, f := range p.Lining {
		for _, s := range f.Sheets {
			w, h := s.Rect.Right-s.Rect.Left, s.Rect.Top-s.Rect.Bottom
			if f.Upright {
				w, h = h, w
			}
			if sawn[f.Stock+"\n"+s.Piece] != [2]num{w, h} {
				r.complain("%s %s: is sawn to another size", f.Face, s.Name)
			}
		}
		r.boarded(f)
		if !told["lining-joints"] {
			r.jointsOffCorners(f)
		}
	}
}

// boarded: sheets lie in the face's board, out of its openings, apart from each other, and leave nothing but joints.
func (r *rechecker) boarded(f readBoarded) {
	face := r.faceNamed(f.Face)
	board := shapeOf(face.Board)
	open, around := board.area(), 0.0
	for i, s := range f.Sheets {
		covers := shapeOf(s.Covers)
		area := covers.area()
		slack := grid * covers.around()
		open, around = open-area, around+covers.around()
		if area-common(covers, board) > slack {
			r.complain("%s %s: reaches out of the board", f.Face, s.Name)
		}
		if lo, hi := covers.bounds(); math.Abs(lo.x-s.Rect.Left.mm())+math.Abs(lo.y-s.Rect.Bottom.mm())+math.Abs(hi.x-s.Rect.Right.mm())+math.Abs(hi.y-s.Rect.Top.mm()) > 4*grid {
			r.complain("%s %s: its bounds are not those of what it covers", f.Face, s.Name)
		}
		for _, o := range face.Openings {
			if in := common(covers, shape{readBox4(o.Rect).ring()}); in > slack && o.Kind != "box" {
				r.complain("%s %s: covers %s", f.Face, s.Name, o.Name)
			}
		}
		for _, t := range f.Sheets[:i] {
			if common(covers, shapeOf(t.Covers)) > slack {
				r.complain("%s: %s lies on %s", f.Face, s.Name, t.Name)
			}
		}
	}
	if open > around/2*widestJoint {
		r.complain("%s: %.0f square millimetres are not covered", f.Face, open)
	}
}

// jointsOffCorners: an edge that another sheet lies along keeps off the corners of openings beside it.
func (r *rechecker) jointsOffCorners(f readBoarded) {
	face := r.faceNamed(f.Face)
	for i, s := range f.Sheets {
		for j, t := range f.Sheets {
			if i == j {
				continue
			}
			for _, o := range face.Openings {
				for _, c := range readBox4(o.Rect).ring() {
					if s.Rect.jointNear(t.Rect, c) {
						r.complain("%s: the joint of %s and %s meets a corner of %s", f.Face, s.Name, t.Name, o.Name)
					}
				}
			}
		}
	}
}

// jointNear tells whether t lies behind the right or upper edge of s, and that joint is near c.
func (s readBox4) jointNear(t readBox4, c pt) bool {
	beside := func(s, t readBox4, x, y float64) bool {
		gap := t.Left.mm() - s.Right.mm()
		low, high := max(s.Bottom, t.Bottom).mm(), min(s.Top, t.Top).mm()
		return gap >= 0 && gap < widestJoint && low < high && y >= low && y <= high && math.Abs((t.Left.mm()+s.Right.mm())/2-x) < offCorners-grid
	}
	turn := func(b readBox4) readBox4 { return readBox4{b.Bottom, b.Left, b.Top, b.Right} }
	return beside(s, t, c.x, c.y) || beside(turn(s), turn(t), c.y, c.x)
}
