package nest

import (
	"testing"

	"pgregory.net/rapid"
)

// TestSearch runs the search that is meant for many parts on few, where cutting
// at every place tells the truth: no plan is better than the best, and no bound
// is above it.
func TestSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 8, rapid.IntRange(1, 5).Draw(t, "parts"))
		p.check()
		m, unfit := newModel(p)
		if m.total == 0 {
			return
		}
		s := newSearch(m, &steps{most: 200})
		s.prove(m.areaWeights())
		s.prove(m.dualWeights(s.steps))
		s.tryChoices()
		s.fillings()
		m.lpWeights(s.steps, s.cost, s.prove)
		s.dives()
		r := s.result(p)
		r.Unfit = unfit
		if err := recheck(p, r); err != nil {
			t.Fatalf("%v\n%+v", err, r)
		}
		bracket(t, p, r)
	})
}

// bracket holds a plan and its bounds against the best.
func bracket(t *rapid.T, p Problem, r Result) {
	want := newBrute(p, r.Unfit).best()
	got := answer{money: r.Money}
	for _, n := range r.Lacking {
		got.lack += n
	}
	if p.First == Whole && p.Stages == 0 {
		got.spare = r.Offcut.Area()
		if got.lack == want.lack && got.money == want.money && r.Largest < want.spare {
			t.Fatalf("offcut %d is claimed the most, %d can be", r.Largest, want.spare)
		}
	}
	if got.better(want) || r.Fewest > want.lack || got.lack == want.lack && r.Lower > want.money {
		t.Fatalf("got %+v (%d, %d), best %+v", got, r.Fewest, r.Lower, want)
	}
}

// TestWeights: no set that can be cut from a sheet weighs more than the proof
// says. Sizes times 777 are the same problem, but too long to look at every
// place.
func TestWeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 8, rapid.IntRange(1, 5).Draw(t, "parts"))
		m, unfit := newModel(times777(p, rapid.Bool().Draw(t, "long")))
		if m.total == 0 {
			return
		}
		b := newBrute(p, unfit)
		st := &steps{most: 1000}
		for _, w := range []*weights{m.areaWeights(), m.dualWeights(st)} {
			weighed(t, p, m, b, w)
		}
		m.lpWeights(st, maxWorth, func(w *weights) { weighed(t, p, m, b, w) })
	})
}

func times777(p Problem, long bool) Problem {
	if !long {
		return p
	}
	q := p
	q.Kerf, q.Parts, q.Sheets = q.Kerf*777, nil, nil
	for _, d := range p.Parts {
		d.W, d.H = d.W*777, d.H*777
		q.Parts = append(q.Parts, d)
	}
	for _, s := range p.Sheets {
		s.W, s.H, s.Trim = s.W*777, s.H*777, s.Trim*777
		q.Sheets = append(q.Sheets, s)
	}
	return q
}

func weighed(t *rapid.T, p Problem, m *model, b *brute, w *weights) {
	if w == nil {
		return
	}
	q := (&search{m: m, w: w}).proof(p)
	for i, s := range p.Sheets {
		for set := 1; set < 1<<len(b.part); set++ {
			var sum int64
			for u, k := range b.part {
				if set>>u&1 == 1 {
					sum += q.Weights[k]
				}
			}
			if sum > s.Price*q.Scale+q.Excess[i] && s.Count != 0 && b.sheet(s, set) {
				t.Fatalf("%s: sheet %d holds %b that weighs %d", w.by, i, set, sum)
			}
		}
	}
}

// TestMany rechecks plans of more parts than can be tried, on sheets large and
// small.
func TestMany(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, rapid.SampledFrom([]int64{12, 60, 3000, 90000}).Draw(t, "side"), rapid.IntRange(7, 25).Draw(t, "parts"))
		p.Budget = 100
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Fatalf("%v\n%+v", err, r)
		}
	})
}

// TestThin: strips so thin that a coarse bound rounds them to nothing: 8 strips of
// 2 fill a sheet of 16, and one sheet is enough for as many as are wanted.
func TestThin(t *testing.T) {
	p := parse(t, "6000x16$1 | 6000x2*8 |")
	m, _ := newModel(p)
	m.lpWeights(&steps{most: 1000}, 9, func(w *weights) {
		if got := m.proves(w); got > 1 {
			t.Errorf("proven %d", got)
		}
	})
	if r := Pack(p); r.Money != 1 || r.Lower != 1 {
		t.Errorf("%d to %d", r.Lower, r.Money)
	}
}

// TestCrowded: more sizes than an axis has points for, so that parts take the
// next larger point, or, where stages count, a point of their own.
func TestCrowded(t *testing.T) {
	for _, saw := range []string{"", " rip", " crosscut stages 3", " stages 2"} {
		p := parse(t, "24400x12200$62-50 15250x15250$55-50 | | kerf 32 budget 300"+saw)
		for i := range int64(90) {
			p.Parts = append(p.Parts, Part{W: 700 + i*i*7919%8191, H: 500 + i*i*i*104729%4093, Count: 1, Turns: i%2 == 0})
		}
		if m, _ := newModel(p); m.axes(m.sheets[0], func(int) bool { return true }).x.full {
			t.Fatal("the axis has room for every sum")
		}
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Errorf("%s: %v", saw, err)
		}
		if r.Money > 3*r.Lower {
			t.Errorf("%s: %d, three times the bound %d", saw, r.Money, r.Lower)
		}
	}
}

// TestKerf: a kerf is the same as parts and clear sheets that are larger by it.
// Of plans that cost the same another may be taken, as offcuts lose the kerf.
func TestKerf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 15, rapid.IntRange(1, 12).Draw(t, "parts"))
		p.Budget, p.LeastSide = 200, 0
		q := p
		q.Kerf, q.Parts, q.Sheets = 0, nil, nil
		for _, d := range p.Parts {
			d.W, d.H = d.W+p.Kerf, d.H+p.Kerf
			q.Parts = append(q.Parts, d)
		}
		for _, s := range p.Sheets {
			if min(s.W, s.H) <= 2*s.Trim {
				s.Count = 0
			}
			s.W, s.H = s.W+p.Kerf, s.H+p.Kerf
			q.Sheets = append(q.Sheets, s)
		}
		a, b := Pack(p), Pack(q)
		if a.Money != b.Money || a.Lower != b.Lower || a.Fewest != b.Fewest {
			t.Fatalf("%d of %d and %d of %d", a.Lower, a.Money, b.Lower, b.Money)
		}
	})
}
