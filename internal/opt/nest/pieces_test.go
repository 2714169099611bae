package nest

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestRoomiest: beside a part of 1 by 4 that stands at the end of 10 by 4 stay 9
// by 4, more than above it where it lies.
func TestRoomiest(t *testing.T) {
	m, _ := newModel(parse(t, "10x4$1 | 4x1r |"))
	if got := newSearch(m, &steps{}).roomiest(Result{Money: 1}); got != 36 {
		t.Errorf("got %d", got)
	}
}

// TestGained: what a sheet held must still be in it before more counts.
func TestGained(t *testing.T) {
	m, _ := newModel(parse(t, "10x10$1 | 5x10 10x10 |"))
	whole := m.patternOf(0, m.leaf(1, false))
	if moved := m.gained(whole, []int{1, 0}); moved != nil {
		t.Errorf("the first part is gone, but %v is taken for moved", moved)
	}
	both := m.patternOf(0, join(Crosscut, m.leaf(0, false), m.leaf(0, false)))
	if moved := m.gained(both, []int{1, 0}); !slices.Equal(moved, []take{{0, 1}}) {
		t.Errorf("got %v", moved)
	}
}

// TestStock: a sheet that is used up is not cut again.
func TestStock(t *testing.T) {
	m, _ := newModel(parse(t, "10x10$1*1 | 5x10*4 |"))
	d := &diver{newFiller(m, &steps{most: 10}), newPool()}
	need, stock := []int{4}, []int{1}
	p := m.patternOf(0, m.leaf(0, false))
	if _, ok := d.cutDown(p, need, stock); !ok || need[0] != 3 || stock[0] != 0 {
		t.Errorf("first: %v, %v, %v", ok, need, stock)
	}
	if _, ok := d.cutDown(p, need, stock); ok {
		t.Error("cut again")
	}
}

// TestCounters holds words that count several kinds against plain counting.
func TestCounters(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		most := rapid.SliceOfN(rapid.IntRange(0, 9), 1, 40).Draw(t, "most")
		c := newCounters(most)
		var sets [2][]uint64
		sums, want := make([]int, len(most)), true
		for i := range sets {
			sets[i] = make([]uint64, c.words)
			for k, n := range most {
				if n > 0 {
					v := rapid.IntRange(0, n).Draw(t, "n")
					sets[i][c.word[k]] += uint64(v) * c.one[k]
					sums[k] += v
				}
			}
		}
		for k, n := range most {
			want = want && sums[k] <= n
		}
		if got := c.fits(sets[0], sets[1]); got != want {
			t.Fatalf("got %v", got)
		}
	})
}

// TestScales: sizes that fit an axis side by side weigh no more than the axis.
func TestScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		size := rapid.Int64Range(1, 60).Draw(t, "size")
		var sizes []int64
		for left := size; left > 0 && len(sizes) < 8; {
			s := rapid.Int64Range(1, left).Draw(t, "s")
			sizes, left = append(sizes, s), left-s
		}
		for i, f := range scales(size, distinct(slices.Clone(sizes))) {
			sum := int64(0)
			for _, s := range sizes {
				sum += f.of(s)
			}
			if sum > f.all {
				t.Fatalf("function %d: %v weigh %d of %d", i, sizes, sum, f.all)
			}
		}
	})
}

// TestAxis: where no sum is left out, the points are all sums, found by trying.
func TestAxis(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		end := rapid.Int64Range(1, 80).Draw(t, "end")
		sizes := distinct(rapid.SliceOfN(rapid.Int64Range(1, end), 1, 6).Draw(t, "sizes"))
		dense, _ := sums(sizes, end, 1000)
		wide, full := wideSums(sizes, end, 1000)
		slices.Sort(wide)
		if !full || !slices.Equal(dense, wide) {
			t.Fatalf("%v and %v", dense, wide)
		}
		few, full := fewSums(sizes, end, len(sizes))
		if !slices.Equal(few, sizes) && len(dense) > len(sizes) || full != (len(dense) <= len(sizes)) {
			t.Fatalf("%v of %v for %v", few, dense, sizes)
		}
	})
}
