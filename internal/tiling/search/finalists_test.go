package search

import (
	"math/rand/v2"
	"reflect"
	"runtime"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

const bathWall = "room 1800 2240 | open window 600 1100 1250 1900 | open niche 1400 1000 1660 1400 | hole 300 400 40" +
	" | tile 297 147 3 | running 1/2 | mark 0.5 | sight 1900"

func TestFinalistsAreApartAndEachGainsSomething(t *testing.T) {
	for _, name := range []string{"stack", "running 1/2", "running 1/3", "vertical running 1/2", "herringbone", "diagonal stack"} {
		in := read(t, strings.Replace(bathWall, "running 1/2", name, 1))
		res := Best(in)
		if len(res.Finalists) < 2 || len(res.Finalists) > offered {
			t.Errorf("%s: %d layouts", name, len(res.Finalists))
		}
		if !slices.IsSortedFunc(res.Finalists, Compare) {
			t.Errorf("%s: not the best first", name)
		}
		for i, c := range res.Finalists {
			for _, d := range res.Finalists[:i] {
				if near(&in.Bond, c.Origin.Sub(d.Origin), in.Mark) {
					t.Errorf("%s: %v and %v are nearly the same", name, c.Origin, d.Origin)
				}
				if len(res.Finalists) > 2 && !c.gains(d) {
					t.Errorf("%s: %v gains nothing over %v", name, c.Origin, d.Origin)
				}
			}
			if c.Why.Text == "" || i > 0 && c.WhyNot.Text == "" {
				t.Errorf("%s: layout %d does not say why or why not", name, i+1)
			}
		}
	}
}

// Two origins a step of the pattern apart are the same layout; half a tile along a stack is another.
func TestNearIsModuloThePattern(t *testing.T) {
	for _, row := range []struct {
		bond string
		x, y unit.Length
		want bool
	}{
		{"stack", 300, 0, true},
		{"stack", -600, 450, true},
		{"stack", 310, 5, true},
		{"stack", 150, 0, false},
		{"stack", 0, 75, false},
		{"running 1/2", 150, 150, true},
		{"running 1/2", 150, 0, false},
		{"running 1/3", 100, 150, true},
		{"running 1/3", 200, 300, true},
		{"vertical running 1/2", 300, 75, true},
		{"herringbone", 150, 150, true},
		{"herringbone", 300, -300, true},
		{"herringbone", 75, 75, false},
	} {
		in := read(t, "room 900 900 | tile 297 147 3 | "+row.bond)
		if got := near(&in.Bond, geom.Point{X: row.x * unit.Millimetre, Y: row.y * unit.Millimetre}, in.Mark); got != row.want {
			t.Errorf("%s %d %d: near is %v", row.bond, row.x, row.y, got)
		}
	}
}

func TestSameInputSameResultHoweverManyRunAtOnce(t *testing.T) {
	for _, name := range []string{"running 1/3", "vertical stack", "herringbone", "diagonal running 1/2"} {
		in := read(t, strings.Replace(bathWall, "running 1/2", name, 1))
		want := Best(in)
		for _, procs := range []int{1, 2, 3, 8} {
			old := runtime.GOMAXPROCS(procs)
			got := Best(in)
			runtime.GOMAXPROCS(old)
			if !reflect.DeepEqual(got, want) {
				t.Errorf("%s: another result with %d processors", name, procs)
			}
		}
	}
}

// Every layout of a wall without openings, holes or lines that divides evenly is as good as the first found; of equal
// layouts the lowest, then the leftmost stands.
func TestOfEqualLayoutsTheLowestThenTheLeftmostStands(t *testing.T) {
	in := read(t, "room 900 600 | tile 300 300 0 | mark 50")
	in.Order = []judge.Name{judge.HolesClear}
	p := newProblem(&in)
	winners, n := p.sweep([]int{holes})
	if n != 36 || winners[0].origin != (geom.Point{}) {
		t.Errorf("%d judged, %v stands", n, winners[0].origin)
	}
}

// A full lay's counts decide where they stand in the order, among few candidates.
func TestCountDecidesAmongFinalists(t *testing.T) {
	in := read(t, bathWall+" | look fewest tiles")
	calls, cheap := 0, geom.Point{}
	plain := Best(in)
	cheap = plain.Finalists[len(plain.Finalists)-1].Origin
	in.Count = func(o geom.Point) Count {
		calls++
		if o == cheap {
			return Count{Tiles: 90, Least: 88}
		}
		return Count{Tiles: 100, Least: 88, Neck: 40 * unit.Millimetre, NeckAt: "3-4"}
	}
	res := Best(in)
	if res.Finalists[0].Origin != cheap {
		t.Errorf("the layout with the fewest tiles is not first")
	}
	if m := get(t, res.Finalists[0], judge.TilesToBuy); m.Count != 90 || m.Exact {
		t.Errorf("tiles to buy: %+v", m)
	}
	why := res.Finalists[0].Why.Say(unit.DefaultStyle(unit.Millimetres))
	if !strings.Contains(why, "of those judged none does better in: tiles to buy: 90") {
		t.Errorf("why: %s", why)
	}
	if m := get(t, res.Finalists[1], judge.Necks); m.Where != "3-4" || m.Exact || m.Cost != -80 {
		t.Errorf("neck: %+v", m)
	}
	if calls > mostCounted {
		t.Errorf("%d full counts", calls)
	}
}

func TestPinSaysWhatItCosts(t *testing.T) {
	in := read(t, bathWall)
	res := Best(in)
	best := res.Finalists[0]
	if c := Pin(in, best.Origin, res); c.WhyNot.Text != "" || !reflect.DeepEqual(c.Measures, best.Measures) {
		t.Errorf("the best layout, pinned, costs %q", c.WhyNot.Say(unit.DefaultStyle(unit.Millimetres)))
	}
	off := best.Origin.Add(geom.Point{X: 20 * unit.Millimetre})
	got := Pin(in, off, res).WhyNot.Say(unit.DefaultStyle(unit.Millimetres))
	if want := "off center about the center line, against centered"; !strings.HasPrefix(got, "the pin costs: ") || !strings.Contains(got, want) {
		t.Errorf("got %q", got)
	}
}

// A running bond stepping on by a length that is no whole number of marks repeats only after thousands of courses; one
// pitch up still holds every layout once. To and fro it takes both courses.
func TestOnePitchUpHoldsEveryLayoutOfABondThatStepsOn(t *testing.T) {
	in := read(t, bathWall)
	for _, row := range []struct {
		spec bond.Spec
		want int
	}{
		{bond.Spec{Kind: bond.Running, Shift: 101_357}, 1},
		{bond.Spec{Kind: bond.Running, Num: 1, Den: 3}, 1},
		{bond.Spec{Kind: bond.Running, Num: 1, Den: 3, Back: true}, 2},
		{bond.Spec{Kind: bond.Running, Num: 1, Den: 2, Back: true}, 1},
		{bond.Spec{Kind: bond.Stack, Vertical: true}, 1},
	} {
		goods := bond.Goods{Sizes: []bond.Size{{Length: 297 * unit.Millimetre, Width: 147 * unit.Millimetre}}, Joint: 3 * unit.Millimetre}
		in.Bond, _ = bond.Make(row.spec, goods)
		if got := newProblem(&in).cycle(); got != row.want {
			t.Errorf("%s: %d pitches, want %d", row.spec, got, row.want)
		}
	}
}

func TestNothingToLay(t *testing.T) {
	for _, in := range []Input{{}, {Region: read(t, bathWall).Region}, {Bond: read(t, bathWall).Bond}} {
		if res := Best(in); len(res.Finalists) != 0 || len(Judge(in, geom.Point{}).Measures) != 0 || Shift(in, geom.Point{}) != nil {
			t.Errorf("something of nothing: %+v", res)
		}
	}
}

// A grid four times as fine finds nothing better than by one mark's worth in any one measure of width or place, except
// where it brings edges into joints that none of the marks round it brings there together: then a cut vanishes that no
// mark avoids. Every layout is measured with the same ease.
func TestFineGridGainsLessThanAMark(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	const finer = 4
	for range 120 {
		line := randomRoom(rng)
		in := read(t, line)
		in.Mark = max(in.Mark, max(in.Bond.Pitch.X, in.Bond.Pitch.Y).Ceil(unit.Millimetre)/14).Floor(finer)
		p := newProblem(&in)
		best := make([]found, covered)
		for m := range best {
			w, _ := p.sweep(leading(ranked(judge.All()), m))
			best[m] = w[0]
		}
		for j := range (p.t.steps-1)*finer + 1 {
			for i := range (p.s.steps-1)*finer + 1 {
				o := geom.Point{X: p.s.zero + unit.Length(i)*in.Mark/finer, Y: p.t.zero + unit.Length(j)*in.Mark/finer}
				if p.flip {
					o = swap(o)
				}
				n := p.assess(o)
				for _, m := range []int{balance, narrowest, holes, sightLines} {
					allowed := int64(1)
					if m == sightLines {
						allowed = int64(len(in.Sights))
					}
					if gain := best[m].costs[m] - n.costs[m]; gain > allowed && !p.hits(o) {
						t.Errorf("%s\n%s: %v gains %d marks over %v", line, coveredNames[m], o, gain, best[m].origin)
					}
				}
			}
		}
	}
}

// hits reports whether o brings edges into joints that none of the four marks round it brings into joints together.
func (p *problem) hits(o geom.Point) bool {
	here, down := p.onJoints(o), func(a axis, x unit.Length) unit.Length { return a.zero + (x - a.zero).Floor(a.mark) }
	if p.flip {
		o = swap(o)
	}
	for k := range 4 {
		q := geom.Point{X: down(p.s, o.X) + unit.Length(k%2)*p.s.mark, Y: down(p.t, o.Y) + unit.Length(k/2)*p.t.mark}
		if p.flip {
			q = swap(q)
		}
		if there := p.onJoints(q); !slices.ContainsFunc(here, func(e met) bool { return !slices.Contains(there, e) }) {
			return false
		}
	}
	return true
}

// met is one edge that meets joints, in all courses of one shift.
type met struct {
	along bool
	side  int
	shift unit.Length
}

// onJoints lists the edges that are not cut.
func (p *problem) onJoints(o geom.Point) (out []met) {
	if p.flip {
		o = swap(o)
	}
	cut := map[met]bool{}
	note := func(a axis, s side, q pass, start unit.Length, e met) {
		phase := a.mod(q.lo - start)
		if !s.upper() {
			phase = a.mod(start + a.size - q.hi)
		}
		_, is := a.left(phase, q.hi-q.lo)
		cut[e] = cut[e] || is
	}
	for _, c := range p.coursesAt(newBands(p.sides), o.Y) {
		for _, q := range c.band.passes {
			note(p.s, p.sides[q.side], q, o.X+c.shift, met{true, q.side, c.shift})
		}
	}
	for _, q := range p.crosses {
		note(p.t, p.turned[q.side], q, o.Y, met{side: q.side})
	}
	for e, is := range cut {
		if !is {
			out = append(out, e)
		}
	}
	return out
}
