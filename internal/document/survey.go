package document

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Survey is what the tape and the level line say about the floor's outline.
type Survey struct {
	At       diag.Place
	Corners  []Name             // `corners: A B C D`, clockwise seen from above; facing wall A-B, A is on the left
	Points   []Name             // `points: P Q`: further floor points, taped to corners
	Touches  Value[Surface]     // `tape to`: what a reading touches unless it says otherwise
	Where    Value[Height]      // `tape at`
	Accuracy Value[unit.Length] // `tape accuracy`: one standard deviation of one reading
	Tape     []Reading
	Unread   []Name     // lines of which something is written in `tape` that is no reading
	Down     []AtCorner // `level line: {down: {A: 40-1/8}}`: from the level line to the bare floor
	Up       []AtCorner // `level line: {up: …}`: from the level line to the ceiling
	Finished Finished   // `finished floor: highest`
}

// Name is a name with its place.
type Name struct {
	Text string
	At   diag.Place
}

// AtCorner is a reading at a corner.
type AtCorner struct {
	Corner string
	Value  Value[unit.Length]
}

// Finished says where "above the finished floor" counts from: the highest point of the finished floor in the
// room (the default), a named corner, or a length below the level line.
type Finished struct {
	Rule   FinishedRule
	Corner string
	Below  unit.Length
	At     diag.Place
}

// FinishedRule chooses among the three.
type FinishedRule uint8

const (
	Highest FinishedRule = iota
	AtNamedCorner
	BelowLevel
)

var survey = record("what the tape and the level line say", func(s *Survey, at diag.Place) { s.At = at },
	sure("corners", "the corners of the floor, clockwise seen from above; facing wall A-B, A is on the left", pointNames, func(s *Survey) *[]Name { return &s.Corners }).must().like("A B C D"),
	sure("points", "further points on the floor that were taped to corners", pointNames, func(s *Survey) *[]Name { return &s.Points }).like("P Q"),
	fact("tape to", "what a reading touches unless it says otherwise", surface, func(s *Survey) *Value[Surface] { return &s.Touches }).like("board"),
	fact("tape at", "where on the wall a reading is taken unless it says otherwise", height, func(s *Survey) *Value[Height] { return &s.Where }).like("plate"),
	fact("tape accuracy", "how well one reading can be trusted: two of three readings are nearer than this", length(fine.named("a small length over 0", true)), func(s *Survey) *Value[unit.Length] { return &s.Accuracy }).like("1/16"),
	sure("tape", "the readings of the tape, by the two points they were taken between", tape, func(s *Survey) *[]Reading { return &s.Tape }).must().like("{A-B: 71-3/8, B-C: 96-1/4, A-C: 119-3/4}"),
	key[Survey]{row{name: "level line", what: "readings from a level line drawn round the room", shape: levelLine.shape, example: "{down: {A: 40-1/8, B: 40-1/4}}"}, readLevelLine},
	part("finished floor", "where heights above the finished floor count from", finished, func(s *Survey) *Finished { return &s.Finished }).unless("the highest point of the finished floor in the room").like("highest"),
)

// named returns the span under another name.
func (s span) named(say string, above bool) span { s.say, s.above = say, above; return s }

// pointNames reads "A B C D" or a list; a name is one word without a hyphen, since A-B names a line.
var pointNames = form[[]Name]{&shape{kind: eitherShape, brief: "names of one word each, with spaces between", say: "names of points: A B C D", any: []*shape{
	{say: "names with spaces between", pattern: `^\s*[^\s,-]+([\s,]+[^\s,-]+)*\s*$`},
	{kind: listShape, say: "a list of names", item: &shape{say: "a name", pattern: `^[^\s,-]+$`}},
}}, readPointNames}

func readPointNames(r *reader, n *text.Node) ([]Name, bool) {
	var names []Name
	switch n.Kind {
	case text.List:
		for _, c := range n.Items {
			if r.want(c, text.Scalar, "the name of a point") {
				names = append(names, namesIn(c)...)
			}
		}
	default:
		if !r.want(n, text.Scalar, "names of points, like A B C D") {
			return nil, false
		}
		names = namesIn(n)
	}
	return r.onePoint(names), true
}

// namesIn splits a text at spaces and commas and keeps the place of each name.
func namesIn(n *text.Node) []Name {
	var names []Name
	column, rest := n.At.Column, n.Text
	if n.Quoted {
		column++
	}
	for rest != "" {
		end := strings.IndexFunc(rest, separates)
		switch {
		case end == 0:
			_, width := utf8.DecodeRuneInString(rest)
			rest, column = rest[width:], column+1
			continue
		case end < 0:
			end = len(rest)
		}
		at := n.At
		if n.AsIs {
			at.Column = column
		}
		names = append(names, Name{rest[:end], at})
		column, rest = column+utf8.RuneCountInString(rest[:end]), rest[end:]
	}
	return names
}

func separates(c rune) bool { return c == ',' || unicode.IsSpace(c) }

// onePoint keeps each good name once.
func (r *reader) onePoint(names []Name) []Name {
	var good []Name
	seen := map[string]bool{}
	for _, n := range names {
		switch {
		case strings.Contains(n.Text, "-"):
			r.stop("point-name", n.At, "the name {0} has a hyphen, and A-B names the line between A and B", "give the point a name of letters and figures", diag.T(short(n.Text)))
		case seen[n.Text]:
			r.stop("name-twice", n.At, "{0} is named twice", "give each point its own name", diag.T(n.Text))
		default:
			seen[n.Text] = true
			good = append(good, n)
		}
	}
	return good
}

// atCorners reads values by corner.
func atCorners(f form[unit.Length]) form[[]AtCorner] {
	s := &shape{kind: namedShape, say: "by corner: " + f.shape.say, names: "corner", item: f.shape}
	return form[[]AtCorner]{s, func(r *reader, n *text.Node) ([]AtCorner, bool) {
		if !r.want(n, text.Map, "a length for each corner, like {A: 40-1/8}") {
			return nil, false
		}
		var all []AtCorner
		for _, e := range n.Entries {
			r.refer(e.Key, e.At, "corner")
			if e.Value.Kind == text.Empty {
				r.empty(e, row{name: e.Key, shape: f.shape})
				continue
			}
			all = append(all, AtCorner{e.Key, valueOf(r, f, e.Value)})
		}
		return all, true
	}}
}

type level struct{ down, up []AtCorner }

var levelLine = record("distances from the level line at each corner", func(*level, diag.Place) {},
	part("down", "from the level line down to the bare floor", atCorners(length(within)), func(l *level) *[]AtCorner { return &l.down }).like("{A: 40-1/8, B: 40-1/4}"),
	part("up", "from the level line up to the ceiling", atCorners(length(over)), func(l *level) *[]AtCorner { return &l.up }).like("{A: 55-1/2, B: 55-1/2}"),
)

func readLevelLine(r *reader, s *Survey, n *text.Node) {
	l, _ := levelLine.read(r, n)
	s.Down, s.Up = l.down, l.up
}

var finished = form[Finished]{&shape{say: finishedSay}, readFinished}

func readFinished(r *reader, n *text.Node) (Finished, bool) {
	f := Finished{At: n.At}
	if !r.want(n, text.Scalar, finishedSay) {
		return f, false
	}
	typed := strings.TrimSpace(n.Text)
	if typed == "highest" {
		return f, true
	}
	if below, ok := strings.CutSuffix(strings.TrimSuffix(typed, " line"), " below level"); ok {
		f.Rule = BelowLevel
		f.Below, ok = r.length(n, below, within)
		return f, ok
	}
	f.Rule, f.Corner = AtNamedCorner, typed
	r.refer(typed, n.At, "corner")
	return f, true
}

const finishedSay = "highest, the name of a corner, or a length below level"
