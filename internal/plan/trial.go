package plan

import (
	"context"
	"slices"

	"dryfit/internal/document"
)

// Trial makes a plan's checks anew for changes that nobody has made yet: the text is parsed once, the room is solved again only
// where a change reaches it, and no tile is laid.
type Trial struct {
	draft document.Draft
	base  Plan
}

// NewTrial begins from a document and the plan that was made of it.
func NewTrial(draft document.Draft, made Plan) Trial { return Trial{draft, made} }

// Text returns the single value at a path of the document.
func (t Trial) Text(path []string) (string, bool) { return t.draft.Text(path) }

// With runs the stages up to the checks on the document with these values set. False: one of them is no single value that is there.
func (t Trial) With(ctx context.Context, ops []document.Op) (Plan, bool, error) {
	doc, findings, ok := t.draft.With(ops)
	if !ok {
		return Plan{}, false, nil
	}
	p := Plan{Name: doc.Name, Document: doc, Findings: findings, Style: style(doc)}
	for _, stage := range stages {
		if err := ctx.Err(); err != nil {
			return p, true, err
		}
		switch {
		case stage.last == UpToSite && !reachesRoom(ops):
			p.Room = t.base.Room
		case stage.last == UpToSite || stage.last == UpToFit:
			said := stage.run(&p, Options{})
			p.tell(stage.last, said)
			if said.ends {
				return p, true, nil
			}
		}
	}
	return p, true, nil
}

// besideRoom are the tables of the document that the solved room does not hang on. A test holds this against the stage.
var besideRoom = []string{"basins", "taps", "wastes", "stops", "WCs", "fittings", "people", "rules", "accessible", "stock", "cabinets", "tops", "may move"}

// reachesRoom reports whether one of the changes may change the solved room.
func reachesRoom(ops []document.Op) bool {
	return slices.ContainsFunc(ops, func(op document.Op) bool { return !slices.Contains(besideRoom, op.Path[0]) })
}
