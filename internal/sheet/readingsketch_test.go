package sheet

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Each line: readings, and the words that their drawing shows. A drawing of nothing shows no number.
func TestReadingSketches(t *testing.T) {
	for _, c := range []struct{ wall, want, not string }{
		{"profile: {0: 0, 35: 1/4, 72: -1/8}", "1/4 35 72 -1/8", ""},
		{"studs: {16: -1/8}", "-1/8 16", ""},
		{"floor: {0: 40-1/8, 35: 40-1/4}", "40-1/8 40-1/4 35", ""},
		{"ceiling: {0: 55, 36: 42-1/2}", "55 42-1/2 36", ""},
		{"straightedge: [{length: 6 ft, gap: 3/16}, {length: 24, gap: 1/16}]", "72in 24in gap3/16in gap1/16in", ""},
		{"least bed: 1/8", "A B", "0123456789"},
	} {
		p := planned(t, fmt.Appendf(nil, "dryfit: 1\nname: x\nunits: in\nsurvey: {corners: A B C D, tape: {A-B: 72, B-C: 96, C-D: 72, D-A: 96, A-C: 120}}\nwalls: {w: {along: A-B, %s}}\n", c.wall))
		w := p.Document.Walls[0]
		said := strings.ReplaceAll(wordsOn(GapsOnScreen(p, "w", w.Straightedge)), " ", "")
		for k := range Strip(4) {
			said += strings.ReplaceAll(wordsOn(StripOnScreen(p, w, k)), " ", "")
		}
		for _, word := range strings.Fields(c.want) {
			if !strings.Contains(said, word) {
				t.Errorf("%s: no %s in %s", c.wall, word, said)
			}
		}
		if c.not != "" && strings.ContainsAny(said, c.not) {
			t.Errorf("%s: a number in %s", c.wall, said)
		}
	}
}

// A thing in the floor is drawn at its distances: 12 off the wall at the top and 30 off the wall at the right.
func TestOffSketch(t *testing.T) {
	const doc = "dryfit: 1\nname: x\nunits: mm\nsurvey: {corners: A B C D, tape: {A-B: 3000, B-C: 4000, C-D: 3000, D-A: 4000, A-C: 5000}}\n" +
		"walls: {top: {along: A-B}, right: {along: B-C}}\nstub-outs: {drain: {in: floor, off: {top: 1000, right: 2000}, diameter: 50}}\n"
	p := planned(t, []byte(doc))
	page := OffOnScreen(p, "drain", p.Document.Stubs[0].FloorAt)
	ring, hole := draw.Box{}, draw.XY{}
	for _, it := range page.Items {
		switch it := it.(type) {
		case draw.Path:
			if it.Class == "room" {
				ring = it.Reach()
			}
		case draw.Circle:
			hole = it.C
		}
	}
	// 1/4 of the way down and 2/3 of the way back from the right, to a tenth of a millimeter of paper.
	wantX, wantY := ring.Hi.X-ring.W()*2/3, ring.Hi.Y-ring.H()/4
	if dist(hole, draw.At(wantX, wantY)) > 100 {
		t.Errorf("the drain is at %v; want %v, %v in %v", hole, wantX, wantY, ring)
	}
	if said := wordsOn(page); !strings.Contains(said, "1000") || !strings.Contains(said, "2000") {
		t.Error(said)
	}
}

// Words of the sketches of both demo rooms stand clear of each other and within their drawing.
func TestReadingSketchesAreClear(t *testing.T) {
	for _, room := range demo.Rooms() {
		p := planned(t, room.Text)
		pages := map[string]draw.Page{"floor": GapsOnScreen(p, "the floor", p.Document.Floor.Straightedge)}
		for _, w := range p.Document.Walls {
			pages[w.Name] = GapsOnScreen(p, w.Name, w.Straightedge)
			for k := range Strip(4) {
				pages[fmt.Sprint(w.Name, k)] = StripOnScreen(p, w, k)
			}
		}
		for _, s := range p.Document.Stubs {
			pages[s.Name] = OffOnScreen(p, s.Name, s.FloorAt)
		}
		for _, c := range p.Document.Corners {
			pages["corner "+c.Name] = EdgeOnScreen(p, c.Name, c)
		}
		for name, page := range pages {
			for _, o := range typeset.Overlaps(page) {
				t.Errorf("%s, %s: %+v", room.File, name, o)
			}
			for _, w := range typeset.Placements(page) {
				if !draw.Span(0, 0, page.W, page.H).Holds(w.Box) {
					t.Errorf("%s, %s: %q leaves the drawing", room.File, name, w.Text.Body)
				}
			}
		}
	}
}
