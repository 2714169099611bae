package piece_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	sf "github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond/bondtest"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/lay/laytest"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// A person has only the steps. Made from the exact numbers they give the piece again; made from the rounded ones they give a
// piece that fits: it lies within the exact one, and lacks no more than two marks at its cuts. The polygons are a
// second library's.
func TestStepsMakeThePiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.SampledFrom([]string{"stack, 300x200, 3", "running 1/3, 610x148, 2", "stack, 300x200, 3 upright", "herringbone, 450x90, 2",
			"pinwheel, 400x400 150x150, 3", "modular 3, 397x397 397x197 197x197, 3"}).Draw(t, "bond")
		b, face := bondtest.Make(line), face(t)
		f := piece.Field{Bond: b, Tools: piece.Tools{Mark: unit.Millimetre}, Edges: map[geom.Label]piece.Edge{}}
		for l := geom.Label(1); l < 30; l++ {
			f.Edges[l] = piece.Edge{Name: string(rune('a' + l)), Forgive: unit.Millimetre}
		}
		f.Numbers = piece.Number(b, face.Bounds(), geom.Point{})
		for _, laid := range lay.Lay(face, b, geom.Point{}, nil) {
			p := piece.Describe(piece.Input{Laid: laid, Field: f})
			proto := b.Protos[laid.Proto]
			made := bench{p, lay.Lying(p.InTile, proto), float64(proto.W), float64(proto.H)}
			if made.told() {
				made.check(t)
			}
		}
	})
}

// face is a star with an opening, or a rectangle with a window.
func face(t *rapid.T) geom.Region {
	if rapid.Bool().Draw(t, "star") {
		return laytest.Draw(t)
	}
	at := func(name string, lo, hi int64) unit.Length {
		return unit.Length(rapid.Int64Range(lo*16000, hi*16000).Draw(t, name))
	}
	r := geom.Rect{Min: geom.Point{X: at("left", -900, -300), Y: at("bottom", -900, -300)}, Max: geom.Point{X: at("right", 300, 900), Y: at("top", 300, 900)}}
	w := geom.Rect{Min: geom.Point{X: at("x", -299, 0), Y: at("y", -299, 0)}}
	w.Max = w.Min.Add(geom.Point{X: at("w", 5, 290), Y: at("h", 5, 290)})
	outer, window := r.Corners(), w.Corners()
	return laytest.Region(outer[:], window[:])
}

// bench makes a piece from its steps alone.
type bench struct {
	piece.Piece
	shape geom.Region // as the tile lies
	l, w  float64     // of the whole tile
}

// told reports whether the steps alone say all: an outline with two bays does not say which cuts belong together, nor do
// two cuts that meet an edge of one name.
func (b bench) told() bool {
	bays, names := b.bays(), map[string]int{}
	if b.Cut.Kind == piece.CutOut {
		bays++
	}
	for _, s := range b.Cut.Steps {
		names["cut: "+s.Edge]++
		if bays > 0 && s.From != s.To || short(s) {
			return false
		}
	}
	for _, s := range b.Cut.Steps {
		if strings.HasPrefix(s.Keep, "cut") && names[s.Keep] > 1 {
			return false
		}
	}
	return len(names) > 0 && (bays == 0 || b.Cut.Kind != piece.Odd)
}

// short: rounded ends of a short slope say too little of its direction to cut on beyond them, as the bench does.
func short(s piece.Step) bool {
	return s.From != s.To && s.Along != [2]unit.Length{} && s.Along[1]-s.Along[0] < 30*unit.Millimetre
}

func (b bench) bays() (n int) {
	r := b.shape[0]
	for i := range r {
		if geom.Side(r[i].P, r[(i+1)%len(r)].P, r[(i+2)%len(r)].P) < 0 {
			n++
		}
	}
	return n
}

type failer interface{ Fatalf(string, ...any) }

type xy struct{ x, y float64 }

// number is what a step says at its two ends: exact, or as sawn.
type number func(piece.Step) (from, to float64)

func exact(s piece.Step) (float64, float64) { return float64(s.From), float64(s.To) }
func sawn(s piece.Step) (float64, float64)  { return float64(s.SawFrom), float64(s.SawTo) }

// make keeps of the tile what lies on the kept side of every cut right across, less the one bay that the others bound.
func (b bench) make(t failer, n number) sf.Geometry {
	out, bay := polygon(xy{0, 0}, xy{b.l, 0}, xy{b.l, b.w}, xy{0, b.w}), sf.Geometry{}
	bays := b.bays() > 0 || b.Cut.Kind == piece.CutOut
	for _, s := range b.Cut.Steps {
		p, q := b.line(s, n)
		switch {
		case !bays || s.Along == [2]unit.Length{}:
			out = must(t)(sf.Intersection(out, halfPlane(p, q)))
		case bay.IsEmpty():
			bay = halfPlane(q, p)
		default:
			bay = must(t)(sf.Intersection(bay, halfPlane(q, p)))
		}
	}
	if bay.IsEmpty() {
		return out
	}
	return must(t)(sf.Difference(out, bay))
}

// line returns two points of a step's cut, the kept side on the left of p->q.
func (b bench) line(s piece.Step, n number) (p, q xy) {
	from, to := n(s)
	if one, two, ok := strings.Cut(s.Keep, " and "); ok {
		start := map[string]xy{"bottom": {from, 0}, "right": {b.l, from}, "top": {b.l - from, b.w}, "left": {0, b.w - from}}
		end := map[string]xy{"bottom": {b.l - to, 0}, "right": {b.l, b.w - to}, "top": {to, b.w}, "left": {0, to}}
		return start[one], end[two]
	}
	lo, hi := float64(s.Along[0]), float64(s.Along[1])
	if lo == hi {
		lo, hi = 0, b.w
		if s.Keep == "bottom" || s.Keep == "top" {
			hi = b.l
		}
	}
	switch s.Keep {
	case "left":
		return xy{from, lo}, xy{to, hi}
	case "right":
		return xy{b.l - to, hi}, xy{b.l - from, lo}
	case "bottom":
		return xy{hi, to}, xy{lo, from}
	case "top":
		return xy{lo, b.w - from}, xy{hi, b.w - to}
	}
	return b.beside(s, n)
}

// beside is a cut measured from a cut made before: parallel to it on the far side of the piece, or at two distances from it.
func (b bench) beside(s piece.Step, n number) (p, q xy) {
	from, to := n(s)
	for _, o := range b.Cut.Steps {
		if "cut: "+o.Edge != s.Keep {
			continue
		}
		r, u := b.line(o, n)
		lo, hi := float64(s.Along[0]), float64(s.Along[1])
		upright := o.Keep == "left" || o.Keep == "right" || strings.HasPrefix(o.Keep, "cut") && (r.x-u.x)*(r.x-u.x) < (r.y-u.y)*(r.y-u.y)
		if lo == hi && upright {
			lo, hi = 0, b.w
		} else if lo == hi {
			hi = b.l
		}
		sign := 1.0 // towards larger numbers from a cut that itself is kept from the right or the top
		if upright && u.y > r.y || !upright && u.x < r.x {
			sign = -1
		}
		if upright {
			p, q = xy{r.x + (u.x-r.x)*(lo-r.y)/(u.y-r.y) + sign*from, lo}, xy{r.x + (u.x-r.x)*(hi-r.y)/(u.y-r.y) + sign*to, hi}
		} else {
			p, q = xy{lo, r.y + (u.y-r.y)*(lo-r.x)/(u.x-r.x) + sign*from}, xy{hi, r.y + (u.y-r.y)*(hi-r.x)/(u.x-r.x) + sign*to}
		}
		if upright == (sign < 0) {
			p, q = q, p
		}
		return p, q
	}
	panic("no such cut: " + s.Keep)
}

// halfPlane is a polygon that covers everything near that lies left of p->q.
func halfPlane(p, q xy) sf.Geometry {
	d := xy{q.x - p.x, q.y - p.y}
	k := 1e8 / math.Hypot(d.x, d.y)
	d = xy{d.x * k, d.y * k}
	a, b := xy{p.x - d.x, p.y - d.y}, xy{p.x + d.x, p.y + d.y}
	return polygon(a, b, xy{b.x - d.y, b.y + d.x}, xy{a.x - d.y, a.y + d.x})
}

func polygon(corners ...xy) sf.Geometry {
	var c []float64
	for _, p := range append(corners, corners[0]) {
		c = append(c, p.x, p.y)
	}
	ring := sf.NewLineString(sf.NewSequence(c, sf.DimXY))
	return sf.NewPolygon([]sf.LineString{ring}).AsGeometry()
}

func region(g geom.Region) sf.Geometry {
	var rings []sf.LineString
	for _, r := range g {
		var c []float64
		for i := range len(r) + 1 {
			c = append(c, float64(r[i%len(r)].P.X), float64(r[i%len(r)].P.Y))
		}
		rings = append(rings, sf.NewLineString(sf.NewSequence(c, sf.DimXY)))
	}
	return sf.NewPolygon(rings).AsGeometry()
}

func must(t failer) func(sf.Geometry, error) sf.Geometry {
	return func(g sf.Geometry, err error) sf.Geometry {
		if err != nil {
			t.Fatalf("the library: %v", err)
		}
		return g
	}
}

// trifles is the depth that cuts not told may have: none, or less than the least strip that is laid.
func (b bench) trifles() float64 {
	told := map[string]bool{}
	for _, s := range b.Cut.Steps {
		for name := range strings.SplitSeq(s.Edge, ", ") {
			told["cut: "+name] = true
		}
	}
	for _, e := range b.Edges {
		if e.Label > 0 && !told[e.Name] {
			return float64(lay.LeastWidth)
		}
	}
	return 0
}

// slid reports whether a cut is measured from another: then the rounded piece is smaller, but lies elsewhere in the tile.
func (b bench) slid() bool {
	return slices.ContainsFunc(b.Cut.Steps, func(s piece.Step) bool { return strings.HasPrefix(s.Keep, "cut") })
}

// check compares areas. Corners are rounded to a count and numbers along slopes too, which a short line makes worse at its far end: a
// thousandth of a square millimetre for each millimetre of outline is allowed.
func (b bench) check(t failer) {
	want := region(b.shape)
	slack := (16 + b.trifles()) * 2 * (b.l + b.w)
	made := b.make(t, exact)
	if d := must(t)(sf.SymmetricDifference(made, want)).Area(); d > slack {
		t.Fatalf("%s: the steps make another piece, off by %.0f of %.0f: %+v of %v", b.Address, d, want.Area(), b.Cut, b.InTile)
	}
	fits := b.make(t, sawn)
	if b.slid() {
		// A third cut that slopes (a third at most) is then met up to a mark further along.
		if d := fits.Area() - want.Area(); d > float64(unit.Millimetre)/3*(b.l+b.w) {
			t.Fatalf("%s: the rounded piece is larger by %.0f: %+v", b.Address, d, b.Cut)
		}
		return
	}
	if d := must(t)(sf.Difference(fits, want)).Area(); d > slack {
		t.Fatalf("%s: the rounded piece sticks out by %.0f: %+v", b.Address, d, b.Cut)
	}
	if d := must(t)(sf.Difference(want, fits)).Area(); d > 4*float64(unit.Millimetre)*(b.l+b.w) {
		t.Fatalf("%s: the rounded piece lacks %.0f: %+v", b.Address, d, b.Cut)
	}
}
