package mend

import (
	"cmp"
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// stand runs the plan on the changed text from its beginning, as anybody would who makes the change.
func stand(t testing.TB, src []byte, ops []document.Op) map[string]fit.Check {
	t.Helper()
	edited, found := document.Apply(src, ops)
	if found.Stops() {
		t.Fatal(found)
	}
	out := map[string]fit.Check{}
	for _, c := range made(t, edited).Fit.Checks {
		out[c.ID] = c
	}
	return out
}

// odd makes rooms by chance round the test's room, so that now this and now that misses.
func odd(t testing.TB, rng *rand.Rand) []byte {
	t.Helper()
	eighths := func(lo, hi int) string {
		n := lo + rng.IntN(hi-lo+1)
		return fmt.Sprintf("%d %d/8", n/8, n%8)
	}
	src := room(t,
		"cabinets > vanity > height = "+eighths(232, 272), "taps > spout > up = center "+eighths(300, 352)+" above floor",
		"tops > slab > recess > depth = "+eighths(1, 4), "taps > spout > reach = "+eighths(60, 90), "wastes > basin waste > thread = "+fmt.Sprintf("%d mm", 40+rng.IntN(14)),
		"tops > slab > least under = "+eighths(6, 10), "basins > bowl > off = "+eighths(80, 92))
	return []byte(strings.NewReplacer("vanity > height: -1-1/2 to 1", "vanity > height: {range: -1-1/2 to 1, step: 1/4}",
		"slab > recess > depth: 0 to 1/2", "slab > recess > depth: {range: 0 to 1/2, step: 1/8}", "spout > up: -1 to 1", "spout > up: {range: -1 to 1, step: 1/4}").Replace(string(src)))
}

// Every change that is offered is made in the text, the plan run from its beginning: it mends, it spoils nothing, it reads as told, and a step less of it does not do.
func TestOffersAreConfirmed(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 22))
	offers, joints := 0, 0
	for range 30 {
		src := odd(t, rng)
		m, p := mends(t, src)
		for _, r := range m.Remedies {
			for _, tr := range r.Single {
				offers++
				checkOffer(t, src, m, p, r, tr)
			}
			for _, tr := range r.Spoils {
				now := stand(t, src, tr.Ops)
				if now[r.Check].State != fit.Fits || len(tr.Spoils) == 0 && len(tr.Stops) == 0 {
					t.Errorf("%s: said to mend and spoil: %+v", r.Check, tr)
				}
			}
		}
		if m.Joint != nil && m.Joint.Mends {
			joints++
			now := stand(t, src, m.Joint.Ops)
			for _, c := range p.Fit.Checks {
				if now[c.ID].State == fit.Misses && !slices.Contains(m.Without, c.ID) {
					t.Errorf("%s misses after the joint change", c.ID)
				}
			}
		}
	}
	if offers < 30 || joints < 4 {
		t.Errorf("%d offers and %d joint changes: too few to test with", offers, joints)
	}
}

func checkOffer(t *testing.T, src []byte, m Mends, p plan.Plan, r Remedy, tr Trial) {
	t.Helper()
	now := stand(t, src, tr.Ops)
	if now[r.Check].State != fit.Fits {
		t.Errorf("%s is not mended by %s", r.Check, say(m, []Trial{tr}))
	}
	for _, c := range p.Fit.Checks {
		if good(c) && !good(now[c.ID]) {
			t.Errorf("%s is spoiled by %s", c.ID, say(m, []Trial{tr}))
		}
	}
	for _, read := range tr.Reads {
		if c := now[read.Check]; c.State != read.State || c.Margin != read.Margin || c.Value != read.Value {
			t.Errorf("%s reads %+v, told %+v", read.Check, c, read)
		}
	}
	thing := m.Things[tr.Changes[0].Thing]
	less := tr.Changes[0].By - thing.Step
	if tr.Changes[0].By < 0 {
		less = tr.Changes[0].By + thing.Step
	}
	to, _ := document.Shift(thing.Now, less, p.Document.Units)
	before := stand(t, src, []document.Op{{Do: text.Set, Path: thing.Path, Value: to}})
	spoils := slices.ContainsFunc(p.Fit.Checks, func(c fit.Check) bool { return good(c) && !good(before[c.ID]) })
	if before[r.Check].State == fit.Fits && !spoils {
		t.Errorf("%s: a step less than %s does as well", r.Check, say(m, []Trial{tr}))
	}
}

// The joint change against running the plan on every combination of steps: the fewest things, the least way, the first in order.
func TestJointAgainstGrid(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 32))
	compared := 0
	for compared < 8 {
		src := []byte(strings.NewReplacer("{range: -1-1/2 to 1, step: 1/4}", "{range: -3/4 to 1/2, step: 1/4}", "{range: -1 to 1, step: 1/4}", "{range: -1/2 to 1/2, step: 1/4}",
			"{range: 0 to 1/2, step: 1/8}", "{range: 0 to 1/4, step: 1/8}").Replace(string(odd(t, rng))))
		m, p := mends(t, src)
		if m.Joint == nil || len(m.Without) > 0 {
			continue
		}
		compared++
		best, found := grid(t, src, m, p)
		if found != m.Joint.Mends {
			t.Errorf("mends %v, the grid says %v", m.Joint.Mends, found)
		}
		if got := steps(m, m.Joint.Changes); found && !slices.Equal(got, best) {
			t.Errorf("joint %v, the grid says %v", got, best)
		}
	}
}

func steps(m Mends, changes []Change) []int64 {
	x := make([]int64, len(m.Things))
	for _, c := range changes {
		x[c.Thing] = int64(c.By / m.Things[c.Thing].Step)
	}
	return x
}

// grid goes through all steps of all things that may move.
func grid(t *testing.T, src []byte, m Mends, p plan.Plan) (best []int64, found bool) {
	t.Helper()
	trial := plan.NewTrial(document.NewDraft(file, src), p)
	way := func(x []int64) (changed int, cost unit.Length) {
		for j, n := range x {
			if n != 0 {
				changed++
			}
			cost += (unit.Length(n) * m.Things[j].Step).Abs()
		}
		return changed, cost
	}
	var walk func(j int, x []int64)
	walk = func(j int, x []int64) {
		if j == len(x) {
			k, c := way(x)
			if bk, bc := way(best); found && cmp.Or(cmp.Compare(k, bk), cmp.Compare(c, bc), slices.Compare(x, best)) >= 0 {
				return
			}
			if gridFits(t, trial, m, p, x) {
				best, found = slices.Clone(x), true
			}
			return
		}
		th := m.Things[j]
		for n := -int64(-th.Less / th.Step); n <= int64(th.More/th.Step); n++ {
			x[j] = n
			walk(j+1, x)
		}
		x[j] = 0
	}
	walk(0, make([]int64, len(m.Things)))
	return best, found
}

func gridFits(t *testing.T, trial plan.Trial, m Mends, p plan.Plan, x []int64) bool {
	t.Helper()
	var ops []document.Op
	for j, n := range x {
		if n == 0 {
			continue
		}
		to, ok := document.Shift(m.Things[j].Now, unit.Length(n)*m.Things[j].Step, unit.Inches)
		if !ok {
			return false
		}
		ops = append(ops, document.Op{Do: text.Set, Path: m.Things[j].Path, Value: to})
	}
	q, ok, err := trial.With(context.Background(), ops)
	if !ok || err != nil {
		t.Fatal(ok, err)
	}
	now := map[string]fit.Check{}
	for _, c := range q.Fit.Checks {
		now[c.ID] = c
	}
	for _, c := range p.Fit.Checks {
		if c.State != fit.NotChecked && !good(now[c.ID]) {
			return false
		}
	}
	return true
}

// With a fact unknown, nothing is offered that stands on it: what is offered still holds when it is made.
func TestUnknownFacts(t *testing.T) {
	src := room(t)
	tree, _ := text.Parse(src)
	seen, offers := 0, 0
	each(tree, nil, func(path []string) {
		if seen++; seen%3 != 0 || path[0] == "dryfit" || path[0] == "units" {
			return
		}
		edited, found := document.Apply(src, []document.Op{{Do: text.Set, Path: path, Value: "unknown"}})
		if found.Stops() {
			return
		}
		m, p := mends(t, edited)
		for _, r := range m.Remedies {
			if c, ok := p.Fit.Find(r.Check); !ok || c.State != fit.Misses {
				t.Errorf("%v unknown: a remedy of %s, which does not miss", path, r.Check)
			}
			for _, tr := range r.Single {
				offers++
				if now := stand(t, edited, tr.Ops); now[r.Check].State != fit.Fits {
					t.Errorf("%v unknown: %s is not mended by %s", path, r.Check, say(m, []Trial{tr}))
				}
			}
		}
	})
	if seen < 100 || offers < 30 {
		t.Errorf("%d values, %d offers: too few to test with", seen, offers)
	}
}

func each(n *text.Node, path []string, visit func([]string)) {
	for _, e := range n.Entries {
		each(e.Value, append(slices.Clone(path), e.Key), visit)
	}
	if n.Kind == text.Scalar {
		visit(path)
	}
}
