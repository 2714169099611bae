package document

import (
	"errors"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// span is the range in which a length makes sense. The ends are allowed; a length outside is told and not used.
type span struct {
	say         string
	least, most unit.Length
	above       bool // the least itself is not allowed
}

// The ranges are ours: wide enough for any small room, so that what lies outside is a slip of the pen or of the unit.
var (
	within   = span{say: "a length", least: 0, most: unit.Reach}
	over     = span{say: "a length over 0", least: 0, most: unit.Reach, above: true}
	eachWay  = span{say: "a length, + or -", least: -unit.Metre, most: unit.Metre}
	thin     = span{say: "a thickness over 0", least: 0, most: unit.Metre, above: true}
	tileSide = span{say: "the side of a tile", least: 3 * unit.Millimetre, most: 4 * unit.Metre}
	tileDeep = span{say: "the thickness of a tile", least: unit.Millimetre, most: 100 * unit.Millimetre}
	joint    = span{say: "the width of a joint", least: 0, most: 50 * unit.Millimetre}
	fine     = span{say: "a small length", least: 0, most: 100 * unit.Millimetre}
	mark     = span{say: "a mark of a tape", least: 0, most: 50 * unit.Millimetre, above: true}
	bore     = span{say: "a diameter over 0", least: 0, most: 600 * unit.Millimetre, above: true}
)

// length reads one length within a span.
func length(s span) form[unit.Length] {
	sh := &shape{say: s.say, pattern: lengthPattern}
	if s.least < 0 {
		sh.pattern = signedPattern
	}
	return form[unit.Length]{sh, func(r *reader, n *text.Node) (unit.Length, bool) {
		if !r.want(n, text.Scalar, s.say) {
			return 0, false
		}
		return r.length(n, n.Text, s)
	}}
}

// length reads a length out of a node's text.
func (r *reader) length(n *text.Node, typed string, s span) (unit.Length, bool) {
	l, seen := r.lengths[lengthKey{typed, r.units}]
	if !seen {
		var err error
		if l, err = unit.Parse(typed, r.units); err != nil {
			r.unreadable(n.At, err)
			return 0, false
		}
		r.keep(typed, l)
	}
	if !r.inside(n.At, l, s) {
		return 0, false
	}
	return l, true
}

// lengthKey is all that a typed length hangs on.
type lengthKey struct {
	typed string
	bare  unit.System
}

func (r *reader) keep(typed string, l unit.Length) {
	if r.lengths != nil {
		r.lengths[lengthKey{typed, r.units}] = l
	}
}

func (r *reader) unreadable(at diag.Place, err error) {
	var parse *unit.ParseError
	if errors.As(err, &parse) && parse.Instead != "" {
		r.stop("length-unreadable", at, "{0}", "write {1}", diag.T(short2(err.Error())), diag.T(parse.Instead))
		return
	}
	r.stop("length-unreadable", at, "{0}", "write it like one of these: {1}", diag.T(short2(err.Error())), diag.T(unit.Examples))
}

// short2 keeps the words behind the quoted text of a parse error.
func short2(s string) string {
	if runes := []rune(s); len(runes) > 160 {
		return string(runes[:160]) + "…"
	}
	return s
}

// inside checks a length against its span.
func (r *reader) inside(at diag.Place, l unit.Length, s span) bool {
	switch {
	case l < 0 && s.least >= 0:
		r.stop("length-negative", at, "{0} is less than nothing; {1} is needed here", "write it without the minus, or measure again", diag.X(l), diag.T(s.say))
	case l == 0 && s.above:
		r.stop("length-zero", at, "0 is no size; {0} is needed here", "write the real size, or unknown", diag.T(s.say))
	case l < s.least:
		r.stop("length-absurd", at, "{0} is too small: {1} is at least {2}", "check the figure and its unit", diag.X(l), diag.T(s.say), diag.X(s.least))
	case l > s.most:
		r.stop("length-absurd", at, "{0} is too large: {1} is at most {2} here", "check the figure and its unit", diag.X(l), diag.T(s.say), diag.L(s.most))
	default:
		return true
	}
	return false
}

// lengthPattern tells an editor what a length looks like. It is a net with wide meshes: whatever unit.Parse reads
// passes it, and words do not.
const (
	lengthPattern = `^\s*\+?` + termsPattern
	signedPattern = `^\s*[-+−–]?\s*` + termsPattern
	termsPattern  = `(` + numberPattern + `\s*-?\s*` + unitPattern + `\s*){1,3}$`
	numberPattern = `([0-9]*\.?[0-9]+\.?|[½¼¾⅛⅜⅝⅞⅓⅔]|[0-9]+\.)(\s*[-–]?\s*([0-9]+\s*[/⁄]\s*[0-9]+|[½¼¾⅛⅜⅝⅞⅓⅔])|[/⁄][0-9]+)?`
	unitPattern   = `(mm|[mM]illimet(re|er)s?|cm|centimet(re|er)s?|m|met(re|er)s?|[iI][nN]\.?|inch(es)?|["″”]|''|[fF][tT]\.?|foot|feet|['′’])?`
)

// size is two or three lengths with "x" between: `24 x 12 x 3/8`, `600 x 300 x 10 mm`. A unit behind the last one
// counts for all that have none.
type size struct {
	a, b, c Value[unit.Length]
}

var sizeForm = form[size]{
	&shape{say: "a size: length x width x thickness", pattern: `^[^xX×]+[xX×][^xX×]+([xX×][^xX×]+)?$`},
	func(r *reader, n *text.Node) (size, bool) {
		parts, ok := r.times(n, 2, 3)
		if !ok {
			return size{}, false
		}
		s := size{a: r.side(n, parts[0], tileSide), b: r.side(n, parts[1], tileSide)}
		if len(parts) == 3 {
			s.c = r.side(n, parts[2], tileDeep)
		}
		if s.a.Known && s.b.Known && s.a.V < s.b.V {
			s.a, s.b = s.b, s.a
		}
		return s, true
	},
}

// times splits a text at "x" and hands the last unit on.
func (r *reader) times(n *text.Node, least, most int) ([]string, bool) {
	if !r.want(n, text.Scalar, "a size") {
		return nil, false
	}
	parts := strings.FieldsFunc(n.Text, func(c rune) bool { return c == 'x' || c == 'X' || c == '×' })
	if len(parts) < least || len(parts) > most {
		r.stop("size-unreadable", n.At, "{0} is no size", "write length x width x thickness, as 24 x 12 x 3/8 or 600 x 300 x 10 mm", diag.T(short(n.Text)))
		return nil, false
	}
	suffix := trailingUnit(parts[len(parts)-1])
	for i, p := range parts {
		parts[i] = strings.TrimSpace(p)
		if suffix != "" && trailingUnit(p) == "" && !isUnknown(&text.Node{Kind: text.Scalar, Text: p}) {
			parts[i] += " " + suffix
		}
	}
	return parts, true
}

func (r *reader) side(n *text.Node, typed string, s span) Value[unit.Length] {
	part := &text.Node{Kind: text.Scalar, Text: typed, At: n.At}
	return valueOf(r, length(s), part)
}

// trailingUnit returns the unit word at the end of a typed length, or "".
func trailingUnit(typed string) string {
	typed = strings.TrimSpace(typed)
	if strings.TrimFunc(typed, notDigit) == "" {
		return ""
	}
	return typed[len(strings.TrimRightFunc(typed, notDigit)):]
}

func notDigit(c rune) bool {
	return !(c >= '0' && c <= '9') && !strings.ContainsRune("½¼¾⅛⅜⅝⅞⅓⅔", c)
}
