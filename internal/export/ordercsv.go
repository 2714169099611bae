package export

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strings"

	"dryfit/internal/order"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// OrderCSV returns order.csv: one row for each pack to buy and one for each thing of which no pack is known, then the sums. It is
// UTF-8 after RFC 4180; numbers are plain decimals.
func OrderCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	for _, row := range orderRows(p) {
		cells := make([]string, len(row))
		for i, c := range row {
			cells[i] = c.plain()
		}
		if err := w.Write(cells); err != nil {
			panic(err) // a buffer in memory takes everything
		}
	}
	w.Flush()
	return b.Bytes()
}

// cell is one cell of a table for other programs: a number, or text.
type cell struct {
	text   string
	number bool
}

// plain writes a cell for CSV, where text must not look like a formula.
func (c cell) plain() string {
	if c.number {
		return c.text
	}
	return guarded(c.text)
}

func said(s string) cell   { return cell{text: s} }
func number(s string) cell { return cell{text: s, number: true} }

// orderHeads are the columns of the order; the currency stands in the heads of sums.
func orderHeads(p plan.Plan) []string {
	in := ""
	if p.Order.Currency != "" {
		in = " (" + string(p.Order.Currency) + ")"
	}
	return []string{"what", "good", "needed", "in", "pack", "packs", "each" + in, "sum" + in, "from", "ordered on", "order by", "needed by"}
}

func orderRows(p plan.Plan) [][]cell {
	var head []cell
	for _, h := range orderHeads(p) {
		head = append(head, said(h))
	}
	rows := [][]cell{head}
	for _, l := range p.Order.Lines {
		rows = append(rows, lineRows(p, l)...)
	}
	for _, r := range report.Cost(p).Rows {
		sum := make([]cell, len(head))
		sum[0], sum[7] = said(r[0]), number(r[1])
		rows = append(rows, sum)
	}
	return rows
}

// lineRows are the packs of one line. What is needed stands in the first.
func lineRows(p plan.Plan, l order.Line) [][]cell {
	need, in := measured(p.Style, l.Need)
	if !l.Known {
		need, in = said("not reckoned"), ""
	}
	row := []cell{said(l.What), said(l.Good), need, said(in), said(""), said(""), said(""), said(""), said(l.Supplier), said(l.OrderedOn), said(l.OrderBy), said(l.NeedBy)}
	var rows [][]cell
	for i, k := range l.Packs {
		r := append([]cell(nil), row...)
		if i > 0 {
			r[2], r[3] = said(""), said("")
		}
		r[4], r[5] = said(k.Name), number(fmt.Sprint(k.Count))
		if k.Priced {
			r[6], r[7] = number(p.Order.Currency.Say(k.Price)), number(p.Order.Currency.Say(k.Sum))
		}
		rows = append(rows, r)
	}
	if len(rows) == 0 {
		rows = append(rows, row)
	}
	return rows
}

// measured divides an amount as a reader sees it into its number and its unit.
func measured(s unit.Style, q unit.Quantity) (cell, string) {
	n, u, _ := strings.Cut(s.Say(q), " ")
	if q.Of == unit.ByCount {
		u = "pieces"
	}
	return number(n), u
}
