package site

import (
	"cmp"
	"math"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// A wall on which nobody has held a straightedge, but of which a profile was read, is judged by laying the published
// straightedges over the profile. The profile runs along the wall at one height, so that is what is known of it.

// flatByProfile judges a wall by its profile; false where there is none that can say it.
func (s *solver) flatByProfile(f *Face, w wall) bool {
	line := profileLine(*f, w, s.out.tapedTo)
	if len(w.doc.Profile) == 0 || w.build.longest == 0 || len(line) < 3 {
		return false
	}
	short, long := rule.Straightedges(w.build.longest)
	step, wide := widestStep(line), line[len(line)-1].X-line[0].X
	f.Flat.Checked = step*2 <= short
	if !f.Flat.Checked {
		s.list.Add(diag.Unchecked, "flatness-coarse", f.At, "not checked: how flat {0} is under a straightedge of {1}, for its profile was read at places up to {2} apart, and a hollow may lie between them",
			"hold a straightedge on it and write straightedge: with its length and the greatest gap, or read the profile every {3}", diag.T(f.Name), diag.X(short), diag.X(s.fine(step)), diag.X(short.MulDiv(1, 2)))
	}
	worst, over := document.Gap{}, -farthest
	for _, length := range []unit.Length{short, min(long, wide)} {
		if step*2 > length {
			continue
		}
		limit, r := rule.FlatLimit(w.build.longest, length)
		if gap := worstGap(line, length); gap-limit > over {
			worst, over, f.Flat.Rule = document.Gap{Length: length, Gap: gap, At: stationPlace(w, w.doc.Profile[0])}, gap-limit, r.ID
		}
	}
	if f.Flat.Rule != "" {
		s.assume(f.At, rule.Own.String(), "how flat {0} is follows from its profile, read along one height: straight between its places, and the same above and below", diag.T(f.Name))
	}
	if over > 0 {
		s.hollowInProfile(f, w.build.longest, worst)
	}
	return true
}

func (s *solver) hollowInProfile(f *Face, longest unit.Length, g document.Gap) {
	limit, r := rule.FlatLimit(longest, g.Length)
	f.Flat.Over, f.Flat.Fill = g.Gap-limit, filler(g.Gap, g.Length)
	s.list.Add(diag.Look, "not-flat", g.At, "{0}, by its profile, has a gap of {1} under a straightedge of {2}; {3} is allowed for this tile", "fill or grind it, or set a face that is a plane on a deeper bed",
		diag.T(f.Name), diag.X(s.fine(g.Gap)), diag.X(s.fine(g.Length)), diag.X(s.fine(limit))).Rule = r.ID
	s.assume(f.At, rule.Own.String(), "a hollow on {0} is as wide as the straightedge is long", diag.T(f.Name))
}

// profileLine is the surface of a wall off the straight line between its corners, from corner to corner.
func profileLine(f Face, w wall, to document.Surface) []geom.Point {
	from := f.shape.cornerLeft[to]
	line := []geom.Point{{}, {X: f.shape.width}}
	for _, p := range w.doc.Profile {
		if x := p.X + from; x > 0 && x < f.shape.width {
			line = append(line, geom.Point{X: x, Y: p.Value})
		}
	}
	slices.SortFunc(line, func(a, b geom.Point) int { return cmp.Compare(a.X, b.X) })
	return line
}

func widestStep(line []geom.Point) unit.Length {
	var most unit.Length
	for i := range line[1:] {
		most = max(most, line[i+1].X-line[i].X)
	}
	return most
}

// shifts is into how many steps the way of a straightedge from one place of the profile to the next is divided. The gap
// under it is there a parabola of where it lies, so that between two steps it is off by less than a 4,000th of itself.
const shifts = 64

// worstGap lays a straightedge everywhere on a line and returns the greatest gap under it, each time laid so that the gap
// is as little as it can be: over a hollow on both rims, over a hump level on its top. Rounded half up.
func worstGap(line []geom.Point, length unit.Length) unit.Length {
	end := line[len(line)-1].X - length
	worst := 0.0
	stops := []unit.Length{line[0].X, end}
	for _, p := range line {
		stops = append(stops, p.X, p.X-length)
	}
	slices.Sort(stops)
	for i, at := range stops {
		next := stops[min(i+1, len(stops)-1)]
		for k := range shifts {
			if x := at + (next-at).MulDiv(int64(k), shifts); x >= line[0].X && x <= end {
				worst = max(worst, zone(stretch(line, x, x+length)))
			}
		}
	}
	return unit.Length(math.Floor(worst + 0.5))
}

// stretch is a line from one place to another, with both ends.
func stretch(line []geom.Point, from, to unit.Length) []geom.Point {
	out := []geom.Point{{X: from, Y: heightAt(line, from)}}
	for _, p := range line {
		if p.X > from && p.X < to {
			out = append(out, p)
		}
	}
	return append(out, geom.Point{X: to, Y: heightAt(line, to)})
}

// zone is the least distance, measured upright, of two parallel lines that hold all points between them. One of the two
// goes through two of the points.
func zone(points []geom.Point) float64 {
	least := math.Inf(1)
	for i, a := range points {
		for _, b := range points[i+1:] {
			if b.X > a.X {
				least = min(least, spread(points, float64(b.Y-a.Y)/float64(b.X-a.X)))
			}
		}
	}
	return least
}

// spread is how far points lie apart, upright, beside lines of a slope.
func spread(points []geom.Point, slope float64) float64 {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, p := range points {
		off := float64(p.Y) - float64(slope*float64(p.X-points[0].X))
		lo, hi = min(lo, off), max(hi, off)
	}
	return hi - lo
}
