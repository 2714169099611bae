package report

import (
	"fmt"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// TopWords tells what a top is, how it is glued up and what it does over the year.
func TopWords(p plan.Plan, t joinery.Top) []string {
	f := p.Style.Fine()
	out := []string{fmt.Sprintf("%s wide, from %s to %s off the finished wall, %s thick; its underside %s above the finished floor.", f.Format(t.Width), f.Bare(t.Back), f.Format(t.Depth), f.Format(t.Thick), f.Format(t.Up))}
	switch t.Kind {
	case document.StoneTop:
		out = append(out, "Made by others: give them the drawing and the templates, and let them measure the finished wall themselves.")
	default:
		out = append(out, glueWords(p, t.Glue)...)
		out = append(out, "Finish both faces, the edges and the rims of cut-outs alike, before it is fixed: one bare face makes it cup.")
	}
	for _, e := range t.Edges {
		out = append(out, "Upper edge, "+e.Name+": "+profileWords(f, e.Profile)+".")
	}
	out = append(out, passageWords(p, t.Passages)...)
	out = append(out, movesWords(p, t.Moves)...)
	for _, r := range t.Reaches {
		if r.Known {
			out = append(out, fmt.Sprintf("%s reaches %s: %s.", capitalFirst(r.Tool), f.Format(r.Deep), [...]string{"not through, even from both faces", "through from one face", "through from both faces only"}[r.Sides]))
		}
	}
	return out
}

func profileWords(f unit.Style, e document.EdgeProfile) string {
	if e.Kind == document.SquareEdge {
		return "square"
	}
	return e.Kind.String() + " " + f.Format(e.Size)
}

// glueWords: how a slab is glued up. The times are common practice; the bottle's own label goes before them.
func glueWords(p plan.Plan, g joinery.Glue) []string {
	if !g.Known {
		return nil
	}
	f := p.Style.Fine()
	var widths, bark []string
	for _, s := range g.Staves {
		widths = append(widths, f.Bare(s.Jointed))
		bark = append(bark, map[bool]string{true: "up", false: "down"}[s.BarkUp])
	}
	out := []string{
		fmt.Sprintf("%s, %s long and %s thick as sawn; jointed widths from the front: %s; together %s, %s to spare.", Count(len(g.Staves), "stave", "staves"), f.Format(g.Length), f.Format(g.Thick), strings.Join(widths, ", "), f.Format(g.Width), f.Format(g.Spare)),
		"Bark side from the front: " + strings.Join(bark, ", ") + ".",
		fmt.Sprintf("Glue on both faces of %s, %s in all. Buy %s.", Count(len(g.Staves)-1, "joint", "joints"), areaOf(p, g.Area), roughLumber(p, g)),
	}
	if g.Clamps.Count > 0 {
		cold, warm := "50 °F", "70 °F"
		if p.Style.System == unit.Millimetres {
			cold, warm = "10 °C", "21 °C"
		}
		out = append(out, fmt.Sprintf("%s, above and below in turn: the first %s from the end, then every %s.", Count(g.Clamps.Count, "clamp", "clamps"), f.Format(g.Clamps.First), f.Format(g.Clamps.Spacing)),
			fmt.Sprintf("White or yellow glue (common practice; its label goes before): no colder than %s, open 5 to 10 minutes, in clamps 30 to 60 minutes at %s, full strength after 24 hours.",
				cold, warm))
	}
	return out
}

// roughLumber is what the staves take as sawn, as lumber is sold where the room is measured in inches: by the board foot; else by the cubic metre.
func roughLumber(p plan.Plan, g joinery.Glue) string {
	if p.Style.System != unit.Millimetres {
		return thousandths(int64(g.BoardFeet)) + " board feet"
	}
	return fmt.Sprintf("%.3f m³, as sawn", float64(g.Sawn)/float64(1000*unit.Liter))
}

func areaOf(p plan.Plan, a unit.Area) string {
	if p.Style.System == unit.Millimetres {
		return hundredths(int64(a/(unit.SquareMillimetre*100))*100/10_000) + " m²"
	}
	return hundredths(int64(a)*100/int64(unit.SquareFoot)) + " sq ft"
}

// hundredths and thousandths word a count of these as a decimal.
func hundredths(n int64) string  { return fmt.Sprintf("%d.%02d", n/100, n%100) }
func thousandths(n int64) string { return fmt.Sprintf("%d.%d", n/1000, n%1000/100) }

func movesWords(p plan.Plan, m joinery.Moves) []string {
	if !m.Known {
		return nil
	}
	f := p.Style.Fine()
	out := []string{fmt.Sprintf("%s glued at %s, in the house %s to %s (%s): across the grain the whole depth shrinks by up to %s and swells by up to %s (Wood Handbook, equations 13-2 and 13-3).",
		capitalFirst(m.Species), share(m.Glued), share(m.Least), share(m.Most), m.Source, f.Format(m.Shrinks), f.Format(m.Swells))}
	if len(m.Slots) > 0 {
		out = append(out, fmt.Sprintf("HELD FAST %s off the finished wall, at its %s. All else moves from there: no glue and no round hole elsewhere.", f.Format(m.FixedAt), [...]string{"back", "middle", "front"}[m.Fixed]))
	}
	return out
}

// share words a moisture to a tenth of a percent.
func share(r unit.Ratio) string {
	t := (int64(r) + 500) / 1000
	if t%10 == 0 {
		return fmt.Sprintf("%d %%", t/10)
	}
	return fmt.Sprintf("%d.%d %%", t/10, t%10)
}

// Slots lists the rows of screws that hold a slab.
func Slots(p plan.Plan, t joinery.Top) Table {
	f := p.Style.Fine()
	title := "Slots in the rails under "
	if t.On == "" {
		title = "Slots in the cleats under "
	}
	out := Table{Title: title + t.Name, Columns: numbers(text("Screw off the wall", "From the held line", "Moves to that line / from it", "Slot long", "Middle of the slot off the wall", "In", "Screws from the left end of the top"), 0, 1, 2, 3, 4)}
	for _, s := range t.Moves.Slots {
		var along []string
		for _, x := range s.Along {
			along = append(along, f.Bare(x))
		}
		out.Rows = append(out.Rows, []string{f.Bare(s.Z), f.Bare(s.Away), f.Bare(s.In) + " / " + f.Bare(s.Out), f.Bare(s.Long), f.Bare(s.Middle), s.Rail, strings.Join(along, ", ")})
	}
	return out
}

// Plays lists where a slab moves past something, and the room that there is.
func Plays(p plan.Plan, t joinery.Top) Table {
	f := p.Style.Fine()
	out := Table{Title: "Room for " + t.Name + " to move", Columns: numbers(text("Where", "Moves by", "Room on each side", ""), 1, 2)}
	for _, g := range t.Moves.Gaps {
		row := []string{g.Name, f.Bare(g.Needs), f.Bare(g.Room), "enough"}
		switch {
		case g.Held:
			row[2], row[3] = "", "clamped to it, moves with it"
		case !g.Known:
			row[2], row[3] = "", "not checked: what passes is missing"
		case g.Room < g.Needs:
			row[3] = "TOO LITTLE"
		}
		out.Rows = append(out.Rows, row)
	}
	return out
}

// TopHoles lists the holes of a top and the wood that is left beside them.
func TopHoles(p plan.Plan, t joinery.Top) Table {
	f := p.Style.Fine()
	out := Table{Title: "Holes and recesses in " + t.Name, Columns: numbers(text("What", "Outline", "Middle from the left end", "Middle off the wall", "Depth", "Wood left"), 2, 3)}
	for _, h := range t.Holes {
		depth := "through"
		if h.Recess > 0 {
			depth = f.Format(h.Recess)
		}
		out.Rows = append(out.Rows, []string{h.Name, outlineWords(f, h.Outline), f.Bare(h.X), f.Bare(h.Z), depth, woodLeft(f, t, h.Name)})
	}
	return out
}

func outlineWords(f unit.Style, o document.Outline) string {
	switch o.Kind {
	case document.RoundOutline:
		return "round " + f.Bare(o.Across)
	case document.OvalOutline:
		return "oval " + f.Bare(o.Across) + " x " + f.Bare(o.Deep)
	}
	words := "rectangle " + f.Bare(o.Across) + " x " + f.Bare(o.Deep)
	if o.Radius > 0 {
		words += ", corners " + f.Bare(o.Radius)
	}
	return words
}

func woodLeft(f unit.Style, t joinery.Top, hole string) string {
	var out []string
	for _, w := range t.Woods {
		if w.Of == hole {
			out = append(out, w.To+" "+f.Bare(w.Left))
		}
	}
	return strings.Join(out, ", ")
}
