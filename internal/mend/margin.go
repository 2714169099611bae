package mend

import (
	"cmp"
	"slices"

	"dryfit/internal/figure"
	"dryfit/internal/fit"
	"dryfit/internal/unit"
)

// margins tells of the checks that pass what is left, and which layers of a build-up eat it.
func (m *mender) margins() {
	thick := m.layers()
	for _, c := range m.base.Fit.Checks {
		if !measured(c) || c.State != fit.Fits {
			continue
		}
		g := Margin{Check: c.ID, Left: c.Margin}
		for _, t := range c.Layers {
			if t.Per < 0 {
				g.Eats = append(g.Eats, eaten(t, c.Margin, thick[t.Path]))
			}
		}
		slices.SortStableFunc(g.Eats, func(a, b Layer) int { return cmp.Compare(b.Takes, a.Takes) })
		m.out.Margins = append(m.out.Margins, g)
	}
	slices.SortStableFunc(m.out.Margins, func(a, b Margin) int { return cmp.Compare(a.Left, b.Left) })
}

// eaten says what a layer takes of a margin, and how much thicker it may be.
func eaten(t figure.Term, left, thick unit.Length) Layer {
	spare := left.MulDiv(int64(unit.One), int64(-t.Per))
	if (-t.Per).Of(spare) > left {
		spare--
	}
	return Layer{Path: t.Path, Per: t.Per, Thick: thick, Takes: (-t.Per).Of(thick), Spare: spare}
}

// layers maps the places of layers to how thick they are.
func (m *mender) layers() map[string]unit.Length {
	thick := map[string]unit.Length{}
	for _, w := range m.base.Fit.Places.Walls {
		for _, l := range w.Layers {
			for _, path := range l.Thick.Facts() {
				thick[path] = l.Thick.V
			}
		}
	}
	return thick
}
