// Package diag holds findings: what is wrong or worth knowing in a room document, where, and what would mend it.
//
// A finding is a value. It carries a template and typed values, and is worded only when it is shown, in the
// reader's own units. Stages return lists of findings beside their results; they are collected, sorted and
// all shown, never only the first.
package diag

import (
	"cmp"
	"slices"
)

// Class says what a finding means for the work.
type Class uint8

const (
	Stop      Class = iota // stops work: going on would waste material or cannot be built
	Look                   // look at this before going on
	Unchecked              // a check that could not be made, because a fact is unknown
	Note                   // worth knowing
)

func (c Class) String() string {
	return [...]string{"stop", "look", "not checked", "note"}[c]
}

// Place is where in the room document a fact stands. Line and Column count from 1; 0 means no line (a missing
// key points at the entry that should hold it).
type Place struct {
	Path   string `json:"path"` // keys joined by " > ", as in "walls > basin wall > build-up"
	Line   int    `json:"line,omitempty"`
	Column int    `json:"column,omitempty"`
}

// Finding is one complaint or remark. Text and Mend are templates in which {0}, {1} … stand for Values.
type Finding struct {
	Code   string  `json:"code"` // stable, in kebab case: "length-unreadable"
	Class  Class   `json:"class"`
	At     Place   `json:"at"`
	Text   string  `json:"text"`
	Mend   string  `json:"mend,omitempty"`
	Values []Value `json:"values,omitempty"`
	Rule   string  `json:"rule,omitempty"` // id of the published requirement, if one is behind it
}

// List collects findings; its zero value is ready.
type List []Finding

// Add appends a finding built from a template and its values.
func (l *List) Add(c Class, code string, at Place, text, mend string, values ...Value) *Finding {
	*l = append(*l, Finding{Code: code, Class: c, At: at, Text: text, Mend: mend, Values: values})
	return &(*l)[len(*l)-1]
}

// Stops reports whether any finding stops work.
func (l List) Stops() bool {
	return slices.ContainsFunc(l, func(f Finding) bool { return f.Class == Stop })
}

// Sorted returns the findings in reading order: by class, line, column, code, path, words; equal ones once. The order
// does not depend on the order in which they were found.
func (l List) Sorted() List {
	out := slices.Clone(l)
	slices.SortStableFunc(out, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(a.Class, b.Class), cmp.Compare(a.At.Line, b.At.Line), cmp.Compare(a.At.Column, b.At.Column),
			cmp.Compare(a.Code, b.Code), cmp.Compare(a.At.Path, b.At.Path), cmp.Compare(a.Text, b.Text),
			slices.CompareFunc(a.Values, b.Values, compareValues), cmp.Compare(a.Mend, b.Mend), cmp.Compare(a.Rule, b.Rule))
	})
	return slices.CompactFunc(out, func(a, b Finding) bool { return a.same(b) })
}

func compareValues(a, b Value) int {
	return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Num, b.Num), cmp.Compare(a.Text, b.Text))
}

func (f Finding) same(o Finding) bool {
	return f.Code == o.Code && f.Class == o.Class && f.At == o.At && f.Text == o.Text && f.Mend == o.Mend &&
		f.Rule == o.Rule && slices.Equal(f.Values, o.Values)
}

// Assumption is a default that the program used because the document is silent, or says "unknown".
type Assumption struct {
	At     Place   `json:"at"` // where the fact would be written
	Text   string  `json:"text"`
	Values []Value `json:"values,omitempty"`
	Source string  `json:"source"` // where the default comes from: a rule, "common practice", "from memory"
}
