package document

import (
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Surface is what a reading was taken to.
type Surface uint8

const (
	Stud Surface = iota // bare framing or masonry
	Board
	TileFace
)

// Height is where on the wall a reading was taken.
type Height uint8

const (
	Plate Height = iota // at the floor
	LevelLine
	Ceiling
)

// Reading is one tape reading between two named points. Keys: a bare length, or `{length: , to: , at: , on: }`.
// A list under one key holds several readings of the line, oldest first.
type Reading struct {
	From, To string
	Length   unit.Length
	Touches  Value[Surface]
	Where    Value[Height]
	On       Value[string] // ISO date, `on: 2026-03-02`; a later one supersedes; without dates the later in the list does
	At       diag.Place
}

var surfaceWords = []word[Surface]{{"stud", Stud}, {"board", Board}, {"tile face", TileFace}}

var (
	surface = choice("what the tape touched", surfaceWords...)
	height  = choice("where on the wall", word[Height]{"plate", Plate}, word[Height]{"level line", LevelLine}, word[Height]{"ceiling", Ceiling})
)

var reading = record("a reading: {length: 71-3/8, to: board, at: plate, on: 2026-03-02}", func(t *Reading, at diag.Place) { t.At = at },
	part("length", "what the tape says", length(over), func(t *Reading) *unit.Length { return &t.Length }).must().like("71-3/8"),
	fact("to", "what the tape touched", surface, func(t *Reading) *Value[Surface] { return &t.Touches }).unless("as tape to says").like("board"),
	fact("at", "where on the wall", height, func(t *Reading) *Value[Height] { return &t.Where }).unless("as tape at says").like("level line"),
	fact("on", "the day; a later reading of the same line supersedes an earlier one", date, func(t *Reading) *Value[string] { return &t.On }).unless("the later in the list supersedes").like("2026-03-02"),
)

var bareReading = form[Reading]{length(over).shape, func(r *reader, n *text.Node) (Reading, bool) {
	l, ok := length(over).read(r, n)
	return Reading{Length: l, At: n.At}, ok
}}

var readings = list(either(bareReading, reading))

// tape reads the readings by line: `A-B: 71-3/8`, or a list under one key, oldest first.
var tape = form[[]Reading]{&shape{kind: namedShape, say: "by line, like A-B: a length, or a reading, or a list of them, oldest first",
	names: "line", key: `^\s*[^\s-]+\s*-\s*[^\s-]+\s*$`, item: readings.shape}, readTape}

func readTape(r *reader, n *text.Node) ([]Reading, bool) {
	if !r.want(n, text.Map, "readings by line, like {A-B: 71-3/8}") {
		return nil, false
	}
	var all []Reading
	for _, e := range n.Entries {
		from, to, ok := r.line(e)
		if !ok {
			continue
		}
		before := len(r.found)
		got := r.readingsOf(e)
		if len(r.found) > before {
			r.unread = append(r.unread, Name{from + "-" + to, e.At})
		}
		for _, t := range got {
			if t.Length > 0 {
				t.From, t.To = from, to
				all = append(all, t)
			}
		}
	}
	return all, true
}

// readingsOf gives the readings under one line. One that is unknown has not been taken: it is none.
func (r *reader) readingsOf(e text.Entry) []Reading {
	switch {
	case isUnknown(e.Value):
		return nil
	case e.Value.Kind == text.Empty:
		r.empty(e, row{name: e.Key, shape: bareReading.shape})
		return nil
	}
	all, _ := readings.read(r, e.Value)
	return all
}

// line reads a key such as "A-B" and refers to both points.
func (r *reader) line(e text.Entry) (from, to string, ok bool) {
	from, to, ok = strings.Cut(e.Key, "-")
	from, to = strings.TrimSpace(from), strings.TrimSpace(to)
	switch {
	case !ok || from == "" || to == "" || strings.Contains(to, "-"):
		r.stop("line-unreadable", e.At, "{0} is no line between two points", "write the two names with a hyphen between: A-B", diag.T(short(e.Key)))
		return "", "", false
	case from == to:
		r.stop("line-empty", e.At, "{0} goes from a point to itself", "name two points", diag.T(short(e.Key)))
		return "", "", false
	}
	r.refer(from, e.At, "point")
	r.refer(to, e.At, "point")
	return from, to, true
}
