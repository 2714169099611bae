package web

import (
	"context"
	"errors"
	"io"
	"net/http"
	"strings"
	"unicode/utf8"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/store"
	"dryfit/internal/text"
)

var sourcePage = pageOf{name: "source", tab: "Source", fill: source, whole: true}

// written is the document with what is said of each line.
type written struct {
	Text  string
	Lines []line
	Rest  []said // what has no line
}

type line struct {
	N    int
	Text string
	Says []said
}

func source(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{}); err != nil {
		return nil, err
	}
	src := string(v.Text)
	found := v.Plan.Findings
	if typed, refused := v.Typed["text"]; refused {
		src, found = typed, v.Refused
	}
	w := written{Text: src}
	for i, l := range strings.Split(strings.TrimSuffix(src, "\n"), "\n") {
		w.Lines = append(w.Lines, line{N: i + 1, Text: l})
	}
	for _, f := range found {
		switch n := f.At.Line; {
		case f.Class == diag.Note:
		case n >= 1 && n <= len(w.Lines):
			w.Lines[n-1].Says = append(w.Lines[n-1].Says, v.say(f))
		default:
			w.Rest = append(w.Rest, v.say(f))
		}
	}
	return &frame{Title: "Source", Question: "What does the document say?", Answer: "Everything on these pages is read from this text, and every form writes into it.", Body: w}, nil
}

// replace takes a whole document, typed or uploaded. One that can not be parsed is not kept: no form could change it.
func (s *Server) replace(w http.ResponseWriter, r *http.Request) error {
	typed, base, err := sentText(r)
	if err != nil {
		return err
	}
	v, err := s.view(r)
	if err != nil {
		return err
	}
	if base != "" && base != itoa(v.Head) {
		return s.replaceOld(w, r, v, typed)
	}
	_, faults := text.Parse([]byte(typed))
	doc, found := document.Read("room", []byte(typed))
	if faults.Stops() || doc.Version == 0 && found.Stops() {
		v.Refused, v.Typed = append(faults, found...).Sorted(), map[string]string{"text": typed}
		return s.render(w, r, v, sourcePage, http.StatusUnprocessableEntity)
	}
	if typed == string(v.Text) {
		http.Redirect(w, r, v.Address()+"/source", http.StatusSeeOther)
		return nil
	}
	return s.keep(w, r, v, outcome{text: []byte(typed)}, store.Edit{})
}

// replaceOld takes a document that was typed over an older revision: what it says otherwise than that revision is put
// into the head, with its comments and its layout. Where both changed the same value or the same words, or the two can
// not stand together, both texts are shown and nothing is kept.
func (s *Server) replaceOld(w http.ResponseWriter, r *http.Request, v *view, typed string) error {
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	for range triesToKeep {
		o, ok, err := s.typedOnto(r.Context(), base, v, typed)
		switch {
		case err != nil:
			return err
		case !ok:
			return s.show(w, r, "clash", http.StatusConflict, &frame{Title: "Two people changed the document", Room: v,
				Body: []clashed{{Where: "the whole document", Theirs: string(v.Text), Yours: typed}}})
		case string(o.text) == string(v.Text):
			http.Redirect(w, r, v.Address()+"/source", http.StatusSeeOther)
			return nil
		}
		if err := s.keep(w, r, v, o, store.Edit{Seen: base.Number}); !errors.Is(err, store.Stale) {
			return err
		}
		if v, err = s.view(r); err != nil {
			return err
		}
	}
	return overtaken
}

// typedOnto puts a text that was typed over a base onto the head. What it says is merged value by value; the two texts
// are merged by their lines and words; and only where both come to the same document is it the outcome.
func (s *Server) typedOnto(ctx context.Context, base store.Revision, v *view, typed string) (outcome, bool, error) {
	was, _ := text.Parse(base.Text)
	is, faults := text.Parse([]byte(typed))
	if faults.Stops() {
		return outcome{}, false, nil
	}
	o, err := s.onto(ctx, base, v, text.Diff(was, is))
	if err != nil || len(o.clashes)+len(o.refused) > 0 {
		return outcome{}, false, err
	}
	if o.text == nil {
		o.text = v.Text
	}
	made, ok := text.Three(base.Text, []byte(typed), v.Text)
	if !ok {
		return o, false, nil
	}
	want, _ := text.Parse(o.text)
	got, faults := text.Parse(made)
	switch {
	case faults.Stops() || !text.Equal(want, got):
		return o, false, nil
	case string(made) == string(o.text):
		return o, true, nil
	}
	return outcome{text: made}, true, nil
}

// sentText reads a form with the document in it, or as a file. A browser ends lines of a form with CR LF; the document
// keeps the ends that it has.
func sentText(r *http.Request) (typed, base string, err error) {
	if err := r.ParseForm(); err != nil {
		return "", "", err
	}
	if err := r.ParseMultipartForm(maxBody); err != nil && err != http.ErrNotMultipart {
		return "", "", err
	}
	typed, base = r.PostFormValue("text"), r.PostFormValue("base")
	if f, _, err := r.FormFile("file"); err == nil {
		defer f.Close()
		b, err := io.ReadAll(f)
		if err != nil {
			return "", "", err
		}
		typed, base = string(b), ""
	}
	if !utf8.ValidString(typed) {
		return "", "", fault{http.StatusUnprocessableEntity, "That is no text."}
	}
	return strings.ReplaceAll(typed, "\r\n", "\n"), base, nil
}
