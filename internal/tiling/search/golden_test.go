package search

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

var update = flag.Bool("update", false, "write the golden files anew")

// walls are told as a person would read them; each has a golden of its name.
var walls = map[string]string{
	"bath-wall": "room 60in 96in | open niche 24in 44in 38in 58in moves 2in | hole 30in 80in 1in | hole 12in 28in 4in" +
		" | tile 23.75in 11.75in 0.125in | running 1/3 | sight 44in | sight 58in | hidden left 0.5in | hidden right 0.5in",
	"plain-stack": "room 60in 96in | tile 11.75in 11.75in 0.125in | stack | hidden left 0.5in | hidden right 0.5in",
	"floor-at-45": "room 70in 96in | hole 20in 20in 4in | tile 11.75in 11.75in 0.125in | diagonal stack | center 35in",
}

func TestTellTheFinalists(t *testing.T) {
	for name, line := range walls {
		got := tell(t, line)
		file := filepath.Join("testdata", name+".txt")
		if *update {
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(file)
		if err != nil || string(want) != got {
			t.Errorf("%s differs (%v); got:\n%s", file, err, got)
		}
	}
	files, _ := filepath.Glob("testdata/*.txt")
	if len(files) != len(walls) {
		t.Errorf("%d golden files for %d walls", len(files), len(walls))
	}
}

// tell writes every preset's finalists with their sentences.
func tell(t *testing.T, line string) string {
	var b strings.Builder
	inches := unit.Style{System: unit.Inches, Mark: unit.ThirtySecond}
	in := read(t, line)
	in.Mark = unit.ThirtySecond
	fmt.Fprintln(&b, strings.ReplaceAll(line, " | ", "\n"))
	for _, p := range judge.Presets() {
		in.Order = p.Order
		res := Best(in)
		fmt.Fprintf(&b, "\n%s: %s; %s\n", p.Name, p.Says, res.Searched.Say(inches))
		for i, c := range res.Finalists {
			fmt.Fprintf(&b, "%d. starts %s across, %s up\n   + %s\n", i+1, inches.Bare(c.Origin.X), inches.Bare(c.Origin.Y), c.Why.Say(inches))
			if c.WhyNot.Text != "" {
				fmt.Fprintf(&b, "   - %s\n", c.WhyNot.Say(inches))
			}
		}
		for _, m := range Shift(in, res.Finalists[0].Origin) {
			fmt.Fprintf(&b, "   move %s %s across, %s up: %s\n", m.Opening, inches.Bare(m.Across), inches.Bare(m.Up), m.Why.Say(inches))
		}
	}
	return b.String()
}
