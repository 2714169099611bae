package web

import (
	"context"
	"strings"

	"dryfit/internal/store"
	"dryfit/internal/text"
)

// tickedPiece takes a tick's address apart: the face, which may be one of an opening, and the piece on it.
func tickedPiece(address string) (face, piece string) {
	at := strings.LastIndex(address, " > ")
	if at < 0 {
		return "", address
	}
	return address[:at], address[at+len(" > "):]
}

// renamedTick is a tick's address after operations that give its face another name.
func renamedTick(address string, ops []text.Op) string {
	face, piece := tickedPiece(address)
	for _, op := range ops {
		face = renamedFace(face, op)
	}
	if face == "" {
		return piece
	}
	return face + " > " + piece
}

// nameNow is what the piece of a sent tick is called in the head: the phone may show a revision in which its wall had
// another name.
func (s *Server) nameNow(ctx context.Context, v *view, t sentTick) (string, error) {
	if t.Head < 1 || t.Head >= v.Head {
		return t.Piece, nil
	}
	list, err := s.store.Log(ctx, v.ID, v.Head+1, int(v.Head-t.Head))
	piece := t.Piece
	for i := len(list) - 1; i >= 0; i-- {
		piece = renamedTick(piece, opsIn(list[i]))
	}
	return piece, err
}

// ticksFollow binds the ticks of a face that has another name now to that name. Those of the old name are taken back, so
// that another face of that name has none.
func (s *Server) ticksFollow(ctx context.Context, id store.RoomID, ops []text.Op) error {
	if !hasName(ops) {
		return nil
	}
	ticks, err := s.store.Ticks(ctx, id)
	if err != nil {
		return err
	}
	var moved []store.Tick
	for _, t := range ticks {
		now := renamedTick(t.Address, ops)
		if now == t.Address {
			continue
		}
		back := store.Tick{Address: t.Address, Outline: t.Outline, By: t.By, At: t.At}
		t.Address, t.From, t.Number = now, store.Delivery{}, 0
		moved = append(moved, back, t)
	}
	for len(moved) > 0 { // as many at once as are taken
		n := min(len(moved), mostTicks)
		if _, err := s.store.Tick(ctx, id, moved[:n]...); err != nil {
			return err
		}
		moved = moved[n:]
	}
	return nil
}
