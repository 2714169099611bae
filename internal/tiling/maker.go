package tiling

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
)

// Options bound the work.
type Options struct {
	Face string // this face alone; silent: all
	// Quick leaves out what is not needed while a hand moves a pattern: what a held layout costs against the best, and the
	// goods of the whole room.
	Quick bool
	Known *Known // what runs before this one found, to take from and to add to; nil: nothing
}

// maker carries one run: its inputs and what it collects.
type maker struct {
	doc      document.Room
	room     site.Room
	options  Options
	findings diag.List
	assumed  []diag.Assumption
}

func (m *maker) found(c diag.Class, code string, at diag.Place, text, mend string, values ...diag.Value) *diag.Finding {
	return m.findings.Add(c, code, at, text, mend, values...)
}

// assume notes a default once, however many fields use it.
func (m *maker) assume(at diag.Place, text, source string, values ...diag.Value) {
	a := diag.Assumption{At: at, Text: text, Values: values, Source: source}
	if !slices.ContainsFunc(m.assumed, func(b diag.Assumption) bool {
		return a.At == b.At && a.Text == b.Text && slices.Equal(a.Values, b.Values)
	}) {
		m.assumed = append(m.assumed, a)
	}
}
