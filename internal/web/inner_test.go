package web

import (
	"net/http"
	"strconv"
	"strings"
	"testing"
)

// What stands within a thing has forms of its own: fronts of a cabinet, sizes of a stock, saws among the tools. Each step is one revision.
func TestFormsWithinThings(t *testing.T) {
	s := open(t, nil)
	base := 1
	step := func(back string, pairs ...string) {
		t.Helper()
		w := s.post("/room/1/edit", append([]string{"base", strconv.Itoa(base), "back", back}, pairs...)...)
		if w.Code != http.StatusSeeOther {
			t.Fatalf("%v: %d %s", pairs, w.Code, w.Body)
		}
		base++
	}
	page := s.get("/room/1/cut?enter=cabinets")
	has(t, page, "Fronts of vanity", "Shelves of vanity", "Add front", `name="add" value="[&#34;cabinets&#34;,&#34;vanity&#34;,&#34;fronts&#34;]"`)
	step("/room/1/cut?enter=cabinets", "add", `["cabinets","vanity","fronts"]`, "new.name", "kick panel", "new.kind", "panel", "new.height", "2", "new.pull:edge", "top", "new.pull:length", "4", "new.pull:deep", "1/2")
	has(t, s.head(1), "kick panel: {height: 2, kind: panel, pull: {deep: 1/2, edge: top, length: 4}}")
	step("/room/1/cut?enter=cabinets", `set:["cabinets","vanity","fronts","kick panel","height"]`, "2-1/2")
	has(t, s.head(1), "kick panel: {height: 2-1/2,")
	step("/room/1/cut?enter=cabinets", `rename:["cabinets","vanity","fronts","kick panel"]`, "plinth")
	has(t, s.head(1), "plinth: {height: 2-1/2,")
	step("/room/1/cut?enter=cabinets", "remove", `["cabinets","vanity","fronts","plinth"]`)
	if strings.Contains(s.head(1), "plinth") {
		t.Error("it is still there")
	}
	step("/room/1/cut?enter=stock", "pair", `["stock","oak board","other sizes"]`, "new.at", "120 x 6", "new.off", "74.50")
	has(t, s.head(1), "120 x 6: 74.50")
	has(t, s.get("/room/1/cut?enter=stock"), "Other sizes of oak board", `value="74.50"`)
	step("/room/1/cut?enter=tools+%3E+saws", "add", `["tools","saws"]`, "new.name", "pull saw", "new.kerf", "1/32", "new.cuts", "stick")
	has(t, s.get("/room/1/cut?enter=tools+%3E+saws"), "pull saw")
	w := s.post("/room/1/edit", "base", strconv.Itoa(base), "back", "/room/1/cut?enter=cabinets", "add", `["cabinets","vanity","fronts"]`, "new.name", "odd", "new.kind", "drawer", "new.height", "about 4")
	if w.Code != http.StatusUnprocessableEntity {
		t.Errorf("a height that can not be read: %d", w.Code)
	}
	has(t, w.Body.String(), `value="about 4"`, "write it like one of these")
}
