package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// movement lists the joints of a face that must stay soft: every change of plane that its tile reaches, and, where a
// face is longer than the published distance, the need for one in the field.
func (m *maker) movement(face site.Face, edges []site.Edge, fields []Field) []Movement {
	var out []Movement
	for _, f := range fields {
		for _, r := range f.Region {
			for i, v := range r {
				if e, ok := edgeOf(edges, v.Edge); ok && e.Soft {
					out = append(out, Movement{Where: e.Name, From: v.P, To: r[(i+1)%len(r)].P, Rule: rule.MovementPerimeter.ID})
				}
			}
		}
	}
	m.movementInField(face)
	return out
}

func edgeOf(edges []site.Edge, l geom.Label) (site.Edge, bool) {
	if l < 1 || int(l) > len(edges) {
		return site.Edge{}, false
	}
	return edges[l-1], true
}

// movementInField tells where a face is too long to go without a movement joint in its field.
func (m *maker) movementInField(face site.Face) {
	limit := rule.MovementInside
	if m.doc.Climate.Exterior.Or(false) || m.doc.Climate.Sun.Or(false) {
		limit = rule.MovementSun
	}
	box := face.Cut.Bounds()
	for _, side := range []struct {
		name string
		size unit.Length
	}{{"long", box.W()}, {"high", box.H()}} {
		if side.size <= limit.Limit {
			continue
		}
		m.found(diag.Look, "movement-joint", face.At,
			"{0} is {1} {2}: a movement joint is needed at most every {3} ({4})",
			"leave the joint that lies nearest to each {3} soft, over any joint in the ground below",
			diag.T(face.Name), diag.L(side.size), diag.T(side.name), diag.L(limit.Limit), diag.T(limit.Cite())).Rule = limit.ID
	}
	m.movementWidth(face)
}

// movementWidth tells how wide outside movement joints must be.
func (m *maker) movementWidth(face site.Face) {
	if !m.doc.Climate.Exterior.Or(false) {
		return
	}
	if !m.doc.Climate.Range.Known {
		m.found(diag.Unchecked, "movement-width", face.At, "not checked: width of movement joints, the yearly range of temperature is missing",
			"give climate: {yearly range: 115 F}")
		return
	}
	width := rule.MovementWidth(true, fahrenheit(m.doc.Climate.Range.V))
	m.found(diag.Note, "movement-width", face.At, "movement joints on {0}, at most {1} apart, must be {2} wide ({3})", "",
		diag.T(face.Name), diag.L(rule.MovementSun.Limit), diag.L(width), diag.T(rule.MovementOutside12.Cite())).Rule = rule.MovementOutside12.ID
}

// fahrenheit turns a range in thousandths of a kelvin into whole Fahrenheit degrees, half up.
func fahrenheit(milliKelvin int64) int { return int((milliKelvin*9/5 + 500) / 1000) }
