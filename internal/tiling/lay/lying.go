package lay

import (
	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
)

// A piece is exact in its tile's own frame, and a person sees it as it lies in the pattern: an upright tile's own left side is down.

// Lying carries a shape from the tile's own frame to how the tile lies, the lower left corner at the origin. Sides of a rectangle are
// named anew: Left is what is at the left as it lies. Sides of a hexagon keep their labels.
func Lying(g geom.Region, p bond.Proto) geom.Region {
	if p.Turn == 0 {
		return g
	}
	return renamed(wayOf(p).out(g), p, p.Turn)
}

// LyingPoint carries one point the same way.
func LyingPoint(at geom.Point, p bond.Proto) geom.Point {
	return p.Turn.Point(at).Add(wayOf(p).foot)
}

// Own is the way back from Lying.
func Own(g geom.Region, p bond.Proto) geom.Region {
	if p.Turn == 0 {
		return g
	}
	return renamed(wayOf(p).in(g), p, 4-p.Turn)
}

func renamed(g geom.Region, p bond.Proto, by geom.Turn) geom.Region {
	if p.Ring != nil {
		return g
	}
	for _, r := range g {
		for i, v := range r {
			r[i].Edge = TurnSide(v.Edge, by)
		}
	}
	return g
}

// TurnSide returns the label of the place to which a quarter turn brings a rectangle's side: the left one goes down. Labels of a
// region's edges stay.
func TurnSide(l geom.Label, by geom.Turn) geom.Label {
	if l >= 0 {
		return l
	}
	return Left - (Left-l+geom.Label(by))&3
}
