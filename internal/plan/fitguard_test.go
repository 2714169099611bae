package plan_test

import (
	"context"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/text"
)

// Every number of the built-in rooms is made unknown, and then taken out, in turn: no check that used it may say that it fits. Readings of the tape are
// left out, of which there is one more than is needed, and what is no fact of the room: ranges that may move, numbers of an inspector.
func TestNoCheckFitsWithoutItsFacts(t *testing.T) {
	for _, r := range demo.Rooms() {
		before := fitted(t, r.File, r.Text)
		if len(before.Checks) < 40 {
			t.Fatalf("%s: only %d checks", r.File, len(before.Checks))
		}
		root, _ := text.Parse(r.Text)
		asked := 0
		for _, path := range numbers(root, nil) {
			if path[1] == "tape" || path[0] == "may move" || path[0] == "rules" {
				continue
			}
			name := strings.Join(path, " > ")
			users := using(before, name)
			if len(users) == 0 {
				continue
			}
			asked++
			for _, op := range []document.Op{{Do: text.Set, Path: path, Value: "unknown"}, {Do: text.Remove, Path: path}} {
				src, found := document.Apply(r.Text, []document.Op{op})
				if found.Stops() {
					t.Errorf("%s: %s: %v", r.File, name, found)
					continue
				}
				if op.Do == text.Remove && silentMeans(path) {
					continue
				}
				after := fitted(t, r.File, src)
				for _, id := range users {
					if k, ok := after.Find(id); ok && k.State == fit.Fits {
						t.Errorf("%s: without %s (%s) %s still fits", r.File, name, op.Do, id)
					}
				}
			}
		}
		if asked < 45 {
			t.Errorf("%s: only %d numbers are used by a check", r.File, asked)
		}
	}
}

// silentMeans lists what may be silent because silence has a meaning, which is told in the handbook and, where it is a number, as an assumption.
func silentMeans(path []string) bool {
	return slices.Contains([]string{"rim", "right", "forward", "over", "off", "recess", "depth", "bore", "flow", "hole", "fall", "gap", "rise", "outlet", "hoses", "posts", "width", "gap wanted", "least under"}, path[len(path)-1]) || slices.Contains([]string{"down", "overhang"}, path[len(path)-2]) || path[0] == "tops" && path[len(path)-2] == "gap"
}

func fitted(t *testing.T, file string, src []byte) fit.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), file, src, plan.Options{UpTo: plan.UpToFit})
	if err != nil {
		t.Fatal(err)
	}
	return p.Fit
}

// using lists the checks that fit and hang on a fact, or on something that it is a part of.
func using(p fit.Plan, name string) []string {
	var out []string
	for _, k := range p.Checks {
		if k.State == fit.Fits && slices.ContainsFunc(k.Uses, func(u string) bool {
			return u == name || strings.HasPrefix(name, u+" > ") || strings.HasPrefix(u, name+" > ")
		}) {
			out = append(out, k.ID)
		}
	}
	return out
}
