package joinery

import (
	"strings"
	"testing"

	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// Worked by hand. A box 26-9/16 wide, 16 long, in half sheet of 15/32: 30 less two sides of 23/32 is 28-9/16, less two slides of 1/2 and more
// is 27-9/16. Its bottom lies 1/2 up in grooves 1/4 deep and is 7/32 thick.
const boxed = standing + `    fronts: {drawer: {kind: drawer, height: 8, box height: 6}, door: {kind: door}}
    slides: {side: 1/2, length: 16}
`

func cutOf(t testing.TB, cut DrawerCut) (Cabinet, string) {
	t.Helper()
	r, doc := written(t, boxed)
	c, _, ok := buildChecked(r, doc)
	if !ok || len(c.Drawers) != 1 {
		t.Fatal(r.found)
	}
	cut.Cabinet, cut.Drawer, cut.For = "vanity", "drawer", "trap"
	before := len(c.Pieces)
	p, found := Plan{Cabinets: []Cabinet{c}}.CutDrawers([]DrawerCut{cut})
	if len(c.Pieces) != before || c.Drawers[0].Cut {
		t.Error("the plan that was given has changed")
	}
	return p.Cabinets[0], codes(&room{found: found})
}

func TestDrawerNotched(t *testing.T) {
	in := unit.Inch
	c, found := cutOf(t, DrawerCut{From: 10 * in, To: 14 * in, Deep: 5 * in, Up: 2 * in})
	back := pieceNamed(t, c, "drawer box back")
	if found != "" || !c.Drawers[0].Cut || len(back.Part.Cutouts) != 1 {
		t.Fatal(found, back.Part.Cutouts)
	}
	// The back stands between sides of 15/32, so 10 from the box's left is 9-17/32 from its own left end; it is 6 high and notched from 2 up.
	b := back.Part.Cutouts[0].Outline.Bounds()
	if exact(b.Min.X) != "9-17/32" || exact(b.Max.X) != "13-17/32" || exact(b.Min.Y) != "2" || exact(b.Max.Y) != "6" {
		t.Errorf("%s to %s, %s to %s", exact(b.Min.X), exact(b.Max.X), exact(b.Min.Y), exact(b.Max.Y))
	}
	if bottom := pieceNamed(t, c, "drawer box bottom"); len(bottom.Part.Cutouts) > 0 {
		t.Error("the bottom is cut")
	}
}

func TestDrawerMadeAU(t *testing.T) {
	in := unit.Inch
	c, found := cutOf(t, DrawerCut{From: 10 * in, To: 14 * in, Deep: 5 * in, Up: in / 2})
	if found != "" || !c.Drawers[0].Cut {
		t.Fatal(found)
	}
	// 27-9/16 wide: the back is 27-9/16 - 15/16 = 26-5/8 long; to 10 and from 14 of the box 9-17/32 and 13-3/32 of it are left. The strips stand
	// on the bottom, 1/2 + 7/32 up, so they are 5-9/32 high; beside the cut from the back, 15/32 thick, to 5: 4-17/32; before it 4 and both: 4-15/16.
	for name, want := range map[string]string{
		"drawer box back, left":       "9-17/32 x 6 x 15/32",
		"drawer box back, right":      "13-3/32 x 6 x 15/32",
		"drawer cut-out strip, left":  "4-17/32 x 5-9/32 x 15/32",
		"drawer cut-out strip, right": "4-17/32 x 5-9/32 x 15/32",
		"drawer cut-out strip, front": "4-15/16 x 5-9/32 x 15/32",
	} {
		s := pieceNamed(t, c, name).Part.Size
		if got := exact(s.Length) + " x " + exact(s.Width) + " x " + exact(s.Thick); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
	// The bottom begins 15/32 - 1/4 + 1/32 = 1/4 from the box's left and back: cut from 9-3/4 to 13-3/4, 4-3/4 deep from its rear edge.
	bottom := pieceNamed(t, c, "drawer box bottom")
	b := bottom.Part.Cutouts[0].Outline.Bounds()
	if exact(b.Min.X) != "9-3/4" || exact(b.Max.X) != "13-3/4" || exact(bottom.Part.Size.Width-b.Min.Y) != "4-3/4" || b.Max.Y != bottom.Part.Size.Width {
		t.Errorf("%s to %s, %s of %s", exact(b.Min.X), exact(b.Max.X), exact(b.Min.Y), exact(bottom.Part.Size.Width))
	}
}

// What would take a side, or the front, is told, and nothing is cut.
func TestDrawerNotCut(t *testing.T) {
	in := unit.Inch
	for _, c := range []struct {
		cut  DrawerCut
		want string
	}{
		{DrawerCut{From: in / 4, To: 4 * in, Deep: 5 * in, Up: 2 * in}, "drawer-cut-side"},           // the side is 15/32 thick
		{DrawerCut{From: in / 2, To: 4 * in, Deep: 5 * in, Up: 2 * in}, ""},                          // just beside it
		{DrawerCut{From: in / 2, To: 4 * in, Deep: 5 * in, Up: 0}, "drawer-cut-side"},                // no room for a strip
		{DrawerCut{From: in, To: 4 * in, Deep: 5 * in, Up: 0}, ""},                                   // 1 holds side and strip of 15/32
		{DrawerCut{From: 10 * in, To: 27 * in, Deep: 5 * in, Up: 0}, "drawer-cut-side"},              // 27-9/16 - 15/32 = 27-3/32; the strip lies in it
		{DrawerCut{From: 10 * in, To: 14 * in, Deep: 15*in + 3*in/4, Up: 2 * in}, "drawer-cut-side"}, // 16 - 15/32 = 15-17/32
	} {
		got, found := cutOf(t, c.cut)
		if found != c.want || got.Drawers[0].Cut == (c.want != "") {
			t.Errorf("%+v: %q, want %q", c.cut, found, c.want)
		}
	}
}

// Whatever is cut out of whatever drawer: no wood stays in the way, no two parts have wood at one place, and every part can be made.
func TestCutDrawersClose(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, doc := written(t, randomCabinet(rt))
		c, _, ok := buildChecked(r, doc)
		if !ok || len(c.Drawers) == 0 {
			return
		}
		d := c.Drawers[rapid.IntRange(0, len(c.Drawers)-1).Draw(rt, "drawer")]
		part := func(name string, of unit.Length) unit.Length {
			return of * unit.Length(rapid.IntRange(0, 64).Draw(rt, name)) / 64
		}
		from := part("from", d.Box.Size(0)/2)
		cut := DrawerCut{Cabinet: c.Name, Drawer: d.Name, For: "trap", From: from, To: from + unit.Inch + part("to", d.Box.Size(0)-from-unit.Inch), Deep: unit.Inch + part("deep", d.Box.Size(2)/2), Up: part("up", d.Box.Size(1)-unit.Inch)}
		p, found := Plan{Cabinets: []Cabinet{c}}.CutDrawers([]DrawerCut{cut})
		out := p.Cabinets[0]
		if len(found) > 0 {
			if len(out.Pieces) != len(c.Pieces) {
				rt.Fatal("cut, and told that it can not be")
			}
			return
		}
		if all := collisions(out); len(all) > 0 {
			rt.Fatalf("%+v\n%s", cut, strings.Join(all, "\n"))
		}
		way := span(d.Box.Lo[0]+cut.From, d.Box.Lo[0]+cut.To, d.Box.Lo[1]+cut.Up, d.Box.Hi[1], d.Box.Lo[2], d.Box.Lo[2]+cut.Deep)
		for _, q := range out.Pieces {
			if q.Of != d.Name || q.Role != DrawerRole {
				continue
			}
			if in := q.Box.And(way); !in.Empty() && wood2(in, gone(q)) {
				rt.Fatalf("%+v: %s stands in the way", cut, q.Part.Name)
			}
			for _, f := range q.Part.Check() {
				rt.Fatalf("%+v: %s", cut, f.Say(unit.DefaultStyle(unit.Inches)))
			}
		}
	})
}
