package sheet

import (
	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

const gapRow = 17 * draw.MM

// GapsOnScreen draws straightedges on a surface, one below the other, the longest over the whole width, and what was
// read under each. The gap is drawn larger than it is. Without one it shows a made-up one without a number.
func GapsOnScreen(p plan.Plan, on string, gaps []document.Gap) draw.Page {
	page := draw.Page{Title: "Straightedge on " + on, W: sketchWide, H: gapRow * draw.Um(max(1, len(gaps)))}
	if len(gaps) == 0 {
		page.Items = append(bridged(0, sketchWide, 5*draw.MM, draw.Pen{Width: draw.Normal, Color: draw.Gray, Dash: draw.Dashed}),
			parts.Label{At: draw.At(sketchWide/2, 3*draw.MM), Body: "the widest gap under it", Clear: true}.Items()...)
		return page
	}
	var longest unit.Length
	for _, g := range gaps {
		longest = max(longest, g.Length)
	}
	for i, g := range gaps {
		y := page.H - gapRow*draw.Um(i+1)
		wide := max(24*draw.MM, portion(g.Length, longest, sketchWide))
		page.Items = append(page.Items, bridged(y, wide, portion(min(g.Gap, mostGap), mostGap, 3500)+500, draw.Line(draw.Normal))...)
		page.Items = append(page.Items, gapWords(p.Style, g, wide, y)...)
	}
	return page
}

// mostGap is drawn as deep as there is room; a deeper one looks the same, and its number says how deep it is.
const mostGap = unit.Inch / 2

func gapWords(s unit.Style, g document.Gap, wide, y draw.Um) []draw.Item {
	over := parts.Label{At: draw.At(wide/2, y+14*draw.MM), Body: s.Format(g.Length), Clear: true, Class: "along"}
	under := parts.Label{At: draw.At(wide/2, y+3*draw.MM), Body: "gap " + s.Format(g.Gap), Bold: true, Clear: true, Class: "reading"}
	return append(over.Items(), under.Items()...)
}

// bridged is a straightedge over a hollow.
func bridged(y, wide, deep draw.Um, pen draw.Pen) []draw.Item {
	rest := y + 10*draw.MM
	edge := draw.Rect(draw.Span(500, rest, wide-500, rest+2*draw.MM), pen, draw.Fill{On: true, Color: draw.Pale})
	edge.Class = "straightedge"
	var hollow []draw.XY
	const steps = 12
	for i := range draw.Um(steps + 1) {
		x := 500 + (wide-1000)*i/steps
		hollow = append(hollow, draw.At(x, rest-deep*4*i*(steps-i)/(steps*steps)))
	}
	surface := draw.Stroke(draw.Pen{Width: 2 * pen.Width, Color: pen.Color, Dash: pen.Dash}, hollow...)
	surface.Class = "surface"
	return []draw.Item{edge, surface}
}
