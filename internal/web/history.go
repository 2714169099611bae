package web

import (
	"net/http"
	"strconv"
	"sync"

	"dryfit/internal/plan"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

var historyPage = pageOf{"history", history}

// past is the room's revisions, the newest first.
type past struct {
	Revisions []passed
	From, To  int64
	Between   []string // what changed between two, where they are asked for
	Asked     bool
	More      int64 // older ones begin here; 0: none
}

type passed struct {
	Number  int64
	At, By  string
	Changes []string
	Undoes  int64
}

const pastOnPage = 30

func history(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return nil, err
	}
	last := v.Head
	if n, err := strconv.ParseInt(r.FormValue("before"), 10, 64); err == nil && n > 1 && n <= v.Head {
		last = n - 1
	}
	list, err := v.server.store.Range(v.ctx, v.ID, max(1, last-pastOnPage), last)
	if err != nil {
		return nil, err
	}
	h := past{Revisions: v.server.past.words(list)}
	if len(list) > 0 && list[0].Number > 1 {
		h.More = list[0].Number + 1
	}
	if err := v.between(r, &h); err != nil {
		return nil, err
	}
	return &frame{Title: "History", Question: "What changed, and how do I go back?", Answer: "Revision " + itoa(v.Head) + ". Nothing is ever lost: undo is a step forward to what was before.", Body: h}, nil
}

// remembered keeps what revisions changed: a revision never changes, and parsing it again takes time.
type remembered struct {
	mu   sync.Mutex
	said map[pastKey][]string
}

type pastKey struct {
	room   store.RoomID
	number int64
}

const pastKept = 5000

// words says of each revision, the newest first, what it changed in the one before it. The first of the list is only
// compared with, unless it is the room's first.
func (m *remembered) words(list []store.Revision) []passed {
	var out []passed
	for i := len(list) - 1; i >= 0; i-- {
		p := passed{Number: list[i].Number, At: list[i].At.Format("2006-01-02 15:04 UTC"), By: list[i].By, Undoes: list[i].Undoes}
		switch {
		case i > 0:
			p.Changes = m.changes(list[i-1], list[i])
		case list[i].Number > 1:
			continue
		default:
			p.Changes = []string{"the room was made"}
		}
		out = append(out, p)
	}
	return out
}

func (m *remembered) changes(from, to store.Revision) []string {
	key := pastKey{to.Room, to.Number}
	m.mu.Lock()
	known, ok := m.said[key]
	m.mu.Unlock()
	if ok {
		return known
	}
	found := changes(from.Text, to.Text)
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.said == nil || len(m.said) >= pastKept {
		m.said = map[pastKey][]string{}
	}
	m.said[key] = found
	return found
}

// between compares two revisions that are asked for.
func (v *view) between(r *http.Request, h *past) error {
	from, err1 := strconv.ParseInt(r.FormValue("from"), 10, 64)
	to, err2 := strconv.ParseInt(r.FormValue("to"), 10, 64)
	h.From, h.To = max(1, v.Head-1), v.Head
	if err1 != nil || err2 != nil {
		return nil
	}
	a, err := v.server.store.At(v.ctx, v.ID, from)
	if err != nil {
		return err
	}
	b, err := v.server.store.At(v.ctx, v.ID, to)
	h.From, h.To, h.Asked, h.Between = from, to, true, changes(a.Text, b.Text)
	return err
}

// changes words the difference of two documents by path, in the document's own words.
func changes(from, to []byte) []string {
	a, _ := text.Parse(from)
	b, _ := text.Parse(to)
	out := differences(nil, "", a, b)
	if len(out) == 0 && string(from) != string(to) {
		out = []string{"comments or layout alone"}
	}
	return out
}

func differences(out []string, path string, a, b *text.Node) []string {
	switch {
	case a == nil:
		return append(out, path+": "+text.Flow(b)+" (new)")
	case b == nil:
		return append(out, path+": taken out; it was "+text.Flow(a))
	case a.Kind != text.Map || b.Kind != text.Map:
		if !text.Equal(a, b) {
			out = append(out, path+": "+text.Flow(a)+" → "+text.Flow(b))
		}
		return out
	}
	for _, e := range a.Entries {
		out = differences(out, text.Join(path, e.Key), e.Value, b.Get(e.Key))
	}
	for _, e := range b.Entries {
		if a.Get(e.Key) == nil {
			out = differences(out, text.Join(path, e.Key), nil, e.Value)
		}
	}
	return out
}

// undo takes the last change back, as a new revision.
func (s *Server) undo(w http.ResponseWriter, r *http.Request) error {
	return s.turnBack(w, r, func(t store.Trail) int64 { return t.Undo })
}

// redo takes the last undo back.
func (s *Server) redo(w http.ResponseWriter, r *http.Request) error {
	return s.turnBack(w, r, func(t store.Trail) int64 { return t.Redo })
}

// turnBack stores what stood before a revision. All that came after it has been taken back already, so nothing else of
// anyone's is lost.
func (s *Server) turnBack(w http.ResponseWriter, r *http.Request, which func(store.Trail) int64) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	n := which(v.Trail)
	if n < 2 {
		http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
		return nil
	}
	before, err := s.store.At(r.Context(), v.ID, n-1)
	if err != nil {
		return err
	}
	return s.keep(w, r, v, before.Text, nil, n)
}

func itoa(n int64) string { return strconv.FormatInt(n, 10) }
