package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// Result is what a search found.
type Result struct {
	Finalists []Candidate // best first, truly different from each other; empty if the region is
	// Exact: every markable offset was judged. Each measure says for itself whether it is covered.
	Exact      bool
	Resolution unit.Length  // the finest step between offsets judged
	Coarse     unit.Length  // a bounded search: the step before refining; 0 where exact
	Evaluated  int          // offsets judged
	Searched   judge.Reason // how, in words
}

// Candidate is one layout.
type Candidate struct {
	Origin   geom.Point      // of the pattern's tile 0,0, lower left corner, in the pattern frame
	Measures []judge.Measure // in order of importance
	Why      judge.Reason    // what speaks for it
	WhyNot   judge.Reason    // what speaks against it; empty if nothing does
}

// Move is how far an opening should be moved so that its edges fall on joints.
type Move struct {
	Opening     string
	Across, Up  unit.Length // 0 = stays
	JointsNow   int         // how many of its sides fall on a joint as it is
	JointsMoved int
	Why         judge.Reason
}
