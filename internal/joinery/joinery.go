// Package joinery works wood out: a cabinet from its outside, a top, the line to scribe, trim round the room, finish.
//
// It takes the document and the solved room and gives a Plan with findings and assumptions. A cabinet's parts are laid as boxes in
// its own frame: x from the left side of the carcass, y up from the finished floor (the level that heights count from), z off the
// finished wall into the room. What one part takes of another where they are joined is cut into it, so the sizes close by
// themselves: put back together they have the outside that was asked for. Grooves are as wide as the sheet that was measured.
// Nothing is known here of stock on hand, tile or pipes: parts go to package cut, solids to what holds the trades against each other.
package joinery

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/part"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// Plan is all wood work of a room.
type Plan struct {
	Cabinets []Cabinet
	Tops     []Top
	Trim     []Trim
	Scribes  []Scribe
	Finishes []Finish
}

// Parts lists every part that is sawn from stock, in the document's order, equal ones of a cabinet once with their count: of a glued slab its
// staves.
func (p Plan) Parts() []part.Part {
	var all []part.Part
	for _, c := range p.Cabinets {
		all = append(all, c.Parts()...)
	}
	for _, t := range p.Tops {
		all = append(all, t.Sawn()...)
	}
	for _, t := range p.Trim {
		all = append(all, t.Parts()...)
	}
	return all
}

// Make works out the wood of a room.
func Make(doc document.Room, shape site.Room) (Plan, diag.List, []diag.Assumption) {
	r := &room{doc: doc, shape: shape}
	for _, c := range doc.Cabinets {
		if made, ok := r.cabinet(c); ok {
			r.plan.Cabinets = append(r.plan.Cabinets, made)
		}
	}
	for _, t := range doc.Tops {
		if made, ok := r.top(t); ok {
			r.plan.Tops = append(r.plan.Tops, made)
		}
	}
	for _, t := range doc.Trim {
		if made, ok := r.trim(t); ok {
			r.plan.Trim = append(r.plan.Trim, made)
		}
	}
	for _, s := range doc.Scribes {
		r.plan.Scribes = append(r.plan.Scribes, r.scribes(s)...)
	}
	for _, f := range doc.Finish {
		r.plan.Finishes = append(r.plan.Finishes, r.finish(f))
	}
	return r.plan, r.found.Sorted(), distinct(r.assumed)
}

// room carries one room through the work.
type room struct {
	doc     document.Room
	shape   site.Room
	found   diag.List
	assumed []diag.Assumption
	plan    Plan // what is worked out so far
}

// made is a cabinet that was worked out already.
func (r *room) made(name string) (Cabinet, bool) {
	for _, c := range r.plan.Cabinets {
		if c.Name == name {
			return c, true
		}
	}
	return Cabinet{}, false
}

// metric reports whether the document's figures are in millimetres; defaults are round numbers of the document's own unit.
func (r *room) metric() bool { return r.doc.Units == unit.Millimetres }

// round picks a default in the document's unit.
func (r *room) round(inches, metric unit.Length) unit.Length {
	if r.metric() {
		return metric
	}
	return inches
}

// distinct keeps the first of equal assumptions.
func distinct(all []diag.Assumption) []diag.Assumption {
	var out []diag.Assumption
	for _, a := range all {
		if !slices.ContainsFunc(out, func(b diag.Assumption) bool {
			return a.At == b.At && a.Text == b.Text && slices.Equal(a.Values, b.Values)
		}) {
			out = append(out, a)
		}
	}
	return out
}
