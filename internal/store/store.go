// Package store keeps rooms on disk: every revision of every room document, the ticks made at the wall and the photos
// taken before it was closed up, all in one SQLite file of a data folder.
//
// It takes bytes that its caller has already read and judged, and gives them back unchanged. It knows nothing of what a
// document says: names, faces, addresses and operations are the caller's words.
//
// Rules:
//   - Nothing acknowledged is lost. A call that returns without an error has reached the disk.
//   - Nothing is stored over. A change is a new revision; a change made on an old revision is a [Conflict], which the
//     caller merges; an undo is a new revision that says which one it undoes.
//   - A request that comes twice with the same [Delivery] changes nothing the second time and gets the first answer.
//   - One program at a time has a data folder. A second is refused, and a killed one leaves no trace that must be cleared.
//   - No clock and no random source: times are the caller's, in UTC and kept to the millisecond.
//   - An error has a [Kind], to be tested with errors.Is(err, store.Full), and says in plain words what to do.
package store

import (
	"context"
	"database/sql"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"sync"
	"sync/atomic"

	_ "modernc.org/sqlite" // the driver "sqlite", without cgo
)

// The files of a data folder.
const (
	dataFile      = "rooms.db"
	newFile       = "making.db"    // a database until it is whole; then it is renamed
	restoringFile = "restoring.db" // a whole backup on its way to become rooms.db
	restoringPart = "restoring.part"
)

// Store is an open data folder. It is safe for use by many goroutines.
type Store struct {
	dir    string
	limits Limits
	// SQLite has one writer at a time. A single connection makes writers wait their turn here, in order and under
	// their context, and not by polling a lock.
	writer *sql.DB
	reader *sql.DB
	lock   *folderLock
	feed   *feed
	count  atomic.Int64 // of changes
	ending sync.Once
	ended  error
}

// readers is how many reads go on at once; more only wait for a processor.
const readers = 4

// Open opens the data folder dir and makes it where it is missing. Errors: InUse, Newer, Foreign, Damaged, ReadOnly, Full.
func Open(ctx context.Context, dir string, limits Limits) (*Store, error) {
	const doing = "open the data folder"
	dir, err := filepath.Abs(dir)
	if err != nil {
		return nil, fault(doing, err)
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, fault(doing+" "+dir, err)
	}
	lock, err := lockFolder(ctx, dir)
	if err != nil {
		return nil, fault(doing+" "+dir, err)
	}
	s := &Store{dir: dir, limits: limits.filled(), lock: lock, feed: newFeed()}
	if err := s.connect(ctx); err != nil {
		return nil, fault(doing+" "+dir, errors.Join(err, s.Close()))
	}
	return s, nil
}

// connect opens the database of a locked folder, made or brought up to this program's version first.
func (s *Store) connect(ctx context.Context) error {
	path := filepath.Join(s.dir, dataFile)
	if err := ready(ctx, s.dir, path); err != nil {
		return err
	}
	s.writer = open(path, forWriting)
	s.writer.SetMaxOpenConns(1)
	if err := migrate(ctx, s.writer, migrations()); err != nil {
		return err
	}
	s.reader = open(path, forReading)
	s.reader.SetMaxOpenConns(readers)
	s.reader.SetMaxIdleConns(readers)
	return s.reader.PingContext(ctx)
}

// ready sees that rooms.db is there and is not the husk of one. An empty file is a valid database to SQLite and a lost
// one to a person, so a new one gets its name only when it is whole.
func ready(ctx context.Context, dir, path string) error {
	info, err := os.Stat(path)
	switch {
	case err == nil && info.Size() == 0:
		return &Error{Kind: Damaged, Doing: "read " + dataFile, Cause: errors.New("the file is empty")}
	case err == nil:
		return forget(filepath.Join(dir, restoringFile), filepath.Join(dir, restoringPart)) // a restore that was cut off early
	case !errors.Is(err, fs.ErrNotExist):
		return err
	}
	if there(filepath.Join(dir, restoringFile)) {
		return takeOver(dir) // a restore that was cut off after its copy was whole
	}
	if there(path + "-wal") {
		return &Error{Kind: Damaged, Doing: "read " + dataFile, Cause: errors.New("it is missing, and its " + dataFile + "-wal is there")}
	}
	return makeNew(ctx, filepath.Join(dir, newFile), path)
}

// makeNew makes an empty database under another name and renames it.
func makeNew(ctx context.Context, making, path string) error {
	if err := removeDatabase(making); err != nil {
		return err
	}
	db := open(making, forWriting)
	db.SetMaxOpenConns(1)
	if err := errors.Join(migrate(ctx, db, migrations()), db.Close()); err != nil {
		return err
	}
	if err := os.Chmod(making, 0o600); err != nil { // the files beside it take its mode
		return err
	}
	return moveInto(making, path)
}

// Close ends all subscriptions, waits for the change that is being stored, folds the write-ahead log into the database
// and lets go of the folder. Closing twice is harmless.
func (s *Store) Close() error {
	s.ending.Do(func() {
		s.feed.close()
		s.ended = errors.Join(closeReader(s.reader), closeWriter(s.writer), s.lock.release())
	})
	return s.ended
}

// closeWriter waits for the one connection: sql.DB alone closes what is idle and leaves what is at work to itself.
func closeWriter(db *sql.DB) error {
	if db == nil {
		return nil
	}
	if conn, err := db.Conn(context.Background()); err == nil {
		defer conn.Close() // handed back to a closed sql.DB, which then closes it
	}
	return db.Close()
}

func closeReader(db *sql.DB) error {
	if db == nil {
		return nil
	}
	return db.Close()
}

// change runs fn in one transaction: all of it reaches the disk, or none.
func (s *Store) change(ctx context.Context, doing string, fn func(*sql.Tx) error) error {
	tx, err := s.writer.BeginTx(ctx, nil)
	if err != nil {
		return fault(doing, err)
	}
	defer tx.Rollback() // after a commit this does nothing
	if err := fn(tx); err != nil {
		return fault(doing, err)
	}
	defer s.count.Add(1) // after the commit, and also after one that failed: it may have reached the disk
	return fault(doing, tx.Commit())
}

// Version grows with every change of anything that is kept here, before the change is acknowledged. What was read after one
// Version was asked for holds as long as Version stays; it begins anew when the store is opened.
func (s *Store) Version() int64 { return s.count.Load() }
