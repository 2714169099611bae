package report

import (
	"dryfit/internal/lining"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Lining lists the sheets of a face: where each goes and how large it is.
func Lining(p plan.Plan, f lining.Face) Table {
	t := Table{Title: capitalized(f.Name) + ": " + f.Stock, Columns: text("Sheet", "From the left end", "Level line to its lower edge", "Across x up", "Cut away")}
	for _, s := range f.Sheets {
		t.Rows = append(t.Rows, []string{s.Name, p.Style.Bare(s.Rect.Min.X), p.Style.Bare(s.Rect.Min.Y.Abs()) + upDown(s.Rect.Min.Y), Flat(p.Style, s.Rect.W(), s.Rect.H()), cutOutWords(s)})
	}
	return t
}

func upDown(y unit.Length) string {
	switch {
	case y < 0:
		return " down"
	case y > 0:
		return " up"
	}
	return ""
}

func cutOutWords(s lining.Sheet) string {
	var out string
	if n := len(s.Part.Cutouts); n > 0 {
		out = Count(n, "place", "places")
	}
	if n := len(s.Part.Holes); n > 0 {
		if out != "" {
			out += ", "
		}
		out += Count(n, "hole", "holes")
	}
	return out
}
