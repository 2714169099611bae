package store

import (
	"fmt"
	"path/filepath"
	"testing"
)

// A full disk, played by a limit of SQLite's own on the number of pages: it fails at the same places with the same code.
func TestFullDisk(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	limitPages(t, s, 60)
	var last int64 = 1
	var err error
	for err == nil {
		e := next(last)
		e.From = Delivery{Client: "phone", Seq: last}
		if _, _, err = s.Append(t.Context(), room.ID, e); err == nil {
			last++
		}
	}
	wantKind(t, fmt.Sprint("after ", last), err, Full)
	large := snapshot("wall A", 1)
	large.Bytes = make([]byte, 1<<20)
	_, err = s.AddPhoto(t.Context(), room.ID, large)
	wantKind(t, "photo", err, Full)
	if now, err := s.Head(t.Context(), room.ID); err != nil || now.Number != last || string(now.Text) != string(text(last)) {
		t.Errorf("head %d %v, want %d", now.Number, err, last)
	}
	sound(t, s)
	limitPages(t, s, 1<<20)
	e := next(last)
	e.From = Delivery{Client: "phone", Seq: last} // the edit that failed was not taken for delivered
	appended(t, s, room.ID, e)
	sound(t, s)
}

func limitPages(t *testing.T, s *Store, n int) {
	t.Helper()
	var got int
	if err := s.writer.QueryRow(fmt.Sprintf(`PRAGMA max_page_count = %d`, n)).Scan(&got); err != nil || got != n {
		t.Fatalf("%d pages, %v", got, err)
	}
}

// Something outside of this program holds the database: a call fails in plain words and can be repeated.
func TestDatabaseLockedFromOutside(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	if _, err := s.writer.Exec(`PRAGMA busy_timeout = 0`); err != nil {
		t.Fatal(err)
	}
	outside := open(filepath.Join(s.dir, dataFile), forWriting)
	defer outside.Close()
	tx, err := outside.Begin()
	if err != nil {
		t.Fatal(err)
	}
	_, _, err = s.Append(t.Context(), room.ID, next(1))
	wantKind(t, "while it is locked", err, Busy)
	if _, err := s.Head(t.Context(), room.ID); err != nil {
		t.Errorf("a reader needs no lock: %v", err)
	}
	if err := tx.Rollback(); err != nil {
		t.Fatal(err)
	}
	appended(t, s, room.ID, next(1))
}
