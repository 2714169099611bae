package report

import (
	"fmt"
	"strings"

	"dryfit/internal/cut"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/part"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// UsedKind is what one piece of a lot's stock is called.
func UsedKind(l cut.Lot) string { return [...]string{"sheet", "board", "stick"}[l.Kind] }

// UsedWords names one sheet, board or stick.
func UsedWords(p plan.Plan, l cut.Lot, u cut.Used) string {
	words := fmt.Sprintf("%s %d of %s: %s", capitalized(UsedKind(l)), u.Number, l.Stock, stockSize(p.Style, l, u.Size.Length, u.Size.Width))
	if u.OnHand {
		return words + ", on hand: " + onHandWords(p, u)
	}
	return words
}

// CutSteps lists the saw's cuts in their order.
func CutSteps(p plan.Plan, l cut.Lot, u cut.Used) Table {
	t := Table{Title: "Cuts in order", Columns: numbers(text("Cut", "Way", "Set to", "Of the panel", "Frees"), 0, 2), Empty: "It is used whole."}
	t.Rows = append(t.Rows, trimLines(p, l, u)...)
	for _, s := range u.Steps {
		t.Rows = append(t.Rows, []string{fmt.Sprint(s.Number), s.Way.String(), p.Style.Fine().Bare(s.Size), stockSize(p.Style, l, s.Panel.W(), s.Panel.H()), freed(p, s)})
	}
	return t
}

// trimLines tell of what comes off before parts are cut.
func trimLines(p plan.Plan, l cut.Lot, u cut.Used) [][]string {
	var out [][]string
	if u.Trim > 0 {
		what := "all four edges"
		if l.Kind == document.StickStock {
			what = "both ends"
		}
		out = append(out, []string{"", "trim", p.Style.Fine().Bare(u.Trim), what, ""})
	}
	for _, b := range u.Bad {
		out = append(out, []string{"", "take out", p.Style.Bare(b.From) + " to " + p.Style.Bare(b.To), "the bad stretch", ""})
	}
	return out
}

func freed(p plan.Plan, s cut.Step) string {
	var out []string
	for _, i := range []int{s.Frees, s.Leaves} {
		if i != cut.NoPiece {
			out = append(out, p.Cut.Pieces[i].Name)
		}
	}
	return strings.Join(out, "; ")
}

// StockPieces lists what is cut from a lot, with the sizes that it is sawn to and ends up with.
func StockPieces(p plan.Plan, lot int) Table {
	l := p.Cut.Lots[lot]
	t := Table{Title: "Pieces of " + l.Stock, Columns: text("Piece", "Saw to", "Finished", "Grain", "Edging", "From"), Empty: "None."}
	for _, q := range p.Cut.Pieces {
		if q.Lot == lot {
			t.Rows = append(t.Rows, []string{q.Name, SawTo(p, l, q), PartSize(p.Style, q.Part.Size), GrainWords(l, q.Part), BandWords(q.Part), fmt.Sprintf("%s %d", UsedKind(l), l.Used[q.Used].Number)})
		}
	}
	return t
}

// SawTo is the size that a piece is sawn out to: a stick's is its length.
func SawTo(p plan.Plan, l cut.Lot, q cut.Piece) string {
	return stockSize(p.Style, l, q.Sawn.Length, q.Sawn.Width)
}

// PartSize words a part's three sizes, exactly where they are finer than the tape.
func PartSize(s unit.Style, z part.Size) string {
	f := s.Fine()
	return f.Bare(z.Length) + " x " + f.Bare(z.Width) + " x " + f.Format(z.Thick)
}

// GrainWords says how the grain runs in a part.
func GrainWords(l cut.Lot, q part.Part) string {
	switch {
	case l.Plain:
		return ""
	case q.Grain == part.Across:
		return "across its length"
	case q.Grain == part.Any:
		return "any way"
	}
	return "along its length"
}

// BandWords lists the banded edges.
func BandWords(q part.Part) string {
	var out []string
	for _, b := range q.Bands {
		out = append(out, b.On.String())
	}
	return strings.Join(out, ", ")
}

// Offcuts lists what is worth keeping.
func Offcuts(p plan.Plan) Table {
	t := Table{Title: "Offcuts to keep", Columns: text("Stock", "Size", "Left of"), Empty: "None is large enough to keep."}
	for _, l := range p.Cut.Lots {
		for _, o := range l.Offcuts {
			t.Rows = append(t.Rows, []string{l.Stock, stockSize(p.Style, l, o.Size.Length, o.Size.Width), fmt.Sprintf("%s %d", UsedKind(l), o.From)})
		}
	}
	return t
}

// KerfOf says what the saw takes.
func KerfOf(p plan.Plan, l cut.Lot) string {
	words := "The saw takes " + p.Style.Fine().Format(l.Kerf) + " with each cut"
	if l.Saw != "" {
		words = capitalized(l.Saw) + " takes " + p.Style.Fine().Format(l.Kerf) + " with each cut"
	}
	return words + "; sizes are to the good side of the kerf."
}

// LabelLines is what a label to stick on a piece says.
func LabelLines(p plan.Plan, q cut.Piece) []string {
	l := p.Cut.Lots[q.Lot]
	out := []string{"saw to " + SawTo(p, l, q), "ends up " + PartSize(p.Style, q.Part.Size), fmt.Sprintf("%s, %s %d", l.Stock, UsedKind(l), l.Used[q.Used].Number)}
	if g := GrainWords(l, q.Part); g != "" && l.Kind != document.StickStock {
		out = append(out, "grain "+g)
	}
	if b := BandWords(q.Part); b != "" {
		out = append(out, "edging: "+b)
	}
	for _, x := range q.Part.Labels {
		out = append(out, x.Text+" ("+x.On.String()+")")
	}
	return out
}

// PanelName is the piece in a panel, or what else it is.
func PanelName(p plan.Plan, q cut.Panel) string {
	switch {
	case q.Piece != cut.NoPiece:
		return p.Cut.Pieces[q.Piece].Name
	case q.Keep:
		return "keep"
	}
	return ""
}

// Leaves lists the panels of a used sheet that are not divided further.
func Leaves(u cut.Used) []cut.Panel {
	var out []cut.Panel
	var walk func(q cut.Panel)
	walk = func(q cut.Panel) {
		if q.Cut == cut.Whole {
			out = append(out, q)
		}
		for _, k := range q.Into {
			walk(k)
		}
	}
	for _, q := range u.Panels {
		walk(q)
	}
	return out
}

// KerfLine is the middle of a cut.
func KerfLine(l cut.Lot, s cut.Step) (a, b geom.Point) {
	mid := s.At + l.Kerf/2
	if s.Way == cut.Crosscut {
		return geom.Point{X: mid, Y: s.Panel.Min.Y}, geom.Point{X: mid, Y: s.Panel.Max.Y}
	}
	return geom.Point{X: s.Panel.Min.X, Y: mid}, geom.Point{X: s.Panel.Max.X, Y: mid}
}
