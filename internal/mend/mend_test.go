package mend

import (
	"context"
	"os"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

const file = "millrace.yaml"

// room is the test's room with values set: "vanity height = 30" is not enough, the whole path is wanted: "cabinets > vanity > height = 30".
func room(t testing.TB, sets ...string) []byte {
	t.Helper()
	src, err := os.ReadFile("testdata/" + file)
	if err != nil {
		t.Fatal(err)
	}
	var ops []document.Op
	for _, s := range sets {
		path, value, ok := strings.Cut(s, " = ")
		op := document.Op{Do: text.Set, Path: strings.Split(path, " > "), Value: value}
		if !ok {
			op.Do = text.Remove
		}
		ops = append(ops, op)
	}
	out, found := document.Apply(src, ops)
	if found.Stops() {
		t.Fatal(found)
	}
	return out
}

func made(t testing.TB, src []byte) plan.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), file, src, plan.Options{UpTo: plan.UpToFit})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func mends(t testing.TB, src []byte) (Mends, plan.Plan) {
	t.Helper()
	p := made(t, src)
	m, err := Make(context.Background(), file, src, p, Options{})
	if err != nil {
		t.Fatal(err)
	}
	return m, p
}

func remedyOf(t testing.TB, m Mends, check string) Remedy {
	t.Helper()
	for _, r := range m.Remedies {
		if r.Check == check {
			return r
		}
	}
	t.Fatalf("no remedy of %s among %d", check, len(m.Remedies))
	return Remedy{}
}

// say words trials for tables: "vanity > height -3/4; spout > up 3/4".
func say(m Mends, trials []Trial) string {
	var all []string
	for _, tr := range trials {
		var one []string
		for _, c := range tr.Changes {
			one = append(one, m.Things[c.Thing].Words+" "+strings.TrimSuffix(unit.DefaultStyle(unit.Inches).Exact(c.By), " in"))
		}
		all = append(all, strings.Join(one, " + "))
	}
	return strings.Join(all, "; ")
}

const (
	handGap = "taps > spout > hand gap"
	clamp   = "wastes > basin waste > clamp"
	inTop   = "basins > bowl > top under recess"
)

// The rim is at 31-1/2 + 1-1/2 - 1/4 + 5-1/2 = 38-1/4 in over the finished floor, the outlet at 41 - 1/2 = 40-1/2: a gap of 2-1/4 in, and 3 are the habit. So the
// vanity goes down by 3/4, or the tap up by 3/4, or the recess would have to be 3/4 deeper, which is 1/4 more than its range.
//
// The thread is 45 mm; basin 12.7 + top left 31.75 + washers 6 = 50.45 mm: 5.45 mm too little, in sixteenths 7/32 in up to 1/4 in.
// The recess may be 1/4 in deeper: 1-1/2 - 1/2 leaves just the 1 in that must stay.
func TestSingleThings(t *testing.T) {
	m, _ := mends(t, room(t))
	hand := remedyOf(t, m, handGap)
	if got := say(m, hand.Single); got != "vanity > height -3/4; spout > up 3/4" || len(hand.Spoils) > 0 {
		t.Errorf("hand gap: %s", got)
	}
	if len(hand.Short) != 1 || m.Things[hand.Short[0].Thing].Words != "slab > recess > depth" || hand.Short[0].By != unit.Inch/4 {
		t.Errorf("hand gap falls short: %+v", hand.Short)
	}
	if hand.Needs != 3*unit.Inch/4 || hand.Misses != 0 || !hand.Touched {
		t.Errorf("%+v", hand)
	}
	thread := remedyOf(t, m, clamp)
	if got := say(m, thread.Single); got != "slab > recess > depth 1/4" {
		t.Errorf("clamp: %s", got)
	}
	if len(m.Remedies) != 2 || !m.All {
		t.Errorf("%d remedies", len(m.Remedies))
	}
}

// A recess deeper is offered only if the least of the top stays: with 1-1/16 in wanted under it, 1/4 in deeper would mend the clamp and spoil that.
func TestRecessKeepsTheLeast(t *testing.T) {
	m, _ := mends(t, room(t, "tops > slab > least under = 1-1/16"))
	r := remedyOf(t, m, clamp)
	if len(r.Single) != 0 || say(m, r.Spoils) != "slab > recess > depth 1/4" || !slices.Equal(r.Spoils[0].Spoils, []string{inTop}) {
		t.Errorf("offered %s, spoiling %+v", say(m, r.Single), r.Spoils)
	}
	if m.Joint.Mends || !m.Joint.Proven || len(m.Joint.Spoils) > 0 {
		t.Errorf("%+v", m.Joint)
	}
}

// The waste clamp in millimeters: thread 45; basin 12 + top left 28 + washers 6 = 46, misses by 1; one deeper mends it where 27 may be left,
// and not where 28 must.
func TestClampByOneMillimeter(t *testing.T) {
	metric := []string{"basins > bowl > bottom = 12 mm", "tops > slab > thickness = 38 mm", "tops > slab > recess > depth = 10 mm",
		"may move > slab > recess > depth = {range: 0 to 5 mm, step: 1 mm}"}
	for _, c := range []struct{ least, single, spoils string }{{"27 mm", "slab > recess > depth 0.039", ""}, {"28 mm", "", "slab > recess > depth 0.039"}} {
		src := room(t, append(metric, "tops > slab > least under = "+c.least)...)
		src = []byte(strings.Replace(string(src), "slab > recess > depth: 0 to 1/2", "slab > recess > depth: {range: 0 to 5 mm, step: 1 mm}", 1))
		m, p := mends(t, src)
		k, _ := p.Fit.Find(clamp)
		if k.Margin != -unit.Millimetre {
			t.Errorf("misses by %v mm", -k.Margin.MM())
		}
		r := remedyOf(t, m, clamp)
		if say(m, r.Single) != c.single || say(m, r.Spoils) != c.spoils {
			t.Errorf("least %s: %q, spoils %q", c.least, say(m, r.Single), say(m, r.Spoils))
		}
		for _, tr := range append(r.Single, r.Spoils...) {
			if tr.Changes[0].To != "11 mm" {
				t.Errorf("to %s", tr.Changes[0].To)
			}
		}
	}
}

// The recess 1/4 in deeper lowers the rim by as much: 1/2 in is left to the hand gap. Two things, a way of 1/4 + 1/2 in; the first in order lowers the vanity.
func TestJoint(t *testing.T) {
	m, _ := mends(t, room(t))
	if got := say(m, []Trial{m.Joint.Trial}); got != "vanity > height -1/2 + slab > recess > depth 1/4" || !m.Joint.Mends || !m.Joint.Proven || m.Asked != nil {
		t.Errorf("%s %+v", got, m.Joint)
	}
	if len(m.Joint.Left) > 0 || len(m.Joint.Spoils) > 0 {
		t.Errorf("%+v", m.Joint)
	}
}

// Nothing in range: the tap stays, the vanity goes down 1/4 at most, the recess 1/4 deeper: 3/4 - 1/2 is 1/4 in missed at best.
func TestNothingInRange(t *testing.T) {
	src := []byte(strings.NewReplacer("vanity > height: -1-1/2 to 1", "vanity > height: -1/4 to 0", "slab > recess > depth: 0 to 1/2", "slab > recess > depth: 0 to 1/4",
		"  spout > up: -1 to 1\n", "").Replace(string(room(t))))
	m, _ := mends(t, src)
	r := remedyOf(t, m, handGap)
	if len(r.Single)+len(r.Spoils) != 0 || r.Misses != unit.Inch/4 || len(r.Short) != 2 {
		t.Errorf("%+v", r)
	}
	if got := say(m, []Trial{m.Joint.Trial}); m.Joint.Mends || len(m.Joint.Left) != 1 || m.Joint.Left[0] != (Left{handGap, unit.Inch / 4}) || got != "vanity > height -1/4 + slab > recess > depth 1/4" {
		t.Errorf("%s %+v", got, m.Joint)
	}
	// The hand gap is a habit; the clamp alone is mended by the recess alone, and then 1/2 in is left to the hand gap.
	if got := say(m, []Trial{m.Asked.Trial}); !m.Asked.Mends || got != "slab > recess > depth 1/4" || m.Asked.Left[0] != (Left{handGap, unit.Inch / 2}) {
		t.Errorf("%s %+v", got, m.Asked)
	}
}

// A body that wants 2 in is 15/16 in too shallow behind a build-up of 1-1/16. A thicker board helps by 1/8, and 13/16 is still missed; where the board may not
// change, nothing that may move is in the check, and that is told apart.
func TestUntouched(t *testing.T) {
	const check = "taps > spout > body depth least"
	src := room(t, "taps > spout > body > depth = 2 to 3")
	m, _ := mends(t, src)
	r := remedyOf(t, m, check)
	if !r.Touched || len(r.Single)+len(r.Spoils) != 0 || r.Needs != 15*unit.Inch/16 || r.Misses != 13*unit.Inch/16 || len(r.Short) != 1 || r.Short[0].By != r.Misses {
		t.Errorf("%+v", r)
	}
	m, _ = mends(t, []byte(strings.Replace(string(src), "  basin wall > build-up > board: {range: 0 to 1/8, step: 1/8}\n", "", 1)))
	r = remedyOf(t, m, check)
	if r.Touched || len(r.Single)+len(r.Spoils)+len(r.Short) != 0 || r.Misses != 15*unit.Inch/16 {
		t.Errorf("%+v", r)
	}
	if !slices.Equal(m.Without, []string{check}) || !m.Joint.Mends {
		t.Errorf("without %v, %+v", m.Without, m.Joint)
	}
}

// Where nothing that may move is in any check that misses, no joint change is looked for and no plan is run.
func TestNothingMoves(t *testing.T) {
	src := string(room(t))
	m, _ := mends(t, []byte(src[:strings.Index(src, "may move:")]))
	if m.Joint != nil || m.Runs != 0 || !slices.Equal(m.Without, []string{handGap, clamp}) || len(m.Remedies) != 2 {
		t.Errorf("%+v", m)
	}
}

// Nothing misses: nothing is offered.
func TestAllFits(t *testing.T) {
	m, p := mends(t, room(t, "taps > spout > up = center 42 above floor", "wastes > basin waste > thread = 52 mm"))
	if len(m.Remedies) != 0 || m.Joint != nil || m.Runs != 0 {
		t.Errorf("%+v", m)
	}
	if passing := count(p, fit.Fits); len(m.Margins) == 0 || len(m.Margins) > passing {
		t.Errorf("%d margins of %d checks", len(m.Margins), passing)
	}
}

func count(p plan.Plan, s fit.State) (n int) {
	for _, c := range p.Fit.Checks {
		if c.State == s {
			n++
		}
	}
	return n
}

// The body's plate is behind the finished face by the whole build-up, 1/2 + 3/16 + 3/8 = 1-1/16 in; its label allows 2: 15/16 in is left, and each layer eats what it
// is thick.
func TestLayersEat(t *testing.T) {
	m, _ := mends(t, room(t))
	i := slices.IndexFunc(m.Margins, func(g Margin) bool { return g.Check == "taps > spout > body depth most" })
	if i < 0 {
		t.Fatal("no margin of the body's depth")
	}
	g := m.Margins[i]
	if g.Left != 15*unit.Inch/16 || len(g.Eats) != 3 {
		t.Fatalf("%+v", g)
	}
	sum := unit.Length(0)
	for _, l := range g.Eats {
		sum += l.Takes
		if l.Per != -unit.One || l.Takes != l.Thick || l.Spare != g.Left {
			t.Errorf("%+v", l)
		}
	}
	if sum != 17*unit.Inch/16 || g.Eats[0].Thick != unit.Inch/2 {
		t.Errorf("%+v", g.Eats)
	}
	for i := 1; i < len(m.Margins); i++ {
		if m.Margins[i-1].Left > m.Margins[i].Left {
			t.Error("the narrowest first")
		}
	}
}

// With too few runs nothing unconfirmed is offered, and it is said that not all was tried.
func TestFewRuns(t *testing.T) {
	src := room(t)
	p := made(t, src)
	m, err := Make(context.Background(), file, src, p, Options{Runs: 1})
	if err != nil || m.All || m.Runs != 1 {
		t.Errorf("%v %v %d", err, m.All, m.Runs)
	}
	offered := 0
	for _, r := range m.Remedies {
		offered += len(r.Single) + len(r.Spoils)
	}
	if offered != 1 {
		t.Errorf("%d offered after one run", offered)
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := Make(ctx, file, src, p, Options{}); err == nil {
		t.Error("a canceled look ends with an error")
	}
}

// What has no single figure can not be moved, and that is said.
func TestFixedThing(t *testing.T) {
	src := []byte(strings.Replace(string(room(t)), "  spout > up: -1 to 1\n", "  bowl > outline: -1 to 1\n", 1))
	src = []byte(strings.Replace(string(src), "outline: round 15", "outline: oval 16 x 15", 1))
	m, _ := mends(t, src)
	for _, th := range m.Things {
		if fixed := th.Fixed != ""; fixed != (th.Words == "bowl > outline") {
			t.Errorf("%+v", th)
		}
	}
}
