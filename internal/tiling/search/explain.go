package search

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
)

// explain gives every kept layout its sentence of why and why not. The first is held against all that were judged,
// which hold the best by each measure that the search covers; the others are held against the first.
func explain(kept, judged []Candidate) {
	for i := range kept {
		if i == 0 {
			kept[0].Why, kept[0].WhyNot = whyFirst(kept[0], judged), whyNotFirst(kept[0], judged)
		} else {
			kept[i].Why, kept[i].WhyNot = gains(kept[i], kept[0]), losses(kept[i], kept[0])
		}
	}
}

// whyFirst names the measures in which no layout does better, as far as that is proved, and then those in which none
// of the judged ones does.
func whyFirst(c Candidate, judged []Candidate) judge.Reason {
	var proved, among []judge.Reason
	for _, m := range c.Measures {
		switch {
		case m.None || len(proved)+len(among) == spoken || m.Cost > least(judged, m).Cost:
		case m.Exact:
			proved = append(proved, judge.Say(m))
		default:
			among = append(among, judge.Say(m))
		}
	}
	out := judge.Join("; ", headed("no layout does better in: ", proved), headed("of those judged none does better in: ", among))
	if out.Text == "" {
		return judge.Because("the best by the order of importance")
	}
	return out
}

func headed(head string, list []judge.Reason) judge.Reason {
	if len(list) == 0 {
		return judge.Reason{}
	}
	return judge.Join("", judge.Because(head), judge.Join("; ", list...))
}

// spoken is how many measures a sentence names before it is too long to read at the wall.
const spoken = 3

// whyNotFirst names what the first gives up: the most important measure in which another layout is better, and by how
// much at best.
func whyNotFirst(c Candidate, judged []Candidate) judge.Reason {
	for _, m := range c.Measures {
		if best := least(judged, m); best.Cost < m.Cost {
			return judge.Join("", judge.Than(m, best), judge.Because(" elsewhere"))
		}
	}
	return judge.Reason{}
}

// least returns the best that any judged layout has of a measure; m itself if none has less.
func least(judged []Candidate, m judge.Measure) judge.Measure {
	for _, c := range judged {
		for _, o := range c.Measures {
			if o.Name == m.Name && o.Cost < m.Cost {
				m = o
			}
		}
	}
	return m
}

// gains names the most important measures in which c beats o.
func gains(c, o Candidate) judge.Reason {
	if better := c.betters(o); better.Text != "" {
		return better
	}
	return judge.Because("better in nothing that is looked for; another place to start")
}

// losses names the most important measures in which c is worse than o.
func losses(c, o Candidate) judge.Reason {
	var worse []judge.Reason
	for i, m := range c.Measures {
		if o.telling(c, i) && len(worse) < spoken {
			worse = append(worse, judge.Than(m, o.Measures[i]))
		}
	}
	return judge.Join("; ", worse...)
}

func (c Candidate) betters(o Candidate) judge.Reason {
	var better []judge.Reason
	for i, m := range c.Measures {
		if c.telling(o, i) && len(better) < spoken {
			better = append(better, judge.Than(m, o.Measures[i]))
		}
	}
	return judge.Join("; ", better...)
}

// telling reports whether c beats o in a measure by something to tell: a length by two marks, since one may look the
// same when it is rounded; one mark only in the first measure that differs, which decides between them.
func (c Candidate) telling(o Candidate, i int) bool {
	gain := o.Measures[i].Cost - c.Measures[i].Cost
	return gain > 1 || gain == 1 && (c.Measures[i].IsCount || c.decides(o) == i)
}

// decides is the first measure in which two layouts differ.
func (c Candidate) decides(o Candidate) int {
	return slices.IndexFunc(c.Measures, func(m judge.Measure) bool {
		return slices.ContainsFunc(o.Measures, func(n judge.Measure) bool { return n.Name == m.Name && n.Cost != m.Cost })
	})
}

// Pin judges a pinned origin against what a search of the same input found: WhyNot says what the pin costs, and is
// empty if it is as good as the best.
func Pin(in Input, origin geom.Point, r Result) Candidate {
	c := Judge(in, origin)
	if len(r.Finalists) == 0 || len(c.Measures) == 0 {
		return c
	}
	c.Why = judge.Because("held where it was pinned")
	if Compare(c, r.Finalists[0]) > 0 {
		c.WhyNot = judge.Join("", judge.Because("the pin costs: "), losses(c, r.Finalists[0]))
	}
	return c
}
