package document

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

const wallsAndWindow = `dryfit: 1
name: It
units: in
survey:
  corners: A B C D
  tape: {A-B: 60, B-C: 60, C-D: 60, D-A: 60, A-C: 85}
walls:
  back: {along: A-B}
  right: {along: B-C}
openings:
  window: {in: back, kind: window, across: 12 to 36 from A, up: 40 to 60 above floor}
tiles:
  slate: {size: 12 x 6 x 3/8, kind: stone}
`

func wording(found diag.List) string {
	var b strings.Builder
	for _, f := range found {
		b.WriteString(f.Code + ": " + f.Say(unit.DefaultStyle(unit.Inches)) + " | " + f.SayMend(unit.DefaultStyle(unit.Inches)) + "\n")
	}
	return b.String()
}

// A list of what there is has each name once, though a wall is both a wall and a face, and an opening's faces under one name.
func TestNamesAreOfferedOnce(t *testing.T) {
	_, found := Read("it", []byte(wallsAndWindow+"stub-outs:\n  cold: {in: somewhere else, across: 12 from A, up: center 20 above floor, diameter: 5/8}\n"))
	words := wording(found)
	const want = "there are: floor, back, right, window > left, window > right, window > head, window > sill\n"
	if !strings.Contains(words, want) {
		t.Errorf("want %q in:\n%s", want, words)
	}
	both := &reader{refs: []reference{{kinds: []string{"wall", "face"}, name: "somewhere else"}}}
	room, _ := Read("it", []byte(wallsAndWindow))
	both.resolve(&room)
	if words := wording(both.found); strings.Count(words, "back") != 1 {
		t.Errorf("a name stands twice: %s", words)
	}
}

// Both names of a jamb are read.
func TestJambs(t *testing.T) {
	for _, face := range []string{"window > left", "window > left jamb", "window > right", "window > right jamb"} {
		_, found := Read("it", []byte(wallsAndWindow+"lay:\n  "+face+":\n    fields: {main: {tile: slate}}\n"))
		if found.Stops() {
			t.Errorf("%s: %s", face, wording(found))
		}
	}
}

// "an opening", not "a opening".
func TestArticles(t *testing.T) {
	_, found := Read("it", []byte(strings.Replace(wallsAndWindow, "tiles:", "  Window: {in: back, kind: niche, across: 40 to 50 from A, up: 40 to 60 above floor}\ntiles:", 1)))
	if words := wording(found); !strings.Contains(words, "two names for an opening differ") {
		t.Error(words)
	}
	if got := called("opening").shape.say + ", " + called("wall").shape.say; got != "the name of an opening, the name of a wall" {
		t.Error(got)
	}
}

// An empty file, or one of remarks alone, says that and how to start, and nothing else.
func TestEmptyDocument(t *testing.T) {
	for _, src := range []string{"", "\n\n", "# to do\n", "---\n"} {
		_, found := Read("it.yaml", []byte(src))
		if len(found) != 1 || found[0].Code != "no-document" || !strings.Contains(wording(found), "it.yaml is empty") || !strings.Contains(wording(found), "dryfit new") {
			t.Errorf("%q: %s", src, wording(found))
		}
	}
}

// A line that is written and unreadable is remembered as written; one that is unknown is not.
func TestUnreadLines(t *testing.T) {
	room, _ := Read("it", []byte("dryfit: 1\nname: It\nunits: in\nsurvey:\n  corners: A B C D\n  tape: {A-B: 60, B-C: sixty, C-D: [60, 6x], D-A: unknown, A-C: {to: board}, A-E: 12}\n"))
	var names []string
	for _, n := range room.Survey.Unread {
		names = append(names, n.Text)
	}
	if got := strings.Join(names, " "); got != "B-C C-D A-C" {
		t.Errorf("unread: %s", got)
	}
}
