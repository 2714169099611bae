package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Corner is the treatment of one corner: `corners: {C: {outside: trim 3/8}}`.
type Corner struct {
	Name  string
	At    diag.Place
	Edge  Value[EdgeRule]    // of an outside corner
	Trim  Value[unit.Length] // visible width of the trim profile
	Joint Value[unit.Length] // soft joint at this corner
}

// EdgeRule is how tile ends at an outside corner or at the rim of a niche or reveal.
type EdgeRule uint8

const (
	TrimProfile EdgeRule = iota // a profile takes the corner; both faces stop at it
	Miter                       // both tiles are mitered and meet in the corner
	Lap                         // the face set first runs to its own board corner, the other laps over its edge
)

var corner = record("how one corner is made", func(c *Corner, at diag.Place) { c.At = at },
	key[Corner]{row{name: "outside", what: "how tile ends at an outside corner", example: "trim 3/8", unknown: true, shape: edge.shape}, func(r *reader, c *Corner, n *text.Node) {
		c.Edge, c.Trim = readEdge(r, n)
	}},
	fact("soft joint", "the width of the soft joint in this corner", length(joint), func(c *Corner) *Value[unit.Length] { return &c.Joint }).unless("as setting says").like("1/8"),
)

const edgeSay = "trim and its visible width, like trim 3/8; or miter; or lap"

type rim struct {
	rule EdgeRule
	trim Value[unit.Length]
}

var edge = form[rim]{&shape{say: edgeSay, pattern: `^(miter|lap|trim( .*)?)$`}, func(r *reader, n *text.Node) (rim, bool) {
	if !r.want(n, text.Scalar, edgeSay) {
		return rim{}, false
	}
	name, width, _ := strings.Cut(strings.Join(strings.Fields(n.Text), " "), " ")
	switch {
	case name == "miter" && width == "":
		return rim{rule: Miter}, true
	case name == "lap" && width == "":
		return rim{rule: Lap}, true
	case name == "trim" && width == "":
		return rim{rule: TrimProfile, trim: Value[unit.Length]{At: n.At}}, true
	case name == "trim":
		return rim{TrimProfile, r.side(n, width, joint)}, true
	}
	r.strayWord(n.At, n.Text, []string{"trim", "miter", "lap"})
	return rim{}, false
}}

func readEdge(r *reader, n *text.Node) (Value[EdgeRule], Value[unit.Length]) {
	v := valueOf(r, edge, n)
	return Value[EdgeRule]{v.V.rule, v.Known, v.Unknown, v.At}, v.V.trim
}
