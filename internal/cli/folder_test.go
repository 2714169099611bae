package cli_test

import (
	"context"
	"time"

	"github.com/rogpeppe/go-internal/testscript"

	"dryfit/internal/demo"
	"dryfit/internal/store"
	"dryfit/internal/web"
)

// makeRooms is the script command "rooms DIR COPY NAME": a data folder with the built-in rooms and one of that name, a
// photo in it, and a copy of everything.
func makeRooms(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: rooms DIR COPY NAME")
	}
	ctx, at := context.Background(), time.Date(2026, 3, 1, 12, 0, 0, 0, time.UTC)
	s, err := store.Open(ctx, ts.MkAbs(args[0]), store.Limits{})
	ts.Check(err)
	ts.Check(web.Welcome(ctx, s, demo.Rooms(), at))
	room, err := s.Create(ctx, store.NewRoom{Name: args[2], Text: []byte("dryfit: 1\nname: " + args[2] + "\n"), At: at})
	ts.Check(err)
	_, err = s.AddPhoto(ctx, room.ID, store.NewPhoto{Face: "floor", Media: "image/jpeg", Width: 1, Height: 1, Bytes: []byte("pixels"), At: at})
	ts.Check(err)
	ts.Check(s.Backup(ctx, ts.MkAbs(args[1])))
	ts.Check(s.Close())
}

// holdRooms is the script command "hold DIR": a program has the data folder open until the script ends.
func holdRooms(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: hold DIR")
	}
	s, err := store.Open(context.Background(), ts.MkAbs(args[0]), store.Limits{})
	ts.Check(err)
	ts.Defer(func() { s.Close() })
}
