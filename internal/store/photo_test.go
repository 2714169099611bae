package store

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"strings"
	"testing"
)

// snapshot is a photo; its bytes are told apart by n. The store does not look into them.
func snapshot(face string, n byte) NewPhoto {
	return NewPhoto{Face: face, Media: "image/jpeg", Width: 40, Height: 30, Bytes: bytes.Repeat([]byte{n}, 3000), By: "editor", At: minute(int(n))}
}

func addPhoto(t testing.TB, s *Store, id RoomID, n NewPhoto) Photo {
	t.Helper()
	p, err := s.AddPhoto(t.Context(), id, n)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestPhotos(t *testing.T) {
	s := fresh(t)
	room, other := newRoom(t, s, "room"), newRoom(t, s, "other")
	b := addPhoto(t, s, room.ID, snapshot("wall B", 1))
	a := addPhoto(t, s, room.ID, snapshot("wall A", 2))
	want := Photo{ID: a.ID, Face: "wall A", Media: "image/jpeg", Size: 3000, Width: 40, Height: 30,
		SHA: sha256.Sum256(bytes.Repeat([]byte{2}, 3000)), By: "editor", At: minute(2)}
	if a != want {
		t.Errorf("%+v, want %+v", a, want)
	}
	list, err := s.Photos(t.Context(), room.ID)
	if err != nil || fmt.Sprint(list) != fmt.Sprint([]Photo{a, b}) {
		t.Errorf("%+v %v", list, err)
	}
	got, data, err := s.Photo(t.Context(), room.ID, b.ID)
	if err != nil || got != b || !bytes.Equal(data, snapshot("", 1).Bytes) {
		t.Errorf("%+v %d bytes, %v", got, len(data), err)
	}
	_, _, err = s.Photo(t.Context(), other.ID, b.ID)
	wantKind(t, "through another room", err, NotFound)
	wantKind(t, "remove through another room", s.RemovePhoto(t.Context(), other.ID, b.ID), NotFound)
}

func TestSamePictureIsKeptOnce(t *testing.T) {
	s := fresh(t)
	room, other := newRoom(t, s, "room"), newRoom(t, s, "other")
	first := addPhoto(t, s, room.ID, snapshot("wall A", 1))
	if again := addPhoto(t, s, room.ID, snapshot("wall A", 1)); again != first {
		t.Errorf("%+v, want %+v", again, first)
	}
	second := addPhoto(t, s, room.ID, snapshot("wall B", 1))
	third := addPhoto(t, s, other.ID, snapshot("wall A", 1))
	if p, b := count(t, s, "photo"), count(t, s, "picture"); p != 3 || b != 1 {
		t.Errorf("%d photos of %d pictures", p, b)
	}
	for i, gone := range []struct {
		room  RoomID
		photo int64
		left  int
	}{{room.ID, first.ID, 1}, {room.ID, second.ID, 1}, {other.ID, third.ID, 0}} {
		if err := s.RemovePhoto(t.Context(), gone.room, gone.photo); err != nil {
			t.Fatal(err)
		}
		if left := count(t, s, "picture"); left != gone.left {
			t.Errorf("%d pictures left after %d removals, want %d", left, i+1, gone.left)
		}
	}
}

func TestPhotoDeliveredTwice(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	n := snapshot("wall A", 1)
	n.From = Delivery{Client: "phone", Seq: 1, Body: n.Bytes}
	first := addPhoto(t, s, room.ID, n)
	if err := s.MovePhoto(t.Context(), room.ID, first.ID, "wall B"); err != nil {
		t.Fatal(err)
	}
	if again := addPhoto(t, s, room.ID, n); again.ID != first.ID || again.Face != "wall B" {
		t.Errorf("a repeat pinned it anew: %+v", again)
	}
	if err := s.RemovePhoto(t.Context(), room.ID, first.ID); err != nil {
		t.Fatal(err)
	}
	_, err := s.AddPhoto(t.Context(), room.ID, n)
	wantKind(t, "a repeat does not bring back what was removed", err, NotFound)
}

func TestMoveOntoTheSamePicture(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	a, b := addPhoto(t, s, room.ID, snapshot("wall A", 1)), addPhoto(t, s, room.ID, snapshot("wall B", 1))
	if err := s.MovePhoto(t.Context(), room.ID, a.ID, "wall B"); err != nil {
		t.Fatal(err)
	}
	if _, data, err := s.Photo(t.Context(), room.ID, a.ID); err != nil || len(data) != 3000 {
		t.Errorf("%d bytes, %v", len(data), err)
	}
	_, _, err := s.Photo(t.Context(), room.ID, b.ID)
	wantKind(t, "the one that was there", err, NotFound)
	sound(t, s)
}

func TestUnusablePhotos(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	for what, spoil := range map[string]func(*NewPhoto){
		"no bytes":   func(n *NewPhoto) { n.Bytes = nil },
		"no face":    func(n *NewPhoto) { n.Face = "" },
		"no width":   func(n *NewPhoto) { n.Width = 0 },
		"a web page": func(n *NewPhoto) { n.Media = "text/html" },
	} {
		n := snapshot("wall A", 1)
		spoil(&n)
		_, err := s.AddPhoto(t.Context(), room.ID, n)
		wantKind(t, what, err, Unusable)
	}
	wantKind(t, "move to nowhere", s.MovePhoto(t.Context(), room.ID, 1, ""), Unusable)
	wantKind(t, "move what is not there", s.MovePhoto(t.Context(), room.ID, 1, "wall A"), NotFound)
	_, err := s.AddPhoto(t.Context(), 99, snapshot("wall A", 1))
	wantKind(t, "no such room", err, NotFound)
}

func TestNotes(t *testing.T) {
	s := fresh(t)
	room, other := newRoom(t, s, "room"), newRoom(t, s, "other")
	n := snapshot("wall A", 1)
	n.Note = "the pipe is left of the stud"
	p := addPhoto(t, s, room.ID, n)
	if p.Note != n.Note {
		t.Errorf("noted %q", p.Note)
	}
	for _, note := range []string{"the pipe is right of it\n<b>", ""} {
		if err := s.NotePhoto(t.Context(), room.ID, p.ID, note); err != nil {
			t.Fatal(err)
		}
		if got, _, err := s.Photo(t.Context(), room.ID, p.ID); err != nil || got.Note != note {
			t.Errorf("%q %v, want %q", got.Note, err, note)
		}
	}
	wantKind(t, "through another room", s.NotePhoto(t.Context(), other.ID, p.ID, "x"), NotFound)
	wantKind(t, "a book", s.NotePhoto(t.Context(), room.ID, p.ID, strings.Repeat("x", 1001)), TooBig)
}
