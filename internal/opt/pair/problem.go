package pair

// Side is a set of sides of a rectangle in its own frame. The order of the
// bits is the order in which a quarter turn carries one side to the next.
type Side uint8

const (
	Left Side = 1 << iota
	Bottom
	Right
	Top

	allSides = Left | Bottom | Right | Top
)

// Turn is a set of quarter turns, counterclockwise.
type Turn uint8

const (
	Turn0 Turn = 1 << iota
	Turn90
	Turn180
	Turn270

	HalfTurns = Turn0 | Turn180
	AllTurns  = Turn0 | Turn90 | Turn180 | Turn270
)

// Pt is a corner of a shape, in the frame of the piece's rectangle.
type Pt struct{ X, Y int64 }

// Piece is one piece to be cut. Its index in the problem is its name.
type Piece struct {
	W, H  int64 // bounding rectangle as laid
	Keep  Side  // sides that must be the blank's own edges, as laid
	Shape []Pt  // outline inside W x H; nil is the full rectangle
	Turns Turn  // allowed turns; none set means Turn0
}

// Problem is the blank, the cut and the pieces.
type Problem struct {
	W, H       int64 // the blank
	Kerf       int64 // 0 for a snapped cut
	LeastStrip int64 // 0 for a saw
	Pieces     []Piece
	Budget     int // steps of the search; 0 means DefaultBudget
}

// DefaultBudget is the number of steps spent where the caller names none. A
// step is one look at a set of pieces for a blank, one pivot or one branch; a
// wall of sixty different pieces is proved within it, and a twentieth of it
// finds the same answer with a gap.
const DefaultBudget = 40000

// Placement is where a piece lies: the lower left corner of its turned
// rectangle in the blank. Blank is -1 for a piece that is Unfit.
type Placement struct {
	Piece, Blank int
	Turn         Turn
	X, Y         int64
}

// Result is the cutting plan. Blanks - Lower is the gap that is left open.
type Result struct {
	Blanks     int
	Placements []Placement // in the order of the pieces
	Lower      int         // no arrangement takes fewer blanks
	Proof      string      // what gave Lower: see the Proof constants
	Steps      int
	Complete   bool  // false where the budget, or maxBag, ended the search early
	Unfit      []int // pieces that no blank can yield; not counted in Blanks
	Tight      []int // pieces that break LeastStrip even alone
}

// What proves a lower bound.
const (
	ProofArea       = "area"       // pieces with their kerfs against the blank
	ProofCorners    = "corners"    // a blank has four corners
	ProofMatching   = "matching"   // no three of these share a blank
	ProofLP         = "lp"         // linear program over all sets that share
	ProofExhaustive = "exhaustive" // every smaller answer was tried
)

// maxSize keeps every product of four coordinates within 128 bits.
const maxSize = 1 << 29

// check panics on numbers that only a bug of the caller can give.
func (p Problem) check() {
	if p.W > maxSize || p.H > maxSize || p.Kerf < 0 || p.Kerf > maxSize ||
		p.LeastStrip < 0 || p.LeastStrip > maxSize {
		panic("pair: blank, kerf or least strip out of range")
	}
}
