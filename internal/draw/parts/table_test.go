package parts

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"

	"pgregory.net/rapid"
)

func pieces(n int) Table {
	t := Table{Caption: "Pieces", Columns: []Column{{Head: "Piece"}, {Head: "Width", Align: draw.End}, {Head: "What to do"}}}
	for i := range n {
		t.Rows = append(t.Rows, Row{Cells: []string{fmt.Sprintf("basin-%d", i), "11-13/16", "whole"}})
	}
	return t
}

func boxOf(h draw.Um) func(int) draw.Box {
	return func(int) draw.Box { return draw.Span(20_000, 200_000-h, 190_000, 200_000) }
}

func page(f Flowed) draw.Page { return draw.Page{W: 210_000, H: 297_000, Items: f.Items} }

// A row of one line is Small and 1.2 mm above and below: 4.9 mm. Caption 5.6, heads and 10 rows want 59.5 mm.
func TestTableBreaksIntoPages(t *testing.T) {
	for _, c := range []struct {
		rows  int
		high  draw.Um
		pages int
	}{
		{0, 60_000, 1}, {10, 59_500, 1}, {10, 59_499, 2}, {11, 59_500, 2}, {20, 59_500, 2}, {21, 59_500, 3},
	} {
		got := pieces(c.rows).Flow(boxOf(c.high))
		if len(got) != c.pages {
			t.Errorf("%d rows in %d um take %d pages, want %d", c.rows, c.high, len(got), c.pages)
		}
		for i, f := range got {
			words := bodies(page(f))
			if heads := strings.Count(words, "What to do"); heads != 1 {
				t.Errorf("page %d has its heads %d times", i, heads)
			}
			if strings.Contains(words, "continued") != (i > 0) {
				t.Errorf("page %d: %s", i, words)
			}
			if f.Bottom < 200_000-c.high {
				t.Errorf("page %d ends at %d, below its box", i, f.Bottom)
			}
		}
	}
}

func bodies(p draw.Page) string {
	var s []string
	for _, text := range typeset.Placements(p) {
		s = append(s, text.Text.Body)
	}
	return strings.Join(s, " ")
}

// Nothing is lost, nothing covers anything, nothing leaves the box, whatever is in the cells.
func TestTableKeepsEverything(t *testing.T) {
	cell := rapid.StringOf(rapid.RuneFrom([]rune("abWi -/½1é")))
	rapid.Check(t, func(t *rapid.T) {
		tab := Table{Plain: rapid.Bool().Draw(t, "plain")}
		for range rapid.IntRange(1, 5).Draw(t, "columns") {
			wish := draw.Um(rapid.SampledFrom([]int64{0, 0, 12_000}).Draw(t, "wish"))
			tab.Columns = append(tab.Columns, Column{Head: rapid.StringOfN(rapid.RuneFrom([]rune("aW -")), 0, 6, -1).Draw(t, "head"), Align: draw.Anchor(rapid.IntRange(0, 2).Draw(t, "align")), Width: wish})
		}
		var want string
		for i := range rapid.IntRange(0, 12).Draw(t, "rows") {
			r := Row{Cells: rapid.SliceOfN(cell, 0, len(tab.Columns)).Draw(t, "cells"), Bold: i%3 == 0}
			tab.Rows, want = append(tab.Rows, r), want+strings.Join(r.Cells, "")
		}
		high := draw.Um(rapid.Int64Range(60_000, 90_000).Draw(t, "high"))
		var all string
		for _, f := range tab.Flow(boxOf(high)) {
			if over := typeset.Overlaps(page(f)); len(over) > 0 {
				t.Fatal(over)
			}
			if struck := typeset.Struck(page(f)); len(struck) > 0 {
				t.Fatal(struck)
			}
			for _, p := range typeset.Placements(page(f)) {
				if !boxOf(high)(0).Inset(-10).Holds(p.Box) {
					t.Fatalf("%q in %v leaves the box", p.Text.Body, p.Box)
				}
			}
			all += bodies(page(f))
		}
		holdsLetters(t, all, want)
	})
}

// holdsLetters counts: rows are broken over lines and pages, so the order of the letters is not kept.
func holdsLetters(t *rapid.T, all, want string) {
	for _, r := range "abWi-/½1é" {
		if strings.Count(all, string(r)) < strings.Count(want, string(r)) {
			t.Fatalf("%q: %d of %d are left", r, strings.Count(all, string(r)), strings.Count(want, string(r)))
		}
	}
}

func TestRowsHigherThanAPageAreBroken(t *testing.T) {
	tab := Table{Columns: []Column{{Head: "Word"}, {Head: "Much", Width: 30_000}}}
	tab.Rows = []Row{{ID: "row", Cells: []string{"start", strings.Repeat("tile ", 200)}}}
	got := tab.Flow(boxOf(40_000))
	n, ids := 0, 0
	for _, f := range got {
		n += strings.Count(bodies(page(f)), "tile")
		for _, it := range f.Items {
			if g, ok := it.(draw.Group); ok && g.ID == "row" {
				ids++
			}
		}
	}
	if n != 200 || ids != 1 || len(got) < 3 {
		t.Errorf("%d words of 200 on %d pages, the id %d times", n, len(got), ids)
	}
	if low := tab.Flow(boxOf(1)); len(low) < 10 {
		t.Errorf("a box too low for a line took %d pages", len(low))
	}
}

func TestColumnsShareTheRoom(t *testing.T) {
	long := strings.Repeat("word ", 40)
	for name, c := range map[string]struct {
		table Table
		room  draw.Um
		check func(w []draw.Um) bool
	}{
		"as wide as needed": {Table{Columns: []Column{{Head: "A"}, {Head: "B"}}}, 100_000,
			func(w []draw.Um) bool { return w[0]+w[1] < 20_000 }},
		"long text takes the rest": {Table{Columns: []Column{{Head: "A"}, {Head: "B"}}, Rows: []Row{{Cells: []string{"7", long}}}}, 100_000,
			func(w []draw.Um) bool { return w[0] < 10_000 && w[0]+w[1] <= 100_000 && w[1] > 90_000 }},
		"a head goes over two lines before a cell does": {Table{Columns: []Column{{Head: "Water for each"}, {Head: "B"}}, Rows: []Row{{Cells: []string{"5 L", "Monday evening at the back wall"}}}}, 70_000,
			func(w []draw.Um) bool {
				return w[1] >= typeset.Width("Monday evening at the back wall", sized(0), false)+2*cellSide && w[0]+w[1] <= 70_000
			}},
		"wishes come first": {Table{Columns: []Column{{Head: "A", Width: 30_000}, {Head: long}}}, 100_000,
			func(w []draw.Um) bool { return w[0] == 30_000 && w[1] <= 70_000 }},
		"too little for the words": {Table{Columns: []Column{{Head: "Interminable"}, {Head: "Interminable"}}}, 20_000,
			func(w []draw.Um) bool { return w[0] == w[1] && w[0]+w[1] <= 20_000 }},
	} {
		if w := c.table.widths(c.room); !c.check(w) {
			t.Errorf("%s: %v", name, w)
		}
	}
}

func TestNotes(t *testing.T) {
	n := Notes{Title: "Assumed", Numbered: true, Lines: []string{strings.Repeat("the floor is level ", 12), "warpage unknown"}}
	h := n.Height(80_000)
	got := n.Flow(func(int) draw.Box { return draw.Span(10_000, 100_000-h, 90_000, 100_000) })
	if len(got) != 1 || got[0].Bottom != 100_000-h {
		t.Fatalf("height %d, but %d pages to %d", h, len(got), got[0].Bottom)
	}
	words := bodies(page(got[0]))
	if !strings.HasPrefix(words, "Assumed 1. the floor") || !strings.Contains(words, "2. warpage unknown") {
		t.Error(words)
	}
	if over := typeset.Overlaps(page(got[0])); len(over) > 0 {
		t.Error(over)
	}
}
