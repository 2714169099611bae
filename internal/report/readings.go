package report

import (
	"fmt"

	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Readings lists every tape reading with what the adjustment makes of it.
func Readings(p plan.Plan) Table {
	u := " (" + p.Style.System.String() + ")"
	t := Table{Title: "Tape readings",
		Columns: numbers(text("Line", "Read"+u, "To the studs"+u, "Correction"+u, "Against the others"+u, "Standardised", "Use"), 1, 2, 3, 4, 5)}
	s := fine(p.Style)
	for _, r := range p.Room.Survey.Readings {
		row := []string{r.Name, p.Style.Bare(r.Measured), s.Bare(r.ToStud), "", "", "", use(r, differs(p.Style, r.Differs))}
		if r.Use == site.Used {
			row[3] = signed(s, r.Residual)
		}
		if r.Use == site.Used && r.Checked {
			row[4], row[5] = signed(s, r.Closing), fmt.Sprintf("%d.%d", r.Standard/1000, abs(r.Standard/100%10))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// differs says how a newer reading stands to the older one.
func differs(s unit.Style, l unit.Length) string {
	switch {
	case l > 0:
		return s.Format(l) + " longer"
	case l < 0:
		return s.Format(-l) + " shorter"
	}
	return "the same"
}

func abs(n int64) int64 {
	if n < 0 {
		return -n
	}
	return n
}

func use(r site.Reading, differs string) string {
	switch r.Use {
	case site.Superseded:
		return "superseded by " + r.By + ", " + differs
	case site.Unused:
		return "not used: " + r.By
	}
	if !r.Checked {
		return "used, nothing checks it"
	}
	return "used"
}

// Corners lists where the corners stand and how square they are.
func Corners(p plan.Plan) Table {
	u := " (" + p.Style.System.String() + ")"
	t := Table{Title: "Corners", Columns: numbers(text("Corner", "Angle", "Floor below level"+u, "Ceiling above level"+u), 1, 2, 3)}
	for _, c := range p.Room.Survey.Corners {
		row := []string{c.Name, fmt.Sprintf("%.2f°", float64(c.Angle)/1e6), "not measured", "not measured"}
		if c.FloorKnown {
			row[2] = p.Style.Bare(-c.BareFloor)
		}
		if c.CeilingKnown {
			row[3] = p.Style.Bare(c.CeilingY)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
