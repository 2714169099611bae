package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
)

// mold is one proto's factory outline, in the tile's own frame and as it lies, and the way between the two.
type mold struct {
	own  geom.Region // in the tile's own frame
	lies geom.Ring   // turned, its bounds' lower left corner at the origin
	back geom.Turn   // the turn from lying to own
	foot geom.Point  // the own frame's origin, seen from the lower left corner as it lies
}

func molds(b bond.Bond) []mold {
	out := make([]mold, len(b.Protos))
	for i, p := range b.Protos {
		out[i] = newMold(p)
	}
	return out
}

func newMold(p bond.Proto) mold {
	back := (4 - p.Turn) & 3
	lying := geom.Rect{Max: geom.Point{X: p.W, Y: p.H}}
	own := back.Rect(lying)
	foot := p.Turn.Point(own.Min)
	ring := p.Ring
	if ring == nil {
		size := geom.Rect{Max: own.Max.Sub(own.Min)}
		ring = geom.RectRing(size, Left, Bottom, Right, Top)
		m := mold{own: geom.Region{ring}, back: back, foot: foot}
		m.lies = m.out(m.own)[0]
		return m
	}
	m := mold{lies: ring, back: back, foot: foot}
	m.own = m.in(geom.Region{ring})
	return m
}

// in carries what lies at the mold's lower left corner into the tile's own frame, exactly.
func (m mold) in(g geom.Region) geom.Region {
	return m.back.Region(g.Move(geom.Point{X: -m.foot.X, Y: -m.foot.Y}))
}

// out is the way back.
func (m mold) out(g geom.Region) geom.Region {
	return ((4 - m.back) & 3).Region(g).Move(m.foot)
}

// point carries one point in.
func (m mold) point(p geom.Point) geom.Point { return m.back.Point(p.Sub(m.foot)) }

// Factory returns a tile's whole outline in its own frame, with the labels of its sides.
func Factory(p bond.Proto) geom.Region { return newMold(p).own }

// OnPattern carries a piece's outline from the tile's own frame to the pattern frame, exactly.
func OnPattern(p Piece, b bond.Bond) geom.Region {
	return newMold(b.Protos[p.Proto]).out(p.Shape).Move(p.At)
}
