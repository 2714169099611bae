package store

import (
	"errors"
	"io/fs"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// Kind is what went wrong, as far as the caller must tell it apart: it answers each with one status and one exit code.
type Kind uint8

const (
	Failed   Kind = iota // the machine failed in another way
	NotFound             // no such room, revision or photo
	Binned               // the room is in the bin
	Stale                // the room has moved on since the edit's base; see Conflict
	Reused               // the same client and number came with another request
	Unusable             // the request itself makes no sense: our caller's bug
	TooBig               // more than Limits allow
	InUse                // another program has the data folder
	Busy                 // the database stayed locked by something else
	Newer                // written by a newer version of this program
	Foreign              // a database, but not of this program
	Damaged              // the file cannot be trusted
	ReadOnly             // the folder or file cannot be written
	Full                 // no room left on the disk
	NotEmpty             // the target folder has something in it
)

// Error says a kind in plain words, and with it makes errors.Is(err, store.Full) work.
func (k Kind) Error() string {
	return [...]string{
		Failed:   "it did not work",
		NotFound: "there is no such thing in this data folder",
		Binned:   "this room is in the bin: take it out first",
		Stale:    "the room has been changed meanwhile",
		Reused:   "this request's number has been used for another request",
		Unusable: "the request cannot be stored",
		TooBig:   "it is larger than what is kept here",
		InUse:    "another program is using this data folder: close that one, or choose another folder",
		Busy:     "something else keeps the database locked: try again",
		Newer:    "it was written by a newer version of this program: update the program; nothing was changed",
		Foreign:  "this is not a database of this program; nothing was changed",
		Damaged:  "the database is damaged; nothing was changed. Keep the folder, and restore a backup into a new one",
		ReadOnly: "it cannot be written: see who owns the folder and whether the disk allows writing",
		Full:     "the disk is full: this was not stored, and all that was stored before is kept",
		NotEmpty: "the folder is not empty; nothing was changed",
	}[k]
}

// Error is what every function here returns when it fails.
type Error struct {
	Kind  Kind
	Doing string // what was tried: "store a revision"
	Cause error  // what the machine said; nil where the kind says all
}

func (e *Error) Error() string {
	text := e.Doing + ": " + e.Kind.Error()
	if e.Cause != nil && e.Cause != error(e.Kind) {
		text += " (" + e.Cause.Error() + ")"
	}
	return text
}

func (e *Error) Unwrap() error { return e.Cause }

// Is tells its kind.
func (e *Error) Is(target error) bool { return target == error(e.Kind) }

// KindOf tells the kind of any error of this package; Failed for others.
func KindOf(err error) Kind {
	var e *Error
	if errors.As(err, &e) {
		return e.Kind
	}
	return kindOf(err)
}

// fault gives an error its kind, once; nil stays nil.
func fault(doing string, err error) error {
	var already *Error
	if err == nil || errors.As(err, &already) {
		return err
	}
	return &Error{Kind: kindOf(err), Doing: doing, Cause: err}
}

func kindOf(err error) Kind {
	var k Kind
	var db *sqlite.Error
	var stale *Conflict
	switch {
	case errors.As(err, &k):
		return k
	case errors.As(err, &stale):
		return Stale
	case errors.As(err, &db):
		return kindOfCode(db.Code())
	case diskFull(err):
		return Full
	case errors.Is(err, fs.ErrPermission) || readOnlyDisk(err):
		return ReadOnly
	case errors.Is(err, fs.ErrNotExist):
		return NotFound
	}
	return Failed
}

// kindOfCode reads a result code of SQLite (sqlite.org/rescode.html). The low byte is the primary code.
func kindOfCode(code int) Kind {
	if code == lib.SQLITE_IOERR_SHMSIZE { // the index of the log could not grow
		return Full
	}
	switch code & 0xff {
	case lib.SQLITE_FULL:
		return Full
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED:
		return Busy
	case lib.SQLITE_READONLY, lib.SQLITE_CANTOPEN, lib.SQLITE_PERM:
		return ReadOnly
	case lib.SQLITE_CORRUPT, lib.SQLITE_NOTADB:
		return Damaged
	case lib.SQLITE_TOOBIG:
		return TooBig
	}
	return Failed
}
