package joinery

import (
	"reflect"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// usual is a figure as it is written, or the common one, which is told.
func (r *room) usual(v document.Value[unit.Length], common unit.Length, at diag.Place, what string) unit.Length {
	if v.Known {
		return v.V
	}
	if v.At.Path != "" {
		at = v.At
	}
	r.assume(at, "{0} is taken to be {1}", "common practice", diag.T(what), diag.X(common))
	return common
}

// sure reports whether nothing that a thing is made by is said to be unknown; each that is is told, and the thing is not worked out. What
// stands under the named fields does not hold the rest up: it is told, and what needs it is left open.
func (r *room) sure(doc any, name string, but ...string) bool {
	all := unknowns(reflect.ValueOf(doc), but)
	for _, at := range all {
		r.found.Add(diag.Unchecked, "wood-unknown", at, "not worked out: {0}, for {1} is unknown", "measure it or decide it, then write it here", diag.T(name), diag.T(at.Path))
	}
	for _, at := range unknowns(reflect.ValueOf(doc), nil) {
		if !slices.Contains(all, at) {
			r.found.Add(diag.Unchecked, "wood-unchecked", at, "{1} is unknown: what of {0} needs it is not checked", "measure it or look it up, then write it here", diag.T(name), diag.T(at.Path))
		}
	}
	return len(all) == 0
}

// unknowns lists the places of all facts within a value that are said to be unknown.
func unknowns(v reflect.Value, but []string) []diag.Place {
	var all []diag.Place
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			all = append(all, unknowns(v.Index(i), but)...)
		}
	case reflect.Struct:
		if u := v.FieldByName("Unknown"); u.IsValid() && u.Kind() == reflect.Bool {
			if u.Bool() {
				all = append(all, v.FieldByName("At").Interface().(diag.Place))
			}
			return all
		}
		for i := range v.NumField() {
			if !slices.Contains(but, v.Type().Field(i).Name) {
				all = append(all, unknowns(v.Field(i), but)...)
			}
		}
	}
	return all
}
