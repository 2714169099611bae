package sheet

import (
	"dryfit/internal/document"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
)

// ordering lists what to buy and what it costs.
func (b *book) ordering() {
	f := b.writer(leaf{title: "Order list", detail: "Goods in packs, and what they cost", paper: b.paper.Landscape()})
	f.paragraph("In all: "+report.CostWords(b.p)+".", parts.Small, true)
	f.table(report.Order(b.p), 0)
	f.notes("", "Typical: the amount rests on a common figure, because no label was copied into the document. Prices are those that were written there.")
	f.table(report.Cost(b.p), 0)
	f.table(report.Trips(b.p), 0)
	if t := report.Alternatives(b.p); len(t.Rows) > 0 {
		f.table(t, 0)
	}
	f.table(report.Back(b.p), 0)
}

const mixCaution = "Dry mortar and grout: dust that scars lungs. Wet cement burns skin and eyes. Mask, gloves, glasses; rinse at once."

// mixing is the card that hangs over the pail, with how each face is set.
func (b *book) mixing() {
	if len(b.p.Takeoff.Faces) == 0 {
		return
	}
	f := b.writer(leaf{title: "Mixing card", detail: "Powder, water, trowels", paper: b.paper.Landscape(), caution: mixCaution})
	if len(b.p.Days.Batches) > 0 {
		f.table(report.MixingDays(b.p), 0)
		f.notes("", "By the hours that the days are planned with. Faster or slower than that, mix more or less at once; what has begun to set is thrown away, never thinned.")
	}
	for _, r := range b.p.Takeoff.Recipes {
		f.table(report.Mixing(b.p, r), 0)
		f.notes("", report.RecipeWords(r))
	}
	if b.seals() {
		f.notes("", "Stone is sealed before it is grouted, so that grout does not stain it, and again when the grout has cured (common practice).")
	}
	f.table(report.Bedding(b.p), 0)
	f.notes("", "Lift a tile now and then and look at its back: what is not covered was not in contact. Comb in one direction, press the tile across the ridges.",
		"Lots and shades: mix tiles of several boxes as you lay; one lot for one face.")
	f.table(report.Weights(b.p), 0)
	f.notes("Lifting and stacking", "In the room: "+report.StackWords(b.p)+". Lift by two what one can not hold close. Whether floor and walls carry it a licensed engineer decides.")
}

// reckoned lists what every line of the order comes from.
func (b *book) reckoned() {
	if len(b.p.Takeoff.Lines) == 0 {
		return
	}
	f := b.writer(leaf{title: "Quantities", detail: "What each was reckoned from", paper: b.paper.Landscape()})
	f.table(report.Reckoned(b.p), 0)
}

// seals: something of the order is sealed.
func (b *book) seals() bool {
	for _, l := range b.p.Takeoff.Lines {
		if l.Kind == document.Sealer {
			return true
		}
	}
	return false
}
