package report

import (
	"fmt"

	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/schedule"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// mixWords tells what a session of setting mixes: the powder and water for its pieces, and how much of it at once so that each
// mix is used up within the label's pot life. Where the label does not say, that is said.
func mixWords(p plan.Plan, b schedule.Batch) string {
	face, ok1 := p.Takeoff.Face(b.Face)
	recipe, ok2 := p.Takeoff.Recipe(document.Mortar, face.Mortar)
	volume := mortarOf(p.Takeoff, b)
	if !ok1 || !ok2 || volume == 0 {
		return ""
	}
	words := "Mortar: " + powderWords(p.Style, recipe.Batch(volume), recipe)
	n, known := mixes(recipe, minutesOf(p, b))
	if !known {
		return words + "; how much at once is not known, its pot life is missing"
	}
	if n > 1 {
		words += fmt.Sprintf(", in %d mixes of %s", n, powderWords(p.Style, recipe.Batch(eachMix(volume, n)), recipe))
	}
	return words + ": each is used up within " + recipe.PotLife.String()
}

func powderWords(s unit.Style, b takeoff.Batch, r takeoff.Recipe) string {
	words := s.Say(unit.Weighs(b.Powder)) + " of powder"
	if b.WaterKnown {
		words += " in " + s.Say(unit.Fills(b.Water)) + " of water"
	}
	if r.Typical {
		words += " (a typical figure, not the label's)"
	}
	return words
}

// mortarOf adds up the bed of a batch's pieces.
func mortarOf(t takeoff.Plan, b schedule.Batch) (sum unit.Volume) {
	in := map[string]bool{}
	for _, a := range b.Pieces {
		in[a] = true
	}
	for _, q := range t.Pieces {
		if q.Face == b.Face && in[q.Address] {
			sum += q.Mortar
		}
	}
	return sum
}

// Clips are the leveling clips that the days take: stems are used up, caps come back when a wall is stripped. False where none are used.
func Clips(p plan.Plan) (schedule.Clips, bool) {
	each := map[string]int{}
	for _, q := range p.Takeoff.Pieces {
		each[q.Face+"\n"+q.Address] = q.Clips
	}
	c := schedule.ReuseClips(p.Days.ClipUses(func(face, address string) int { return each[face+"\n"+address] }))
	return c, c.Stems > 0
}
