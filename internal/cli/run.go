// Package cli is the command line: one file for each command, its help beside its flags.
//
// Run is what tests start. It maps every outcome to one of three exit codes, and writes files whole or not at all.
package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"time"

	"github.com/alecthomas/kong"
)

// Exit codes, as `dryfit --help` says.
const (
	Fine    = 0
	Stopped = 1 // the plan has findings that stop work
	Failed  = 2 // a file or the command line could not be read, or a file not be written
)

// Streams is the world as a command sees it.
type Streams struct {
	Out, Err io.Writer
	Terminal bool             // Err is a terminal: progress is shown
	Now      func() time.Time // for progress only; no plan sees it
}

// System returns the process's own streams.
func System() Streams {
	info, err := os.Stderr.Stat()
	return Streams{os.Stdout, os.Stderr, err == nil && info.Mode()&os.ModeCharDevice != 0, time.Now}
}

// errStopped is returned by a command whose work is done but whose plan has findings that stop work.
var errStopped = errors.New("findings that stop work")

// errUnread is returned by a command whose document could not be read as text; its findings are printed.
var errUnread = errors.New("the document could not be read")

const about = `Plans the finishing of a small room with your own hands: from tape readings to the sheets that you set tile from.

Exit status: 0 fine; 1 there are findings that stop work; 2 something could not be read or written.`

type commands struct {
	New     newCmd     `cmd:"" help:"Write a commented starter document for a new room."`
	Check   checkCmd   `cmd:"" help:"Read a room document and list what is wrong, doubtful or not checked."`
	Plan    planCmd    `cmd:"" help:"Plan a room and write its sheets, lists and plan.json into a folder."`
	Demo    demoCmd    `cmd:"" help:"Plan a built-in room and say what it shows."`
	Serve   serveCmd   `cmd:"" help:"Serve the rooms as pages for a browser on this machine, or with --share on the local network."`
	Restore restoreCmd `cmd:"" help:"Put a copy of everything, as the page of rooms gives it, into a data folder."`
	Export  exportCmd  `cmd:"" help:"Write all rooms of a data folder as plain files: documents, every revision, ticks, photos."`
	Schema  schemaCmd  `cmd:"" help:"Print the JSON Schema of the room document or of plan.json."`
	Version versionCmd `cmd:"" help:"Print the version."`
}

// exit carries the status out of kong, which otherwise ends the process itself.
type exit int

// Run runs one command line and returns the exit status.
func Run(ctx context.Context, args []string, s Streams) (status int) {
	defer func() {
		if r := recover(); r != nil {
			code, ok := r.(exit)
			if !ok {
				panic(r)
			}
			status = int(code)
		}
	}()
	var c commands
	parser, err := kong.New(&c, kong.Name("dryfit"), kong.Description(about), kong.Writers(s.Out, s.Err),
		kong.Exit(func(code int) { panic(exit(code)) }), kong.BindTo(ctx, (*context.Context)(nil)), kong.Bind(s))
	if err != nil {
		panic(err) // our own grammar is wrong
	}
	chosen, err := parser.Parse(args)
	if err != nil {
		fmt.Fprintf(s.Err, "dryfit: %v\nTry: dryfit --help\n", err)
		return Failed
	}
	return outcome(chosen.Run(), s.Err)
}

func outcome(err error, w io.Writer) int {
	switch {
	case err == nil:
		return Fine
	case errors.Is(err, errStopped):
		return Stopped
	}
	fmt.Fprintf(w, "dryfit: %v\n", err)
	return Failed
}
