package cli

import (
	"context"
	"fmt"
	"io"
	"os"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/text"
)

type checkCmd struct {
	File string `arg:"" help:"The room document."`
}

// Run plans the room and prints the findings alone.
func (c checkCmd) Run(ctx context.Context, s Streams) error {
	p, src, err := planFile(ctx, c.File, s)
	if err != nil {
		return err
	}
	printFindings(s.Out, c.File, src, p)
	printAssumed(s.Out, p)
	return stopped(p)
}

// planFile reads a document and makes its plan.
func planFile(ctx context.Context, file string, s Streams) (plan.Plan, []byte, error) {
	src, err := readFile(file)
	if err != nil {
		return plan.Plan{}, nil, err
	}
	show := newProgress(s)
	defer show.done()
	p, err := plan.Make(ctx, file, src, plan.Options{Step: show.step})
	return p, src, err
}

// maxDocument bounds what is read as a room document; a long one has some thousand lines.
const maxDocument = 4 << 20

func readFile(file string) ([]byte, error) {
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	src, err := io.ReadAll(io.LimitReader(f, maxDocument+1))
	if err != nil {
		return nil, err
	}
	if len(src) > maxDocument {
		return nil, fmt.Errorf("%s is larger than 4 MiB: that is no room document", file)
	}
	return src, nil
}

// stopped is what the findings of a plan make of the command's end.
func stopped(p plan.Plan) error {
	switch {
	case document.Unreadable(p.Findings):
		return errUnread
	case p.Findings.Stops():
		return errStopped
	}
	return nil
}

// printFindings prints each finding with its place, its line of the document and what would mend it.
func printFindings(w io.Writer, file string, src []byte, p plan.Plan) {
	for _, f := range p.Findings {
		said := f.Say(p.Style)
		if class := f.Class.String() + ": "; !strings.HasPrefix(said, class) {
			said = class + said
		}
		fmt.Fprintf(w, "%s:%s %s\n", file, lineColumn(f.At), said)
		if f.At.Line > 0 && f.Class != diag.Note {
			fmt.Fprint(w, text.Snippet(src, f.At.Line, f.At.Column))
		}
		if f.Mend != "" {
			fmt.Fprintf(w, "  mend: %s\n", f.SayMend(p.Style))
		}
	}
	fmt.Fprintln(w, tally(p.Findings))
}

func lineColumn(at diag.Place) string {
	if at.Line == 0 {
		return ""
	}
	return fmt.Sprintf("%d:%d:", at.Line, at.Column)
}

// tally counts what is not checked before anything else, so that no silence reads as "fits".
func tally(l diag.List) string {
	var n [diag.Note + 1]int
	for _, f := range l {
		n[f.Class]++
	}
	return fmt.Sprintf("%d stop work, %d to look at, %d not checked, %d notes",
		n[diag.Stop], n[diag.Look], n[diag.Unchecked], n[diag.Note])
}

func printAssumed(w io.Writer, p plan.Plan) {
	if len(p.Assumed) == 0 {
		return
	}
	fmt.Fprintf(w, "Assumed, because the document does not say:\n")
	for _, a := range p.Assumed {
		fmt.Fprintf(w, "  %s (%s): %s\n", a.Say(p.Style), a.Source, a.At.Path)
	}
}
