package text

import "slices"

// Diff gives the operations that make one tree of keys into another: as small as the trees allow, from the top down.
// A list is one value. A key that only moved is taken out and added again.
func Diff(a, b *Node) []Op { return diff(nil, a, b) }

func diff(path []string, a, b *Node) []Op {
	old, stay := byKey(a), staying(a, b)
	var ops []Op
	for _, e := range a.Entries {
		if !stay[e.Key] {
			ops = append(ops, Op{Do: Remove, Path: under(path, e.Key)})
		}
	}
	next := following(b, stay)
	for i, e := range b.Entries {
		here := under(path, e.Key)
		switch was := old[e.Key]; {
		case !stay[e.Key]:
			ops = append(ops, Op{Do: Add, Path: here, Value: Flow(e.Value), Before: next[i]})
		case Equal(was, e.Value):
		case was.Kind == Map && e.Value.Kind == Map:
			ops = append(ops, diff(here, was, e.Value)...)
		default:
			ops = append(ops, Op{Do: Set, Path: here, Value: Flow(e.Value)})
		}
	}
	return ops
}

func under(path []string, key string) []string { return append(slices.Clone(path), key) }

func byKey(n *Node) map[string]*Node {
	all := make(map[string]*Node, len(n.Entries))
	for _, e := range n.Entries {
		all[e.Key] = e.Value
	}
	return all
}

// following gives for each entry the next key that stays, or "".
func following(n *Node, stay map[string]bool) []string {
	next := make([]string, len(n.Entries))
	key := ""
	for i := len(n.Entries) - 1; i >= 0; i-- {
		next[i] = key
		if stay[n.Entries[i].Key] {
			key = n.Entries[i].Key
		}
	}
	return next
}

// staying gives the keys that need not move: the most that both maps have in the same order. Their places in a, taken in
// the order of b, are a longest increasing subsequence (Schensted 1961; found by piles, as a game of patience).
func staying(a, b *Node) map[string]bool {
	place := map[string]int{}
	for i, e := range a.Entries {
		place[e.Key] = i
	}
	var piles []int               // the place in a that lies on top of each
	before := map[string]string{} // the key on top of the pile to the left, when a key was laid down
	top := []string{""}
	for _, e := range b.Entries {
		at, both := place[e.Key]
		if !both {
			continue
		}
		i, _ := slices.BinarySearch(piles, at)
		before[e.Key] = top[i]
		if i == len(piles) {
			piles, top = append(piles, at), append(top, e.Key)
		}
		piles[i], top[i+1] = at, e.Key
	}
	stay := map[string]bool{}
	for n, key := len(piles), top[len(piles)]; n > 0; n, key = n-1, before[key] {
		stay[key] = true
	}
	return stay
}
