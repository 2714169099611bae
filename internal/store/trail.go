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

// Trail reads the links between the revisions of a room.
func (s *Store) Trail(ctx context.Context, id RoomID) (Trail, error) {
	const doing = "look for what can be undone"
	if _, err := s.Room(ctx, id); err != nil {
		return Trail{}, err
	}
	undoes, err := collect(ctx, s.reader, func(row *sql.Rows) (u int64, err error) {
		return u, row.Scan(&u)
	}, `SELECT coalesce(undoes, 0) FROM revision WHERE room = ? ORDER BY number`, id)
	return trail(undoes), fault(doing, err)
}

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
