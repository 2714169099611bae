package parts

import (
	"fmt"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"

	"pgregory.net/rapid"
)

// wide is a page on which nothing can leave: parts are drawn about its middle.
func wide(items []draw.Item) draw.Page {
	const far = 5_000 * draw.MM
	return draw.Page{W: 2 * far, H: 2 * far, Items: draw.Moved(items, draw.At(far, far))}
}

func texts(items []draw.Item) []draw.Text {
	var out []draw.Text
	for _, p := range typeset.Placements(wide(items)) {
		out = append(out, p.Text)
	}
	return out
}

// crossed lists values that a line of the drawing runs through: strictly, so that touching is allowed.
func crossed(items []draw.Item) []string {
	var out []string
	page := wide(items)
	for _, p := range typeset.Placements(page) {
		for _, it := range page.Items {
			if path, ok := it.(draw.Path); ok && len(path.Rings) > 0 && runsThrough(path.Rings[0], p.Box.Inset(50)) {
				out = append(out, fmt.Sprintf("a line %v runs through %q in %v", path.Rings[0], p.Text.Body, p.Box))
			}
		}
	}
	return out
}

// runsThrough tries points along the line, 0.1 mm apart.
func runsThrough(line []draw.XY, b draw.Box) bool {
	for i := 1; i < len(line); i++ {
		p, q := line[i-1], line[i]
		if !b.Inset(-200).Meets(draw.Span(min(p.X, q.X), min(p.Y, q.Y), max(p.X, q.X), max(p.Y, q.Y)).Inset(-1)) {
			continue
		}
		n := max(p.X-q.X, q.X-p.X, p.Y-q.Y, q.Y-p.Y)/100 + 1
		for k := range n + 1 {
			at := draw.At(p.X+(q.X-p.X)*k/n, p.Y+(q.Y-p.Y)*k/n)
			if b.Holds(draw.Box{Lo: at, Hi: at}) {
				return true
			}
		}
	}
	return false
}

// marksIn draws places of a run: a few far apart, many near each other, some twice.
func marksIn(t *rapid.T) []Mark {
	n := rapid.IntRange(1, 40).Draw(t, "marks")
	var out []Mark
	for i := range n {
		at := draw.Um(rapid.Int64Range(0, 180_000).Draw(t, "at"))
		if i > 0 && rapid.Bool().Draw(t, "near") {
			at = min(180_000, out[i-1].At+draw.Um(rapid.Int64Range(0, 3_000).Draw(t, "step")))
		}
		text := rapid.SampledFrom([]string{"0", "7", "11-13/16", "1234.5", "119-127/128", "Åg (soft joint)", "8' 2-3/8\""}).Draw(t, "text")
		out = append(out, Mark{At: at, Text: text, Bold: rapid.Bool().Draw(t, "bold")})
	}
	return out
}

func runIn(t *rapid.T) Running {
	r := Running{Vertical: rapid.Bool().Draw(t, "vertical"), Line: 50_000, Feature: 60_000, Marks: marksIn(t)}
	r.Origin = Mark{At: draw.Um(rapid.Int64Range(0, 180_000).Draw(t, "origin")), Text: "0"}
	if rapid.Bool().Draw(t, "other side") {
		r.Feature = 40_000
	}
	if rapid.Bool().Draw(t, "limited") {
		r.Limits = &Limits{-5_000, 185_000}
	}
	return r
}

// Five times rapid's hundred sets.
func TestRunningValuesNeverOverlapNorVanish(t *testing.T) {
	for range 5 {
		rapid.Check(t, func(t *rapid.T) {
			r := runIn(t)
			items := r.Items()
			if over := typeset.Overlaps(wide(items)); len(over) > 0 {
				t.Fatal(over)
			}
			if got := texts(items); len(got) != len(r.Marks)+1 {
				t.Fatalf("%d values of %d marks and an origin", len(got), len(r.Marks))
			}
			if through := crossed(items); len(through) > 0 {
				t.Fatal(through[0])
			}
			within(t, r, items)
		})
	}
}

// within checks that values keep the limits where the run says so, and that Depth holds all lettering.
func within(t *rapid.T, r Running, items []draw.Item) {
	a, out := axis{r.Vertical}, outward(r.Feature, r.Line)
	for _, text := range texts(items) {
		b := typeset.BoxOf(text)
		b = draw.Box{Lo: b.Lo.Plus(draw.At(-5_000_000, -5_000_000)), Hi: b.Hi.Plus(draw.At(-5_000_000, -5_000_000))}
		lo, hi, near, far := a.reach(b)
		if r.Limits != nil && r.Fits() && (lo < r.Limits.Lo || hi > r.Limits.Hi) {
			t.Fatalf("%q at %d..%d leaves %v", text.Body, lo, hi, *r.Limits)
		}
		if d := max((near-r.Line)*out, (far-r.Line)*out); d > r.Depth() {
			t.Fatalf("%q reaches %d, the depth is %d", text.Body, d, r.Depth())
		}
	}
}

func TestRunningStandsStillWhereThereIsRoom(t *testing.T) {
	r := Running{Feature: 60_000, Line: 50_000, Origin: Mark{At: 0, Text: "0"}, Marks: []Mark{{At: 40_000, Text: "40"}, {At: 90_000, Text: "90"}}}
	for i, text := range texts(r.Items()) {
		if got, want := text.At.X-5_000_000, []draw.Um{0, 40_000, 90_000}[i]+Small/2; got != want {
			t.Errorf("%q stands at %d, want %d", text.Body, got, want)
		}
	}
	if circles := kinds[draw.Circle](r.Items()); circles != 1 {
		t.Errorf("%d origins", circles)
	}
}

func kinds[T draw.Item](items []draw.Item) (n int) {
	for _, it := range items {
		if _, ok := it.(T); ok {
			n++
		}
	}
	return n
}

func TestRunningSaysWhenItDoesNotFit(t *testing.T) {
	r := Running{Feature: 60_000, Line: 50_000, Origin: Mark{Text: "0"}, Limits: &Limits{0, 100_000}}
	for i := range 60 {
		r.Marks = append(r.Marks, Mark{At: draw.Um(i) * 1_600, Text: "12"})
	}
	if r.Fits() {
		t.Error("61 values of 2.5 mm fit into 100 mm")
	}
	if over := typeset.Overlaps(wide(r.Items())); len(over) > 0 || len(texts(r.Items())) != 61 {
		t.Error(over)
	}
	r.Limits = nil
	if !r.Fits() {
		t.Error("no limits, and no room")
	}
}

func TestChainTextsNeverOverlapNorVanish(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Chain{Vertical: rapid.Bool().Draw(t, "vertical"), Line: 50_000, Feature: rapid.SampledFrom([]draw.Um{40_000, 60_000}).Draw(t, "feature"), At: []draw.Um{0}}
		for i := range rapid.IntRange(1, 25).Draw(t, "n") {
			c.At = append(c.At, c.At[i]+draw.Um(rapid.Int64Range(0, 25_000).Draw(t, "step")))
			c.Texts = append(c.Texts, rapid.SampledFrom([]string{"7", "11-13/16", "119-127/128 in"}).Draw(t, "text"))
		}
		items := c.Items()
		if over := typeset.Overlaps(wide(items)); len(over) > 0 {
			t.Fatal(over)
		}
		if got := texts(items); len(got) != len(c.Texts) {
			t.Fatalf("%d texts, want %d", len(got), len(c.Texts))
		}
		if through := crossed(items); len(through) > 0 {
			t.Fatal(through[0])
		}
	})
}

// ISO 129-1: the value stands above the dimension line, near its middle; a vertical one reads from the right.
func TestDimensionStandsAboveItsLine(t *testing.T) {
	for _, c := range []struct {
		vertical bool
		feature  draw.Um
	}{{false, 40_000}, {false, 60_000}, {true, 40_000}, {true, 60_000}} {
		d := Dimension{Vertical: c.vertical, From: 120_000, To: 20_000, Feature: c.feature, Line: 50_000, Text: "100"}
		text := texts(d.Items())[0]
		want, turn := draw.At(5_070_000, 5_050_000+textOff), 0
		if c.vertical {
			want, turn = draw.At(5_050_000-textOff, 5_070_000), 90
		}
		if text.At != want || text.Turn != turn || text.Anchor != draw.Middle {
			t.Errorf("%+v: %+v", c, text)
		}
		if d.Depth() < beyond {
			t.Errorf("depth %d", d.Depth())
		}
	}
	if len(Chain{At: []draw.Um{1}}.Items()) != 0 {
		t.Error("a chain of nothing")
	}
}
