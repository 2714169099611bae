package web

import (
	"bytes"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
)

func TestSourceIsKeptAsTyped(t *testing.T) {
	s := open(t, nil)
	typed := strings.Replace(s.head(1), "name: Quarry Row washroom", "name: Attic   # ours", 1)
	w := s.post("/room/1/source", "base", "1", "back", "/room/1/source", "text", strings.ReplaceAll(typed, "\n", "\r\n")) // as browsers send it
	if w.Code != 303 || s.head(1) != typed {
		t.Errorf("%d; kept as typed: %v", w.Code, s.head(1) == typed)
	}
	has(t, s.get("/"), "Attic")
	if w := s.post("/room/1/source", "base", "1", "back", "/room/1/source", "text", s.first(1)+"\n# more\n"); w.Code != 303 || s.head(1) != typed+"\n# more\n" {
		t.Errorf("a comment over an old revision: %d, %s", w.Code, s.head(1))
	}
}

// A document typed over an older revision: values that another has left alone are put into the head. Comments go in too. A clash
// and what could not stand beside the other's change bring both texts, and nothing is kept.
func TestSourceTypedOverAnOlderOne(t *testing.T) {
	for _, c := range []struct {
		old, new string
		code     int
	}{
		{"A-B: 71-7/16", "A-B: 71-1/2", 303},
		{"mark: 1/16", "mark: 1/16", 303}, // nothing but the other's change
		{"name: Quarry Row washroom", "name: Loft", 409},
		{"mark: 1/16", "mark: 1/16 # fine", 303},
		{"units: in", "# feet and inches\nunits: in", 303},
		{"    A-B: 71-7/16", "    A-B: 71-1/2   # twice\n    # more to come", 303},
		{"in: basin wall", "in: no such wall", 409},
		{"units: in", "units: [in", 409},
	} {
		s := open(t, nil)
		was := s.head(1)
		s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["name"]`, "Attic")
		theirs := s.head(1)
		w := s.post("/room/1/source", "base", "1", "back", "/room/1/source", "text", strings.Replace(was, c.old, c.new, 1))
		want := theirs
		if c.code == 303 {
			want = strings.Replace(theirs, c.old, c.new, 1)
		}
		if w.Code != c.code || s.head(1) != want {
			t.Errorf("%s: %d, and the document is\n%s", c.new, w.Code, s.head(1))
		}
		if c.code == 409 {
			has(t, w.Body.String(), "name: Attic", htmlOf(c.new))
		}
	}
}

// A text that is no document is refused with its faults beside its lines, and is still in the form.
func TestBrokenSourceIsNotKept(t *testing.T) {
	s := open(t, nil)
	before := s.head(1)
	for _, bad := range []string{"a: [1, 2\nb: {", "\tname: x\n", "just words", "", "a: &x 1\nb: *x\n", "--- 1\n--- 2\n"} {
		w := s.post("/room/1/source", "base", "1", "back", "/room/1/source", "text", bad)
		if w.Code != http.StatusUnprocessableEntity || s.head(1) != before {
			t.Errorf("%q: %d, kept %v", bad, w.Code, s.head(1) != before)
		}
		has(t, w.Body.String(), "said stop", "\n"+htmlOf(bad))
	}
}

func TestUpload(t *testing.T) {
	s := open(t, nil)
	doc := string(firstDocument("Loft", "mm", 6))
	var body bytes.Buffer
	form := multipart.NewWriter(&body)
	part, err := form.CreateFormFile("file", `..\..\x.yaml`)
	if err != nil {
		t.Fatal(err)
	}
	part.Write([]byte(doc))
	form.Close()
	r := httptest.NewRequest("POST", "http://127.0.0.1/room/2/source", &body)
	r.RemoteAddr = "127.0.0.1:9"
	r.Header.Set("Content-Type", form.FormDataContentType())
	w := httptest.NewRecorder()
	s.http.ServeHTTP(w, r)
	if w.Code != 303 || s.head(2) != doc {
		t.Errorf("%d %s", w.Code, w.Body)
	}
	has(t, s.get("/room/2/measure"), "Nothing is measured yet", "A sketch, not to scale: 12 lines still to tape")
}
