package web

import (
	"fmt"
	"strings"
	"testing"
)

// From nothing to a wall that is laid, by the forms alone and without a script: 72 x 96 in with both diagonals 120 in
// (3-4-5), a level line 40 in above the floor everywhere and 56 in below the ceiling.
func TestFromNothingToALaidWall(t *testing.T) {
	s := open(t, nil)
	if w := s.post("/rooms", "name", "Attic", "units", "in", "corners", "4"); w.Header().Get("Location") != "/room/3/measure" {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	set := func(pairs ...string) {
		t.Helper()
		w := s.post("/room/3/edit", append([]string{"base", s.revision(3), "back", "/room/3/measure"}, pairs...)...)
		if w.Code != 303 {
			t.Fatalf("%v: %d %s", pairs, w.Code, w.Body)
		}
	}
	for line, reading := range map[string]string{"A-B": "72", "B-C": "96", "C-D": "72", "D-A": "96", "A-C": "120", "B-D": "120"} {
		set(`set:["survey","tape","`+line+`"]`, reading)
	}
	for _, c := range []string{"A", "B", "C", "D"} {
		set(`set:["survey","level line","down","`+c+`"]`, "40", `set:["survey","level line","up","`+c+`"]`, "56")
	}
	has(t, s.get("/room/3/measure"), "they agree with each other", "To scale")
	has(t, s.get("/room/3/layout"), "No tile is laid on any face yet")
	set("add", `["tiles"]`, "new.name", "field tile", "new.size", "12 x 6 x 3/8", "new.kind", "ceramic", "new.joint", "1/8")
	set(`list:["walls","wall AB","build-up"]`, "board 1/2, bed 3/16, tile")
	if w := s.post("/room/3/face", "base", s.revision(3), "face", "wall AB", "tile", "field tile", "bond", "running 1/2"); w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	page := s.get("/room/3/layout?face=wall+AB")
	has(t, page, "whole tiles", "The best few layouts", `data-piece="WA 1-1"`, "Arrow keys move the pattern")
	has(t, s.get("/room/3/cut"), "field tile", "wall AB")
	if strings.Contains(s.head(3), "unknown") {
		t.Errorf("something is still unknown:\n%s", s.head(3))
	}
}

func (s *site) revision(room int64) string {
	s.Helper()
	_, rest, ok := strings.Cut(s.get(fmt.Sprintf("/room/%d/history", room)), `data-head="`)
	if !ok {
		s.Fatal("the page names no revision")
	}
	n, _, _ := strings.Cut(rest, `"`)
	return n
}
