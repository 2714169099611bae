package document

import (
	"regexp"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Across is a place along a wall: `24 from A`, `center 36 from A`, `24 to 48 from A`, `3 left of basin line`,
// `on basin line`. Instead of a corner it may say left or right, for the ends of any face. A bare "from" names the edge that is nearest to that corner; for round things their center.
type Across struct {
	Given   bool
	From    string      // a corner of the wall or a center line
	Side    Side        // which way from it
	Lo, Hi  unit.Length // Hi is set only when two edges are given
	Both    bool
	Center  bool
	Touches Value[Surface] // what the corner was when it was taped
	At      diag.Place
}

// Side is a direction along a wall.
type Side uint8

const (
	FromCorner Side = iota // away from a corner, into the wall
	LeftOf
	RightOf
	On
)

// acrossPattern: [center] LENGTH [to LENGTH] (from | left of | right of) NAME [to stud|board|tile face], or on NAME.
var acrossPattern = regexp.MustCompile(`^(?:(center|middle) +)?(.+?)(?: +to +(.+?))? +(from|left of|right of) +(.+?)(?: +to +(stud|board|tile face))?$`)

const acrossSchema = `^(on +.+|((center|middle) +)?.*[0-9½¼¾⅛⅜⅝⅞⅓⅔].* +(from|left of|right of) +.+)$`

const acrossSay = "a place along the wall, like 24 from A, center 36 from A, 24 to 48 from A, 3 left of a center line, or on a center line"

var across = form[Across]{&shape{brief: "a place *across*", say: acrossSay, pattern: acrossSchema}, readAcross}

func readAcross(r *reader, n *text.Node) (Across, bool) {
	a := Across{At: n.At}
	if !r.want(n, text.Scalar, acrossSay) {
		return a, false
	}
	typed := strings.Join(strings.Fields(n.Text), " ")
	if name, on := strings.CutPrefix(typed, "on "); on {
		a.Given, a.Side, a.From, a.Center = true, On, name, true
		r.refer(name, n.At, "center line")
		return a, true
	}
	m := acrossPattern.FindStringSubmatch(typed)
	if m == nil {
		r.stop("across-unreadable", n.At, "{0} is no place along a wall", "write 24 from A, center 36 from A, 24 to 48 from A, 3 left of basin line, or on basin line", diag.T(short(n.Text)))
		return a, false
	}
	a.Center, a.Side, a.From = m[1] != "", sideOf[m[4]], m[5]
	a.Touches = touched(n, m[6])
	ok := r.stretch(n, m[2], m[3], &a.Lo, &a.Hi, &a.Both)
	r.startsAt(n, a)
	a.Given = ok && r.oneCenter(n, a.Center, a.Both)
	return a, a.Given
}

var sideOf = map[string]Side{"from": FromCorner, "left of": LeftOf, "right of": RightOf}

func touched(n *text.Node, word string) Value[Surface] {
	for _, w := range surfaceWords {
		if w.text == word {
			return Value[Surface]{V: w.is, Known: true, At: n.At}
		}
	}
	return Value[Surface]{At: n.At}
}

// startsAt notes what the place counts from: a corner or an end of the face, or a center line.
func (r *reader) startsAt(n *text.Node, a Across) {
	switch {
	case a.Side != FromCorner:
		r.refer(a.From, n.At, "center line")
	case a.From != "left" && a.From != "right":
		r.refer(a.From, n.At, "corner")
	}
}

// stretch reads one length or two, the lower first.
func (r *reader) stretch(n *text.Node, one, two string, lo, hi *unit.Length, both *bool) bool {
	a, ok := r.length(n, one, within)
	if !ok || two == "" {
		*lo = a
		return ok
	}
	b, ok := r.length(n, two, within)
	if !ok {
		return false
	}
	if a == b {
		r.stop("stretch-empty", n.At, "from {0} to {1} is no stretch", "write two different figures", diag.X(a), diag.X(b))
		return false
	}
	*lo, *hi, *both = min(a, b), max(a, b), true
	return true
}

func (r *reader) oneCenter(n *text.Node, center, both bool) bool {
	if center && both {
		r.stop("center-of-two", n.At, "a center has one figure, not two", "write `center 36 from A`, or the two edges without `center`")
	}
	return !center || !both
}
