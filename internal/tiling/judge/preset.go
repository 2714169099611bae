package judge

import "slices"

// Preset is an order of importance under a name in plain words.
type Preset struct {
	Name  string
	Says  string // what it looks for, for help and for sheets
	Order []Name
}

// Presets lists the orders that a person may name; the first is the default. Which comes first is our reading of
// common practice: NAVEDTRA 14044 and A108.02 4.3 center and balance, make cuts few and wide; a sliver in sight is worse than a pattern off center.
func Presets() []Preset {
	return []Preset{
		{"even cuts", "no slivers, the same cut left and right of the center line, and as wide as it can be",
			[]Name{SliverPlaces, Balance, NarrowestCut, SightLines, OpeningJoints, HolesClear, CutCount, TilesToBuy, Necks}},
		{"fewest tiles", "as few whole tiles to buy as can be",
			[]Name{TilesToBuy, SliverPlaces, CutCount, NarrowestCut, Balance, SightLines, OpeningJoints, HolesClear, Necks}},
		{"fewest cuts", "as little work at the saw as can be without slivers",
			[]Name{SliverPlaces, CutCount, NarrowestCut, Balance, SightLines, OpeningJoints, HolesClear, TilesToBuy, Necks}},
		{"lines up", "whole courses at the lines the eye follows, and joints at the edges of openings",
			[]Name{SightLines, OpeningJoints, SliverPlaces, Balance, NarrowestCut, HolesClear, CutCount, TilesToBuy, Necks}},
		{"holes safe", "holes well away from joints, and no thin necks",
			[]Name{HolesClear, Necks, SliverPlaces, NarrowestCut, Balance, SightLines, OpeningJoints, CutCount, TilesToBuy}},
	}
}

// All lists every measure in the default order.
func All() []Name { return Presets()[0].Order }

// OrderOf turns what a person asks for, a preset's name or measures' names, into a whole order of importance: the
// measures not named follow in the default order. A name that is neither is returned as unknown.
func OrderOf(asked []string) (order []Name, unknown []string) {
	for _, a := range asked {
		switch p := presetNamed(a); {
		case p != nil:
			order = append(order, p...)
		case slices.Contains(All(), Name(a)):
			order = append(order, Name(a))
		default:
			unknown = append(unknown, a)
		}
	}
	return unique(append(order, All()...)), unknown
}

func presetNamed(name string) []Name {
	for _, p := range Presets() {
		if p.Name == name {
			return p.Order
		}
	}
	return nil
}

// unique keeps the first of each name.
func unique(names []Name) []Name {
	var out []Name
	for _, n := range names {
		if !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	return out
}
