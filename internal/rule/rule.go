// Package rule holds published requirements as records: what each limits, the limit, its source and clause, and how
// far it is known. A stage compares and reports; the number and its source live here alone.
//
// Whatever a rule says, local codes and licensed trades decide.
package rule

import "dryfit/internal/unit"

// Known says how a record came to be known.
type Known uint8

const (
	Read       Known = iota // the text itself was read
	Quoted                  // a page that quotes it was read
	FromMemory              // known, not read
	Practice                // common practice, no single source
	Own                     // a judgment of this program
)

func (k Known) String() string {
	return [...]string{"read", "quoted", "from memory", "common practice", "our own"}[k]
}

// Rule is one requirement.
type Rule struct {
	ID     string      // stable: "joint-variation"
	What   string      // what it limits, in plain words
	Limit  unit.Length // for lengths
	Ratio  unit.Ratio  // for shares
	Number int64       // for plain numbers
	Source string
	Clause string
	Known  Known
	Where  string // where it applies
}

// Cite names the source as a finding or a sheet prints it.
func (r Rule) Cite() string {
	s := r.Source
	if r.Clause != "" {
		s += " " + r.Clause
	}
	switch r.Known {
	case FromMemory, Practice, Own:
		if s == "" {
			return r.Known.String()
		}
		return s + " (" + r.Known.String() + ")"
	}
	return s
}
