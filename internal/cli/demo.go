package cli

import (
	"context"
	"fmt"
	"path/filepath"
	"strings"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
	"dryfit/internal/report"
)

type demoCmd struct {
	Room  string `arg:"" optional:"" default:"quarry-row" help:"Which built-in room: quarry-row (inches) or gable (millimetres)."`
	Out   string `short:"o" default:"out" help:"The folder to write into."`
	Paper string `enum:"letter,tabloid,a4,a3,auto" default:"auto" help:"Paper: letter, tabloid, a4, a3; auto fits the room's units."`
}

// Run writes the room's document beside its plan, so that a person can change it and plan again.
func (c demoCmd) Run(ctx context.Context, s Streams) error {
	room, err := builtIn(c.Room)
	if err != nil {
		return err
	}
	show := newProgress(s)
	p, err := plan.Make(ctx, room.File, room.Text, plan.Options{Step: show.step})
	show.done()
	if err != nil {
		return err
	}
	dir := filepath.Join(c.Out, c.Room)
	if err := makeBook(ctx, p, room.Text, dir, c.Paper, s); err != nil {
		return err
	}
	if err := writeFile(filepath.Join(dir, room.File), room.Text); err != nil {
		return err
	}
	fmt.Fprintf(s.Out, "%-28s %s\n\nAll of it is in %s\n\n", room.File, "the room as you would write it", dir)
	for i, f := range report.Facts(p) {
		fmt.Fprintf(s.Out, "%d. %s: %s\n", i+1, f.Question, f.Answer)
	}
	fmt.Fprintf(s.Out, "\n%s. dryfit check %s tells them.\n", tally(p.Findings), filepath.Join(dir, room.File))
	return nil
}

func builtIn(name string) (demo.Room, error) {
	var names []string
	for _, r := range demo.Rooms() {
		stem := strings.TrimSuffix(r.File, ".yaml")
		if stem == name {
			return r, nil
		}
		names = append(names, stem)
	}
	return demo.Room{}, fmt.Errorf("no built-in room %q; there are: %s", name, strings.Join(names, ", "))
}
