package store

import (
	"slices"
	"strings"
	"testing"
)

func names(t *testing.T, list []Room, err error) (n []string) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range list {
		n = append(n, r.Name)
	}
	return n
}

func TestRoomsLastChangedFirst(t *testing.T) {
	s := fresh(t)
	a := newRoom(t, s, "a")
	newRoom(t, s, "b")
	newRoom(t, s, "a") // names need not differ
	list, err := s.Rooms(t.Context())
	if got := names(t, list, err); !slices.Equal(got, []string{"a", "b", "a"}) {
		t.Errorf("%v", got)
	}
	e := next(1)
	e.Name = "renamed in its document"
	appended(t, s, a.ID, e)
	list, err = s.Rooms(t.Context())
	if got := names(t, list, err); !slices.Equal(got, []string{"renamed in its document", "a", "b"}) {
		t.Errorf("%v", got)
	}
}

func TestCreatedTwice(t *testing.T) {
	s := fresh(t)
	n := NewRoom{Name: "a", Text: text(1), By: "owner", At: noon, From: Delivery{Client: "phone", Seq: 1, Body: []byte("a")}}
	first, err := s.Create(t.Context(), n)
	if err != nil {
		t.Fatal(err)
	}
	if second, err := s.Create(t.Context(), n); err != nil || second != first {
		t.Errorf("%+v %v", second, err)
	}
	n.From.Body = []byte("b")
	_, err = s.Create(t.Context(), n)
	wantKind(t, "another room", err, Reused)
	if list, err := s.Rooms(t.Context()); len(list) != 1 || err != nil {
		t.Errorf("%v %v", list, err)
	}
}

func TestBin(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	e := next(1)
	e.From = Delivery{Client: "phone", Seq: 1}
	appended(t, s, room.ID, e)
	wantKind(t, "purge what is not binned", s.Purge(t.Context(), room.ID), NotFound)
	for range 2 { // the second time changes nothing
		if err := s.PutInBin(t.Context(), room.ID, minute(5)); err != nil {
			t.Fatal(err)
		}
	}
	list, err := s.Rooms(t.Context())
	if got := names(t, list, err); got != nil {
		t.Errorf("still listed: %v", got)
	}
	bin, err := s.Bin(t.Context())
	if names(t, bin, err); len(bin) != 1 || !bin[0].Binned.Equal(minute(5)) {
		t.Errorf("%+v", bin)
	}
	if now, err := s.Head(t.Context(), room.ID); err != nil || now.Number != 2 {
		t.Errorf("a binned room can still be read: %v %v", now.Number, err)
	}
	wantRefusedInBin(t, s, room.ID)
	if _, again, err := s.Append(t.Context(), room.ID, e); err != nil || !again {
		t.Errorf("an edit that was stored before: %v %v", again, err)
	}
	if err := s.TakeOut(t.Context(), room.ID); err != nil {
		t.Fatal(err)
	}
	appended(t, s, room.ID, next(2))
}

func wantRefusedInBin(t *testing.T, s *Store, id RoomID) {
	t.Helper()
	_, _, err := s.Append(t.Context(), id, next(2))
	wantKind(t, "edit", err, Binned)
	_, err = s.Tick(t.Context(), id, Tick{Address: "x"})
	wantKind(t, "tick", err, Binned)
	_, err = s.AddPhoto(t.Context(), id, snapshot("wall A", 1))
	wantKind(t, "photo", err, Binned)
}

func TestPurgeLeavesNothing(t *testing.T) {
	s := fresh(t)
	kept := newRoom(t, s, "kept")
	room := newRoom(t, s, "room")
	e := next(1)
	e.From = Delivery{Client: "phone", Seq: 1}
	appended(t, s, room.ID, e)
	inverse := next(2)
	inverse.Undoes = 2
	appended(t, s, room.ID, inverse)
	tick(t, s, room.ID, Tick{Address: "x", From: Delivery{Client: "phone", Seq: 2}})
	addPhoto(t, s, room.ID, snapshot("wall A", 1))
	addPhoto(t, s, room.ID, snapshot("wall A", 2))
	addPhoto(t, s, kept.ID, snapshot("wall A", 2)) // shared by both rooms
	if err := s.PutInBin(t.Context(), room.ID, noon); err != nil {
		t.Fatal(err)
	}
	if err := s.Purge(t.Context(), room.ID); err != nil {
		t.Fatal(err)
	}
	for table, want := range map[string]int{"room": 1, "revision": 1, "delivery": 0, "tick": 0, "photo": 1, "picture": 1} {
		if got := count(t, s, table); got != want {
			t.Errorf("%d rows of %s left, want %d", got, table, want)
		}
	}
	_, err := s.Room(t.Context(), room.ID)
	wantKind(t, "purged", err, NotFound)
	if again := newRoom(t, s, "later"); again.ID <= room.ID {
		t.Errorf("number %d given again", again.ID)
	}
	sound(t, s)
}

func count(t *testing.T, s *Store, table string) (n int) {
	t.Helper()
	if err := s.reader.QueryRow(`SELECT count(*) FROM ` + table).Scan(&n); err != nil {
		t.Fatal(err)
	}
	return n
}

func TestLimits(t *testing.T) {
	s, err := Open(t.Context(), t.TempDir(), Limits{Text: 100, Word: 5, Path: 6, Photo: 8, Photos: 2, Ticks: 1})
	if err != nil {
		t.Fatal(err)
	}
	defer closed(t, s)
	five := strings.Repeat("⅜", 5) // runes, not bytes
	room, err := s.Create(t.Context(), NewRoom{Name: five, Text: make([]byte, 100), At: noon})
	if err != nil {
		t.Fatal(err)
	}
	_, err = s.Create(t.Context(), NewRoom{Name: five + "x", At: noon})
	wantKind(t, "name", err, TooBig)
	_, err = s.Create(t.Context(), NewRoom{Text: make([]byte, 101), At: noon})
	wantKind(t, "document", err, TooBig)
	e := next(1)
	e.By, e.Ops = "", []byte(`"`+strings.Repeat("x", 100)+`"`)
	_, _, err = s.Append(t.Context(), room.ID, e)
	wantKind(t, "operations", err, TooBig)
	_, err = s.Tick(t.Context(), room.ID, Tick{Address: "x"}, Tick{Address: "y"})
	wantKind(t, "ticks", err, TooBig)
	_, err = s.Tick(t.Context(), room.ID, Tick{Address: "1234567"})
	wantKind(t, "address", err, TooBig)
	n := snapshot("A", 1)
	n.By = ""
	for i, want := range []Kind{0, 0, TooBig} {
		n.Bytes = []byte{byte(i)}
		if _, err = s.AddPhoto(t.Context(), room.ID, n); i < 2 && err != nil || i == 2 && KindOf(err) != want {
			t.Errorf("photo %d: %v", i+1, err)
		}
	}
	n.Bytes = make([]byte, 9)
	_, err = s.AddPhoto(t.Context(), room.ID, n)
	wantKind(t, "photo", err, TooBig)
}
