package joinery

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/part"
	"dryfit/internal/unit"

	"pgregory.net/rapid"
)

// A part's frame is left-handed, for its thickness goes down from the face: length to the right, width away, thickness down. A turn that
// were right-handed would be a part in a mirror.
func TestTurnsAreLeftHanded(t *testing.T) {
	for turn, w := range turns {
		var m [3][3]int
		for i, v := range w {
			m[i][v.axis] = 1
			if v.back {
				m[i][v.axis] = -1
			}
		}
		det := m[0][0]*(m[1][1]*m[2][2]-m[1][2]*m[2][1]) - m[0][1]*(m[1][0]*m[2][2]-m[1][2]*m[2][0]) + m[0][2]*(m[1][0]*m[2][1]-m[1][1]*m[2][0])
		if det != -1 {
			t.Errorf("turn %d: %d", turn, det)
		}
	}
}

// gone are the boxes that a piece's channels and notches take out of it, back in the cabinet's frame: the way here is the inverse of the
// one in the code, written again.
func gone(p Piece) []Box {
	var all []Box
	place := func(lo, hi [3]unit.Length) Box {
		var b Box
		for i, w := range turns[p.Turn] {
			l, h := p.Box.Lo[w.axis]+lo[i], p.Box.Lo[w.axis]+hi[i]
			if w.back {
				l, h = p.Box.Hi[w.axis]-hi[i], p.Box.Hi[w.axis]-lo[i]
			}
			b.Lo[w.axis], b.Hi[w.axis] = l, h
		}
		return b
	}
	size := [3]unit.Length{p.Part.Size.Length, p.Part.Size.Width, p.Part.Size.Thick}
	for _, c := range p.Part.Channels {
		i, j, k := map[bool]int{true: 0, false: 1}[!c.On.IsEnd()], map[bool]int{true: 1, false: 2}[c.On.Flat()], 0
		switch {
		case c.On.Flat():
			k = 2
		case c.On.IsEnd():
			k = 0
		default:
			k = 1
		}
		var lo, hi [3]unit.Length
		lo[i], hi[i] = c.Area.Min.X, c.Area.Max.X
		lo[j], hi[j] = c.Area.Min.Y, c.Area.Max.Y
		lo[k], hi[k] = 0, c.Depth
		if c.On == part.Back || c.On == part.Right || c.On == part.Rear {
			lo[k], hi[k] = size[k]-c.Depth, size[k]
		}
		all = append(all, place(lo, hi))
	}
	for _, c := range p.Part.Cutouts {
		b := c.Outline.Bounds()
		all = append(all, place([3]unit.Length{b.Min.X, b.Min.Y, 0}, [3]unit.Length{b.Max.X, b.Max.Y, size[2]}))
	}
	return all
}

// collisions names the pairs of pieces that both have wood at one place. The cells between all faces of the boxes are looked at.
func collisions(c Cabinet) []string {
	var all []string
	for i, p := range c.Pieces {
		for _, q := range c.Pieces[i+1:] {
			in := p.Box.And(q.Box)
			if !in.Empty() && wood2(in, append(gone(p), gone(q)...)) {
				all = append(all, fmt.Sprintf("%s and %s share %v", p.Part.Name, q.Part.Name, in))
			}
		}
	}
	return all
}

// wood2 reports whether some cell of a box lies in none of the others.
func wood2(in Box, without []Box) bool {
	var cuts [3][]unit.Length
	for a := range 3 {
		cuts[a] = []unit.Length{in.Lo[a], in.Hi[a]}
		for _, b := range without {
			for _, v := range []unit.Length{b.Lo[a], b.Hi[a]} {
				if in.Lo[a] < v && v < in.Hi[a] {
					cuts[a] = append(cuts[a], v)
				}
			}
		}
	}
	for _, x := range cuts[0] {
		for _, y := range cuts[1] {
			for _, z := range cuts[2] {
				cell := span(x, x+1, y, y+1, z, z+1) // the cell's own corner: any cell that is not empty has one
				if x == in.Hi[0] || y == in.Hi[1] || z == in.Hi[2] {
					continue
				}
				free := false
				for _, b := range without {
					free = free || b.And(cell) == cell
				}
				if !free {
					return true
				}
			}
		}
	}
	return false
}

// Whatever is asked for: put together, the carcass has the outside that was asked for, no two parts have wood at one place, every part
// can be made, and its size is that of its box.
func TestCabinetsClose(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		words := randomCabinet(rt)
		r, doc := written(t, words)
		c, _, ok := buildChecked(r, doc)
		if !ok {
			rt.Fatalf("%v\n%s", r.found, words)
		}
		for _, f := range r.found {
			if !strings.HasPrefix(f.Code, "drawer-") && f.Code != "cup-outside" && f.Code != "plate-outside" && f.Code != "door-low" && f.Code != "frame-full" && f.Code != "filler" {
				rt.Fatalf("%s %s\n%s", f.Code, f.Say(unit.DefaultStyle(unit.Inches)), words)
			}
		}
		if c.Outside() != c.Asked {
			rt.Fatalf("put together %v, asked %v\n%s", c.Outside(), c.Asked, words)
		}
		if all := collisions(c); len(all) > 0 {
			rt.Fatalf("%s\n%s", strings.Join(all, "\n"), words)
		}
	})
}

func randomCabinet(t *rapid.T) string {
	pick := func(name string, of ...string) string { return rapid.SampledFrom(of).Draw(t, name) }
	var b strings.Builder
	line := func(format string, a ...any) { fmt.Fprintf(&b, "    "+format+"\n", a...) }
	stands := pick("stands", "floor", "legs", "wall")
	line("stands: %s", stands)
	if stands != "floor" {
		line("bottom: %s", pick("bottom", "6", "9-1/2"))
	}
	line("height: %s", pick("height", "30", "32-1/2", "34-3/16"))
	line("depth: %s", pick("depth", "18", "20", "21-5/8"))
	made := pick("made", "panels", "frames")
	line("made of: %s", made)
	line("stock: {panels: ply, back: thin, frame: oak, front panels: thin, drawers: half, legs: square}")
	set := pick("set", "0", "3/4")
	back := pick("back", "butt", "rabbet 3/8", "groove 1/4")
	if set == "0" && strings.HasPrefix(back, "groove") {
		set = "1/2"
	}
	line("back set: %s", set)
	top := pick("top joint", "butt", "dado 1/4", "rabbet 3/8", "half-lap 3/8")
	if made == "frames" && strings.HasPrefix(top, "half") {
		top = "butt"
	}
	line("joints: {bottom: %s, top: %s, back: %s, divider: %s, shelf: %s, frame: %s}", pick("bottom joint", "butt", "dado 1/4", "rabbet 5/16"), top, back,
		pick("divider", "butt", "dado 1/4"), pick("shelf", "butt", "dado 1/4"), pick("frame", "butt", "tongue 3/8", "tongue 1/4"))
	line("top: %s", pick("top", "rails", "panel", "open"))
	if stands == "floor" && made == "panels" && pick("toe", "yes", "no") == "yes" {
		line("toe space: {high: 4, deep: 3}")
	}
	if stands == "legs" {
		line("legs: {section: 1-3/4, tapered on: [%s], from: 1, to: 1}", pick("taper", "inner", "outer", "front", "sides"))
	}
	line("leave: {left: %s, right: %s, back: 1/4}", pick("left filler", "0", "1"), pick("right filler", "0", "3/4"))
	line("fronts are: %s", pick("fronts", "inset", "overlay"))
	if stands == "wall" {
		line("screws: {length: 4, down: 2, from left: [4]}")
	}
	line("shelves: {low: {up: 8, fixed: %s}}", pick("fixed", "yes", "no"))
	line("slides: {side: 1/2, length: 14}")
	line("drawer boxes: {corner: %s}", pick("corner", "butt", "rabbet 1/4"))
	line("fronts:")
	for i := range rapid.IntRange(1, 3).Draw(t, "columns") {
		if pick("drawer", "yes", "no") == "yes" {
			line("  drawer %d: {kind: drawer, column: %d, height: 6}", i, i+1)
		}
		line("  door %d: {kind: door, column: %d, made as: %s, hinge: %s, leaves: %s}", i, i+1, pick("made as", "slab", "frame"), pick("hinge", "left", "right"), pick("leaves", "1", "2"))
	}
	return b.String()
}
