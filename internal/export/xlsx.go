package export

import (
	"bytes"

	"github.com/xuri/excelize/v2"

	"dryfit/internal/plan"
	"dryfit/internal/report"
)

// OrderXLSX returns order.xlsx: the order with its sums, what it was reckoned from, setting face by face, what is compared.
// Numbers are numbers, in full; text is text, whatever it begins with. Nothing of this machine or its clock is in it.
func OrderXLSX(p plan.Plan) ([]byte, error) {
	f := excelize.NewFile()
	defer f.Close()
	book := &workbook{file: f}
	book.sheet("Order", orderRows(p))
	for _, t := range []report.Table{report.Reckoned(p), report.Bedding(p), report.Alternatives(p), report.Trips(p)} {
		book.sheet(short(t.Title), tableRows(t))
	}
	if book.err == nil {
		book.err = f.DeleteSheet("Sheet1")
	}
	if book.err == nil {
		book.err = f.SetDocProps(&excelize.DocProperties{Title: p.Name, Subject: "revision " + p.Revision, Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"})
	}
	var out bytes.Buffer
	if book.err == nil {
		_, book.err = f.WriteTo(&out)
	}
	return out.Bytes(), book.err
}

// workbook writes sheets until something fails.
type workbook struct {
	file *excelize.File
	err  error
}

func (b *workbook) sheet(name string, rows [][]cell) {
	if b.err != nil {
		return
	}
	if _, b.err = b.file.NewSheet(name); b.err != nil {
		return
	}
	for i, row := range rows {
		for j, c := range row {
			b.cell(name, j+1, i+1, c)
		}
	}
	if b.err == nil {
		b.err = b.file.SetPanes(name, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"})
	}
	if b.err == nil && len(rows) > 0 {
		b.widths(name, rows)
	}
}

// cell writes a number as it stands, without a detour over binary fractions, and text as text.
func (b *workbook) cell(sheet string, col, row int, c cell) {
	if b.err != nil || c.text == "" {
		return
	}
	at, err := excelize.CoordinatesToCellName(col, row)
	switch {
	case err != nil:
		b.err = err
	case c.number:
		b.err = b.file.SetCellDefault(sheet, at, c.text)
	default:
		b.err = b.file.SetCellStr(sheet, at, c.text)
	}
}

// widths makes columns about as wide as their words, up to what a screen takes.
func (b *workbook) widths(sheet string, rows [][]cell) {
	const least, most = 8, 60
	for j := range rows[0] {
		wide := least
		for _, r := range rows {
			if j < len(r) {
				wide = max(wide, min(most, len([]rune(r[j].text))+2))
			}
		}
		col, err := excelize.ColumnNumberToName(j + 1)
		if b.err == nil && err == nil {
			b.err = b.file.SetColWidth(sheet, col, col, float64(wide))
		}
	}
}

// tableRows are the words of a table of the report.
func tableRows(t report.Table) [][]cell {
	var head []cell
	for _, c := range t.Columns {
		head = append(head, said(c.Head))
	}
	rows := [][]cell{head}
	for _, r := range t.Rows {
		var row []cell
		for _, x := range r {
			row = append(row, said(x))
		}
		rows = append(rows, row)
	}
	return rows
}

// short is a sheet's name: spreadsheets take no more than 31 letters.
func short(title string) string {
	r := []rune(title)
	return string(r[:min(len(r), 31)])
}
