package store

import (
	"bytes"
	"os"
	"path/filepath"
	"sync"
	"testing"
)

// backedUp is a backup of a store with a room "kept", three revisions, a tick and a photo.
func backedUp(t *testing.T) (path string) {
	t.Helper()
	s := fresh(t)
	room := newRoom(t, s, "kept")
	appended(t, s, room.ID, next(1))
	e := next(2)
	e.Name = "kept"
	appended(t, s, room.ID, e)
	tick(t, s, room.ID, Tick{Address: "a", Ticked: true, At: noon})
	addPhoto(t, s, room.ID, snapshot("wall A", 1))
	path = filepath.Join(t.TempDir(), "backup.db")
	if err := s.Backup(t.Context(), path); err != nil {
		t.Fatal(err)
	}
	closed(t, s)
	return path
}

// holdsBackup checks that a data folder holds what backedUp wrote.
func holdsBackup(t *testing.T, dir string) {
	t.Helper()
	s := reopen(t, dir)
	defer closed(t, s)
	sound(t, s)
	rooms, err := s.Rooms(t.Context())
	if got := names(t, rooms, err); len(got) != 1 || got[0] != "kept" {
		t.Fatalf("%v", got)
	}
	all, err := s.Range(t.Context(), rooms[0].ID, 1, 9)
	if err != nil || len(all) != 3 || !bytes.Equal(all[2].Text, text(3)) {
		t.Errorf("%v %v", numbers(all), err)
	}
	if ticks, err := s.Ticks(t.Context(), rooms[0].ID); err != nil || len(ticks) != 1 || !ticks[0].Ticked {
		t.Errorf("%v %v", ticks, err)
	}
	photos, err := s.Photos(t.Context(), rooms[0].ID)
	if err != nil || len(photos) != 1 {
		t.Fatalf("%v %v", photos, err)
	}
	if _, data, err := s.Photo(t.Context(), rooms[0].ID, photos[0].ID); err != nil || !bytes.Equal(data, snapshot("", 1).Bytes) {
		t.Errorf("%d bytes, %v", len(data), err)
	}
}

func files(t *testing.T, dir string) (list []string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		list = append(list, e.Name())
	}
	return list
}

func TestBackupIsOneFile(t *testing.T) {
	path := backedUp(t)
	if got := files(t, filepath.Dir(path)); len(got) != 1 {
		t.Errorf("%v", got)
	}
	info, err := os.Stat(path)
	if err != nil || info.Mode().Perm()&0o077 != 0 {
		t.Errorf("%v %v: others can read it", info.Mode(), err)
	}
	dir := filepath.Join(t.TempDir(), "new")
	if err := Restore(t.Context(), path, dir, false); err != nil {
		t.Fatal(err)
	}
	holdsBackup(t, dir)
}

// A backup made while writers are at work is one moment of each room.
func TestBackupWhileWriting(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	path := filepath.Join(t.TempDir(), "backup.db")
	var done sync.WaitGroup
	for w := range 4 {
		done.Go(func() {
			base := int64(1)
			for i := range int64(20) {
				base = insist(t, s, room.ID, base, string(rune('a'+w)), i)
			}
		})
	}
	for range 5 {
		if err := s.Backup(t.Context(), path); err != nil { // which checks the copy through
			t.Error(err)
		}
	}
	done.Wait()
	if err := s.Backup(t.Context(), path); err != nil {
		t.Error(err)
	}
	dir := t.TempDir()
	if err := Restore(t.Context(), path, dir, false); err != nil {
		t.Fatal(err)
	}
	if now, err := reopen(t, dir).Head(t.Context(), room.ID); err != nil || now.Number != 81 {
		t.Errorf("%d %v", now.Number, err)
	}
}

func TestBackupThatFailsKeepsTheOldOne(t *testing.T) {
	s := fresh(t)
	newRoom(t, s, "room")
	wantKind(t, "into the data folder", s.Backup(t.Context(), filepath.Join(s.dir, "rooms.db")), Unusable)
	wantKind(t, "into no folder", s.Backup(t.Context(), filepath.Join(s.dir, "none", "b.db")), NotFound)
	target := filepath.Join(t.TempDir(), "b.db")
	if err := os.MkdirAll(filepath.Join(target, "something"), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := s.Backup(t.Context(), target); err == nil {
		t.Error("a folder was replaced by a backup")
	}
	if got := files(t, filepath.Dir(target)); len(got) != 1 {
		t.Errorf("left behind: %v", got)
	}
}
