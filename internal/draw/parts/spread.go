package parts

import "dryfit/internal/draw"

// spread moves labels apart as little as may be: want holds where each should stand, ascending; apart[i] is the
// least distance of labels i and i+1. The result has the least sum of squared moves among all that keep the
// order and the distances: take the distances off, and that is isotonic regression, which pooling adjacent
// violators solves (Barlow, Bartholomew, Bremner and Brunk 1972, ch. 1). Limits lo <= hi bound the result where
// the labels have room between them; clipping keeps it the least.
func spread(want, apart []draw.Um, within *Limits) []draw.Um {
	if len(want) == 0 {
		return nil
	}
	offset := make([]draw.Um, len(want))
	for i := 1; i < len(want); i++ {
		offset[i] = offset[i-1] + apart[i-1]
	}
	var pools []pool
	for i, w := range want {
		pools = join(append(pools, pool{w - offset[i], 1}))
	}
	out := make([]draw.Um, 0, len(want))
	for _, p := range pools {
		for range p.n {
			out = append(out, within.clip(p.mean(), offset[len(want)-1])+offset[len(out)])
		}
	}
	return out
}

// pool is a run of labels that touch, by the sum of where each wants its start.
type pool struct {
	sum draw.Um
	n   draw.Um
}

func (p pool) mean() draw.Um { return floorDiv(2*p.sum+p.n, 2*p.n) }

// join pools the last two while they are out of order; means are compared by cross products, exactly.
func join(p []pool) []pool {
	for len(p) > 1 {
		a, b := p[len(p)-2], p[len(p)-1]
		if a.sum*b.n <= b.sum*a.n {
			break
		}
		p = append(p[:len(p)-2], pool{a.sum + b.sum, a.n + b.n})
	}
	return p
}

func floorDiv(a, b draw.Um) draw.Um {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}

// Limits bound where labels may stand along a run.
type Limits struct{ Lo, Hi draw.Um }

// clip keeps a run's start between the limits; a run longer than the room starts at the lower limit less half of
// what is too much, so that it stands out evenly.
func (l *Limits) clip(start, length draw.Um) draw.Um {
	if l == nil {
		return start
	}
	lo, hi := l.Lo, l.Hi-length
	if hi < lo {
		mid := (lo + hi) / 2
		lo, hi = mid, mid
	}
	return max(lo, min(hi, start))
}
