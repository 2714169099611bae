package web

import (
	"regexp"
	"testing"
)

// What a page makes a browser load at once, packed, is at most 300 kB, its typeface with it. Drawings further down are
// loaded when they come into sight.
func TestPageWeight(t *testing.T) {
	s := open(t, NewShare("http://192.0.2.7:80"))
	loads := regexp.MustCompile(`(?:href|src)="(/static/[a-z.]+)"`)
	for _, page := range everyPage() {
		total := s.weight(page) + s.weight("/static/letters.ttf")
		for _, m := range loads.FindAllStringSubmatch(s.get(page), -1) {
			total += s.weight(m[1])
		}
		if total > 300_000 {
			t.Errorf("%s weighs %d bytes", page, total)
		}
	}
}

func (s *site) weight(path string) int {
	s.Helper()
	r := newGet(path)
	r.Header.Set("Accept-Encoding", "gzip")
	w := s.send(r)
	if w.Code != 200 {
		s.Fatalf("%s: %d", path, w.Code)
	}
	return w.Body.Len()
}
