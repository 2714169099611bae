package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// Span is one course or column of a field: where its tile begins and ends along a gauge rod, in the face's frame.
type Span struct {
	Name   string
	Lo, Hi unit.Length
}

// Run is a row of spans that one gauge rod shows.
type Run struct {
	Which string // "columns of courses 1, 3 and 5"
	Spans []Span
}

// Courses are the straight courses of a field from the bottom up: none where its pattern has no joints that run
// through from side to side.
func Courses(z tiling.Field) []Span { return spans(z, upward, courseOf) }

// upward and sideways read a piece's reach along the two axes of a face.
func upward(p piece.Piece) (lo, hi unit.Length) {
	b := p.OnFace.Bounds()
	return b.Min.Y, b.Max.Y
}

func sideways(p piece.Piece) (lo, hi unit.Length) {
	b := p.OnFace.Bounds()
	return b.Min.X, b.Max.X
}

type reach func(piece.Piece) (lo, hi unit.Length)

func spans(z tiling.Field, of reach, number func(piece.Piece) int) []Span {
	if z.Angle != 0 {
		return nil
	}
	out := merge(z.Chosen().Pieces, of)
	if !out.straight() {
		return nil
	}
	call(out.list, z.Chosen().Pieces, of, number)
	return out.list
}

// call names spans by the numbers of their pieces; of two parts of one course the second has its letter too.
func call(list []Span, pieces []piece.Piece, of reach, number func(piece.Piece) int) {
	for i := range list {
		for _, p := range pieces {
			if lo, hi := of(p); lo >= list[i].Lo && hi <= list[i].Hi {
				list[i].Name = fmt.Sprint(number(p)) + letterOf(p.Address)
				break
			}
		}
	}
}

// letterOf is the letter at the end of an address, if it has one.
func letterOf(address string) string {
	return address[len(strings.TrimRightFunc(address, unicode.IsLetter)):]
}

func courseOf(p piece.Piece) int { return p.Course }
func columnOf(p piece.Piece) int { return p.Column }

// merged is a row of spans, and how long one tile can be along it.
type merged struct {
	list []Span
	tile unit.Length
}

// merge joins the reaches of pieces that overlap.
func merge(pieces []piece.Piece, of reach) merged {
	var m merged
	for _, p := range pieces {
		lo, hi := of(p)
		m.list, m.tile = append(m.list, Span{Lo: lo, Hi: hi}), max(m.tile, hi-lo)
	}
	m.list = joined(m.list)
	return m
}

func joined(list []Span) []Span {
	list = slices.Clone(list)
	slices.SortFunc(list, func(a, b Span) int { return cmp.Or(cmp.Compare(a.Lo, b.Lo), cmp.Compare(a.Hi, b.Hi)) })
	out := list[:0]
	for _, s := range list {
		if n := len(out); n > 0 && s.Lo < out[n-1].Hi {
			out[n-1].Hi = max(out[n-1].Hi, s.Hi)
			continue
		}
		out = append(out, s)
	}
	return out
}

// straight: no span is longer than a tile, so that a joint runs through between any two.
func (m merged) straight() bool {
	for _, s := range m.list {
		if s.Hi-s.Lo > m.tile {
			return false
		}
	}
	return len(m.list) > 0
}

// Columns are the rows of joints that courses show, each once: a stack has one, a running bond as many as its courses
// take turns. Where courses are not straight but columns are, there is one row of columns.
func Columns(z tiling.Field) []Run {
	if z.Angle != 0 {
		return nil
	}
	courses := Courses(z)
	if courses == nil {
		if s := spans(z, sideways, columnOf); s != nil {
			return []Run{{"columns", s}}
		}
		return nil
	}
	var rows []*row
	for _, c := range courses {
		pieces := within(z.Chosen().Pieces, c)
		m := merge(pieces, sideways)
		call(m.list, pieces, sideways, columnOf)
		add(&rows, c.Name, m)
	}
	return named(rows)
}

func within(pieces []piece.Piece, c Span) []piece.Piece {
	var out []piece.Piece
	for _, p := range pieces {
		if lo, hi := upward(p); lo >= c.Lo && hi <= c.Hi {
			out = append(out, p)
		}
	}
	return out
}

// row is the courses that share their joints.
type row struct {
	merged
	courses []string
}

// add puts a course with the first row whose joints it shares.
func add(rows *[]*row, course string, m merged) {
	for _, r := range *rows {
		both := merged{joined(append(slices.Clone(r.list), m.list...)), max(r.tile, m.tile)}
		if both.straight() {
			r.merged, r.courses = both, append(r.courses, course)
			return
		}
	}
	*rows = append(*rows, &row{m, []string{course}})
}

func named(rows []*row) []Run {
	var out []Run
	for _, r := range rows {
		run := Run{Which: "columns of every course", Spans: r.list}
		if len(rows) > 1 {
			run.Which = "columns of " + courseNames(r.courses)
		}
		out = append(out, run)
	}
	return out
}

func courseNames(names []string) string {
	if len(names) == 1 {
		return "course " + names[0]
	}
	return "courses " + list(names)
}

// Datum is the point of a face that positions on sheets count from, and its name: the board's left corner at the level
// line of a wall; the board at the first corner of a floor; the lower left corner of a face of an opening.
func Datum(p plan.Plan, f site.Face) (at geom.Point, across, up string) {
	switch f.Kind {
	case site.FloorFace:
		if c := p.Room.Survey.Corners; len(c) > 0 {
			return c[0].Board, "from the board at corner " + c[0].Name + ", along the first wall", "off the board of the first wall"
		}
	case site.WallFace:
		return at, "from the board at " + cornerWords(f.LeftCorner), "from the level line"
	}
	return f.Board.Bounds().Min, "from its left end", "from its lower edge as drawn"
}

// Up is how far a height of a face is from its datum: away from the first wall on a floor, else upward.
func Up(p plan.Plan, f site.Face, y unit.Length) unit.Length {
	at, _, _ := Datum(p, f)
	if f.Kind == site.FloorFace {
		return at.Y - y
	}
	return y - at.Y
}

// UpWords says a height of a face from its datum, as a sentence does.
func UpWords(p plan.Plan, f site.Face, y unit.Length) string {
	if f.Kind == site.WallFace {
		return FromLevel(p.Style, y)
	}
	_, _, up := Datum(p, f)
	v := Up(p, f, y)
	if v < 0 && f.Kind == site.RevealFace {
		return p.Style.Format(-v) + " below its lower edge as drawn"
	}
	return p.Style.Format(v) + " " + up
}

func cornerWords(name string) string {
	if name == "" {
		return "the left corner"
	}
	return "corner " + name
}

// CourseRod lists the heights of a field's courses for a gauge rod: running positions rounded to the mark, and the
// differences of those, so that the chain adds up.
func CourseRod(p plan.Plan, f site.Face, z tiling.Field) Table {
	u := " (" + p.Style.System.String() + ")"
	_, _, up := Datum(p, f)
	t := Table{Title: "Gauge rod up: " + z.Name, Empty: "No joint of this pattern runs through from side to side.",
		Columns: numbers(text("Course", "Bottom "+up+u, "Top "+up+u, "From the top before"+u), 1, 2, 3)}
	if f.Kind == site.FloorFace {
		t.Columns[1].Head, t.Columns[2].Head, t.Columns[3].Head = "Far edge "+up+u, "Near edge "+up+u, "From the near edge before"+u
	}
	wall := f.Kind == site.WallFace
	if wall {
		t.Columns = append(t.Columns, Column{"Top above finished floor" + u, Right})
	}
	tops := Rounded(p.Style, Courses(z), func(s Span) unit.Length { return Up(p, f, s.Hi) })
	for i, s := range Courses(z) {
		row := []string{s.Name, p.Style.Bare(Up(p, f, s.Lo)), p.Style.Bare(tops[i]), difference(p.Style, tops, i)}
		if wall {
			row = append(row, AboveFloor(p, s.Hi))
		}
		t.Rows = append(t.Rows, row)
	}
	slices.Reverse(t.Rows) // a rod stands: the highest course is the upper row
	return t
}

// ColumnRod lists one row of columns likewise, from the datum and from the center line where one is given.
func ColumnRod(p plan.Plan, f site.Face, r Run) Table {
	u := " (" + p.Style.System.String() + ")"
	at, across, _ := Datum(p, f)
	t := Table{Title: "Gauge rod across: " + r.Which, Columns: numbers(text("Column", "Left edge "+across+u, "Right edge"+u, "From the left edge before"+u), 1, 2, 3)}
	for _, c := range f.Lines {
		t.Columns = append(t.Columns, Column{"Left edge from " + c.Name + u, Right})
	}
	left := Rounded(p.Style, r.Spans, func(s Span) unit.Length { return s.Lo - at.X })
	for i, s := range r.Spans {
		cells := []string{s.Name, p.Style.Bare(left[i]), p.Style.Bare(s.Hi - at.X), difference(p.Style, left, i)}
		for _, c := range f.Lines {
			cells = append(cells, signed(p.Style, (s.Lo-c.X).Round(p.Style.Mark)))
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// Rounded are running positions from a datum, each rounded to the mark by itself.
func Rounded(s unit.Style, list []Span, of func(Span) unit.Length) []unit.Length {
	out := make([]unit.Length, len(list))
	for i, x := range list {
		out[i] = of(x).Round(s.Mark)
	}
	return out
}

// difference is what a rounded position stands from the one before.
func difference(s unit.Style, at []unit.Length, i int) string {
	if i == 0 {
		return ""
	}
	return s.Bare((at[i] - at[i-1]).Abs())
}

// AboveFloor words a height of a wall from the finished floor.
func AboveFloor(p plan.Plan, y unit.Length) string {
	if !p.Room.FinishedKnown {
		return "not known"
	}
	return p.Style.Bare(y - p.Room.FinishedFloor)
}

// Heads joins the heads of a table's columns, for tests and for screen readers.
func (t Table) Heads() string {
	var out []string
	for _, c := range t.Columns {
		out = append(out, c.Head)
	}
	return strings.Join(out, " | ")
}
