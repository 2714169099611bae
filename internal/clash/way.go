package clash

import (
	"dryfit/internal/diag"
	"dryfit/internal/rule"
	"dryfit/internal/space"
	"dryfit/internal/unit"
)

// ways holds what moves, drawers, cabinet doors and the room's door, against what stands and against each other.
func (h *holder) ways() {
	moving := h.of(space.Pull, space.Swing)
	standing := h.of(space.Fixture, space.Carcass, space.Panel, space.Top, space.Trim, space.Fitting, space.Stop)
	leaves := h.of(space.Leaf)
	var need = leafClear()
	for i, a := range moving {
		for _, b := range standing {
			if a.Owner == b.Owner || len(b.Plan) == 0 {
				continue
			}
			h.meet("way", "{0} to {1}", a, b, space.Apart(a, b), way(b, need, "make it narrower, hinge it on the other side, or move what stands in its way"))
		}
		for _, b := range append(leaves[:len(leaves):len(leaves)], moving[i+1:]...) {
			if a.Owner == b.Owner && a.Wall == b.Wall && sameFront(a, b) {
				continue
			}
			h.meet("both open", "{0} to {1}, both open", a, b, space.Apart(a, b), ask{need: need.Limit, class: diag.Look, rule: need.ID, mend: "only one of them can be open; change the side of a hinge if both are wanted"})
		}
	}
	for _, a := range leaves {
		for _, b := range h.of(space.Panel) {
			h.meet("way", "{0} to {1}", a, b, space.Apart(a, b), way(b, need, "hang the leaf on the other side, let it open outward, or move the cabinet"))
		}
	}
}

// underTop is what a door or drawer needs under a top: to clear it, no more, for the gap there is its reveal, and chosen (our own judgment).
const underTop = unit.Millimetre

// way is what is asked of a thing that moves past one that stands.
func way(b space.Envelope, usual rule.Rule, mend string) ask {
	k := ask{need: usual.Limit, class: diag.Stop, rule: usual.ID, mend: mend}
	if b.Kind == space.Top {
		k.need, k.rule, k.mend = underTop, "", "give the fronts a greater edge reveal"
	}
	return k
}

// sameFront: drawers of one column lie over each other and doors of one pair open away from each other; their ways touch and do not clash.
func sameFront(a, b space.Envelope) bool {
	return a.X.Gap(b.X) >= 0 || a.High.Gap(b.High) >= 0
}

func leafClear() rule.Rule {
	e, _ := rule.For(rule.Customary).Least(rule.LeafClear)
	return e.Rule
}
