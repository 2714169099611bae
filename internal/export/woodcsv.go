package export

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strings"

	"dryfit/internal/part"
	"dryfit/internal/plan"
	"dryfit/internal/report"
)

// WoodCSV returns wood.csv: one row for each part that is sawn from stock, those that are alike once with their count. It is UTF-8 after
// RFC 4180; sizes are millimetres.
func WoodCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	rows := [][]string{{"for", "part", "count", "length (mm)", "width (mm)", "thick (mm)", "saw longer by (mm)", "saw wider by (mm)", "stock", "grain", "banded", "work"}}
	for _, q := range p.Wood.Parts() {
		rows = append(rows, woodRow(p, q))
	}
	if err := w.WriteAll(rows); err != nil {
		panic(err) // a buffer in memory takes everything
	}
	return b.Bytes()
}

func woodRow(p plan.Plan, q part.Part) []string {
	var banded []string
	for _, e := range q.Bands {
		banded = append(banded, e.On.String())
	}
	return []string{guarded(q.For), guarded(q.Name), fmt.Sprint(q.Count), q.Size.Length.JSON(), q.Size.Width.JSON(), q.Size.Thick.JSON(), q.Over.Length.JSON(), q.Over.Width.JSON(),
		guarded(q.Stock), q.Grain.String(), strings.Join(banded, ", "), guarded(strings.Join(report.PartWork(p, q), "; "))}
}
