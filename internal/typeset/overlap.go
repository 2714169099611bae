package typeset

import (
	"fmt"

	"dryfit/internal/draw"
)

// Placed is a text with the rectangle that it covers on the page.
type Placed struct {
	Text draw.Text
	Box  draw.Box
}

// Placements lists every text of the page in drawing order, those within groups too. Empty texts are left out, and
// so is what a group's clip hides.
func Placements(page draw.Page) []Placed { return placed(nil, page.Items, nil) }

func placed(out []Placed, items []draw.Item, window *draw.Box) []Placed {
	for _, it := range items {
		switch it := it.(type) {
		case draw.Group:
			out = placed(out, it.Items, narrowed(window, it.Clip))
		case draw.Text:
			b := BoxOf(it)
			if window != nil {
				b = b.And(*window)
			}
			if b.W() > 0 && b.H() > 0 {
				out = append(out, Placed{it, b})
			}
		}
	}
	return out
}

func narrowed(window *draw.Box, clip *[2]draw.XY) *draw.Box {
	if clip == nil {
		return window
	}
	b := draw.Box{Lo: clip[0], Hi: clip[1]}
	if window != nil {
		b = b.And(*window)
	}
	return &b
}

// Overlap is a fault of a page's lettering: two texts that cover each other, or one (then Other is nil) that
// leaves the page.
type Overlap struct {
	One   Placed
	Other *Placed
}

func (o Overlap) String() string {
	if o.Other == nil {
		return fmt.Sprintf("%q at %d,%d leaves the page", o.One.Text.Body, o.One.Text.At.X, o.One.Text.At.Y)
	}
	return fmt.Sprintf("%q at %d,%d covers %q at %d,%d", o.One.Text.Body, o.One.Text.At.X, o.One.Text.At.Y,
		o.Other.Text.Body, o.Other.Text.At.X, o.Other.Text.At.Y)
}

// Overlaps lists what is wrong with the lettering of a page, for the tests of sheets: texts that cover each other
// and texts that are not wholly on the page.
func Overlaps(page draw.Page) []Overlap {
	all := Placements(page)
	sheet := draw.Box{Hi: draw.XY{X: page.W, Y: page.H}}
	var out []Overlap
	for i, p := range all {
		if !sheet.Holds(p.Box) {
			out = append(out, Overlap{One: p})
		}
		for j := range all[:i] {
			if p.covers(all[j]) {
				out = append(out, Overlap{One: all[j], Other: &all[i]})
			}
		}
	}
	return out
}

// covers says whether two texts share area; for slanting ones their turned rectangles decide.
func (p Placed) covers(q Placed) bool {
	if !p.Box.Meets(q.Box) {
		return false
	}
	a, b := Corners(p.Text, 0), Corners(q.Text, 0)
	return meet(a[:], b[:])
}

// meet says whether two convex figures share more than a border: no side of either has the other wholly on its outer
// hand (separating axes). Corners run counter-clockwise; a line of two corners is a figure too.
func meet(a, b []draw.XY) bool { return !parted(a, b) && !parted(b, a) }

// parted says whether some side of a has all of b on its right, or on it.
func parted(a, b []draw.XY) bool {
	for i, p := range a {
		if onRight(p, a[(i+1)%len(a)], b) {
			return true
		}
	}
	return false
}

func onRight(p, q draw.XY, figure []draw.XY) bool {
	for _, c := range figure {
		if (q.X-p.X)*(c.Y-p.Y)-(q.Y-p.Y)*(c.X-p.X) > 0 {
			return false
		}
	}
	return true
}
