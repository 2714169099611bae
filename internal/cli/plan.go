package cli

import (
	"context"
	"fmt"
	"os"

	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/sheet"
)

type planCmd struct {
	File  string `arg:"" help:"The room document."`
	Out   string `short:"o" required:"" help:"The folder to write into; files of the same name are replaced."`
	Paper string `enum:"letter,tabloid,a4,a3,auto" default:"auto" help:"Paper: letter, tabloid, a4, a3; auto takes letter for inches and a4 for millimetres."`
}

// Run plans the room and writes everything.
func (c planCmd) Run(ctx context.Context, s Streams) error {
	p, src, err := planFile(ctx, c.File, s)
	if err != nil {
		return err
	}
	if document.Unreadable(p.Findings) { // sheets of half a document would look like those of a whole one
		printFindings(s.Out, c.File, src, p)
		return errUnread
	}
	if err := makeBook(ctx, p, src, c.Out, c.Paper, s); err != nil {
		return err
	}
	if p.Findings.Stops() {
		printFindings(s.Out, c.File, src, p)
	} else {
		fmt.Fprintln(s.Out, tally(p.Findings))
	}
	return stopped(p)
}

// makeBook writes the book and says what it wrote.
func makeBook(ctx context.Context, p plan.Plan, src []byte, dir, paper string, s Streams) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	show := newProgress(s)
	defer show.done()
	made, err := writeBook(ctx, p, src, dir, sheet.PaperNamed(paper, p.Style.System), show.step)
	show.done()
	for _, m := range made {
		fmt.Fprintf(s.Out, "%-28s %s\n", m.name, m.what)
	}
	return err
}
