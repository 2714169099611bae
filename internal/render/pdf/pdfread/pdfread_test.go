package pdfread

import (
	"math"
	"strings"
	"testing"
)

// A page written by hand after ISO 32000-1: 72 units to the inch, cm before what it applies to.
const byHand = `%PDF-1.3
3 0 obj
<</Type /Page
/Contents 4 0 R>>
endobj
4 0 obj
<</Length 99>>
stream
2 w
72 144 m
144 144 l
S
q 0 1 -1 0 144 72 cm
BT /F1 36 Tf ET
BT 72 0 Td (` + "\x00a\x00\\(\x00\\)" + `) Tj ET
Q
0 0 72 72 re W n
0 0 m
0 72 72 72 72 0 c
h
f*
endstream
endobj
1 0 obj
<</Type /Pages
/Kids [3 0 R ]
/MediaBox [0 0 612.00 792.00]
>>
endobj
%%EOF
`

func TestReadsWhatIsWrittenByHand(t *testing.T) {
	pages, err := Read([]byte(byHand))
	if err != nil || len(pages) != 1 {
		t.Fatal(pages, err)
	}
	p := pages[0]
	if math.Abs(p.W-215.9) > 1e-9 || math.Abs(p.H-279.4) > 1e-9 {
		t.Errorf("Letter is %v by %v", p.W, p.H)
	}
	if len(p.Paths) != 2 || !near(p.Paths[0].Lines[0][1], 50.8, 50.8) || p.Paths[1].Op != "f*" || len(p.Paths[1].Handles[0]) != 2 {
		t.Errorf("paths %v", p.Paths)
	}
	// Turned a quarter about nothing, then moved by 144, 72: 72 along goes up to 72 + 72.
	if len(p.Texts) != 1 || p.Texts[0].Body != "a()" || !near(p.Texts[0].At, 50.8, 50.8) ||
		p.Texts[0].Turn != 90 || math.Abs(p.Texts[0].Em-12.7) > 1e-9 {
		t.Errorf("texts %v", p.Texts)
	}
}

func near(p Pt, x, y float64) bool { return math.Hypot(p.X-x, p.Y-y) < 1e-9 }

func TestComplains(t *testing.T) {
	for name, c := range map[string]string{
		"not all of it":      strings.TrimSuffix(byHand, "%%EOF\n"),
		"no pages":           strings.Replace(byHand, "/Kids", "/Kin", 1),
		"no contents":        strings.Replace(byHand, "/Contents", "/Content", 1),
		"pen within a path":  strings.Replace(byHand, "144 144 l", "144 144 l 3 w", 1),
		"unknown operator":   strings.Replace(byHand, "2 w", "2 sh", 1),
		"q without Q":        strings.Replace(byHand, "\nQ\n", "\n", 1),
		"Q without q":        strings.Replace(byHand, "q 0 1", "0 1", 1),
		"stream that is not": strings.Replace(byHand, "endstream", "", 1),
	} {
		if _, err := Read([]byte(c)); err == nil {
			t.Errorf("%s: read without complaint", name)
		}
	}
}
