package document

import (
	"slices"

	"dryfit/internal/text"
)

// renamesBetween finds the things whose names differ between two texts of a document: what stands at the same place
// among its neighbors with something in common, where one name is gone and the other is new.
func renamesBetween(before, after []byte) []Op {
	was, _ := text.Parse(before)
	now, _ := text.Parse(after)
	ops := pointsRenamed(was, now)
	for _, collection := range []string{"walls", "center lines", "openings", "stub-outs", "boxes", "in the wall", "tiles", "stock", "kits", "cabinets", "tops", "scribes", "trim", "finish", "goods", "basins", "taps", "wastes", "stops", "WCs", "fittings", "people"} {
		a, b := was.Get(collection), now.Get(collection)
		if a != nil && b != nil {
			ops = append(ops, keysRenamed([]string{collection}, a, b)...)
		}
	}
	for _, group := range [][]string{{"buying", "suppliers"}, {"days", "hands"}, {"days", "jobs"}} {
		if a, b := text.At(was, group), text.At(now, group); a != nil && b != nil {
			ops = append(ops, keysRenamed(group, a, b)...)
		}
	}
	return ops
}

func keysRenamed(path []string, a, b *text.Node) []Op {
	gone, come := without(a.Entries, b), without(b.Entries, a)
	var ops []Op
	for _, old := range gone {
		i := slices.IndexFunc(come, func(e text.Entry) bool { return alike(old.Value, e.Value) && sameNeighbor(a, b, old.Key, e.Key) })
		if i < 0 {
			continue
		}
		ops = append(ops, Op{Do: text.Rename, Path: append(slices.Clone(path), old.Key), Value: come[i].Key})
		come = slices.Delete(come, i, i+1)
	}
	return ops
}

// without gives the entries whose keys a map does not have.
func without(entries []text.Entry, n *text.Node) []text.Entry {
	var out []text.Entry
	for _, e := range entries {
		if n.Get(e.Key) == nil {
			out = append(out, e)
		}
	}
	return out
}

// alike reports whether two values are equal or have an entry in common.
func alike(a, b *text.Node) bool {
	return text.Equal(a, b) || slices.ContainsFunc(a.Entries, func(e text.Entry) bool {
		other := b.Get(e.Key)
		return other != nil && text.Equal(e.Value, other)
	})
}

// sameNeighbor reports whether two keys stand at the same place, counted from either end.
func sameNeighbor(a, b *text.Node, old, now string) bool {
	i, j := place(a, old), place(b, now)
	return i == j || len(a.Entries)-i == len(b.Entries)-j
}

func place(n *text.Node, key string) int {
	return slices.IndexFunc(n.Entries, func(e text.Entry) bool { return e.Key == key })
}

// pointsRenamed finds corners and points with other names, where no other was added or taken out.
func pointsRenamed(was, now *text.Node) []Op {
	var ops []Op
	for _, list := range []string{"corners", "points"} {
		path := []string{"survey", list}
		a, b := pointsOf(text.At(was, path)), pointsOf(text.At(now, path))
		for i := 0; len(a) == len(b) && i < len(a); i++ {
			if !slices.Contains(b, a[i]) && !slices.Contains(a, b[i]) {
				ops = append(ops, Op{Do: text.Rename, Path: append(slices.Clone(path), a[i]), Value: b[i]})
			}
		}
	}
	return ops
}

func pointsOf(n *text.Node) []string {
	if n == nil {
		return nil
	}
	var words []string
	for _, c := range append(slices.Clone(n.Items), n) {
		for _, w := range namesIn(c) {
			words = append(words, w.Text)
		}
	}
	return words
}
