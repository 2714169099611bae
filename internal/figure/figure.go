// Package figure holds lengths that know what they were made of. A stage that works a length out of several facts adds and
// subtracts figures; what comes out says which facts of the document it hangs on, by how much each moves it, and which
// facts were missing, so that a check can never pass on a fact that nobody wrote.
//
// It knows no document: a fact is called by a path, as a person would point at it.
//
// The rules that every operation keeps:
//  1. A figure with something missing has no length; what is made from it misses the same.
//  2. Of two facts that cancel nothing is left: the difference of two heights above one floor does not hang on the floor.
//  3. A choice (the larger of two) moves with what was chosen, and uses what it was chosen from.
package figure

import (
	"cmp"
	"slices"

	"dryfit/internal/unit"
)

// Figure is a length with its origin.
type Figure struct {
	V       unit.Length
	Of      []Term   // how V moves with each fact, sorted by path; none of them 0
	Used    []string // further facts that it hangs on without moving with them in step; sorted
	Missing []string // facts without which there is no V; sorted
}

// Term is how a length moves with one fact: Per of one means as much as the fact.
type Term struct {
	Path string     `json:"path"`
	Per  unit.Ratio `json:"per"`
}

// Known reports whether nothing is missing.
func (f Figure) Known() bool { return len(f.Missing) == 0 }

// Number is a length that hangs on nothing: a published limit, a sum of such.
func Number(v unit.Length) Figure { return Figure{V: v} }

// Fact is one length that the document states.
func Fact(path string, v unit.Length) Figure {
	return Figure{V: v, Of: []Term{{path, unit.One}}}
}

// Missing is a length that the document does not state.
func Missing(paths ...string) Figure { return Figure{Missing: sorted(paths)} }

// Add returns f + g.
func (f Figure) Add(g Figure) Figure { return f.plus(g, unit.One) }

// Sub returns f - g.
func (f Figure) Sub(g Figure) Figure { return f.plus(g, -unit.One) }

func (f Figure) plus(g Figure, sign unit.Ratio) Figure {
	out := f.uses(g)
	if !out.Known() {
		return out
	}
	out.V = f.V + g.V.MulDiv(int64(sign), int64(unit.One))
	out.Of = sum(f.Of, g.Of, sign)
	return out
}

// Plus adds a length that hangs on nothing.
func (f Figure) Plus(v unit.Length) Figure { return f.Add(Number(v)) }

// Neg returns -f.
func (f Figure) Neg() Figure { return Number(0).Sub(f) }

// Half returns f/2, rounded half up.
func (f Figure) Half() Figure { return f.Times(1, 2) }

// Times returns f·num/den, rounded half up.
func (f Figure) Times(num, den int64) Figure {
	if !f.Known() {
		return f
	}
	out := Figure{V: f.V.MulDiv(num, den), Used: f.Used}
	for _, t := range f.Of {
		per := unit.Ratio(unit.Length(t.Per).MulDiv(num, den))
		if per == 0 {
			out.Used = union(out.Used, []string{t.Path})
			continue
		}
		out.Of = append(out.Of, Term{t.Path, per})
	}
	return out
}

// Max returns the larger of two figures; the first of equal ones.
func Max(f, g Figure) Figure {
	if f.Known() && g.Known() && g.V > f.V {
		return g.chosenOver(f)
	}
	return f.chosenOver(g)
}

// Min returns the smaller of two figures; the first of equal ones.
func Min(f, g Figure) Figure { return Max(f.Neg(), g.Neg()).Neg() }

func (f Figure) chosenOver(g Figure) Figure {
	out := f.uses(g)
	if out.Known() {
		out.V, out.Of = f.V, f.Of
		out.Used = union(out.Used, paths(g.Of))
	}
	return out
}

// Abs returns the length without its sign.
func (f Figure) Abs() Figure {
	if f.V < 0 {
		return f.Neg()
	}
	return f
}

// Using notes further facts that the length hangs on.
func (f Figure) Using(path ...string) Figure {
	f.Used = union(f.Used, path)
	return f
}

// Moving replaces the length of a figure and keeps what it moves with: for a length that a solved shape gives, whose
// dependence on the facts is known.
func (f Figure) Moving(v unit.Length) Figure {
	if f.Known() {
		f.V = v
	}
	return f
}

// Facts lists every fact that the length hangs on, sorted.
func (f Figure) Facts() []string { return union(f.Used, paths(f.Of)) }

// Per returns how the length moves with one fact; 0 where it does not.
func (f Figure) Per(path string) unit.Ratio {
	for _, t := range f.Of {
		if t.Path == path {
			return t.Per
		}
	}
	return 0
}

// uses starts a figure that hangs on all that two others do.
func (f Figure) uses(g Figure) Figure {
	return Figure{Used: union(f.Used, g.Used), Missing: union(f.Missing, g.Missing)}
}

// sum adds two sorted lists of terms; what cancels is dropped.
func sum(a, b []Term, sign unit.Ratio) []Term {
	out := slices.Clone(a)
	for _, t := range b {
		t.Per = t.Per * sign / unit.One
		i, found := slices.BinarySearchFunc(out, t.Path, func(t Term, path string) int { return cmp.Compare(t.Path, path) })
		if found {
			out[i].Per += t.Per
		} else {
			out = slices.Insert(out, i, t)
		}
	}
	return slices.DeleteFunc(out, func(t Term) bool { return t.Per == 0 })
}

func paths(terms []Term) []string {
	var out []string
	for _, t := range terms {
		out = append(out, t.Path)
	}
	return out
}

func union(a, b []string) []string {
	switch {
	case len(b) == 0:
		return a
	case len(a) == 0:
		return sorted(b)
	}
	return sorted(append(slices.Clone(a), b...))
}

func sorted(list []string) []string {
	out := slices.Clone(list)
	slices.Sort(out)
	return slices.Compact(out)
}
