package judge

import "dryfit/internal/diag"

// Say words a measured number: "the narrowest cut shows 4-1/2 in (window, left)".
func Say(m Measure) Reason {
	w := wordsOf(m.Name)
	switch {
	case m.None:
		return Because(w.none)
	case m.Cost == 0 && w.zero != "":
		return Because(w.zero)
	case m.Length < 0:
		return m.at(w.below, diag.L(-m.Length))
	}
	return m.at(w.says, m.value())
}

// Than words a number beside another layout's: "the narrowest cut shows 4-1/2 in against 1-1/4 in".
func Than(m, o Measure) Reason {
	w := wordsOf(m.Name)
	plain := func(x Measure) bool { return !x.None && x.Length >= 0 && (x.Cost != 0 || w.zero == "") }
	if !plain(o) || !plain(m) {
		return Join("; the other: ", Say(m), Say(o))
	}
	return Join(" against ", Say(m), Because("{0}", o.value()))
}

// at adds the place that decides, if one is known.
func (m Measure) at(text string, v diag.Value) Reason {
	if m.Where == "" {
		return Because(text, v)
	}
	return Because(text+" ("+wordsOf(m.Name).place+"{1})", v, diag.T(m.Where))
}

func (m Measure) value() diag.Value {
	if m.IsCount {
		return diag.N(m.Count)
	}
	return diag.L(m.Length)
}

// words is how one measure is worded.
type words struct {
	name  Name
	says  string // {0} is the value
	none  string // when there is nothing to measure
	zero  string // when it is as good as it can be, to the mark; empty where zero is nothing special
	place string // before the place that decides; empty where the number is that place's own
	below string // when the length is negative; {0} is its size
}

func wordsOf(n Name) words {
	for _, w := range vocabulary() {
		if w.name == n {
			return w
		}
	}
	panic("judge: no words for measure " + string(n))
}

func vocabulary() []words {
	return []words{
		{name: NarrowestCut, says: "the narrowest cut shows {0}", none: "no width is cut"},
		{name: SliverPlaces, says: "slivers in sight: {0}", zero: "no slivers in sight", place: "some at "},
		{name: Balance, says: "the tiles lie {0} off center about the center line", none: "no center line",
			zero: "the cuts left and right of the center line are alike"},
		{name: SightLines, says: "courses miss the sight lines by {0} in all", none: "no sight lines",
			zero: "courses end at the sight lines", place: "most at "},
		{name: OpeningJoints, says: "{0} in all is cut off tiles beside openings", none: "no openings",
			zero: "every edge of an opening falls on a joint", place: "most at "},
		{name: HolesClear, says: "the nearest hole's rim is {0} from a joint", none: "no holes",
			below: "a joint runs {0} inside a hole's rim"},
		{name: Necks, says: "the narrowest neck is {0}", none: "no necks"},
		{name: CutCount, says: "tiles to cut: {0}", zero: "no tile is cut"},
		{name: TilesToBuy, says: "tiles to buy: {0}", none: "tiles not counted"},
	}
}
