package nest

// Part is a rectangle and how many of it are wanted. Its index in the problem
// is its name.
type Part struct {
	W, H  int64
	Count int
	Turns bool // it may lie turned by a quarter; else its W lies along x
}

// Sheet is sheets that are alike. Its index in the problem is its name.
type Sheet struct {
	W, H  int64
	Price int64 // of one sheet; 0 for what is on hand
	Count int   // how many there are; Unlimited for any number
	Trim  int64 // lost at each of the four sides, the trimming cut included
}

// Unlimited is the count of a sheet that can be bought in any number.
const Unlimited = -1

// Cut is how a panel is divided.
type Cut int

const (
	Whole    Cut = iota // not at all; as Problem.First: any
	Rip                 // along x: panels above each other
	Crosscut            // across x: panels beside each other
)

// other is the direction across.
func (c Cut) other() Cut {
	if c == Rip {
		return Crosscut
	}
	return Rip
}

// Problem is the parts, the sheets and the saw.
type Problem struct {
	Parts     []Part
	Sheets    []Sheet
	Kerf      int64
	First     Cut   // direction of the first stage; Whole for any
	Stages    int   // most stages; 0 for any number
	LeastSide int64 // an offcut with a smaller side is of no use
	Budget    int   // steps; 0 means DefaultBudget
}

// DefaultBudget is the number of steps spent where the caller names none. A step
// is about four thousand elementary operations.
const DefaultBudget = 200000

// maxSize bounds lengths and prices, so that a product of two fits.
const maxSize = 1 << 30

// maxParts bounds the number of parts, so that sums of prices and worths fit.
const maxParts = 1 << 16

// maxStages is more stages than any plan needs; a larger limit is none.
const maxStages = 12

// check panics on numbers that only a bug of the caller can give.
func (p Problem) check() {
	require(p.Kerf >= 0 && p.Kerf <= maxSize, "kerf out of range")
	require(p.First >= Whole && p.First <= Crosscut, "no such cut")
	require(p.Stages >= 0, "stages out of range")
	total := 0
	for _, q := range p.Parts {
		require(inRange(q.W) && inRange(q.H), "size of a part out of range")
		require(q.Count >= 0 && q.Count <= maxParts, "count of a part out of range")
		total += q.Count
		require(total <= maxParts, "too many parts")
	}
	for _, s := range p.Sheets {
		require(inRange(s.W) && inRange(s.H), "size of a sheet out of range")
		require(s.Price >= 0 && s.Price <= maxSize, "price out of range")
		require(s.Count >= Unlimited && s.Count <= maxSize, "count of a sheet out of range")
		require(s.Trim >= 0 && s.Trim <= maxSize, "trim out of range")
	}
}

func inRange(v int64) bool { return v > 0 && v <= maxSize }

func require(ok bool, what string) {
	if !ok {
		panic("nest: " + what)
	}
}
