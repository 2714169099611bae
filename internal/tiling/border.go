package tiling

import (
	"cmp"
	"math"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// side is one run of a border: it lies along one edge of the face and has a pattern of its own, as a setter lays it.
type side struct {
	name    string
	frame   geom.Frame // x along the edge (or up it), y = 0 on it
	upright bool       // the run goes up: its tile stands
}

// border returns the strip along the face's outline, openings left out, and that with its joint.
func (m *maker) border(c *canvas, f document.Field, g good) (own, grown geom.Region, ok bool) {
	inner := c.label(site.Edge{Kind: site.FreeEdge, Name: "inside of " + f.Name, Weight: 2})
	meets := c.label(site.Edge{Kind: site.FreeEdge, Name: f.Name, Joint: g.joint, Weight: 1})
	own, ok1 := c.strip(f.Border.V, inner)
	grown, ok2 := c.strip(f.Border.V+g.joint, meets)
	if !ok1 || !ok2 {
		m.found(diag.Stop, "border-too-wide", f.Border.At, "a border of {0} leaves nothing inside on {1}",
			"make the border narrower", diag.L(f.Border.V), diag.T(c.face.Name))
	}
	return own, grown, ok1 && ok2
}

// strip is the face's cut region less itself inset from its outline; the new inner edges get one label.
func (c *canvas) strip(width unit.Length, l geom.Label) (geom.Region, bool) {
	g := c.face.Cut
	inside, err := geom.OffsetEdges(g, func(l geom.Label) unit.Length {
		if e, ok := edgeOf(c.edges, l); ok && e.Kind == site.OpeningEdge {
			return 0
		}
		return width
	})
	if err != nil || len(inside) == 0 {
		return nil, false
	}
	out, err := g.Minus([]geom.Region{relabel(inside, l)})
	return out, err == nil && len(out) > 0
}

func relabel(g geom.Region, l geom.Label) geom.Region {
	out := make(geom.Region, len(g))
	for i, r := range g {
		out[i] = make(geom.Ring, len(r))
		for j, v := range r {
			out[i][j] = geom.Vertex{P: v.P, Edge: l}
		}
	}
	return out
}

// runs divides a border into its sides: level ones run through the corners, upright ones stand between them.
func (m *maker) runs(c *canvas, z zone) []zone {
	ends := c.label(site.Edge{Kind: site.FreeEdge, Name: "next run of " + z.field.Name, Joint: z.good.joint, Weight: 1})
	rest, out := z.region, []zone(nil)
	for i, e := range c.outline(z.field.Border.V) {
		own, err1 := rest.And(e.quad(z.field.Border.V, 0, ends))
		left, err2 := rest.Minus([]geom.Region{e.quad(z.field.Border.V, z.good.joint, ends)})
		if err1 != nil || err2 != nil {
			m.found(diag.Stop, "border-outline", z.field.At, "the border {0} can not be laid round {1}",
				"lay it as fields of their own", diag.T(z.field.Name), diag.T(c.face.Name))
			return nil
		}
		rest = left
		if len(own) > 0 {
			out = append(out, zone{field: z.field, good: z.good, region: own, side: e.side(z.field.Name, i)})
		}
	}
	return out
}

// run is one edge of the outline, long enough to be laid along.
type run struct {
	a, b  geom.Point
	level bool
	at    string
}

// outline lists the edges of the outline that are longer than the border is wide, level ones first.
func (c *canvas) outline(width unit.Length) []run {
	var out []run
	for _, r := range c.face.Cut {
		for i, v := range r {
			b := r[(i+1)%len(r)].P
			e, _ := edgeOf(c.edges, v.Edge)
			if d := b.Sub(v.P); e.Kind != site.OpeningEdge && geom.Dist(v.P, b) > width {
				out = append(out, run{v.P, b, d.X.Abs() > d.Y.Abs(), e.Name})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b run) int { return cmp.Compare(rank(a), rank(b)) })
	return out
}

func rank(r run) int {
	if r.level {
		return 0
	}
	return 1
}

// outside is how far a quad reaches past the outline, so that what was rounded on it is within.
const outside = unit.Millimetre

// quad is the strip along the edge, longer at both ends by the border's width so that it takes the corners, and grown by
// a joint on all sides.
func (r run) quad(width, joint unit.Length, l geom.Label) geom.Region {
	long := geom.Dist(r.a, r.b)
	f := geom.Frame{Origin: r.a, Angle: unit.AngleOf(math.Atan2(float64(r.b.Y-r.a.Y), float64(r.b.X-r.a.X)))}
	box := geom.Rect{Min: geom.Point{X: -width - joint, Y: -outside}, Max: geom.Point{X: long + width + joint, Y: width + joint}}
	return geom.Region{geom.RectRing(box, l, l, l, l)}.Out(f)
}

// side turns the edge into a frame whose x runs to the right along a level edge, or whose y runs up an upright one.
func (r run) side(field string, i int) *side {
	a, b := r.a, r.b
	if r.level && a.X > b.X || !r.level && a.Y > b.Y {
		a, b = b, a
	}
	angle := unit.AngleOf(math.Atan2(float64(b.Y-a.Y), float64(b.X-a.X)))
	if !r.level {
		angle -= 90 * unit.Degree
	}
	middle := geom.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
	return &side{name: field + " " + letters(i), frame: geom.Frame{Origin: middle, Angle: angle}, upright: !r.level}
}
