package web

import (
	"net/http"
	"strconv"
	"sync"

	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/store"
)

var historyPage = pageOf{name: "history", tab: "History", fill: history}

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
	found := document.Describe(from.Text, to.Text)
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
	h.From, h.To, h.Asked, h.Between = from, to, true, document.Describe(a.Text, b.Text)
	return err
}

func itoa(n int64) string { return strconv.FormatInt(n, 10) }
