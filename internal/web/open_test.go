package web

import (
	"context"
	"encoding/json"
	"html/template"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"dryfit/internal/demo"
	"dryfit/internal/store"
)

// site is a server over a fresh data folder with the demo rooms, and a person at the same machine.
type site struct {
	testing.TB
	server *Server
	http   http.Handler
	store  *store.Store
	folder string
}

// plansOfTests are shared by the servers of all tests: most of them ask for the plans of the same two rooms. A benchmark asks for plans of
// its own.
var plansOfTests = &planner{}

var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

func open(t testing.TB, share *Share) *site {
	t.Helper()
	return openIn(t, t.TempDir(), share)
}

func openIn(t testing.TB, folder string, share *Share) *site {
	t.Helper()
	return openWith(t, folder, share, demo.Rooms())
}

// openTiles opens rooms of tile work alone, in which nothing refers to a pipe.
func openTiles(t testing.TB) *site {
	t.Helper()
	rooms := demo.Rooms()
	for i, file := range []string{"testdata/tiles-in.yaml", "testdata/tiles-mm.yaml"} {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		rooms[i].Text = text
	}
	return openWith(t, t.TempDir(), nil, rooms)
}

func openWith(t testing.TB, folder string, share *Share, rooms []demo.Room) *site {
	t.Helper()
	st, err := store.Open(context.Background(), folder, store.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { st.Close() })
	if err := Welcome(context.Background(), st, rooms, noon); err != nil {
		t.Fatal(err)
	}
	s := New(Options{Store: st, Now: func() time.Time { return noon }, Share: share})
	if _, measured := t.(*testing.B); !measured {
		s.plans = plansOfTests
	}
	return &site{t, s, s.Handler(), st, folder}
}

// ask sends a request as the person at this machine.
func (s *site) ask(method, path string, form url.Values) *httptest.ResponseRecorder {
	s.Helper()
	r := httptest.NewRequest(method, "http://127.0.0.1:8080"+path, strings.NewReader(form.Encode()))
	r.RemoteAddr = "127.0.0.1:5000"
	if method == "POST" {
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	}
	w := httptest.NewRecorder()
	s.http.ServeHTTP(w, r)
	return w
}

func (s *site) get(path string) string {
	s.Helper()
	w := s.ask("GET", path, nil)
	if w.Code != 200 {
		s.Fatalf("GET %s: %d\n%s", path, w.Code, w.Body)
	}
	return w.Body.String()
}

func (s *site) post(path string, pairs ...string) *httptest.ResponseRecorder {
	s.Helper()
	form := url.Values{}
	for i := 0; i < len(pairs); i += 2 {
		form.Add(pairs[i], pairs[i+1])
	}
	return s.ask("POST", path, form)
}

func (s *site) head(room store.RoomID) string {
	s.Helper()
	r, err := s.store.Head(context.Background(), room)
	if err != nil {
		s.Fatal(err)
	}
	return string(r.Text)
}

func has(t testing.TB, page string, words ...string) {
	t.Helper()
	for _, w := range words {
		if !strings.Contains(page, w) {
			t.Errorf("the page lacks %q", w)
		}
	}
}

func quoted(s string) string {
	b, err := json.Marshal(s)
	if err != nil {
		panic(err)
	}
	return string(b)
}

func htmlOf(s string) string { return template.HTMLEscapeString(s) }

func newGet(path string) *http.Request {
	r := httptest.NewRequest("GET", "http://127.0.0.1:8080"+path, nil)
	r.RemoteAddr = "127.0.0.1:5000"
	return r
}

func (s *site) send(r *http.Request) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	s.http.ServeHTTP(w, r)
	return w
}

func writeTemp(t *testing.T, b []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "walls.html")
	if err := os.WriteFile(path, b, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}
