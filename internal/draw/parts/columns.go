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

// widths shares the room: first what columns ask for; then each column without a wish gets what its head and its longest
// cell need in one line; where that is too much, heads go over two lines or more; where that is too much, cells do, so
// that the table stays low, and each column gets at least its longest word; where even the words are too much, words are broken in proportion.
func (t Table) widths(room draw.Um) []draw.Um {
	all, sum := make([]need, len(t.Columns)), need{}
	for i, c := range t.Columns {
		if c.Width > 0 {
			room -= c.Width
			continue
		}
		all[i] = t.needs(i)
		sum = need{sum.word + all[i].word, sum.cell + all[i].cell, sum.line + all[i].line}
	}
	out := make([]draw.Um, len(t.Columns))
	for i, c := range t.Columns {
		n := all[i]
		switch {
		case c.Width > 0:
			out[i] = c.Width
		case sum.line <= room:
			out[i] = n.line
		case sum.cell <= room:
			out[i] = n.cell + share(room-sum.cell, n.line-n.cell, sum.line-sum.cell)
		case sum.word <= room:
			out[i] = n.word + share(room-sum.word, n.cell-n.word, sum.cell-sum.word)
		default:
			out[i] = max(share(max(room, 0), n.word, sum.word), 3*cellSide)
		}
	}
	if sum.word <= room && room < sum.cell {
		t.settle(out, all)
	}
	return out
}

// need is how wide a column must be: to break no word; to break no cell, only its head; to break nothing.
type need struct{ word, cell, line draw.Um }

func share(room, part, whole draw.Um) draw.Um {
	if whole == 0 {
		return 0
	}
	return room * part / whole
}

func (t Table) needs(i int) need {
	size, head := sized(t.Size), t.Columns[i].Head
	n := need{word: typeset.Widest(head, size, true)}
	n.cell, n.line = n.word, typeset.Width(head, size, true)
	for _, r := range t.Rows {
		if i < len(r.Cells) {
			wide := typeset.Width(r.Cells[i], size, r.Bold)
			n = need{max(n.word, typeset.Widest(r.Cells[i], size, r.Bold)), max(n.cell, wide), max(n.line, wide)}
		}
	}
	return need{n.word + 2*cellSide, n.cell + 2*cellSide, n.line + 2*cellSide}
}
