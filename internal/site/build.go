package site

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// build is the build-up of one face from the studs outward. board ends at the surface that is tiled; bed is that at the face's edges.
type build struct {
	board, bed, tile unit.Length
	least, most      unit.Length // of the bed over the face
	set              bool        // tile is to be set on it
	bedWritten       bool        // the bed is written among the layers
	known            bool        // every thickness that is written or needed is known
	longest          unit.Length // longest edge of a tile set on it; 0 where a size is not known
	stone            bool
}

// finish is what lies on the board.
func (b build) finish() unit.Length { return b.bed + b.tile }

// to returns how far a surface lies off the studs.
func (b build) to(s document.Surface) unit.Length {
	switch s {
	case document.Board:
		return b.board
	case document.TileFace:
		return b.board + b.finish()
	}
	return 0
}

// buildUps reads the layers of all walls and the floor.
func (s *solver) buildUps() {
	for i := range s.walls {
		w := &s.walls[i]
		w.build = s.buildUp(w.name, w.doc.At, w.doc.BuildUp)
		if len(w.doc.BuildUp) == 0 {
			s.assume(w.doc.At, rule.Practice.String(), "no build-up is written for {0}: what the tape reached is what is tiled", diag.T(w.name))
		}
		s.upright(w)
		s.bedOver(w)
	}
	at := s.doc.Floor.At
	s.floor = s.buildUp(floorName, at, s.doc.Floor.BuildUp)
	if len(s.doc.Floor.BuildUp) == 0 {
		s.assume(at, rule.Practice.String(), "no build-up is written for the floor: the bare floor is what is tiled")
	}
}

// steepest is more than any wall leans over its height.
const steepest = unit.Metre / 2

// upright says where a wall's lean can only be a slip of the pen; its faces are then left out.
func (s *solver) upright(w *wall) {
	if w.leanLeft.Abs() > steepest || w.leanRight.Abs() > steepest {
		s.list.Add(diag.Stop, "lean-absurd", w.doc.At, "{0} leans more than {1}", "look at its out of plumb", diag.T(w.name), diag.X(steepest))
		w.leanLeft, w.leanRight, w.build.known = 0, 0, false
	}
}

// buildUp adds up the layers of one face. The board reaches to the last board or membrane that is written; what follows is
// bed and tile. Where tile is to be set and neither is written, the goods give the tile's thickness and a usual bed is assumed.
func (s *solver) buildUp(face string, at diag.Place, layers []document.Layer) build {
	b := build{known: true, set: s.rank[face] > 0}
	last := lastBoard(layers)
	for i, l := range layers {
		s.layer(&b, face, l, i <= last)
	}
	switch {
	case b.set:
		s.goods(&b, face, at)
		s.usualBed(&b, face, at)
	case b.tile == 0:
		b.bed = 0 // a bed waits for its tile
	}
	b.least, b.most = b.bed, b.bed
	if b.board < 0 || b.finish() < 0 || b.board+b.finish() > thickest {
		s.list.Add(diag.Stop, "build-up-absurd", at, "the build-up of {0} is thicker than {1}, or less than nothing", "look at its layers", diag.T(face), diag.X(thickest))
		b = build{set: b.set}
	}
	return b
}

// thickest is more than any build-up in a room.
const thickest = unit.Metre / 2

func lastBoard(layers []document.Layer) int {
	last := -1
	for i, l := range layers {
		if l.What == document.BoardLayer || l.What == document.MembraneLayer {
			last = i
		}
	}
	return last
}

func (s *solver) layer(b *build, face string, l document.Layer, under bool) {
	switch {
	case l.Thick.Known && under:
		b.board += l.Thick.V
	case l.Thick.Known && l.What == document.BedLayer:
		b.bed += l.Thick.V
		b.bedWritten = true
	case l.Thick.Known:
		b.tile += l.Thick.V
	case l.What == document.TileLayer && !under && !b.set:
		if strings.Contains(face, " > ") {
			return // the layers of an opening are those of all its inner faces, tiled or not
		}
		s.list.Add(diag.Look, "tile-not-laid", l.At, "the build-up of {0} ends in tile and nothing is laid on it: its tile is not counted", "lay a tile on {0}, or write the thickness of the tile that is there", diag.T(face))
	case under || l.What == document.BoardLayer || l.What == document.MembraneLayer:
		b.known = false
		s.list.Add(diag.Stop, "layer-thickness", l.At, "the thickness of {0} is not known", "write it after the layer's name: board 1/2", diag.T(l.Label))
	}
}

// goods takes the tile's thickness and longest edge from what is laid on the face; the thickest counts where there are several.
func (s *solver) goods(b *build, face string, at diag.Place) {
	written, sized := b.tile > 0, true
	for _, t := range s.laidOn(face) {
		b.longest = max(b.longest, t.Length.V, t.Width.V)
		sized = sized && t.Length.Known && t.Width.Known
		b.stone = b.stone || t.Kind == document.Stone
		switch {
		case written:
		case t.Thick.Known:
			b.tile = max(b.tile, t.Thick.V)
		default:
			b.known = false
			s.list.Add(diag.Stop, "tile-thickness", t.At, "the thickness of {0} is not known, so where {1} ends is not", "write it as the third figure of size: 24 x 12 x 3/8", diag.T(t.Name), diag.T(face))
		}
	}
	if !sized {
		b.longest = 0
	}
}

// laidOn lists the tiles of all fields on a face, each once.
func (s *solver) laidOn(face string) []document.Tile {
	var out []document.Tile
	for _, t := range s.doc.Tiles {
		for _, l := range s.doc.Lay {
			if faceName(l.Face) == face && lays(l, t.Name) {
				out = append(out, t)
				break
			}
		}
	}
	return out
}

func lays(l document.Lay, tile string) bool {
	for _, f := range l.Fields {
		if f.Tile.Text == tile {
			return true
		}
	}
	return false
}

func (s *solver) usualBed(b *build, face string, at diag.Place) {
	if b.bed > 0 {
		return
	}
	b.bed = rule.BedUsual.Limit
	s.assume(at, rule.BedUsual.Cite(), "a mortar bed of {0} under the tile of {1}", diag.F(b.bed), diag.T(face))
}
