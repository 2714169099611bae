package bar

// Result is the cutting plan. Money - Lower is the gap that is left open.
type Result struct {
	Sticks  []Stick
	Money   int64
	Lower   int64 // no plan with as few lacking pieces costs less
	Proof   Proof // of Lower
	Remnant Remnant
	// Longest is a length that no remnant exceeds in a plan that costs Money.
	Longest  int64
	Unfit    []int // pieces longer than every clear run of every stock
	Lacking  []int // for each piece, how many no stick is left for
	Fewest   int   // no plan lacks fewer pieces than this (Unfit not counted)
	Steps    int
	Complete bool // Money and Remnant are proven the best
}

// Stick is one stick that is cut.
type Stick struct {
	Stock int
	Cuts  []Cut // in the order of their places
}

// Cut is a piece and where its low end lies in the stick.
type Cut struct {
	Piece int
	At    int64
}

// Remnant is the longest remnant. Stick is -1 where it lies in a stick that is
// not touched; Length 0 says that there is none.
type Remnant struct {
	Stock, Stick int
	At, Length   int64
}

// Proof gives each piece a weight. No stick of stock s holds pieces that weigh
// more than Price*Scale + Excess[s] together, and no plan uses more of it than
// its count, nor more than there are pieces. A piece that is left out weighs no
// more than Penalty*Scale. So all pieces together, less Excess times those
// counts, divided by Scale, is a lower bound of the money plus Penalty times the
// lacking pieces. Lower is the next sum of prices from there.
//
// By ProofExhaustive, the weights prove less, and the rest was shown by trying
// every way to fill a stick that a cheaper plan could use.
type Proof struct {
	By      string
	Weights []int64 // by piece; 0 for one that is Unfit
	Scale   int64
	Excess  []int64 // by stock
	Penalty int64
}

// What gave the weights.
const (
	ProofMaterial   = "material"   // the lengths with their kerfs
	ProofDual       = "dual"       // a dual feasible function of the lengths
	ProofLP         = "lp"         // duals of the linear program
	ProofExhaustive = "exhaustive" // every cheaper plan was excluded
)
