package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// bedOver settles the bed over a wall whose surface is not straight. A face that follows the wall has one bed all over. A
// plane face stands the least bed off the highest spot, so that the bed is greatest in the hollows, and at the edges it is
// the belly plus the least bed: neighbors meet the tile there.
func (s *solver) bedOver(w *wall) {
	if !w.build.set || len(w.doc.Profile) == 0 {
		return
	}
	if !w.doc.Face.Known {
		s.assume(w.doc.At, rule.Practice.String(), "the tile face of {0} is a plane over the high spots", diag.T(w.name))
	}
	if !w.plane() {
		return
	}
	least := w.doc.LeastBed.V
	if !w.doc.LeastBed.Known {
		least = rule.BedLeast.Limit
		s.assume(w.doc.At, rule.BedLeast.Cite(), "a bed of {0} at least over the high spots of {1}", diag.X(least), diag.T(w.name))
	}
	high, low := span(w.doc.Profile)
	w.build.least, w.build.bed, w.build.most = least, high+least, high-low+least
}

// plane reports whether the tile face is a plane over a surface that is not straight.
func (w wall) plane() bool {
	return w.build.set && len(w.doc.Profile) > 0 && w.doc.Face.Or(document.Plane) == document.Plane
}

// finishOver is how far the tile face of a wall stands off its board at x: over a belly of a plane face less than at the edges.
func (s *solver) finishOver(w wall, f Face, x unit.Length) unit.Length {
	if !w.plane() {
		return w.build.finish()
	}
	from := f.shape.cornerLeft[s.out.tapedTo]
	line := []geom.Point{{}}
	for _, p := range w.doc.Profile {
		line = append(line, geom.Point{X: min(max(0, p.X+from), f.shape.width), Y: p.Value})
	}
	return w.build.finish() - heightAt(append(line, geom.Point{X: f.shape.width}), x)
}

// span returns the highest and the lowest of the stations, the straight line from corner to corner counting as one of them.
func span(list []document.Station) (high, low unit.Length) {
	for _, p := range list {
		high, low = max(high, p.Value), min(low, p.Value)
	}
	return high, low
}

// shims says what each stud needs to come into the line from corner to corner: + a shim, - planing.
func shims(studs []document.Station) []Shim {
	var out []Shim
	for _, p := range studs {
		out = append(out, Shim{X: p.X, By: -p.Value})
	}
	return out
}
