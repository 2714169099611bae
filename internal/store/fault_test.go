package store

import (
	"errors"
	"fmt"
	"testing"
)

// Every kind has its words, and none says it with another's.
func TestKindsHaveWords(t *testing.T) {
	seen := map[string]Kind{}
	for k := Failed; k <= NotEmpty; k++ {
		said := k.Error()
		if other, twice := seen[said]; twice || said == "" {
			t.Errorf("%d says %q, as %d does", k, said, other)
		}
		seen[said] = k
		wrapped := fmt.Errorf("around: %w", &Error{Kind: k, Doing: "do"})
		if !errors.Is(wrapped, k) || KindOf(wrapped) != k || k != Full && errors.Is(wrapped, Full) {
			t.Errorf("%d is lost in wrapping", k)
		}
	}
}

// Result codes as sqlite.org/rescode.html lists them, in figures: 13 FULL, 4874 IOERR_SHMSIZE, 5 BUSY, 262 LOCKED_SHAREDCACHE,
// 8 READONLY, 1032 READONLY_DBMOVED, 14 CANTOPEN, 11 CORRUPT, 26 NOTADB, 18 TOOBIG, 778 IOERR_WRITE, 1 ERROR, 19 CONSTRAINT.
func TestKindOfResultCodes(t *testing.T) {
	for code, want := range map[int]Kind{
		13: Full, 4874: Full, 5: Busy, 262: Busy, 8: ReadOnly, 1032: ReadOnly, 14: ReadOnly,
		11: Damaged, 26: Damaged, 18: TooBig, 778: Failed, 1: Failed, 19: Failed,
	} {
		if got := kindOfCode(code); got != want {
			t.Errorf("code %d: %q, want %q", code, got.Error(), want.Error())
		}
	}
}

func TestErrorSaysAll(t *testing.T) {
	err := fault("store an edit", errors.New("the cable is out"))
	if got, want := err.Error(), "store an edit: it did not work (the cable is out)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if got, want := fault("open", InUse).Error(), "open: "+InUse.Error(); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	stale := fault("store an edit", &Conflict{Base: 1, Head: Revision{Number: 3}})
	if got, want := stale.Error(), "store an edit: the room has been changed meanwhile (the edit stands on revision 1, and the room is at 3)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if fault("again", err) != err {
		t.Error("given a kind twice")
	}
	if fault("nothing", nil) != nil {
		t.Error("nothing became an error")
	}
}
