package sheet

import (
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/report"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
)

// wall is one laid face as the sheets see it: what the room says of it and the tile work on it.
type wall struct {
	*book
	face tiling.Face
	site site.Face
	name string
}

// face draws all sheets of one laid face.
func (b *book) face(f tiling.Face) {
	s, ok := b.p.Room.Face(f.Name)
	if !ok || len(s.Board) == 0 || len(f.Fields) == 0 {
		return
	}
	w := &wall{book: b, face: f, site: s, name: capital(f.Name)}
	flow := w.elevation()
	if s.Kind == site.RevealFace { // a few tiles: all of it on one sheet, or as few as it takes
		if w.hasRods() {
			w.rods(flow)
		}
		w.setting(flow)
		w.saw(flow)
		return
	}
	if w.hasRods() {
		w.rods(w.writer(leaf{title: w.name, detail: "Gauge rods: courses and columns", paper: w.paper.Paper}))
	}
	if worked, _ := report.Worked(f); len(worked) > 0 {
		w.setting(w.writer(leaf{title: w.name, detail: "Pieces in the order of setting", paper: w.paper.Landscape(), caution: silicaCaution}))
		w.saw(w.writer(leaf{title: w.name, detail: "Cuts in the order of saw settings", paper: w.paper.Paper, caution: silicaCaution}))
	}
}

func capital(s string) string {
	for i, r := range s {
		return strings.ToUpper(string(r)) + s[i+len(string(r)):]
	}
	return s
}

// seenAs says how a face is drawn: facing a wall, from above.
func (w *wall) seenAs() string {
	switch w.site.Kind {
	case site.FloorFace:
		return "Plan from above"
	case site.RevealFace:
		return "Seen facing its tile"
	}
	return "Elevation, facing the wall"
}

// orientations are the paper upright and on its side.
func (b *book) orientations() []draw.Paper {
	return []draw.Paper{b.paper.Paper, b.paper.Landscape()}
}
