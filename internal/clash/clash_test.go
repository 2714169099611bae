package clash

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// scene reads envelopes before one wall that runs along +x, one a line: name, kind, and three stretches in 1/16 in: along, up, off the wall.
func scene(t *testing.T, lines string) []space.Envelope {
	t.Helper()
	kinds := map[string]space.Kind{"screw": space.Screw, "bar screw": space.Screw, "pipe": space.Pipe, "cable": space.Cable, "stud": space.Stud, "blocking": space.Blocking, "tile": space.Tile, "trap": space.Trap, "stop": space.Stop,
		"drawer": space.Drawer, "shelf": space.Shelf, "panel": space.Panel, "way": space.Pull, "swing": space.Swing, "leaf": space.Leaf, "fixture": space.Fixture, "trim": space.Trim, "top": space.Top}
	w := space.Wall{Name: "wall", Right: geom.Point{X: 200 * unit.Inch}}
	var all []space.Envelope
	for line := range strings.Lines(lines) {
		line = strings.TrimSpace(line)
		if line == "" {
			continue
		}
		name, rest, _ := strings.Cut(line, " = ")
		kind, figures, _ := strings.Cut(rest, ":")
		var v [6]unit.Length
		if n, err := fmt.Sscan(figures, &v[0], &v[1], &v[2], &v[3], &v[4], &v[5]); n < 6 {
			t.Fatalf("%q: %v", line, err)
		}
		for i := range v {
			v[i] *= unit.Inch / 16
		}
		k, ok := kinds[kind]
		if !ok {
			t.Fatalf("%q: no kind %q", line, kind)
		}
		e := w.Box(space.Envelope{Name: name, Owner: "o > " + name, Kind: k, Holds: kind == "bar screw"}, space.Span{Lo: v[0], Hi: v[1]}, space.Span{Lo: v[2], Hi: v[3]}, space.Span{Lo: v[4], Hi: v[5]})
		if k == space.Tile {
			e.Face = geom.RectRing(e.Rect(), 0, 0, 0, 0)
		}
		all = append(all, e)
	}
	return all
}

func say(p Plan) string {
	var b strings.Builder
	for _, m := range p.Meetings {
		word := "clears"
		if m.Misses {
			word = m.Class.String()
		}
		fmt.Fprintf(&b, "%s/%s %s %s; ", m.One, m.Other, word, unit.Style{System: unit.Inches, Mark: unit.Inch / 64}.Bare(m.Apart))
	}
	for _, c := range p.CutOuts {
		s := unit.Style{System: unit.Inches, Mark: unit.Inch / 64}
		fmt.Fprintf(&b, "cut %s %s to %s, %s deep, up %s; ", c.Drawer, s.Bare(c.From), s.Bare(c.To), s.Bare(c.Deep), s.Bare(c.Up))
	}
	return strings.TrimSuffix(b.String(), "; ")
}

// Lengths are in 1/16 in: 24 is 1-1/2 in.
func TestMeetings(t *testing.T) {
	for _, c := range []struct{ what, scene, want string }{
		{"1-1/2 in from a cable stops work", "s = screw: 100 100 100 100 -40 0\nc = cable: 124 132 0 300 0 0", "s/c stop 1-1/2"},
		{"1-9/16 in passes", "s = screw: 100 100 100 100 -40 0\nc = cable: 125 132 0 300 0 0", "s/c clears 1-9/16"},
		{"in a pipe", "s = screw: 128 128 100 100 -40 0\nc = pipe: 124 132 0 300 0 0", "s/c stop 0"},
		{"above the end of a pipe", "s = screw: 128 128 124 124 -40 0\nc = pipe: 124 132 0 100 0 0", "s/c stop 1-1/2"},
		{"in a stud, 3/8 in from its edge", "s = bar screw: 106 106 100 100 -40 0\nd = stud: 100 124 0 300 0 0", ""},
		{"in a stud, 5/16 in from its edge", "s = bar screw: 105 105 100 100 -40 0\nd = stud: 100 124 0 300 0 0", "s/d stop 1/16"},
		{"what holds little had better", "s = screw: 90 90 100 100 -40 0\nd = stud: 100 124 0 300 0 0", "s/d look 1"},
		{"in blocking", "s = bar screw: 200 200 100 100 -40 0\nd = stud: 100 124 0 300 0 0\nb = blocking: 124 300 90 110 0 0", ""},
		{"nothing recorded says nothing", "s = bar screw: 200 200 100 100 -40 0", ""},
		// 10 mm = 6.3 sixteenths
		{"7/16 in from the edge of its tile", "s = screw: 107 107 150 150 -40 0\nt = tile: 100 300 100 200 0 0", "s/t clears 7/16"},
		{"6/16 in from the edge of its tile", "s = screw: 106 106 150 150 -40 0\nt = tile: 100 300 100 200 0 0", "s/t look 3/8"},
		{"in a joint", "s = screw: 99 99 150 150 -40 0\nt = tile: 100 300 100 200 0 0\nu = tile: 0 98 100 200 0 0", "s/t look 0"},
		{"over the tile", "s = screw: 150 150 240 240 -40 0\nt = tile: 100 300 100 200 0 0", ""},
		{"a shelf under a trap", "f = shelf: 0 400 80 92 0 200\np = trap: 180 220 92 140 60 100", "f/p clears 0"},
		{"a shelf in a trap", "f = shelf: 0 400 80 93 0 200\np = trap: 180 220 92 140 60 100", "f/p look -1/16"},
		// a trap of 40 at 180 to 220, with 8 all round, in a drawer from 20 to 380 and 30 to 300 off the wall
		{"a drawer is cut out", "d = drawer: 20 380 100 180 30 300\np = trap: 180 220 120 160 60 100", "cut d 9-1/2 to 13, 4-7/8 deep, up 3/4"},
		{"a drawer under it stays whole", "d = drawer: 20 380 20 112 30 300\np = trap: 180 220 120 160 60 100", ""},
		{"a drawer 1/16 higher is cut", "d = drawer: 20 380 20 113 30 300\np = trap: 180 220 120 160 60 100", "cut d 9-1/2 to 13, 4-7/8 deep, up 5-3/4"},
		{"trap and stop in one cut", "d = drawer: 20 380 100 180 30 300\np = trap: 180 220 120 160 60 100\nv = stop: 100 130 110 140 0 48", "cut d 4-1/2 to 13, 4-7/8 deep, up 1/8"},
		{"nothing would be left", "d = drawer: 180 220 100 180 30 90\np = trap: 170 240 120 160 20 100", "d/p stop -1/2; cut d 0 to 2-1/2, 3-3/4 deep, up 3/4"},
		{"a drawer's way 1/8 from a WC", "w = way: 100 200 100 160 300 600\nx = fixture: 202 300 0 200 0 500", "w/x clears 1/8"},
		{"a drawer's way 1/16 from a WC", "w = way: 100 200 100 160 300 600\nx = fixture: 201 300 0 200 0 500", "w/x stop 1/16"},
		{"a drawer 1/16 in under a top", "w = way: 100 200 100 160 300 600\nx = top: 0 400 161 180 0 600", "w/x clears 1/16"},
		{"a drawer that rubs on a top", "w = way: 100 200 100 160 300 600\nx = top: 0 400 160 180 0 600", "w/x stop 0"},
		{"a way over a WC", "w = way: 100 200 202 260 300 600\nx = fixture: 150 300 0 200 0 500", "w/x clears 1/8"},
		{"two ways across each other", "w = way: 100 200 100 160 300 600\nv = swing: 150 300 100 160 300 600", "w/v look -3-1/8"},
		{"a way and the room's door", "w = way: 100 200 100 160 300 600\nl = leaf: 150 300 0 700 500 900", "w/l look -3-1/8"},
		{"the room's door and a panel", "l = leaf: 150 300 0 700 500 900\np = panel: 0 148 0 200 0 700", "l/p clears 1/8"},
	} {
		p, found := Make(scene(t, c.scene))
		if got := say(p); got != c.want {
			t.Errorf("%s: %q, want %q", c.what, got, c.want)
		}
		missed := 0
		for _, m := range p.Meetings {
			if m.Misses {
				missed++
			}
		}
		if len(found) != missed+len(p.CutOuts) {
			t.Errorf("%s: %d findings", c.what, len(found))
		}
	}
}

// The order in which envelopes come does not matter to what is told.
func TestOrder(t *testing.T) {
	all := scene(t, "d = drawer: 20 380 100 180 30 300\np = trap: 180 220 120 160 60 100\ns = screw: 106 106 150 150 -40 0\nt = tile: 100 300 100 200 0 0\nc = cable: 124 132 0 300 0 0")
	a, found := Make(all)
	for i := range all {
		rolled := append(append([]space.Envelope{}, all[i:]...), all[:i]...)
		if b, told := Make(rolled); say(a) != say(b) || len(told) != len(found) {
			t.Errorf("%q, then %q", say(a), say(b))
		}
	}
}
