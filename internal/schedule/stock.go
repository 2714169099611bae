package schedule

import (
	"slices"

	"dryfit/internal/document"
)

// stockJobs are the jobs that the wood of a thing, or the board of a face, has to be there for.
var stockJobs = map[Kind]string{Cabinet: "cabinet", GlueUp: "top", Trim: "trim", Ledger: "trim", Board: "face"}

// StockJobs lists the kinds of job that take stock.
func StockJobs() []Kind { return []Kind{Cabinet, GlueUp, Trim, Ledger, Board} }

// TakesStock reports whether a job is the one that a use of stock has to be there for.
func TakesStock(t Task, u document.StockUse) bool {
	return stockJobs[t.Kind] == u.Kind && u.Kind != "" && t.Subject == u.Name
}

// stockArrives keeps a job from beginning before the wood or board that was ordered for it has come.
func (m *maker) stockArrives(t *task) {
	for _, s := range m.doc.Stock {
		if slices.ContainsFunc(m.doc.UsesOf(s.Name), func(u document.StockUse) bool { return TakesStock(t.Task, u) }) {
			m.arrives(t, s.Supply)
		}
	}
}
