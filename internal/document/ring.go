package document

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/text"
)

// AddCorner gives the operations that put a new corner between a corner and the next. The wall there becomes two: one
// half keeps its name and what is measured from its far end, the other is new and of the same build-up. Lines to tape to
// the new corner come with it, unknown. Where neither half can keep what is measured on the wall, nothing is done and the
// findings say what stands in the way.
func AddCorner(src []byte, name, after string) ([]Op, diag.List) {
	g, found := ringOf(src)
	name = strings.TrimSpace(name)
	at := slices.Index(g.ring, after)
	switch {
	case found.Stops():
		return nil, found
	case name == "" || strings.ContainsFunc(name, func(c rune) bool { return c == '-' || separates(c) }):
		return nil, g.stop("point-name", "{0} can not name a corner", "give it one word of letters and figures, like E", name)
	case slices.Contains(g.points(), name):
		return nil, g.stop("name-twice", "{0} is named already", "give the corner another name", name)
	case at < 0:
		return nil, g.stop("corner-gone", "there is no corner {0} any more", "look at the corners as they are now", after)
	}
	next := g.ring[(at+1)%len(g.ring)]
	ring := append([]Op{g.list(slices.Insert(slices.Clone(g.ring), at+1, name))}, g.unread(after, name)...)
	ring = append(ring, g.unread(name, next)...)
	w, ok := g.wall(after, next)
	if !ok {
		return ring, nil
	}
	return g.first(slices.Concat(ring, w.split(name, true)), slices.Concat(ring, w.split(name, false)))
}

// RemoveCorner gives the operations that take a corner out, with the readings that end at it. Of the two walls that met
// there one goes on to the next corner, the other goes: the one that something is in stays.
func RemoveCorner(src []byte, name string) ([]Op, diag.List) {
	g, found := ringOf(src)
	at, n := slices.Index(g.ring, name), len(g.ring)
	switch {
	case found.Stops():
		return nil, found
	case at < 0:
		return nil, g.stop("corner-gone", "there is no corner {0} any more", "look at the corners as they are now", name)
	case n <= 3:
		return nil, g.stop("corners-few", "a floor has at least three corners: {0} is needed", "give it another name or other readings instead", name)
	}
	before, after := g.ring[(at+n-1)%n], g.ring[(at+1)%n]
	ring := append([]Op{g.list(slices.Delete(slices.Clone(g.ring), at, at+1))}, g.readingsAt(name)...)
	ring = append(ring, g.unread(before, after)...)
	one, okOne := g.wall(before, name)
	two, okTwo := g.wall(name, after)
	switch {
	case okOne && okTwo:
		return g.first(slices.Concat(ring, one.joined(two, false)), slices.Concat(ring, two.joined(one, true)))
	case okOne:
		return g.first(slices.Concat(ring, one.end(false, after)))
	case okTwo:
		return g.first(slices.Concat(ring, two.end(true, before)))
	}
	return g.first(ring)
}

// OrderCorners gives the operations that put the same corners into another order. A wall stays the wall that it is: one
// whose two corners still follow each other keeps them, any other keeps its place in the walk and takes the corners that
// are there now, and what is measured from a corner that it lost is then measured from the one that it got.
func OrderCorners(src []byte, order []string) ([]Op, diag.List) {
	g, found := ringOf(src)
	if found.Stops() {
		return nil, found
	}
	if a, b := slices.Sorted(slices.Values(order)), slices.Sorted(slices.Values(g.ring)); !slices.Equal(a, b) {
		return nil, g.stop("corners-other", "the corners are {0}, each once", "put these into order", strings.Join(g.ring, " "))
	}
	if slices.Equal(order, g.ring) {
		return nil, nil
	}
	ops := []Op{g.list(order)}
	for _, m := range g.matched(order) {
		ops = append(ops, m.wall.moved(m.left, m.right)...)
	}
	return g.first(ops)
}

// ringing is a document with its corners, as the three take it.
type ringing struct {
	src  []byte
	tree *text.Node
	ring []string
}

func ringOf(src []byte) (ringing, diag.List) {
	tree, found := text.Parse(src)
	return ringing{src, tree, pointsOf(text.At(tree, []string{"survey", "corners"}))}, found
}

func (g ringing) stop(code, say, mend, name string) diag.List {
	var found diag.List
	at := g.tree.At
	if n := text.At(g.tree, []string{"survey", "corners"}); n != nil {
		at = n.At
	}
	found.Add(diag.Stop, code, at, say, mend, diag.T(short(name)))
	return found
}

func (g ringing) points() []string {
	return append(slices.Clone(g.ring), pointsOf(text.At(g.tree, []string{"survey", "points"}))...)
}

// list writes the corners as the document has them: words, or a list.
func (g ringing) list(ring []string) Op {
	value := text.Typed(strings.Join(ring, " "))
	if n := text.At(g.tree, []string{"survey", "corners"}); n != nil && n.Kind == text.List {
		all := &text.Node{Kind: text.List}
		for _, c := range ring {
			all.Items = append(all.Items, &text.Node{Kind: text.Scalar, Text: c})
		}
		value = text.Flow(all)
	}
	return Op{Do: text.Set, Path: []string{"survey", "corners"}, Value: value}
}

// unread asks for a line that is not there yet.
func (g ringing) unread(a, b string) []Op {
	tape := text.At(g.tree, []string{"survey", "tape"})
	if tape == nil || tape.Kind != text.Map {
		return nil
	}
	for _, e := range tape.Entries {
		if from, to := lineOf(e.Key); from == a && to == b || from == b && to == a {
			return nil
		}
	}
	return []Op{{Do: text.Set, Path: []string{"survey", "tape", a + "-" + b}, Value: "unknown"}}
}

func lineOf(key string) (from, to string) {
	from, to, _ = strings.Cut(key, "-")
	return strings.TrimSpace(from), strings.TrimSpace(to)
}

// readingsAt takes out what was read at a corner.
func (g ringing) readingsAt(name string) []Op {
	var ops []Op
	out := func(path ...string) {
		if text.At(g.tree, path) != nil {
			ops = append(ops, Op{Do: text.Remove, Path: path})
		}
	}
	if tape := text.At(g.tree, []string{"survey", "tape"}); tape != nil {
		for _, e := range tape.Entries {
			if from, to := lineOf(e.Key); from == name || to == name {
				out("survey", "tape", e.Key)
			}
		}
	}
	out("survey", "level line", "down", name)
	out("survey", "level line", "up", name)
	out("corners", name)
	if n := text.At(g.tree, []string{"survey", "finished floor"}); n != nil && n.Text == name {
		out("survey", "finished floor")
	}
	return ops
}

// first gives the first of the ways that stops nothing that went on before, or else what stops the first.
func (g ringing) first(ways ...[]Op) ([]Op, diag.List) {
	_, before := Read("room", g.src)
	var why diag.List
	for _, ops := range ways {
		if ops == nil {
			continue
		}
		next, found := Apply(g.src, ops)
		if !found.Stops() {
			_, after := Read("room", next)
			found = newStops(before, after)
		}
		if !found.Stops() {
			return ops, nil
		}
		if why == nil {
			why = found
		}
	}
	if why == nil {
		why = g.stop("wall-measured", "a wall at {0} was measured as a whole: its width, diagonals, profile, studs, floor or ceiling line would be of another wall then", "take these readings out first, and take them again after", strings.Join(g.ring, " "))
	}
	return nil, why
}

// newStops are the stops of a text that one before did not have.
func newStops(before, after diag.List) (out diag.List) {
	known := map[string]int{}
	for _, f := range before {
		known[f.Code+" "+f.At.Path]++
	}
	for _, f := range after {
		key := f.Code + " " + f.At.Path
		if f.Class == diag.Stop && known[key] == 0 {
			out = append(out, f)
		}
		known[key]--
	}
	return out
}
