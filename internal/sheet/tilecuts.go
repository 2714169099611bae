package sheet

import (
	"fmt"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/geom"
	"dryfit/internal/report"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/typeset"
)

// Cells of the cutting plan: how wide a tile is drawn, and what is kept round it.
const (
	cutWide = 52 * draw.MM
	cutHigh = 32 * draw.MM
	cutGap  = 5 * draw.MM
)

// tilesOf draws each tile that is cut up with the pieces that come out of it, hatched where it is waste.
func (f *flow) tilesOf(g tiling.Good) {
	size, ok := f.sizeOf(g)
	if !ok {
		return
	}
	whole := f.outlineOf(g, size)
	bounds := whole.Bounds()
	pieces := f.byName()
	v := view{n: largest(bounds.W(), bounds.H(), draw.Span(0, 0, cutWide, cutHigh)), of: bounds.Min}
	f.need(leastTable + v.um(bounds.H()))
	f.paragraph(fmt.Sprintf("%s, %s by %s, at %s", capital(report.GoodName(f.p, g)), f.p.Style.Fine().Bare(size.Length), f.p.Style.Fine().Format(size.Width), v.words()), parts.Large, true)
	f.paragraph(capital(report.Bound(g))+".", parts.Small, false)
	wide := max(v.um(bounds.W()), 38*draw.MM) + cutGap
	cols := max(1, int((f.room.W()+cutGap)/wide))
	for _, row := range rowsOf(report.ByTile(g), cols) {
		f.cutRow(report.GoodName(f.p, g), row, v, whole, pieces, wide)
	}
}

func rowsOf(all [][]tiling.Source, cols int) [][][]tiling.Source {
	var out [][][]tiling.Source
	for len(all) > cols {
		out, all = append(out, all[:cols]), all[cols:]
	}
	return append(out, all)
}

// cutRow draws tiles side by side with their captions.
func (f *flow) cutRow(good string, row [][]tiling.Source, v view, whole geom.Region, pieces map[string]piece.Piece, wide draw.Um) {
	captions := make([][]string, len(row))
	high := draw.Um(0)
	for i, s := range row {
		captions[i] = typeset.Wrap(caption(s), parts.Small, false, wide-cutGap)
		high = max(high, draw.Um(len(captions[i]))*typeset.Leading(parts.Small))
	}
	tall := v.um(whole.Bounds().H())
	f.need(tall + high + cutGap)
	for i, s := range row {
		v.at = draw.At(f.room.Lo.X+draw.Um(i)*wide, f.room.Hi.Y-tall)
		f.now.add(draw.Group{Class: "tile", ID: fmt.Sprintf("tile %s %d", good, s[0].Tile), Items: tileItems(s, v, whole, pieces)})
		for k, line := range captions[i] {
			f.now.add(draw.Text{Class: "caption", At: draw.At(v.at.X, v.at.Y-parts.Small-1000-draw.Um(k)*typeset.Leading(parts.Small)), Size: parts.Small, Body: line})
		}
	}
	f.room.Hi.Y -= tall + high + cutGap
}

func caption(s []tiling.Source) string {
	var names []string
	for _, x := range s {
		names = append(names, x.Piece)
	}
	return fmt.Sprintf("%d: %s", s[0].Tile, strings.Join(names, ", "))
}

// tileItems draws one tile, waste hatched, and its pieces white upon it.
func tileItems(s []tiling.Source, v view, whole geom.Region, pieces map[string]piece.Piece) []draw.Item {
	out := []draw.Item{draw.Path{Class: "tile", Rings: v.rings(whole), Closed: true, Pen: draw.Line(draw.Normal), Fill: draw.Fill{Hatch: draw.Diagonal}}}
	c := crowd{within: v.box(whole.Bounds())}
	for _, x := range s {
		p, ok := pieces[x.Piece]
		if !ok {
			continue
		}
		rings := v.rings(lying(p.InTile, x))
		out = append(out, draw.Path{Class: "piece", Title: x.Piece, Rings: rings, Closed: true, Pen: draw.Line(draw.Narrow), Fill: draw.Fill{On: true, Color: draw.White}})
		if t, ok := inside(&c, rings, x.Piece); ok { // the caption has it in any case
			out = append(out, t)
		}
	}
	return out
}

// lying is a piece's outline where it lies in the tile that it is cut from.
func lying(g geom.Region, s tiling.Source) geom.Region {
	turned := geom.Turn(s.Turn).Region(g)
	return turned.Move(s.At.Sub(turned.Bounds().Min))
}

// sizeOf finds the real size of a good where it is laid.
func (b *book) sizeOf(g tiling.Good) (tiling.Size, bool) {
	for _, f := range b.p.Tiling.Faces {
		for _, z := range f.Fields {
			if z.Tile == g.Tile && g.Size < len(z.Sizes) {
				return z.Sizes[g.Size], true
			}
		}
	}
	return tiling.Size{}, false
}

// outlineOf is the whole tile in its own frame: as a whole piece has it, which knows a hexagon from a rectangle; where
// none is set whole, the rectangle, grown to what is cut from it.
func (b *book) outlineOf(g tiling.Good, size tiling.Size) geom.Region {
	box := geom.Rect{Max: geom.Point{X: size.Length, Y: size.Width}}
	for _, f := range b.p.Tiling.Faces {
		for _, z := range f.Fields {
			for _, p := range z.Chosen().Pieces {
				switch {
				case z.Tile != g.Tile || p.Size != g.Size:
				case p.Whole:
					return p.InTile
				default:
					box = box.With(p.InTile.Bounds().Max)
				}
			}
		}
	}
	return geom.Region{geom.RectRing(box, 0, 0, 0, 0)}
}

// byName finds pieces by face mark and address.
func (b *book) byName() map[string]piece.Piece {
	out := map[string]piece.Piece{}
	for _, f := range b.p.Tiling.Faces {
		for _, z := range f.Fields {
			for _, p := range z.Chosen().Pieces {
				out[f.Mark+" "+p.Address] = p
			}
		}
	}
	return out
}
