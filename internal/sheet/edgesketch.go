package sheet

import (
	"dryfit/internal/document"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/plan"
)

// EdgeOnScreen draws an outside corner seen from above: two tiles on their boards and how they end there. Sizes are not
// to scale. What is not known yet is drawn as a question.
func EdgeOnScreen(p plan.Plan, name string, c document.Corner) draw.Page {
	page := draw.Page{Title: "Outside corner " + name + ", seen from above", W: sketchWide, H: sketchHigh}
	page.Items = append(cornerBoards(), cornerTiles(c)...)
	words := "how does the tile end here?"
	if c.Edge.Known {
		words = [...]string{"trim profile", "mitered: both tiles meet in the corner", "lapped: the one set first shows no edge"}[c.Edge.V]
		if c.Edge.V == document.TrimProfile {
			words += ", visible width "
			if c.Trim.Known {
				words += p.Style.Format(c.Trim.V)
			} else {
				words += "not known"
			}
		}
	}
	words2 := parts.Label{At: draw.At(sketchWide/2, 2500), Body: words, Clear: true, Class: "rule"}
	page.Items = append(page.Items, words2.Items()...)
	return page
}

// The corner stands at cornerX, cornerY; the room is above and to the right of it.
const (
	cornerX   = 54 * draw.MM
	cornerY   = 23 * draw.MM
	tileThick = 5 * draw.MM
	boardDeep = 4 * draw.MM
)

func cornerBoards() []draw.Item {
	fill := draw.Fill{On: true, Color: draw.Pale}
	ring := []draw.XY{draw.At(0, cornerY), draw.At(cornerX, cornerY), draw.At(cornerX, 6*draw.MM), draw.At(cornerX-boardDeep, 6*draw.MM),
		draw.At(cornerX-boardDeep, cornerY-boardDeep), draw.At(0, cornerY-boardDeep)}
	board := draw.Path{Class: "board", Rings: [][]draw.XY{ring}, Closed: true, Pen: draw.Line(draw.Normal), Fill: fill}
	return []draw.Item{board}
}

func cornerTiles(c document.Corner) []draw.Item {
	tile := func(at ...draw.XY) draw.Item {
		return draw.Path{Class: "tile", Rings: [][]draw.XY{at}, Closed: true, Pen: draw.Line(draw.Wide), Fill: draw.Fill{Hatch: draw.Diagonal}}
	}
	x, y, t, low := cornerX, cornerY, tileThick, 6*draw.MM
	const joint = 600
	switch {
	case !c.Edge.Known:
		return []draw.Item{tile(draw.At(0, y), draw.At(x-8*draw.MM, y), draw.At(x-8*draw.MM, y+t), draw.At(0, y+t)),
			tile(draw.At(x, low), draw.At(x+t, low), draw.At(x+t, y-8*draw.MM), draw.At(x, y-8*draw.MM)),
			parts.Label{At: draw.At(x, y+t), Body: "?", Size: parts.Large, Bold: true, Clear: true}.Items()[0]}
	case c.Edge.V == document.Miter:
		return []draw.Item{tile(draw.At(0, y), draw.At(x-joint, y), draw.At(x+t-joint, y+t), draw.At(0, y+t)),
			tile(draw.At(x, low), draw.At(x+t, low), draw.At(x+t, y+t-joint), draw.At(x, y-joint))}
	case c.Edge.V == document.Lap:
		return []draw.Item{tile(draw.At(0, y), draw.At(x, y), draw.At(x, y+t), draw.At(0, y+t)),
			tile(draw.At(x+joint, low), draw.At(x+joint+t, low), draw.At(x+joint+t, y+t), draw.At(x+joint, y+t))}
	}
	profile := draw.Rect(draw.Span(x, y, x+t, y+t), draw.Line(draw.Heavy), draw.Fill{On: true, Color: draw.SkyBlue.Tint(40)})
	profile.Class = "trim"
	return []draw.Item{tile(draw.At(0, y), draw.At(x-joint, y), draw.At(x-joint, y+t), draw.At(0, y+t)),
		tile(draw.At(x, low), draw.At(x+t, low), draw.At(x+t, y-joint), draw.At(x, y-joint)), profile}
}
