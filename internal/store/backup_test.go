package store

import (
	"bytes"
	"database/sql"
	"os"
	"path/filepath"
	"slices"
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

func TestRestoreRefuses(t *testing.T) {
	good := backedUp(t)
	full := t.TempDir()
	if err := os.WriteFile(filepath.Join(full, "diary.txt"), []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	wantKind(t, "a folder with something in it", Restore(t.Context(), good, full, false), NotEmpty)
	if got := files(t, full); len(got) != 1 {
		t.Errorf("%v", got)
	}
	for what, c := range map[string]struct {
		spoil func(path string) error
		want  Kind
	}{
		"no backup":         {os.Remove, NotFound},
		"an empty file":     {func(p string) error { return os.Truncate(p, 0) }, Foreign},
		"a cut-off file":    {func(p string) error { return os.Truncate(p, 20_000) }, Damaged},
		"a scratched file":  {func(p string) error { return scratch(p, 4096*3, 4096) }, Damaged},
		"a letter":          {func(p string) error { return os.WriteFile(p, bytes.Repeat([]byte("Dear Sir. "), 500), 0o600) }, Damaged},
		"another program's": {func(p string) error { return alter(p, `PRAGMA application_id = 7`) }, Foreign},
		"a newer form":      {func(p string) error { return alter(p, `PRAGMA user_version = 99`) }, Newer},
		"a file at work":    {func(p string) error { return os.WriteFile(p+"-wal", []byte("log"), 0o600) }, Unusable},
	} {
		bad := filepath.Join(t.TempDir(), "bad.db")
		copyOf(t, good, bad)
		if err := c.spoil(bad); err != nil {
			t.Fatal(err)
		}
		dir := filepath.Join(t.TempDir(), "target")
		wantKind(t, what, Restore(t.Context(), bad, dir, false), c.want)
		if _, err := os.Stat(dir); err == nil {
			t.Errorf("%s: the folder was made", what)
		}
	}
}

func copyOf(t *testing.T, from, to string) {
	t.Helper()
	data, err := os.ReadFile(from)
	if err == nil {
		err = os.WriteFile(to, data, 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
}

// scratch overwrites part of a file.
func scratch(path string, at, n int64) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	defer f.Close()
	_, err = f.WriteAt(bytes.Repeat([]byte{0xA5}, int(n)), at)
	return err
}

// alter runs SQL on a file without this package's own way of opening it.
func alter(path, query string) error {
	db, err := sql.Open("sqlite", path)
	if err != nil {
		return err
	}
	defer db.Close()
	_, err = db.Exec(query)
	return err
}

func TestRestoreOverSetsAside(t *testing.T) {
	good := backedUp(t)
	dir := t.TempDir()
	s := reopen(t, dir)
	newRoom(t, s, "old")
	closed(t, s)
	for range 2 {
		if err := Restore(t.Context(), good, dir, true); err != nil {
			t.Fatal(err)
		}
		holdsBackup(t, dir)
	}
	back := t.TempDir()
	if err := Restore(t.Context(), filepath.Join(dir, "replaced-1.db"), back, false); err != nil {
		t.Fatal(err)
	}
	old := reopen(t, back)
	list, err := old.Rooms(t.Context())
	if got := names(t, list, err); len(got) != 1 || got[0] != "old" {
		t.Errorf("%v", got)
	}
	if _, err := os.Stat(filepath.Join(dir, "replaced-2.db")); err != nil {
		t.Error(err)
	}
}

func TestRestoreOverADamagedDatabase(t *testing.T) {
	good := backedUp(t)
	dir := t.TempDir()
	junk := bytes.Repeat([]byte("junk"), 4000)
	for _, name := range []string{dataFile, dataFile + "-wal"} {
		if err := os.WriteFile(filepath.Join(dir, name), junk, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := Restore(t.Context(), good, dir, true); err != nil {
		t.Fatal(err)
	}
	holdsBackup(t, dir)
	if got, err := os.ReadFile(filepath.Join(dir, "replaced-1.db")); err != nil || !bytes.Equal(got, junk) {
		t.Errorf("the damaged file is not what it was: %d bytes, %v", len(got), err)
	}
}

// A restore can be cut off between any two steps: the old state is there, or the new one is when the folder is opened.
func TestRestoreThatWasCutOff(t *testing.T) {
	good := backedUp(t)
	dir := t.TempDir()
	copyOf(t, good, filepath.Join(dir, restoringFile))
	holdsBackup(t, dir) // the old database had been set aside already
	if got := files(t, dir); len(got) != 2 {
		t.Errorf("%v", got)
	}
	s := reopen(t, t.TempDir())
	newRoom(t, s, "old")
	closed(t, s)
	copyOf(t, good, filepath.Join(s.dir, restoringFile)) // not yet set aside: that restore is forgotten
	copyOf(t, good, filepath.Join(s.dir, restoringPart))
	again := reopen(t, s.dir)
	if got := files(t, s.dir); slices.Contains(got, restoringFile) || slices.Contains(got, restoringPart) {
		t.Errorf("%v", got)
	}
	list, err := again.Rooms(t.Context())
	if got := names(t, list, err); len(got) != 1 || got[0] != "old" {
		t.Errorf("%v", got)
	}
}
