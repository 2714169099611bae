package sheet

import (
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/unit"
)

// Paper is the size of sheet that a book is drawn for; each page lies or stands as what it shows fits best. The zero
// Paper fits the room's units.
type Paper struct{ draw.Paper }

// PaperNamed returns letter, tabloid, a4 or a3. Any other name, "auto" among them, is Letter for inches and A4 for
// millimetres.
func PaperNamed(name string, system unit.System) Paper {
	for _, p := range draw.Papers() {
		if strings.EqualFold(p.Name, name) {
			return Paper{p}
		}
	}
	return Paper{}.fit(system)
}

func (p Paper) fit(system unit.System) Paper {
	switch {
	case p.W > 0 && p.H > 0:
		return p
	case system == unit.Millimetres:
		return Paper{draw.A4}
	}
	return Paper{draw.Letter}
}

// FileName turns a title into a name that every file system takes: lower-case letters and figures of ASCII, with
// hyphens between. A title with none of them is "sheet".
func FileName(title string) string {
	const longest = 60
	words := strings.FieldsFunc(strings.ToLower(title), func(r rune) bool {
		return (r < 'a' || r > 'z') && (r < '0' || r > '9')
	})
	name := strings.Join(words, "-")
	if len(name) > longest {
		name = strings.TrimRight(name[:longest], "-")
	}
	if name == "" {
		return "sheet"
	}
	return name
}
