package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"path/filepath"
	"strings"
)

// Check reads the whole database and fails with Damaged and a list of what is wrong. It takes time with the size of the
// photos; opening a folder reads only the database's head.
func (s *Store) Check(ctx context.Context) error {
	return fault("check the database", inspect(ctx, s.reader))
}

// inspect asks SQLite for its own checks, and then holds the rooms to what this package promises.
func inspect(ctx context.Context, db *sql.DB) error {
	var wrong []string
	for _, query := range []string{
		`SELECT integrity_check FROM pragma_integrity_check WHERE integrity_check <> 'ok'`,
		`SELECT "table" || ' row ' || coalesce(rowid, '?') || ' belongs to nothing' FROM pragma_foreign_key_check`,
		`SELECT 'room ' || id || ' has a gap in its revisions' FROM room WHERE head <>
			(SELECT count(*) FROM revision WHERE room = room.id) OR head <> (SELECT max(number) FROM revision WHERE room = room.id)`,
	} {
		found, err := collect(ctx, db, func(row *sql.Rows) (text string, err error) {
			return text, row.Scan(&text)
		}, query)
		if err != nil {
			return err
		}
		wrong = append(wrong, found...)
	}
	if len(wrong) > 0 {
		return &Error{Kind: Damaged, Doing: "check the database", Cause: errors.New(strings.Join(wrong, "; "))}
	}
	return nil
}

// inspectFile checks a file that nobody writes, such as a backup, and leaves it and its folder untouched.
func inspectFile(ctx context.Context, path string) (err error) {
	path, err = filepath.Abs(path)
	if err != nil {
		return err
	}
	db := open(path, forLooking)
	defer func() { err = errors.Join(err, db.Close()) }()
	version, err := recognize(ctx, db)
	if err != nil {
		return err
	}
	texts, err := steps(migrations())
	switch {
	case err != nil:
		return err
	case version == 0:
		return &Error{Kind: Foreign, Doing: "read " + path}
	case version > len(texts):
		return &Error{Kind: Newer, Doing: fmt.Sprintf("read a database of form %d with a program that knows %d", version, len(texts))}
	}
	return inspect(ctx, db)
}
