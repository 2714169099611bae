package web

import (
	"bytes"
	"context"
	"net/http"
	"os"
	"path/filepath"
	"testing"

	"dryfit/internal/store"
)

// A copy of everything is taken while people work, and holds what was kept until then: documents and photos.
func TestCopyOfEverything(t *testing.T) {
	s := open(t, nil)
	s.sendPhotos("floor", "", jpegOf(t, chart(30, 20)))
	w := s.ask("GET", "/everything.db", nil)
	if w.Code != 200 || w.Header().Get("Content-Disposition") != `attachment; filename="dryfit-rooms.db"` {
		t.Fatalf("%d %v", w.Code, w.Header())
	}
	file, dir := filepath.Join(t.TempDir(), "copy.db"), t.TempDir()
	if err := os.WriteFile(file, w.Body.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	ctx := context.Background()
	if err := store.Restore(ctx, file, dir, false); err != nil {
		t.Fatal(err)
	}
	back, err := store.Open(ctx, dir, store.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	defer back.Close()
	room, err := back.Head(ctx, 1)
	if err != nil || string(room.Text) != s.head(1) {
		t.Errorf("the document in the copy is not the one that was copied: %v", err)
	}
	was := s.photos()[0]
	if p, b, err := back.Photo(ctx, 1, was.ID); err != nil || p != was || !bytes.HasPrefix(b, []byte("\xff\xd8\xff")) {
		t.Errorf("%+v %v", p, err)
	}
}

// It is for the person at the machine: no link opens it, whatever name a browser calls the machine by.
func TestCopyIsNotForLinks(t *testing.T) {
	share := NewShare("http://192.0.2.7:80")
	s := open(t, share)
	for _, q := range []request{
		{"192.0.2.9", "192.0.2.7:80", "", "GET", "/everything.db", "", 403},
		{"192.0.2.9", "192.0.2.7:80", share.Look, "GET", "/everything.db", "", 403},
		{"192.0.2.9", "192.0.2.7:80", share.Change, "GET", "/everything.db", "", 403},
		{"192.0.2.9", "127.0.0.1:80", share.Change, "GET", "/everything.db", "", 403}, // claims to be here
		{"192.0.2.9", "localhost", share.Change, "GET", "/everything.db", "", 403},
		{"127.0.0.1", "localhost", "", "GET", "/everything.db", "", http.StatusOK},
	} {
		if got := q.send(s); got != q.want {
			t.Errorf("%+v: %d", q, got)
		}
	}
}
