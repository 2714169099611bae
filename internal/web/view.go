package web

import (
	"context"
	"net/http"
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/store"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// view is a room as one request sees it: its head, or an edit of it that is not kept.
type view struct {
	ID      store.RoomID
	Head    int64 // the revision that a form is filled from
	Text    []byte
	Tree    *text.Node
	Trail   store.Trail
	Plan    plan.Plan         // as far as the page needed it
	Typed   map[string]string // what was typed and refused, by field
	Refused diag.List         // why
	Unsaved bool
	Extra   []said // to look at, beside what the plan found

	server *Server
	ctx    context.Context
	style  func(unit.Style) unit.Style
}

func roomID(r *http.Request) (store.RoomID, error) {
	n, err := strconv.ParseInt(r.PathValue("room"), 10, 64)
	if err != nil {
		return 0, fault{http.StatusNotFound, "There is no such room."}
	}
	return store.RoomID(n), nil
}

// view reads the room that a request names.
func (s *Server) view(r *http.Request) (*view, error) {
	id, err := roomID(r)
	if err != nil {
		return nil, err
	}
	head, err := s.store.Head(r.Context(), id)
	if err != nil {
		return nil, err
	}
	trail, err := s.store.Trail(r.Context(), id)
	v := &view{ID: id, Head: head.Number, Trail: trail, server: s, ctx: r.Context(), style: func(own unit.Style) unit.Style { return styleFor(r, own) }}
	v.take(head.Text)
	return v, err
}

// take makes a text the one that is seen.
func (v *view) take(src []byte) { v.Text = src; v.Tree = v.server.plans.texts.of(src).Tree }

// make plans the room as far as a page needs it. A plan is shared, so its style is set on a copy.
func (v *view) make(o plan.Options) error {
	p, err := v.server.plans.make(v.ctx, v.Text, o)
	p.Style = v.style(p.Style)
	v.Plan = p
	return err
}

// Address is where the room's pages are.
func (v *view) Address() string { return "/room/" + strconv.FormatInt(int64(v.ID), 10) }

// Name is the room's name, or what stands for one that can not be read.
func (v *view) Name() string {
	if v.Plan.Name != "" {
		return v.Plan.Name
	}
	if n := v.Tree.Get("name"); n != nil && n.Text != "" {
		return n.Text
	}
	return "a room without a name"
}

// Tally counts what is known to be wrong, and before it what is not known at all.
type Tally struct{ Stop, Look, Unchecked, Assumed int }

// Tally counts the plan's findings; nothing here says that all fits.
func (v *view) Tally() Tally {
	stop, look, unchecked, _ := report.Tally(v.Plan.Findings)
	return Tally{stop, look + len(v.Extra), unchecked, len(v.Plan.Assumed)}
}

// said is a finding in words.
type said struct {
	Class, Words, Mend, Where string
	Line                      int
}

func (v *view) say(f diag.Finding) said {
	return said{strings.ReplaceAll(f.Class.String(), " ", "-"), f.Say(v.Plan.Style), f.SayMend(v.Plan.Style), f.At.Path, f.At.Line}
}

// Findings are all findings but notes, in words.
func (v *view) Findings() []said {
	out := slices.Clone(v.Extra)
	for _, f := range v.Plan.Findings {
		if f.Class != diag.Note {
			out = append(out, v.say(f))
		}
	}
	return out
}

// Notes are the rest.
func (v *view) Notes() []said {
	var out []said
	for _, f := range v.Plan.Findings {
		if f.Class == diag.Note {
			out = append(out, v.say(f))
		}
	}
	return out
}

// Assumed lists what was taken because the document is silent.
func (v *view) Assumed() []string {
	var out []string
	for _, a := range v.Plan.Assumed {
		out = append(out, a.Say(v.Plan.Style)+" ("+a.Source+")")
	}
	return out
}

// page shows a page of a room as it is kept.
func (s *Server) page(p pageOf) handler {
	return func(w http.ResponseWriter, r *http.Request) error {
		b, err := s.sent.page(r.Context(), s.store.Version, s.asked(p, r), func() ([]byte, error) {
			r := r.WithContext(context.WithoutCancel(r.Context())) // others may want it if who asked goes away
			v, err := s.view(r)
			if err != nil {
				return nil, err
			}
			f, err := s.filled(r, v, p)
			if err != nil {
				return nil, err
			}
			return s.written(r, p.name, f)
		})
		if err != nil {
			return err
		}
		return sendPage(w, r, http.StatusOK, b)
	}
}

// filled is a page of a room within its frame.
func (s *Server) filled(r *http.Request, v *view, p pageOf) (*frame, error) {
	f, err := p.fill(v, r)
	if err != nil {
		return nil, err
	}
	f.Page, f.Room = p.name, v
	return f, nil
}

func (s *Server) render(w http.ResponseWriter, r *http.Request, v *view, p pageOf, status int) error {
	f, err := s.filled(r, v, p)
	if err != nil {
		return err
	}
	return s.show(w, r, p.name, status, f)
}

// pageNamed finds a page that a form wants shown again.
func pageNamed(address string) (pageOf, bool) {
	path, _, _ := strings.Cut(address, "?")
	for _, p := range append(roomPages(), wallPage) {
		if strings.HasSuffix(path, "/"+p.name) {
			return p, true
		}
	}
	return pageOf{}, false
}
