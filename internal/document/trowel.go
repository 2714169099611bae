package document

import (
	"math/big"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Trowel is a notched trowel: `square 1/4 x 3/8 x 1/4`: the notch's width and depth and the tooth between two notches.
// `held at 60` says the angle between its plate and the ground; silent: upright.
type Trowel struct {
	Notch               Notch
	Width, Depth, Tooth unit.Length
	Held                unit.Angle // 0: not told
}

// Notch is the outline of a trowel's notch.
type Notch uint8

const (
	SquareNotch Notch = iota
	UNotch            // round at the bottom: a half circle as wide as the notch
	VNotch            // a triangle
)

var notchWords = []word[Notch]{{"square", SquareNotch}, {"U", UNotch}, {"V", VNotch}}

func (n Notch) String() string { return notchWords[n].text }

const trowelSay = "a trowel: square, U or V, then the notch's width x depth x the tooth between notches: square 1/4 x 3/8 x 1/4"

var trowel = form[Trowel]{&shape{say: trowelSay, pattern: `^(square|U|u|V|v) .+[xX×].+$`}, readTrowel}

func readTrowel(r *reader, n *text.Node) (t Trowel, ok bool) {
	if !r.want(n, text.Scalar, trowelSay) {
		return t, false
	}
	sizes, held, told := strings.Cut(strings.TrimSpace(n.Text), " held at ")
	if told {
		if t.Held, ok = heldAt(held); !ok {
			r.misread(n, trowel0, "the angle held is from 30 to 90 degrees")
			return t, false
		}
	}
	name, sizes, _ := strings.Cut(sizes, " ")
	if t.Notch, ok = notchOf(name); !ok {
		r.misread(n, trowel0, "square, U or V is missing")
		return t, false
	}
	parts, ok := r.times(&text.Node{Kind: text.Scalar, Text: sizes, At: n.At}, 2, 3)
	if !ok {
		return t, false
	}
	var side [3]Value[unit.Length]
	for i, p := range parts {
		span := notchSize
		if i == 2 && t.Notch == VNotch {
			span = fine // V notches may touch
		}
		side[i] = r.side(n, p, span)
		ok = ok && side[i].Known
	}
	t.Width, t.Depth, t.Tooth = side[0].V, side[1].V, side[2].V
	if len(parts) == 2 && t.Notch != VNotch {
		t.Tooth = t.Width // the common trowel: notch and tooth alike
	}
	return t, ok && r.notchStands(n, t)
}

// trowel0 is the shape that a misread trowel is told with.
var trowel0 = &shape{say: trowelSay}

var notchSize = span{say: "the size of a notch", least: unit.Millimetre, most: 50 * unit.Millimetre}

// notchStands: the round bottom of a U notch is as deep as half of its width.
func (r *reader) notchStands(n *text.Node, t Trowel) bool {
	if t.Notch == UNotch && 2*t.Depth < t.Width {
		r.stop("notch-absurd", n.At, "a U notch {0} wide is at least {1} deep, and not {2}", "write width x depth x tooth", diag.X(t.Width), diag.X(t.Width.MulDiv(1, 2)), diag.X(t.Depth))
		return false
	}
	return true
}

func notchOf(s string) (Notch, bool) {
	for _, w := range notchWords {
		if strings.EqualFold(s, w.text) {
			return w.is, true
		}
	}
	return 0, false
}

func heldAt(s string) (unit.Angle, bool) {
	v, ok := rational(strings.TrimSpace(strings.TrimSuffix(strings.TrimSuffix(strings.TrimSpace(s), "degrees"), "°")))
	if !ok {
		return 0, false
	}
	n, ok := whole(v.Mul(v, big.NewRat(int64(unit.Degree), 1)))
	a := unit.Angle(n)
	return a, ok && a >= 30*unit.Degree && a <= 90*unit.Degree
}
