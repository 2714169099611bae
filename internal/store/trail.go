package store

import (
	"context"
	"database/sql"
	"slices"
)

// Trail is where undo and redo lead from the head: the revisions whose inverse they would store. 0: there is none.
type Trail struct {
	Undo int64
	Redo int64 // itself an undo: its inverse brings back what it took away
}

// Trail reads the links between the revisions of a room. It is asked for with every page, so it reads no revision: the
// links alone are in an index.
func (s *Store) Trail(ctx context.Context, id RoomID) (Trail, error) {
	const doing = "look for what can be undone"
	rows, err := collect(ctx, s.reader, func(row *sql.Rows) (l link, err error) {
		return l, row.Scan(&l.head, &l.number, &l.undoes)
	}, `SELECT head, coalesce(number, 0), coalesce(undoes, 0) FROM room
		LEFT JOIN revision ON room = id AND undoes IS NOT NULL WHERE id = ?`, id)
	if err == nil && len(rows) == 0 {
		err = NotFound
	}
	if err != nil {
		return Trail{}, fault(doing, err)
	}
	undoes := make([]int64, rows[0].head)
	for _, l := range rows {
		if l.number > 0 {
			undoes[l.number-1] = l.undoes
		}
	}
	return trail(undoes), nil
}

// link is a revision that undoes another; number 0: the room has none.
type link struct{ head, number, undoes int64 }

// trail replays a history, in which undoes[i] is what revision i+1 undoes, on two stacks. What stands can be undone; an
// undo can be redone until a new edit comes. The first revision is the room itself and is not undone.
func trail(undoes []int64) Trail {
	var standing, undone []int64
	for i, u := range undoes {
		number := int64(i + 1)
		switch {
		case number == 1:
		case u == 0:
			standing, undone = append(standing, number), nil
		case slices.Contains(undone, u): // a redo
			undone, standing = without(undone, u), append(standing, number)
		case slices.Contains(standing, u):
			standing, undone = without(standing, u), append(undone, number)
		default: // the inverse of something that no longer stood: an edit like any other
			standing, undone = append(standing, number), nil
		}
	}
	return Trail{Undo: top(standing), Redo: top(undone)}
}

func without(stack []int64, v int64) []int64 {
	i := slices.Index(stack, v)
	return slices.Delete(stack, i, i+1)
}

func top(stack []int64) int64 {
	if len(stack) == 0 {
		return 0
	}
	return stack[len(stack)-1]
}
