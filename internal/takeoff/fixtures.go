package takeoff

import (
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// fixtures counts the small parts that every fixture takes and none comes with: a supply line for each stop valve, a seal with
// bolts for each WC (common practice).
func (m *maker) fixtures() {
	for _, s := range m.doc.Stops {
		g, named := m.good(document.SupplyLine, "", anyGood)
		m.add(document.SupplyLine, "supply line", g, named, part{Part: Part{For: "from " + s.Name + " to " + s.Serves.Text, Amount: unit.Count(1)}})
	}
	for _, w := range m.doc.WCs {
		g, named := m.good(document.WCSeal, "", anyGood)
		m.add(document.WCSeal, "seal and bolts for a WC", g, named, part{Part: Part{For: w.Name, Amount: unit.Count(1)}})
	}
}
