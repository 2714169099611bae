// Package mip finds the smallest joint change of a few whole-number variables
// that makes rows of sums hold.
//
// It takes variables, each a number of steps within [Lo, Hi] round 0 with a cost
// per step, and rows A·x >= B. It gives the x that, in this order,
//
//  1. misses least: the sum over the rows of what A·x lacks to B is smallest; 0
//     where all rows hold;
//  2. changes fewest variables;
//  3. costs least: the sum of Cost·|x|;
//  4. is first in dictionary order.
//
// So there is one answer, whatever way it is found, and Complete says that it is
// proven. Identities, checked by its tests on every problem:
//
//   - Miss is the sum of Short, and Short[i] is max(0, B - A·X) of row i;
//   - Changed and Cost are those of X; X keeps to the ranges;
//   - LeastMiss <= Miss, LeastChanged <= Changed, LeastCost <= Cost, with
//     equality where Complete;
//   - a row more, or a range narrowed, never gives a smaller Miss;
//   - Single is Solve of one variable;
//   - where x = 0 holds all rows, X is 0.
//
// How it is solved: depth first over boxes of x, made narrower by the rows. A
// box is dropped by weights of the rows: any weights y >= 0 give a lower bound of
// what every x of the box misses (or costs), which whole-number arithmetic
// checks. Where good weights come from, a linear program in floats, needs no
// trust: weights that are a little off bound a little less (Neumaier and
// Shcherbina, Mathematical Programming 99, 2004). The number of changes is raised
// one by one from what the rows show to be needed.
//
// Meant for a dozen variables and some sixty rows.
package mip
