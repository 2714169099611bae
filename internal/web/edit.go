package web

import (
	"bytes"
	"encoding/json"
	"errors"
	"net/http"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
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
	tree, _ := text.Parse(base.Text)
	ops, err := opsOf(r.PostForm, tree)
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
	if clashes := clash(base.Text, v.Text, ops); len(clashes) > 0 {
		return s.show(w, r, "clash", http.StatusConflict, &frame{Title: "Two people changed the same thing", Room: v, Body: clashes})
	}
	next, refused := try(v.Text, ops)
	preview := r.PostFormValue("preview") != ""
	switch {
	case len(refused) > 0 && known:
		v.Refused, v.Typed = refused, typedIn(r)
		return s.render(w, requestFor(r, back), v, p, refusedStatus(preview))
	case len(refused) > 0:
		return fault{http.StatusUnprocessableEntity, refused[0].Say(v.style(v.Plan.Style))}
	case preview && known:
		v.Unsaved = true
		v.take(next)
		return s.render(w, requestFor(r, back), v, p, http.StatusOK)
	case len(ops) == 0:
		http.Redirect(w, r, back, http.StatusSeeOther)
		return nil
	}
	return s.keep(w, r, v, next, ops, 0)
}

func refusedStatus(preview bool) int {
	if preview {
		return http.StatusOK // the page is fine; what is typed is not finished
	}
	return http.StatusUnprocessableEntity
}

// keep stores a text as the next revision and goes back to the page. It fails with Stale where another was quicker.
func (s *Server) keep(w http.ResponseWriter, r *http.Request, v *view, next []byte, ops []text.Op, undoes int64) error {
	raw, err := json.Marshal(ops)
	if err != nil {
		return err
	}
	doc, _ := document.Read("room", next)
	e := store.Edit{Base: v.Head, Undoes: undoes, Name: nameOf(doc.Name), Text: next, Ops: raw, By: s.who(r), At: s.now(), From: delivery(r)}
	_, _, err = s.store.Append(r.Context(), v.ID, e)
	if err != nil {
		return err
	}
	http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
	return nil
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

// try applies operations and reads what comes out. What stops it that did not stop it before is a reason to refuse.
func try(src []byte, ops []text.Op) (next []byte, refused diag.List) {
	next, found := document.Apply(src, ops)
	for _, f := range found {
		if f.Class == diag.Stop {
			refused = append(refused, f)
		}
	}
	if len(refused) > 0 {
		return src, refused
	}
	_, after := document.Read("room", next)
	if !after.Stops() {
		return next, nil
	}
	_, before := document.Read("room", src)
	known := map[string]bool{}
	for _, f := range before {
		known[f.Code+f.At.Path] = true
	}
	for _, f := range after {
		if f.Class == diag.Stop && !known[f.Code+f.At.Path] {
			refused = append(refused, f)
		}
	}
	return next, refused
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
		page.URL.RawQuery = query
	}
	return page
}

// clashed is one value that two people changed.
type clashed struct {
	Path               []string
	Where              string
	Theirs, Yours, Was string
	Name               string // of the input that sets it after all
}

// clash finds what an edit would change that has changed since its base: at its path, above it or below it. The same
// change made twice is none.
func clash(base, head []byte, ops []text.Op) []clashed {
	if bytes.Equal(base, head) {
		return nil
	}
	old, _ := text.Parse(base)
	now, _ := text.Parse(head)
	var out []clashed
	for _, op := range ops {
		was, is := at(old, op.Path...), at(now, op.Path...)
		gone := at(old, op.Path[:len(op.Path)-1]...) != nil && at(now, op.Path[:len(op.Path)-1]...) == nil
		if !gone && same(was, is) || op.Do != text.Rename && flow(is) == op.Value {
			continue
		}
		out = append(out, clashed{op.Path, strings.Join(op.Path, " > "), flow(is), op.Value, flow(was), doSet + ":" + pathName(op.Path)})
	}
	return out
}

func same(a, b *text.Node) bool {
	if a == nil || b == nil {
		return a == b
	}
	return text.Equal(a, b)
}

// flow is a node on one line; nothing is nothing.
func flow(n *text.Node) string {
	if n == nil {
		return ""
	}
	return text.Flow(n)
}
