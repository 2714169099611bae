package web

import (
	"bytes"
	"compress/gzip"
	"embed"
	"html/template"
	"net/http"
	"regexp"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"dryfit/internal/unit"
)

//go:embed page
var pageFiles embed.FS

// looks are the templates, by the name of their page.
type looks map[string]*template.Template

// otherPages stand within the frame and belong to no room.
var otherPages = [...]string{"rooms", "clash", "share", "fault"}

// allLooks are read once: a template does not change when it is filled.
var allLooks = sync.OnceValue(parseLooks)

func parseLooks() looks {
	out := looks{}
	base := template.Must(template.New("frame.html").Funcs(wording).ParseFS(pageFiles, "page/frame.html", "page/parts.html", "page/readings.html", "page/wood.html"))
	names := otherPages[:]
	for _, p := range roomPages() {
		names = append(names, p.name)
	}
	for _, name := range names {
		t := template.Must(base.Clone())
		out[name] = template.Must(t.ParseFS(pageFiles, "page/"+name+".html"))
	}
	for _, name := range []string{"wall", "alone"} { // these are whole pages of their own
		t := template.Must(template.New("").Funcs(wording).ParseFS(pageFiles, "page/"+name+".html", "page/parts.html"))
		out[name] = t.Lookup(name + ".html")
	}
	return out
}

// wording is what templates may do to a text.
var wording = template.FuncMap{"whole": whole}

var fraction = regexp.MustCompile(`(\d-)(\d+/\d)`)

// whole keeps a browser from breaking a line within 15-9/32, where the rest would be read as a figure of its own.
func whole(s string) string { return fraction.ReplaceAllString(s, "$1\u2060$2") }

// frame is what stands round every page.
type frame struct {
	Title    string
	Page     string // the page's name in the address; empty outside a room
	Question string // the question that the page answers
	Answer   string
	Room     *view
	Body     any
	Moved    bool // a hand moves the pattern: the page's script has the page and wants the parts that follow

	Light  string // "light", "dark", or "" as the machine has it
	Units  string // "in", "mm", or "" as the document has it
	Change bool
	Shared bool
	Here   string // the address, to come back to
}

// With, Pairing and Shelves pair the frame with one of its things, for a template of both.
func (f *frame) With(c collection) framed[collection] { return framed[collection]{f, c} }
func (f *frame) Pairing(p pairs) framed[pairs]        { return framed[pairs]{f, p} }
func (f *frame) Shelves(s shelves) framed[shelves]    { return framed[shelves]{f, s} }

type framed[T any] struct {
	Frame *frame
	Of    T
}

// Counts are the numbers of corners that a new room may have.
func (f *frame) Counts() []int {
	var out []int
	for n := fewestCorners; n <= mostCorners; n++ {
		out = append(out, n)
	}
	return out
}

// Keys are those of the keypad, row by row: figures at the left thumb, fractions of an inch at the right.
func (f *frame) Keys() []string {
	return []string{"7", "8", "9", "1/16", "1/8", "3/16", "1/4", "4", "5", "6", "5/16", "3/8", "7/16", "1/2",
		"1", "2", "3", "9/16", "5/8", "11/16", "3/4", "back", "0", "next", "13/16", "7/8", "15/16", "ft", "-", ".", "mm", "letters"}
}

// show sends a page.
func (s *Server) show(w http.ResponseWriter, r *http.Request, name string, status int, f *frame) error {
	b, err := s.written(r, name, f)
	if err != nil {
		return err
	}
	return sendPage(w, r, status, b)
}

// written is a page as a browser gets it. What it takes from the request beside its address is in pageKey.
func (s *Server) written(r *http.Request, name string, f *frame) ([]byte, error) {
	f.Light, f.Units = cookie(r, "dryfit-light", "light", "dark"), cookie(r, "dryfit-units", "in", "mm")
	f.Change, f.Shared, f.Here = mayChange(r), s.share != nil, here(r)
	var b bytes.Buffer
	look := s.look[name]
	if f.Moved {
		look = look.Lookup("moved")
	}
	err := look.Execute(&b, f)
	return b.Bytes(), err
}

func sendPage(w http.ResponseWriter, r *http.Request, status int, b []byte) error {
	w.Header().Set("Cache-Control", "no-store")
	return send(w, r, "text/html; charset=utf-8", status, b)
}

// here is the address of the page that a request is about: that of the page itself, or the one that a form names.
func here(r *http.Request) string {
	if r.Method == http.MethodGet {
		return r.URL.RequestURI()
	}
	return local(r.PostFormValue("back"))
}

// local lets an address within this server through and turns any other into the list of rooms.
func local(address string) string {
	if strings.HasPrefix(address, "/") && !strings.HasPrefix(address, "//") && !strings.ContainsAny(address, "\\\r\n") {
		return address
	}
	return "/"
}

// send writes bytes, packed where they go over a network to a browser that can unpack them; within this machine packing
// takes longer than it saves.
func send(w http.ResponseWriter, r *http.Request, kind string, status int, b []byte) error {
	w.Header().Set("Content-Type", kind)
	w.Header().Add("Vary", "Accept-Encoding")
	if !strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") || len(b) < 1000 || atThisMachine(r) {
		w.WriteHeader(status)
		_, err := w.Write(b)
		return gone(err)
	}
	w.Header().Set("Content-Encoding", "gzip")
	w.WriteHeader(status)
	z := gzip.NewWriter(w)
	if _, err := z.Write(b); err != nil {
		return gone(err)
	}
	return gone(z.Close())
}

// gone forgets an error of writing an answer: its reader has gone away, and nobody can be told.
func gone(error) error { return nil }

// cookie reads a choice of how to show; anything but the words allowed is none.
func cookie(r *http.Request, name string, allowed ...string) string {
	c, err := r.Cookie(name)
	if err != nil {
		return ""
	}
	for _, a := range allowed {
		if c.Value == a {
			return a
		}
	}
	return ""
}

// setLook keeps how this browser is to show things.
func (s *Server) setLook(w http.ResponseWriter, r *http.Request) error {
	for _, name := range []string{"light", "units"} {
		if value := r.PostFormValue(name); value != "" {
			http.SetCookie(w, &http.Cookie{Name: "dryfit-" + name, Value: value, Path: "/", SameSite: http.SameSiteLaxMode, HttpOnly: true, MaxAge: 365 * 24 * 3600})
		}
	}
	http.Redirect(w, r, local(r.PostFormValue("back")), http.StatusSeeOther)
	return nil
}

// styleFor is how lengths are shown: as the browser chose, else as the document has it.
func styleFor(r *http.Request, own unit.Style) unit.Style {
	switch cookie(r, "dryfit-units", "in", "mm") {
	case own.System.String(), "":
		return own
	case "mm":
		return unit.DefaultStyle(unit.Millimetres)
	}
	return unit.DefaultStyle(unit.Inches)
}

func capital(s string) string {
	first, width := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(first)) + s[width:]
}
