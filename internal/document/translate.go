package document

import (
	"slices"

	"dryfit/internal/text"
)

// translate says an operation with the names that the head has given: in its path, and where it writes something, in
// what it writes. The clash is a name that both gave, or one given to what is here taken out.
func (g *merging) translate(op Op, after []byte) (Op, *Clash) {
	seen := after // what the operation is about stands here
	if op.Do == text.Remove || op.Do == text.Rename {
		seen = g.mine
	}
	now := op
	for _, name := range g.names {
		if clash := bothName(op, now, name); clash != nil {
			now.Path = clash.Path
			return now, clash
		}
		if takesOut(now, name, after) {
			return now, g.takenOut(op, now, name)
		}
		next, found := applyOne(seen, name)
		if found.Stops() {
			now.Path = renamed(now.Path, name)
			continue
		}
		for _, step := range append(stepsOf(seen, name), name) {
			now.Path, now.Before = renamed(now.Path, step), renamedBeside(now, step)
		}
		seen = next
	}
	return said(op, now, after, seen), nil
}

// bothName gives the clash of two names for one thing.
func bothName(op, now, name Op) *Clash {
	if now.Do != text.Rename || !slices.Equal(now.Path, name.Path) || name.Value == op.Value {
		return nil
	}
	return &Clash{renamed(now.Path, name), op.Path[len(op.Path)-1], name.Value, op.Value}
}

// takesOut reports whether what has got a name in the head is not there any more after an operation.
func takesOut(op, name Op, after []byte) bool {
	n := len(op.Path)
	if op.Do == text.Rename || op.Do == text.Add || n > len(name.Path) || !slices.Equal(op.Path, name.Path[:n]) {
		return false
	}
	tree, _ := text.Parse(after)
	if pointPath(name.Path) {
		return !slices.Contains(pointsOf(text.At(tree, name.Path[:2])), name.Path[2])
	}
	return text.At(tree, name.Path) == nil
}

func (g *merging) takenOut(op, now, name Op) *Clash {
	if len(now.Path) == len(name.Path) {
		return &Clash{renamed(now.Path, name), name.Path[len(name.Path)-1], name.Value, ""}
	}
	old, _ := text.Parse(g.base)
	head, _ := text.Parse(g.head)
	return &Clash{now.Path, flow(text.At(old, now.Path)), flow(text.At(head, now.Path)), op.Value}
}

// renamed gives a path after one of its keys has got another name.
func renamed(path []string, by Op) []string {
	n := len(by.Path)
	if by.Do != text.Rename || len(path) < n || !slices.Equal(path[:n], by.Path) {
		return path
	}
	out := slices.Clone(path)
	out[n-1] = by.Value
	return out
}

// renamedBeside gives the key that a new one goes in front of, after a renaming.
func renamedBeside(op Op, by Op) string {
	if op.Before == "" {
		return ""
	}
	last := len(op.Path) - 1
	beside := renamed(append(slices.Clone(op.Path[:last]), op.Before), by)
	return beside[last]
}

// said gives an operation what it writes under the new names, where that is another thing.
func said(op, now Op, before, after []byte) Op {
	if op.Do == text.Remove || op.Do == text.Rename {
		return now
	}
	a, _ := text.Parse(before)
	b, _ := text.Parse(after)
	was, is := flow(text.At(a, op.Path)), flow(text.At(b, now.Path))
	if is != "" && is != was {
		now.Value, now.As = is, ""
	}
	return now
}
