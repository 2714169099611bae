// Package cut finds the stock for parts: which sheet, board or stick each is cut from and where, by which cuts in which order,
// what has to be bought, and what is left.
//
// It takes the parts that the trades ask for, and from the document the stock with its sizes, prices and what is on hand, the saws,
// and the kits of plain parts. It gives a Plan with a lot for each stock. The least money is spent, then the most useful offcut is
// left; how far that is proven is said with each lot. What is on hand costs nothing, so it goes first.
//
// Frame of a sheet or stick: x runs along its length, which is along its grain, from the left end; y from its front edge. A rip runs
// along x, a crosscut across it; every cut goes from edge to edge of the panel that it divides. All lengths are exact.
package cut

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/money"
	"dryfit/internal/part"
	"dryfit/internal/unit"
)

// Plan is what is cut from what.
type Plan struct {
	Pieces []Piece
	Lots   []Lot // by stock, in document order
}

// Piece is one thing to saw out. Of several alike, each is a piece.
type Piece struct {
	Name string // what it belongs to, its own name, and its number among those alike: "vanity > shelf 2"
	Part part.Part
	Copy int       // from 1
	Sawn part.Size // to what it is sawn out
	Lot  int       // in which lot, and in which of its used stock; -1 where no stock is found for it
	Used int
}

// Lot is all that is cut from one stock.
type Lot struct {
	Stock string
	At    diag.Place
	Kind  document.StockKind
	Thick unit.Length // 0 where it is not known
	Width unit.Length // of a stick's section
	Plain bool        // it has no grain
	Saw   string      // the name of the saw; "" where none is listed
	Kerf  unit.Length
	First document.FirstCut

	Used    []Used
	Buy     []Purchase
	Lacking []int // pieces that no stock is left for
	Offcuts []Offcut
	Verdict Verdict
}

// Purchase is how many of one size are to be bought.
type Purchase struct {
	Length, Width unit.Length
	Count         int
	Price         money.Amount // of one; valid if Priced
	Priced        bool
	At            diag.Place
}

// Verdict says what a lot costs and how far that is the least.
type Verdict struct {
	Priced       bool // all prices are known; else the least area, or length of stick, was looked for
	Money, Lower money.Amount
	// Bought and Least are the sizes of what is bought and the least that any plan buys, in square counts for sheets and boards
	// and counts for sticks; valid where prices are not known.
	Bought, Least int64
	By            string // what proves it
	Best          bool   // nothing costs less, and no plan of that cost leaves a larger offcut
	Cheapest      bool   // nothing costs less
}

// Used is one sheet, board or stick that is cut.
type Used struct {
	Number int // in its lot, from 1
	Name   string
	OnHand bool
	Size   part.Size   // as it lies on the saw
	From   unit.Length // where it begins in a piece on hand that has bad stretches
	Trim   unit.Length // taken off each edge, or end, first
	Bad    []document.Stretch
	Panels []Panel // the clear sheet, or the clear runs of a stick
	Steps  []Step
}

// Panel is a rectangle of a sheet or stick: a piece, waste, an offcut to keep, or divided into panels, which lie from low to high
// with a kerf between them.
type Panel struct {
	Rect   geom.Rect
	Cut    Way
	Into   []Panel
	Piece  int // NoPiece where the panel is divided, waste or kept
	Turned bool
	Keep   bool // an offcut worth keeping
}

// NoPiece marks a panel that is none.
const NoPiece = -1

// Way is how a panel is divided.
type Way uint8

const (
	Whole    Way = iota // not at all
	Rip                 // along the length
	Crosscut            // across it
)

func (w Way) String() string { return [...]string{"whole", "rip", "crosscut"}[w] }

// Step is one cut, in the order in which the saw makes them.
type Step struct {
	Number int // in its sheet, from 1
	Way    Way
	Panel  geom.Rect   // what is divided
	At     unit.Length // where the kerf begins: x of a crosscut, y of a rip
	Size   unit.Length // from the panel's low edge to the kerf: what the fence is set to
	Frees  int         // the piece that this cut frees on its low side; NoPiece where that is divided further, kept or waste
	Leaves int         // the piece that is left behind it by the last cut of a panel; else NoPiece
}

// Offcut is a panel that is kept.
type Offcut struct {
	Used int
	Rect geom.Rect
	part.Offcut
}
