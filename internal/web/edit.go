package web

import (
	"encoding/json"
	"errors"
	"net/http"
	"strconv"
	"strings"

	"dryfit/internal/store"
	"dryfit/internal/text"
)

// edit takes a form, makes it operations on the document, and keeps the result as a new revision. With "preview" it is
// shown and not kept. What can not be is refused whole and said at the field that caused it.
func (s *Server) edit(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	ops, err := opsOf(r.PostForm, s.plans.texts.of(base.Text).Tree)
	if err != nil {
		return err
	}
	return s.change(w, r, v, base, ops)
}

// base is the revision that a form was filled from.
func (s *Server) base(r *http.Request, v *view) (store.Revision, error) {
	if err := r.ParseForm(); err != nil {
		return store.Revision{}, err
	}
	n, err := strconv.ParseInt(r.PostFormValue("base"), 10, 64)
	if err != nil || n == v.Head {
		return store.Revision{Number: v.Head, Text: v.Text}, nil
	}
	return s.store.At(r.Context(), v.ID, n)
}

// change applies operations to the head and keeps them. Where another was quicker they are applied to what is the head
// then: only a change of the same value is a clash.
func (s *Server) change(w http.ResponseWriter, r *http.Request, v *view, base store.Revision, ops []text.Op) error {
	for range triesToKeep {
		err := s.changeOnce(w, r, v, base, ops)
		if !errors.Is(err, store.Stale) {
			return err
		}
		if v, err = s.view(r); err != nil {
			return err
		}
	}
	return overtaken
}

// triesToKeep is how often an edit is tried on a newer head; each try that fails means that another edit was kept.
const triesToKeep = 20

var overtaken = fault{http.StatusConflict, "Others change the room faster than this could be kept. Nothing was lost: save once more."}

func (s *Server) changeOnce(w http.ResponseWriter, r *http.Request, v *view, base store.Revision, ops []text.Op) error {
	back := local(r.PostFormValue("back"))
	p, known := pageNamed(back)
	o, err := s.onto(r.Context(), base, v, ops)
	if err != nil {
		return err
	}
	if len(o.clashes) > 0 {
		return s.clashing(w, r, v, base, ops, o.clashes)
	}
	preview := r.PostFormValue("preview") != ""
	switch {
	case len(o.refused) > 0 && known:
		v.Refused, v.Typed = o.refused, typedIn(r)
		return s.render(w, requestFor(r, back), v, p, refusedStatus(preview))
	case len(o.refused) > 0:
		return fault{http.StatusUnprocessableEntity, o.refused[0].Say(v.style(v.Plan.Style))}
	case preview && known:
		v.Unsaved = true
		v.take(o.text)
		return s.render(w, requestFor(r, back), v, p, http.StatusOK)
	case len(o.ops) == 0:
		http.Redirect(w, r, back, http.StatusSeeOther)
		return nil
	}
	return s.keep(w, r, v, o, store.Edit{Seen: base.Number})
}

func refusedStatus(preview bool) int {
	if preview {
		return http.StatusOK // the page is fine; what is typed is not finished
	}
	return http.StatusUnprocessableEntity
}

// keep stores what came of an edit and goes back to the page.
func (s *Server) keep(w http.ResponseWriter, r *http.Request, v *view, o outcome, e store.Edit) error {
	if err := s.append(r, v, o, e); err != nil {
		return err
	}
	http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
	return nil
}

// append stores what came of an edit as the next revision. It fails with Stale where another was quicker.
func (s *Server) append(r *http.Request, v *view, o outcome, e store.Edit) error {
	raw, err := json.Marshal(o.ops)
	if err != nil {
		return err
	}
	doc, _ := s.plans.texts.of(o.text).room()
	e.Base, e.Name, e.Text, e.Ops, e.By, e.At, e.From = v.Head, nameOf(doc.Name), o.text, raw, s.who(r), s.now(), delivery(r)
	_, _, err = s.store.Append(r.Context(), v.ID, e)
	if err == nil {
		err = errors.Join(s.photosFollow(r.Context(), v.ID, o.ops), s.ticksFollow(r.Context(), v.ID, o.ops))
	}
	return err
}

func nameOf(name string) string {
	if strings.TrimSpace(name) == "" {
		return "a room without a name"
	}
	return name
}

// delivery names a request that a page's script may send twice.
func delivery(r *http.Request) store.Delivery {
	seq, err := strconv.ParseInt(r.PostFormValue("seq"), 10, 64)
	if err != nil || r.PostFormValue("client") == "" {
		return store.Delivery{}
	}
	return store.Delivery{Client: r.PostFormValue("client"), Seq: seq, Body: []byte(r.PostForm.Encode())}
}

// typedIn keeps what was typed, to show it again.
func typedIn(r *http.Request) map[string]string {
	out := map[string]string{}
	for k := range r.PostForm {
		out[k] = r.PostForm.Get(k)
	}
	return out
}

// requestFor is the request for the page that a form stands on.
func requestFor(r *http.Request, back string) *http.Request {
	page := r.Clone(r.Context())
	if _, query, ok := strings.Cut(back, "?"); ok {
		page.URL.RawQuery, page.Form = query, nil // read anew, for the address has other values now
	}
	return page
}
