// Package lsq adjusts a planar network of points to more readings than are needed, by least squares.
//
// It takes points that are known by number only, and observations between them: distances, and signed coordinate
// differences along x or y, each with its standard deviation. It gives the adjusted points, what each observation had
// to be corrected by, how well each is controlled by the others, and which may be wrong.
//
// Rules:
//   - Numbers in, numbers out: one unit of length throughout, whichever the caller likes. x is to the right and y up,
//     so that a counter-clockwise outline has a positive area.
//   - Deterministic: no clock, no random source, no map order; every search has a budget in steps.
//   - Same bytes on every machine: each product is converted (float64) before it is added, which forbids the compiler
//     to fuse the two (Go specification, "Floating-point operators"), and of package math only Sqrt, Abs, Floor, Inf,
//     IsInf and IsNaN are used, which are exact everywhere.
//   - What the readings do not control is said so (Controlled, Mirrors, a Verdict), never shown as zero error.
//
// The method is the adjustment of observations in every surveying textbook: v = A x - l, N = A'PA, and for the control
// of the readings the cofactor matrix of the residuals, Qv = P^-1 - A N^-1 A'. The test for a wrong reading is data
// snooping after Baarda, A Testing Procedure for Use in Geodetic Networks (1968), cited from memory.
package lsq
