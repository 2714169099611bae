package report

import (
	"fmt"

	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Edges lists what bounds a face: which tile runs through and which butts, the joint, what is hidden.
func Edges(p plan.Plan, f site.Face) Table {
	u := " (" + p.Style.System.String() + ")"
	t := Table{Title: "Edges and corners", Columns: numbers(text("Edge", "Meets", "Tile here", "Board to tile"+u, "Hidden"+u, "Joint"+u, "Kind of joint"), 3, 4, 5)}
	for _, e := range f.Edges {
		hidden := ""
		if e.Hidden > 0 {
			hidden = p.Style.Bare(e.Hidden)
		}
		t.Rows = append(t.Rows, []string{e.Name, e.Other, meets(e), fine(p.Style).Bare(e.Gap), hidden, fine(p.Style).Bare(e.Joint), jointKind(e)})
	}
	return t
}

// place begins the head of a column of heights; on a floor nothing is up.
func place(f site.Face) string {
	if f.Kind == site.FloorFace {
		return "Out, "
	}
	return "Up, "
}

func meets(e site.Edge) string {
	switch {
	case e.Miter:
		return "mitered"
	case e.Kind == site.InsideCorner && e.Runs:
		return "runs through"
	case e.Kind == site.InsideCorner:
		return "butts"
	case e.Shows:
		return "edge shows"
	}
	return ""
}

func jointKind(e site.Edge) string {
	switch {
	case e.Joint == 0:
		return "none"
	case e.Soft:
		return "soft (flexible)"
	}
	return "grout"
}

// Holes lists what is drilled in a face, from both datums, with the pieces that take it; openings where the tile ends, and where the board does.
func Holes(p plan.Plan, f site.Face, t tiling.Face) Table {
	u := " (" + p.Style.System.String() + ")"
	at, across, up := Datum(p, f)
	out := Table{Title: "Holes and boxes", Empty: "Nothing pierces this face.",
		Columns: numbers(text("Mark", "What", "Across, "+across+u, place(f)+up+u, "Size"+u, "In piece"), 2, 3)}
	if f.Kind == site.WallFace {
		out.Columns = append(out.Columns, Column{"Above finished floor" + u, Right})
	}
	add := func(mark, what string, c geom.Point, size, in string) {
		row := []string{mark, what, p.Style.Bare(c.X - at.X), p.Style.Bare(Up(p, f, c.Y)), size, in}
		if f.Kind == site.WallFace {
			row = append(row, AboveFloor(p, c.Y))
		}
		out.Rows = append(out.Rows, row)
	}
	for i, h := range f.Holes {
		add(HoleMark(i), h.Name, h.Center, "Ø"+drilled(p, t, h), list(piercedBy(t, h.Name)))
	}
	for _, o := range f.Openings {
		rect := func(what string, r geom.Rect) {
			add("", o.Name+what+", lower left corner", r.Min, p.Style.Bare(r.W())+" × "+p.Style.Bare(r.H()), "")
		}
		tile := o.Rect
		if len(t.Fields) > 0 {
			tile = TileOpening(f, o)
		}
		rect(" ("+o.Kind+")", tile)
		if tile != o.Rect {
			rect(", board's edge", o.Rect)
		}
	}
	return out
}

// HoleMark is the mark of a face's hole on its drawing.
func HoleMark(i int) string { return fmt.Sprintf("H%d", i+1) }

// Drilled words the diameter to drill, as the pieces have it.
func drilled(p plan.Plan, t tiling.Face, h site.Hole) string {
	for _, z := range t.Fields {
		for _, c := range z.Chosen().Pieces {
			for _, x := range c.Holes {
				if x.Name == h.Name {
					return p.Style.Bare(x.Drill)
				}
			}
		}
	}
	switch {
	case h.Drill > 0:
		return p.Style.Bare(h.Drill)
	case h.Diameter > 0:
		return p.Style.Bare(h.Diameter) + " pipe"
	}
	return " not known"
}

func piercedBy(t tiling.Face, hole string) []string {
	var out []string
	for _, z := range t.Fields {
		for _, c := range z.Chosen().Pieces {
			for _, x := range c.Holes {
				if x.Name == hole {
					out = append(out, c.Address)
				}
			}
		}
	}
	return out
}

// BuriedMark is the mark of a thing in the wall on a drawing.
func BuriedMark(i int) string { return fmt.Sprintf("W%d", i+1) }

// EdgeWords says of a corner how the tile here meets the tile there; nothing of other edges.
func EdgeWords(e site.Edge) string {
	words := meets(e)
	switch {
	case e.Kind != site.InsideCorner && e.Kind != site.OutsideCorner || words == "":
		return ""
	case e.Other != "" && e.Other != e.Name && words == "butts":
		return e.Name + ": butts " + e.Other
	}
	return e.Name + ": " + words
}

// Buried lists what is recorded in the wall.
func Buried(p plan.Plan, f site.Face) Table {
	u := " (" + p.Style.System.String() + ")"
	at, across, up := Datum(p, f)
	t := Table{Title: "In the wall: keep holes and screws away", Empty: "Nothing is recorded. Not checked: what is in the wall.",
		Columns: text("Mark", "What", "Kind", "Across, "+across+u, place(f)+up+u)}
	for i, b := range f.Buried {
		t.Rows = append(t.Rows, []string{BuriedMark(i), b.Name, b.Kind, between(p.Style, b.Rect.Min.X-at.X, b.Rect.Max.X-at.X), between(p.Style, Up(p, f, b.Rect.Min.Y), Up(p, f, b.Rect.Max.Y))})
	}
	return t
}

func between(s unit.Style, lo, hi unit.Length) string { return s.Bare(lo) + " to " + s.Bare(hi) }

// DrillOf is the diameter that pieces are drilled with for a hole; the given one where no piece has it.
func DrillOf(t tiling.Face, hole string, given unit.Length) unit.Length {
	for _, z := range t.Fields {
		for _, c := range z.Chosen().Pieces {
			for _, x := range c.Holes {
				if x.Name == hole {
					return x.Drill
				}
			}
		}
	}
	return given
}
