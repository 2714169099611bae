package web

import (
	"strings"
	"testing"
)

func TestBin(t *testing.T) {
	s := open(t, nil)
	if w := s.post("/bin", "in", "1"); w.Code != 303 {
		t.Fatal(w.Code)
	}
	page := s.get("/")
	has(t, page, "In the bin: 1")
	if strings.Contains(page, `href="/room/1/measure"`) {
		t.Error("a binned room is among the rooms")
	}
	if w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "x"); w.Code != 410 {
		t.Errorf("a binned room was changed: %d", w.Code)
	}
	s.post("/bin", "out", "1")
	has(t, s.get("/"), `href="/room/1/measure"`)
	for _, bad := range []string{"99", "x", ""} {
		if w := s.post("/bin", "in", bad); w.Code != 404 && w.Code != 400 {
			t.Errorf("bin %q: %d", bad, w.Code)
		}
	}
}

func TestRoughInCard(t *testing.T) {
	has(t, open(t, nil).get("/room/1/wall"), "Rough-in card", "Holes and boxes", "cold stop", "In the wall: keep holes and screws away", "cold riser")
}
