package store

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"
)

func TestMain(m *testing.M) {
	if task := os.Getenv(childTask); task != "" {
		child(task, os.Getenv(childFolder))
		return
	}
	os.Exit(m.Run())
}

// noon is when everything in these tests happens, plus some minutes.
var noon = time.Date(2026, 3, 1, 12, 0, 0, 0, time.UTC)

func minute(n int) time.Time { return noon.Add(time.Duration(n) * time.Minute) }

func fresh(t testing.TB) *Store { return reopen(t, t.TempDir()) }

func reopen(t testing.TB, dir string) *Store {
	t.Helper()
	s, err := Open(t.Context(), dir, Limits{})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Close() })
	return s
}

func closed(t testing.TB, s *Store) {
	t.Helper()
	if err := s.Close(); err != nil {
		t.Fatal(err)
	}
}

func newRoom(t testing.TB, s *Store, name string) Room {
	t.Helper()
	r, err := s.Create(t.Context(), NewRoom{Name: name, Text: text(1), By: "owner", At: noon})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// text is the document of a revision in these tests, so that any revision can be checked alone.
func text(number int64) []byte {
	return fmt.Appendf(nil, "dryfit: 1\nname: room\n# revision %d\n", number)
}

// next is the edit that follows a base.
func next(base int64) Edit {
	return Edit{Base: base, Name: "room", Text: text(base + 1), Ops: []byte(`[{"set":"name"}]`), By: "editor", At: minute(int(base))}
}

func appended(t testing.TB, s *Store, id RoomID, e Edit) Revision {
	t.Helper()
	r, again, err := s.Append(t.Context(), id, e)
	if err != nil || again {
		t.Fatalf("append on %d: again %v, %v", e.Base, again, err)
	}
	return r
}

func sound(t testing.TB, s *Store) {
	t.Helper()
	if err := s.Check(t.Context()); err != nil {
		t.Fatal(err)
	}
}

func wantKind(t testing.TB, what string, err error, want Kind) {
	t.Helper()
	if err == nil || !errors.Is(err, want) || KindOf(err) != want {
		t.Errorf("%s: %v, want %q", what, err, want.Error())
	}
}

// The promises of durability are settings of SQLite: ask it whether it took them.
func TestSettings(t *testing.T) {
	s := fresh(t)
	for query, want := range map[string]string{
		"PRAGMA journal_mode": "wal", "PRAGMA synchronous": "2", "PRAGMA foreign_keys": "1", "PRAGMA busy_timeout": "5000",
		"PRAGMA fullfsync": "1", "PRAGMA application_id": fmt.Sprint(application), "PRAGMA user_version": "5",
	} {
		var got string
		if err := s.writer.QueryRow(query).Scan(&got); err != nil || got != want {
			t.Errorf("%s: %q %v, want %q", query, got, err, want)
		}
	}
	if _, err := s.reader.Exec(`DELETE FROM room`); err == nil {
		t.Error("a reader can write")
	}
}

func TestFolderWithAnyName(t *testing.T) {
	for _, name := range []string{"plain", "with space", "what?now", "half%20", "#1", "a&b=c", "größe ⅜ 🛁", "semi;colon", "'quoted' \"twice\""} {
		dir := filepath.Join(t.TempDir(), name)
		s := reopen(t, dir)
		newRoom(t, s, "room")
		closed(t, s)
		if _, err := os.Stat(filepath.Join(dir, dataFile)); err != nil {
			t.Errorf("%q: %v", name, err)
		}
		again := reopen(t, dir)
		if rooms, err := again.Rooms(t.Context()); err != nil || len(rooms) != 1 {
			t.Errorf("%q: %v %v", name, rooms, err)
		}
		closed(t, again)
	}
}

func TestAddressOfDriveLetter(t *testing.T) {
	// sqlite.org/uri.html: "file:///C:/Documents%20and%20Settings/fred/Desktop/data.db"
	got := address("C:/Documents and Settings/fred/Desktop/data.db", "")
	if want := "file:///C:/Documents%20and%20Settings/fred/Desktop/data.db?"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

func TestClosedStoreLeavesOneFile(t *testing.T) {
	s := fresh(t)
	newRoom(t, s, "room")
	closed(t, s)
	for _, end := range []string{"-wal", "-shm"} {
		if _, err := os.Stat(filepath.Join(s.dir, dataFile+end)); err == nil {
			t.Errorf("%s is still there", end)
		}
	}
	_, err := s.Rooms(t.Context())
	wantKind(t, "after closing", err, Failed)
}

func TestCanceledContext(t *testing.T) {
	s := fresh(t)
	r := newRoom(t, s, "room")
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if _, _, err := s.Append(ctx, r.ID, next(1)); !errors.Is(err, context.Canceled) {
		t.Errorf("%v", err)
	}
	appended(t, s, r.ID, next(1)) // the connection is not spoiled by it
	if _, err := Open(ctx, t.TempDir(), Limits{}); !errors.Is(err, context.Canceled) {
		t.Errorf("%v", err)
	}
}

// Close waits for the change that is being stored, and only then lets another program in.
func TestCloseWaitsForTheWriter(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	told, _ := s.Subscribe(room.ID)
	tx, err := s.writer.Begin()
	if err != nil {
		t.Fatal(err)
	}
	over := make(chan error)
	go func() { over <- s.Close() }()
	<-told // closed: Close is at work
	_, err = Open(t.Context(), s.dir, Limits{})
	wantKind(t, "while a change is being stored", err, InUse)
	if _, _, err := appendIn(t.Context(), tx, room.ID, next(1)); err != nil {
		t.Fatal(err)
	}
	if err := errors.Join(tx.Commit(), <-over, s.Close()); err != nil {
		t.Fatal(err)
	}
	if now, err := reopen(t, s.dir).Head(t.Context(), room.ID); err != nil || now.Number != 2 {
		t.Errorf("%d %v", now.Number, err)
	}
}
