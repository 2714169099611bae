package geom

import "testing"

// Worked out by hand. Sides of the clip have labels 21 left, 22 bottom, 23 right, 24 top.
func TestClipRect(t *testing.T) {
	for _, c := range []struct{ name, region, clip, want string }{
		{"all inside", square, "2 3 4 5", "2 3:22, 4 3:23, 4 5:24, 2 5:21"},
		{"flush with the wall: the tile's sides", square, "0 0 4 5", "0 0:22, 4 0:23, 4 5:24, 0 5:21"},
		{"the tile is the wall", square, "0 0 10 10", "0 0:22, 10 0:23, 10 10:24, 0 10:21"},
		{"around the wall", square, "-1 -1 11 11", square},
		{"apart", square, "20 0 30 5", ""},
		{"touching", square, "10 0 30 5", ""},
		{"a corner", square, "8 7 12 12", "8 7:22, 10 7:2, 10 10:3, 8 10:21"},
		{"around a hole", holed, "2 2 8 8", "2 2:22, 8 2:23, 8 8:24, 2 8:21 / 4 4:5, 4 6:6, 6 6:7, 6 4:8"},
		{"a notch", holed, "5 2 8 5", "5 2:22, 8 2:23, 8 5:24, 6 5:7, 6 4:8, 5 4:21"},
		{"the hole is the tile", holed, "4 4 6 6", ""},
		{"beside the hole, flush", holed, "1 4 4 6", "1 4:22, 4 4:23, 4 6:24, 1 6:21"},
		{"across a cup's legs: two pieces", cup, "1 5 9 8", "1 5:22, 3 5:6, 3 8:24, 1 8:21 / 7 5:22, 9 5:23, 9 8:24, 7 8:4"},
		{"across a cup's legs and foot", cup, "1 2 9 8", "1 2:22, 9 2:23, 9 8:24, 7 8:4, 7 4:5, 3 4:6, 3 8:24, 1 8:21"},
		{"a hole that touches top and bottom parts the tile", "0 0:1, 10 0:2, 10 10:3, 0 10:4 / 5 2:5, 3 5:6, 5 8:7, 7 5:8", "1 2 9 8",
			"1 2:22, 5 2:5, 3 5:6, 5 8:24, 1 8:21 / 5 2:22, 9 2:23, 9 8:24, 5 8:7, 7 5:8"},
		{"a hole that touches the bottom only", "0 0:1, 10 0:2, 10 10:3, 0 10:4 / 5 2:5, 3 5:6, 5 8:7, 7 5:8", "1 2 9 9",
			"1 2:22, 9 2:23, 9 9:24, 1 9:21 / 3 5:6, 5 8:7, 7 5:8, 5 2:5"},
		{"two holes that touch each other part the tile",
			"0 0, 100 0, 100 100, 0 100 / 20 20, 20 40, 40 40, 40 20 / 40 40, 40 60, 60 60, 60 40", "20 20 60 60",
			"20 40, 40 40, 40 60:24, 20 60:21 / 40 20:22, 60 20:23, 60 40, 40 40"},
	} {
		g, r := parse(t, c.region), rectOf(t, c.clip)
		want := show(parse(t, c.want))
		if got := show(g.ClipRect(r, [4]Label{21, 22, 23, 24})); got != want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, want)
		}
		if got := show(NewIndex(g).ClipRect(r, [4]Label{21, 22, 23, 24})); got != want {
			t.Errorf("%s, through the index:\n got %s\nwant %s", c.name, got, want)
		}
	}
}

// A region is never changed by what is made from it.
func TestClippingLeavesTheRegionAlone(t *testing.T) {
	for _, text := range []string{square, holed, cup, triangle} {
		g := parse(t, text)
		g.ClipRect(rectOf(t, "1 2 9 8"), [4]Label{21, 22, 23, 24})
		g.HalfPlane(pt(0, 5), pt(10, 6), 9)
		g[0].Clean()
		g.Neck()
		if show(g) != show(parse(t, text)) {
			t.Errorf("%s became %s", text, show(g))
		}
	}
}
