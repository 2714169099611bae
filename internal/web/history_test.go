package web

import (
	"strings"
	"testing"
)

func TestUndoRedo(t *testing.T) {
	s := open(t, nil)
	first := s.head(1)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
	second := s.head(1)
	s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", `set:["mark"]`, "1/8")
	third := s.head(1)
	for i, c := range []struct{ do, want string }{
		{"undo", second}, {"undo", first}, {"undo", first}, {"redo", second}, {"redo", third}, {"redo", third}, {"undo", second},
	} {
		if w := s.post("/room/1/"+c.do, "back", "/room/1/measure"); w.Code != 303 || w.Header().Get("Location") != "/room/1/measure" {
			t.Fatalf("step %d: %d to %s", i, w.Code, w.Header().Get("Location"))
		}
		if s.head(1) != c.want {
			t.Errorf("step %d, %s: the document is not what it was", i, c.do)
		}
	}
	has(t, s.get("/room/1/history"), "name: Quarry Row washroom → Attic", "takes back", "the room was made")
	has(t, s.get("/room/1/history?from=1&to=3"), "From 1 to 3", "mark: 1/16 → 1/8")
}

// Each line: two documents and what changed, in the document's words.
func TestChangesInWords(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{"a: 1\n", "a: 1\n", ""},
		{"a: 1\n", "a: 1 # new\n", "comments or layout alone"},
		{"a: 1\n", "a: 2\n", "a: 1 → 2"},
		{"a: {b: 1, c: 2}\n", "a: {b: 1}\n", "a > c: taken out; it was 2"},
		{"a: {b: 1}\n", "a: {b: 1, d: [1, 2]}\n", "a > d: [1, 2] (new)"},
		{"a: {b: 1}\n", "a: [1]\n", "a: {b: 1} → [1]"},
		{"a: 1\nb: 2\n", "b: 3\nc: 4\n", "a: taken out; it was 1 | b: 2 → 3 | c: 4 (new)"},
	} {
		if got := strings.Join(changes([]byte(c.from), []byte(c.to)), " | "); got != c.want {
			t.Errorf("%q to %q: %q, want %q", c.from, c.to, got, c.want)
		}
	}
}

// An address to go back to never leads to another site.
func TestBackStaysHere(t *testing.T) {
	for back, want := range map[string]string{"/room/1/cut?x=1": "/room/1/cut?x=1", "//rooms.example": "/", "http://rooms.example": "/", `/\rooms.example`: "/", "": "/", "/a\r\nb": "/"} {
		if got := local(back); got != want {
			t.Errorf("%q: %q", back, got)
		}
	}
}
