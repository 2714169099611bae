package web

import (
	"context"
	"time"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/store"
)

// Welcome puts the built-in rooms into a store that has never held one. A store whose rooms were all put in the bin
// stays empty.
func Welcome(ctx context.Context, s *store.Store, rooms []demo.Room, at time.Time) error {
	there, err := s.Rooms(ctx)
	if err != nil || len(there) > 0 {
		return err
	}
	if binned, err := s.Bin(ctx); err != nil || len(binned) > 0 {
		return err
	}
	for _, m := range rooms {
		doc, _ := document.Read(m.File, m.Text)
		if _, err := s.Create(ctx, store.NewRoom{Name: doc.Name, Text: m.Text, By: "built in", At: at}); err != nil {
			return err
		}
	}
	return nil
}
