package nest

// Result is the cutting plan. Money - Lower is the gap that is left open.
type Result struct {
	Boards []Board
	Money  int64
	Lower  int64 // no plan with as few lacking parts costs less
	Proof  Proof // of Lower
	Offcut Offcut
	// Largest is an area that no offcut exceeds in a plan that costs Money.
	Largest  int64
	Unfit    []int // parts larger than every clear sheet
	Lacking  []int // for each part, how many no sheet is left for
	Fewest   int   // no plan lacks fewer parts than this (Unfit not counted)
	Steps    int
	Complete bool // Lacking, Money and Offcut are proven the best
}

// Board is one sheet that is cut. Clear is the sheet without its trim.
type Board struct {
	Sheet int
	Clear Panel
}

// Panel is a rectangle of a sheet: a part, waste, or divided into panels. Into
// lies from low to high; neighbors are the kerf apart.
type Panel struct {
	X, Y, W, H int64
	Cut        Cut
	Into       []Panel
	Part       int // NoPart where the panel is divided or waste
	Turned     bool
}

// NoPart marks a panel that is not a part.
const NoPart = -1

// Offcut is where the largest offcut lies; Board -1 says that there is none.
type Offcut struct {
	Board      int
	X, Y, W, H int64
}

// Area of the offcut.
func (o Offcut) Area() int64 { return o.W * o.H }

// better compares two offcuts by their use.
func (o Offcut) better(p Offcut) bool {
	if o.Area() != p.Area() {
		return o.Area() > p.Area()
	}
	return min(o.W, o.H) > min(p.W, p.H)
}

// Proof gives each part a weight. No sheet s holds parts that weigh more than
// Price*Scale + Excess[s] together, and no plan uses more of it than its count,
// nor more than there are parts. A part that is left out weighs no more than
// Penalty*Scale. So all parts together, less Excess times those counts, divided
// by Scale, is a lower bound of the money plus Penalty times the lacking parts.
// Lower is the next sum of prices from there.
//
// By ProofExhaustive there are no weights: every plan was tried.
type Proof struct {
	By      string
	Weights []int64 // by part; 0 for one that is Unfit
	Scale   int64
	Excess  []int64 // by sheet
	Penalty int64
}

// What gave the weights.
const (
	ProofArea       = "area"       // the areas of the parts with their kerfs
	ProofDual       = "dual"       // dual feasible functions of both sizes
	ProofLP         = "lp"         // duals of the linear program
	ProofExhaustive = "exhaustive" // every plan was tried
)
