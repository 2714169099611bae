package document

import (
	"slices"

	"dryfit/internal/text"
)

// ringWall is a wall whose corners change, as its text has it.
type ringWall struct {
	g           ringing
	name        string
	left, right string
	is          *text.Node
}

// wall finds the wall between two corners, left to right.
func (g ringing) wall(left, right string) (ringWall, bool) {
	for _, w := range g.walls() {
		if w.left == left && w.right == right {
			return w, true
		}
	}
	return ringWall{}, false
}

func (g ringing) walls() []ringWall {
	var out []ringWall
	walls := g.tree.Get("walls")
	if walls == nil {
		return nil
	}
	for _, e := range walls.Entries {
		if along := e.Value.Get("along"); along != nil {
			left, right := lineOf(along.Text)
			out = append(out, ringWall{g, e.Key, left, right, e.Value})
		}
	}
	return out
}

func (w ringWall) path(keys ...string) []string { return append([]string{"walls", w.name}, keys...) }

func (w ringWall) along(left, right string) Op {
	return Op{Do: text.Set, Path: w.path("along"), Value: text.Typed(left + "-" + right)}
}

// keyedByCorner are the readings of a wall that stand by the name of one of its ends.
var keyedByCorner = [...]string{"out of plumb", "height", "diagonals"}

// wholly are the readings that are of the wall as it is and of no other; strung count from its left end.
var (
	wholly = [...]string{"width", "diagonals"}
	strung = [...]string{"profile", "studs", "floor", "ceiling"}
)

func (w ringWall) has(keys ...string) bool {
	return slices.ContainsFunc(keys, func(k string) bool { return w.is.Get(k) != nil })
}

// split makes two walls of one with a corner between; keepLeft: the half at the left end keeps the name. Nil where what is
// measured on the wall would be wrong then.
func (w ringWall) split(name string, keepLeft bool) []Op {
	if w.has(wholly[:]...) || !keepLeft && w.has(strung[:]...) {
		return nil
	}
	kept, new, goes := [2]string{w.left, name}, [2]string{name, w.right}, w.right
	if !keepLeft {
		kept, new, goes = new, kept, w.left
	}
	ops := []Op{w.along(kept[0], kept[1])}
	half := &text.Node{Kind: text.Map, Entries: []text.Entry{{Key: "along", Value: &text.Node{Kind: text.Scalar, Text: new[0] + "-" + new[1]}}}}
	if b := w.is.Get("build-up"); b != nil {
		half.Entries = append(half.Entries, text.Entry{Key: "build-up", Value: b})
	}
	for _, key := range keyedByCorner { // what was read at the end that the other half has now goes with it
		if n := text.At(w.is, []string{key, goes}); n != nil {
			ops = append(ops, Op{Do: text.Remove, Path: w.path(key, goes)})
			half.Entries = append(half.Entries, text.Entry{Key: key, Value: &text.Node{Kind: text.Map, Entries: []text.Entry{{Key: goes, Value: n}}}})
		}
	}
	return append(ops, Op{Do: text.Add, Path: []string{"walls", w.g.free("wall " + new[0] + new[1])}, Value: text.Flow(half)})
}

// free is a name that no wall has yet.
func (g ringing) free(name string) string {
	for text.At(g.tree, []string{"walls", name}) != nil {
		name += "'"
	}
	return name
}

// joined makes one wall of two that met at a corner: this one goes on to the far end of the other, which goes. Nil where
// what is measured on this wall would be wrong then.
func (w ringWall) joined(other ringWall, atLeft bool) []Op {
	far := other.right
	if atLeft {
		far = other.left
	}
	ops := w.end(atLeft, far)
	if ops == nil {
		return nil
	}
	for _, key := range keyedByCorner {
		if n := text.At(other.is, []string{key, far}); n != nil && key != "diagonals" {
			ops = append(ops, Op{Do: text.Set, Path: w.path(key, far), Value: text.Flow(n)})
		}
	}
	return append(ops, Op{Do: text.Remove, Path: []string{"walls", other.name}})
}

// end gives the wall another end, farther away. What was read at the old end goes.
func (w ringWall) end(atLeft bool, far string) []Op {
	if w.has(wholly[:]...) || atLeft && w.has(strung[:]...) {
		return nil
	}
	gone, ops := w.right, []Op{w.along(w.left, far)}
	if atLeft {
		gone, ops = w.left, []Op{w.along(far, w.right)}
	}
	for _, key := range keyedByCorner {
		if text.At(w.is, []string{key, gone}) != nil {
			ops = append(ops, Op{Do: text.Remove, Path: w.path(key, gone)})
		}
	}
	return ops
}

// match is a wall with the corners that it is to have.
type match struct {
	wall        ringWall
	left, right string
}

// matched gives each wall a side of the ring in another order.
func (g ringing) matched(order []string) []match {
	n := len(order)
	taken := map[int]bool{}
	var out, rest []match
	for _, w := range g.walls() {
		at := -1
		for i := range n {
			a, b := order[i], order[(i+1)%n]
			if a == w.left && b == w.right || a == w.right && b == w.left {
				at = i
			}
		}
		if at < 0 {
			rest = append(rest, match{wall: w})
			continue
		}
		taken[at] = true
		out = append(out, match{w, order[at], order[(at+1)%n]})
	}
	for _, m := range rest {
		at := slices.Index(g.ring, m.wall.left)
		for i := 0; i < n && at >= 0 && taken[at%n]; i++ {
			at++
		}
		if at >= 0 {
			taken[at%n] = true
			m.left, m.right = order[at%n], order[(at+1)%n]
			out = append(out, m)
		}
	}
	return out
}

// moved gives the wall the corners of another side. Where both stay, only their order is turned; else what counts from an
// old end counts from the new one.
func (w ringWall) moved(left, right string) []Op {
	switch {
	case left == w.left && right == w.right:
		return nil
	case left == w.right && right == w.left:
		return []Op{w.along(left, right)}
	}
	now := map[string]string{w.left: left, w.right: right}
	return slices.Concat([]Op{w.along(left, right)}, w.keyed(now), w.counted(now))
}

// keyed renames the ends in the wall's own readings.
func (w ringWall) keyed(now map[string]string) []Op {
	var ops []Op
	for _, key := range keyedByCorner {
		n := w.is.Get(key)
		if n == nil || n.Kind != text.Map || len(n.Entries) == 0 {
			continue
		}
		anew := &text.Node{Kind: text.Map}
		for _, e := range n.Entries {
			if to, ok := now[e.Key]; ok {
				e.Key = to
			}
			anew.Entries = append(anew.Entries, e)
		}
		if !text.Equal(n, anew) {
			ops = append(ops, Op{Do: text.Set, Path: w.path(key), Value: text.Flow(anew)})
		}
	}
	return ops
}

// counted changes places on the wall that count from an end.
func (w ringWall) counted(now map[string]string) []Op {
	var ops []Op
	change := func(n *text.Node, path ...string) {
		if n == nil || n.Kind != text.Scalar {
			return
		}
		for _, old := range []string{w.left, w.right} {
			if typed := renameIn(n.Text, old, now[old]); typed != n.Text {
				ops = append(ops, Op{Do: text.Set, Path: path, Value: text.Typed(typed)})
				return
			}
		}
	}
	for _, kind := range [...]string{"center lines", "openings", "stub-outs", "boxes", "in the wall"} {
		if all := w.g.tree.Get(kind); all != nil {
			for _, e := range all.Entries {
				if in := e.Value.Get("in"); in != nil && in.Text == w.name {
					change(e.Value.Get("across"), kind, e.Key, "across")
				}
			}
		}
	}
	if edges := w.is.Get("straightedge"); edges != nil {
		change(edges.Get("across"), w.path("straightedge", "across")...)
		for i, g := range edges.Items {
			change(g.Get("across"), w.path("straightedge", text.Item(i), "across")...)
		}
	}
	return ops
}
