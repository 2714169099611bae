package joinery

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// good is what a part is cut from, as far as joinery needs it.
type good struct {
	name  string
	thick unit.Length
	known bool
	solid bool // a board or a stick: it moves with its moisture
	stock document.Stock
}

// good looks a stock up. A thickness that nobody measured is taken as it is sold, and told; one that is not known is told as missing.
func (r *room) good(name document.Name, for_ string, at diag.Place) good {
	s, ok := r.doc.StockNamed(name.Text)
	if !ok {
		if name.Text == "" {
			r.lacks(at, "what "+for_+" are cut from")
		}
		return good{}
	}
	thick, measured, known := s.Thickness()
	switch {
	case !known:
		r.lacks(s.At, "the thickness of "+s.Name)
	case !measured && s.Kind == document.SheetStock:
		r.assume(s.At, "{0} is taken to be {1} thick, as it is sold; grooves for it are cut to that", "no caliper reading: measure a sheet before cutting grooves", diag.T(s.Name), diag.X(thick))
	}
	return good{s.Name, thick, known, s.Kind != document.SheetStock, s}
}

// or is the first of two goods that is named.
func or(a, b document.Name) document.Name {
	if a.Text != "" {
		return a
	}
	return b
}

// lacks tells of a fact without which something can not be worked out.
func (r *room) lacks(at diag.Place, what string) {
	r.found.Add(diag.Unchecked, "wood-missing", at, "not worked out: {0} is missing", "write it down", diag.T(what))
}

func (r *room) assume(at diag.Place, text, source string, values ...diag.Value) {
	r.assumed = append(r.assumed, diag.Assumption{At: at, Text: text, Values: values, Source: source})
}

func (r *room) stop(code string, at diag.Place, text, mend string, values ...diag.Value) {
	r.found.Add(diag.Stop, code, at, text, mend, values...)
}

func (r *room) look(code string, at diag.Place, text, mend string, values ...diag.Value) {
	r.found.Add(diag.Look, code, at, text, mend, values...)
}
