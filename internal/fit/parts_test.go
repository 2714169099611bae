package fit

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/unit"
)

// sayPart tells a part in one line of millimetres: kind, what for, as the document has it, from the least to the most that suit, what is missing.
func sayPart(p Part) string {
	mm := func(l unit.Length, known bool) string {
		if !known {
			return "-"
		}
		return fmt.Sprintf("%.2f", l.MM())
	}
	return strings.TrimSpace(fmt.Sprintf("%s %s: %s, %s to %s %s", p.Kind, p.For, mm(p.As, p.AsKnown), mm(p.Least, p.LeastKnown), mm(p.Most, p.MostKnown), strings.Join(p.Missing, ", ")))
}

// Worked out by hand. A line has a tenth of slack over 155 up and 65 out: 184.89. An escutcheon covers its hole by 1/8 in = 3.175 all round: 22 + 6.35.
// The bowl's bottom is 848 over the floor, the pipe 520, the arm falls (260 - 75)/48 = 3.85: 324.15 hang there, less 60 to 150 in the trap. The
// flange is level with the floor, so the bolts are as the sheet says; 5 under it they are 5 longer, and a ring makes up for it.
func TestParts(t *testing.T) {
	for _, c := range []struct{ edit, want string }{
		{"", "escutcheon on cold: 55.00, 28.35 to -"},
		{"", "supply line from stop to spout: 400.00, - to -"},
		{"", "supply line from WC stop to WC: 400.00, 184.89 to -"},
		{"", "trap of pipe: 31.75, 31.75 to 31.75"},
		{"", "tailpiece of pipe: 200.00, 174.15 to 264.15"},
		{"    tailpiece: 200\n => ", "tailpiece of pipe: -, 174.15 to 264.15"},
		{"drop: 60 to 150,  => ", "tailpiece of pipe: 200.00, - to - wastes > pipe > trap > drop"},
		{"", "escutcheon on drain: -, 56.35 to -"},
		{"", "WC seal of WC: -, - to -"},
		{"", "WC bolts of WC: 57.00, 45.00 to -"},
		{"flange top: 25 => flange top: 20", "WC bolts of WC: 57.00, 50.00 to -"},
		{"flange top: 25 => flange top: 20", "flange ring of WC: -, 5.00 to -"},
		{"bolts need: 45,  => ", "WC bolts of WC: 57.00, - to - WCs > WC > bolts need"},
	} {
		var edits []string
		if c.edit != "" {
			edits = append(edits, c.edit)
		}
		p, _ := run(t, edits...)
		var all []string
		for _, part := range p.Parts {
			all = append(all, sayPart(part))
		}
		if !strings.Contains("\n"+strings.Join(all, "\n")+"\n", "\n"+c.want+"\n") {
			t.Errorf("%s: want %s of\n%s", c.edit, c.want, strings.Join(all, "\n"))
		}
	}
	if p, _ := run(t); len(p.Parts) != 9 {
		t.Errorf("a ring where the flange is level: %d parts", len(p.Parts))
	}
}

// A tap with hoses of its own takes no line from its stop.
func TestOwnHosesTakeNoLine(t *testing.T) {
	p, _ := run(t, "    handle: {right: 100, => \n    hoses: 500\n    handle: {right: 100,", "takes: 25 to 40, plate: 55, stands out: 70, outlet: 25, hose: 400}\n  WC => takes: 25 to 40, plate: 55, stands out: 70, outlet: 25}\n  WC")
	for _, part := range p.Parts {
		if strings.HasPrefix(sayPart(part), "supply line from stop") {
			t.Error(sayPart(part))
		}
	}
}
