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
	has(t, s.get("/room/1/history"), "name: was Quarry Row washroom, now Attic", "takes back", "the room was made")
	has(t, s.get("/room/1/history?from=1&to=3"), "From 1 to 3", "mark: was 1/16, now 1/8")
}

// A person takes back what they saw as the last change. What another has changed meanwhile stays, and is not what is
// taken back.
func TestUndoOfWhatWasSeen(t *testing.T) {
	s := open(t, nil)
	first := s.head(1)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
	has(t, s.get("/room/1/measure"), `name="of" value="2"`)
	s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", `set:["mark"]`, "1/8") // the other person
	for range 2 {                                                                         // twice pressed is once taken back
		if w := s.post("/room/1/undo", "of", "2", "back", "/room/1/measure"); w.Code != 303 {
			t.Fatalf("%d %s", w.Code, w.Body)
		}
		if want := strings.Replace(first, "mark: 1/16", "mark: 1/8", 1); s.head(1) != want {
			t.Errorf("the document is now\n%s", s.head(1))
		}
	}
	has(t, s.get("/room/1/history"), "takes back 2", "name: was Attic, now Quarry Row washroom")
	s.post("/room/1/undo", "back", "/room/1/measure") // now the other person's
	if s.head(1) != first {
		t.Errorf("both taken back, it is\n%s", s.head(1))
	}
}

// What another has changed to something else since is not taken back: both values are shown, and either can be had.
func TestUndoOfWhatWasChangedSince(t *testing.T) {
	s := open(t, nil)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
	s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", `set:["name"]`, "Loft")
	before := s.head(1)
	w := s.post("/room/1/undo", "of", "2", "back", "/room/1/measure")
	if w.Code != 409 || s.head(1) != before {
		t.Fatalf("%d %s", w.Code, s.head(1))
	}
	has(t, w.Body.String(), "Loft", "Quarry Row washroom", "Attic", "Take mine")
}

// A document that was typed whole is told by its values, and one that says nothing new by that.
func TestHistoryInTheDocumentsWords(t *testing.T) {
	s := open(t, nil)
	doc := strings.ReplaceAll(s.head(1), "mark: 1/16", "mark: 1/8")
	s.post("/room/1/source", "base", "1", "text", doc)
	s.post("/room/1/source", "base", "2", "text", "# A note.\n"+doc)
	has(t, s.get("/room/1/history"), "mark: was 1/16, now 1/8", "comments or layout alone")
}

// An address to go back to never leads to another site.
func TestBackStaysHere(t *testing.T) {
	for back, want := range map[string]string{"/room/1/cut?x=1": "/room/1/cut?x=1", "//rooms.example": "/", "http://rooms.example": "/", `/\rooms.example`: "/", "": "/", "/a\r\nb": "/"} {
		if got := local(back); got != want {
			t.Errorf("%q: %q", back, got)
		}
	}
}
