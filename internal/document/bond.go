package document

import (
	"fmt"
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"dryfit/internal/unit"
)

// BondKind is the pattern that tiles make.
type BondKind uint8

const (
	StackBond BondKind = iota
	RunningBond
	HerringboneBond
	DoubleHerringboneBond
	BasketweaveBond
	HexagonBond
	PinwheelBond
	ModularBond
)

// Bond is a bond as it is written in a field.
type Bond struct {
	Kind     BondKind
	Vertical bool // columns are shifted instead of courses
	Diagonal bool // the pattern stands at 45 degrees to the wall
	// The shift of a running bond is Num/Den of the tile's length with its joint, or, where Den is 0, the length
	// Shift. Num/Den is in lowest terms and between 0 and 1.
	Num, Den int
	Shift    unit.Length
	Back     bool // courses go to and fro instead of stepping on
	Sizes    int  // of a modular set: 3 or 4
}

// bondRow is one way to begin a bond's name; what follows is a tail of the kind named.
type bondRow struct {
	say  string
	is   Bond
	tail bondTail
}

type bondTail uint8

const (
	noTail    bondTail = iota
	shiftTail          // a fraction, a percentage or a length
	angleTail          // nothing, or 45
)

// bondRows lists every bond; longer names stand before their own beginnings.
var bondRows = []bondRow{
	{"stack", Bond{Kind: StackBond}, noTail},
	{"running", Bond{Kind: RunningBond}, shiftTail},
	{"vertical stack", Bond{Kind: StackBond, Vertical: true}, noTail},
	{"vertical running", Bond{Kind: RunningBond, Vertical: true}, shiftTail},
	{"diagonal running", Bond{Kind: RunningBond, Diagonal: true}, shiftTail},
	{"diagonal", Bond{Kind: StackBond, Diagonal: true}, noTail},
	{"herringbone", Bond{Kind: HerringboneBond}, angleTail},
	{"double herringbone", Bond{Kind: DoubleHerringboneBond}, angleTail},
	{"basketweave", Bond{Kind: BasketweaveBond}, noTail},
	{"hexagon", Bond{Kind: HexagonBond}, noTail},
	{"pinwheel", Bond{Kind: PinwheelBond}, noTail},
	{"modular 3", Bond{Kind: ModularBond, Sizes: 3}, noTail},
	{"modular 4", Bond{Kind: ModularBond, Sizes: 4}, noTail},
}

// BondNames lists the bonds as they are written, with an example of what follows.
func BondNames() []string {
	var names []string
	for _, b := range bondRows {
		switch b.tail {
		case shiftTail:
			names = append(names, b.say+" 1/3")
		case angleTail:
			names = append(names, b.say, b.say+" 45")
		default:
			names = append(names, b.say)
		}
	}
	return names
}

const bondSchema = `^\s*(stack|running.*|vertical +(stack|running.*)|diagonal( +running.*)?|(double +)?herringbone( +45)?|basketweave|hexagon|pinwheel|modular +[34])\s*$`

// ParseBond reads a bond: "running 1/3", "running 33 %", "running 8 in", "herringbone 45". A bare whole number behind
// running is a length in the document's unit, a bare fraction a share of the tile. Where it can not be read, why and
// mend are templates with {0} for the text.
func ParseBond(typed string, bare unit.System) (b Bond, why, mend string) {
	typed = strings.ToLower(strings.Join(strings.Fields(typed), " "))
	for _, row := range bondRows {
		tail, ok := strings.CutPrefix(typed, row.say)
		if ok && (tail == "" || tail[0] == ' ') && (row.tail != noTail || tail == "") {
			return row.read(strings.TrimSpace(tail), bare)
		}
	}
	names := BondNames()
	if near := nearest(typed, names); near != "" {
		return Bond{}, "{0} is no bond", "did you mean " + near + "?"
	}
	return Bond{}, "{0} is no bond", "the bonds are: " + strings.Join(names, ", ")
}

func (row bondRow) read(tail string, bare unit.System) (b Bond, why, mend string) {
	b = row.is
	switch {
	case row.tail == angleTail && tail == "45":
		b.Diagonal = true
	case row.tail == angleTail && tail != "":
		return b, "{0}: the angle can only be 45", "write " + row.say + ", or " + row.say + " 45"
	case row.tail == shiftTail:
		return b.shifted(tail, bare)
	}
	return b, "", ""
}

var (
	shareFraction = regexp.MustCompile(`^([0-9]{1,3})/([0-9]{1,3})$`)
	shareDecimal  = regexp.MustCompile(`^(0?\.[0-9]{1,4})$`)
	sharePercent  = regexp.MustCompile(`^([0-9]{1,3}(?:\.[0-9]{1,2})?) ?%$`)
)

const shiftHelp = "write running 1/3, running 33 %, or running 8 in"

// toAndFro stands behind the shift of courses that go forth and back; without it each course steps on from the one below.
const toAndFro = "to and fro"

// shifted reads the shift of a running bond; half a tile where none is written, as the trade does.
func (b Bond) shifted(tail string, bare unit.System) (_ Bond, why, mend string) {
	if rest, ok := strings.CutSuffix(tail, toAndFro); ok {
		tail, b.Back = strings.TrimSpace(rest), true
	}
	if tail == "" {
		tail = "1/2"
	}
	if share, ok := shareOf(tail); ok {
		if share.Sign() <= 0 || share.Cmp(big.NewRat(1, 1)) >= 0 {
			return b, "{0}: the shift must be more than nothing and less than a whole tile", shiftHelp
		}
		b.Num, b.Den = int(share.Num().Int64()), int(share.Denom().Int64())
		return b, "", ""
	}
	l, err := unit.Parse(tail, bare)
	if err != nil {
		return b, "{0}: the shift can not be read", shiftHelp
	}
	if l <= 0 || l > tileSide.most {
		return b, "{0}: the shift must be more than nothing and less than a tile", shiftHelp
	}
	b.Shift = l
	return b, "", ""
}

func shareOf(s string) (*big.Rat, bool) {
	if m := shareFraction.FindStringSubmatch(s); m != nil {
		d, _ := strconv.ParseInt(m[2], 10, 64)
		n, _ := strconv.ParseInt(m[1], 10, 64)
		if d == 0 {
			return nil, false
		}
		return big.NewRat(n, d), true
	}
	if m := sharePercent.FindStringSubmatch(s); m != nil {
		v, ok := new(big.Rat).SetString(m[1])
		return v.Quo(v, big.NewRat(100, 1)), ok
	}
	if m := shareDecimal.FindStringSubmatch(s); m != nil {
		return new(big.Rat).SetString(m[1])
	}
	return nil, false
}

// String writes the bond as ParseBond reads it.
func (b Bond) String() string {
	for _, row := range bondRows {
		plain := b
		plain.Num, plain.Den, plain.Shift, plain.Back = 0, 0, 0, false
		if row.tail == angleTail {
			plain.Diagonal = false
		}
		if plain == row.is {
			return row.say + b.tail(row.tail)
		}
	}
	return "stack"
}

func (b Bond) tail(t bondTail) string {
	if t == angleTail && b.Diagonal {
		return " 45"
	}
	if t != shiftTail {
		return ""
	}
	if b.Back {
		return " " + b.shift() + " " + toAndFro
	}
	return " " + b.shift()
}

func (b Bond) shift() string {
	switch {
	case b.Den > 0:
		return fmt.Sprintf("%d/%d", b.Num, b.Den)
	case b.Shift%(unit.Inch/128) == 0:
		return unit.Style{System: unit.Inches}.Exact(b.Shift)
	}
	return b.Shift.JSON() + " mm"
}
