package store

import (
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// hostile is what a person, or someone who means harm, may call a room, a face or a piece.
var hostile = []string{"../../x", "/etc/passwd", `..\..\x`, "", ".", "CON", "🛁", "a\x00b", "\xff", "a\nb", "<b>&amp;", strings.Repeat("n", 200)}

func TestExport(t *testing.T) {
	s := fresh(t)
	for i, name := range hostile {
		room := newRoom(t, s, name)
		e := next(1)
		e.Name = name
		appended(t, s, room.ID, e)
		tick(t, s, room.ID, Tick{Address: "x" + name, Ticked: true, By: name, At: noon})
		n := snapshot("f"+name, byte(i))
		n.Media = []string{"image/jpeg", "image/png"}[i%2]
		addPhoto(t, s, room.ID, n)
	}
	if err := s.PutInBin(t.Context(), 2, minute(9)); err != nil {
		t.Fatal(err)
	}
	parent := t.TempDir()
	dir := filepath.Join(parent, "out")
	if err := s.Export(t.Context(), dir); err != nil {
		t.Fatal(err)
	}
	if got := files(t, parent); !slices.Equal(got, []string{"out"}) {
		t.Errorf("beside it: %v", got)
	}
	wantPlainNames(t, dir, 1+len(hostile)*7)
	wantIndex(t, dir)
	wantFile(t, dir, "room-0001/room.yaml", string(text(2)))
	wantFile(t, dir, "room-0001/revisions/000001.yaml", string(text(1)))
	wantFile(t, dir, "room-0001/revisions/000002.yaml", string(text(2)))
	wantFile(t, dir, "room-0002/photos/000002.png", string(snapshot("", 1).Bytes))
	// Written by hand from what was stored above.
	wantFile(t, dir, "room-0001/revisions.json", `[
  {
    "number": 1,
    "base": 0,
    "seen": 0,
    "by": "owner",
    "at": "2026-03-01T12:00:00Z",
    "operations": []
  },
  {
    "number": 2,
    "base": 1,
    "seen": 1,
    "by": "editor",
    "at": "2026-03-01T12:01:00Z",
    "operations": [
      {
        "set": "name"
      }
    ]
  }
]
`)
	wantFile(t, dir, "room-0001/ticks.json", `[
  {
    "address": "x../../x",
    "outline": "",
    "ticked": true,
    "by": "../../x",
    "at": "2026-03-01T12:00:00Z"
  }
]
`)
	wantFile(t, dir, "room-0003/photos.json", `[
  {
    "file": "photos/000003.jpg",
    "face": "f..\\..\\x",
    "width": 40,
    "height": 30,
    "by": "editor",
    "at": "2026-03-01T12:02:00Z"
  }
]
`)
}

// wantPlainNames walks an export: every name is ours, and there are as many files as there should be.
func wantPlainNames(t *testing.T, dir string, want int) {
	t.Helper()
	plain := regexp.MustCompile(`^(rooms\.json|room-\d{4}/(room\.yaml|(revisions|ticks|photos)\.json|revisions/\d{6}\.yaml|photos/\d{6}\.(jpg|png)))$`)
	found := 0
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		found++
		rel, err := filepath.Rel(dir, path)
		if !plain.MatchString(filepath.ToSlash(rel)) || !d.Type().IsRegular() {
			t.Errorf("%q", rel)
		}
		return err
	})
	if err != nil || found != want {
		t.Errorf("%d files, want %d; %v", found, want, err)
	}
}

func wantIndex(t *testing.T, dir string) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(dir, "rooms.json"))
	if err != nil {
		t.Fatal(err)
	}
	var index []struct {
		Name, Folder, Binned string
		Head                 int
	}
	if err := json.Unmarshal(data, &index); err != nil || len(index) != len(hostile) {
		t.Fatalf("%d rooms, %v", len(index), err)
	}
	for i, line := range index {
		if want := strings.ToValidUTF8(hostile[i], "\ufffd"); line.Name != want || line.Head != 2 || (line.Binned != "") != (i == 1) {
			t.Errorf("%+v, want %q", line, want)
		}
	}
}

func wantFile(t *testing.T, dir, name, want string) {
	t.Helper()
	got, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
	if err != nil || string(got) != want {
		t.Errorf("%s: %q %v, want %q", name, got, err, want)
	}
}

func TestExportTarget(t *testing.T) {
	s := fresh(t)
	newRoom(t, s, "room")
	parent := t.TempDir()
	empty := filepath.Join(parent, "empty")
	if err := os.Mkdir(empty, 0o700); err != nil {
		t.Fatal(err)
	}
	if err := s.Export(t.Context(), empty); err != nil {
		t.Errorf("into an empty folder: %v", err)
	}
	wantKind(t, "into what it wrote before", s.Export(t.Context(), empty), NotEmpty)
	wantKind(t, "below no folder", s.Export(t.Context(), filepath.Join(parent, "none", "out")), NotFound)
	file := filepath.Join(parent, "file")
	if err := os.WriteFile(file, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := s.Export(t.Context(), file); err == nil {
		t.Error("over a file")
	}
	if got := files(t, parent); !slices.Equal(got, []string{"empty", "file"}) {
		t.Errorf("left behind: %v", got)
	}
	wantFile(t, parent, "file", "mine")
}

func TestExportOfNothing(t *testing.T) {
	s := fresh(t)
	dir := filepath.Join(t.TempDir(), "out")
	if err := s.Export(t.Context(), dir); err != nil {
		t.Fatal(err)
	}
	wantFile(t, dir, "rooms.json", "[]\n")
}
