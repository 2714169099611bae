package order

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/money"
	"dryfit/internal/unit"
)

// brute tries every count of every pack up to what one pack alone would need.
func brute(need int64, packs []Packs) [3]int64 {
	priced := !slices.ContainsFunc(packs, func(p Packs) bool { return !p.Priced })
	var best [3]int64
	found := false
	var walk func(k int, have, cost, n int64)
	walk = func(k int, have, cost, n int64) {
		if k == len(packs) {
			worth := [3]int64{cost, have - need, n}
			if have >= need && (!found || slices.Compare(worth[:], best[:]) < 0) {
				best, found = worth, true
			}
			return
		}
		p := packs[k]
		for i := int64(0); i <= (need+p.Size.N-1)/p.Size.N; i++ {
			c := int64(0)
			if priced {
				c = i * int64(p.Price)
			}
			walk(k+1, have+i*p.Size.N, cost+c, n+i)
		}
	}
	walk(0, 0, 0, 0)
	return best
}

func TestCoverAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var packs []Packs
		priced := rapid.Bool().Draw(t, "priced")
		for range rapid.IntRange(1, 3).Draw(t, "packs") {
			packs = append(packs, Packs{Size: unit.Count(rapid.IntRange(1, 12).Draw(t, "size")), Priced: priced,
				Price: money.Amount(rapid.Int64Range(0, 9).Draw(t, "price")) * money.One})
		}
		need := rapid.Int64Range(1, 40).Draw(t, "need")
		c := Cover(need, packs)
		var got [3]int64
		for i, n := range c.Counts {
			got[1] += int64(n) * packs[i].Size.N
			got[2] += int64(n)
			if priced {
				got[0] += int64(n) * int64(packs[i].Price)
			}
		}
		got[1] -= need
		if want := brute(need, packs); got != want || !c.Proven {
			t.Fatalf("%d of %v: %v is worth %v, want %v", need, packs, c.Counts, got, want)
		}
	})
}

// 120 lb: three bags of 50 lb for 28.50 are 85.50; two and one of 25 lb for 16 are 73.00, and leave 5 lb.
func TestCoverByHand(t *testing.T) {
	bag := func(lb unit.Mass, price money.Amount) Packs {
		return Packs{Size: unit.Weighs(lb * unit.Pound), Price: price, Priced: true}
	}
	c := Cover(int64(120*unit.Pound), []Packs{bag(50, 28_500), bag(25, 16_000)})
	if !slices.Equal(c.Counts, []int{2, 1}) || !c.Proven {
		t.Error(c)
	}
	// A dear small pack is left: two of 50 lb cost less than one and a small one.
	c = Cover(int64(60*unit.Pound), []Packs{bag(50, 28_500), bag(10, 29_000)})
	if !slices.Equal(c.Counts, []int{2, 0}) {
		t.Error(c)
	}
}

// A need of many thousand small packs ends, and still covers.
func TestCoverEnds(t *testing.T) {
	p := func(n int, price money.Amount) Packs { return Packs{Size: unit.Count(n), Price: price, Priced: true} }
	packs := []Packs{p(997, 9_970), p(499, 4_991), p(251, 2_512), p(127, 1_271), p(1, 11)}
	c := Cover(1_000_000, packs)
	have := 0
	for i, n := range c.Counts {
		have += n * int(packs[i].Size.N)
	}
	if have < 1_000_000 {
		t.Error(c, have)
	}
}
