package store

import (
	"bytes"
	"database/sql"
	"os"
	"path/filepath"
	"testing"
)

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
	if err := Restore(t.Context(), filepath.Join(dir, "replaced-1", dataFile), back, false); err != nil {
		t.Fatal(err)
	}
	old := reopen(t, back)
	list, err := old.Rooms(t.Context())
	if got := names(t, list, err); len(got) != 1 || got[0] != "old" {
		t.Errorf("%v", got)
	}
	if _, err := os.Stat(filepath.Join(dir, "replaced-2", dataFile)); err != nil {
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
	for _, name := range []string{dataFile, dataFile + "-wal"} {
		if got, err := os.ReadFile(filepath.Join(dir, "replaced-1", name)); err != nil || !bytes.Equal(got, junk) {
			t.Errorf("%s is not what it was: %d bytes, %v", name, len(got), err)
		}
	}
}

// A database whose program was killed has edits in its log alone. They go aside with it, and that folder opens.
func TestRestoreOverAKilledOne(t *testing.T) {
	good := backedUp(t)
	dir := t.TempDir()
	last := writeAndKill(t, dir, 5)
	if !there(filepath.Join(dir, dataFile+"-wal")) {
		t.Fatal("the killed program has left no log")
	}
	if err := Restore(t.Context(), good, dir, true); err != nil {
		t.Fatal(err)
	}
	holdsBackup(t, dir)
	inspectKilled(t, filepath.Join(dir, "replaced-1"), last)
}

// A restore can be cut off between any two steps: it is played up to there, and the folder opened.
func TestRestoreThatWasCutOff(t *testing.T) {
	good := backedUp(t)
	for n := range len(databaseEnds) + 1 { // how many of the old files had been moved
		dir := t.TempDir()
		last := writeAndKill(t, dir, 5)
		copyOf(t, good, filepath.Join(dir, restoringFile))
		copyOf(t, good, filepath.Join(dir, restoringPart))
		aside := filepath.Join(dir, "replaced-1")
		for _, end := range databaseEnds[:n] {
			move(t, filepath.Join(dir, dataFile+end), filepath.Join(aside, dataFile+end))
		}
		if n == 0 {
			inspectKilled(t, dir, last)
		} else {
			holdsBackup(t, dir)
			inspectKilled(t, aside, last)
		}
		if there(filepath.Join(dir, restoringFile)) || there(filepath.Join(dir, restoringPart)) || there(filepath.Join(dir, "replaced-2")) {
			t.Errorf("after %d: left behind: %v", n, files(t, dir))
		}
	}
}

// move renames a file that may not be there.
func move(t *testing.T, from, to string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(to), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.Rename(from, to); err != nil && there(from) {
		t.Fatal(err)
	}
}

func TestHolds(t *testing.T) {
	dir := t.TempDir()
	if Holds(dir) || Holds(filepath.Join(dir, "missing")) {
		t.Error("an empty folder and a missing one hold nothing")
	}
	closed(t, reopen(t, dir))
	if !Holds(dir) {
		t.Error("a data folder holds something")
	}
}
