// Package bar cuts pieces of given lengths out of sticks.
//
// It takes pieces (a length, how many), stocks (a length, a price, how many
// there are, stretches that can not be used), the width of the cut and what is
// lost at the ends. It gives which piece comes from which stick at which place,
// what the sticks cost, and an amount of money that no plan can go below, with
// what proves it.
//
// Rules:
//
//  1. A piece lies in one clear run of a stick: what is left of the stick
//     without Trim at both ends and without the defects. The cuts that take
//     those off lie inside them, whatever the width of the cut.
//  2. Two neighbors in a run are Kerf apart. The cut behind the last piece may
//     be narrower where less is left of the run: the saw then only shaves the
//     end. So pieces fit a run where the sum of (length + Kerf) is at most the
//     run + Kerf.
//  3. A defect narrower than Kerf counts as Kerf wide, widened upward: the one
//     cut that takes it out begins where it begins.
//  4. What is wanted, in this order: the fewest pieces that no stick is left
//     for (they can only be where every stock that holds them is limited); the
//     least money; the longest remnant.
//  5. A remnant is measured as a piece is: it lies in a clear run, Kerf from
//     its neighbors. It may lie in a stick that the plan cuts, or in one of
//     price 0 that it does not touch, for that is owned already. So the longest
//     remnant is the longest further piece that could be cut for no more money.
//
// An offcut on hand is a stock of price 0 with its count. Lengths and prices
// are whole numbers of any unit up to 2^31; nothing is rounded.
//
// How it is solved: the linear program over all ways to fill a stick (Gilmore
// and Gomory, Operations Research 9, 1961, and 11, 1963), its columns made as
// they are needed. Its duals, rounded to whole numbers, are weights of the
// pieces, and weights are a proof that needs no trust in floats: see Proof.
// Diving on its columns gives plans. Where a gap stays, all ways to fill a stick
// that a cheaper plan could use are listed (their reduced cost is below the gap)
// and a branch and bound over that list decides.
package bar
