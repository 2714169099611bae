package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Column is one column of a table.
type Column struct {
	Head  string
	Align draw.Anchor
	Width draw.Um // 0: what its cells need, as far as there is room
}

const cellSide = 1_500 // clear on either side of a cell's text

// widths shares the room: first what columns ask for; then each column without a wish gets what its longest cell
// needs; where that is too much, at least its longest word and a part of the rest; where even the words are too
// much, words are broken in proportion.
func (t Table) widths(room draw.Um) []draw.Um {
	least, want := make([]draw.Um, len(t.Columns)), make([]draw.Um, len(t.Columns))
	var sumLeast, sumWant draw.Um
	for i, c := range t.Columns {
		if c.Width > 0 {
			room -= c.Width
			continue
		}
		least[i], want[i] = t.needs(i)
		sumLeast, sumWant = sumLeast+least[i], sumWant+want[i]
	}
	out := make([]draw.Um, len(t.Columns))
	for i, c := range t.Columns {
		switch {
		case c.Width > 0:
			out[i] = c.Width
		case sumWant <= room:
			out[i] = want[i]
		case sumLeast <= room:
			out[i] = least[i] + share(room-sumLeast, want[i]-least[i], sumWant-sumLeast)
		default:
			out[i] = max(share(max(room, 0), least[i], sumLeast), 3*cellSide)
		}
	}
	return out
}

func share(room, part, whole draw.Um) draw.Um {
	if whole == 0 {
		return 0
	}
	return room * part / whole
}

// needs is the width of a column's longest word and of its longest cell.
func (t Table) needs(i int) (least, want draw.Um) {
	see := func(text string, bold bool) {
		least = max(least, typeset.Widest(text, sized(t.Size), bold)+2*cellSide)
		want = max(want, typeset.Width(text, sized(t.Size), bold)+2*cellSide)
	}
	see(t.Columns[i].Head, true)
	for _, r := range t.Rows {
		if i < len(r.Cells) {
			see(r.Cells[i], r.Bold)
		}
	}
	return least, want
}
