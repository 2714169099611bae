package site

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// A room in tests is built from one-line notations, in inches unless a unit is written:
//
//	tape     "A-B 60, B-C 96 board, A-C 113-1/4 stud level 2026-03-02"
//	corners  "A 40, B 40-1/4"
//	stations "0 0, 30 1/4"
//	layers   "board 1/2, membrane 1 mm, bed 3/16, tile 3/8"
//	across   "24 from A", "center 36 from A", "24 to 48 from A", "3 left of line", "on line"
//	up       "48 above floor", "center 50 above floor", "3 below level", "12 to 24 above level"
type room struct {
	document.Room
	t *testing.T
}

func newRoom(t *testing.T, corners, tape string) *room {
	r := &room{t: t}
	r.Survey.At = diag.Place{Path: "survey", Line: 2}
	for _, c := range strings.Fields(corners) {
		r.Survey.Corners = append(r.Survey.Corners, document.Name{Text: c})
	}
	r.tape(tape)
	return r
}

// alcove is a room with a 60 in back wall A-B and 32 in deep, board to board (8-15-17), 96 in high, the level line 40 in up.
func alcove(t *testing.T) *room {
	r := newRoom(t, "A B C D", "A-B 60, B-C 32, C-D 60, D-A 32, A-C 68, B-D 68")
	r.Survey.Touches = val(document.Board)
	r.level("A 40, B 40, C 40, D 40", "A 56, B 56, C 56, D 56")
	r.wall("back", "A-B", "board 1/2")
	r.wall("right", "B-C", "board 1/2")
	r.wall("left", "D-A", "board 1/2")
	r.tile("white", "12 x 6 x 3/8", document.Ceramic)
	return r
}

func val[T any](v T) document.Value[T] { return document.Value[T]{V: v, Known: true} }

func (r *room) in(s string) unit.Length {
	r.t.Helper()
	l, err := unit.Parse(s, unit.Inches)
	if err != nil {
		r.t.Fatal(err)
	}
	return l
}

func (r *room) tape(list string) {
	for i, one := range split(list) {
		f := strings.Fields(one)
		from, to, _ := strings.Cut(f[0], "-")
		d := document.Reading{From: from, To: to, Length: r.in(f[1]), At: diag.Place{Path: "survey > tape > " + f[0], Line: 10 + i}}
		for _, w := range f[2:] {
			switch w {
			case "stud":
				d.Touches = val(document.Stud)
			case "board":
				d.Touches = val(document.Board)
			case "tile":
				d.Touches = val(document.TileFace)
			case "level":
				d.Where = val(document.LevelLine)
			case "ceiling":
				d.Where = val(document.Ceiling)
			default:
				d.On = val(w)
			}
		}
		r.Survey.Tape = append(r.Survey.Tape, d)
	}
}

func split(list string) []string {
	if list == "" {
		return nil
	}
	parts := strings.Split(list, ",")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	return parts
}

func (r *room) at(list string) (out []document.AtCorner) {
	for _, one := range split(list) {
		name, v, _ := strings.Cut(one, " ")
		out = append(out, document.AtCorner{Corner: name, Value: val(r.in(v))})
	}
	return out
}

func (r *room) stations(list string) (out []document.Station) {
	for _, one := range split(list) {
		x, v, _ := strings.Cut(one, " ")
		out = append(out, document.Station{X: r.in(x), Value: r.in(v)})
	}
	return out
}

func (r *room) level(down, up string) { r.Survey.Down, r.Survey.Up = r.at(down), r.at(up) }

func (r *room) layers(list string) (out []document.Layer) {
	kinds := map[string]document.LayerKind{"board": document.BoardLayer, "membrane": document.MembraneLayer, "bed": document.BedLayer, "tile": document.TileLayer}
	for _, one := range split(list) {
		name, v, thick := strings.Cut(one, " ")
		l := document.Layer{What: kinds[name], Label: name}
		if thick {
			l.Thick = val(r.in(v))
		}
		out = append(out, l)
	}
	return out
}

func (r *room) wall(name, along, layers string) *document.Wall {
	left, right, _ := strings.Cut(along, "-")
	r.Walls = append(r.Walls, document.Wall{Name: name, Left: left, Right: right, BuildUp: r.layers(layers),
		At: diag.Place{Path: "walls > " + name, Line: 30 + len(r.Walls)}})
	return &r.Walls[len(r.Walls)-1]
}

func (r *room) tile(name, size string, kind document.TileKind) *document.Tile {
	s := strings.Split(size, " x ")
	r.Tiles = append(r.Tiles, document.Tile{Name: name, Kind: kind, Length: val(r.in(s[0])), Width: val(r.in(s[1])), Thick: val(r.in(s[2]))})
	return &r.Tiles[len(r.Tiles)-1]
}

func (r *room) lay(tile string, faces ...string) {
	for _, f := range faces {
		r.Lay = append(r.Lay, document.Lay{Face: f, Fields: []document.Field{{Name: "main", Tile: document.Name{Text: tile}}}})
	}
}

func (r *room) order(faces ...string) {
	for _, f := range faces {
		r.Setting.Order = append(r.Setting.Order, document.Name{Text: f})
	}
}

// across reads the notation of places along a wall.
func (r *room) across(s string) document.Across {
	if line, ok := strings.CutPrefix(s, "on "); ok {
		return document.Across{Given: true, Side: document.On, From: line, Center: true}
	}
	a := document.Across{Given: true}
	for word, side := range map[string]document.Side{" from ": document.FromCorner, " left of ": document.LeftOf, " right of ": document.RightOf} {
		if figures, from, ok := strings.Cut(s, word); ok {
			figures, a.Center = strings.CutPrefix(figures, "center ")
			a.Side, a.From = side, from
			a.Lo, a.Hi, a.Both = r.figures(figures)
		}
	}
	return a
}

func (r *room) figures(s string) (lo, hi unit.Length, both bool) {
	one, two, both := strings.Cut(s, " to ")
	if both {
		hi = r.in(two)
	}
	return r.in(one), hi, both
}

// up reads the notation of heights.
func (r *room) up(s string) document.Up {
	u := document.Up{Given: true}
	for word, d := range map[string]document.Datum{" above floor": document.AboveFloor, " above level": document.AboveLevel,
		" below level": document.BelowLevelLine, " below ceiling": document.BelowCeiling} {
		if figures, ok := strings.CutSuffix(s, word); ok {
			u.Datum = d
			for part, p := range map[string]document.Part{"center ": document.Middle, "top ": document.Top} {
				if rest, ok := strings.CutPrefix(figures, part); ok {
					figures, u.Part = rest, p
				}
			}
			u.Lo, u.Hi, u.Both = r.figures(figures)
		}
	}
	return u
}

func (r *room) opening(name, in string, kind document.OpeningKind, across, up, width, height string) *document.Opening {
	r.Openings = append(r.Openings, document.Opening{Name: name, In: document.Name{Text: in}, Kind: kind, Across: r.across(across),
		At: diag.Place{Path: "openings > " + name, Line: 60 + len(r.Openings)}})
	o := &r.Openings[len(r.Openings)-1]
	if up != "" {
		o.Up = r.up(up)
	}
	if width != "" {
		o.Width = val(r.in(width))
	}
	if height != "" {
		o.Height = val(r.in(height))
	}
	return o
}

func (r *room) stub(name, in, across, up, diameter string) *document.Stub {
	r.Stubs = append(r.Stubs, document.Stub{Name: name, In: document.Name{Text: in}, Across: r.across(across), Up: r.up(up),
		Diameter: val(r.in(diameter)), At: diag.Place{Path: "stub-outs > " + name, Line: 70 + len(r.Stubs)}})
	return &r.Stubs[len(r.Stubs)-1]
}

// solve solves the room and keeps what was said.
type solved struct {
	Room
	t       *testing.T
	list    diag.List
	assumed []diag.Assumption
}

func (r *room) solve() solved {
	got, list, assumed := Solve(r.Room)
	return solved{got, r.t, list, assumed}
}

func (s solved) face(name string) Face {
	s.t.Helper()
	f, ok := s.Face(name)
	if !ok {
		s.t.Fatalf("no face %q; findings:\n%s", name, s.said())
	}
	return f
}

func (s solved) said() string {
	var b strings.Builder
	for _, f := range s.list {
		b.WriteString(f.Code + " [" + f.Class.String() + "] " + f.At.Path + ": " + f.Say(unit.DefaultStyle(unit.Inches)) + " | " + f.SayMend(unit.DefaultStyle(unit.Inches)) + "\n")
	}
	return b.String()
}

// wantSaid checks that a finding of the code is there and that its words hold all the parts.
func (s solved) wantSaid(code string, parts ...string) {
	s.t.Helper()
	for _, f := range s.list {
		words := f.Say(unit.DefaultStyle(unit.Inches)) + " | " + f.SayMend(unit.DefaultStyle(unit.Inches))
		if f.Code == code && holdsAll(words, parts) {
			return
		}
	}
	s.t.Errorf("no finding %s with %q; said:\n%s", code, parts, s.said())
}

func holdsAll(words string, parts []string) bool {
	for _, p := range parts {
		if !strings.Contains(words, p) {
			return false
		}
	}
	return true
}

func (s solved) wantNot(code string) {
	s.t.Helper()
	for _, f := range s.list {
		if f.Code == code {
			s.t.Errorf("did not want %s: %s", code, f.Say(unit.DefaultStyle(unit.Inches)))
		}
	}
}

// wantLength checks an exact length against inches.
func wantLength(t *testing.T, what string, got unit.Length, want string) {
	t.Helper()
	w, err := unit.Parse(want, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	if got != w {
		t.Errorf("%s: got %s, want %s", what, unit.DefaultStyle(unit.Inches).Exact(got), want)
	}
}

// spanAt returns where a horizontal line at y crosses the region.
func spanAt(t *testing.T, g geom.Region, y unit.Length) (lo, hi unit.Length) {
	t.Helper()
	s := g.Spans(geom.Horizontal, y)
	if len(s) == 0 {
		t.Fatalf("nothing at height %d", y)
	}
	return s[0].Lo, s[len(s)-1].Hi
}
