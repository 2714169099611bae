package site

import (
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// HoleClearance is the gap round a pipe that lets it move and a tile be set: 1/8 in all round (common practice 3 to 6 mm),
// hidden by the escutcheon.
const HoleClearance = unit.Inch / 8

// Drilled is the diameter that is really drilled: what is asked for, or the pipe with its clearance, made by the next core bit
// that there is; 0 where neither the hole nor the pipe is known.
func (h Hole) Drilled(tools document.Tools) unit.Length {
	switch {
	case h.Drill > 0:
		return h.Drill
	case h.Diameter > 0:
		return nextBit(tools, h.Diameter+2*HoleClearance)
	}
	return 0
}

// nextBit is the least core bit that makes room for a hole; the hole itself where no bit does.
func nextBit(tools document.Tools, hole unit.Length) unit.Length {
	best := unit.Length(0)
	for _, b := range tools.CoreBits {
		if b.Known && b.V >= hole && (best == 0 || b.V < best) {
			best = b.V
		}
	}
	if best == 0 {
		return hole
	}
	return best
}
