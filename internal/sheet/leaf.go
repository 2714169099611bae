package sheet

import (
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/typeset"
	"dryfit/internal/unit"
)

// leaf is one page in the making: its number is known when the book is whole.
type leaf struct {
	title, detail, scale string
	caution              string
	paper                draw.Paper
	items                []draw.Item
}

const (
	gap     = 3 * draw.MM
	footBar = 9 * draw.MM // the bar to check the print with, and its lettering
)

// cautions that apply to every sheet; the saw's stand beside them on cut sheets.
const (
	generalCaution = "Local codes and licensed trades decide on water, power and structure. Measure before you cut."
	silicaCaution  = "Cutting tile frees silica dust, which scars lungs for good: cut wet, outdoors or with suction, and wear a fitted respirator. " +
		"29 CFR 1926.1153 limits it to 50 µg/m³ over 8 hours, action from 25 µg/m³ (United States); local rules decide. Eyes, ears, a grounded (GFCI) outlet at wet saws."
)

// body is the room of a page for its own matter.
func (l *leaf) body() draw.Box {
	_, room := parts.Frame(l.paper)
	b := room.Inset(gap)
	b.Lo.Y = room.Lo.Y + parts.TitleHeight + l.footHeight() + gap
	return b
}

// footHeight is what the bar and the caution need above the title block.
func (l *leaf) footHeight() draw.Um {
	lines := len(l.cautionLines())
	return max(footBar, draw.Um(lines)*typeset.Leading(parts.Tiny)+gap)
}

func (l *leaf) cautionLines() []string {
	_, room := parts.Frame(l.paper)
	text := generalCaution
	if l.caution != "" {
		text = l.caution + " " + text
	}
	return typeset.Wrap(text, parts.Tiny, false, room.Hi.X-l.cautionLeft(room)-gap)
}

func (l *leaf) cautionLeft(room draw.Box) draw.Um { return room.Lo.X + 2*gap + 108*draw.MM + gap/2 }

// page closes the leaf with its frame, title block, bar and cautions.
func (l *leaf) page(p plan.Plan, number, of int) draw.Page {
	items, room := parts.Frame(l.paper)
	items = append(items, l.items...)
	corner := draw.At(room.Hi.X, room.Lo.Y)
	block := parts.TitleBlock{Document: p.Name, Title: l.title, Detail: l.detail, Scale: l.scale, Revision: p.Revision,
		Paper: l.paper.Name, Units: p.Style.System.String(), Sheet: number, Sheets: of}
	items = append(items, block.Items(corner, room.W())...)
	bar := parts.Ruler(draw.At(room.Lo.X+2*gap, room.Lo.Y+parts.TitleHeight+4*draw.MM), p.Style.System == unit.Inches)
	items = append(items, bar.Items()...)
	return draw.Page{Title: l.title + pageDetail(l.detail), W: l.paper.W, H: l.paper.H, Items: append(items, l.cautionItems(room)...)}
}

func pageDetail(detail string) string {
	if detail == "" {
		return ""
	}
	return ", " + detail
}

func (l *leaf) cautionItems(room draw.Box) []draw.Item {
	var out []draw.Item
	lines := l.cautionLines()
	y := room.Lo.Y + parts.TitleHeight + 1500 + draw.Um(len(lines)-1)*typeset.Leading(parts.Tiny)
	for _, line := range lines {
		out = append(out, draw.Text{Class: "caution", At: draw.At(l.cautionLeft(room), y), Size: parts.Tiny, Body: line})
		y -= typeset.Leading(parts.Tiny)
	}
	return out
}

func (l *leaf) add(items ...draw.Item) { l.items = append(l.items, items...) }
