package document

import (
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Chosen is what the room is held against: sets of requirements, and the numbers of the user's own inspector.
type Chosen struct {
	At        diag.Place
	Given     bool
	Sets      []Name
	Inspector []Inspected
}

// Inspected is one number of the user's own inspector, by the id of the requirement that it replaces. What it counts is
// for the requirement to say; so it is kept as typed, and as a length where it reads as one.
type Inspected struct {
	Rule   string
	At     diag.Place
	Typed  string
	Length Value[unit.Length]
	Number Value[int64]
	Flow   Value[unit.Flow]
}

// RuleSets are the words by which a document chooses its requirements.
var RuleSets = []string{"US residential", "UPC", "ADA 2010", "UK practice", "Ontario"}

var chosen = record("what the room is held against", func(c *Chosen, at diag.Place) { c.At, c.Given = at, true },
	part("sets", "the sets of requirements that apply: "+strings.Join(RuleSets, ", "), list(ruleSet), func(c *Chosen) *[]Name { return &c.Sets }).unless("US residential").like("[US residential]"),
	part("inspector", "numbers of your own inspector, by the id of the requirement that each replaces", inspected, func(c *Chosen) *[]Inspected { return &c.Inspector }).like("{wc-side-irc: 16}"),
)

var ruleSet = form[Name]{choice("a set of requirements: "+strings.Join(RuleSets, ", "), sameWords(RuleSets)...).shape, func(r *reader, n *text.Node) (Name, bool) {
	w, ok := choice("a set of requirements", sameWords(RuleSets)...).read(r, n)
	return Name{w, n.At}, ok
}}

const inspectedSay = "a number with its unit: 16, 400 mm, 3 or 50 cfm"

var inspected = form[[]Inspected]{&shape{kind: namedShape, say: "by id of the requirement: " + inspectedSay, names: "requirement", item: &shape{say: inspectedSay, pattern: `[0-9½¼¾⅛⅜⅝⅞⅓⅔]`}}, func(r *reader, n *text.Node) ([]Inspected, bool) {
	if !r.want(n, text.Map, "a number by the id of each requirement, like {wc-side-irc: 16}") {
		return nil, false
	}
	var all []Inspected
	for _, e := range n.Entries {
		if one, ok := r.inspectedOne(e); ok {
			all = append(all, one)
		}
	}
	return all, true
}}

func (r *reader) inspectedOne(e text.Entry) (Inspected, bool) {
	one := Inspected{Rule: e.Key, At: e.At}
	if isUnknown(e.Value) {
		r.unknown(e.Value, "the inspector's number for "+e.Key)
		return one, false
	}
	if !r.want(e.Value, text.Scalar, inspectedSay) {
		return one, false
	}
	one.Typed, one.At = strings.TrimSpace(e.Value.Text), e.Value.At
	if n, err := strconv.ParseInt(one.Typed, 10, 64); err == nil {
		one.Number = Value[int64]{V: n, Known: true, At: one.At}
	}
	if l, err := unit.Parse(one.Typed, r.units); err == nil {
		one.Length = Value[unit.Length]{V: l, Known: true, At: one.At}
	}
	for _, u := range flowUnits {
		if number, ok := strings.CutSuffix(one.Typed, u.text); ok {
			if f, ok := flowOf(number, u.is); ok {
				one.Flow = Value[unit.Flow]{V: f, Known: true, At: one.At}
			}
		}
	}
	if !one.Number.Known && !one.Length.Known && !one.Flow.Known {
		r.stop("value-unreadable", one.At, "{0} can not be read: not {1}", "write {1}", diag.T(short(one.Typed)), diag.T(inspectedSay))
		return one, false
	}
	return one, true
}

// Move is one thing that may still move: a value of the document and how far it may go each way.
type Move struct {
	Words string   // as written: "vanity > height"
	Path  []string // to the value in the document
	At    diag.Place
	Was   diag.Place         // where the value stands
	Less  unit.Length        // the most that it may be made smaller; 0 or less than nothing
	More  unit.Length        // the most that it may be made larger
	Step  Value[unit.Length] // silent: the mark of the tape
}

// PathText is the path as places have it.
func (m Move) PathText() string {
	return strings.ReplaceAll(strings.Join(m.Path, " > "), " > #", " > ")
}

type moveRange struct {
	less, more unit.Length
	step       Value[unit.Length]
}

const moveSay = "how far it may go down and up, as -1 to 1/2, 0 to 3/4, or one figure for each way"

var moveShort = form[moveRange]{&shape{say: moveSay, pattern: `[0-9½¼¾⅛⅜⅝⅞⅓⅔]`}, func(r *reader, n *text.Node) (moveRange, bool) {
	if !r.want(n, text.Scalar, moveSay) {
		return moveRange{}, false
	}
	a, b := twoOf(n.Text)
	lo, ok := r.length(n, a, eachWay)
	if !ok {
		return moveRange{}, false
	}
	if b == "" {
		return moveRange{less: -lo.Abs(), more: lo.Abs()}, true
	}
	hi, ok := r.length(n, b, eachWay)
	if ok && (lo > 0 || hi < 0) {
		r.stop("move-skips", n.At, "from {0} to {1} leaves out what is there now", "write a range round 0: -1 to 1/2", diag.X(lo), diag.X(hi))
		return moveRange{}, false
	}
	return moveRange{less: lo, more: hi}, ok
}}

var moveLong = record("how far it may go, and in what steps", func(*moveRange, diag.Place) {},
	sure("range", "how far it may go down and up", moveShort, func(m *moveRange) *moveRange { return m }).must().like("-1 to 1/2"),
	fact("step", "the steps that it goes in", length(over), func(m *moveRange) *Value[unit.Length] { return &m.step }).unless("the mark of the tape").like("1/4"),
)

var moves = form[[]Move]{&shape{kind: namedShape, say: "by the words that lead to a value (vanity > height): " + moveSay, names: "value", item: either(moveShort, moveLong).shape}, func(r *reader, n *text.Node) ([]Move, bool) {
	if !r.want(n, text.Map, "a range for each value that may move, like {vanity > height: -1 to 1/2}") {
		return nil, false
	}
	var all []Move
	for _, e := range n.Entries {
		if isUnknown(e.Value) {
			r.unknown(e.Value, "how far "+e.Key+" may move")
			continue
		}
		if e.Value.Kind == text.Empty {
			r.empty(e, row{name: e.Key, shape: moveShort.shape})
			continue
		}
		if m, ok := either(moveShort, moveLong).read(r, e.Value); ok {
			all = append(all, Move{Words: e.Key, At: e.At, Less: m.less, More: m.more, Step: m.step})
		}
	}
	return all, true
}}

// leadTo finds for each thing that may move the one value that its words lead to: a path that ends in these words, in
// this order, others left out.
func (r *reader) leadTo(tree *text.Node, room *Room) {
	if len(room.Moves) == 0 {
		return
	}
	var spots []moveSpot
	listSpots(tree, nil, &spots)
	kept := room.Moves[:0]
	for _, m := range room.Moves {
		if s, ok := r.oneSpot(m, spots); ok {
			m.Path, m.Was = s.path, s.at
			kept = append(kept, m)
		}
	}
	room.Moves = kept
}

// moveSpot is one single value of the document: where it stands and by which words it can be called.
type moveSpot struct {
	path, words []string
	at          diag.Place
}

func listSpots(n *text.Node, path []string, spots *[]moveSpot) {
	for _, e := range n.Entries {
		if len(path) == 0 && e.Key == movesKey {
			continue
		}
		listSpots(e.Value, append(slices.Clone(path), e.Key), spots)
	}
	for i, c := range n.Items {
		listSpots(c, append(slices.Clone(path), text.Item(i)), spots)
	}
	if n.Kind == text.Scalar && strings.ContainsAny(n.Text, "0123456789½¼¾⅛⅜⅝⅞⅓⅔") {
		*spots = append(*spots, moveSpot{path, callWords(path, n.Text), n.At})
	}
}

// callWords are a path's keys; a place in a list is called by the words before its figure: "board 1/2" is board.
func callWords(path []string, typed string) []string {
	words := slices.Clone(path)
	if last := len(words) - 1; last >= 0 && strings.HasPrefix(words[last], "#") {
		label, _ := splitLayer(typed)
		words[last] = label
	}
	return words
}

const movesKey = "may move"

// oneSpot finds what the words lead to; none and several are told.
func (r *reader) oneSpot(m Move, spots []moveSpot) (moveSpot, bool) {
	wanted := splitWords(m.Words)
	var found []moveSpot
	var near []string
	for _, s := range spots {
		if leads(wanted, s.words) {
			found = append(found, s)
		}
		near = append(near, strings.Join(s.words, " > "))
	}
	if plain := slices.DeleteFunc(slices.Clone(found), func(s moveSpot) bool { return !endsIn(s.words, wanted) }); len(plain) > 0 {
		found = plain
	}
	switch len(found) {
	case 1:
		return found[0], true
	case 0:
		r.noSpot(m, wanted, near)
	default:
		r.stop("move-many", m.At, "{0} may be {1} or {2}", "write more of the way to it, as {1}", diag.T(m.Words), diag.T(strings.Join(found[0].words, " > ")), diag.T(strings.Join(found[1].words, " > ")))
	}
	return moveSpot{}, false
}

func (r *reader) noSpot(m Move, wanted, near []string) {
	tails := make([]string, len(near))
	for i, words := range near {
		all := strings.Split(words, " > ")
		tails[i] = strings.Join(all[max(0, len(all)-len(wanted)):], " > ")
	}
	if n := nearest(m.Words, tails); n != "" {
		r.stop("move-unknown", m.At, "{0} leads to no figure of the document", "did you mean {1}?", diag.T(short(m.Words)), diag.T(n))
		return
	}
	r.stop("move-unknown", m.At, "{0} leads to no figure of the document", "write the names that lead to a figure that is written, as vanity > height", diag.T(short(m.Words)))
}

func splitWords(s string) []string {
	var out []string
	for _, w := range strings.Split(s, ">") {
		out = append(out, strings.TrimSpace(w))
	}
	return out
}

// endsIn reports whether a path's words end in the wanted ones: they are meant before a path that has others between.
func endsIn(words, wanted []string) bool {
	return len(words) >= len(wanted) && slices.Equal(words[len(words)-len(wanted):], wanted)
}

// leads reports whether the wanted words are among a path's words in this order and end where it ends.
func leads(wanted, words []string) bool {
	i := 0
	for _, w := range words {
		if i < len(wanted) && w == wanted[i] {
			i++
		}
	}
	return i == len(wanted) && i > 0 && words[len(words)-1] == wanted[i-1]
}

// splitAt parts a text and trims its parts.
func splitAt(s string, sep rune) []string {
	var out []string
	for _, p := range strings.Split(s, string(sep)) {
		out = append(out, strings.TrimSpace(p))
	}
	return out
}

// cutSpace parts two figures at the one space between them.
func cutSpace(s string) (a, b string, two bool) {
	words := strings.Fields(s)
	if len(words) != 2 {
		return s, "", false
	}
	return words[0], words[1], true
}
