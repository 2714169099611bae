package store

import (
	"context"
	"database/sql"
	"time"
)

// stamp is how a time is kept: whole milliseconds since 1970 UTC, rounded down.
func stamp(t time.Time) int64 { return t.UnixMilli() }

func moment(ms int64) time.Time { return time.UnixMilli(ms).UTC() }

// collect reads all rows of a query.
func collect[T any](ctx context.Context, q queryer, scan func(*sql.Rows) (T, error), query string, args ...any) ([]T, error) {
	rows, err := q.QueryContext(ctx, query, args...)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var list []T
	for rows.Next() {
		v, err := scan(rows)
		if err != nil {
			return nil, err
		}
		list = append(list, v)
	}
	return list, rows.Err()
}
