package sheet_test

import (
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/sheet"
	"dryfit/internal/unit"
)

// onTemplate is what one page of a template shows: where its outlines are on paper, what is seen of them, and its joins.
type onTemplate struct {
	shown    draw.Box
	outlines map[string][]draw.XY
	joins    map[string]draw.XY // a point of each
}

func templatesOf(pages []draw.Page, top string) []onTemplate {
	var out []onTemplate
	for _, page := range pages {
		if !strings.HasPrefix(page.Title, "Template: "+top+", ") {
			continue
		}
		one := onTemplate{outlines: map[string][]draw.XY{}, joins: map[string]draw.XY{}}
		for _, it := range page.Items {
			switch it := it.(type) {
			case draw.Path:
				if it.Class == "join" {
					one.joins[it.Title] = it.Rings[0][0]
				}
			case draw.Group:
				if it.Class != "template" {
					continue
				}
				one.shown = draw.Box{Lo: it.Clip[0], Hi: it.Clip[1]}
				for _, k := range it.Items {
					if p, ok := k.(draw.Path); ok && p.Class == "hole" {
						one.outlines[p.Title] = p.Rings[0]
					}
				}
			}
		}
		out = append(out, one)
	}
	return out
}

func reachOf(ring []draw.XY) draw.Box {
	b := draw.Box{Lo: ring[0], Hi: ring[0]}
	for _, p := range ring {
		b = draw.Span(min(b.Lo.X, p.X), min(b.Lo.Y, p.Y), max(b.Hi.X, p.X), max(b.Hi.Y, p.Y))
	}
	return b
}

// Every hole of a top is printed at full size, to the micrometre; every corner of its outline is seen on a page; what two pages join on is
// at one place of the outline on both. On every paper.
func TestHolesAtFullSize(t *testing.T) {
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		for _, paper := range draw.Papers() {
			pages := sheet.Book(p, sheet.PaperNamed(paper.Name, p.Style.System))
			for _, top := range p.Wood.Tops {
				all := templatesOf(pages, top.Name)
				for _, h := range top.Holes {
					want := [2]draw.Um{draw.Um(h.Outline.Across / unit.Micrometre), draw.Um(h.Outline.Deep / unit.Micrometre)}
					seen, found := map[int]bool{}, false
					for _, page := range all {
						ring, ok := page.outlines[h.Name]
						if !ok {
							continue
						}
						found = true
						if b := reachOf(ring); abs(b.W()-want[0]) > 1 || abs(b.H()-want[1]) > 1 {
							t.Errorf("%s on %s: %s is %d x %d µm, want %v", r.File, paper.Name, h.Name, b.W(), b.H(), want)
						}
						for i, v := range ring {
							seen[i] = seen[i] || page.shown.Holds(draw.Box{Lo: v, Hi: v})
						}
					}
					for i, ok := range seen {
						if !ok {
							t.Errorf("%s on %s: corner %d of %s is on no page", r.File, paper.Name, i, h.Name)
							break
						}
					}
					if !found {
						t.Errorf("%s on %s: no template of %s", r.File, paper.Name, h.Name)
					}
				}
				joinsMeet(t, r.File+" on "+paper.Name, all)
			}
		}
	}
}

func joinsMeet(t *testing.T, what string, all []onTemplate) {
	for i, a := range all {
		for _, b := range all[i+1:] {
			for name, p := range a.joins {
				q, both := b.joins[name]
				for hole, ring := range a.outlines {
					other, same := b.outlines[hole]
					if !both || !same {
						continue
					}
					d, e := draw.At(p.X-ring[0].X, p.Y-ring[0].Y), draw.At(q.X-other[0].X, q.Y-other[0].Y)
					if abs(d.X-e.X) > 1 && abs(d.Y-e.Y) > 1 {
						t.Errorf("%s: %s is at %v of %s on one page and at %v on the other", what, name, d, hole, e)
					}
				}
			}
		}
	}
}

func abs(a draw.Um) draw.Um { return max(a, -a) }
