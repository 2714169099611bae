package export

import (
	"bytes"
	"encoding/csv"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// ChecksCSV returns checks.csv: one row for each clearance and connection, the trades against each other after them. It is UTF-8 after RFC 4180;
// lengths are exact decimals of millimetres.
func ChecksCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	put := func(row ...cell) {
		cells := make([]string, len(row))
		for i, c := range row {
			cells[i] = c.plain()
		}
		if err := w.Write(cells); err != nil {
			panic(err) // a buffer in memory takes everything
		}
	}
	put(said("group"), said("check"), said("state"), said("value (mm)"), said("side"), said("limit (mm)"), said("margin (mm)"), said("asked by"), said("missing"), said("id"))
	for _, k := range p.Fit.Checks {
		put(checkRow(p, k)...)
	}
	for _, m := range p.Clash.Meetings {
		state := fit.Fits
		if m.Misses {
			state = fit.Misses
		}
		what := (diag.Finding{Text: m.What, Values: []diag.Value{diag.T(m.One), diag.T(m.Other)}}).Say(p.Style)
		put(said("meeting"), said(what), said(state.String()), number(m.Apart.JSON()), said("at least"), number(m.Need.JSON()), number((m.Apart - m.Need).JSON()), said(m.Rule), said(""), said(m.ID))
	}
	w.Flush()
	return b.Bytes()
}

func checkRow(p plan.Plan, k fit.Check) []cell {
	value, side, limit, margin := said(""), said(""), said(""), said("")
	switch {
	case k.State == fit.NotChecked:
	case k.Length && k.State == fit.Told:
		value = number(unit.Length(k.Value.Num).JSON())
	case k.Length:
		value, limit, margin = number(unit.Length(k.Value.Num).JSON()), number(unit.Length(k.Limit.Num).JSON()), number(k.Margin.JSON())
		side = said("at least")
		if k.Most {
			side = said("at most")
		}
	default:
		value, limit = said(k.Value.Say(p.Style)), said(k.Limit.Say(p.Style))
	}
	var missing []string
	for _, m := range k.Missing {
		missing = append(missing, fit.Words(m))
	}
	what := (diag.Finding{Text: k.What, Values: k.Values}).Say(p.Style)
	return []cell{said(k.Group), said(what), said(k.State.String()), value, side, limit, margin, said(k.Cite), said(strings.Join(missing, ", ")), said(k.ID)}
}
