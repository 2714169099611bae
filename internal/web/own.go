package web

import (
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// ownStyle is how the document itself has its lengths: files and sheets follow it, whatever the page shows.
func ownStyle(p plan.Plan) unit.Style {
	s := unit.DefaultStyle(p.Document.Units)
	s.Mark = p.Document.Mark.Or(s.Mark)
	return s
}

func (v *view) own() plan.Plan {
	p := v.Plan
	p.Style = ownStyle(p)
	return p
}
