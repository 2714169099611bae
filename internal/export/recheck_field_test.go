package export_test

import (
	"fmt"
	"math"
)

// work checks one face's tile work.
func (r *rechecker) work(w readWork) {
	face := r.faceNamed(w.Face)
	r.order(w)
	r.ledger(w)
	r.movement(w)
	r.sameEdges(w, face)
	var all []*setPiece
	for i := range w.Fields {
		f := &w.Fields[i]
		var pieces []*setPiece
		for _, p := range f.Pieces {
			if s, ok := r.piece(f, p); ok {
				r.holes(s, face)
				r.saw(s, w)
				pieces = append(pieces, s)
			}
		}
		r.counts(w.Face, *f)
		r.within(face, w, *f)
		r.filled(*f, pieces)
		r.covered(w, *f, pieces)
		r.joints(pieces)
		r.measures(face, *f, pieces)
		r.origin(*f, pieces)
		all = append(all, pieces...)
	}
	r.overlaps(all)
}

// counts: the layout that is laid has the pieces that are listed; no bound is above its count.
func (r *rechecker) counts(face string, f readField) {
	whole := 0
	for _, p := range f.Pieces {
		if p.Cut == nil { // what lacks less than is laid goes in uncut
			whole++
		}
	}
	for i, l := range f.Layouts {
		if i == 0 && (l.Whole != whole || l.Cut != len(f.Pieces)-whole) {
			r.complain("%s, %s: %d whole and %d cut pieces, said to be %d and %d", face, f.Name, whole, len(f.Pieces)-whole, l.Whole, l.Cut)
		}
		if l.TilesLeast > l.Tiles || l.Tiles > l.Cut {
			r.complain("%s, %s: layout %d: %d tiles for %d pieces, at least %d", face, f.Name, i, l.Tiles, l.Cut, l.TilesLeast)
		}
	}
}

// within: the field lies in the face, as far as tile may be, and every label is listed.
func (r *rechecker) within(face readFace, w readWork, f readField) {
	region, cut := shapeOf(f.Region), shapeOf(face.Cut)
	if over := region.area() - common(region, cut); over > region.around()*grid {
		r.complain("%s, %s: %.4f mm² of it lie outside of the face", w.Face, f.Name, over)
	}
	for _, ring := range f.Region {
		for _, v := range ring {
			if v.Edge < 1 || v.Edge > len(w.Edges) {
				r.complain("%s, %s: label %d is not among the edges", w.Face, f.Name, v.Edge)
			}
		}
	}
}

// filled: each piece lies in the field's region, and the pieces of a tile are together what the region leaves of it, but for parts
// too thin to be a piece.
func (r *rechecker) filled(f readField, pieces []*setPiece) {
	region := shapeOf(f.Region)
	sum, tile := map[string]float64{}, map[string]*setPiece{}
	for _, p := range pieces {
		key := fmt.Sprint(p.Course, "-", p.Column)
		sum[key], tile[key] = sum[key]+p.onFace.area(), p
		if over := p.onFace.area() - common(p.onFace, region); math.Abs(over) > 4*grid*p.onFace.around() {
			r.complain("%s: %.4f mm² of it lie outside of its field", p.ID, over)
		}
	}
	for _, p := range pieces {
		key := fmt.Sprint(p.Course, "-", p.Column)
		if tile[key] != p || p.slid {
			continue
		}
		around := shape{p.tile}.around()
		left := common(shape{p.tile}, region)
		if off := left - sum[key]; off < -4*grid*around || off > thin*around/2 {
			r.complain("%s: the field leaves %.3f mm² of its tile, its parts have %.3f", p.ID, left, sum[key])
		}
	}
}

// covered: pieces and the joints round them leave nothing of the field uncovered, but next to its edge. Looked at point by point: 9 mm
// is less than half of the least tile.
func (r *rechecker) covered(w readWork, f readField, pieces []*setPiece) {
	const step = 9.0
	region := shapeOf(f.Region)
	if len(region) == 0 {
		return
	}
	grounds := sorted(pieces)
	lo, hi := region.bounds()
	for y := lo.y + step/3; y < hi.y; y += step {
		for x := lo.x + step/3; x < hi.x; x += step {
			p := pt{x, y}
			if !grounds.cover(p) && region.holds(p) && region.rim(p) > f.Joint.mm()+thin {
				r.complain("%s, %s: nothing covers %.1f, %.1f", w.Face, f.Name, x, y)
				return
			}
		}
	}
}

// bins sorts pieces by where they lie, for looking up what is near a point.
type bins map[[2]int][]*setPiece

const bin = 150.0

func binOf(p pt) [2]int { return [2]int{int(math.Floor(p.x / bin)), int(math.Floor(p.y / bin))} }

func sorted(pieces []*setPiece) bins {
	out := bins{}
	for _, p := range pieces {
		lo, hi := shape{p.grown}.bounds()
		a, b := binOf(lo), binOf(hi)
		for i := a[0]; i <= b[0]; i++ {
			for j := a[1]; j <= b[1]; j++ {
				out[[2]int{i, j}] = append(out[[2]int{i, j}], p)
			}
		}
	}
	return out
}

// cover reports whether a point lies in a tile or in the joint round it.
func (b bins) cover(p pt) bool {
	for _, s := range b[binOf(p)] {
		inside := true
		for i := range s.grown {
			inside = inside && cross(s.grown[i], s.grown[(i+1)%len(s.grown)], p) >= -1e-3
		}
		if inside {
			return true
		}
	}
	return false
}

// neighbors calls for every two pieces whose tiles come near each other.
func neighbors(pieces []*setPiece, near func(a, b *setPiece)) {
	done := map[[2]*setPiece]bool{}
	for _, list := range sorted(pieces) {
		for i, a := range list {
			for _, b := range list[:i] {
				if !done[[2]*setPiece{a, b}] {
					done[[2]*setPiece{a, b}], done[[2]*setPiece{b, a}] = true, true
					near(a, b)
				}
			}
		}
	}
}

// joints: no two tiles of a field are nearer than its joint; the pieces beside a factory side stand off by just the joint, and then the
// side must be kept.
func (r *rechecker) joints(pieces []*setPiece) {
	neighbors(pieces, func(a, b *setPiece) {
		if a.Course == b.Course && a.Column == b.Column {
			return
		}
		if d := gap(a.tile, b.tile); d < a.field.Joint.mm()-4*grid {
			r.complain("%s and %s: their tiles are %.4f mm apart, the joint is %v", a.ID, b.ID, d, a.field.Joint.mm())
		}
		r.beside(a, b)
		r.beside(b, a)
	})
}

// beside looks across the joint from the middle of each factory side that is not kept.
func (r *rechecker) beside(a, b *setPiece) {
	kept := map[int]bool{}
	for _, e := range a.Sides {
		kept[e.Label] = e.Kept
	}
	for i, ring := range a.onFace {
		for j, p := range ring {
			label := a.OnFace[i][j].Edge
			if label > 0 || kept[label] {
				continue
			}
			q := ring[(j+1)%len(ring)]
			n, d := outward(p, q), a.field.Joint.mm()+thin/5
			if at := (pt{(p.x+q.x)/2 + d*n.x, (p.y+q.y)/2 + d*n.y}); b.onFace.holds(at) && b.onFace.rim(at) < thin/4 {
				r.complain("%s: side %d meets %s across the joint, and need not be kept", a.ID, label, b.ID)
			}
		}
	}
}

// overlaps: no two pieces of a face share area.
func (r *rechecker) overlaps(pieces []*setPiece) {
	neighbors(pieces, func(a, b *setPiece) {
		if both := common(a.onFace, b.onFace); both > 8*grid*min(a.onFace.around(), b.onFace.around()) {
			r.complain("%s and %s share %.4f mm²", a.ID, b.ID, both)
		}
	})
}
