package report

import (
	"dryfit/internal/figure"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// ClearFloor is a stretch of floor that must stay clear before something: from Left to Right along a wall, from From off it for as far as is Asked.
type ClearFloor struct {
	Name, Path  string
	Wall        string
	Left, Right unit.Length
	From, Asked unit.Length
	Is, Needed  string
	Misses      bool
	Words       string // "bowl: has 34-1/8 in, needs 21 in"
	Short       string // "has 34-1/8 in, needs 21 in"
}

// Clear lists the floor that the checks hold clear before basins and WCs, where all of it is known.
func Clear(p plan.Plan) []ClearFloor {
	var out []ClearFloor
	add := func(name, path, wall string, x, width, front figure.Figure, ids ...string) {
		all := x.Add(width).Add(front)
		for _, id := range ids {
			k, ok := p.Fit.Find(path + " > " + id)
			if !ok || !all.Known() || k.State == fit.NotChecked {
				continue
			}
			out = append(out, ClearFloor{Name: name, Path: path, Wall: wall, Left: x.V - width.V/2, Right: x.V - width.V/2 + width.V, From: front.V, Asked: unit.Length(k.Limit.Num),
				Is: k.Value.Say(p.Style), Needed: k.Limit.Say(p.Style), Misses: k.State == fit.Misses})
		}
	}
	for _, b := range p.Fit.Places.Basins {
		add(b.Name, b.Doc.At.Path, b.Wall, b.MidX, b.Wide, basinFront(p, b.Top, b.MidOff.Add(b.Deep.Half())), "clear in front")
	}
	for _, c := range p.Fit.Places.WCs {
		wide := figure.Missing(c.Doc.At.Path + " > width")
		if c.Doc.Width.Known {
			wide = figure.Number(c.Doc.Width.V)
		}
		add(c.Name, c.Doc.At.Path, c.Wall, c.X, wide, c.Front, "clear in front")
	}
	for i, c := range out {
		out[i].Short = "has " + c.Is + ", needs " + c.Needed
		if c.Misses {
			out[i].Short += ": misses"
		}
		out[i].Words = c.Name + ": " + out[i].Short
	}
	return out
}

// basinFront is what one stands before: the top's front edge where it is farther than the basin's.
func basinFront(p plan.Plan, top string, front figure.Figure) figure.Figure {
	if t, ok := p.Fit.Places.Top(top); ok {
		return figure.Max(front, t.Depth)
	}
	return front
}

// ClearTable tells the floor that must stay clear.
func ClearTable(p plan.Plan) Table {
	t := Table{Title: "Floor that must stay clear", Columns: numbers(text("Before", "Clear", "Asked", ""), 1, 2), Empty: "No floor is held clear: see what is not checked."}
	for _, c := range Clear(p) {
		verdict := "fits"
		if c.Misses {
			verdict = "misses"
		}
		t.Rows = append(t.Rows, []string{c.Name, c.Is, c.Needed, verdict})
	}
	return t
}
