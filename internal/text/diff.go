package text

import "slices"

// Diff gives the operations that make one tree of keys into another: as small as the trees allow, from the top down.
// A list is one value. A key that only moved is taken out and added again.
func Diff(a, b *Node) []Op { return diff(nil, a, b) }

func diff(path []string, a, b *Node) []Op {
	stay := staying(a, b)
	var ops []Op
	for _, e := range a.Entries {
		if !slices.Contains(stay, e.Key) {
			ops = append(ops, Op{Do: Remove, Path: under(path, e.Key)})
		}
	}
	for i, e := range b.Entries {
		here := under(path, e.Key)
		switch was := a.Get(e.Key); {
		case !slices.Contains(stay, e.Key):
			ops = append(ops, Op{Do: Add, Path: here, Value: Flow(e.Value), Before: nextOf(b.Entries[i+1:], stay)})
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

// nextOf gives the first of some entries whose key stays, or "".
func nextOf(entries []Entry, stay []string) string {
	for _, e := range entries {
		if slices.Contains(stay, e.Key) {
			return e.Key
		}
	}
	return ""
}

// staying gives the longest run of keys that both maps have in the same order.
func staying(a, b *Node) []string {
	best := make([][]string, len(a.Entries)+1) // best[i]: of the first i keys of a and those of b so far
	for _, e := range b.Entries {
		row := slices.Clone(best)
		for i, o := range a.Entries {
			row[i+1] = best[i+1]
			if o.Key == e.Key {
				row[i+1] = under(best[i], e.Key)
			}
			if len(row[i]) > len(row[i+1]) {
				row[i+1] = row[i]
			}
		}
		best = row
	}
	return best[len(a.Entries)]
}
