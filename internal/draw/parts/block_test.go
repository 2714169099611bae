package parts

import (
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

var hostile = []string{"", "a\xff\xfe", "😀", "<script>", strings.Repeat("W", 2_000), strings.Repeat("word ", 300), "\x00\n\t"}

// ISO 7200: 180 mm wide and no wider, so that it fits A4 between its margins (210 - 20 - 10).
func TestTitleBlockFitsEverySheet(t *testing.T) {
	for _, p := range draw.Papers() {
		for _, paper := range []draw.Paper{p, p.Landscape()} {
			for _, s := range append(hostile, "Boathouse washroom") {
				frame, in := Frame(paper)
				tb := TitleBlock{Document: s, Title: s, Detail: s, Scale: s, Revision: s, Paper: s, Units: s, Sheet: 12, Sheets: 345}
				corner := draw.At(in.Hi.X, in.Lo.Y)
				sheet := draw.Page{W: paper.W, H: paper.H, Items: append(frame, tb.Items(corner, in.W())...)}
				b := tb.Box(corner, in.W())
				if over := typeset.Overlaps(sheet); len(over) > 0 {
					t.Errorf("%s, %.20q: %v", paper.Name, s, over)
				}
				if struck := typeset.Struck(sheet); len(struck) > 0 {
					t.Errorf("%s, %.20q: %v", paper.Name, s, struck)
				}
				if b.W() > 180*draw.MM || !in.Holds(b) {
					t.Errorf("%s: %v in %v", paper.Name, b, in)
				}
				for _, text := range typeset.Placements(sheet) {
					if !b.Holds(text.Box) {
						t.Errorf("%s: %q leaves the block", paper.Name, text.Text.Body)
					}
				}
			}
		}
	}
}

func TestSheetNumbers(t *testing.T) {
	for want, tb := range map[string]TitleBlock{"": {}, "3": {Sheet: 3}, "3/12": {Sheet: 3, Sheets: 12}} {
		if got := tb.number(); got != want {
			t.Errorf("%+v is %q, want %q", tb, got, want)
		}
	}
}

// The bars are what they say: 100 mm, and 4 in of 25.4 mm.
func TestRulersMeasure(t *testing.T) {
	for _, c := range []struct {
		inches bool
		want   draw.Um
	}{{false, 100_000}, {true, 101_600}} {
		r := Ruler(draw.At(10_000, 10_000), c.inches)
		if r.W() != c.want {
			t.Errorf("inches %v: %d um", c.inches, r.W())
		}
		for _, it := range r.Items() {
			if p, ok := it.(draw.Path); ok && !draw.Span(10_000, 10_000, 10_000+c.want, 12_000).Holds(p.Reach()) {
				t.Errorf("inches %v: %v stands out", c.inches, p.Reach())
			}
		}
		if over := typeset.Overlaps(draw.Page{W: 200_000, H: 50_000, Items: r.Items()}); len(over) > 0 {
			t.Error(over)
		}
	}
}

func TestLabelsStandWithinOrSaySo(t *testing.T) {
	for _, c := range []struct {
		w, h draw.Um
		turn int
		ok   bool
	}{{30_000, 30_000, 0, true}, {30_000, 4_000, 0, true}, {4_000, 30_000, 90, true}, {4_000, 4_000, 90, false}, {30_000, 3_000, 90, false}} {
		box := draw.Span(10_000, 10_000, 10_000+c.w, 10_000+c.h)
		l, ok := Label{Body: "A-12-3"}.In(box)
		if ok != c.ok || l.Turn != c.turn {
			t.Errorf("%d by %d: %v, turn %d", c.w, c.h, ok, l.Turn)
		}
		if ok && !box.Holds(l.Box()) {
			t.Errorf("%v stands out of %v", l.Box(), box)
		}
	}
	for clear, want := range map[bool]int{false: 2, true: 1} {
		if n := len(Label{Body: "7", Clear: clear}.Items()); n != want {
			t.Errorf("clear %v: %d items", clear, n)
		}
	}
}

func TestLeaderStandsAwayFromItsTip(t *testing.T) {
	for _, knee := range []draw.XY{draw.At(120_000, 60_000), draw.At(80_000, 60_000)} {
		l := Leader{Tip: draw.At(100_000, 40_000), Knee: knee, Lines: []string{"hole 1-3/8", "measure here first"}}
		p := draw.Page{W: 200_000, H: 100_000, Items: l.Items()}
		if over := typeset.Overlaps(p); len(over) > 0 {
			t.Error(over)
		}
		for _, text := range typeset.Placements(p) {
			if text.Box.Lo.Y <= knee.Y || text.Box.Meets(draw.Span(l.Tip.X-1, 0, l.Tip.X+1, 100_000)) {
				t.Errorf("%q in %v", text.Text.Body, text.Box)
			}
			if !l.Box().Inset(-10).Holds(draw.Span(text.Box.Lo.X, text.Box.Hi.Y-1, text.Box.Hi.X, text.Box.Hi.Y)) {
				t.Errorf("%q stands out of %v", text.Text.Body, l.Box())
			}
		}
	}
}

func TestKey(t *testing.T) {
	k := Key{Title: "Key", Entries: []Entry{
		{Fill: draw.Fill{Hatch: draw.Diagonal}, Text: "cut tile"},
		{Fill: draw.Fill{Hatch: draw.Dots}, Text: strings.Repeat("mortar ", 30)},
		{Pen: draw.Line(draw.Narrow).As(draw.Chain), Line: true, Text: "level line"},
	}}
	items, bottom := k.Items(draw.At(10_000, 100_000), 60_000)
	p := draw.Page{W: 100_000, H: 110_000, Items: items}
	if over := typeset.Overlaps(p); len(over) > 0 {
		t.Error(over)
	}
	for _, text := range typeset.Placements(p) {
		if text.Box.Hi.X > 70_000 || text.Box.Lo.Y < bottom-1_000 {
			t.Errorf("%q in %v, bottom %d", text.Text.Body, text.Box, bottom)
		}
	}
}

func TestHostileWordsAnywhere(t *testing.T) {
	for _, s := range hostile {
		var items []draw.Item
		items = append(items, Dimension{From: 0, To: 9_000, Line: 5_000, Text: s}.Items()...)
		items = append(items, Running{Origin: Mark{Text: s}, Marks: []Mark{{At: 5, Text: s}, {At: 5, Text: s}}, Line: 9_000}.Items()...)
		items = append(items, Leader{Lines: []string{s}}.Items()...)
		items = append(items, Label{Body: s}.Items()...)
		more, _ := Key{Title: s, Entries: []Entry{{Text: s}}}.Items(draw.At(0, 0), 20_000)
		typeset.Overlaps(draw.Page{Items: append(items, more...)})
		for _, f := range (Table{Caption: s, Columns: []Column{{Head: s}}, Rows: []Row{{Cells: []string{s, s}}}}).Flow(boxOf(90_000)) {
			typeset.Overlaps(page(f))
		}
	}
}
