package takeoff

import (
	"strings"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// joints reckons the grout, spacers and clips of a face, field by field.
func (m *maker) joints(w *work) {
	for _, f := range w.tiling.Fields {
		if len(f.Chosen().Pieces) == 0 {
			continue
		}
		m.grout(w, f)
		c := survey(f.Chosen().Pieces, f.Joint)
		w.out.Crosses += c.crosses
		w.out.Tees += c.tees
		w.out.Straights += c.straights
		m.spacers(w, f, c)
		m.clips(w, f, c)
	}
}

// grout is what lies between the pieces: the field's region less its pieces, so that every joint has its true length and width
// and every crossing counts once; and the joints between this field and the next. They are as deep as the tile.
func (m *maker) grout(w *work, f tiling.Field) {
	t := m.tile(f.Tile)
	if !t.Thick.Known {
		m.found(diag.Unchecked, "grout-unknown", f.At, "not reckoned: grout of {0} on {1}, the thickness of {2} is missing", "write its size as length x width x thickness", diag.T(f.Name), diag.T(w.out.Name), diag.T(t.Name))
		return
	}
	seen := f.Region.Area() - area(f) + chipJoints(t, f.Chosen().Pieces) + m.meets(w, f)
	v := catalog.Spread(seen, t.Thick.V)
	g, named, what := m.groutFor(w, f, t)
	w.out.Grout = g.Name
	w.out.Joints += v
	w.out.JointsArea += seen
	m.add(document.Grout, what, g, named, part{Part: Part{Face: w.out.Name, For: "joints of " + f.Name, Amount: unit.Fills(v)}, typical: &catalog.DryGrout})
}

// meets is the area of the hard joints along the outline of a field, between it and the next one.
func (m *maker) meets(w *work, f tiling.Field) unit.Area {
	var sum unit.Area
	for _, r := range f.Region {
		for i, v := range r {
			if e, ok := edgeOf(w.tiling.Edges, v.Edge); ok && !e.Soft && e.Joint > 0 {
				sum += geom.Dist(v.P, r[(i+1)%len(r)].P).Times(e.Joint)
			}
		}
	}
	return sum
}

func edgeOf(edges []site.Edge, l geom.Label) (site.Edge, bool) {
	if l < 1 || int(l) > len(edges) {
		return site.Edge{}, false
	}
	return edges[l-1], true
}

// chipJoints is the area of the joints within mosaic sheets: of every chip with its joint, what is joint.
func chipJoints(t document.Tile, pieces []piece.Piece) unit.Area {
	if t.Kind != document.Mosaic || !t.Chip.Known || !t.ChipJoint.Known {
		return 0
	}
	chip, pitch := t.Chip.V.Times(t.Chip.V), (t.Chip.V + t.ChipJoint.V).Times(t.Chip.V+t.ChipJoint.V)
	var sum unit.Area
	for _, p := range pieces {
		sum += p.Area
	}
	return unit.Area(unit.Spreads(sum).Share(int64(pitch-chip), int64(pitch)).N)
}

// groutFor is the good that fills a field's joints. Where the document names none, it says which grain the joint takes.
func (m *maker) groutFor(w *work, f tiling.Field, t document.Tile) (g document.Good, named bool, what string) {
	g, named = m.good(document.Grout, w.out.Name, anyGood)
	unsanded, sanded := rule.Grains(f.Joint)
	scratched := scratchable(t)
	if named {
		m.grain(w, f, t, g, unsanded, sanded, scratched)
		return g, true, "grout"
	}
	what = "sanded grout"
	if unsanded && (!sanded || scratched) {
		what = "unsanded grout"
	}
	if unsanded && sanded {
		m.assume(f.At, rule.GroutGrain.Cite(), "{0} for {1} on {2}: at a joint of {3} sanded and unsanded are both possible", diag.T(what), diag.T(f.Name), diag.T(w.out.Name), diag.F(f.Joint))
	}
	return g, false, what
}

// scratchable: sand scratches polished faces and glass.
func scratchable(t document.Tile) bool { return t.Polished.Or(false) || t.Kind == document.Glass }

// grain holds a grout that is named against the joint and the tile's face.
func (m *maker) grain(w *work, f tiling.Field, t document.Tile, g document.Good, unsanded, sanded, scratched bool) {
	where, face := diag.T(f.Name), diag.T(w.out.Name)
	if !forJoint(f.Joint)(g) {
		m.found(diag.Look, "grout-joint", g.Joint.At, "{0} is for joints of {1} to {2}; those of {3} on {4} are {5}", "take a grout whose label allows the joint",
			diag.T(g.Name), diag.F(g.Joint.V.From), diag.F(g.Joint.V.To), where, face, diag.F(f.Joint))
	}
	if !g.Grain.Known {
		m.found(diag.Unchecked, "grout-grain", g.At, "not checked: whether {0} suits joints of {1} on {2}; its grain is missing", "write grain: sanded or unsanded, as the bag says", diag.T(g.Name), diag.F(f.Joint), face)
		return
	}
	bad := g.Grain.V == document.Unsanded && !unsanded || g.Grain.V == document.Sanded && !sanded ||
		g.Grain.V == document.ReadyMixed && (f.Joint > rule.ReadyMixedJoint.Limit || f.Joint < rule.JointLeast.Limit)
	if bad && !g.Joint.Known {
		m.found(diag.Look, "grout-grain", g.Grain.At, "{0} does not suit joints of {1} on {2}: unsanded up to {3}, sanded from there on ({4})", "take the other grain, or write the joints that its label allows",
			diag.T(g.Name), diag.F(f.Joint), face, diag.F(rule.GroutGrain.Limit), diag.T(rule.GroutGrain.Cite())).Rule = rule.GroutGrain.ID
	}
	sand := g.Scratches.Or(g.Grain.V == document.Sanded)
	switch {
	case sand && scratched:
		m.found(diag.Look, "grout-scratches", g.Grain.At, "{0} has sand in it, which scratches {1} on {2}", "take unsanded grout, or one whose label says that it does not scratch; try it on an offcut", diag.T(g.Name), diag.T(t.Name), face)
	case sand && t.Kind == document.Stone && !t.Polished.Known:
		m.found(diag.Unchecked, "grout-scratches", t.At, "not checked: whether {0} scratches {1}; whether it is polished is missing", "write polished: no, and try it on an offcut", diag.T(g.Name), diag.T(t.Name))
	}
}

func white(color string) bool { return strings.Contains(strings.ToLower(color), "white") }
