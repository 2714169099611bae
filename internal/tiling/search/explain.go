package search

import (
	"slices"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
)

// explain gives every kept layout its sentence of why and why not. They speak of the pool: the best by the person's
// order, the best by each single measure, and the best of each part of the offsets.
func explain(kept, pool []Candidate) {
	for i := range kept {
		if i == 0 {
			kept[i].Why, kept[i].WhyNot = whyFirst(kept[0], pool), whyNotFirst(kept[0], pool)
			continue
		}
		kept[i].Why, kept[i].WhyNot = gains(kept[i], kept[0]), losses(kept[i], kept[0])
	}
}

// whyFirst names the measures in which no layout does better.
func whyFirst(c Candidate, pool []Candidate) judge.Reason {
	var best []judge.Reason
	for i, m := range c.Measures {
		if !m.None && len(best) < spoken && m.Cost <= leastCost(pool, i) {
			best = append(best, judge.Say(m))
		}
	}
	if len(best) == 0 {
		return judge.Because("the best by the order of importance")
	}
	return judge.Join("", judge.Because("no layout does better in: "), judge.Join("; ", best...))
}

// spoken is how many measures a sentence names before it is too long to read at the wall.
const spoken = 3

// whyNotFirst names what the first gives up: the most important measure in which another layout is better, and by how
// much at best.
func whyNotFirst(c Candidate, pool []Candidate) judge.Reason {
	for i, m := range c.Measures {
		k := slices.IndexFunc(pool, func(o Candidate) bool { return o.Measures[i].Cost == leastCost(pool, i) })
		if k >= 0 && pool[k].Measures[i].Cost < m.Cost {
			return judge.Join("", judge.Than(m, pool[k].Measures[i]), judge.Because(" in another layout"))
		}
	}
	return judge.Reason{}
}

func leastCost(pool []Candidate, i int) int64 {
	least := pool[0].Measures[i].Cost
	for _, c := range pool {
		least = min(least, c.Measures[i].Cost)
	}
	return least
}

// gains names the most important measures in which c beats o.
func gains(c, o Candidate) judge.Reason {
	var better []judge.Reason
	for i, m := range c.Measures {
		if m.Cost < o.Measures[i].Cost && len(better) < spoken {
			better = append(better, judge.Than(m, o.Measures[i]))
		}
	}
	if len(better) == 0 {
		return judge.Because("better in nothing that is looked for; another place to start")
	}
	return judge.Join("; ", better...)
}

// losses names the most important measures in which c is worse than o.
func losses(c, o Candidate) judge.Reason {
	var worse []judge.Reason
	for i, m := range c.Measures {
		if m.Cost > o.Measures[i].Cost && len(worse) < spoken {
			worse = append(worse, judge.Than(m, o.Measures[i]))
		}
	}
	return judge.Join("; ", worse...)
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
