package schedule

import (
	"dryfit/internal/cure"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// labeled fills a wait with what the label of the subject's good says; false where there is none.
func (m *maker) labeled(n need, subject string, w *wait) bool {
	if n == toRecoat || n == toUse {
		return m.finishLabel(n, subject, w)
	}
	return false
}

// finishLabel is what the finish on a piece of woodwork says.
func (m *maker) finishLabel(n need, subject string, w *wait) bool {
	f, ok := m.finishOf(subject)
	hours := f.Hours
	if n == toUse && f.Cures.Known {
		hours = f.Cures
	}
	if !ok || !hours.Known {
		return false
	}
	w.label, w.source, w.at = cure.Label{Time: unit.Minutes(hours.V) * unit.Hour}, "label of "+f.Name, hours.At
	return true
}

func (m *maker) finishOf(subject string) (document.Finish, bool) {
	for _, f := range m.doc.Finish {
		for _, on := range f.On {
			if on.Text == subject {
				return f, true
			}
		}
	}
	return document.Finish{}, false
}

// coatsOf is how many coats a piece of woodwork gets.
func (m *maker) coatsOf(t thing) int {
	if f, ok := m.finishOf(t.subject(false)); ok && f.Coats.Known {
		return f.Coats.V
	}
	m.assume(t.at, practice, "{0} gets {1} coats", diag.T(t.subject(false)), diag.N(coats))
	return coats
}

// described lists what the document itself describes.
func (m *maker) described() []thing {
	var all []thing
	for _, c := range m.doc.Cabinets {
		all = append(all, thing{"cabinet", c.Name, c.At})
	}
	for _, t := range m.doc.Tops {
		all = append(all, thing{"top", t.Name, t.At})
	}
	for _, t := range m.doc.Trim {
		all = append(all, thing{"trim", t.Name, t.At})
	}
	return all
}
