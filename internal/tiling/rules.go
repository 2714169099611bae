package tiling

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// rules holds one field against the published requirements for joints, offsets and lippage.
func (m *maker) rules(f document.Field, g good, shift unit.Ratio) {
	m.jointForVariation(f, g)
	m.lippage(g)
	if shift > 0 && g.large() {
		m.offsetJoint(f, g)
		m.offsetMost(f, g, shift)
	}
}

// jointForVariation: a joint takes up three times what the tiles differ in size.
func (m *maker) jointForVariation(f document.Field, g good) {
	need := rule.JointFor(m.variation(g.tile))
	if g.joint >= need {
		return
	}
	r := rule.JointVariation
	if need == rule.JointLeast.Limit {
		r = rule.JointLeast
	}
	m.found(diag.Look, "joint-narrow", f.At,
		"joint {0} for {1} is under {2}, which its variation in size needs ({3})",
		"set the joint to {2}, or measure the tiles: a smaller variation allows a smaller joint",
		diag.F(g.joint), diag.T(g.tile.Name), diag.F(need), diag.T(r.Cite())).Rule = r.ID
}

// offsetJoint: in an offset bond the bow of one tile lies against the ends of its neighbors.
func (m *maker) offsetJoint(f document.Field, g good) {
	need, r := rule.OffsetJoint(g.tile.Edges.Or(document.Calibrated) == document.Rectified, m.warpage(g.tile))
	if g.joint >= need {
		return
	}
	m.found(diag.Look, "offset-joint-narrow", f.At,
		"an offset bond of {0} with a side over 15 in needs a joint of {1}, here it is {2} ({3})",
		"set the joint to {1}, or choose a stack bond",
		diag.T(g.tile.Name), diag.F(need), diag.F(g.joint), diag.T(r.Cite())).Rule = r.ID
}

// offsetMost: a half bond puts the high middle of a bowed tile beside its neighbor's low end.
func (m *maker) offsetMost(f document.Field, g good, shift unit.Ratio) {
	if shift > unit.One/2 {
		shift = unit.One - shift // a shift of 2/3 lies like 1/3 the other way
	}
	if shift <= rule.OffsetMost.Ratio {
		return
	}
	m.found(diag.Look, "offset-too-far", f.At,
		"{0} has a side over 15 in and is offset by {1}: at most 33 % ({2})",
		"use running 1/3, or set a mock-up and accept its lippage",
		diag.T(g.tile.Name), diag.Percent(shift), diag.T(rule.OffsetMost.Cite())).Rule = rule.OffsetMost.ID
}

// lippage tells the step that is allowed between neighbors, and where the tile's own warpage eats it.
func (m *maker) lippage(g good) {
	warp := m.warpage(g.tile)
	allowed, r := rule.Lippage(g.joint, warp, g.tile.Kind == document.Stone)
	class, text := diag.Note, "{0}: neighbors may differ by {1} at most ({2})"
	if g.tile.Kind == document.Stone && warp > allowed {
		class, text = diag.Look, "{0}: neighbors may differ by {1} at most ({2}), and its warpage alone is more"
	}
	m.found(class, "lippage", g.tile.At, text, "sort the tiles and set with a straightedge or leveling clips",
		diag.T(g.tile.Name), diag.F(allowed), diag.T(r.Cite())).Rule = r.ID
}
