// Package sheet draws the book of a room: the pages that hang on the wall and lie at the saw.
//
// It takes a plan and a paper and gives pages of the display list. It computes nothing that the plan holds: lengths
// are the plan's, worded by package report, placed at a scale. Rules: lettering of numbers is at least 2.5 mm high; no
// word is dropped for want of room, it moves, breaks or goes on over the page; no text covers another; color only
// adds to line type, hatch and words. Every page has a title block, its scale, a bar to check the print with, the
// document's revision and the cautions that apply.
package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
)

// Book returns all pages of a plan in their order. A stage that could not run leaves its pages out; what stopped it is
// among the findings, which are always there.
func Book(p plan.Plan, paper Paper) []draw.Page {
	return (&book{p: p, paper: paper.fit(p.Style.System)}).all()
}

// MendedBook is the book with what would mend each clearance that misses, as it was found for this plan.
func MendedBook(p plan.Plan, m mend.Mends, paper Paper) []draw.Page {
	return (&book{p: p, mends: m, mended: true, paper: paper.fit(p.Style.System)}).all()
}

func (b *book) all() []draw.Page {
	b.findings()
	b.fit()
	for _, f := range b.p.Tiling.Faces {
		b.face(f)
	}
	b.cutting()
	b.wood()
	b.lining()
	b.stock()
	b.goods()
	b.ordering()
	b.mixing()
	b.reckoned()
	b.days()
	b.card()
	b.front()
	return b.pages()
}

// book collects the leaves of a plan.
type book struct {
	p      plan.Plan
	mends  mend.Mends
	mended bool // mends was looked for
	paper  Paper
	leaves []*leaf
}

// front puts the overview before all else. It lists the sheets, so it must know how many it takes itself.
func (b *book) front() {
	rest := b.leaves
	for n := 1; ; n++ {
		b.leaves = nil
		b.overview(rest, n)
		if len(b.leaves) <= n {
			break
		}
	}
	b.leaves = append(b.leaves, rest...)
}

func (b *book) pages() []draw.Page {
	out := make([]draw.Page, len(b.leaves))
	for i, l := range b.leaves {
		out[i] = l.page(b.p, i+1, len(b.leaves))
	}
	return out
}
