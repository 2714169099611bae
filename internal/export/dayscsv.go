package export

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strings"

	"dryfit/internal/plan"
	"dryfit/internal/schedule"
)

// DaysCSV returns days.csv: one row for each session of a job, by start, and for each wait. It is UTF-8 after RFC 4180.
func DaysCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	row := func(cells ...string) {
		if err := w.Write(cells); err != nil {
			panic(err) // a buffer in memory takes everything
		}
	}
	row("what", "job", "from", "to", "minutes", "who", "place", "state", "can wait until", "source")
	for _, t := range p.Days.Tasks {
		for _, s := range t.Sessions {
			row("work", guarded(t.Name), s.From.String(), s.To.String(), fmt.Sprint(int64(s.To.Since(s.From))), guarded(strings.Join(s.Who, ", ")), placeOfWork(t), t.State.String(), t.Latest.String(), guarded(t.At.Path))
		}
	}
	for _, x := range p.Days.Waits {
		row("wait", guarded(p.Days.Tasks[x.After].Name+": "+x.What), x.From.String(), x.To.String(), fmt.Sprint(int64(x.To.Since(x.From))), "", "", "", "", guarded(x.Source))
	}
	w.Flush()
	return b.Bytes()
}

func placeOfWork(t schedule.Task) string {
	if t.Shop {
		return "shop"
	}
	return "room"
}
