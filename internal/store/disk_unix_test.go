//go:build !windows

package store

import (
	"fmt"
	"os"
	"strings"
	"testing"
)

// What the system itself says of a full disk.
func TestSystemsOwnWordForFull(t *testing.T) {
	f, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip("this system has no /dev/full")
	}
	defer f.Close()
	_, err = f.Write([]byte("x"))
	wantKind(t, "write", fault("write", err), Full)
}

func TestReadOnlyFolder(t *testing.T) {
	for what, prepare := range map[string]func(dir string){
		"an empty folder": func(string) {},
		"a data folder":   func(dir string) { s := reopen(t, dir); newRoom(t, s, "room"); closed(t, s) },
	} {
		dir := t.TempDir()
		prepare(dir)
		for _, name := range files(t, dir) {
			if err := os.Chmod(dir+"/"+name, 0o444); err != nil {
				t.Fatal(err)
			}
		}
		if err := os.Chmod(dir, 0o555); err != nil {
			t.Fatal(err)
		}
		before := contents(t, dir)
		wantReadOnly(t, what, dir)
		if after := contents(t, dir); after != before {
			t.Errorf("%s: changed", what)
		}
		if err := os.Chmod(dir, 0o700); err != nil {
			t.Fatal(err)
		}
	}
}

// wantReadOnly opens as someone whom permissions stop: a child without rights where this is root.
func wantReadOnly(t *testing.T, what, dir string) {
	t.Helper()
	if os.Getuid() != 0 {
		_, err := Open(t.Context(), dir, Limits{})
		wantKind(t, what, err, ReadOnly)
		return
	}
	// The test's temporary folders are root's alone; let the child pass through them.
	for parent := dir; strings.Count(parent, "/") > 1; parent = parent[:strings.LastIndex(parent, "/")] {
		if parent != dir {
			os.Chmod(parent, 0o755)
		}
	}
	_, lines := start(t, "nobody", dir)
	lines.Scan()
	lines.Scan()
	if want := fmt.Sprint("refused ", ReadOnly); !strings.HasPrefix(lines.Text(), want) {
		t.Errorf("%s: %q, want %q", what, lines.Text(), want)
	}
}

// A folder that was there before may be open to others on the machine; what is in it is not.
func TestOthersCannotRead(t *testing.T) {
	dir := t.TempDir()
	if err := os.Chmod(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	s := reopen(t, dir)
	newRoom(t, s, "room")
	for _, name := range []string{dataFile, dataFile + "-wal", dataFile + "-shm"} {
		if info, err := os.Stat(dir + "/" + name); err != nil || info.Mode().Perm() != 0o600 {
			t.Errorf("%s: %v %v", name, info.Mode(), err)
		}
	}
	out := t.TempDir() + "/made/by/us"
	closed(t, reopen(t, out))
	if info, err := os.Stat(out); err != nil || info.Mode().Perm() != 0o700 {
		t.Errorf("%v %v", info.Mode(), err)
	}
}
