// Package report words a plan: the tables and facts that sheets, CSV files, pages and the command line print.
//
// It computes nothing: every number is the plan's, worded once, so that two places that print it print the same.
package report

import (
	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Align is where a column's words stand.
type Align uint8

const (
	Left Align = iota
	Right
)

// Column is one column.
type Column struct {
	Head  string
	Align Align
}

// Table is rows of words under heads. Empty says what a table without rows means.
type Table struct {
	Title   string
	Columns []Column
	Rows    [][]string
	Empty   string
}

func text(heads ...string) []Column {
	out := make([]Column, len(heads))
	for i, h := range heads {
		out[i] = Column{Head: h}
	}
	return out
}

// numbers makes the columns from the given index on stand right.
func numbers(columns []Column, from ...int) []Column {
	for _, i := range from {
		columns[i].Align = Right
	}
	return columns
}

// Findings lists every finding with its place and what would mend it.
func Findings(p plan.Plan) Table {
	t := Table{Title: "Findings", Columns: text("", "Where", "What", "Mend"), Empty: "Nothing found; see what is not checked."}
	for _, f := range p.Findings {
		t.Rows = append(t.Rows, []string{f.Class.String(), f.At.Path, f.Say(p.Style), f.SayMend(p.Style)})
	}
	return t
}

// Assumed lists what the program took because the document is silent.
func Assumed(p plan.Plan) Table {
	t := Table{Title: "Assumed", Columns: text("What", "Source", "Where to write the fact"), Empty: "Nothing was assumed."}
	for _, a := range p.Assumed {
		t.Rows = append(t.Rows, []string{a.Say(p.Style), a.Source, a.At.Path})
	}
	return t
}

// Tally counts findings by class, what is not checked before what fits.
func Tally(l diag.List) (stops, looks, unchecked, notes int) {
	var n [diag.Note + 1]int
	for _, f := range l {
		n[f.Class]++
	}
	return n[diag.Stop], n[diag.Look], n[diag.Unchecked], n[diag.Note]
}

// signed shows a length with its sign, for residuals.
func signed(s unit.Style, l unit.Length) string {
	if l.Round(s.Mark) > 0 {
		return "+" + s.Bare(l)
	}
	return s.Bare(l)
}

// narrow shows a width that counts even where it is under a mark of the tape.
func narrow(s unit.Style, l unit.Length) string {
	f := fine(s)
	switch {
	case l > 0 && l.Round(f.Mark) == 0:
		return "under " + f.Format(f.Mark)
	case l < s.Mark:
		return f.Format(l)
	}
	return s.Format(l)
}

// fine is a style one step finer than the tape, for residuals and tolerances.
func fine(s unit.Style) unit.Style {
	if s.System == unit.Millimetres {
		return unit.Style{System: s.System, Mark: unit.Millimetre / 10}
	}
	return unit.Style{System: s.System, Mark: unit.Inch / 64}
}
