package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"dryfit/internal/plan"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// box is an empty box to tick or to write a reading into.
const box = "□"

// Worked are the pieces of a face that are cut or drilled, in the order of setting, and how many go up as they are.
func Worked(f tiling.Face) (worked []piece.Piece, plain int) {
	for _, c := range InSettingOrder(f) {
		if c.Uncut() && len(c.Holes) == 0 {
			plain++
			continue
		}
		worked = append(worked, c)
	}
	return worked, plain
}

// InSettingOrder are all pieces of a face as they are set; any that the order leaves out follow.
func InSettingOrder(f tiling.Face) []piece.Piece {
	at := map[string]int{}
	for i, a := range f.Setting {
		at[a] = i - len(f.Setting)
	}
	var out []piece.Piece
	for _, z := range f.Fields {
		out = append(out, z.Chosen().Pieces...)
	}
	slices.SortStableFunc(out, func(a, b piece.Piece) int { return at[a.Address] - at[b.Address] })
	return out
}

// Pieces lists what is cut or drilled on a face, in the order of setting.
func Pieces(p plan.Plan, f tiling.Face) Table {
	u := " (" + p.Style.System.String() + ")"
	t := Table{Title: "Pieces in the order of setting", Empty: "Nothing is cut or drilled on this face.",
		Columns: text("Piece", "Tile", "Shape", "Cut to"+u, "Exact"+u, "Factory edges to keep", "Holes"+u, "Neck", "Wall ±", "Measured first", "Set")}
	worked, _ := Worked(f)
	tiles := tilesOf(f)
	for _, c := range worked {
		t.Rows = append(t.Rows, []string{c.Address, tiles[c.Address], PieceKind(c), CutWords(p.Style, c.Cut), ExactWords(p.Style, c.Cut), KeptWords(c),
			HolesWords(p.Style, c.Holes), neck(p.Style, c.Cut), ToleranceWords(p.Style, c.Cut), first(c.Cut), box})
	}
	return t.without("Tile", "Holes"+u, "Neck")
}

// tilesOf names the tile of each piece, by address; nothing where the face has one tile alone.
func tilesOf(f tiling.Face) map[string]string {
	out := map[string]string{}
	several := slices.ContainsFunc(f.Fields, func(z tiling.Field) bool { return z.Tile != f.Fields[0].Tile })
	for _, z := range f.Fields {
		for _, c := range z.Chosen().Pieces {
			if several {
				out[c.Address] = z.Tile
			}
		}
	}
	return out
}

// without leaves out those of the named columns in which no row has a word.
func (t Table) without(heads ...string) Table {
	for _, h := range heads {
		i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Head == h })
		if slices.ContainsFunc(t.Rows, func(r []string) bool { return r[i] != "" }) {
			continue
		}
		t.Columns = slices.Delete(t.Columns, i, i+1)
		for k := range t.Rows {
			t.Rows[k] = slices.Delete(t.Rows[k], i, i+1)
		}
	}
	return t
}

func neck(s unit.Style, c piece.Cut) string {
	if c.Neck == 0 {
		return ""
	}
	return s.Bare(c.Neck)
}

func first(c piece.Cut) string {
	if !c.MeasureFirst {
		return ""
	}
	return box + " ______"
}

// WholeWords says how many tiles of a face go up as they are.
func WholeWords(f tiling.Face) string {
	worked, plain := Worked(f)
	return fmt.Sprintf("%s whole and undrilled, so without a row here; %s below", Count(plain, "tile goes up", "tiles go up"), Count(len(worked), "piece", "pieces"))
}

// sawn is one setting of the saw with the pieces that it makes.
type sawn struct {
	turn   int // which of a piece's settings it is
	field  string
	step   piece.Step
	pieces []string
}

// Saw lists the cuts of a face in the order of saw settings: set once, cut every piece that takes it.
func Saw(p plan.Plan, f tiling.Face) Table {
	u := " (" + p.Style.System.String() + ")"
	t := Table{Title: "Cuts in the order of saw settings", Empty: "Nothing is cut on this face.",
		Columns: numbers(text("Tile", "Setting"+u, "Pieces", "Count", "Cut"), 3)}
	for _, s := range sawSettings(f) {
		which := strings.Join(s.pieces, ", ")
		if s.turn > 0 {
			which += fmt.Sprintf(" (their cut %d)", s.turn+1)
		}
		t.Rows = append(t.Rows, []string{s.field, StepWords(p.Style, s.step), which, fmt.Sprint(len(s.pieces)), box})
	}
	return t
}

func sawSettings(f tiling.Face) []*sawn {
	var out []*sawn
	for _, z := range f.Fields {
		for _, c := range z.Chosen().Pieces {
			for i, s := range c.Cut.Steps {
				e := settingOf(&out, z.Tile, i, s)
				e.pieces = append(e.pieces, c.Address)
			}
		}
	}
	slices.SortStableFunc(out, func(a, b *sawn) int {
		return cmp.Or(a.turn-b.turn, strings.Compare(a.field, b.field), strings.Compare(a.step.Keep, b.step.Keep),
			cmp.Compare(b.step.SawFrom, a.step.SawFrom), cmp.Compare(b.step.SawTo, a.step.SawTo))
	})
	return out
}

func settingOf(all *[]*sawn, tile string, turn int, s piece.Step) *sawn {
	for _, e := range *all {
		if e.field == tile && e.turn == turn && e.step.Keep == s.Keep && e.step.SawFrom == s.SawFrom && e.step.SawTo == s.SawTo &&
			e.step.Along == s.Along && e.step.Chips == s.Chips {
			return e
		}
	}
	e := &sawn{turn: turn, field: tile, step: s}
	*all = append(*all, e)
	return e
}
