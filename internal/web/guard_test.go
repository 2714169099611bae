package web

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
)

// request is one line of the table: who asks, by which name, with which pass, for what.
type request struct {
	from, host, pass, method, path, origin string
	want                                   int
}

func (q request) send(s *site) int {
	r := httptest.NewRequest(q.method, "http://"+q.host+q.path, strings.NewReader(url.Values{"name": {"x"}, "units": {"in"}, "corners": {"4"}}.Encode()))
	r.RemoteAddr = q.from + ":4444"
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	if q.pass != "" {
		r.AddCookie(&http.Cookie{Name: pass, Value: q.pass})
	}
	if q.origin != "" {
		r.Header.Set("Origin", q.origin)
		r.Header.Set("Sec-Fetch-Site", "cross-site")
	}
	w := httptest.NewRecorder()
	s.http.ServeHTTP(w, r)
	return w.Code
}

// Addresses are those that RFC 5737 keeps for documents.
func TestWhoMayAskWhat(t *testing.T) {
	share := NewShare("http://192.0.2.7:80")
	for name, c := range map[string]struct {
		share *Share
		asks  []request
	}{
		"this machine alone": {nil, []request{
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/", "", 200},
			{"127.0.0.1", "localhost:80", "", "GET", "/", "", 200},
			{"127.0.0.1", "[::1]:80", "", "GET", "/", "", 200},
			{"127.0.0.1", "rooms.example:80", "", "GET", "/", "", 421},       // a name of another site that points here
			{"127.0.0.1", "localhost.example:80", "", "GET", "/", "", 421},   // likewise
			{"127.0.0.1", "192.0.2.7:80", "", "GET", "/", "", 421},           // not shared
			{"192.0.2.9", "127.0.0.1:80", "", "GET", "/room/1/cut", "", 403}, // says it is here and is not
			{"127.0.0.1", "127.0.0.1:80", "", "POST", "/rooms", "http://rooms.example", 403},
			{"127.0.0.1", "127.0.0.1:80", "", "POST", "/rooms", "", 303},
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/static/..%2fweb.go", "", 404},
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/room/1/get/..%2f..%2fetc", "", 404},
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/room/x/measure", "", 404},
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/room/99/measure", "", 404},
			{"127.0.0.1", "127.0.0.1:80", "", "GET", "/s/" + share.Change, "", 403},
		}},
		"shared": {share, []request{
			{"192.0.2.9", "192.0.2.7:80", "", "GET", "/", "", 403},
			{"192.0.2.9", "192.0.2.7:80", "guess", "GET", "/", "", 403},
			{"192.0.2.9", "192.0.2.7:80", share.Look, "GET", "/", "", 200},
			{"192.0.2.9", "192.0.2.7:80", share.Look, "GET", "/share", "", 403},
			{"192.0.2.9", "192.0.2.7:80", share.Look, "POST", "/rooms", "", 403},
			{"192.0.2.9", "192.0.2.7:80", share.Look, "POST", "/room/1/undo", "", 403},
			{"192.0.2.9", "192.0.2.7:80", share.Change, "POST", "/rooms", "", 303},
			{"192.0.2.9", "192.0.2.7:80", "", "GET", "/s/" + share.Look, "", 303},
			{"192.0.2.9", "192.0.2.7:80", "", "GET", "/s/guess", "", 403},
			{"192.0.2.9", "rooms.example", share.Change, "GET", "/", "", 421},
			{"192.0.2.9", "localhost", "", "GET", "/", "", 403}, // claims this machine's name from another
		}},
	} {
		s := open(t, c.share)
		for _, q := range c.asks {
			if got := q.send(s); got != q.want {
				t.Errorf("%s: %+v: %d", name, q, got)
			}
		}
	}
}

func TestPolicyForbidsInlineScript(t *testing.T) {
	w := open(t, nil).ask("GET", "/", nil)
	p := w.Header().Get("Content-Security-Policy")
	has(t, p, "default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
	if strings.Contains(p, "unsafe") {
		t.Errorf("the policy of pages: %s", p)
	}
}

func TestTooMuchIsRefused(t *testing.T) {
	s := open(t, nil)
	w := s.post("/room/1/source", "text", strings.Repeat("x", maxBody+1))
	if w.Code != http.StatusRequestEntityTooLarge {
		t.Errorf("a document beyond all bounds: %d", w.Code)
	}
}

// A name is shown as it was typed, whatever it holds.
func TestHostileNames(t *testing.T) {
	s := open(t, nil)
	for _, name := range []string{`<script>alert(1)</script>`, `"><img src=x>`, `{{.}}`, `a: b # c`, "Ünïcode 🛁", `'`, `</script><b>`} {
		w := s.post("/rooms", "name", name, "units", "mm", "corners", "5")
		if w.Code != 303 {
			t.Fatalf("%q: %d %s", name, w.Code, w.Body)
		}
		page := s.get(w.Header().Get("Location"))
		if strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") || strings.Contains(page, "<b>") && name == `</script><b>` && strings.Contains(page, `</script><b>`) {
			t.Errorf("%q came through as markup", name)
		}
		has(t, s.get("/"), htmlOf(name))
	}
}
