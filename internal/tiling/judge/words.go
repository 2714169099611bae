package judge

import "dryfit/internal/diag"

// Say words a measured number: "the narrowest cut shows 4-1/2 in (window, left)".
func Say(m Measure) Reason {
	w := wordsOf(m.Name)
	text := m.pick(w.none, w.zero, w.below, w.says)
	if m.Where == "" || m.None || text == w.zero {
		return m.fill(text)
	}
	return Because(text+" ("+w.place+"{1})", m.value(), diag.T(m.Where))
}

// Than words a number beside another layout's: "the narrowest cut shows 4-1/2 in, against 1-1/4 in".
func Than(m, o Measure) Reason {
	b := wordsOf(o.Name).brief
	return Join(", against ", Say(m), o.fill(o.pick(b.none, b.zero, b.below, b.says)))
}

// pick chooses among the wordings of a measure.
func (m Measure) pick(none, zero, below, says string) string {
	switch {
	case m.None:
		return none
	case m.Cost == 0 && zero != "":
		return zero
	case m.Length < 0:
		return below
	}
	return says
}

// fill adds the value to a wording that shows it.
func (m Measure) fill(text string) Reason { return Because(text, m.value()) }

func (m Measure) value() diag.Value {
	switch {
	case m.IsCount:
		return diag.N(m.Count)
	case m.Length < 0:
		return diag.F(-m.Length)
	}
	return diag.F(m.Length)
}

// wording is how one measure is worded; {0} is the value.
type wording struct {
	says  string
	none  string // when there is nothing to measure
	zero  string // when it is as good as it can be, to the mark; empty where zero is nothing special
	below string // when the length is negative; {0} is its size
}

// words is a measure's wording by itself and, in brief, after another's of the same measure.
type words struct {
	name Name
	wording
	place string // before the place that decides; empty where the number is that place's own
	brief wording
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
		{NarrowestCut, wording{says: "the narrowest cut shows {0}", none: "no width is cut"}, "",
			wording{says: "{0}", none: "none"}},
		{SliverPlaces, wording{says: "slivers in sight: {0}", zero: "no slivers in sight"}, "some at ",
			wording{says: "{0}", zero: "none"}},
		{Balance, wording{says: "the tiles lie {0} off center about the center line", none: "no center line",
			zero: "the cuts left and right of the center line are alike"}, "",
			wording{says: "{0} off center", none: "no center line", zero: "centered"}},
		{SightLines, wording{says: "courses miss the sight lines by a total of {0}", none: "no sight lines",
			zero: "courses end at the sight lines"}, "most at ",
			wording{says: "{0}", none: "no sight lines", zero: "none missed"}},
		{OpeningJoints, wording{says: "a total of {0} is cut off the tiles beside openings", none: "no openings",
			zero: "every edge of an opening falls on a joint"}, "most at ",
			wording{says: "{0}", none: "no openings", zero: "all on joints"}},
		{HolesClear, wording{says: "the nearest hole's rim is {0} from a joint", none: "no holes",
			below: "a joint runs {0} inside a hole's rim"}, "",
			wording{says: "{0} clear of it", none: "no holes", below: "{0} inside the rim"}},
		{Necks, wording{says: "the narrowest neck is {0}", none: "no necks"}, "",
			wording{says: "{0}", none: "no necks"}},
		{CutCount, wording{says: "tiles to cut: {0}", zero: "no tile is cut"}, "",
			wording{says: "{0}", zero: "none"}},
		{TilesToBuy, wording{says: "tiles to buy: {0}", none: "tiles not counted"}, "",
			wording{says: "{0}", none: "not counted"}},
	}
}
