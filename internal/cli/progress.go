package cli

import (
	"fmt"
	"time"
)

// quiet is how long something may take before a person is told what is going on.
const quiet = 500 * time.Millisecond

// progress names the step in work on a terminal, once half a second has passed.
type progress struct {
	s     Streams
	start time.Time
	shown bool
}

func newProgress(s Streams) *progress { return &progress{s: s, start: s.Now()} }

func (p *progress) step(name string) {
	if !p.s.Terminal || p.s.Now().Sub(p.start) < quiet {
		return
	}
	p.shown = true
	fmt.Fprintf(p.s.Err, "\r\x1b[K%s …", name)
}

// done wipes the line.
func (p *progress) done() {
	if p.shown {
		fmt.Fprint(p.s.Err, "\r\x1b[K")
	}
	p.shown = false
}
