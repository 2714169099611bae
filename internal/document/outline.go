package document

import (
	"regexp"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Outline is the plan shape of a thing as a data sheet gives it: `round 15`, `oval 20 x 15`, `rectangle 20 x 15`,
// `rectangle 20 x 15 r 2`. Across lies along the wall, Deep square to it.
type Outline struct {
	Kind         OutlineKind
	Across, Deep unit.Length
	Radius       unit.Length    // of a rectangle's corners
	Points       []OutlinePoint // of a polygon
	At           diag.Place
}

// OutlineKind is a shape.
type OutlineKind uint8

const (
	RoundOutline OutlineKind = iota
	OvalOutline
	RectangleOutline
	PolygonOutline
)

var outlinePattern = regexp.MustCompile(`^(round|oval|rectangle) +(.+?)(?: +r +(.+))?$`)

const outlineSay = "an outline: round 15, oval 20 x 15, rectangle 20 x 15, rectangle 20 x 15 r 2, or polygon 0 0, 20 0, 18 12, 2 12; the first figure lies along the wall"

var outlineForm = form[Outline]{&shape{brief: "round, oval, rectangle or polygon with its size", say: outlineSay, pattern: `^(round|oval|rectangle|polygon) +.+$`}, readOutline}

func readOutline(r *reader, n *text.Node) (Outline, bool) {
	o := Outline{At: n.At}
	if !r.want(n, text.Scalar, outlineSay) {
		return o, false
	}
	if corners, ok := strings.CutPrefix(strings.TrimSpace(n.Text), "polygon "); ok {
		return r.polygon(n, corners)
	}
	m := outlinePattern.FindStringSubmatch(strings.Join(strings.Fields(n.Text), " "))
	if m == nil {
		r.noOutline(n)
		return o, false
	}
	o.Kind = map[string]OutlineKind{"round": RoundOutline, "oval": OvalOutline, "rectangle": RectangleOutline}[m[1]]
	many := strings.ContainsAny(m[2], "xX×")
	if many == (o.Kind == RoundOutline) || m[3] != "" && o.Kind != RectangleOutline {
		r.noOutline(n)
		return o, false
	}
	if !many {
		d, ok := r.length(n, m[2], over)
		o.Across, o.Deep = d, d
		return o, ok
	}
	return r.sides(n, o, m[2], m[3])
}

// sides reads the two sides of an outline and the radius of its corners.
func (r *reader) sides(n *text.Node, o Outline, two, radius string) (Outline, bool) {
	parts, ok := r.times(&text.Node{Kind: text.Scalar, Text: two, At: n.At}, 2, 2)
	if !ok {
		return o, false
	}
	a, b := r.side(n, parts[0], over), r.side(n, parts[1], over)
	o.Across, o.Deep, ok = a.V, b.V, a.Known && b.Known
	if radius == "" || !ok {
		return o, ok
	}
	o.Radius, ok = r.length(n, radius, within)
	if ok && 2*o.Radius > min(o.Across, o.Deep) {
		r.stop("radius-large", n.At, "corners of radius {0} do not fit a side of {1}", "write a radius of at most half of the shorter side", diag.X(o.Radius), diag.X(min(o.Across, o.Deep)))
		return o, false
	}
	return o, ok
}

func (r *reader) noOutline(n *text.Node) {
	r.stop("outline-unreadable", n.At, "{0} is no outline", "write round 15, oval 20 x 15, rectangle 20 x 15, rectangle 20 x 15 r 2, or polygon 0 0, 20 0, 18 12, 2 12", diag.T(short(n.Text)))
}
