package store

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"testing"
)

// aged is a closed data folder with enough in it to be damaged.
func aged(t *testing.T) (dir string) {
	t.Helper()
	s := fresh(t)
	room := newRoom(t, s, "room")
	for base := range int64(60) {
		e := next(base + 1)
		e.Text = bytes.Repeat([]byte("reading "), 300)
		appended(t, s, room.ID, e)
	}
	closed(t, s)
	return s.dir
}

// A database that cannot be trusted is refused in plain words and left byte for byte as it was.
func TestDamagedDatabaseIsRefusedAndKept(t *testing.T) {
	for what, c := range map[string]struct {
		spoil func(path string) error
		want  Kind
	}{
		"its head overwritten":      {func(p string) error { return scratch(p, 0, 100) }, Damaged},
		"its schema overwritten":    {func(p string) error { return scratch(p, 100, 200) }, Damaged},
		"emptied":                   {func(p string) error { return os.Truncate(p, 0) }, Damaged},
		"cut to a piece of a page":  {func(p string) error { return os.Truncate(p, 1000) }, Damaged},
		"another file in its place": {func(p string) error { return os.WriteFile(p, bytes.Repeat([]byte("PK\x03\x04"), 999), 0o600) }, Damaged},
		"gone, its log there":       {func(p string) error { return os.Rename(p, p+"-wal") }, Damaged},
		"of a newer program":        {func(p string) error { return alter(p, "PRAGMA user_version = 6") }, Newer},
		"of another program":        {func(p string) error { return alter(p, "PRAGMA application_id = 1") }, Foreign},
	} {
		dir := aged(t)
		if err := c.spoil(filepath.Join(dir, dataFile)); err != nil {
			t.Fatal(err)
		}
		before := contents(t, dir)
		_, err := Open(t.Context(), dir, Limits{})
		wantKind(t, what, err, c.want)
		if after := contents(t, dir); after != before {
			t.Errorf("%s: the folder was changed from %.80q to %.80q", what, before, after)
		}
	}
}

// contents is all files of a folder but the lock, which means nothing.
func contents(t *testing.T, dir string) string {
	t.Helper()
	all := map[string]string{}
	for _, name := range files(t, dir) {
		if name == lockFile {
			continue
		}
		data, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		all[name] = string(data)
	}
	return fmt.Sprint(all)
}

// Damage deep in the file is found by Check, and by reading what is damaged; it is never taken for content.
func TestDamageWithin(t *testing.T) {
	dir := aged(t)
	path := filepath.Join(dir, dataFile)
	info, err := os.Stat(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := scratch(path, 4096*20, info.Size()-4096*20); err != nil {
		t.Fatal(err)
	}
	s := reopen(t, dir)
	wantKind(t, "check", s.Check(t.Context()), Damaged)
	_, err = s.Range(t.Context(), 1, 1, 61)
	wantKind(t, "read all", err, Damaged)
	wantKind(t, "backup", s.Backup(t.Context(), filepath.Join(t.TempDir(), "b.db")), Damaged)
}

// Check holds the rooms to more than SQLite does, and a backup is held to the same before it replaces an older one.
func TestCheckFindsAGap(t *testing.T) {
	for _, query := range []string{
		`DELETE FROM revision WHERE number = 30`,
		`UPDATE room SET head = head + 1`,
		`PRAGMA foreign_keys = 0; INSERT INTO tick (room, address, outline, ticked, late, client, seq, author, at) VALUES (77, '', '', 0, 0, '', 0, '', 0)`,
	} {
		dir := aged(t)
		if err := alter(filepath.Join(dir, dataFile), query); err != nil {
			t.Fatal(err)
		}
		s := reopen(t, dir)
		wantKind(t, query, s.Check(t.Context()), Damaged)
		target := filepath.Join(t.TempDir(), "b.db")
		if err := os.WriteFile(target, []byte("the older one"), 0o600); err != nil {
			t.Fatal(err)
		}
		wantKind(t, query+", backup", s.Backup(t.Context(), target), Damaged)
		wantFile(t, filepath.Dir(target), "b.db", "the older one")
		if got := files(t, filepath.Dir(target)); len(got) != 1 {
			t.Errorf("left behind: %v", got)
		}
		closed(t, s)
	}
}
