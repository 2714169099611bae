package parts

import (
	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// settle moves room from column to column as long as that makes the table lower, in ever smaller steps. How many lines a cell takes is
// estimated from its width: near enough to share room by.
func (t Table) settle(wide []draw.Um, all []need) {
	cells := t.cellWidths()
	low := height(cells, wide)
	for step := draw.Um(16 * draw.MM); step >= draw.MM; step /= 2 {
		for moved := true; moved; {
			moved = false
			for from := range wide {
				for to := range wide {
					if from == to || t.Columns[from].Width > 0 || t.Columns[to].Width > 0 || wide[from]-step < all[from].word {
						continue
					}
					wide[from], wide[to] = wide[from]-step, wide[to]+step
					if h := height(cells, wide); h < low {
						low, moved = h, true
						continue
					}
					wide[from], wide[to] = wide[from]+step, wide[to]-step
				}
			}
		}
	}
}

// weighed is how many rows are looked at: what suits so many suits the rest.
const weighed = 120

// cellWidths are the widths of the cells in one line, row by row, the head first.
func (t Table) cellWidths() [][]draw.Um {
	rows := [][]draw.Um{make([]draw.Um, len(t.Columns))}
	for i, c := range t.Columns {
		rows[0][i] = typeset.Width(c.Head, sized(t.Size), true)
	}
	for _, r := range t.Rows[:min(len(t.Rows), weighed)] {
		row := make([]draw.Um, len(t.Columns))
		for i := range min(len(row), len(r.Cells)) {
			row[i] = typeset.Width(r.Cells[i], sized(t.Size), r.Bold)
		}
		rows = append(rows, row)
	}
	return rows
}

// height counts the lines of all rows.
func height(rows [][]draw.Um, wide []draw.Um) int {
	sum := 0
	for _, row := range rows {
		most := draw.Um(1)
		for i, w := range row {
			if inside := wide[i] - 2*cellSide; inside > 0 {
				most = max(most, (w+inside-1)/inside)
			}
		}
		sum += int(most)
	}
	return sum
}
