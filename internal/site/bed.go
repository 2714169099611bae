package site

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// bedOver settles the bed over a wall whose surface is no plane. A face that follows the wall has one bed all over. A
// plane face stands the least bed off the highest spot, so that the bed is greatest in the hollows, and at the edges it is
// the belly plus the least bed, at the low corners of a twisted wall plus half of the twist: neighbors meet the tile there.
func (s *solver) bedOver(w *wall) {
	w.twist = s.twist(*w)
	if !w.build.set {
		return
	}
	if len(w.doc.Profile) > 0 && !w.doc.Face.Known {
		s.assume(w.doc.At, rule.Practice.String(), "the tile face of {0} is a plane over the high spots", diag.T(w.name))
	}
	if !w.plane() {
		return
	}
	least := s.leastBed(*w)
	high, low := s.span(*w)
	w.build.least, w.build.bed, w.build.most = least, high+w.twist.MulDiv(1, 4)+least, high-low+least
}

// leastBed is the bed over the high spots of a plane face: as the wall says; else the bed that is written among its layers; else a usual one.
func (s *solver) leastBed(w wall) unit.Length {
	least := rule.BedLeast.Limit
	switch {
	case w.doc.LeastBed.Known:
		return w.doc.LeastBed.V
	case w.build.bedWritten:
		least = w.build.bed
		s.assume(w.doc.At, "its build-up", "the bed of {0} that is written for {1} is meant over its high spots", diag.F(least), diag.T(w.name))
	default:
		s.assume(w.doc.At, rule.BedLeast.Cite(), "a bed of {0} at least over the high spots of {1}", diag.F(least), diag.T(w.name))
	}
	return least
}

// plane reports whether the tile face is a plane over a surface that is none. Over a bellied wall that goes without saying; a wall that is
// only twisted keeps the bed that is written for it unless a plane is asked for.
func (w wall) plane() bool {
	asked := w.doc.Face.Known && w.doc.Face.V == document.Plane
	bellied := len(w.doc.Profile) > 0 && !w.doc.Face.Known
	return w.build.set && (bellied || asked && (len(w.doc.Profile) > 0 || w.twist > 0))
}

// finishOver is how far the tile face of a wall stands off its board at x: over a belly of a plane face less than at the edges. Of a twisted
// wall it is that at mid-height, where the twist is nothing.
func (s *solver) finishOver(w wall, f Face, x unit.Length) unit.Length {
	if !w.plane() {
		return w.build.finish()
	}
	from := f.shape.cornerLeft[s.out.tapedTo]
	line := []geom.Point{{}}
	for _, p := range w.doc.Profile {
		line = append(line, geom.Point{X: min(max(0, p.X+from), f.shape.width), Y: p.Value})
	}
	return w.build.finish() - w.twist.MulDiv(1, 4) - heightAt(append(line, geom.Point{X: f.shape.width}), x)
}

// shims says what each stud needs to come into the line from corner to corner: + a shim, - planing.
func shims(studs []document.Station) []Shim {
	var out []Shim
	for _, p := range studs {
		out = append(out, Shim{X: p.X, By: -p.Value})
	}
	return out
}
