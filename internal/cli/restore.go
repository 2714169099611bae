package cli

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"dryfit/internal/store"
)

type restoreCmd struct {
	File string `arg:"" help:"The copy, as the page of rooms gives it." type:"path"`
	Data string `help:"Folder to put it into. Default: the one that serve uses." type:"path" placeholder:"DIR"`
	Over bool   `help:"Put it in the place of what is there, which is kept beside it in a folder replaced-1, replaced-2, …"`
}

func (restoreCmd) Help() string {
	return `The copy is read through before anything is changed; it may be one of an older version of this program. The server must be off. A folder with something in it is refused unless --over is given.`
}

// Run puts a copy back and says where it is, and where that is kept which was there.
func (c restoreCmd) Run(ctx context.Context, s Streams) error {
	dir, err := dataFolder(c.Data)
	if err != nil {
		return err
	}
	before, err := setAside(dir)
	if err != nil {
		return err
	}
	err = store.Restore(ctx, c.File, dir, c.Over)
	if errors.Is(err, store.NotEmpty) {
		return fmt.Errorf("%w. With --over the copy takes its place, and what is there is kept beside it", err)
	}
	if err != nil {
		return err
	}
	after, err := setAside(dir)
	if err != nil {
		return err
	}
	fmt.Fprintf(s.Out, "Restored into %s\n", dir)
	if after > before {
		fmt.Fprintf(s.Out, "What was there is kept in %s\n", filepath.Join(dir, fmt.Sprintf("replaced-%d", after)))
	}
	return nil
}

// setAside counts the folders in which a data folder keeps what was replaced.
func setAside(dir string) (int, error) {
	for n := 0; ; n++ {
		_, err := os.Stat(filepath.Join(dir, fmt.Sprintf("replaced-%d", n+1)))
		switch {
		case errors.Is(err, os.ErrNotExist):
			return n, nil
		case err != nil:
			return n, err
		}
	}
}
