package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"maps"
	"slices"
	"time"
)

// Tick is a mark that a piece is done, or is not after all. It binds to the piece's address and to the outline it had
// then, so that a piece that has changed since is told from one that has been cut.
type Tick struct {
	Number  int64 // given by the store, in the order of arrival
	Address string
	Outline string // a hash of the outline, in the caller's own form
	Ticked  bool
	By      string
	At      time.Time
	From    Delivery // each tick its own: a phone that was offline sends many at once
}

// Tick stores ticks of a room, all or none. Where a client's ticks of one address arrive out of their order, the one
// with the greater number stands; between clients the later arrival stands. It gives what stands
// then for each address, by address.
func (s *Store) Tick(ctx context.Context, id RoomID, ticks ...Tick) (standing []Tick, err error) {
	const doing = "store ticks"
	if err := checkTicks(s.limits, ticks); err != nil {
		return nil, fault(doing, err)
	}
	var last int64
	err = s.change(ctx, doing, func(tx *sql.Tx) (err error) {
		standing, last, err = tickIn(ctx, tx, id, ticks)
		return err
	})
	if err != nil {
		return nil, err
	}
	s.feed.tell(id, Change{Tick: last})
	return standing, nil
}

func checkTicks(l Limits, ticks []Tick) error {
	if len(ticks) > l.Ticks {
		return TooBig
	}
	for _, t := range ticks {
		if t.Address == "" {
			return fmt.Errorf("%w: a tick without an address", Unusable)
		}
		if err := errors.Join(l.paths(t.Address, t.Outline), l.words(t.By, t.From.Client)); err != nil {
			return err
		}
	}
	return nil
}

func tickIn(ctx context.Context, tx *sql.Tx, id RoomID, ticks []Tick) (standing []Tick, last int64, err error) {
	addresses := map[string]bool{}
	for _, t := range ticks {
		number, err := insertTick(ctx, tx, id, t)
		if err != nil {
			return nil, 0, err
		}
		last = max(last, number)
		addresses[t.Address] = true
	}
	for _, a := range slices.Sorted(maps.Keys(addresses)) {
		now, err := listTicks(ctx, tx, `AND address = ?`, id, a)
		if err != nil {
			return nil, 0, err
		}
		standing = append(standing, now...)
	}
	return standing, last, nil
}

func insertTick(ctx context.Context, tx *sql.Tx, id RoomID, t Tick) (number int64, err error) {
	number, again, err := t.From.earlier(ctx, tx, id, madeTick)
	if err != nil || again {
		return number, err
	}
	if _, err := openRoom(ctx, tx, id); err != nil {
		return 0, err
	}
	// ?6 is '' for the program's own ticks, which are never late.
	done, err := tx.ExecContext(ctx, `INSERT INTO tick (room, address, outline, ticked, author, client, seq, at, late)
		VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?6 <> '' AND EXISTS
			(SELECT 1 FROM tick WHERE room = ?1 AND address = ?2 AND client = ?6 AND seq > ?7))`,
		id, t.Address, t.Outline, t.Ticked, t.By, t.From.Client, t.From.Seq, stamp(t.At))
	if err != nil {
		return 0, err
	}
	if number, err = done.LastInsertId(); err != nil {
		return 0, err
	}
	return number, t.From.record(ctx, tx, id, id, madeTick, number)
}

// Ticks gives what stands for each address that was ever ticked, by address. An unticked one is in it too.
func (s *Store) Ticks(ctx context.Context, id RoomID) ([]Tick, error) {
	list, err := listTicks(ctx, s.reader, ``, id)
	return list, fault("read the ticks", err)
}

// TickLog gives every tick and untick of a room in the order of arrival.
func (s *Store) TickLog(ctx context.Context, id RoomID) ([]Tick, error) {
	list, err := collect(ctx, s.reader, scanTick, tickColumns+`WHERE room = ? ORDER BY id`, id)
	return list, fault("read the ticks", err)
}

const tickColumns = `SELECT id, address, outline, ticked, author, client, seq, at FROM tick `

func listTicks(ctx context.Context, q queryer, which string, args ...any) ([]Tick, error) {
	return collect(ctx, q, scanTick, tickColumns+`WHERE id IN
		(SELECT max(id) FROM tick WHERE room = ? AND late = 0 `+which+` GROUP BY address) ORDER BY address`, args...)
}

func scanTick(row *sql.Rows) (t Tick, err error) {
	var at int64
	err = row.Scan(&t.Number, &t.Address, &t.Outline, &t.Ticked, &t.By, &t.From.Client, &t.From.Seq, &at)
	t.At = moment(at)
	return t, err
}
