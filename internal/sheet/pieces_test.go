package sheet_test

import (
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/sheet"
	"dryfit/internal/tiling"
	"dryfit/internal/typeset"
)

// Every piece has its number on a drawing of its face, in letters that are high enough, and what is cut or drilled has
// its row in the list.
func TestEveryPieceIsShown(t *testing.T) {
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		pages := sheet.Book(p, sheet.Paper{})
		if n := checkPieces(t, r.File, p, pages); n != len(p.Document.Lay) {
			t.Errorf("%s: %d faces drawn of %d", r.File, n, len(p.Document.Lay))
		}
	}
}

// checkPieces compares the pages with the plan's pieces and returns how many faces it found.
func checkPieces(t *testing.T, where string, p plan.Plan, pages []draw.Page) (faces int) {
	t.Helper()
	for _, f := range p.Tiling.Faces {
		numbers, cells := lettering(t, f, pages)
		seen := 0
		for _, z := range f.Fields {
			for _, c := range z.Chosen().Pieces {
				seen++
				if !numbers[c.Address] {
					t.Errorf("%s: %s has no number for %s", where, f.Name, c.Address)
				}
				if (!c.Uncut() || len(c.Holes) > 0) && !cells[c.Address] {
					t.Errorf("%s: %s has no row for %s", where, f.Name, c.Address)
				}
			}
		}
		if seen > 0 {
			faces++
		}
	}
	return faces
}

// lettering collects the numbers and the cells on the pages of one face.
func lettering(t *testing.T, f tiling.Face, pages []draw.Page) (numbers, cells map[string]bool) {
	numbers, cells = map[string]bool{}, map[string]bool{}
	for _, page := range pages {
		if !strings.HasPrefix(strings.ToLower(page.Title), strings.ToLower(f.Name)+", ") {
			continue
		}
		for _, x := range typeset.Placements(page) {
			switch x.Text.Class {
			case "number", "note":
				numbers[x.Text.Body] = true
				if x.Text.Size < 2500 {
					t.Errorf("%s: number %s is %d µm high", page.Title, x.Text.Body, x.Text.Size)
				}
			case "cell":
				cells[x.Text.Body] = true
			}
		}
	}
	return numbers, cells
}
