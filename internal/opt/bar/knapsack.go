package bar

import (
	"cmp"
	"slices"
)

// item is a kind that a run may take up to most of.
type item struct {
	kind        int
	size, value int64
	most        int
}

// slot is a run to fill: only what is worth more than floor matters.
type slot struct{ size, floor int64 }

// knapsack lists the fillings of runs that no other beats in both size and value
// (Nemhauser and Ullmann, Management Science 15, 1969), without those that
// reach no slot's floor even if the rest were filled at the best rate.
type knapsack struct {
	list  []filling // sizes and values both rise
	links []link
	spare []filling
	work  int
	full  bool
}

// filling is one set of items; last is its last link.
type filling struct {
	size, value int64
	last        int32
}

type link struct{ prev, item, n int32 }

// maxFillings keeps one list small enough to be worth its time.
const maxFillings = 200000

// fill runs the items through; they are taken by falling value for their size.
func (k *knapsack) fill(items []item, slots []slot) {
	k.list = append(k.list[:0], filling{last: -1})
	k.links, k.work, k.full = k.links[:0], 0, false
	slices.SortFunc(items, byRate)
	var most int64
	for _, s := range slots {
		most = max(most, s.size)
	}
	for i, it := range items {
		k.prune(it, slots)
		if len(k.list) == 0 {
			return
		}
		copies := min(it.most, int(most/it.size))
		for n := 1; copies > 0; n *= 2 {
			n = min(n, copies)
			copies -= n
			k.merge(int32(i), int32(n), it.size*int64(n), it.value*int64(n), most)
		}
		if k.full = len(k.list) > maxFillings; k.full {
			return
		}
	}
}

// byRate compares value for size, the best first.
func byRate(a, b item) int {
	return cmp.Or(cmp.Compare(float64(b.value)/float64(b.size), float64(a.value)/float64(a.size)),
		cmp.Compare(b.size, a.size), cmp.Compare(a.kind, b.kind))
}

// rateCare widens what prunes, against the rounding of floats.
const rateCare = 1 + 1e-12

// prune drops what can not pass a floor with items of the rate of next or less.
func (k *knapsack) prune(next item, slots []slot) {
	rate := float64(next.value) / float64(next.size)
	kept := k.list[:0]
	for _, f := range k.list {
		for _, s := range slots {
			if f.size <= s.size && (float64(f.value)+rate*float64(s.size-f.size))*rateCare+1 > float64(s.floor) {
				kept = append(kept, f)
				break
			}
		}
	}
	k.work += len(k.list) * len(slots)
	k.list = kept
}

// merge adds n copies of an item to each filling where they fit.
func (k *knapsack) merge(it, n int32, size, value, most int64) {
	old, out := k.list, k.spare[:0]
	k.work += 2 * len(old)
	best := int64(-1)
	j := 0
	for i := range old {
		for j < len(old) && old[j].size+size < old[i].size {
			out, best = k.grown(out, best, old[j], it, n, size, value, most)
			j++
		}
		if j < len(old) && old[j].size+size == old[i].size && old[j].value+value > old[i].value {
			out, best = k.grown(out, best, old[j], it, n, size, value, most)
			j++
		}
		if old[i].value > best {
			best = old[i].value
			out = append(out, old[i])
		}
	}
	for ; j < len(old) && old[j].size+size <= most; j++ {
		out, best = k.grown(out, best, old[j], it, n, size, value, most)
	}
	k.list, k.spare = out, old
}

func (k *knapsack) grown(out []filling, best int64, f filling, it, n int32, size, value, most int64) ([]filling, int64) {
	if f.value+value <= best || f.size+size > most {
		return out, best
	}
	k.links = append(k.links, link{f.last, it, n})
	return append(out, filling{f.size + size, f.value + value, int32(len(k.links) - 1)}), f.value + value
}

// best is the most valuable filling of a size, nil where none is left.
func (k *knapsack) best(size int64) *filling {
	i, found := slices.BinarySearchFunc(k.list, size, func(f filling, s int64) int { return cmp.Compare(f.size, s) })
	if !found {
		i--
	}
	if i < 0 {
		return nil
	}
	return &k.list[i]
}

// takes reads what a filling is made of.
func (k *knapsack) takes(f *filling, items []item, run int) []take {
	var out []take
	for l := f.last; l >= 0; l = k.links[l].prev {
		it := items[k.links[l].item]
		out = append(out, take{it.kind, run, int(k.links[l].n)})
	}
	return out
}
