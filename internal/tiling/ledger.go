package tiling

import (
	"dryfit/internal/geom"
	"dryfit/internal/site"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/unit"
)

// ledger finds the line that the first course reaches to, planned at the lowest point of the floor: the first course
// is cut to the floor from there on, so that no sliver is ever needed under it. Only straight courses have one.
func ledger(face site.Face, edges []site.Edge, region geom.Region, b bond.Bond, origin geom.Point) *Ledger {
	if face.Kind != site.WallFace || !b.Axis || b.Vertical || b.Angle != 0 {
		return nil
	}
	low, high, joint, ok := floorEdge(edges, region)
	if !ok {
		return nil
	}
	height := b.Protos[0].H
	top := origin.Y + (low - origin.Y).Floor(b.Pitch.Y) + height
	if top <= low { // the joint line itself lies on the floor edge
		top += b.Pitch.Y
	}
	most := joint + max(0, top-low-height)
	for top <= high { // a course that runs out on the way is no first course: nothing could stand on its ledger there
		top += b.Pitch.Y
	}
	return &Ledger{Y: top, AboveFloor: top - low + joint, CutHigh: min(height, top-low), CutLow: min(height, top-high),
		Joint: joint, JointMost: most}
}

// floorEdge returns the lowest and the highest point of the region's edge along the floor, and the joint under it.
func floorEdge(edges []site.Edge, g geom.Region) (low, high, joint unit.Length, ok bool) {
	for _, r := range g {
		for i, v := range r {
			e, known := edgeOf(edges, v.Edge)
			if !known || e.Kind != site.AtFloor {
				continue
			}
			joint = e.Joint
			next := r[(i+1)%len(r)].P
			if !ok {
				low, high, ok = v.P.Y, v.P.Y, true
			}
			low, high = min(low, v.P.Y, next.Y), max(high, v.P.Y, next.Y)
		}
	}
	return low, high, joint, ok
}
