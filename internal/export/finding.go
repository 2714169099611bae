package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/plan"
)

// finding is one complaint or remark.
type finding struct {
	Code  string `json:"code" doc:"stable"`
	Class class  `json:"class" doc:"what it means for the work"`
	At    place  `json:"at" doc:"in the document"`
	Text  string `json:"text" doc:"in words, with lengths in the document's units"`
	Mend  string `json:"mend,omitempty" doc:"what would mend it"`
	Rule  string `json:"rule,omitempty" doc:"id of the published requirement behind it"`
}

// class is what a finding means for the work.
type class string

func (class) choices() []string {
	return []string{diag.Stop.String(), diag.Look.String(), diag.Unchecked.String(), diag.Note.String()}
}

func findingsOf(p plan.Plan) []finding {
	return list(p.Findings, func(f diag.Finding) finding {
		return finding{f.Code, class(f.Class.String()), placeOf(f.At), f.Say(p.Style), f.SayMend(p.Style), f.Rule}
	})
}

// assumption is what was taken because the document is silent.
type assumption struct {
	Text   string `json:"text" doc:"in words"`
	Source string `json:"source" doc:"where the value comes from"`
	At     place  `json:"at" doc:"where the fact would be written"`
}

func assumedOf(p plan.Plan) []assumption {
	return list(p.Assumed, func(a diag.Assumption) assumption { return assumption{a.Say(p.Style), a.Source, placeOf(a.At)} })
}
