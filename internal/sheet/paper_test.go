package sheet_test

import (
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/sheet"
	"dryfit/internal/unit"
)

func TestPaperNamed(t *testing.T) {
	for _, c := range []struct {
		name   string
		system unit.System
		want   draw.Paper
	}{
		{"letter", unit.Millimetres, draw.Letter},
		{"Tabloid", unit.Inches, draw.Tabloid},
		{"a4", unit.Inches, draw.A4},
		{"A3", unit.Millimetres, draw.A3},
		{"auto", unit.Inches, draw.Letter},
		{"auto", unit.Millimetres, draw.A4},
		{"", unit.Inches, draw.Letter},
		{"foolscap", unit.Millimetres, draw.A4},
	} {
		if got := sheet.PaperNamed(c.name, c.system); got.Paper != c.want {
			t.Errorf("%q for %v is %v", c.name, c.system, got)
		}
	}
}

func TestFileName(t *testing.T) {
	for title, want := range map[string]string{
		"Basin wall, elevation": "basin-wall-elevation",
		"Niche > back":          "niche-back",
		"Größe":                 "gr-e",
		"../../etc/passwd":      "etc-passwd",
		"":                      "sheet",
		"???":                   "sheet",
		"a\x00b\nc":             "a-b-c",
	} {
		if got := sheet.FileName(title); got != want {
			t.Errorf("%q becomes %q, want %q", title, got, want)
		}
	}
}

func FuzzFileName(f *testing.F) {
	f.Add("Basin wall, part A1 of 3: numbers")
	f.Add("-- -")
	f.Fuzz(func(t *testing.T, title string) {
		name := sheet.FileName(title)
		if name == "" || len(name) > 60 || name[0] == '-' || name[len(name)-1] == '-' || sheet.FileName(name) != name {
			t.Errorf("%q becomes %q", title, name)
		}
		for _, r := range name {
			if (r < 'a' || r > 'z') && (r < '0' || r > '9') && r != '-' {
				t.Errorf("%q becomes %q", title, name)
			}
		}
	})
}
