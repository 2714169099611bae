package export_test

import (
	"context"
	"encoding/json"
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

// The same document gives the same bytes, and they are JSON.
func TestSameBytes(t *testing.T) {
	for _, r := range demo.Rooms() {
		a, b := export.JSON(planned(t, r.File, r.Text)), export.JSON(planned(t, r.File, r.Text))
		if string(a) != string(b) {
			t.Errorf("%s: two plans of one document differ", r.File)
		}
		if !json.Valid(a) {
			t.Errorf("%s: not JSON", r.File)
		}
	}
}
