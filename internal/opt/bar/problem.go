package bar

// Piece is a length and how many of it are wanted. Its index in the problem is
// its name.
type Piece struct {
	Length int64
	Count  int
}

// Span is a stretch of a stick, measured from its low end.
type Span struct{ From, To int64 }

// Stock is sticks that are alike. Its index in the problem is its name.
type Stock struct {
	Length  int64
	Price   int64  // of one stick; 0 for what is on hand
	Count   int    // how many there are; Unlimited for any number
	Defects []Span // of every stick of this stock; in any order, they may overlap
}

// Unlimited is the count of a stock that can be bought in any number.
const Unlimited = -1

// Problem is the pieces, the stocks and the saw.
type Problem struct {
	Pieces []Piece
	Stocks []Stock
	Kerf   int64
	Trim   int64 // lost at each end of every stick, the trimming cut included
	Budget int   // steps; 0 means DefaultBudget
}

// DefaultBudget is the number of steps spent where the caller names none. A step
// is about four thousand elementary operations.
const DefaultBudget = 400000

// maxSize bounds lengths and prices, so that a product of two fits.
const maxSize = 1 << 31

// maxTotal bounds the number of pieces times the dearest price: whole-number
// weights then have at least ten binary digits below a unit of money.
const maxTotal = 1 << 50

// check panics on numbers that only a bug of the caller can give.
func (p Problem) check() {
	require(p.Kerf >= 0 && p.Kerf <= maxSize, "kerf out of range")
	require(p.Trim >= 0 && p.Trim <= maxSize, "trim out of range")
	for _, q := range p.Pieces {
		require(q.Length > 0 && q.Length <= maxSize, "length of a piece out of range")
		require(q.Count >= 0 && q.Count <= maxSize, "count of a piece out of range")
	}
	for _, s := range p.Stocks {
		require(s.Length > 0 && s.Length <= maxSize, "length of a stock out of range")
		require(s.Price >= 0 && s.Price <= maxSize, "price out of range")
		require(s.Count >= Unlimited && s.Count <= maxSize, "count of a stock out of range")
	}
}

func require(ok bool, what string) {
	if !ok {
		panic("bar: " + what)
	}
}
