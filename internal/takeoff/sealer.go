package takeoff

import (
	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// sealer reckons penetrating sealer, of stone one coat more before it is grouted, where a face has stone or tile that drinks, and where a sealer names the face.
func (m *maker) sealer(w *work) {
	g, named := m.good(document.Sealer, w.out.Name, anyGood)
	for _, f := range w.tiling.Fields {
		t := m.tile(f.Tile)
		asked := named && len(g.For) > 0
		if len(f.Chosen().Pieces) == 0 || t.Kind != document.Stone && !t.Porosity.Known && !asked {
			continue
		}
		a := f.Region.Area()
		if t.Kind == document.Stone {
			m.assume(f.At, "common practice", "{0} on {1} is sealed once before it is grouted, and again when the grout has cured", diag.T(f.Name), diag.T(w.out.Name))
			m.add(document.Sealer, "sealer", g, named, part{Part: Part{Face: w.out.Name, For: f.Name + ", before grouting", Amount: unit.Spreads(a)}, typical: m.drinks(t), coats: 1, fixed: true})
		}
		m.add(document.Sealer, "sealer", g, named, part{Part: Part{Face: w.out.Name, For: f.Name, Amount: unit.Spreads(a)}, typical: m.drinks(t), coats: catalog.Coats})
	}
}

// drinks is the typical coverage on a tile's face; stone of which nothing is told counts as medium, and says so.
func (m *maker) drinks(t document.Tile) *catalog.Typical {
	if !t.Porosity.Known {
		m.assume(t.At, "common practice", "the face of {0} drinks as much sealer as limestone or slate: its porosity is not told", diag.T(t.Name))
	}
	switch t.Porosity.Or(document.Medium) {
	case document.Open:
		return &catalog.SealerOpen
	case document.Dense:
		return &catalog.SealerDense
	}
	return &catalog.SealerMedium
}
