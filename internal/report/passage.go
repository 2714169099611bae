package report

import (
	"fmt"

	"dryfit/internal/joinery"
	"dryfit/internal/plan"
)

// passageWords tells whether a thing, put together, gets to its place.
func passageWords(p plan.Plan, all []joinery.Passage) []string {
	var out []string
	f := p.Style
	for _, w := range all {
		yes := "it passes"
		if !w.Passes {
			yes = "IT DOES NOT PASS"
		}
		switch w.Way {
		case joinery.BetweenWalls:
			out = append(out, fmt.Sprintf("Slid in between the walls beside it: %s wide, and they are %s apart where it has least to spare (%s): %s.", f.Format(w.Needs[0]), f.Format(w.Has[0]), w.Source, yes))
		case joinery.ThroughDoor:
			out = append(out, fmt.Sprintf("Carried through %s: its lesser sides are %s x %s, the door is %s x %s in the clear: %s.", w.Source, f.Bare(w.Needs[0]), f.Format(w.Needs[1]), f.Bare(w.Has[0]), f.Format(w.Has[1]), yes))
		case joinery.TippedUp:
			out = append(out, fmt.Sprintf("Stood up in the room: its diagonal is %s, and the ceiling is %s at the highest: %s.", f.Format(w.Needs[0]), f.Format(w.Has[0]), yes))
		}
	}
	return out
}
