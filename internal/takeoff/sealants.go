package takeoff

import (
	"math"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// soft is one joint of sealant: a change of plane, seen from one or from both of its faces.
type soft struct {
	face, other string
	edge        string
	at          diag.Place
	width, deep unit.Length
	length      [2]unit.Length // seen from the face and from the other
	delicate    bool           // beside stone or what is light
}

// sealants reckons every soft joint once, though both faces have it, and the fillets round pipes.
func (m *maker) sealants() {
	for _, s := range m.softJoints() {
		long := max(s.length[0], s.length[1])
		depth := rule.BeadDepth(s.width, s.deep)
		v := Bead(long, s.width, depth)
		where := s.edge
		if s.other != "" && s.other != s.edge {
			where += " with " + s.other
		}
		g, named := m.good(document.Sealant, s.face, anyGood)
		m.add(document.Sealant, "sealant", g, named, part{Part: Part{Face: s.face, For: where, Amount: unit.Fills(v)}})
		m.stains(s, g, named)
		if rod, ok := m.good(document.BackerRod, s.face, anyGood); ok {
			m.add(document.BackerRod, "backer rod", rod, true, part{Part: Part{Face: s.face, For: where, Amount: unit.Stretches(long)}})
		}
	}
	m.pipes()
}

// Bead is what a joint of sealant takes: a rectangle as wide as the joint and as deep as it is filled.
func Bead(long, width, depth unit.Length) unit.Volume {
	return unit.VolumeOf(long.MM() * width.MM() * depth.MM())
}

// Fillet is what a triangular fillet takes whose legs are both so long.
func Fillet(long, leg unit.Length) unit.Volume {
	return unit.VolumeOf(long.MM() * leg.MM() * leg.MM() / 2)
}

// softJoints lists the soft edges of all fields. A joint between two faces is one entry.
func (m *maker) softJoints() []*soft {
	var all []*soft
	for _, f := range m.tiles.Faces {
		sum := map[geom.Label]unit.Length{}
		var order []geom.Label
		t := document.Tile{}
		for _, z := range f.Fields {
			if len(z.Chosen().Pieces) > 0 {
				t = m.tile(z.Tile)
			}
			for _, r := range z.Region {
				for i, v := range r {
					e, ok := edgeOf(f.Edges, v.Edge)
					if !ok || !e.Soft || e.Joint <= 0 {
						continue
					}
					if _, seen := sum[v.Edge]; !seen {
						order = append(order, v.Edge)
					}
					sum[v.Edge] += geom.Dist(v.P, r[(i+1)%len(r)].P)
				}
			}
		}
		for _, l := range order {
			e, _ := edgeOf(f.Edges, l)
			all = see(all, f.Name, e, sum[l], t)
		}
	}
	return all
}

// see adds one face's sight of a joint.
func see(all []*soft, face string, e site.Edge, long unit.Length, t document.Tile) []*soft {
	delicate := t.Kind == document.Stone || t.Light.Or(false)
	for _, s := range all {
		if e.Other != "" && s.face == e.Other && s.other == face {
			s.length[1] += long
			s.width = max(s.width, e.Joint)
			s.delicate = s.delicate || delicate
			return all
		}
	}
	return append(all, &soft{face: face, other: e.Other, edge: e.Name, at: e.At, width: e.Joint, deep: t.Thick.Or(unit.Reach), length: [2]unit.Length{long}, delicate: delicate})
}

// stains: beside stone and light tile a sealant must cure without acid and not stain, by its label.
func (m *maker) stains(s *soft, g document.Good, named bool) {
	if !s.delicate || !named {
		return
	}
	for _, c := range []struct {
		v    document.Value[bool]
		no   string
		code string
	}{{g.NeutralCure, "cures with acid", "sealant-acid"}, {g.NonStaining, "can stain", "sealant-stains"}} {
		switch {
		case c.v.Known && !c.v.V:
			m.found(diag.Look, c.code, c.v.At, "{0} {1}, and {2} is stone or light: it can show for ever", "take a neutral-cure, non-staining sealant made for stone", diag.T(g.Name), diag.T(c.no), diag.T(s.face))
		case !c.v.Known:
			m.found(diag.Unchecked, c.code, g.At, "not checked: whether {0} suits the stone of {1}; whether it {2} is missing", "copy from the label: neutral cure, non-staining", diag.T(g.Name), diag.T(s.face), diag.T(c.no))
		}
	}
}

// pipes are the fillets round the pipes that come through tile.
func (m *maker) pipes() {
	for _, f := range m.tiles.Faces {
		face, _ := m.room.Face(f.Name)
		for _, h := range face.Holes {
			d := h.Drilled(m.doc.Tools)
			if d == 0 || indexOf(f.Fields, func(z tiling.Field) bool { return z.Region.Contains(h.Center) >= 0 }) < 0 {
				continue
			}
			g, named := m.good(document.Sealant, f.Name, anyGood)
			round := unit.FromFloat(math.Pi * float64(d))
			m.add(document.Sealant, "sealant", g, named, part{Part: Part{Face: f.Name, For: "round " + h.Name, Amount: unit.Fills(Fillet(round, catalog.FilletLeg))}})
		}
	}
}
