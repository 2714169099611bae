package sheet

import (
	"strings"

	"dryfit/internal/draw"
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
	w.elevation()
	w.rods()
	w.lists()
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
		return "plan from above"
	case site.RevealFace:
		return "facing its tile"
	}
	return "elevation, facing the wall"
}

// orientations are the paper upright and on its side.
func (b *book) orientations() []draw.Paper {
	return []draw.Paper{b.paper.Paper, b.paper.Landscape()}
}
