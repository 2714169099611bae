package site

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"dryfit/internal/document"
)

// number is a figure with its unit, as the loft writes them.
var number = regexp.MustCompile(`\d+( \d+/\d+|/\d+)? in\b`)

// Each number of the loft is made unknown in turn. What comes of it is never the same room without a
// word: either something is said, by the reader or here, or the room differs.
func TestEachNumberUnknown(t *testing.T) {
	text, err := os.ReadFile("testdata/loft.yaml")
	if err != nil {
		t.Fatal(err)
	}
	whole := solvedText(t, string(text))
	for _, at := range number.FindAllStringIndex(string(text), -1) {
		line := string(text[strings.LastIndexByte(string(text[:at[0]]), '\n')+1 : at[1]])
		if strings.Contains(line, "joint:") {
			continue // a grout joint is the tiles' affair
		}
		if strings.HasSuffix(line, "ceiling: {0: 30 in") {
			continue // the same height is read at the corner
		}
		spoiled := string(text[:at[0]]) + "unknown" + string(text[at[1]:])
		if solvedText(t, spoiled) == whole {
			t.Errorf("no word about an unknown figure after %q", line)
		}
	}
}

// solvedText is everything that is said and solved, the reader's findings included.
func solvedText(t *testing.T, text string) string {
	doc, list := document.Read("loft.yaml", []byte(text))
	var b strings.Builder
	for _, f := range list.Sorted() {
		b.WriteString(f.Code + " " + f.At.Path + "\n")
	}
	return b.String() + describe(doc)
}
