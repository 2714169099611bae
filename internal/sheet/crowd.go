package sheet

import (
	"cmp"
	"slices"
	"sync"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/typeset"
)

// crowd keeps words of a drawing apart: what has its place keeps it, what comes later goes where there is room.
type crowd struct {
	within draw.Box
	taken  []draw.Box
}

const apart draw.Um = 300 // between two words

func (c *crowd) free(b draw.Box) bool {
	if !c.within.Holds(b) {
		return false
	}
	wide := b.Inset(-apart)
	return !slices.ContainsFunc(c.taken, wide.Meets)
}

func (c *crowd) take(b draw.Box) { c.taken = append(c.taken, b) }

// takeTexts takes the places of all texts among the items.
func (c *crowd) takeTexts(items []draw.Item) {
	for _, p := range typeset.Placements(draw.Page{Items: items}) {
		c.take(p.Box)
	}
}

// label sets a text at the first of the places that is free. False where none is.
func (c *crowd) label(l parts.Label, at ...draw.XY) ([]draw.Item, bool) {
	for _, l.At = range at {
		if b := l.Box(); c.free(b) {
			c.take(b)
			return l.Items(), true
		}
	}
	return nil, false
}

// leader sets a note that leads to a point, as near to it as there is room; cost adds to a place's distance what speaks
// against it. False where there is no room within reach.
func (c *crowd) leader(tip draw.XY, lines []string, cost func(draw.Box) draw.Um) ([]draw.Item, bool) {
	best, least := parts.Leader{}, draw.Um(-1)
	left, right := noteBox(lines, -1), noteBox(lines, 1)
	for _, off := range around() {
		far := abs(off.X) + abs(off.Y)
		if least >= 0 && far >= least {
			break // all that follow are farther
		}
		b := right
		if off.X < 0 {
			b = left
		}
		knee := tip.Plus(off)
		b.Lo, b.Hi = b.Lo.Plus(knee), b.Hi.Plus(knee)
		if !c.free(b.Inset(-300)) {
			continue
		}
		if far += cost(b); least < 0 || far < least {
			best, least = parts.Leader{Tip: tip, Knee: knee, Lines: lines}, far
		}
	}
	if least < 0 {
		return nil, false
	}
	c.take(best.Box().Inset(-300))
	back := draw.Rect(best.Box().Inset(-200), draw.Pen{}, draw.Fill{On: true, Color: draw.White})
	return append([]draw.Item{back}, best.Items()...), true
}

// edges are the straight strokes that some items are drawn with.
func edges(items []draw.Item) [][2]draw.XY {
	var out [][2]draw.XY
	for _, it := range items {
		switch it := it.(type) {
		case draw.Group:
			out = append(out, edges(it.Items)...)
		case draw.Path:
			for _, r := range it.Rings {
				for i := 1; i < len(r); i++ {
					out = append(out, [2]draw.XY{r[i-1], r[i]})
				}
				if it.Closed && len(r) > 2 {
					out = append(out, [2]draw.XY{r[len(r)-1], r[0]})
				}
			}
		}
	}
	return out
}

// overLines is what speaks against a note: the strokes that it would cover, up to a few.
func overLines(strokes [][2]draw.XY) func(draw.Box) draw.Um {
	const price, most = 9 * draw.MM, 4
	return func(b draw.Box) draw.Um {
		n := draw.Um(0)
		for _, s := range strokes {
			if enters(s[0], s[1], b) {
				if n++; n == most {
					break
				}
			}
		}
		return n * price
	}
}

// noteBox is what a note covers whose knee is at the origin, its tip on the left of it (1) or on the right (-1).
func noteBox(lines []string, side draw.Um) draw.Box {
	return parts.Leader{Tip: draw.At(-side, 0), Lines: lines}.Box()
}

// around lists places about the origin, nearest first.
var around = sync.OnceValue(func() []draw.XY {
	const step, far = 1_500, 45 * draw.MM
	var out []draw.XY
	for dx := -far; dx <= far; dx += step {
		for dy := -far; dy <= far; dy += step {
			if abs(dx)+abs(dy) >= 3*draw.MM && abs(dx) >= step {
				out = append(out, draw.At(dx, dy))
			}
		}
	}
	slices.SortStableFunc(out, func(a, b draw.XY) int { return cmp.Compare(abs(a.X)+abs(a.Y), abs(b.X)+abs(b.Y)) })
	return out
})

func dist(a, b draw.XY) draw.Um { return abs(a.X-b.X) + abs(a.Y-b.Y) }

func abs(v draw.Um) draw.Um {
	if v < 0 {
		return -v
	}
	return v
}
