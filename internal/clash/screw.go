package clash

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// screws holds each screw against pipes and cables, against the wood that it wants behind it, and against the joints of the tile that it goes through.
func (h *holder) screws() {
	for _, s := range h.of(space.Screw) {
		h.buried(s)
		h.wood(s)
		h.joints(s)
	}
}

// buried: as near as the clearance itself stops work; a tape's mark more passes.
func (h *holder) buried(s space.Envelope) {
	r := rule.BuriedClear
	for _, b := range h.of(space.Pipe, space.Cable) {
		if b.Wall != s.Wall {
			continue
		}
		h.meet("in the wall", "{0} to {1} in the wall", s, b, toRect(s.Middle(), b.Rect()), ask{need: r.Limit, over: true, class: diag.Stop, rule: r.ID,
			mend: "move it, or have the pipe or cable moved or behind a steel plate; before drilling find out what is there; local codes and licensed trades decide"})
	}
}

// wood: where studs or blocking are recorded on the wall, a screw that holds hard must land in them, and any other had better.
func (h *holder) wood(s space.Envelope) {
	studs, recorded := false, false
	best, name := unit.Reach, ""
	for _, b := range h.of(space.Stud, space.Blocking) {
		if b.Wall != s.Wall {
			continue
		}
		recorded, studs = true, studs || b.Kind == space.Stud
		// Half an inch from the edge of the wood a screw splits it (common practice: no nearer than its own width and a bit).
		if d := toRect(s.Middle(), shrunk(b.Rect(), edgeOfWood)); d < best {
			best, name = d, b.Name
		}
	}
	if !recorded || best <= 0 || !studs && !s.Holds {
		return // where no stud is recorded, one may be behind it
	}
	class := diag.Look
	if s.Holds {
		class = diag.Stop
	}
	h.out.Meetings = append(h.out.Meetings, Meeting{ID: s.Owner + " > " + s.Name + " > wood", At: s.At, One: s.Name, Other: name, What: "{0} misses the nearest wood, {1}", Apart: best, Need: 0, Misses: true, Class: class,
		Mend: "move it onto the wood, or put blocking in while the wall is open", Uses: s.Uses})
}

// edgeOfWood is how far a screw stays off the edge of a stud: 3/8 in, common practice.
const edgeOfWood = 3 * unit.Inch / 8

func shrunk(r geom.Rect, by unit.Length) geom.Rect {
	x, y := min(by, r.W()/2), min(by, r.H()/2)
	return geom.Rect{Min: geom.Point{X: r.Min.X + x, Y: r.Min.Y + y}, Max: geom.Point{X: r.Max.X - x, Y: r.Max.Y - y}}
}

// toRect is the distance from a point to a rectangle, 0 in it.
func toRect(p geom.Point, r geom.Rect) unit.Length {
	return geom.Dist(p, geom.Point{X: min(max(p.X, r.Min.X), r.Max.X), Y: min(max(p.Y, r.Min.Y), r.Max.Y)})
}

// joints: a hole wants tile round it. A screw that stands in no piece of a tiled wall stands in a joint.
func (h *holder) joints(s space.Envelope) {
	r := rule.EdgeOfHole
	k := ask{need: r.Limit, class: diag.Look, rule: r.ID, mend: "move the fixing off the joint, or let the joint lie elsewhere: lay out with look for: holes clear of joints"}
	near := unit.Reach
	var by space.Envelope
	for _, t := range h.of(space.Tile) {
		if t.Wall != s.Wall || toRect(s.Middle(), t.Rect()) > r.Limit {
			continue
		}
		d := toEdge(s.Middle(), t.Face)
		if geom.Region([]geom.Ring{t.Face}).Contains(s.Middle()) >= 0 {
			h.meet("joint", "{0} to the edge of tile {1}", s, t, d, k)
			return
		}
		if d < near {
			near, by = d, t
		}
	}
	if near < unit.Reach {
		h.meet("joint", "{0} stands in the joint at tile {1}", s, by, 0, k)
	}
}

// toEdge is the distance from a point to the outline of a piece.
func toEdge(p geom.Point, r geom.Ring) unit.Length {
	best := unit.Reach
	for i, v := range r {
		best = min(best, geom.DistToSegment(p, v.P, r[(i+1)%len(r)].P))
	}
	return best
}
