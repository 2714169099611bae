package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// zone is one field's share of a face, in the face's frame. Its region's labels index the canvas's edges.
type zone struct {
	field  document.Field
	good   good
	region geom.Region
	side   *side // of a border; nil for other fields
}

// canvas is a face being divided among its fields. It adds edges of its own (where field meets field, where a
// field simply ends) to those of the face; edges[i] has label i+1.
type canvas struct {
	face  site.Face
	edges []site.Edge
}

func newCanvas(face site.Face) *canvas {
	return &canvas{face, append([]site.Edge(nil), face.Edges...)}
}

func (c *canvas) label(e site.Edge) geom.Label {
	c.edges = append(c.edges, e)
	return geom.Label(len(c.edges))
}

// zones divides a face. A later field takes its area, and a joint round it, from the earlier ones.
func (m *maker) zones(c *canvas, lay document.Lay) []zone {
	var taken []geom.Region
	out := make([]zone, 0, len(lay.Fields))
	for i := len(lay.Fields) - 1; i >= 0; i-- {
		f := lay.Fields[i]
		g, ok := m.good(f)
		if !ok {
			continue
		}
		own, grown, ok := m.claim(c, f, g, i == 0)
		if !ok {
			continue
		}
		rest, err := own.Minus(taken)
		if err != nil {
			m.found(diag.Stop, "field-outline", f.At, "the outline of field {0} can not be used: {1}",
				"simplify the openings and fields that meet here", diag.T(f.Name), diag.T(err.Error()))
			continue
		}
		taken = append(taken, grown)
		if len(rest) == 0 {
			m.found(diag.Look, "field-empty", f.At, "field {0} has no place left on {1}",
				"check its heights against the face and the later fields", diag.T(f.Name), diag.T(c.face.Name))
			continue
		}
		z := zone{field: f, good: g, region: rest}
		if f.Border.Known {
			out = append(m.runs(c, z), out...)
			continue
		}
		out = append([]zone{z}, out...)
	}
	return out
}

// claim returns what a field asks for, and that grown by its joint, which is what earlier fields lose.
// Where the first field ends, nothing covers its edge; a later one ends at the first.
func (m *maker) claim(c *canvas, f document.Field, g good, first bool) (own, grown geom.Region, ok bool) {
	if f.Border.Known {
		return m.border(c, f, g)
	}
	box, cut, ok := m.box(c.face, f)
	if !ok {
		return nil, nil, false
	}
	if !cut {
		return c.face.Cut, c.face.Cut, true
	}
	ends := c.label(site.Edge{Kind: site.FreeEdge, Name: "end of " + f.Name, Shows: first, Weight: 2})
	meets := c.label(site.Edge{Kind: site.FreeEdge, Name: f.Name, Joint: g.joint, Weight: 1})
	wide := geom.Rect{Min: box.Min.Sub(geom.Point{X: g.joint, Y: g.joint}), Max: box.Max.Add(geom.Point{X: g.joint, Y: g.joint})}
	// What is lost is the plain rectangle, not its share of the face: where both lean along a wall, two roundings of one
	// edge would leave a hair of field between them.
	return c.face.Cut.ClipRect(box, [4]geom.Label{ends, ends, ends, ends}), geom.Region{geom.RectRing(wide, meets, meets, meets, meets)}, true
}

// beyond keeps the sides of a field's box that nobody named clear of the face, so that the face's own edges bound it.
const beyond = unit.Inch

// box is the rectangle that a field is held to; cut is false where that is the whole face.
func (m *maker) box(face site.Face, f document.Field) (box geom.Rect, cut, ok bool) {
	box, ok = face.Cut.Bounds(), true
	box.Min, box.Max = box.Min.Sub(geom.Point{X: beyond, Y: beyond}), box.Max.Add(geom.Point{X: beyond, Y: beyond})
	if len(face.Cut) == 0 {
		return box, false, false
	}
	if f.Up.Given {
		lo, hi, found := m.room.Up(face.Name, f.Up, 0)
		ok = ok && found
		box.Min.Y, cut = lo, true
		if f.Up.Both {
			box.Max.Y = hi
		}
	}
	if f.To.Given {
		lo, _, found := m.room.Up(face.Name, f.To, 0)
		ok = ok && found
		box.Max.Y, cut = lo, true
	}
	if f.Across.Given {
		lo, hi, found := m.room.Across(face.Name, f.Across, 0)
		ok = ok && found
		box.Min.X, cut = lo, true
		if f.Across.Both {
			box.Max.X = hi
		}
	}
	if !ok {
		m.found(diag.Stop, "field-not-placed", f.At, "where field {0} of {1} is can not be worked out, so it is left out",
			"locate it from a corner or a center line of that face, and by a height; on a floor by a border", diag.T(f.Name), diag.T(face.Name))
	}
	if ok && (box.W() <= 0 || box.H() <= 0) {
		m.found(diag.Stop, "field-upside-down", f.At, "field {0} ends before it begins on {1}",
			"give the lower height or the left edge first", diag.T(f.Name), diag.T(face.Name))
		ok = false
	}
	return box, cut, ok
}
