// Package fit holds every clearance and connection against what goods, codes and habits ask, on the finished faces and before it
// is too late to move a pipe. It takes the document, the solved room and what is placed in it, and gives checks.
//
// A check has a value, a limit and the margin between them, and knows every fact that it hangs on. A check that lacks a fact is
// "not checked" and says which; it never passes. What is worth telling and has no limit is told. Local codes and licensed trades
// decide, whatever is said here.
package fit

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/figure"
	"dryfit/internal/place"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// State is what came of a check.
type State uint8

const (
	Fits State = iota
	Misses
	NotChecked // a fact is missing
	Told       // no limit: worth knowing at the wall
)

func (s State) String() string { return [...]string{"fits", "misses", "not checked", "told"}[s] }

// Check is one clearance or connection.
type Check struct {
	ID     string     // stable: the path of what is checked, and what: "taps > basin tap > hand gap"
	At     diag.Place // of what is checked
	Group  string     // basin, tap, waste, supply, WC, room, access, box, door, fitting
	What   string     // template: "{0}: tap outlet above the rim"
	Values []diag.Value
	State  State
	Value  diag.Value
	Limit  diag.Value
	Most   bool        // the limit is a maximum
	Margin unit.Length // less than nothing: misses by so much; 0 for what is no length
	Length bool        // Value and Limit are lengths and Margin is valid
	Rule   string      // id of the requirement; "" = the data sheets ask it
	Cite   string      // where the limit comes from, in words
	Advice bool        // a habit, no code: a miss is to be looked at, and stops nothing
	Mend   string      // template, with the same values
	// Missing are the facts without which it could not be made; Uses are all that it hangs on. Both are document paths; "survey > tape" and
	// "survey > level line > down" stand for all readings of the kind.
	Missing []string
	Uses    []string
	Moves   []figure.Term // how the margin moves with each thing that may move
	Layers  []figure.Term // how it moves with each layer of a build-up
}

// Plan is what came of all checks.
type Plan struct {
	Checks []Check
	Places place.Plan
	Jets   []Jet
	Card   []Spot           // the rough-in card
	Solids []space.Envelope // of fixtures, taps, traps, stops, doors, fittings
	Sets   []string         // the sets of requirements that it was held against
	Parts  []Part           // small parts of plumbing, as they must be to reach and to cover
}

// checker carries one run.
type checker struct {
	doc     document.Room
	room    site.Room
	at      place.Plan
	book    rule.Book
	moves   map[string]bool
	layers  map[string]bool
	out     Plan
	list    diag.List
	assumed []diag.Assumption
}

// Make runs all checks.
func Make(doc document.Room, room site.Room, places place.Plan) (Plan, diag.List, []diag.Assumption) {
	c := &checker{doc: doc, room: room, at: places, moves: map[string]bool{}, layers: map[string]bool{}}
	if !wanted(doc) {
		return c.out, nil, nil
	}
	c.out.Places, c.out.Solids = places, places.Solids
	c.chooseRules()
	for _, m := range doc.Moves {
		c.moves[m.PathText()] = true
	}
	c.knownLayers()
	c.basins()
	c.taps()
	c.wastes()
	c.stops()
	c.wcs()
	c.doors()
	c.boxes()
	c.fittings()
	c.wholeRoom()
	c.access()
	c.card()
	c.parts()
	c.findings()
	c.cautions()
	return c.out, c.list.Sorted(), c.assumed
}

// wanted reports whether the document has anything to fit: of a room of walls alone nothing is said.
func wanted(d document.Room) bool {
	leaf := false
	for _, o := range d.Openings {
		leaf = leaf || o.Leaf.Given
	}
	box := false
	for _, b := range d.Boxes {
		box = box || b.Out.Known || b.Out.Unknown || b.Kind.Known
	}
	return leaf || box || len(d.Basins)+len(d.Taps)+len(d.Wastes)+len(d.Stops)+len(d.WCs)+len(d.Fittings) > 0
}

// knownLayers notes which facts are layers of a build-up.
func (c *checker) knownLayers() {
	for _, w := range c.at.Walls {
		for _, l := range w.Layers {
			for _, path := range l.Thick.Facts() {
				c.layers[path] = true
			}
		}
	}
	for _, l := range c.doc.Floor.BuildUp {
		c.layers[l.At.Path] = true
	}
	for _, t := range c.doc.Tiles {
		c.layers[t.At.Path+" > size"] = true
	}
}

func (c *checker) assume(at diag.Place, source, text string, values ...diag.Value) {
	for _, a := range c.assumed {
		if a.At == at && a.Text == text {
			return
		}
	}
	c.assumed = append(c.assumed, diag.Assumption{At: at, Text: text, Values: values, Source: source})
}
