package store

import (
	"context"
	"database/sql"
	"errors"
	"time"
)

// RoomID is a room's number: counted up, never used twice.
type RoomID int64

// Room is a line of the list of rooms.
type Room struct {
	ID      RoomID
	Name    string // as its document says; names need not differ
	Head    int64  // the number of its last revision
	Created time.Time
	Changed time.Time // when its last revision was made
	Binned  time.Time // since when it is in the bin; zero: it is not
}

// NewRoom is a room to be made, with its first revision.
type NewRoom struct {
	Name string
	Text []byte
	By   string // the author's label
	At   time.Time
	From Delivery
}

// Create makes a room, whose first revision is number 1. The same delivery gives the room that it made before.
func (s *Store) Create(ctx context.Context, n NewRoom) (Room, error) {
	const doing = "make a room"
	if err := errors.Join(s.limits.words(n.Name, n.By, n.From.Client), s.limits.text(n.Text)); err != nil {
		return Room{}, fault(doing, err)
	}
	var id RoomID
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		earlier, again, err := n.From.earlier(ctx, tx, 0, madeRoom)
		if id = RoomID(earlier); err != nil || again {
			return err
		}
		id, err = insertRoom(ctx, tx, n)
		return err
	})
	if err != nil {
		return Room{}, err
	}
	return s.Room(ctx, id)
}

func insertRoom(ctx context.Context, tx *sql.Tx, n NewRoom) (RoomID, error) {
	at := stamp(n.At)
	done, err := tx.ExecContext(ctx, `INSERT INTO room (name, head, created, changed) VALUES (?, 1, ?, ?)`, n.Name, at, at)
	if err != nil {
		return 0, err
	}
	number, err := done.LastInsertId()
	if err != nil {
		return 0, err
	}
	id := RoomID(number)
	first := Edit{Text: n.Text, By: n.By, At: n.At}
	if err := insertRevision(ctx, tx, id, 1, first); err != nil {
		return 0, err
	}
	return id, n.From.record(ctx, tx, 0, id, madeRoom, number)
}

const roomColumns = `SELECT id, name, head, created, changed, binned FROM room `

// Rooms lists the rooms that are not in the bin, the last changed first.
func (s *Store) Rooms(ctx context.Context) ([]Room, error) {
	return listRooms(ctx, s.reader, `WHERE binned IS NULL ORDER BY changed DESC, id DESC`)
}

// Bin lists the rooms in the bin, the last binned first.
func (s *Store) Bin(ctx context.Context) ([]Room, error) {
	return listRooms(ctx, s.reader, `WHERE binned IS NOT NULL ORDER BY binned DESC, id DESC`)
}

// Room finds one room, in the bin or not.
func (s *Store) Room(ctx context.Context, id RoomID) (Room, error) {
	r, err := findRoom(ctx, s.reader, id)
	return r, fault("find a room", err)
}

func findRoom(ctx context.Context, q queryer, id RoomID) (Room, error) {
	rooms, err := listRooms(ctx, q, `WHERE id = ?`, id)
	if err == nil && len(rooms) == 0 {
		err = NotFound
	}
	if err != nil {
		return Room{}, err
	}
	return rooms[0], nil
}

// openRoom finds a room that may be changed.
func openRoom(ctx context.Context, q queryer, id RoomID) (Room, error) {
	r, err := findRoom(ctx, q, id)
	if err == nil && !r.Binned.IsZero() {
		err = Binned
	}
	return r, err
}

func listRooms(ctx context.Context, q queryer, which string, args ...any) ([]Room, error) {
	list, err := collect(ctx, q, func(row *sql.Rows) (r Room, err error) {
		var created, changed int64
		var binned sql.NullInt64
		err = row.Scan(&r.ID, &r.Name, &r.Head, &created, &changed, &binned)
		r.Created, r.Changed = moment(created), moment(changed)
		if binned.Valid {
			r.Binned = moment(binned.Int64)
		}
		return r, err
	}, roomColumns+which, args...)
	return list, fault("list the rooms", err)
}

// PutInBin takes a room out of the list. It is kept, with all its revisions, and cannot be changed there.
func (s *Store) PutInBin(ctx context.Context, id RoomID, at time.Time) error {
	return s.setBinned(ctx, "put a room in the bin", id, `UPDATE room SET binned = coalesce(binned, ?) WHERE id = ?`, stamp(at), id)
}

// TakeOut brings a room back from the bin.
func (s *Store) TakeOut(ctx context.Context, id RoomID) error {
	return s.setBinned(ctx, "take a room out of the bin", id, `UPDATE room SET binned = NULL WHERE id = ?`, id)
}

func (s *Store) setBinned(ctx context.Context, doing string, id RoomID, update string, args ...any) error {
	err := s.change(ctx, doing, func(tx *sql.Tx) error { return must(tx.ExecContext(ctx, update, args...)) })
	if err == nil {
		s.feed.tell(id, Change{Moved: true})
	}
	return err
}

// Purge removes a binned room for good, with its revisions, ticks and photos. Only a room in the bin can be purged.
func (s *Store) Purge(ctx context.Context, id RoomID) error {
	const doing = "remove a room for good"
	err := s.change(ctx, doing, func(tx *sql.Tx) error {
		return must(tx.ExecContext(ctx, `DELETE FROM room WHERE id = ? AND binned IS NOT NULL`, id))
	})
	if err == nil {
		s.feed.tell(id, Change{Moved: true})
	}
	return err
}

// must turns "no row was touched" into NotFound.
func must(done sql.Result, err error) error {
	if err != nil {
		return err
	}
	n, err := done.RowsAffected()
	if err == nil && n == 0 {
		err = NotFound
	}
	return err
}
