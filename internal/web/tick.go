package web

import (
	"encoding/json"
	"net/http"

	"dryfit/internal/store"
)

// ticks are the pieces that are marked as done, by face and address, with the outline that they had then.
func (v *view) ticks() (map[string]string, error) {
	all, err := v.server.store.Ticks(v.ctx, v.ID)
	out := map[string]string{}
	for _, t := range all {
		if t.Ticked {
			out[t.Address] = t.Outline
		}
	}
	return out, err
}

// sentTick is a tick as a phone sends it, once it has a connection again.
type sentTick struct {
	Piece, Outline, Client string
	Done                   bool
	Seq, Head              int64 // Head is the revision that the phone showed
}

const mostTicks = 500 // in one request

// tick keeps ticks. A tick that comes twice changes nothing.
func (s *Server) tick(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	var sent []sentTick
	if err := json.NewDecoder(r.Body).Decode(&sent); err != nil || len(sent) > mostTicks {
		return fault{http.StatusBadRequest, "Those are no ticks."}
	}
	var all []store.Tick
	for _, t := range sent {
		if t.Piece == "" || t.Client == "" {
			return fault{http.StatusBadRequest, "A tick names its piece and its phone."}
		}
		piece, err := s.nameNow(r.Context(), v, t)
		if err != nil {
			return err
		}
		all = append(all, store.Tick{Address: piece, Outline: t.Outline, Ticked: t.Done, By: s.who(r), At: s.now(), From: store.Delivery{Client: t.Client, Seq: t.Seq}})
	}
	if _, err := s.store.Tick(r.Context(), v.ID, all...); err != nil {
		return err
	}
	w.WriteHeader(http.StatusNoContent)
	return nil
}
