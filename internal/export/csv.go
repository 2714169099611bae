package export

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strings"

	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/tiling"
	cutpiece "dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// column is one column of pieces.csv.
type column struct {
	head string
	cell func(rowOf) string
}

// rowOf is what one row is about.
type rowOf struct {
	plan  plan.Plan
	face  tiling.Face
	field tiling.Field
	piece cutpiece.Piece
	from  int // the tile that it is cut from; 0: none
}

// columns in their order. Text that a person may have written is guarded; numbers are not.
func columns() []column {
	return []column{
		{"face", func(r rowOf) string { return guarded(r.face.Name) }},
		{"field", func(r rowOf) string { return guarded(r.field.Name) }},
		{"piece", func(r rowOf) string { return guarded(pieceID(r.face.Mark, r.piece.Address)) }},
		{"course", func(r rowOf) string { return fmt.Sprint(r.piece.Course) }},
		{"column", func(r rowOf) string { return fmt.Sprint(r.piece.Column) }},
		{"tile", func(r rowOf) string { return guarded(r.tile()) }},
		{"shape", func(r rowOf) string { return report.PieceKind(r.piece) }},
		{"cut to", func(r rowOf) string { return guarded(report.CutWords(r.plan.Style, r.piece.Cut)) }},
		{"saw settings (mm)", func(r rowOf) string { return r.settings(sawn) }},
		{"exact (mm)", func(r rowOf) string { return r.settings(exact) }},
		{"factory edges to keep", func(r rowOf) string { return report.KeptWords(r.piece) }},
		{"holes", func(r rowOf) string { return guarded(report.HolesWords(r.plan.Style, r.piece.Holes)) }},
		{"neck (mm)", func(r rowOf) string { return orEmpty(r.piece.Cut.Neck) }},
		{"wall may differ by (mm)", func(r rowOf) string { return orEmpty(r.piece.Cut.Tolerance) }},
		{"measure first", func(r rowOf) string { return yes(r.piece.Cut.MeasureFirst) }},
		{"from tile", func(r rowOf) string { return r.source() }},
	}
}

// PiecesCSV returns pieces.csv: one row for each piece, whole ones too, in the order of setting. It is UTF-8 after RFC 4180.
func PiecesCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	all := columns()
	write(w, all, func(c column) string { return c.head })
	from := tilesOf(p)
	for _, f := range p.Tiling.Faces {
		fields := fieldsOf(f)
		for _, c := range report.InSettingOrder(f) {
			r := rowOf{p, f, fields[c.Address], c, from[pieceID(f.Mark, c.Address)]}
			write(w, all, func(c column) string { return c.cell(r) })
		}
	}
	w.Flush()
	return b.Bytes()
}

func write(w *csv.Writer, all []column, cell func(column) string) {
	row := make([]string, len(all))
	for i, c := range all {
		row[i] = cell(c)
	}
	if err := w.Write(row); err != nil {
		panic(err) // a buffer in memory takes everything
	}
}

// tilesOf maps a cut piece's id to the number of the tile that it comes out of.
func tilesOf(p plan.Plan) map[string]int {
	out := map[string]int{}
	for _, g := range p.Tiling.Goods {
		for _, s := range g.From {
			out[s.Piece] = s.Tile
		}
	}
	return out
}

// fieldsOf maps a piece's address to its field.
func fieldsOf(f tiling.Face) map[string]tiling.Field {
	out := map[string]tiling.Field{}
	for _, z := range f.Fields {
		for _, c := range z.Chosen().Pieces {
			out[c.Address] = z
		}
	}
	return out
}

func (r rowOf) tile() string {
	if r.piece.Size < len(r.field.Sizes) && r.field.Sizes[r.piece.Size].Name != "" {
		return r.field.Tile + ", " + r.field.Sizes[r.piece.Size].Name
	}
	return r.field.Tile
}

func (r rowOf) source() string {
	if r.from == 0 {
		return ""
	}
	return fmt.Sprint(r.from)
}

func sawn(s cutpiece.Step) (from, to unit.Length)  { return s.SawFrom, s.SawTo }
func exact(s cutpiece.Step) (from, to unit.Length) { return s.From, s.To }

// settings are the bare numbers of a piece's cuts.
func (r rowOf) settings(of func(cutpiece.Step) (from, to unit.Length)) string {
	var out []string
	for _, s := range r.piece.Cut.Steps {
		from, to := of(s)
		if from == to {
			out = append(out, from.JSON())
			continue
		}
		out = append(out, from.JSON()+" to "+to.JSON())
	}
	return strings.Join(out, "; ")
}

func orEmpty(l unit.Length) string {
	if l == 0 {
		return ""
	}
	return l.JSON()
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return ""
}

// guarded puts an apostrophe before text that a spreadsheet would take for a formula.
func guarded(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
