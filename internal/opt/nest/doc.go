// Package nest cuts rectangles out of sheets with cuts that run edge to edge.
//
// It takes parts (width, height, how many, whether they may be turned), sheets
// (width, height, price, how many there are, what is lost at their edges), the
// width of the cut, and what order of cuts the saw can make. It gives a tree of
// cuts for each sheet that is cut, what the sheets cost, and an amount of money
// that no plan can go below, with what proves it.
//
// Rules:
//
//  1. x runs along the grain of a sheet. A rip runs along x and divides the
//     height of a panel; a crosscut runs across and divides its width. Every
//     cut goes edge to edge through the panel it divides.
//  2. A sheet loses Trim at all four sides; the cuts that take it off lie
//     inside it. What is left is the clear sheet, and its cuts are counted.
//  3. A cut takes Kerf out of the panel. The last one of a panel may be
//     narrower where less than Kerf is left: the saw then only shaves the edge.
//     So parts side by side fit where the sum of (size + Kerf) is at most the
//     panel + Kerf, and a problem with a kerf is one without where all parts
//     and clear sheets are Kerf larger.
//  4. Cuts of the same direction through one panel are one stage. Where Stages
//     is set, no part is more than so many stages away from the clear sheet; a
//     cut that only trims waste off counts like any other.
//  5. Where First is set, the first stage of a sheet has that direction. A
//     sheet that has no use for such a cut, because every part of it spans the
//     clear sheet, is cut the other way alone; that counts as two stages.
//  6. What is wanted, in this order: the fewest parts that no sheet is left for
//     (they can only be where every sheet that holds them is limited); the
//     least money; the largest offcut.
//  7. An offcut is one undivided panel of the tree that holds no part, in a
//     sheet that is cut. Its use is its area, where neither side is below
//     LeastSide; of equal areas the one with the longer short side.
//
// An offcut on hand is a sheet of price 0 with its count. Sizes and prices are
// whole numbers of any unit up to 2^30; what comes out is not rounded.
//
// Limits: beyond ExactParts parts the bound of money leaves out First and Stages,
// and how often a part is wanted in one sheet, so that the gap may stay open where
// the plan is the best. The offcut is proven the largest only up to ExactParts
// parts without First and Stages, or where Largest happens to meet it.
//
// How it is solved: sheets that could hold all parts for less than is known are
// opened together, and the parts are laid into them corner by corner in thousands
// of orders. Where that is not enough, one sheet is filled for given worths of the
// parts by dynamic programming over panels (Gilmore and Gomory, Operations
// Research 13, 1965; Beasley, J. Oper. Res. Soc. 36, 1985), each panel remembering
// which parts it used. Worths that follow the waste give plans (after Mukhacheva et
// al., Pesquisa Operacional 20, 2000), those that are duals of the linear program
// over all fillings give more, and diving on that program combines the fillings.
// Once the money is settled, one more part, ever larger, is laid with the others
// for the offcut. Up to ExactParts parts every way of cutting is tried.
package nest
