package clash

import (
	"dryfit/internal/diag"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// Room round plumbing, our own: a hand's breadth is not to be had, but a nut must turn.
const pipeClear = unit.Inch / 2

// plumbing holds traps, tailpieces, arms and stops against what a cabinet is made of. What runs through a drawer is cut out of it.
func (h *holder) plumbing() {
	pipes := h.of(space.Trap, space.Stop)
	for _, d := range h.of(space.Drawer) {
		h.cutOut(d, pipes)
	}
	for _, b := range h.of(space.Shelf, space.Panel) {
		for _, p := range pipes {
			if p.Wall != b.Wall {
				continue
			}
			mend := "move the shelf up or down, or cut it out round the pipe"
			if b.Kind == space.Panel {
				mend = "cut the panel out where the pipe passes, before it is glued"
			}
			h.meet("plumbing", "{0} to {1}", b, p, gap(b, p), ask{need: 0, class: diag.Look, mend: mend})
		}
	}
}

// CutOuts lists what has to be cut out of drawers alone: what Make finds of them, without all else.
func CutOuts(all []space.Envelope) []CutOut {
	h := &holder{all: all}
	for _, d := range h.of(space.Drawer) {
		h.cutOut(d, h.of(space.Trap, space.Stop))
	}
	return h.out.CutOuts
}

// gap is how far two boxes of one wall are apart along the axis that parts them most; less than nothing by the least that they share.
func gap(a, b space.Envelope) unit.Length {
	return max(a.X.Gap(b.X), a.Y.Gap(b.Y), a.Z.Gap(b.Z))
}

// cutOut joins what a drawer meets into one cut, open to its back: as the drawer comes out the pipe runs backward through it.
func (h *holder) cutOut(d space.Envelope, pipes []space.Envelope) {
	c := CutOut{Drawer: d.Name, At: d.At}
	first := true
	for _, p := range pipes {
		room := p
		room.X, room.Y, room.Z = p.X.Grown(pipeClear), p.Y.Grown(pipeClear), p.Z.Grown(pipeClear)
		if p.Wall != d.Wall || !room.X.Meets(d.X) || !room.Y.Meets(d.Y) || !room.Z.Meets(d.Z) {
			continue
		}
		from, to, deep := max(room.X.Lo-d.X.Lo, 0), min(room.X.Hi-d.X.Lo, d.X.Length()), min(room.Z.Hi-d.Z.Lo, d.Z.Length())
		if first {
			c.From, c.To, c.Deep, first = from, to, deep, false
			c.Up = max(room.Y.Lo-d.Y.Lo, 0)
		}
		c.From, c.To, c.Deep = min(c.From, from), max(c.To, to), max(c.Deep, deep)
		c.Up = min(c.Up, max(room.Y.Lo-d.Y.Lo, 0))
		c.For = append(c.For, p.Name)
	}
	if first {
		return
	}
	c.Through = c.Up == 0
	c.LeavesLeft, c.LeavesRight = c.From, d.X.Length()-c.To
	h.out.CutOuts = append(h.out.CutOuts, c)
	if c.Deep >= d.Z.Length() || c.LeavesLeft == 0 && c.LeavesRight == 0 {
		h.out.Meetings = append(h.out.Meetings, Meeting{ID: d.Owner + " > " + d.Name + " > cut-out", At: d.At, One: d.Name, Other: joined(c.For), What: "{0} can not be cut out to clear {1}: nothing would be left of it", Misses: true,
			Class: diag.Stop, Apart: -pipeClear, Mend: "leave the drawer out, make it shallower, or move the pipe", Uses: d.Uses})
	}
}
