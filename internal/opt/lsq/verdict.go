package lsq

// Outcome is how an adjustment ended.
type Outcome int

const (
	Adjusted      Outcome = iota // found; which readings are suspect is in the Result
	TooFew                       // the readings leave points free to move
	Contradictory                // a reading is longer than a way round by others, and they do not tell which is wrong
	NotConverging                // the budget of steps ended before the points came to rest
	Malformed                    // an observation, hold or start that is no number or names no point
)

// Pair is two points, the lower number first.
type Pair struct{ From, To int }

// Verdict tells how an adjustment ended and, where it did not succeed, what would mend it.
type Verdict struct {
	Outcome Outcome

	// TooFew: how many readings are wanting, the points that can still move against the rest, every pair whose
	// distance would fix something, the most useful first, and the shortest list, taken from the top, that fixes all.
	// The pairs say nothing of whether a tape can be stretched between them.
	Missing int
	Movable []int
	Pairs   []Pair
	Enough  []Pair

	// Contradictory, and TooFew where this is so too: the observations that cannot all be right, the one that is too long
	// first, and by how much.
	// Malformed: the observations that are malformed; none when it is the rest of the problem.
	Readings []int
	Excess   float64
}

// Rest is what remains when the first suspect is left out and everything else adjusted again.
type Rest struct {
	Left    int     // the observation left out
	Freedom int     // redundant readings that remain; 0: nothing is left that could disagree
	Agree   bool    // Freedom > 0 and no other reading is suspect
	Worst   int     // the reading with the greatest standardised residual, -1 if none is controlled
	Points  []Point // adjusted without it; nil: what remains does not hold together by itself
}

// Result is an adjusted network. The lists have one entry for each observation.
type Result struct {
	Points       []Point
	Residuals    []float64 // adjusted less measured
	Standardised []float64 // residual over its own standard deviation; 0 where not Controlled
	Redundancy   []float64 // share of an error in the reading that shows in its residual, 0 to 1; they add up to Freedom
	Controlled   []bool    // false: an error in this reading cannot be seen from the others

	// ClosingErrors is, for each controlled reading, what all the others without it compute for it, less what was
	// measured (residual over redundancy number: exact to the first order). 0 where not Controlled.
	ClosingErrors []float64

	// Detectable is how large an error in the reading has to be to raise suspicion four times out of five. What agrees
	// may still be wrong by less. 0 where not Controlled: then no error shows, however large.
	Detectable []float64

	Freedom int     // observations less unknowns
	S0      float64 // standard deviation of unit weight found from the residuals; 0 when Freedom is 0

	// Groups are the sets of two or more observations whose residuals are fully correlated: from these readings alone
	// an error in one cannot be told from an error in another. Equal: one such group holds every controlled reading.
	Groups [][]int
	Equal  bool

	// Suspects is empty when every standardised residual is within the critical value, else the reading that is
	// likeliest to be wrong, followed by those that may be it just as well: more than one means "cannot tell which".
	// Rest belongs to the first of them and is nil when there is none.
	Suspects []int
	Rest     *Rest

	// Mirrors are sets of points that could be turned over about a line of two others without any reading noticing and
	// without breaking the outline that was given. Each stands for itself; that several only together could be turned
	// over is not searched for. Empty when a start was given, for then the caller chose.
	Mirrors [][]int

	Steps int // Gauss-Newton and damped steps taken
}
