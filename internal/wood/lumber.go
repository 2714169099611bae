package wood

import (
	"math/big"
	"strconv"
	"strings"

	"dryfit/internal/unit"
)

// dimension is the nominal quarters from which lumber is no board any more: 2 in.
const dimension = 8

// dressedThick is PS 20, American Softwood Lumber Standard, as two trade tables quote it: the dry dressed thickness by nominal
// quarters of an inch. Timbers, 5 in and thicker, follow another rule.
var dressedThick = map[int64]unit.Length{ // by nominal quarters
	4: 3 * unit.Inch / 4, 5: unit.Inch, 6: 5 * unit.Inch / 4,
	8: 3 * unit.Inch / 2, 10: 2 * unit.Inch, 12: 5 * unit.Inch / 2, 14: 3 * unit.Inch, 16: 7 * unit.Inch / 2,
}

// dressedWide returns the dry dressed width of a nominal number of inches: half an inch less up to 7, three quarters beyond.
func dressedWide(nominal int64) (unit.Length, bool) {
	switch {
	case nominal >= 2 && nominal <= 7:
		return unit.Length(nominal)*unit.Inch - unit.Inch/2, true
	case nominal >= 8 && nominal <= 12, nominal == 14, nominal == 16:
		return unit.Length(nominal)*unit.Inch - 3*unit.Inch/4, true
	}
	return 0, false
}

// Dressed gives the dry dressed thickness and width of a nominal size of softwood lumber: "2x10", "1x4", "5/4x6".
func Dressed(nominal string) (thick, wide unit.Length, ok bool) {
	a, b, _ := strings.Cut(nominal, "x")
	quarters, ok1 := quartersOf(a)
	w, err := strconv.ParseInt(strings.TrimSpace(b), 10, 64)
	thick, ok2 := dressedThick[quarters]
	wide, ok3 := dressedWide(w)
	boardOnly := w == 7 || w == 9 || w == 11
	if !ok1 || err != nil || !ok2 || !ok3 || boardOnly && quarters >= dimension {
		return 0, 0, false
	}
	return thick, wide, true
}

// quartersOf reads "2" and "5/4" as quarters of an inch.
func quartersOf(s string) (int64, bool) {
	n, fourths, cut := strings.Cut(strings.TrimSpace(s), "/")
	v, err := strconv.ParseInt(n, 10, 64)
	if err != nil || cut && fourths != "4" {
		return 0, false
	}
	if cut {
		return v, true
	}
	return 4 * v, true
}

// Surfaced returns what rough hardwood of a number of quarters is thick when it is planed on both sides: 13/16 in from 4/4,
// 1-1/16 in from 5/4 (from memory, NHLA).
func Surfaced(quarters int) (unit.Length, bool) {
	switch quarters {
	case 4:
		return 13 * unit.Inch / 16, true
	case 5:
		return 17 * unit.Inch / 16, true
	}
	return 0, false
}

// What jointing and planing take in all, where the stock is rough (common practice: 1/8 to 3/16 in of thickness, 1/4 to 1/2 in of
// width, 1 to 2 in of length; the larger is used).
const (
	PlaneThick  = 3 * unit.Inch / 16
	PlaneWidth  = unit.Inch / 2
	PlaneLength = 2 * unit.Inch
)

// BoardFeet counts thousandths of a board foot: 144 cubic inches of rough lumber, anything under 1 in thick counted as 1 in.
type BoardFeet int64

// Feet reckons the board feet of a board by its rough size, rounded up to a thousandth so that what is bought is enough.
func Feet(thick, wide, long unit.Length) BoardFeet {
	n := big.NewInt(int64(max(thick, unit.Inch)))
	n.Mul(n, big.NewInt(int64(wide))).Mul(n, big.NewInt(int64(long))).Mul(n, big.NewInt(1000))
	inch := big.NewInt(int64(unit.Inch))
	foot := new(big.Int).Exp(inch, big.NewInt(3), nil)
	foot.Mul(foot, big.NewInt(144))
	q, r := new(big.Int).DivMod(n, foot, new(big.Int))
	if r.Sign() > 0 {
		q.Add(q, big.NewInt(1))
	}
	return BoardFeet(q.Int64())
}
