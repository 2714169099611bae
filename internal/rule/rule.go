// Package rule holds published requirements as records: what each limits, the limit, its source and clause, and how
// far it is known. A stage compares and reports; the number and its source live here alone.
//
// Requirements come in sets (a code, a standard, trade habit) that a document chooses. Where several chosen sets limit
// the same subject, the strictest holds, unless the document gives a number of its own inspector: see Book.
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

// Rule is one requirement. Of Limit, Ratio, Number, Flow and Area at most one is set; which one is its Kind.
type Rule struct {
	ID      string      // stable: "joint-variation"
	What    string      // what it limits, in plain words
	Sets    Sets        // the sets it belongs to; none: it holds for every document
	Subject Subject     // what it limits, the same in all sets; none: it stands alone
	Bound   Bound       // whether the number is the least or the most allowed
	Size    unit.Length // for tables by size of pipe: the nominal size
	Limit   unit.Length // for lengths
	Per     unit.Length // for falls: Limit over this length
	Ratio   unit.Ratio  // for shares
	Number  int64       // for plain numbers
	Unit    string      // what a plain number counts
	Flow    unit.Flow   // for water and air
	Area    unit.Area   // for openings
	Advice  bool        // a good habit: less than it is told, never refused
	Source  string
	Clause  string
	Known   Known
	Where   string // where it applies
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
