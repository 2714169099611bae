package store

import (
	"bytes"
	"fmt"
	"path/filepath"
	"testing"
)

// document has the size of a full bathroom's.
var document = bytes.Repeat([]byte("  A-B: 71-3/8   # as read\n"), 400)

func BenchmarkAppend(b *testing.B) {
	s := fresh(b)
	room := newRoom(b, s, "room")
	base := int64(1)
	b.SetBytes(int64(len(document)))
	for b.Loop() {
		e := next(base)
		e.Text = document
		base = appended(b, s, room.ID, e).Number
	}
}

// filled is a store with a room of a thousand revisions.
func filled(b *testing.B) (*Store, RoomID) {
	s := fresh(b)
	room := newRoom(b, s, "room")
	for base := range int64(999) {
		e := next(base + 1)
		e.Text = document
		appended(b, s, room.ID, e)
	}
	return s, room.ID
}

func BenchmarkHead(b *testing.B) {
	s, room := filled(b)
	for b.Loop() {
		if _, err := s.Head(b.Context(), room); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkTrail(b *testing.B) {
	s, room := filled(b)
	for b.Loop() {
		if _, err := s.Trail(b.Context(), room); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkTick(b *testing.B) {
	s, room := filled(b)
	seq := int64(0)
	for b.Loop() {
		seq++
		tick(b, s, room, Tick{Address: fmt.Sprint("wall A > ", seq%300), Ticked: true, From: Delivery{Client: "phone", Seq: seq}})
	}
}

func BenchmarkOpen(b *testing.B) {
	s, _ := filled(b)
	closed(b, s)
	for b.Loop() {
		again, err := Open(b.Context(), s.dir, Limits{})
		if err != nil {
			b.Fatal(err)
		}
		closed(b, again)
	}
}

func BenchmarkBackup(b *testing.B) {
	s, _ := filled(b)
	path := filepath.Join(b.TempDir(), "backup.db")
	for b.Loop() {
		if err := s.Backup(b.Context(), path); err != nil {
			b.Fatal(err)
		}
	}
}
