package bar

import (
	"reflect"
	"testing"
)

// Expected plans are worked out by hand from the rules of the package.
func TestPack(t *testing.T) {
	for _, c := range []struct {
		name, problem, plan    string
		money, lower, lacking  int64
		remnant, longest, left int64 // left: where the remnant begins
	}{
		{"two fit with the kerf between and a shaved end",
			"kerf 3 | 48*2 | 100@5", "0: 0@0 0@51", 5, 5, 0, 0, 0, 0},
		{"a kerf too many takes a second stick",
			"kerf 3 | 49*2 | 100@5", "0: 0@0, 0: 0@0", 10, 10, 0, 48, 48, 52},
		{"trim comes off both ends",
			"kerf 2 trim 4 | 45*2 | 100@1", "0: 0@4 0@51", 1, 1, 0, 0, 0, 0},
		{"a defect parts the stick",
			"kerf 1 | 40 30 | 100@1!45-60", "0: 1@0 0@60", 1, 1, 0, 14, 14, 31},
		{"a defect narrower than the kerf takes a kerf",
			"kerf 5 | 45 40 | 100@1*1!50-51", "0: 1@0 0@55", 1, 1, 0, 5, 5, 45},
		{"the offcut on hand is used before a stick is bought",
			"kerf 3 | 40 | 100@9 50@0*1", "1: 0@0", 0, 0, 0, 7, 7, 43},
		{"a dear long stick beats two cheap short ones only in price",
			"| 60 50 | 70@5 120@11", "0: 0@0, 0: 1@0", 10, 10, 0, 20, 20, 50},
		{"the remnant is kept in one",
			"| 30*2 | 100@1*1 60@1*1", "0: 0@0 0@30", 1, 1, 0, 40, 40, 60},
		{"what is not cut of the sticks on hand counts as left",
			"| 30 | 100@0*1 40@0*1", "1: 0@0", 0, 0, 0, 100, 100, 0},
		{"too few sticks: the fewest pieces lack, then the least money",
			"| 60 30*2 | 60@4*1", "0: 1@0 1@30", 4, 4, 1, 0, 0, 0},
		{"money comes in sums of prices",
			"| 10*5 | 25@7 35@10", "0: 0@0 0@10, 1: 0@0 0@10 0@20", 17, 17, 0, 5, 5, 20},
		{"nothing to cut", "| | 100@3", "", 0, 0, 0, 0, 0, 0},
		{"nothing to cut from", "| 5 |", "", 0, 0, 0, 0, 0, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := parse(t, c.problem)
			r := Pack(p)
			check(t, p, r)
			if c.plan != cuts(r) {
				t.Errorf("got %q, want %q", cuts(r), c.plan)
			}
			if r.Money != c.money || r.Lower != c.lower || int64(sum(r.Lacking)) != c.lacking || !r.Complete {
				t.Errorf("money %d to %d, lacking %v, complete %v", r.Lower, r.Money, r.Lacking, r.Complete)
			}
			if r.Remnant.Length != c.remnant || r.Longest != c.longest || c.remnant > 0 && r.Remnant.At != c.left {
				t.Errorf("remnant %v of %d", r.Remnant, r.Longest)
			}
		})
	}
}

func TestUnfit(t *testing.T) {
	p := parse(t, "kerf 3 trim 5 | 91 90 96 | 100@1 200@1*0!0-200")
	r := Pack(p)
	check(t, p, r)
	if !reflect.DeepEqual(r.Unfit, []int{0, 2}) || r.Money != 1 {
		t.Errorf("unfit %v, money %d", r.Unfit, r.Money)
	}
}

func TestPanics(t *testing.T) {
	for _, line := range []string{
		"kerf -1 | 5 | 10@1", "trim -1 | 5 | 10@1", "| 0 | 10@1", "| 5*-1 | 10@1", "| 5 | 0@1",
		"| 5 | 10@-1", "| 5 | 10@1*-2", "| 3000000000 | 10@1", "| 5*1000000000 | 10@2000000000",
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%q: no panic", line)
				}
			}()
			Pack(parse(t, line))
		}()
	}
}
