package search

import "dryfit/internal/tiling/judge"

// costs is what a layout costs by each measure that the search covers, and by evenness; smaller is better. Lengths are
// in whole marks, floored.
type costs [ranks]int64

// The measures that are, for a given course position, a function of the offset along the courses and one of the
// offset across them, folded by the worse of the two or by their sum.
const (
	balance = iota
	narrowest
	slivers
	sightLines
	openings
	holes
	cuts
	covered
)

// evenness is balance to the mark. It decides last of all, among layouts that are equal in every measure: balance itself
// is compared in coarser steps, within which no eye prefers one to another.
const (
	evenness = covered
	ranks    = covered + 1
)

// coveredNames gives each its name, in the order above.
var coveredNames = [covered]judge.Name{judge.Balance, judge.NarrowestCut, judge.SliverPlaces, judge.SightLines,
	judge.OpeningJoints, judge.HolesClear, judge.CutCount}

// nothing is the cost where there is nothing to measure: better than any.
const nothing = -int64(1) << 40

// sums tells which measures add up over the two directions; of the others the worse counts.
var sums = [ranks]bool{slivers: true, sightLines: true, openings: true, cuts: true}

// fold joins what a measure costs along the courses and across them.
func fold(measure int, along, across int64) int64 {
	if sums[measure] {
		return along + across
	}
	return max(along, across)
}

// blank is the cost of nothing at all.
func blank() costs {
	var c costs
	for m := range c {
		if !sums[m] {
			c[m] = nothing
		}
	}
	return c
}

// indexOf finds a covered measure; -1 if the search does not cover it.
func indexOf(n judge.Name) int {
	for i, c := range coveredNames {
		if c == n {
			return i
		}
	}
	return -1
}

// ranked lists the covered measures in order of importance.
func ranked(names []judge.Name) []int {
	var out []int
	for _, n := range names {
		if i := indexOf(n); i >= 0 {
			out = append(out, i)
		}
	}
	return append(out, evenness)
}
