package export_test

import (
	"bytes"
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"dryfit/internal/export"
	"dryfit/internal/plan"
)

// table reads pieces.csv back with the standard library's reader.
func table(t *testing.T, p plan.Plan) [][]string {
	t.Helper()
	rows, err := csv.NewReader(bytes.NewReader(export.PiecesCSV(p))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// cell finds a column by its head.
func cell(t *testing.T, rows [][]string, row int, head string) string {
	t.Helper()
	for i, h := range rows[0] {
		if h == head {
			return rows[row][i]
		}
	}
	t.Fatalf("no column %q among %q", head, rows[0])
	return ""
}

// Every piece has one row, whole ones too, and cut ones say which tile they come from.
func TestEveryPieceHasARow(t *testing.T) {
	for _, r := range demos() {
		p := r.plan
		rows := table(t, p)
		at := map[string]int{}
		for i := range rows[1:] {
			at[cell(t, rows, i+1, "piece")]++
		}
		pieces := 0
		for _, f := range p.Tiling.Faces {
			for _, z := range f.Fields {
				for _, c := range z.Chosen().Pieces {
					pieces++
					if at[f.Mark+" "+c.Address] != 1 {
						t.Errorf("%s: %s %s has %d rows", r.file, f.Mark, c.Address, at[f.Mark+" "+c.Address])
					}
				}
			}
		}
		if len(rows)-1 != pieces {
			t.Errorf("%s: %d rows for %d pieces", r.file, len(rows)-1, pieces)
		}
		for i := range rows[1:] {
			if cell(t, rows, i+1, "cut to") != "" && cell(t, rows, i+1, "from tile") == "" {
				t.Errorf("%s: row %d is cut from no tile: %q", r.file, i+1, rows[i+1])
			}
		}
	}
}

// RFC 4180, section 2: lines end in CR LF, every record has as many fields as the head; and the text is UTF-8.
func TestCSVForm(t *testing.T) {
	for _, r := range demos() {
		text := export.PiecesCSV(r.plan)
		if !utf8.Valid(text) {
			t.Errorf("%s: not UTF-8", r.file)
		}
		if lf, crlf := bytes.Count(text, []byte("\n")), bytes.Count(text, []byte("\r\n")); lf != crlf || !bytes.HasSuffix(text, []byte("\r\n")) {
			t.Errorf("%s: %d line feeds, %d of them after a carriage return", r.file, lf, crlf)
		}
	}
}

// A small room whose names begin like formulas. Its wall is 900 wide at the studs (900, 1200 and 1500 make a right angle); 10 of board on each
// side wall leave 880, soft joints of 4 leave 872: a whole tile of 300, two joints of 2, and 568 in the cuts at both ends.
const formulas = `dryfit: 1
name: by hand
units: mm
survey:
  corners: A B C D
  tape: {A-B: 900, B-C: 1200, C-D: 900, D-A: 1200, A-C: 1500, B-D: 1500}
  level line: {down: {A: 600, B: 600, C: 600, D: 600}, up: {A: 600, B: 600, C: 600, D: 600}}
walls:
  "=1+1": {along: A-B, build-up: [board 10, bed 5, tile]}
  "-b": {along: B-C, build-up: [board 10]}
  "@c": {along: C-D, build-up: [board 10]}
  d: {along: D-A, build-up: [board 10]}
floor: {build-up: [board 10]}
setting: {soft joint: 4}
tiles:
  "+tile": {size: 300 x 200 x 8, kind: ceramic, joint: 2}
lay:
  "=1+1": {look for: even cuts, fields: {"@main": {tile: "+tile", bond: stack, joint: 2}}}
`

// The second course, by hand: each end keeps its factory side toward the middle, and is sawn to the millimetre below.
func TestRowsByHand(t *testing.T) {
	rows := table(t, planned(t, "room.yaml", []byte(formulas)))
	sum, sides := 0.0, map[string]string{"2-1": "right", "2-3": "left"}
	for i := range rows[1:] {
		side, ok := sides[cell(t, rows, i+1, "course")+"-"+cell(t, rows, i+1, "column")]
		if !ok {
			continue
		}
		exact, err := strconv.ParseFloat(cell(t, rows, i+1, "exact (mm)"), 64)
		if err != nil {
			t.Fatal(err)
		}
		sum += exact
		saw := strconv.Itoa(int(math.Floor(exact)))
		for head, want := range map[string]string{"shape": "straight", "cut to": "keep " + saw + " from " + side, "saw settings (mm)": saw} {
			if got := cell(t, rows, i+1, head); got != want {
				t.Errorf("%s is %q, want %q", head, got, want)
			}
		}
	}
	if sum != 568 {
		t.Errorf("the ends are %v together, want 568", sum)
	}
}

// A spreadsheet takes a cell that begins with = + - @ for a formula; what a person wrote must stay text.
func TestFormulasStayText(t *testing.T) {
	p := planned(t, "room.yaml", []byte(formulas))
	rows := table(t, p)
	if len(rows) < 2 {
		for _, f := range p.Findings {
			t.Log(f.At.Line, f.Say(p.Style))
		}
		t.Fatal("no piece")
	}
	for head, want := range map[string]string{"face": "'=1+1", "field": "'@main", "tile": "'+tile"} {
		if got := cell(t, rows, 1, head); got != want {
			t.Errorf("%s is %q, want %q", head, got, want)
		}
	}
	for i, row := range rows[1:] {
		for j, c := range row {
			if c != "" && strings.ContainsRune("=+-@", rune(c[0])) {
				t.Errorf("row %d, %s: %q", i+1, rows[0][j], c)
			}
		}
	}
}
