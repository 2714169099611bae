package document

import (
	"regexp"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Up is a height: `48 above floor`, `48 to 84 above floor`, `center 50 above floor`, `3 below level`,
// `8 above level`, `6 below ceiling`, `top 84 above floor`.
type Up struct {
	Given  bool
	Datum  Datum
	Lo, Hi unit.Length // measured from the datum in the stated direction; Hi only when two are given
	Both   bool
	Part   Part
	At     diag.Place
}

// Datum is what a height counts from.
type Datum uint8

const (
	AboveFloor Datum = iota // the finished floor, by the room's one rule
	AboveLevel
	BelowLevelLine
	BelowCeiling
)

// Part is which part of a thing the height names.
type Part uint8

const (
	Bottom Part = iota
	Middle
	Top
)

// upPattern: [bottom|center|top] LENGTH [to LENGTH] (above floor | above level | below level | below ceiling).
var upPattern = regexp.MustCompile(`^(?:(bottom|center|middle|top) +)?(.+?)(?: +to +(.+?))? +(above|below) +(?:the +)?(finished floor|floor|level line|level|ceiling)$`)

const upSchema = `^((bottom|center|middle|top) +)?.*[0-9½¼¾⅛⅜⅝⅞⅓⅔].* +(above +(the +)?(finished floor|floor|level line|level)|below +(the +)?(level line|level|ceiling))$`

const upSay = "a height, like 48 above floor, 48 to 84 above floor, center 50 above floor, top 84 above floor, 3 below level, 8 above level, or 6 below ceiling"

var up = form[Up]{&shape{brief: "a height *up*", say: upSay, pattern: upSchema}, readUp}

func readUp(r *reader, n *text.Node) (Up, bool) {
	u := Up{At: n.At}
	if !r.want(n, text.Scalar, upSay) {
		return u, false
	}
	m := upPattern.FindStringSubmatch(strings.Join(strings.Fields(n.Text), " "))
	if m == nil {
		r.noHeight(n)
		return u, false
	}
	datum, ok := datumOf[m[4]+" "+strings.TrimPrefix(m[5], "finished ")]
	if !ok {
		r.noHeight(n)
		return u, false
	}
	u.Datum, u.Part = datum, partOf[m[1]]
	u.Given = r.stretch(n, m[2], m[3], &u.Lo, &u.Hi, &u.Both) && r.oneCenter(n, m[1] != "", u.Both)
	return u, u.Given
}

func (r *reader) noHeight(n *text.Node) {
	r.stop("up-unreadable", n.At, "{0} is no height", "write 48 above floor, 48 to 84 above floor, center 50 above floor, top 84 above floor, 3 below level, 8 above level or 6 below ceiling", diag.T(short(n.Text)))
}

var datumOf = map[string]Datum{
	"above floor": AboveFloor, "above level": AboveLevel, "above level line": AboveLevel,
	"below level": BelowLevelLine, "below level line": BelowLevelLine, "below ceiling": BelowCeiling,
}

var partOf = map[string]Part{"bottom": Bottom, "center": Middle, "middle": Middle, "top": Top}
