package web

import (
	"maps"
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
)

// outlineOf is what a tick binds to beside the address: a name of the outline, a space, and what the piece is cut to in
// words of the document's own units, so that a later plan can say what was cut.
func outlineOf(outline geom.Region, cut, holes string) string {
	what := cut
	if what == "" { // cut as it is drawn: its outline alone tells it from another
		return outlineHash(outline)
	}
	if holes != "" {
		what += ", holes: " + holes
	}
	return outlineHash(outline) + " " + what
}

// cutTo is what a tick says that its piece was cut to; nothing where it does not say.
func cutTo(outline string) string {
	_, what, _ := strings.Cut(outline, " ")
	return what
}

// stands: a piece that was ticked is still the one of the plan, by its outline, or by every figure that it is cut by.
func stands(ticked, now string) bool {
	return ticked == now || cutTo(ticked) != "" && cutTo(ticked) == cutTo(now)
}

// recut: pieces were cut to something that the plan has changed since: told at the pieces that the plan has now, and
// of those that are gone. Faces that the plan was not made for are left out.
func (v *view) recut(faces []plan.Face, pieces map[string][]pieceLine) ([]said, error) {
	done, err := v.ticks()
	if err != nil {
		return nil, err
	}
	var found diag.List
	for _, f := range faces {
		now := map[string]bool{}
		for _, p := range pieces[f.Name] {
			now[p.Tick] = true
			if was, ticked := done[p.Tick]; ticked && !stands(was, p.Hash) {
				found.Add(diag.Look, "piece-recut", diag.Place{Path: f.Name}, "{0}, piece {1}: cut to {2}, now {3}", "measure the piece that is there; set it where it fits, or cut it anew",
					diag.T(f.Name), diag.T(p.Address), diag.T(orUnknown(cutTo(was))), diag.T(orUnknown(cutTo(p.Hash))))
			}
		}
		for _, address := range slices.Sorted(maps.Keys(done)) {
			if face, name := tickedPiece(address); face == f.Name && !now[address] {
				found.Add(diag.Look, "piece-gone", diag.Place{Path: f.Name}, "{0}, piece {1}: cut to {2}, and now there is no such piece", "keep it with the offcuts",
					diag.T(f.Name), diag.T(name), diag.T(orUnknown(cutTo(done[address]))))
			}
		}
	}
	var out []said
	for _, f := range found {
		out = append(out, v.say(f))
	}
	return out, nil
}

func orUnknown(what string) string {
	if what == "" {
		return "a size that was not kept"
	}
	return what
}
