package sheet_test

import (
	"context"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/typeset"
)

// A niche of 300 mm by 400 mm at 1:25. With a trim 10 mm before the board, and with a miter still more, the tile's opening is less than the
// board's, which is drawn beside it and named in the key; what is nearer than lines are wide is one line.
func TestOpeningsAreDrawnWhereTileEnds(t *testing.T) {
	const words = "board's edge at opening"
	for _, c := range []struct {
		edge        string
		least, most draw.Um // drawn width
		apart       bool
	}{
		{"edge: trim 3", 11_199, 11_201, true}, // (300 - 2·10) / 25
		{"edge: miter", 10_000, 11_199, true},
		{"", 11_500, 11_999, false}, // less than 7.5 mm on either side: under 0.3 mm on paper
	} {
		page := showerWall(t, c.edge)
		if tile := boxOf(page, "opening"); tile.W() < c.least || tile.W() > c.most {
			t.Errorf("%q: the opening is drawn %d µm wide", c.edge, tile.W())
		}
		if board := boxOf(page, "board edge"); (board.W() == 12_000 && board.H() == 16_000) != c.apart {
			t.Errorf("%q: the board's edge is drawn %d by %d µm", c.edge, board.W(), board.H())
		}
		if named(page, words) != c.apart {
			t.Errorf("%q: the key names the board's edge: %v", c.edge, !c.apart)
		}
	}
}

func showerWall(t *testing.T, edge string) draw.Page {
	for _, r := range demo.Rooms() {
		if r.File != "gable.yaml" {
			continue
		}
		p, err := plan.Make(context.Background(), r.File, []byte(strings.Replace(string(r.Text), "edge: trim 3", edge, 1)), plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		for _, page := range sheet.Book(p, sheet.PaperNamed("A4", p.Style.System)) {
			if strings.HasPrefix(page.Title, "Shower wall, Elevation") {
				return page
			}
		}
	}
	panic("no such page")
}

// boxOf is the box of the first path of a class.
func boxOf(p draw.Page, class string) draw.Box {
	for _, it := range p.Items {
		if x, ok := it.(draw.Path); ok && x.Class == class {
			return x.Reach()
		}
	}
	return draw.Box{}
}

func named(p draw.Page, words string) bool {
	for _, x := range typeset.Placements(p) {
		if x.Text.Body == words {
			return true
		}
	}
	return false
}
