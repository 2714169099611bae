package store

import (
	"context"
	"database/sql"
	"time"
)

// Revision is one state of a room's document and how it came to be. Revisions count from 1 without gaps, and each is
// the one before it with its operations applied.
type Revision struct {
	Room   RoomID
	Number int64
	Seen   int64  // what the author had before their eyes: Number-1, or older where the change was merged; 0 for the first
	Undoes int64  // the revision of which this is the inverse; 0: none
	Text   []byte // the whole document
	Ops    []byte // the operations, JSON as the caller gave them
	By     string // the author's label, such as the role of the link they came by
	At     time.Time
}

// Base is the revision on which this one stands; 0 for the first.
func (r Revision) Base() int64 { return r.Number - 1 }

const (
	revisionColumns = `SELECT room, number, seen, coalesce(undoes, 0), text, ops, author, at FROM revision `
	// The same without the text, for lists.
	outlineColumns = `SELECT room, number, seen, coalesce(undoes, 0), NULL, ops, author, at FROM revision `
)

func scanRevision(row *sql.Rows) (r Revision, err error) {
	var at int64
	err = row.Scan(&r.Room, &r.Number, &r.Seen, &r.Undoes, &r.Text, &r.Ops, &r.By, &at)
	r.At = moment(at)
	return r, err
}

// Head gives the last revision of a room.
func (s *Store) Head(ctx context.Context, id RoomID) (Revision, error) {
	r, err := head(ctx, s.reader, id)
	return r, fault("read a room", err)
}

func head(ctx context.Context, q queryer, id RoomID) (Revision, error) {
	return one(ctx, q, revisionColumns+`WHERE room = ?1 AND number = (SELECT head FROM room WHERE id = ?1)`, id)
}

// At gives one revision of a room.
func (s *Store) At(ctx context.Context, id RoomID, number int64) (Revision, error) {
	r, err := at(ctx, s.reader, id, number)
	return r, fault("read a revision", err)
}

func at(ctx context.Context, q queryer, id RoomID, number int64) (Revision, error) {
	return one(ctx, q, revisionColumns+`WHERE room = ? AND number = ?`, id, number)
}

func one(ctx context.Context, q queryer, query string, args ...any) (Revision, error) {
	list, err := collect(ctx, q, scanRevision, query, args...)
	if err == nil && len(list) == 0 {
		err = NotFound
	}
	if err != nil {
		return Revision{}, err
	}
	return list[0], nil
}

// Range gives the revisions first..last, both included, oldest first, with their texts. What lies outside the room's
// history is left out.
func (s *Store) Range(ctx context.Context, id RoomID, first, last int64) ([]Revision, error) {
	list, err := collect(ctx, s.reader, scanRevision,
		revisionColumns+`WHERE room = ? AND number BETWEEN ? AND ? ORDER BY number`, id, first, last)
	return list, fault("read the history", err)
}

// Log gives up to n revisions before the given one, newest first, without their texts: a page of the history.
func (s *Store) Log(ctx context.Context, id RoomID, before int64, n int) ([]Revision, error) {
	list, err := collect(ctx, s.reader, scanRevision,
		outlineColumns+`WHERE room = ? AND number < ? ORDER BY number DESC LIMIT ?`, id, before, n)
	return list, fault("read the history", err)
}
