// Package mend answers what the least is that must change where a check fails. It stands above the plan: it takes a document's text and
// the plan that was made of it, changes what the document says may still move, and runs the plan again up to its checks.
//
// A check carries how its margin moves with each thing that may move. From these come, in whole steps of a tape's mark, the smallest change
// of each single thing that mends a check and spoils no other, and the smallest joint change that mends all at once (opt/mip:
// fewest things first, then the least way moved). Nothing of it is told before a run on the changed document has confirmed it; what
// every other check then reads is taken from that run. Where nothing in range mends a check, that is said, and by how much it misses.
//
// For checks that pass it tells the margin left and which layer of a build-up eats it.
package mend

import (
	"context"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Mends is what could be changed.
type Mends struct {
	Things   []Thing  // what may move, in the document's order
	Remedies []Remedy // for each check that misses, in the order of the checks
	Joint    *Joint   // the smallest change that mends all, or misses least; nil where nothing misses that can be touched
	Asked    *Joint   // where that does not mend all: the smallest that mends what codes and data sheets ask, and no more than that; nil: none does
	Without  []string // ids of checks that miss and are left out of Joint, because nothing that may move is in them
	Margins  []Margin // of the checks that pass, the narrowest first
	Runs     int      // plans that were made to confirm
	All      bool     // every remedy was tried; false: the runs allowed were used up
}

// Thing is something that may move.
type Thing struct {
	Words      string // as the document calls it: "vanity > height"
	Path       []string
	At         diag.Place
	Now        string      // the value as it stands
	Less, More unit.Length // how far down (not above 0) and up
	Step       unit.Length
	Fixed      string // why it can not be moved here after all; "" where it can
}

// Change is one thing moved.
type Change struct {
	Thing int // its place in Things
	By    unit.Length
	To    string // the value as it would stand
}

// Read is what a check reads after a change.
type Read struct {
	Check  string // its id
	Was    fit.State
	State  fit.State
	Value  diag.Value
	Margin unit.Length
}

// Trial is a change and what a run of the plan on the changed document says.
type Trial struct {
	Changes []Change
	Ops     []document.Op // the change as an edit
	Reads   []Read        // of every check that reads otherwise than before, in the order of the checks
	Spoils  []string      // ids of checks that passed or were told before and then miss or can not be made
	Stops   []string      // codes of findings that stop work and were not there before, other than those of checks
}

// Remedy is what mends one check.
type Remedy struct {
	Check  string
	Needs  unit.Length // by how much it misses; 0 for what is no length
	Single []Trial     // the smallest change of each single thing that mends it and spoils nothing, the smallest first
	Spoils []Trial     // changes of single things that would mend it and spoil another check
	Short  []Short     // things that can not mend it alone
	// Misses is by how much it misses with everything that may move at its best for it; 0 where it can be mended.
	Misses  unit.Length
	Touched bool // something that may move is in it
}

// Short is a thing that goes the right way, not far enough.
type Short struct {
	Thing int
	By    unit.Length // what is still missing at the end of its range
}

// Joint is the smallest change of several things at once.
type Joint struct {
	Trial
	Mends  bool   // all checks that it is for are mended, and none is spoiled
	Left   []Left // what still misses, advice that is left aside too
	Proven bool   // no smaller one does as much, by the checks' dependences
}

// Left is a check that still misses.
type Left struct {
	Check string
	By    unit.Length
}

// Margin is what is left of a check that passes.
type Margin struct {
	Check string
	Left  unit.Length
	Eats  []Layer // the layers that eat it, the one that takes most first
}

// Layer is a layer of a build-up that takes from a margin.
type Layer struct {
	Path  string
	Per   unit.Ratio
	Thick unit.Length // as it stands; 0 where it is not known
	Takes unit.Length // of the margin
	Spare unit.Length // how much thicker it may be before the check misses
}

// Options bound the work.
type Options struct {
	Runs int // plans made to confirm; 0: DefaultRuns
}

// DefaultRuns is enough for a room of ten failing checks with four things to each.
const DefaultRuns = 80

// Make looks for what mends a plan. The error is for a canceled context alone.
func Make(ctx context.Context, file string, text []byte, p plan.Plan, o Options) (Mends, error) {
	return Of(ctx, document.NewDraft(file, text), p, o)
}

// Of is Make for a document whose text is parsed already.
func Of(ctx context.Context, draft document.Draft, p plan.Plan, o Options) (Mends, error) {
	if o.Runs == 0 {
		o.Runs = DefaultRuns
	}
	m := &mender{ctx: ctx, trial: plan.NewTrial(draft, p), base: p, left: o.Runs, tried: map[string]outcome{}}
	m.out.All = true
	m.things()
	m.checks()
	m.remedies()
	m.joint()
	m.margins()
	return m.out, m.err
}
