package web

import (
	"net/http"
	"net/http/httptest"
	"regexp"
	"testing"
)

// What a page makes a browser load at once, packed, is at most 300 kB, its typeface with it. Drawings further down are
// loaded when they come into sight.
func TestPageWeight(t *testing.T) {
	share := NewShare("http://192.0.2.7:80")
	s := open(t, share)
	loads := regexp.MustCompile(`(?:href|src)="(/static/[a-z.]+)"`)
	for _, page := range everyPage() {
		total := s.weight(page, share.Change) + s.weight("/static/letters.ttf", share.Change)
		for _, m := range loads.FindAllStringSubmatch(s.get(page), -1) {
			total += s.weight(m[1], share.Change)
		}
		if total > 300_000 {
			t.Errorf("%s weighs %d bytes", page, total)
		}
	}
}

// weight is that of what goes over the network to another device.
func (s *site) weight(path, secret string) int {
	s.Helper()
	r := httptest.NewRequest("GET", "http://192.0.2.7:80"+path, nil)
	r.RemoteAddr = "192.0.2.8:5000"
	r.AddCookie(&http.Cookie{Name: pass, Value: secret})
	r.Header.Set("Accept-Encoding", "gzip")
	w := s.send(r)
	if w.Code != 200 {
		s.Fatalf("%s: %d", path, w.Code)
	}
	return w.Body.Len()
}
