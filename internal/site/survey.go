package site

import (
	"math"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/opt/lsq"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// taped is one reading on its way to the studs: off is by how many counts its own surfaces lie farther apart than the studs
// at the plate. It changes as the shape gets known, and is not rounded, so that readings that fit exactly give an exact shape.
type taped struct {
	document.Reading
	from, to int // points: corners, then floor points
	touches  document.Surface
	where    document.Height
	off      float64
	use      Use
	by       string
	later    int // the reading that superseded it
}

func (t taped) toStud() unit.Length { return unit.FromFloat(float64(t.Length) - t.off) }

// reduceSteps bounds the rounds of reducing and adjusting. Each round shrinks the error of a reduction by the part that the
// shape was wrong by; when no corner moves by a count any more, it rests.
const reduceSteps = 12

// survey solves the outline. It is false where there is none to build faces on.
func (s *solver) survey() bool {
	if len(s.doc.Survey.Corners) == 0 {
		return false // told when the document was read
	}
	if len(s.doc.Survey.Corners) < 3 {
		s.list.Add(diag.Stop, "corners-too-few", s.doc.Survey.At, "a floor has three corners or more; {0} are named", "write corners: A B C D", diag.N(len(s.doc.Survey.Corners)))
		return false
	}
	list := s.readings()
	supersede(list)
	s.setAside(list)
	s.noteSurfaces(list)
	s.points = make([]int, s.pointCount())
	for p := range s.points {
		s.points[p] = p
	}
	res, v := s.adjust(list)
	if s.loosePoints(list, v) {
		res, v = s.adjust(list)
	}
	s.record(list, res)
	if !s.judge(res, v) {
		return false
	}
	return s.outlineSound()
}

// adjust reduces the readings with the shape known so far and adjusts them, until the reductions rest.
func (s *solver) adjust(list []taped) (lsq.Result, lsq.Verdict) {
	var res lsq.Result
	var v lsq.Verdict
	for range reduceSteps {
		res, v = lsq.Adjust(s.network(list))
		if len(res.Points) < len(s.points) || v.Outcome == lsq.TooFew {
			return res, v
		}
		before := s.raw
		s.place(res.Points)
		if slices.Equal(before, s.raw) || s.tooLarge() {
			break
		}
		s.reduce(list)
	}
	return res, v
}

// network puts the readings that are used before the solver, in millimetres.
func (s *solver) network(list []taped) lsq.Problem {
	p := lsq.Problem{Count: len(s.points), Outline: lsq.Outline{Corners: len(s.doc.Survey.Corners), Sense: lsq.Clockwise}}
	p.Outline.Turns = s.turns()
	for _, t := range list {
		if t.use == Used {
			p.Observations = append(p.Observations, lsq.Observation{Kind: lsq.Distance, From: slices.Index(s.points, t.from), To: slices.Index(s.points, t.to),
				Value: (float64(t.Length) - t.off) / float64(unit.Millimetre), Sigma: s.accuracy().MM()})
		}
	}
	return p
}

func (s *solver) pointCount() int { return len(s.doc.Survey.Corners) + len(s.doc.Survey.Points) }

// turns tells which corners are outside corners, where that is written: the outline turns left there.
func (s *solver) turns() []lsq.Turn {
	turns := make([]lsq.Turn, len(s.doc.Survey.Corners))
	for _, c := range s.doc.Corners {
		if i := s.cornerIndex(c.Name); i >= 0 && c.Edge.Known {
			turns[i] = lsq.Left
		}
	}
	return turns
}

// accuracy is one standard deviation of one reading.
func (s *solver) accuracy() unit.Length {
	if a := s.doc.Survey.Accuracy; a.Known && a.V > 0 {
		return a.V
	}
	usual := rule.TapeAccuracy.Limit
	s.assume(s.doc.Survey.At, rule.TapeAccuracy.Cite(), "a tape reading is right to {0} (one standard deviation)", diag.F(usual))
	return usual
}

// loosePoints takes floor points that the readings do not fix out of the network, with their readings, where the corners are fixed without
// them. A mark on the floor that nobody finished taping is no reason to stop.
func (s *solver) loosePoints(list []taped, v lsq.Verdict) bool {
	n := len(s.doc.Survey.Corners)
	if v.Outcome != lsq.TooFew || len(v.Movable) == 0 || s.points[slices.Min(v.Movable)] < n {
		return false
	}
	for _, m := range v.Movable {
		name := s.doc.Survey.Points[m-n]
		s.list.Add(diag.Look, "point-loose", name.At, "where {0} is on the floor is not fixed: its readings are left out", "tape it to two corners more", diag.T(name.Text))
		for i := range list {
			if t := &list[i]; t.use == Used && (t.from == m || t.to == m) {
				t.use, t.by = Unused, "too few readings to "+name.Text
			}
		}
	}
	s.points = slices.DeleteFunc(s.points, func(p int) bool { return slices.Contains(v.Movable, p) })
	return true
}

// place rounds the adjusted points to the grid: the one rounding of the survey.
func (s *solver) place(points []lsq.Point) {
	n := len(s.doc.Survey.Corners)
	s.raw, s.spots = nil, map[int]geom.Point{}
	s.out.Survey.Points = nil
	for i, p := range points {
		at := geom.Point{X: unit.FromMM(p.X), Y: unit.FromMM(p.Y)}
		if k := s.points[i]; k < n {
			s.raw = append(s.raw, at)
		} else {
			s.spots[k] = at
			s.out.Survey.Points = append(s.out.Survey.Points, Spot{s.doc.Survey.Points[k-n].Text, at})
		}
	}
}

// reduce computes every reading's reduction on the present shape.
func (s *solver) reduce(list []taped) {
	for i := range list {
		t := &list[i]
		if !slices.Contains(s.points, t.from) || !slices.Contains(s.points, t.to) {
			continue // to a point that has no place
		}
		t.off = apart(s.spot(t.from, t.touches, t.where), s.spot(t.to, t.touches, t.where)) -
			apart(s.spot(t.from, document.Stud, document.Plate), s.spot(t.to, document.Stud, document.Plate))
	}
}

// apart is the distance between two points in counts, unrounded. The square is a whole number, and a square root is exact on
// every machine.
func apart(p, q geom.Point) float64 {
	d := q.Sub(p)
	return math.Sqrt(float64(int64(d.X)*int64(d.X) + int64(d.Y)*int64(d.Y)))
}

// spot is where a tape touches a point: a corner on a surface at a height, or a mark on the floor.
func (s *solver) spot(p int, to document.Surface, at document.Height) geom.Point {
	if p >= len(s.raw) {
		return s.spots[p]
	}
	return s.point(p, to, at)
}

// record writes down what became of each reading. Residuals of superseded readings are not the network's affair.
func (s *solver) record(list []taped, res lsq.Result) {
	k := 0
	for _, t := range list {
		r := Reading{Name: t.From + "-" + t.To, At: t.At, Measured: t.Length, ToStud: t.toStud(), Use: t.use, By: t.by}
		switch {
		case t.use == Superseded:
			r.Differs = list[t.later].toStud() - t.toStud()
			s.list.Add(diag.Note, "reading-superseded", t.At, "{0}: {1} is superseded by {2} on the same surface; the newer reading of {3} counts", "",
				diag.T(r.Name), diag.X(t.Length), diag.L(r.Differs.Abs()), diag.X(list[t.later].Length))
		case t.use == Used && k < len(res.Residuals):
			r.Residual = unit.FromMM(res.Residuals[k])
			r.Standard = int64(unit.FromFloat(float64(res.Standardised[k] * 1000)))
			r.Closing = unit.FromMM(-res.ClosingErrors[k])
			r.Checked = res.Controlled[k]
		}
		if t.use == Used {
			k++
		}
		s.out.Survey.Readings = append(s.out.Survey.Readings, r)
	}
	s.out.Survey.Freedom = res.Freedom
}

// outlineSound checks that the solved outline is one.
func (s *solver) outlineSound() bool {
	if s.tooLarge() {
		s.list.Add(diag.Stop, "room-too-large", s.doc.Survey.At, "the room is longer than {0}", "look for a reading in a wrong unit", diag.X(farthest))
		return false
	}
	ring := s.ring(document.Stud)
	if ok, i, j := ring.Simple(); !ok || ring.Area2() <= 0 {
		s.list.Add(diag.Stop, "outline-crosses", s.doc.Survey.At, "the walls {0} and {1} cross each other", "look for a wrong reading, or name the corners in their order, clockwise seen from above",
			diag.T(s.wallOf(ring[i].Edge)), diag.T(s.wallOf(ring[j].Edge)))
		return false
	}
	s.out.Survey.Fixed = true
	s.out.Survey.Area = ring.Area()
	return true
}

// farthest is the largest room: within it, and with any build-up, every point stays within the reach of exact geometry.
const farthest = 15 * unit.Metre

func (s *solver) tooLarge() bool {
	for _, p := range s.raw {
		if p.X.Abs() > farthest || p.Y.Abs() > farthest {
			return true
		}
	}
	return false
}

// wallOf names the wall of an edge of the outline.
func (s *solver) wallOf(l geom.Label) string {
	if i := int(l) - 1; i >= 0 && i < len(s.walls) {
		return s.walls[i].name
	}
	return ""
}
