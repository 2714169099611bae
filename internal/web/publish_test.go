package web

import (
	"bytes"
	"context"
	"encoding/binary"
	"regexp"
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/store"
)

// What would make a file lead somewhere else or show a photo: elements and styles of HTML; link annotations (ISO 32000-1,
// 12.6.4.7) and JPEG pictures of PDF.
var leads = map[string]*regexp.Regexp{
	"wall.html": regexp.MustCompile(`<a\b|<img\b|<image\b|\bhref="?[^"#]|\b(src|action|srcset|ping)=|@import|url\(["']?[^#"']|https?://[^w]`),
	"book.pdf":  regexp.MustCompile(`/URI\b|/DCTDecode|/Launch\b|/GoToR\b`),
}

// A copy of a plan that is handed on is one of the files of the Book. It is the same to the byte whether or not photos
// are pinned to the room and links to it are shared: nothing of them can be in it.
func TestPublishedCopyLeavesOutPhotosAndLinks(t *testing.T) {
	share := NewShare("http://192.0.2.7:80")
	bare, full := open(t, nil), open(t, share)
	for _, face := range []string{"basin wall", "floor"} {
		if w := full.sendPhotos(face, "", withSegment(jpegOf(t, chart(60, 40)), 0xe1, camera(binary.BigEndian, 1))); w.Code != 303 {
			t.Fatal(w.Code)
		}
	}
	has(t, full.get("/room/1/photos"), "2 photos.", "pipe left of the stud")
	for _, name := range []string{"wall.html", "book.pdf", "pieces.csv", "plan.json"} {
		a, b := bare.ask("GET", "/room/1/get/"+name, nil).Body.Bytes(), full.ask("GET", "/room/1/get/"+name, nil).Body.Bytes()
		if len(a) == 0 || !bytes.Equal(a, b) {
			t.Errorf("%s: %d bytes without photos and links, %d with", name, len(a), len(b))
		}
		if lead := leads[name]; lead != nil && lead.Match(b) {
			t.Errorf("%s leads somewhere or shows a photo: %q", name, lead.Find(b))
		}
		for _, word := range []string{share.Look, share.Change, "pipe left of the stud", "/photos"} {
			if bytes.Contains(b, []byte(word)) {
				t.Errorf("%s has %q in it", name, word)
			}
		}
	}
}

// What was assumed, what the checks say, and the cautions go with it.
func TestPublishedCopyKeepsAssumptionsAndCautions(t *testing.T) {
	s := open(t, nil)
	for _, room := range []struct {
		id   string
		text string
	}{{"1", s.head(1)}, {"2", s.head(2)}} {
		p, err := plan.Make(context.Background(), "room", []byte(room.text), plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		page := s.ask("GET", "/room/"+room.id+"/get/wall.html", nil).Body.String()
		has(t, page, "silica dust", "fitted respirator", "Local codes and licensed trades decide", "Measure before you cut")
		told := 0
		for _, a := range p.Assumed {
			has(t, page, htmlOf(a.Say(p.Style)))
			told++
		}
		for _, f := range p.Findings {
			if f.Class != diag.Note {
				has(t, page, htmlOf(f.Say(p.Style)))
				told++
			}
		}
		if told < 3 || strings.Index(page, "not checked") > strings.Index(page, "<section") {
			t.Errorf("room %s: %d told, or the count of what is not checked stands behind the walls", room.id, told)
		}
	}
}

// A room's document is handed on as it is written; it is the person's own text, and holds no photo either.
func TestDocumentIsHandedOnAsWritten(t *testing.T) {
	s := open(t, nil)
	s.sendPhotos("floor", "", jpegOf(t, chart(9, 9)))
	if got := s.ask("GET", "/room/1/get/room.yaml", nil).Body.String(); got != s.head(store.RoomID(1)) {
		t.Error("the document that is taken away is not the one that is kept")
	}
}
