package takeoff

import (
	"slices"

	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/unit"
)

// finishes reckons what goes on wood: the volume of all coats where the finish tells its coverage, else its surface for the label of the good.
func (m *maker) finishes(wood joinery.Plan) {
	for _, f := range wood.Finishes {
		if len(f.Building) > 0 || f.Area <= 0 {
			continue
		}
		g, named := m.finishGood(f.Name)
		p := part{Part: Part{For: f.Name + ", on all faces and edges", Amount: unit.Spreads(f.Area)}, coats: f.Coats, told: true}
		if f.Covered && !g.Covers.Known {
			p.Amount = unit.Fills(f.Volume)
		}
		m.add(document.WoodFinish, "wood finish", g, named, p)
	}
}

// finishGood is the good that has the finish's own name, else the one that is for wood.
func (m *maker) finishGood(name string) (document.Good, bool) {
	i := slices.IndexFunc(m.doc.Goods, func(g document.Good) bool {
		return g.Kind == document.WoodFinish && g.Name == name && !g.InsteadOf.Known
	})
	if i >= 0 {
		return m.doc.Goods[i], true
	}
	return m.good(document.WoodFinish, "", anyGood)
}
