package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// problem is an axis bond on a region, in the frame of the courses: s runs along them, t across. For a vertical bond
// s is y. Everything is ready to be judged at any offset.
type problem struct {
	s, t    axis
	shifts  []unit.Length // of each course of a cycle along s
	climb   unit.Length   // what a whole cycle adds to the shift
	flip    bool          // s is y
	sides   []side        // judged along s
	crosses []pass        // judged edges along t: their widths in the courses
	turned  []side        // the same edges with s and t exchanged
	low, up unit.Length   // bounds of the region in t

	holes  []disk
	center [2]Line          // along s, along t
	mirror [2][]unit.Length // of the tiles along s and along t
	sights []Sight
	sliver unit.Length
	enough unit.Length
	jambs  int // how many sides of openings there are
	jambOf map[geom.Label]int
}

// disk is a hole in the frame of the courses.
type disk struct {
	name   string
	s, t   unit.Length
	radius unit.Length // rounded up: a rim is never farther out than said
}

// SliverShare is the share of the tile's shorter side under which a cut is called a sliver (ours).
const SliverShare = unit.One / 4

// newProblem prepares an axis bond.
func newProblem(in *Input) *problem {
	p := &problem{flip: in.Bond.Vertical, enough: in.Enough, sights: in.Sights}
	proto, pitch, zero := in.Bond.Protos[0], in.Bond.Pitch, in.Zero
	size := geom.Point{X: proto.W, Y: proto.H}
	if p.flip {
		pitch, size, zero = swap(pitch), swap(size), swap(zero)
	}
	p.readShifts(&in.Bond)
	joint := max(pitch.X-size.X, in.Mark)
	p.s = newAxis(pitch.X, size.X, in.Mark, zero.X, 1)
	p.t = newAxis(pitch.Y, size.Y, in.Mark, zero.Y, p.cycle())
	p.readSides(outline(in, size.X, joint), joint)
	p.readLines(in)
	p.mirror = [2][]unit.Length{mirrors(p.s, p.classes()), {0}}
	p.sliver = sliverLimit(in, size)
	return p
}

func sliverLimit(in *Input, size geom.Point) unit.Length {
	if in.Sliver > 0 {
		return in.Sliver
	}
	return SliverShare.Of(min(size.X, size.Y))
}

// readShifts takes the shifts of the courses; a bond without any is a stack.
func (p *problem) readShifts(b *bond.Bond) {
	p.shifts = b.Shifts
	if len(p.shifts) == 0 {
		p.shifts = []unit.Length{0}
	}
	p.climb = b.V.X
	if b.Vertical {
		p.climb = b.U.Y
	}
}

// cycle is how many pitches across the courses hold every layout once. Where each course is shifted against the one
// below by the same amount (but for the rounding of each shift to the grid), moving up by a course is the same as
// moving along, so that one pitch does. To and fro it takes the whole cycle. A cycle of three or more that steps on is
// taken to go on stepping: package bond cuts it off only where there are more courses than a face has.
func (p *problem) cycle() int {
	n, step := len(p.shifts), p.shift(1)-p.shift(0)
	last := n
	if n > 2 {
		last = n - 1
	}
	for c := range last {
		off := p.s.mod(p.shift(c+1) - p.shift(c) - step)
		if off > rounded && off < p.s.pitch-rounded {
			return n
		}
	}
	return 1
}

// rounded is by how much two differences of shifts, each rounded half up to the grid, can differ.
const rounded unit.Length = 2

// shift is how far a course starts along s from the origin.
func (p *problem) shift(course int) unit.Length {
	n := len(p.shifts)
	turns := floorDiv(course, n)
	return p.s.mod(p.shifts[course-turns*n] + unit.Length(turns)*p.climb)
}

func floorDiv(a, b int) int {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}

// readSides brings the outline into the frame of the courses.
func (p *problem) readSides(sides []side, least unit.Length) {
	if p.flip {
		sides = flipped(sides, p.s.size, least)
	}
	p.sides, p.turned = sides, flipped(sides, p.t.size, least)
	p.jambOf = map[geom.Label]int{}
	p.low, p.up = wide, -wide
	for _, s := range sides {
		p.low, p.up = min(p.low, s.bottom()), max(p.up, s.top())
		if _, seen := p.jambOf[s.label]; s.about.Opening && !seen {
			p.jambOf[s.label] = len(p.jambOf)
		}
	}
	p.jambs = len(p.jambOf)
	if all := newBands(p.turned); len(all.levels) > 1 {
		p.crosses = all.between(all.levels[0], all.levels[len(all.levels)-1]).passes
	}
}

// readLines brings holes and center lines into the frame of the courses.
func (p *problem) readLines(in *Input) {
	for _, h := range in.Holes {
		c := h.Center
		if p.flip {
			c = swap(c)
		}
		p.holes = append(p.holes, disk{h.Name, c.X, c.Y, (h.Drill + 1) / 2})
	}
	across, level := in.Center, in.Level
	if !across.Given && !level.Given {
		across = Line{Given: true, At: middle(p.uprights())}
	}
	p.center = [2]Line{across, level}
	if p.flip {
		p.center = [2]Line{level, across}
	}
}

// uprights are the edges that bound the region to the left and right as a person sees it.
func (p *problem) uprights() []side {
	if p.flip {
		return p.turned
	}
	return p.sides
}

// middle is the middle of what is seen between the outermost upright edges.
func middle(sides []side) unit.Length {
	lo, hi := wide, -wide
	for _, s := range sides {
		mid := (s.a.X + s.b.X).Floor(2) / 2
		if s.about.Opening || !s.judged {
			continue
		}
		if s.upper() {
			hi = max(hi, mid-s.about.Hidden)
		} else {
			lo = min(lo, mid+s.about.Hidden)
		}
	}
	if lo > hi {
		lo, hi = extent(sides)
	}
	return (lo + hi).Floor(2) / 2
}

func extent(sides []side) (lo, hi unit.Length) {
	lo, hi = wide, -wide
	for _, s := range sides {
		lo, hi = min(lo, s.a.X), max(hi, s.a.X)
	}
	return lo, hi
}

// sightAxis tells whether sight lines are judged across the courses (the usual) or along them.
func (p *problem) sightAxis() int {
	if p.flip {
		return 0
	}
	return 1
}

// order completes the order of importance.
func order(in *Input) []judge.Name {
	asked := make([]string, len(in.Order))
	for i, n := range in.Order {
		asked[i] = string(n)
	}
	whole, _ := judge.OrderOf(asked)
	return whole
}
