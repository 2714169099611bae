package document

import (
	"regexp"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Joint is how one part of wood meets another: `dado 1/4`, `rabbet 3/8`, `half-lap 3/8`, `butt`.
type Joint struct {
	Kind  JointKind
	Depth unit.Length // how deep it goes into the other part; 0 of a butt
	At    diag.Place
}

// JointKind is a joint by the trade's name.
type JointKind uint8

const (
	ButtJoint  JointKind = iota
	Dado                 // a groove across the grain that the end of a panel stands in
	Groove               // a groove along the grain
	Rabbet               // a step along an edge
	HalfLap              // each part gives half of its thickness
	TongueJoin           // a tongue, or stub tenon, in a groove of the other part
)

var jointNames = []word[JointKind]{{"butt", ButtJoint}, {"dado", Dado}, {"groove", Groove}, {"rabbet", Rabbet}, {"half-lap", HalfLap}, {"tongue", TongueJoin}}

func (k JointKind) String() string { return jointNames[k].text }

// EdgeProfile is how an edge is worked: `square`, `chamfer 1/8`, `round-over 1/4`.
type EdgeProfile struct {
	Kind ProfileKind
	Size unit.Length // leg of a chamfer, radius of a round-over; 0 of a square edge
	At   diag.Place
}

// ProfileKind is an edge profile by the trade's name.
type ProfileKind uint8

const (
	SquareEdge ProfileKind = iota
	Chamfer
	RoundOver
)

var profileNames = []word[ProfileKind]{{"square", SquareEdge}, {"chamfer", Chamfer}, {"round-over", RoundOver}}

func (k ProfileKind) String() string { return profileNames[k].text }

var woodJoint = form[Joint]{sizedShape("a joint and how deep it goes", jointNames), func(r *reader, n *text.Node) (Joint, bool) {
	kind, size, ok := sized(r, n, jointNames, "dado 1/4")
	return Joint{kind, size, n.At}, ok
}}

var profile = form[EdgeProfile]{sizedShape("an edge and its size", profileNames), func(r *reader, n *text.Node) (EdgeProfile, bool) {
	kind, size, ok := sized(r, n, profileNames, "round-over 1/8")
	return EdgeProfile{kind, size, n.At}, ok
}}

func sizedShape[E any](say string, names []word[E]) *shape {
	texts := make([]string, len(names))
	for i, w := range names {
		texts[i] = w.text
	}
	all := strings.Join(texts, ", ")
	return &shape{brief: all + " with a size", say: say + ": " + all, pattern: `^(` + strings.Join(texts, "|") + `)( .+)?$`}
}

// sized reads a word and the length behind it. The first of the words, which is the plain way, has no size; every other has one.
func sized[E comparable](r *reader, n *text.Node, names []word[E], like string) (kind E, size unit.Length, ok bool) {
	if !r.want(n, text.Scalar, "a word and a size, like "+like) {
		return kind, 0, false
	}
	name, typed, _ := strings.Cut(strings.Join(strings.Fields(n.Text), " "), " ")
	kind, ok = choice("a word and a size", names...).read(r, &text.Node{Kind: text.Scalar, Text: name, At: n.At})
	plain := kind == names[0].is
	switch {
	case !ok:
		return kind, 0, false
	case plain && typed == "":
		return kind, 0, true
	case plain || typed == "":
		r.stop("size-unreadable", n.At, "{0}: {1} has no size, every other of these has one", "write it like {2}", diag.T(short(n.Text)), diag.T(names[0].text), diag.T(like))
		return kind, 0, false
	}
	size, ok = r.length(n, typed, thin)
	return kind, size, ok
}

// Span is a range of lengths: `1/2 to 1-1/2`; one figure is both ends.
type Span struct{ Least, Most unit.Length }

var lengthsPattern = regexp.MustCompile(`^(.+?)(?: +to +(.+))?$`)

// twoOf parts "55 to 80 mm" in its two figures; the unit behind the last one counts for both.
func twoOf(typed string) (one, two string) {
	m := lengthsPattern.FindStringSubmatch(strings.Join(strings.Fields(typed), " "))
	if m == nil {
		return typed, ""
	}
	one, two = m[1], m[2]
	if u := trailingUnit(two); u != "" && trailingUnit(one) == "" {
		one += " " + u
	}
	return one, two
}

var lengthsForm = form[Span]{&shape{say: "a length, or two with to between: 1/2 to 1-1/2"}, func(r *reader, n *text.Node) (Span, bool) {
	if !r.want(n, text.Scalar, "a length, or two with to between") {
		return Span{}, false
	}
	one, two := twoOf(n.Text)
	a, ok := r.length(n, one, within)
	if !ok || two == "" {
		return Span{a, a}, ok
	}
	b, ok := r.length(n, two, within)
	return Span{min(a, b), max(a, b)}, ok
}}

// Shares is a range of shares of one: `6 to 11 %`; one figure is both ends.
type Shares struct{ Least, Most unit.Ratio }

var sharesPattern = regexp.MustCompile(`^([0-9.]+) *%?(?: +to +([0-9.]+))? *%$`)

// percent reads a share or two. Behind it stand moisture contents and humidities, which are never over 100 %.
var percent = form[Shares]{&shape{say: "a percentage, or two with to between: 6 to 11 %", pattern: `^[0-9.]+ *%?( +to +[0-9.]+)? *%$`}, func(r *reader, n *text.Node) (Shares, bool) {
	say := &shape{say: "a percentage, or two with to between: 6 to 11 %"}
	if !r.want(n, text.Scalar, say.say) {
		return Shares{}, false
	}
	m := sharesPattern.FindStringSubmatch(strings.TrimSpace(n.Text))
	if m == nil {
		r.misread(n, say, "")
		return Shares{}, false
	}
	a, ok := ratioOf(m[1] + "%")
	b := a
	if m[2] != "" {
		var second bool
		b, second = ratioOf(m[2] + "%")
		ok = ok && second
	}
	if !ok || max(a, b) > unit.One {
		r.misread(n, say, "more than 100 %, or no number")
		return Shares{}, false
	}
	return Shares{min(a, b), max(a, b)}, true
}}
