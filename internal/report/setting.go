package report

import (
	"fmt"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/takeoff"
	"dryfit/internal/unit"
)

// Bedding says for each face with what and how its tile is set.
func Bedding(p plan.Plan) Table {
	t := Table{Title: "Setting, face by face", Empty: "No face is laid out.",
		Columns: numbers(text("Face", "Trowel", "Backs", "Mortar", "Bed of mortar", "In contact", "Grout", "Joints", "Crosses", "Tees", "Straights", "Clips"), 4, 5, 7, 8, 9, 10, 11)}
	for _, f := range p.Takeoff.Faces {
		t.Rows = append(t.Rows, []string{f.Name, trowelWords(p, f), backWords(f), orNone(f.Mortar, "none chosen yet"), p.Style.Say(unit.Fills(f.Bed)), contactWords(f),
			orNone(f.Grout, "none chosen yet"), p.Style.Say(unit.Fills(f.Joints)), fmt.Sprint(f.Crosses), fmt.Sprint(f.Tees), fmt.Sprint(f.Straights), fmt.Sprint(f.Clips)})
	}
	return t
}

func trowelWords(p plan.Plan, f takeoff.Face) string {
	words := takeoff.TrowelWords(f.Trowel, p.Style.System)
	if f.Trowel.Held > 0 {
		words += fmt.Sprintf(", held at %d°", int64(f.Trowel.Held/unit.Degree))
	}
	if f.Proposed {
		words += " (proposed)"
	}
	return words
}

func backWords(f takeoff.Face) string {
	if f.Butter {
		return "skimmed too"
	}
	return "as they are"
}

// contactWords says how much of a back the mortar reaches, and how much it must.
func contactWords(f takeoff.Face) string {
	if !f.ContactKnown {
		return "not checked"
	}
	return fmt.Sprintf("%d %% of %d %%", int64(f.Contact)*100/int64(unit.One), int64(f.ContactLeast)*100/int64(unit.One))
}

// Weights says what tiling weighs on each face and what its ground carries.
func Weights(p plan.Plan) Table {
	per := " (kg on a square metre)"
	if p.Style.System == unit.Inches {
		per = " (lb on a square foot)"
	}
	t := Table{Title: "Weight", Empty: "No face is laid out.", Columns: numbers(text("Face", "Tile, mortar and grout"+per, "Its ground carries"+per, "By"), 1, 2)}
	for _, f := range p.Takeoff.Faces {
		w := f.Weight
		row := []string{f.Name, notKnown, "not told", w.Source}
		if w.Known {
			row[1] = onEach(p, w.OnEach)
		}
		if w.CarriesKnown {
			row[2] = onEach(p, w.Carries)
		}
		if w.Typical {
			row[1] += " (typical)"
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

// onEach words a weight on a square metre, or on a square foot for those who measure in inches, to a tenth, half up.
func onEach(p plan.Plan, m unit.Mass) string {
	one, area := unit.Kilogram, unit.Metre.Times(unit.Metre)
	if p.Style.System == unit.Inches {
		one, area = unit.Pound, unit.SquareFoot
	}
	q := unit.Weighs(m).Share(int64(area), int64(unit.Metre.Times(unit.Metre)))
	tenths := (20*q.N/int64(one) + 1) / 2
	return fmt.Sprintf("%d.%d", tenths/10, tenths%10)
}

// StackWords says what lies on the floor before it is set.
func StackWords(p plan.Plan) string {
	s := p.Takeoff.Stack
	if !s.Known {
		return "what the tile weighs is not known"
	}
	words := "the tile weighs " + p.Style.Say(unit.Weighs(s.Tile)) + ", the powders " + p.Style.Say(unit.Weighs(s.Powders))
	if s.Typical {
		words += " (partly by typical figures)"
	}
	if !s.SpreadKnown {
		return words + "; where they may lie is not checked"
	}
	return words + "; spread them over " + p.Style.Say(unit.Spreads(s.Spread)) + " at least"
}

// Mixing is the card for one powder: what to weigh in for a whole pack and for parts of it, and how far each goes.
func Mixing(p plan.Plan, r takeoff.Recipe) Table {
	t := Table{Title: "Mixing: " + recipeName(r), Columns: numbers(text("Powder", "Water by weight", "Water by volume", "Fills", "Goes as far as"), 0, 1, 2, 3)}
	for _, v := range batches(p, r) {
		b := r.Batch(v)
		row := []string{p.Style.Say(unit.Weighs(b.Powder)), notKnown, notKnown, p.Style.Say(unit.Fills(v)), farWords(p, r, v)}
		if b.WaterKnown {
			row[1], row[2] = p.Style.Say(unit.Weighs(b.WaterMass)), p.Style.Say(unit.Fills(b.Water))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func recipeName(r takeoff.Recipe) string {
	return orNone(r.Good, r.Kind.String()+", none chosen yet")
}

// batches are the volumes of a whole pack, a half and a quarter of it, and of a weight that a hand mixes.
func batches(p plan.Plan, r takeoff.Recipe) []unit.Volume {
	small := unit.Weighs(unit.Kilogram)
	if p.Style.System == unit.Inches {
		small = unit.Weighs(2 * unit.Pound)
	}
	var out []unit.Volume
	add := func(q unit.Quantity) {
		if v, ok := r.Dry.For(q); ok {
			out = append(out, unit.Volume(v.N))
		}
	}
	for _, g := range p.Document.Goods {
		if g.Name == r.Good && r.Good != "" && len(g.Packs) > 0 && g.Packs[0].Size.Of == unit.ByMass {
			for _, part := range []int64{1, 2, 4} {
				add(unit.Quantity{Of: unit.ByMass, N: g.Packs[0].Size.N / part})
			}
		}
	}
	add(small)
	return out
}

// farWords says how far a batch goes on each face that takes it; faces where it goes equally far stand together.
func farWords(p plan.Plan, r takeoff.Recipe, v unit.Volume) string {
	var far []string
	faces := map[string][]string{}
	for _, f := range p.Takeoff.Faces {
		good, whole := f.Mortar, f.Bed
		if r.Kind == document.Grout {
			good, whole = f.Grout, f.Joints
		}
		if good != r.Good || whole <= 0 {
			continue
		}
		words := "all"
		if v < whole {
			words = p.Style.Say(unit.Quantity{Of: unit.ByArea, N: unit.Spreads(f.Area+f.JointsArea).Share(int64(v), int64(whole)).N})
		}
		if faces[words] == nil {
			far = append(far, words)
		}
		faces[words] = append(faces[words], f.Name)
	}
	for i, words := range far {
		far[i] = words + " of " + list(faces[words])
	}
	return strings.Join(far, "; ")
}

// RecipeWords are the times of a powder, from its label.
func RecipeWords(r takeoff.Recipe) string {
	said := func(what string, m unit.Minutes) string {
		if m == 0 {
			return what + " " + notKnown
		}
		return what + " " + m.String()
	}
	words := said("Rest before mixing again:", r.Slake) + ". " + said("Use a batch within:", r.PotLife) + ". "
	if r.Kind == document.Mortar {
		words += said("Set tile into it within:", r.OpenTime) + ". "
	}
	if r.Typical {
		words += "Typical, no label's: " + r.Source + ". "
	}
	return words + "Powder into the water, never more water than the label allows. Wear a mask and gloves: the dust scars lungs, wet cement burns skin."
}
