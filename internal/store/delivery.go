package store

import (
	"bytes"
	"context"
	"crypto/sha256"
	"database/sql"
	"errors"
)

// Delivery names a request, so that sending it again is harmless: a client counts its requests and repeats one with the
// same number until it has an answer. The zero Delivery names nothing: the program's own changes come once.
type Delivery struct {
	Client string
	Seq    int64
	// Body is what the client sent. It is not kept, only compared by its hash, so that a number used for two
	// different requests is told as Reused. Empty: not compared.
	Body []byte
}

func (d Delivery) named() bool { return d.Client != "" }

// print is the hash that is kept of the body.
func (d Delivery) print() []byte {
	if len(d.Body) == 0 {
		return []byte{}
	}
	sum := sha256.Sum256(d.Body)
	return sum[:]
}

// What a delivery made.
type made string

const (
	madeRoom     made = "room"
	madeRevision made = "revision"
	madeTick     made = "tick"
	madePhoto    made = "photo"
)

// earlier finds what the same request made when it first came. A number used for something else is an error.
func (d Delivery) earlier(ctx context.Context, q queryer, scope RoomID, kind made) (result int64, again bool, err error) {
	if !d.named() {
		return 0, false, nil
	}
	var was made
	var print []byte
	err = q.QueryRowContext(ctx, `SELECT kind, result, print FROM delivery WHERE scope = ? AND client = ? AND seq = ?`,
		scope, d.Client, d.Seq).Scan(&was, &result, &print)
	switch {
	case errors.Is(err, sql.ErrNoRows):
		return 0, false, nil
	case err != nil:
		return 0, false, err
	case was != kind || len(print) > 0 && len(d.Body) > 0 && !bytes.Equal(print, d.print()):
		return 0, false, Reused
	}
	return result, true, nil
}

// record keeps what the request made, in the transaction that made it.
func (d Delivery) record(ctx context.Context, tx *sql.Tx, scope, room RoomID, kind made, result int64) error {
	if !d.named() {
		return nil
	}
	_, err := tx.ExecContext(ctx, `INSERT INTO delivery (scope, client, seq, kind, room, result, print) VALUES (?, ?, ?, ?, ?, ?, ?)`,
		scope, d.Client, d.Seq, string(kind), room, result, d.print())
	return err
}

// queryer is a database or a transaction.
type queryer interface {
	QueryContext(context.Context, string, ...any) (*sql.Rows, error)
	QueryRowContext(context.Context, string, ...any) *sql.Row
}
