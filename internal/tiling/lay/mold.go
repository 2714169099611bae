package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
)

// mold is one proto's factory outline, in the tile's own frame and as it lies, and the way between the two.
type mold struct {
	way
	own  geom.Region // in the tile's own frame
	lies geom.Ring   // turned, its bounds' lower left corner at the origin
}

func molds(b bond.Bond) []mold {
	out := make([]mold, len(b.Protos))
	for i, p := range b.Protos {
		out[i] = newMold(p)
	}
	return out
}

func newMold(p bond.Proto) mold {
	w := wayOf(p)
	if p.Ring != nil {
		return mold{way: w, own: w.in(geom.Region{p.Ring}), lies: p.Ring}
	}
	size := w.back.Rect(geom.Rect{Max: geom.Point{X: p.W, Y: p.H}})
	own := geom.Region{geom.RectRing(geom.Rect{Max: size.Max.Sub(size.Min)}, Left, Bottom, Right, Top)}
	return mold{way: w, own: own, lies: w.out(own)[0]}
}

// way leads from how a tile lies, its lower left corner at the origin, to the tile's own frame.
type way struct {
	back geom.Turn  // the turn from lying to own
	foot geom.Point // the own frame's origin, seen from the lower left corner as it lies
}

func wayOf(p bond.Proto) way {
	back := (4 - p.Turn) & 3
	own := back.Rect(geom.Rect{Max: geom.Point{X: p.W, Y: p.H}})
	return way{back: back, foot: p.Turn.Point(own.Min)}
}

// in carries what lies at the lower left corner into the tile's own frame, exactly.
func (w way) in(g geom.Region) geom.Region {
	if w.back == 0 {
		return g.Move(geom.Point{})
	}
	return w.back.Region(g.Move(geom.Point{X: -w.foot.X, Y: -w.foot.Y}))
}

// out is the way back.
func (w way) out(g geom.Region) geom.Region {
	if w.back == 0 {
		return g.Move(geom.Point{})
	}
	return (4 - w.back).Region(g).Move(w.foot)
}

// point carries one point in.
func (w way) point(p geom.Point) geom.Point { return w.back.Point(p.Sub(w.foot)) }

// Factory returns a tile's whole outline in its own frame, with the labels of its sides.
func Factory(p bond.Proto) geom.Region { return newMold(p).own }

// OnPattern carries a piece's outline from the tile's own frame to the pattern frame, exactly.
func OnPattern(p Piece, b bond.Bond) geom.Region {
	proto := b.Protos[p.Proto]
	if proto.Turn == 0 {
		return p.Shape.Move(p.At)
	}
	w := wayOf(proto)
	w.foot = w.foot.Add(p.At)
	return w.out(p.Shape)
}
