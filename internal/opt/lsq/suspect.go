package lsq

import (
	"math"
	"sort"
)

const (
	// critical is the standardised residual that chance exceeds once in a thousand sound readings: two-sided 0.1 % of
	// the normal distribution, 3.2905. Baarda's choice for data snooping (1968, from memory).
	critical = 3.29

	// oddsToName is how many times likelier than the next a reading must be before it alone is named. 20 to 1 is the
	// usual 5 % chance of accusing the wrong one.
	oddsToName = 20
)

// suspects names the readings that may hold the gross error. Leaving out a reading lowers the weighted sum of squares by
// the square of its standardised residual, so that with normal errors the odds between two readings are exp of half the
// difference of these squares. Fully correlated residuals have even odds, and are named together.
func suspects(w []float64) (list []int) {
	worst := worstOf(w)
	if worst < 0 || math.Abs(w[worst]) <= critical {
		return nil
	}
	least := float64(w[worst]*w[worst]) - 2*lnOddsToName
	for i, v := range w {
		if v != 0 && float64(v*v) > least {
			list = append(list, i)
		}
	}
	sort.SliceStable(list, func(a, b int) bool { return millionths(w[list[a]]) > millionths(w[list[b]]) })
	return list
}

// lnOddsToName is the natural logarithm of oddsToName.
const lnOddsToName = 2.995732273553991

// millionths keeps rounding noise from deciding the order of equals. Sizes over 9e12 count as equal.
func millionths(v float64) int64 {
	return int64(math.Floor(float64(min(math.Abs(v), 9e12)*1e6) + 0.5))
}

// worstOf is the reading with the greatest standardised residual, the first of equals, -1 when none is controlled.
func worstOf(w []float64) int {
	worst := -1
	for i, v := range w {
		if v != 0 && (worst < 0 || millionths(v) > millionths(w[worst])) {
			worst = i
		}
	}
	return worst
}

// without adjusts again with one observation left out, from the points adjusted with it.
func (w *network) without(left int, at []Point) *Rest {
	other := *w
	other.obs = append(append([]Observation(nil), w.obs[:left]...), w.obs[left+1:]...)
	s := other.settle(at, stepBudget)
	rest := &Rest{Left: left, Freedom: len(other.obs) - w.unknowns, Worst: -1}
	if !s.rest || len(other.freeMotions(s.at)) > 0 {
		return rest // what remains does not hold together by itself: nothing can be said of it
	}
	res := Result{Points: s.at}
	if other.control(&res) == nil {
		return rest
	}
	rest.Points = s.at
	rest.Agree = rest.Freedom > 0 && suspects(res.Standardised) == nil
	if rest.Worst = worstOf(res.Standardised); rest.Worst >= left {
		rest.Worst++
	}
	return rest
}
