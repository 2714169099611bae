package store

import (
	"context"
	"database/sql"
	"errors"
	"path/filepath"
)

const lockFile = "in-use.db"

// folderLock keeps a data folder for one program. It is an exclusive transaction, never ended, on an empty SQLite file:
// SQLite locks the same way on every system, the lock also holds between two stores of one process, and the system lets
// go of it when a process dies, however it dies. The file itself may stay; it means nothing.
//
// A network disk that does not keep locks does not keep this one.
type folderLock struct {
	db *sql.DB
	tx *sql.Tx
}

func lockFolder(ctx context.Context, dir string) (*folderLock, error) {
	db := open(filepath.Join(dir, lockFile), forLocking)
	db.SetMaxOpenConns(1)
	err := ctx.Err()
	var tx *sql.Tx
	if err == nil { // the transaction outlives the caller's context, which would end it
		tx, err = db.BeginTx(context.WithoutCancel(ctx), nil)
	}
	if err == nil {
		return &folderLock{db, tx}, nil
	}
	if kindOf(err) == Busy {
		err = &Error{Kind: InUse, Doing: "open the data folder " + dir}
	}
	return nil, errors.Join(err, db.Close())
}

func (l *folderLock) release() error { return errors.Join(l.tx.Rollback(), l.db.Close()) }
