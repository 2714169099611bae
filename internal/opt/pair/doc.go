// Package pair cuts pieces from the fewest identical rectangular blanks.
//
// It takes the size of the blank, the width of the cut, and pieces with the
// turns each allows and the sides each must take from the blank's own edges.
// It gives where every piece lies, how many blanks that takes, and a number of
// blanks that no arrangement can go below.
//
// Rules of a blank that is shared:
//
//  1. Pieces are never flipped. A quarter turn is counterclockwise; x runs to
//     the Right side and y to the Top side.
//  2. A kept side lies, after the turn, on the blank's side of that direction.
//     A piece that keeps two opposite sides spans the blank.
//  3. Every cut runs edge to edge through what is left of the blank (a panel).
//     A cut between two pieces takes Kerf out of the panel; a cut that only
//     trims waste from a piece may take less, as a saw may shave an edge.
//  4. No cut parallel to a side comes nearer than LeastStrip to a side of the
//     panel parallel to it, on either hand: the waste it takes off, its own
//     kerf included, is nothing or at least LeastStrip, and what stays is at
//     least LeastStrip. A piece that breaks this even alone in a blank is
//     listed as Tight and gets a blank of its own.
//  5. Without a Shape a piece is its rectangle. Pieces with a Shape may also be
//     divided by slanted cuts; then what must stay Kerf apart are their convex
//     hulls, since a straight cut sees no more of a piece than that.
//     LeastStrip does not bind a blank that holds only pieces with a Shape
//     (whether a slanted cut can be snapped is the caller's to judge); where it
//     is set, a blank that mixes both sorts is cut parallel to its sides.
//
// Limits, which the bound allows for: three or more pieces of which one with a
// Shape can slide are divided by slanted cuts only with each pushed to the ends
// of its travel. Two pieces always, and rectangles up to six a blank, are
// decided exactly.
//
// Sizes are whole numbers of any unit up to 2^29; nothing is rounded.
package pair
