package plan

import (
	"context"
	"os"
	"reflect"
	"slices"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/text"
)

// A trial reads of a changed value what a plan of the changed text reads.
func TestTrialIsThePlan(t *testing.T) {
	src, err := os.ReadFile("../mend/testdata/millrace.yaml")
	if err != nil {
		t.Fatal(err)
	}
	tried, moved := tryValues(t, "millrace.yaml", src, 2)
	if tried < 15 || moved < 8 {
		t.Errorf("%d values were tried, %d of them moved a check", tried, moved)
	}
	for _, r := range demo.Rooms() {
		tryValues(t, r.File, r.Text, 17)
	}
}

// tryValues changes every nth value that can be moved, one by one, as a trial and as a text.
func tryValues(t *testing.T, file string, src []byte, nth int) (tried, moved int) {
	t.Helper()
	ctx := context.Background()
	base, _ := Make(ctx, file, src, Options{UpTo: UpToFit})
	trial := NewTrial(document.NewDraft(file, src), base)
	tree, _ := text.Parse(src)
	seen := 0
	values(tree, nil, func(path []string, typed string) {
		to, ok := document.Shift(typed, base.Style.Mark, base.Document.Units)
		if seen++; !ok || seen%nth != 0 {
			return
		}
		ops := []document.Op{{Do: text.Set, Path: path, Value: to}}
		edited, found := document.Apply(src, ops)
		if found.Stops() {
			return
		}
		tried++
		want, _ := Make(ctx, file, edited, Options{UpTo: UpToFit})
		got, ok, err := trial.With(ctx, ops)
		if !ok || err != nil || !slices.EqualFunc(got.Fit.Checks, want.Fit.Checks, alike) {
			t.Errorf("%s: %v = %s: the trial reads other checks", file, path, to)
		}
		if !slices.EqualFunc(base.Fit.Checks, want.Fit.Checks, alike) {
			moved++
		}
		if !reachesRoom(ops) && !reflect.DeepEqual(want.Room, base.Room) {
			t.Errorf("%s: %v changes the solved room, and is said to lie beside it", file, path)
		}
	})
	return tried, moved
}

func alike(a, b fit.Check) bool {
	return a.ID == b.ID && a.State == b.State && a.Value == b.Value && a.Limit == b.Limit && a.Margin == b.Margin
}

func values(n *text.Node, path []string, visit func([]string, string)) {
	for _, e := range n.Entries {
		values(e.Value, append(slices.Clone(path), e.Key), visit)
	}
	for i, c := range n.Items {
		values(c, append(slices.Clone(path), text.Item(i)), visit)
	}
	if n.Kind == text.Scalar {
		visit(path, n.Text)
	}
}

// What a trial can not set is told, and a canceled one ends with an error.
func TestTrialRefuses(t *testing.T) {
	r := demo.Rooms()[0]
	base, _ := Make(context.Background(), r.File, r.Text, Options{UpTo: UpToFit})
	trial := NewTrial(document.NewDraft(r.File, r.Text), base)
	if _, ok, _ := trial.With(context.Background(), []document.Op{{Path: []string{"no such"}, Value: "1"}}); ok {
		t.Error("there is no such value")
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if _, _, err := trial.With(ctx, nil); err == nil {
		t.Error("a canceled trial ends with an error")
	}
}
