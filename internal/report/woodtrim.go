package report

import (
	"fmt"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/plan"
)

// ScribeWords tells what a line to scribe needs.
func ScribeWords(p plan.Plan, s joinery.Scribe) []string {
	f := p.Style.Fine()
	out := []string{fmt.Sprintf("%s, %s edge: by %s. At the deepest place %s come off.", s.For, scribeEdge(s.Edge), s.Source, f.Format(s.Needs))}
	if s.LeaveKnown {
		out = append(out, f.Format(s.Leave)+" are left on for it.")
	}
	if s.Edge == document.ScribeFoot {
		return append(out, "Sawn down to the lowest floor and set level, it loses at each place what is told; lay the template on its lower edge, or set it level and follow the floor with a scriber.")
	}
	return append(out, "Set the part parallel to the wall, take the widest gap between the points of the scriber, and follow the wall; or lay the template on its edge.")
}

func scribeEdge(e document.ScribeEdge) string {
	return [...]string{"rear", "left", "right", "lower"}[e]
}

// ScribeLine lists a line to scribe by its stations.
func ScribeLine(p plan.Plan, s joinery.Scribe) Table {
	f := p.Style.Fine()
	t := Table{Title: "Line to cut: " + s.Name, Columns: numbers(text("From the "+s.Origin+" of the edge", "Gap to the "+map[bool]string{true: "floor", false: "wall"}[s.Edge == document.ScribeFoot], "Cut off"), 0, 1, 2)}
	for _, q := range s.Line {
		t.Rows = append(t.Rows, []string{f.Bare(q.At), f.Bare(q.Offset), f.Bare(q.Cut)})
	}
	return t
}

// TrimLengths lists the pieces of a trim with their long and short points and what the saw is set to.
func TrimLengths(p plan.Plan, tr joinery.Trim) Table {
	t := Table{Title: capitalFirst(tr.Name), Columns: numbers(text("Where", "Piece", "Long point", "Short point", "Saw longer by", "Left end", "Right end", "Floor falls"), 1, 2, 3, 4, 7)}
	for _, r := range tr.Runs {
		for i, l := range r.Pieces {
			row := []string{r.Wall + ", " + r.Where, fmt.Sprintf("%d of %d", i+1, len(r.Pieces)), p.Style.Bare(l.Long), p.Style.Bare(l.Short), "", "scarf 45.0°", "scarf 45.0°", ""}
			if l.Part.Over.Length > 0 {
				row[4] = p.Style.Bare(l.Part.Over.Length)
			}
			if i == 0 {
				row[5] = trimEnd(r.Ends[0])
			} else {
				row[5] = scarfWords(p, r.Scarfs, i-1)
			}
			if i == len(r.Pieces)-1 {
				row[6] = trimEnd(r.Ends[1])
			} else {
				row[6] = scarfWords(p, r.Scarfs, i)
			}
			if r.Falls > 0 {
				row[7] = p.Style.Fine().Bare(r.Falls)
			}
			t.Rows = append(t.Rows, row)
		}
	}
	if tr.Kind == document.Ledger {
		t.Columns = append(t.Columns, Column{Head: "Screwed into studs, from the left end of the wall"})
		k := 0
		for _, r := range tr.Runs {
			for range r.Pieces {
				t.Rows[k] = append(t.Rows[k], intoWords(p, r.Into))
				k++
			}
		}
	}
	return t
}

func scarfWords(p plan.Plan, all []joinery.Scarf, i int) string {
	if i < 0 || i >= len(all) {
		return "scarf 45.0°"
	}
	if all[i].On == "" {
		return "scarf 45.0°, " + p.Style.Bare(all[i].X) + " along the wall, on no recorded stud"
	}
	return "scarf 45.0° on " + all[i].On + ", " + p.Style.Bare(all[i].X) + " along the wall"
}

func intoWords(p plan.Plan, studs []joinery.Stud) string {
	if len(studs) < 2 {
		return "not known"
	}
	out := make([]string, len(studs))
	for i, s := range studs {
		out[i] = p.Style.Bare(s.X)
	}
	return strings.Join(out, ", ")
}

func trimEnd(e joinery.TrimEnd) string {
	words := e.Joint + " at " + e.What
	if e.Saw != 0 {
		words += ", saw " + degrees(e.Saw) + " off square"
	}
	if e.Angle != 0 && e.Joint != "square" {
		words += ", corner " + degrees(e.Angle)
	}
	return words
}

// Finishes lists what is brushed or wiped on wood.
func Finishes(p plan.Plan) Table {
	t := Table{Title: "Finish", Columns: text("What", "On", "One coat", "Coats", "In all", "Between coats", "Until used", "Sanding")}
	for _, f := range p.Wood.Finishes {
		row := []string{f.Name, strings.Join(f.On, ", "), areaOf(p, f.Area), "not given", "not known", "not given", "not given", ""}
		if f.Coats > 0 {
			row[3] = fmt.Sprint(f.Coats)
		}
		if f.Covered {
			row[4] = hundredths(int64(f.Volume)/10_000) + " L"
		}
		if f.Between > 0 {
			row[5] = fmt.Sprintf("%d h", f.Between)
		}
		if f.Until > 0 {
			row[6] = fmt.Sprintf("%d h", f.Until)
		}
		row[7] = gritWords(f.Grits)
		t.Rows = append(t.Rows, row)
	}
	return t
}

func gritWords(grits []int) string {
	out := make([]string, len(grits))
	for i, g := range grits {
		out[i] = fmt.Sprint(g)
	}
	return strings.Join(out, ", ")
}

// AllParts lists every part of wood in one table, for the shop's computer.
func AllParts(p plan.Plan) Table {
	t := Table{Title: "Wood parts", Columns: numbers(text("For", "Part", "Count", "Length", "Width", "Thick", "Stock", "Grain", "Banded", "Saw longer by", "Saw wider by", "Work"), 2, 3, 4, 5, 9, 10)}
	f := p.Style.Fine()
	for _, q := range p.Wood.Parts() {
		t.Rows = append(t.Rows, []string{q.For, q.Name, fmt.Sprint(q.Count), f.Bare(q.Size.Length), f.Bare(q.Size.Width), f.Bare(q.Size.Thick), q.Stock, q.Grain.String(), bandedOf(q),
			f.Bare(q.Over.Length), f.Bare(q.Over.Width), strings.Join(PartWork(p, q), "; ")})
	}
	return t
}
