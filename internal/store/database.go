package store

import (
	"database/sql"
	"errors"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"strings"
)

// use is what a connection is for.
type use string

// Every commit is flushed (synchronous FULL; fullfsync for macOS, where a plain flush stops at the drive's own cache).
// A transaction takes the write lock when it begins, so that it never fails for it half way.
const (
	forWriting use = "_pragma=busy_timeout(5000)&_pragma=journal_mode(WAL)&_pragma=synchronous(FULL)&_pragma=fullfsync(1)" +
		"&_pragma=foreign_keys(1)&_pragma=cell_size_check(1)&_txlock=immediate&_dqs=0&_defensive=1&_error_rc=1"
	forReading use = "_pragma=busy_timeout(5000)&_pragma=cell_size_check(1)&_query_only=1&_dqs=0&_defensive=1&_error_rc=1"
	// VACUUM INTO counts as writing, though it only reads what it copies.
	forCopying use = "_pragma=busy_timeout(5000)&_pragma=cell_size_check(1)&mode=rw&_dqs=0&_defensive=1&_error_rc=1"
	// A backup is one file that nobody writes: immutable reads it without locks and leaves no files beside it.
	forLooking use = "immutable=1&mode=ro&_query_only=1&_dqs=0&_defensive=1&_error_rc=1"
	// The lock's database holds nothing and waits for nobody; a journal beside it would take a full disk's last bytes.
	forLocking use = "_pragma=busy_timeout(0)&_pragma=journal_mode(MEMORY)&_txlock=exclusive&_error_rc=1"
)

// open gives a database by path; nothing is touched before its first use. The only error sql.Open knows is a driver
// that is not linked in.
func open(path string, u use) *sql.DB {
	db, err := sql.Open("sqlite", address(path, u))
	if err != nil {
		panic(err)
	}
	return db
}

// address writes the path as a URI (sqlite.org/uri.html): a '?', '#' or '%' in a folder's name must not end it, and a
// drive letter of Windows follows a slash.
func address(path string, u use) string {
	p := filepath.ToSlash(path)
	if !strings.HasPrefix(p, "/") {
		p = "/" + p
	}
	return "file://" + (&url.URL{Path: p}).EscapedPath() + "?" + string(u)
}

// removeDatabase removes a database and the files beside it; the log first, so that none is ever left without its own.
func removeDatabase(path string) error {
	return forget(path+"-wal", path+"-shm", path+"-journal", path)
}

// forget removes files, in this order, that may not be there.
func forget(paths ...string) error {
	for _, path := range paths {
		if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	return nil
}

// moveInto flushes a whole file and gives it its name; the name changes at once or not at all.
func moveInto(from, to string) error {
	if err := flush(from); err != nil {
		return err
	}
	if err := os.Rename(from, to); err != nil {
		return err
	}
	return syncFolder(filepath.Dir(to))
}

func flush(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
