package text

import "iter"

// Back gives ways to undo one operation that made after out of before, the plainest first. Which of them gives back the
// bytes is for the caller to try; the last one gives back the tree at least. Each is made when it is asked for: the first
// or the second mostly does.
func Back(before, after []byte, op Op) iter.Seq[[]Op] {
	return func(yield func([]Op) bool) {
		was, _ := Parse(before)
		p := newPage(before)
		if !offer(yield)(p.back(was, op)) {
			return
		}
		for depth := len(op.Path) - 1; depth > 0; depth-- {
			old := At(was, op.Path[:depth])
			if old != nil && !offer(yield)(p.setBack(was, op.Path[:depth], old)) {
				return
			}
		}
		now, _ := Parse(after)
		yield(Diff(now, was))
	}
}

// offer gives an operation plainly, then with the text as it stood.
func offer(yield func([]Op) bool) func(plain Op, as string) bool {
	return func(plain Op, as string) bool {
		if !yield([]Op{plain}) {
			return false
		}
		plain.As = as
		return as == "" || yield([]Op{plain})
	}
}

// back gives the inverse of an operation, and the text that it takes away as it stands.
func (p *page) back(was *Node, op Op) (inverse Op, as string) {
	old := At(was, op.Path)
	last := len(op.Path) - 1
	parent, above, rest := walk(was, op.Path)
	switch {
	case op.Do == Rename:
		return p.renameBack(parent, op)
	case parent.Kind == List && op.Do == Remove && old != nil:
		return Op{Do: Add, Path: op.Path, Value: Flow(old)}, ""
	case parent.Kind == List && op.Do == Add:
		return Op{Do: Remove, Path: op.Path}, ""
	case op.Do == Remove && old != nil:
		return p.addBack(parent, above, op.Path, old)
	case old != nil:
		return p.setBack(was, op.Path, old)
	}
	return Op{Do: Remove, Path: op.Path[:last+2-len(rest)]}, "" // the first key that was not there
}

func (p *page) renameBack(parent *Node, op Op) (Op, string) {
	last := len(op.Path) - 1
	inverse := Op{Do: Rename, Path: under(op.Path[:last], op.Value), Value: op.Path[last]}
	i := parent.index(op.Path[last])
	if i < 0 {
		return inverse, ""
	}
	key, ok := p.key(parent.Entries[i])
	if !ok {
		return inverse, ""
	}
	return inverse, string(p.src[key.from:key.to])
}

// setBack sets a value to what it was.
func (p *page) setBack(was *Node, path []string, old *Node) (Op, string) {
	inverse := Op{Do: Set, Path: path, Value: Flow(old)}
	parent, _, rest := walk(was, path)
	i := parent.index(rest[0])
	if i < 0 {
		return inverse, ""
	}
	s, ok := p.behindColon(parent, i)
	if !ok {
		return inverse, ""
	}
	return inverse, string(p.src[s.from:s.to])
}

// addBack adds a key where it was, with the comments and blank lines above it.
func (p *page) addBack(parent *Node, above []Entry, path []string, old *Node) (Op, string) {
	i := parent.index(path[len(path)-1])
	inverse := Op{Do: Add, Path: path, Value: Flow(old)}
	if i+1 < len(parent.Entries) {
		inverse.Before = parent.Entries[i+1].Key
	}
	cut, _, ok := p.remove(parent, i, above)
	if ok && !parent.Flow {
		cut.from, ok = p.above(parent, above, i)
	}
	if !ok || cut.from > cut.to || len(parent.Entries) == 1 && len(above) > 0 {
		return inverse, ""
	}
	return inverse, string(p.src[cut.from:cut.to])
}
