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
	if w := s.post("/room/1/source", "base", "1", "back", "/room/1/source", "text", typed+"\n# more\n"); w.Code != http.StatusConflict || s.head(1) != typed {
		t.Errorf("a text on an old revision: %d", w.Code)
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
