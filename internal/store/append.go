package store

import (
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"time"
)

// Edit is a change to be stored as a new revision.
type Edit struct {
	Base   int64  // the revision on which Text stands; it must be the head
	Seen   int64  // what the author had seen, where the caller has merged an older change; 0: Base
	Undoes int64  // the revision of which this is the inverse; 0: none
	Name   string // the room's name as Text says it
	Text   []byte
	Ops    []byte // JSON; empty: no operations are known, as for an uploaded document
	By     string
	At     time.Time
	From   Delivery
}

// Conflict says that the room has moved on since the edit's base. It carries the head for the caller to merge with.
type Conflict struct {
	Base int64
	Head Revision
}

func (c *Conflict) Error() string {
	return fmt.Sprintf("the edit stands on revision %d, and the room is at %d", c.Base, c.Head.Number)
}

// Append stores an edit as the next revision; it is the only way in which a document changes. Where the base is not the
// head it stores nothing and fails with Stale and a *Conflict. The same delivery gives the revision that it made before,
// and again is true, whatever has happened since.
func (s *Store) Append(ctx context.Context, id RoomID, e Edit) (r Revision, again bool, err error) {
	const doing = "store an edit"
	if err := e.check(s.limits); err != nil {
		return Revision{}, false, fault(doing, err)
	}
	err = s.change(ctx, doing, func(tx *sql.Tx) (err error) {
		r, again, err = appendIn(ctx, tx, id, e)
		return err
	})
	if err != nil {
		return Revision{}, false, err
	}
	s.feed.tell(id, Change{Head: r.Number})
	return r, again, nil
}

func appendIn(ctx context.Context, tx *sql.Tx, id RoomID, e Edit) (r Revision, again bool, err error) {
	number, again, err := e.From.earlier(ctx, tx, id, madeRevision)
	if err != nil {
		return Revision{}, false, err
	}
	if again {
		r, err := at(ctx, tx, id, number)
		return r, true, err
	}
	room, err := openRoom(ctx, tx, id)
	if err != nil {
		return Revision{}, false, err
	}
	if e.Base != room.Head {
		return Revision{}, false, conflict(ctx, tx, id, e.Base)
	}
	number = room.Head + 1
	if err := insertRevision(ctx, tx, id, number, e); err != nil {
		return Revision{}, false, err
	}
	if err := moveHead(ctx, tx, id, number, e); err != nil {
		return Revision{}, false, err
	}
	r, err = at(ctx, tx, id, number)
	return r, false, err
}

func conflict(ctx context.Context, tx *sql.Tx, id RoomID, base int64) error {
	now, err := head(ctx, tx, id)
	if err != nil {
		return err
	}
	return &Conflict{Base: base, Head: now}
}

func moveHead(ctx context.Context, tx *sql.Tx, id RoomID, number int64, e Edit) error {
	if err := must(tx.ExecContext(ctx, `UPDATE room SET head = ?, name = ?, changed = ? WHERE id = ?`,
		number, e.Name, stamp(e.At), id)); err != nil {
		return err
	}
	return e.From.record(ctx, tx, id, id, madeRevision, number)
}

func insertRevision(ctx context.Context, tx *sql.Tx, id RoomID, number int64, e Edit) error {
	undoes := sql.NullInt64{Int64: e.Undoes, Valid: e.Undoes != 0}
	seen := e.Seen
	if seen == 0 {
		seen = number - 1
	}
	_, err := tx.ExecContext(ctx, `INSERT INTO revision (room, number, seen, undoes, text, ops, author, at)
		VALUES (?, ?, ?, ?, ?, ?, ?, ?)`, id, number, seen, undoes, full(e.Text), opsOf(e.Ops), e.By, stamp(e.At))
	return err
}

// Delivered finds the revision that a request made when it came before, so that a caller need not merge it again.
func (s *Store) Delivered(ctx context.Context, id RoomID, from Delivery) (Revision, bool, error) {
	const doing = "look for an earlier delivery"
	number, found, err := from.earlier(ctx, s.reader, id, madeRevision)
	if err != nil || !found {
		return Revision{}, false, fault(doing, err)
	}
	r, err := at(ctx, s.reader, id, number)
	return r, err == nil, fault(doing, err)
}

// check refuses what is too large and what cannot be: a first revision has no edit before it, and an inverse comes after
// what it undoes.
func (e Edit) check(l Limits) error {
	switch {
	case e.Base < 1 || e.Seen < 0 || e.Seen > e.Base || e.Undoes < 0 || e.Undoes > e.Base || e.Undoes == 1:
		return fmt.Errorf("%w: base %d, seen %d, undoes %d", Unusable, e.Base, e.Seen, e.Undoes)
	case len(e.Ops) > 0 && !json.Valid(e.Ops):
		return fmt.Errorf("%w: the operations are not JSON", Unusable)
	}
	return errors.Join(l.words(e.Name, e.By, e.From.Client), l.text(e.Text), l.text(e.Ops))
}

// full keeps an empty text empty: nil would be stored as unknown.
func full(b []byte) []byte {
	if b == nil {
		return []byte{}
	}
	return b
}

func opsOf(b []byte) []byte {
	if len(b) == 0 {
		return []byte("[]")
	}
	return b
}
