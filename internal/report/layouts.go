package report

import (
	"fmt"
	"slices"

	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Layouts sets the best few layouts of a field side by side, each with its measures.
func Layouts(p plan.Plan, f site.Face, z tiling.Field) Table {
	t := Table{Title: "Layouts of " + z.Name + ", best first", Columns: text("Measure, most important first"), Empty: "No layout was found."}
	if len(z.Layouts) == 0 {
		return t
	}
	for i := range z.Layouts {
		t.Columns = append(t.Columns, Column{Head: layoutName(z, i)})
	}
	at, across, up := Datum(p, f)
	t.row("joint crossing "+across, z, func(l tiling.Layout) string { return p.Style.Bare(l.Origin.X - at.X) })
	t.row("joint crossing "+up, z, func(l tiling.Layout) string { return p.Style.Bare(Up(p, f, l.Origin.Y)) })
	for _, m := range z.Layouts[0].Measures {
		t.row(string(m.Name)+proof(m), z, func(l tiling.Layout) string { return measured(p.Style, l, m.Name) })
	}
	t.row("whole tiles, cut pieces", z, func(l tiling.Layout) string { return fmt.Sprintf("%d, %d", l.Whole, l.CutCount) })
	t.row("tiles cut up, at least", z, func(l tiling.Layout) string { return fmt.Sprintf("%d, %d", l.Tiles, l.TilesLeast) })
	return t
}

func (t *Table) row(head string, z tiling.Field, cell func(tiling.Layout) string) {
	row := []string{head}
	for _, l := range z.Layouts {
		row = append(row, cell(l))
	}
	t.Rows = append(t.Rows, row)
}

func layoutName(z tiling.Field, i int) string {
	switch {
	case i == 0 && z.Held:
		return "held by you"
	case i == 0:
		return "laid"
	}
	return fmt.Sprintf("other %d", i)
}

// proof marks the measures whose best value is not proven.
func proof(m judge.Measure) string {
	if m.Exact {
		return ""
	}
	return " (not proven best)"
}

func measured(s unit.Style, l tiling.Layout, name judge.Name) string {
	i := slices.IndexFunc(l.Measures, func(m judge.Measure) bool { return m.Name == name })
	if i < 0 {
		return ""
	}
	m := l.Measures[i]
	v := s.Bare(m.Length)
	switch {
	case m.None:
		return "none"
	case m.IsCount:
		v = fmt.Sprint(m.Count)
	}
	if m.Where != "" {
		v += " at " + m.Where
	}
	return v
}
