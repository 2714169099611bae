package web

import (
	"bytes"
	"errors"
	"net/http"
	"strconv"

	"dryfit/internal/document"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

// undo takes the last change back, as a new revision.
func (s *Server) undo(w http.ResponseWriter, r *http.Request) error {
	return s.turnBack(w, r, func(t store.Trail) int64 { return t.Undo })
}

// redo takes the last undo back.
func (s *Server) redo(w http.ResponseWriter, r *http.Request) error {
	return s.turnBack(w, r, func(t store.Trail) int64 { return t.Redo })
}

// turnBack takes back the revision that the person saw as the one to be taken back. Where another has changed the room
// meanwhile that change stays.
func (s *Server) turnBack(w http.ResponseWriter, r *http.Request, which func(store.Trail) int64) error {
	var n int64
	for range triesToKeep {
		v, err := s.view(r)
		if err != nil {
			return err
		}
		if n == 0 {
			n = seenOr(r, which(v.Trail), v.Head)
		}
		if err := s.takeBack(w, r, v, n); !errors.Is(err, store.Stale) {
			return err
		}
	}
	return overtaken
}

// seenOr is the revision that the form names, if the room has it, else the one given.
func seenOr(r *http.Request, n, head int64) int64 {
	if seen, err := strconv.ParseInt(r.PostFormValue("of"), 10, 64); err == nil && seen > 1 && seen <= head {
		return seen
	}
	return n
}

func (s *Server) takeBack(w http.ResponseWriter, r *http.Request, v *view, n int64) error {
	if n < 2 {
		http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
		return nil
	}
	pair, err := s.store.Range(r.Context(), v.ID, n-1, n)
	if err != nil || len(pair) < 2 {
		return err
	}
	o, err := s.without(r, v, pair[0], pair[1])
	switch {
	case err != nil:
		return err
	case len(o.clashes) > 0:
		return s.show(w, r, "clash", http.StatusConflict, &frame{Title: "Another changed that since", Room: v, Body: o.clashes})
	case len(o.refused) > 0:
		return fault{http.StatusUnprocessableEntity, "That can not be taken back any more: " + o.refused[0].Say(v.style(v.Plan.Style)) + "."}
	case bytes.Equal(o.text, v.Text): // another has taken it back already
		http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
		return nil
	}
	return s.keep(w, r, v, o, store.Edit{Undoes: n})
}

// without is the head without one revision. Where that revision stands as it was kept, since all that came after it has
// been taken back, what comes out is the text before it to the letter.
func (s *Server) without(r *http.Request, v *view, before, after store.Revision) (outcome, error) {
	back := inverse(before, after)
	if bytes.Equal(after.Text, v.Text) {
		return outcome{text: before.Text, ops: back}, nil
	}
	return s.onto(r.Context(), after, v, back)
}

// inverse are the operations that undo a revision: those of what it did, or of how the texts differ.
func inverse(before, after store.Revision) []text.Op {
	if back, found := document.Invert(before.Text, opsIn(after)); !found.Stops() && len(back) > 0 {
		return back
	}
	was, _ := text.Parse(before.Text)
	is, _ := text.Parse(after.Text)
	return text.Diff(is, was)
}
