package store

import (
	"fmt"
	"strings"
	"testing"
)

func TestSecondProgramIsRefused(t *testing.T) {
	dir := t.TempDir()
	cmd, lines := start(t, "hold", dir)
	for lines.Scan() && lines.Text() != "open" {
	}
	for range 2 { // a refused opener must not loosen the lock
		_, err := Open(t.Context(), dir, Limits{})
		wantKind(t, "while another has it", err, InUse)
	}
	wantKind(t, "restore meanwhile", Restore(t.Context(), backedUp(t), dir, true), InUse)
	cmd.Process.Kill()
	cmd.Wait()
	closed(t, reopen(t, dir))
}

func TestProgramIsRefusedWhileThisOneHasTheFolder(t *testing.T) {
	s := fresh(t)
	_, lines := start(t, "hold", s.dir)
	lines.Scan()
	lines.Scan()
	if want := fmt.Sprint("refused ", InUse); !strings.HasPrefix(lines.Text(), want) {
		t.Errorf("%q, want %q", lines.Text(), want)
	}
}

func TestSecondStoreOfOneProcessIsRefused(t *testing.T) {
	s := fresh(t)
	_, err := Open(t.Context(), s.dir, Limits{})
	wantKind(t, "while open", err, InUse)
	newRoom(t, s, "room") // the first one goes on
	closed(t, s)
	again := reopen(t, s.dir)
	sound(t, again)
}
