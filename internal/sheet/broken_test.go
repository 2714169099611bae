package sheet_test

import (
	"context"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// leaveOut: each ninth line is left out in turn; all of them, which have been tried, take a minute.
const leaveOut = 9

// A room with a line left out is drawn as far as it is known, and always with its findings.
func TestSheetsOfBrokenRooms(t *testing.T) {
	var known plan.Known
	for _, r := range demo.Rooms() {
		lines := strings.SplitAfter(string(r.Text), "\n")
		for i := 0; i < len(lines); i += leaveOut {
			text := strings.Join(append(append([]string{}, lines[:i]...), lines[i+1:]...), "")
			p, err := plan.Make(context.Background(), r.File, []byte(text), plan.Options{Face: "floor", Known: &known})
			if err != nil {
				t.Fatal(err)
			}
			checkBook(t, r.File+" without "+lines[i], p)
		}
	}
}

// Nothing at all is a book of two sheets that say so.
func TestSheetsOfNothing(t *testing.T) {
	for _, s := range []unit.System{unit.Inches, unit.Millimetres} {
		checkBook(t, "nothing", plan.Plan{Style: unit.DefaultStyle(s)})
	}
}

func checkBook(t *testing.T, what string, p plan.Plan) {
	t.Helper()
	pages := sheet.Book(p, sheet.Paper{})
	findings := false
	for _, page := range pages {
		findings = findings || strings.HasPrefix(page.Title, "Findings")
		for _, o := range typeset.Overlaps(page) {
			t.Errorf("%s: %s: %v", what, page.Title, o)
		}
	}
	if !findings {
		t.Errorf("%s: no findings among %d pages", what, len(pages))
	}
}
