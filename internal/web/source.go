package web

import (
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

var sourcePage = pageOf{name: "source", tab: "Source", fill: source}

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

// replaceOld takes a document that was typed over an older revision: what it says otherwise than that revision, where
// that is all that was typed, and it can stand with what others have changed. New comments and another layout are no
// operations; then both texts are shown.
func (s *Server) replaceOld(w http.ResponseWriter, r *http.Request, v *view, typed string) error {
	base, err := s.base(r, v)
	if err != nil {
		return err
	}
	ops, all := typedOver(base.Text, typed)
	for tries := 0; all && tries < triesToKeep; tries++ {
		o, err := s.onto(r.Context(), base, v, ops)
		if err != nil {
			return err
		}
		if len(o.clashes)+len(o.refused)+len(o.ops) == 0 {
			http.Redirect(w, r, v.Address()+"/source", http.StatusSeeOther)
			return nil
		}
		if len(o.clashes)+len(o.refused) > 0 {
			break
		}
		if err := s.keep(w, r, v, o, store.Edit{Seen: base.Number}); !errors.Is(err, store.Stale) {
			return err
		}
		if v, err = s.view(r); err != nil {
			return err
		}
	}
	return s.show(w, r, "clash", http.StatusConflict, &frame{Title: "Two people changed the document", Room: v,
		Body: []clashed{{Where: "the whole document", Theirs: string(v.Text), Yours: typed}}})
}

// typedOver are the operations that make what was typed from the text that it was typed over; false where they do not
// make it to the letter.
func typedOver(base []byte, typed string) ([]text.Op, bool) {
	was, _ := text.Parse(base)
	is, faults := text.Parse([]byte(typed))
	if faults.Stops() {
		return nil, false
	}
	ops := text.Diff(was, is)
	made, found := text.Apply(base, ops)
	return ops, !found.Stops() && string(made) == typed
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
