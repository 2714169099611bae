package web

import (
	"fmt"
	"html/template"

	"dryfit/internal/report"
	"dryfit/internal/sheet"
)

// woodWork is what is built of wood: cabinets, tops, lines to scribe, trim, finish.
type woodWork struct {
	Cabinets []woodPart
	Tops     []woodPart
	Scribes  []woodPart
	Trim     []report.Table
	Finish   report.Table
}

// woodPart is one thing with its drawing, its words and its tables.
type woodPart struct {
	ID, Name, Help string
	Drawing        template.HTML
	Words          []string
	Tables         []report.Table
	Works          []partWork
}

// partWork is what is done to one part.
type partWork struct {
	Name  string
	Lines []string
}

// woodWork words what is built; nil where nothing is.
func (v *view) woodWork() (*woodWork, error) {
	p := v.Plan
	w := p.Wood
	if len(w.Cabinets)+len(w.Tops)+len(w.Scribes)+len(w.Trim)+len(w.Finishes) == 0 {
		return nil, nil
	}
	out := &woodWork{Finish: report.Finishes(p)}
	for i, c := range w.Cabinets {
		svg, err := drawn(sheet.CabinetOnScreen(p, c), fmt.Sprintf("cabinet-%d-", i))
		if err != nil {
			return nil, err
		}
		one := woodPart{ID: fmt.Sprintf("cabinet-%d", i), Name: c.Name, Drawing: svg, Words: report.CabinetWords(p, c), Tables: []report.Table{narrowed(report.CabinetParts(p, c))},
			Help: "Taken apart; numbers are those of the list. Every part lies face up, its front edge toward you, its left end at your left hand."}
		if len(c.Fronts) > 0 {
			one.Tables = append(one.Tables, report.Fronts(p, c))
		}
		for k, q := range c.Parts() {
			if lines := report.PartWork(p, q); len(lines) > 0 {
				one.Works = append(one.Works, partWork{fmt.Sprintf("%d %s", k+1, q.Name), lines})
			}
		}
		out.Cabinets = append(out.Cabinets, one)
	}
	for i, t := range w.Tops {
		svg, err := drawn(sheet.TopOnScreen(p, t), fmt.Sprintf("top-%d-", i))
		if err != nil {
			return nil, err
		}
		one := woodPart{ID: fmt.Sprintf("top-%d", i), Name: t.Name, Drawing: svg, Words: report.TopWords(p, t), Help: "Seen from above, the wall on top: this face up, front edge below."}
		if len(t.Holes) > 0 {
			one.Tables = append(one.Tables, report.TopHoles(p, t))
		}
		if len(t.Moves.Slots) > 0 {
			one.Tables = append(one.Tables, report.Slots(p, t))
		}
		if len(t.Moves.Gaps) > 0 {
			one.Tables = append(one.Tables, report.Plays(p, t))
		}
		out.Tops = append(out.Tops, one)
	}
	for i, s := range w.Scribes {
		out.Scribes = append(out.Scribes, woodPart{ID: fmt.Sprintf("scribe-%d", i), Name: s.Name, Words: append(report.ScribeWords(p, s), "The book has the template at full size."), Tables: []report.Table{report.ScribeLine(p, s)}})
	}
	for _, t := range w.Trim {
		out.Trim = append(out.Trim, report.TrimLengths(p, t))
	}
	return out, nil
}

// narrowed leaves out the last column, which a list below tells in full: a phone has no room for it.
func narrowed(t report.Table) report.Table {
	n := len(t.Columns) - 1
	t.Columns = t.Columns[:n]
	for i := range t.Rows {
		t.Rows[i] = t.Rows[i][:n]
	}
	return t
}
