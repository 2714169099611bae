package cli

import (
	"context"
	"errors"
	"fmt"
	"os"

	"dryfit/internal/store"
)

type exportCmd struct {
	Data string `help:"Folder that the rooms are kept in. Default: the one that serve uses." type:"path" placeholder:"DIR"`
	Out  string `short:"o" required:"" help:"The folder to write, which is made." type:"path" placeholder:"DIR"`
}

func (exportCmd) Help() string {
	return `Each room gets a folder with its document, each revision of it, who changed what and when, the ticks and the photos: plain files that need no program of ours. The server must be off; while it runs, take a copy of everything from its page of rooms instead.`
}

// Run writes the files. A folder without rooms is an error: opening it would make one.
func (c exportCmd) Run(ctx context.Context, s Streams) error {
	dir, err := dataFolder(c.Data)
	if err != nil {
		return err
	}
	if !store.Holds(dir) {
		return fmt.Errorf("there are no rooms in %s", dir)
	}
	kept, err := store.Open(ctx, dir, store.Limits{})
	if errors.Is(err, store.InUse) {
		return fmt.Errorf("%w. If that is the server, stop it first; or take a copy of everything from its page of rooms", err)
	}
	if err != nil {
		return err
	}
	if err := errors.Join(kept.Export(ctx, c.Out), kept.Close()); err != nil {
		return err
	}
	rooms, err := os.ReadDir(c.Out)
	if err != nil {
		return err
	}
	fmt.Fprintf(s.Out, "Rooms: %d, in %s; rooms.json lists them\n", len(rooms)-1, c.Out) // each has a folder, and one file lists them
	return nil
}
