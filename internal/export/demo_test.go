package export_test

import (
	"bytes"
	"context"
	"encoding/json"
	"sync"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/export"
	"dryfit/internal/plan"
)

// planned makes the plan of a document's text.
func planned(t testing.TB, file string, text []byte) plan.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), file, text, plan.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// demos are the built-in rooms with their plans, made once for all tests.
var demos = sync.OnceValue(func() (out []demoPlan) {
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			panic(err)
		}
		out = append(out, demoPlan{r.File, p, export.JSON(p)})
	}
	return out
})

type demoPlan struct {
	file string
	plan plan.Plan
	json []byte
}

// The same document gives the same bytes, and they are JSON.
func TestSameBytes(t *testing.T) {
	for i, r := range demo.Rooms() {
		a, b := demos()[i], planned(t, r.File, r.Text)
		if !bytes.Equal(a.json, export.JSON(b)) || !bytes.Equal(export.PiecesCSV(a.plan), export.PiecesCSV(b)) {
			t.Errorf("%s: two plans of one document differ", r.File)
		}
		if !json.Valid(a.json) {
			t.Errorf("%s: not JSON", r.File)
		}
	}
}
