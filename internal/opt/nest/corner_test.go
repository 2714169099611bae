package nest

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestCorners: whatever the corners lay keeps all rules, and they lay all parts
// only where sheets that are opened hold them.
func TestCorners(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 12, rapid.IntRange(1, 9).Draw(t, "parts"))
		p.Stages = 0
		m, unfit := newModel(p)
		if m.total == 0 {
			return
		}
		var open []int
		for i, b := range m.sheets {
			for range min(b.count, rapid.IntRange(0, 4).Draw(t, "open")) {
				open = append(open, i)
			}
		}
		plan, ok := m.newCorners(open).holdAll(&steps{most: 5})
		if !ok {
			return
		}
		s := newSearch(m, &steps{most: 5})
		s.best, s.cost, s.whole = plan, m.cost(plan), true
		r := s.result(p)
		r.Unfit, r.Largest, r.Lower, r.Fewest, r.Complete = unfit, r.Offcut.Area(), 0, 0, r.Money == 0
		if err := recheck(p, r); err != nil {
			t.Fatalf("%v\n%+v", err, r)
		}
		for i, n := range r.Lacking {
			if n > 0 && !slices.Contains(unfit, i) {
				t.Fatalf("part %d lacks: %+v", i, r)
			}
		}
		if len(plan) > len(open) {
			t.Fatalf("%d sheets of %d that are open", len(plan), len(open))
		}
	})
}

// Lots of parts that one filling after the other does not bring into the least
// sheets. The bound is the price of the sheets that the area takes, worked by
// hand: 2,598 square decimeters of parts and kerfs do not go into three small
// sheets of 732; 2,535 do not go into the scrap of 479 and a small sheet of 1,461.
func TestTightLots(t *testing.T) {
	for _, c := range []struct {
		name, line string
		money      int64
	}{
		{"a chest and a bench out of one sheet, ripped first",
			"24902x12402$88 12402x5902$31 | 5322x4217*2 7450x3960 7622x1017 7622x1022 5030x3960 7270x1022 4392x3960 5322x142 9002x3812 4222x3622*2 8222x1222*2 5242x4626 5224x2898 | rip budget 2000", 88},
		{"a vanity and a shelf out of one sheet and a scrap",
			"8533x5612$0*1 24281x12089$148 12089x12089$85 | 5358x4922 5231x1040*3 5200x3580 7644x2437*2 5739x2310*4 7644x5930 4088x2818*2 3707x1802*2 3580x2818r*2 | budget 2000", 148},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := parse(t, c.line)
			r := Pack(p)
			if err := recheck(p, r); err != nil {
				t.Fatal(err)
			}
			if r.Money != c.money || r.Lower != c.money {
				t.Errorf("%d, bound %d; want %d", r.Money, r.Lower, c.money)
			}
		})
	}
}

// TestReserve: ten parts of 20 by 30 fill 100 by 60, and one of 10 by 10 beside what
// is left of 100 by 40 leaves 90 by 40. Parts of 50 by 30, three of them in one
// half, leave 50 by 60 of the other.
func TestReserve(t *testing.T) {
	for line, want := range map[string]int64{
		"100x100$1 | 20x30*10 10x10 | budget 2000":          3600,
		"100x100$1 | 50x30*4 | budget 2000":                 4000,
		"100x100$1 | 50x30*4 25x5*8 | crosscut budget 2000": 3000,
	} {
		p := parse(t, line)
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Fatal(err)
		}
		if r.Offcut.Area() != want {
			t.Errorf("%s: offcut %d x %d, want %d", line, r.Offcut.W, r.Offcut.H, want)
		}
	}
}
