package web

import (
	"context"
	"encoding/json"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// outcome is what came of putting operations on the head.
type outcome struct {
	text    []byte
	ops     []text.Op // what made it from the head; none where the head says it all already
	clashes []clashed
	refused diag.List
}

// onto puts operations that were made on an older revision onto the head. What others have changed since stays; only the
// same value changed to something else is a clash.
func (s *Server) onto(ctx context.Context, base store.Revision, v *view, ops []text.Op) (outcome, error) {
	if base.Number == v.Head {
		next, refused := s.plans.texts.try(v.Text, ops)
		return outcome{text: next, ops: ops, refused: refused}, nil
	}
	theirs, err := s.opsSince(ctx, v.ID, base.Number, v.Head)
	if err != nil {
		return outcome{}, err
	}
	m := document.Merge(base.Text, v.Text, theirs, ops)
	switch refused := stops(m.Found); {
	case len(m.Clashes) > 0:
		return outcome{clashes: shown(m.Clashes, ops, v.Tree)}, nil
	case len(refused) > 0:
		return outcome{refused: refused}, nil
	}
	return outcome{text: m.Text, ops: m.Ops, refused: s.plans.texts.newlyStopped(v.Text, m.Text, hasName(m.Ops))}, nil
}

// opsSince are the operations that led from one revision to the head, or nil where one of them is a text that was typed
// or uploaded whole.
func (s *Server) opsSince(ctx context.Context, id store.RoomID, base, head int64) ([]text.Op, error) {
	list, err := s.store.Log(ctx, id, head+1, int(head-base))
	all := []text.Op{}
	for i := len(list) - 1; i >= 0; i-- {
		ops := opsIn(list[i])
		if ops == nil {
			return nil, err
		}
		all = append(all, ops...)
	}
	return all, err
}

// opsIn are the operations of a revision, or nil where none are known.
func opsIn(r store.Revision) []text.Op {
	var ops []text.Op
	if json.Unmarshal(r.Ops, &ops) != nil || len(ops) == 0 {
		return nil
	}
	return ops
}

// try applies operations and reads what comes out.
func (l *texts) try(src []byte, ops []text.Op) (next []byte, refused diag.List) {
	edited, found := document.ApplyTo(l.of(src).Source, ops)
	if refused = stops(found); len(refused) > 0 {
		return src, refused
	}
	next = l.take(edited).Src
	return next, l.newlyStopped(src, next, hasName(ops))
}

func stops(found diag.List) (out diag.List) {
	for _, f := range found {
		if f.Class == diag.Stop {
			out = append(out, f)
		}
	}
	return out
}

// newlyStopped is what stops a text that did not stop the one before: a reason to refuse it. Where a thing has another
// name now, what is said of it stands at another place.
func (l *texts) newlyStopped(src, next []byte, named bool) (refused diag.List) {
	_, after := l.of(next).room()
	if !after.Stops() {
		return nil
	}
	_, before := l.of(src).room()
	key := func(f diag.Finding) string {
		if named {
			return f.Code
		}
		return f.Code + f.At.Path
	}
	known := map[string]bool{}
	for _, f := range before {
		known[key(f)] = true
	}
	for _, f := range stops(after) {
		if !known[key(f)] {
			refused = append(refused, f)
		}
	}
	return refused
}
