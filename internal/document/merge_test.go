package document

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/text"
)

// A base that two people change, small enough to see at a glance what must come of it.
const shared = `dryfit: 1
name: Shared room
units: in
survey:
  corners: A B C D
  tape: {A-B: 72, B-C: 96, C-D: 72, D-A: 96, A-C: [120, 120-1/8]}
walls:
  one: {along: A-B, build-up: [board 1/2, tile]}   # the first
  two: {along: B-C}
tiles:
  slate: {size: 24 x 12 x 3/8, kind: stone}
lay:
  one:
    fields: {main: {tile: slate}}
`

// each case: what they did, what you did, the operations that do both on the base, or the clashes.
var merges = []struct{ name, theirs, yours, both, clash string }{
	{"far apart", "set survey/tape/A-B = 73", "set tiles/slate/kind = glass", "set survey/tape/A-B = 73; set tiles/slate/kind = glass", ""},
	{"neighbors", "set survey/tape/A-B = 73", "set survey/tape/B-C = 97", "set survey/tape/A-B = 73; set survey/tape/B-C = 97", ""},
	{"one value, two results", "set survey/tape/A-B = 73", "set survey/tape/A-B = 74", "", "survey > tape > A-B: 72 | 73 | 74"},
	{"one value, one result", "set survey/tape/A-B = 73", "set survey/tape/A-B = 73", "set survey/tape/A-B = 73", ""},
	{"there and back", "set survey/tape/A-B = 73; set survey/tape/A-B = 72", "set survey/tape/A-B = 74", "set survey/tape/A-B = 74", ""},
	{"yours lies in theirs", "set walls/one = {along: A-B, build-up: [tile]}", "set walls/one/build-up = [board 1/4]", "", "walls > one > build-up: [board 1/2, tile] | [tile] | [board 1/4]"},
	{"yours lies in theirs, which left it alone", "set walls/one = {along: A-B, build-up: [board 1/2, tile], width: 72}", "set walls/one/build-up = [tile]", "set walls/one = {along: A-B, build-up: [tile], width: 72}", ""},
	{"yours contains theirs", "set tiles/slate/kind = glass", "set tiles/slate = {size: 12 x 12 x 3/8}", "", "tiles > slate: {size: 24 x 12 x 3/8, kind: stone} | {size: 24 x 12 x 3/8, kind: glass} | {size: 12 x 12 x 3/8}"},
	{"yours contains theirs and says the same", "set tiles/slate/kind = glass", "set tiles/slate = {size: 24 x 12 x 3/8, kind: glass}", "set tiles/slate/kind = glass", ""},
	{"they took out what you changed", "remove tiles/slate", "set tiles/slate/kind = glass", "", "tiles > slate: {size: 24 x 12 x 3/8, kind: stone} |  | {size: 24 x 12 x 3/8, kind: glass}"},
	{"they took out the value", "remove tiles/slate/kind", "set tiles/slate/kind = glass", "", "tiles > slate > kind: stone |  | glass"},
	{"they took out what you add to", "remove walls/two", "add walls/two/width = 96", "", "walls > two: {along: B-C} |  | {along: B-C, width: 96}"},
	{"you took out what they changed", "set tiles/slate/kind = glass", "remove tiles/slate", "", "tiles > slate: {size: 24 x 12 x 3/8, kind: stone} | {size: 24 x 12 x 3/8, kind: glass} | "},
	{"both took it out", "remove walls/two", "remove walls/two", "remove walls/two", ""},
	{"both added other things", "add tiles/oak = {kind: stone}", "add tiles/elm = {kind: glass}", "add tiles/oak = {kind: stone}; add tiles/elm = {kind: glass}", ""},
	{"both added one name, two things", "add tiles/oak = {kind: stone}", "add tiles/oak = {kind: glass}", "", "tiles > oak:  | {kind: stone} | {kind: glass}"},
	{"both added the same", "add tiles/oak = {kind: stone}", "add tiles/oak = {kind: stone}", "add tiles/oak = {kind: stone}", ""},
	{"you add and go on", "set survey/tape/A-B = 73", "add tiles/oak = {kind: stone}; set tiles/oak/kind = glass; rename tiles/oak = elm", "set survey/tape/A-B = 73; add tiles/elm = {kind: glass}", ""},
	{"two places of one list", "set survey/tape/A-C/#1 = 121", "set survey/tape/A-C/#2 = 122", "", "survey > tape > A-C: [120, 120-1/8] | [121, 120-1/8] | [120, 122]"},
	{"a list that they left alone", "set survey/tape/A-B = 73", "add survey/tape/A-C/#3 = 122", "set survey/tape/A-B = 73; set survey/tape/A-C = [120, 120-1/8, 122]", ""},
	{"they named what you change", "rename walls/one = first", "set walls/one/build-up = [tile]", "rename walls/one = first; set walls/first/build-up = [tile]", ""},
	{"you named what they change", "set walls/one/build-up = [tile]", "rename walls/one = first", "rename walls/one = first; set walls/first/build-up = [tile]", ""},
	{"they named what you refer to", "rename walls/one = first", "add stub-outs/cold = {in: one, across: 3 from A}", "rename walls/one = first; add stub-outs/cold = {in: first, across: 3 from A}", ""},
	{"you named what they refer to", "add stub-outs/cold = {in: one, across: 3 from A}", "rename walls/one = first", "rename walls/one = first; add stub-outs/cold = {in: first, across: 3 from A}", ""},
	{"they named what you lay on", "rename walls/one = first", "set lay/one/look for = even cuts", "rename walls/one = first; set lay/first/look for = even cuts", ""},
	{"they named a corner that you tape", "rename survey/corners/A = Q", "set survey/tape/A-B = 73; add survey/tape/B-D = 119", "rename survey/corners/A = Q; set survey/tape/Q-B = 73; add survey/tape/B-D = 119", ""},
	{"they named a corner, you add a line to it", "rename survey/corners/B = Q", "add survey/tape/B-D = 119", "rename survey/corners/B = Q; add survey/tape/Q-D = 119", ""},
	{"you named a corner that they tape", "add survey/tape/B-D = 119", "rename survey/corners/B = Q", "rename survey/corners/B = Q; add survey/tape/Q-D = 119", ""},
	{"two names for one", "rename walls/one = first", "rename walls/one = front", "", "walls > first: one | first | front"},
	{"one name for one", "rename walls/one = first", "rename walls/one = first", "rename walls/one = first", ""},
	{"one name for two", "rename walls/one = first", "rename walls/two = first", "", "walls > first:  | {along: A-B, build-up: [board 1/2, tile]} | {along: B-C}"},
	{"their thing has your name", "add walls/front = {along: C-D}", "rename walls/one = front", "", "walls > front:  | {along: C-D} | {along: A-B, build-up: [board 1/2, tile]}"},
	{"your thing has their name", "rename walls/one = front", "add walls/front = {along: C-D}", "", "walls > front:  | {along: A-B, build-up: [board 1/2, tile]} | {along: C-D}"},
	{"they took out what you name", "remove walls/two", "rename walls/two = side", "", "walls > two: {along: B-C} |  | side"},
	{"they took out the corner that you name", "set survey/corners = B C D", "rename survey/corners/A = Q", "", "survey > corners: A B C D | B C D | Q"},
	{"they named it, you take it out", "rename walls/two = side", "remove walls/two", "", "walls > side: two | side | "},
	{"they named one, you take out all", "rename tiles/slate = stone", "remove tiles", "", "tiles: {stone: {size: 24 x 12 x 3/8, kind: stone}} | {stone: {size: 24 x 12 x 3/8, kind: stone}} | "},
	{"they named a corner, you take it out", "rename survey/corners/A = Q", "set survey/corners = B C D", "", "survey > corners: Q B C D | Q B C D | B C D"},
	{"they named a corner, you add one", "rename survey/corners/A = Q", "set survey/corners = A B C D E", "rename survey/corners/A = Q; set survey/corners = Q B C D E", ""},
	{"you name it twice", "set walls/two/width = 96", "rename walls/two = x; rename walls/x = y", "rename walls/two = y; set walls/y/width = 96", ""},
	{"each clash is told", "set survey/tape/A-B = 73; set tiles/slate/kind = glass", "set survey/tape/A-B = 74; set name = N; set tiles/slate/kind = mosaic", "", "survey > tape > A-B: 72 | 73 | 74; tiles > slate > kind: stone | glass | mosaic"},
	{"nothing", "", "", "", ""},
	{"only theirs", "set name = N", "", "set name = N", ""},
	{"only yours", "", "set name = N", "set name = N", ""},
}

func apply(t interface{ Fatalf(string, ...any) }, src []byte, all []Op) []byte {
	out, found := Apply(src, all)
	if found.Stops() {
		t.Fatalf("%v: %v", all, found)
	}
	return out
}

func say(all []Clash) string {
	var lines []string
	for _, c := range all {
		lines = append(lines, strings.Join(c.Path, " > ")+": "+c.Was+" | "+c.Theirs+" | "+c.Yours)
	}
	return strings.Join(lines, "; ")
}

func TestMerge(t *testing.T) {
	base := []byte(shared)
	for _, c := range merges {
		theirs, yours := ops(t, c.theirs), ops(t, c.yours)
		head := apply(t, base, theirs)
		m := Merge(base, head, theirs, yours)
		if got := say(m.Clashes); got != c.clash || m.Found.Stops() {
			t.Errorf("%s: clashes %q %v, want %q", c.name, got, m.Found, c.clash)
		}
		if c.clash != "" {
			if !bytes.Equal(m.Text, head) || len(m.Ops) > 0 {
				t.Errorf("%s: a clash, and something is changed", c.name)
			}
			continue
		}
		if want := apply(t, base, ops(t, c.both)); !sameKeys(m.Text, want) {
			t.Errorf("%s: got\n%s\nwant\n%s", c.name, m.Text, want)
		}
		if got := apply(t, head, m.Ops); !bytes.Equal(got, m.Text) {
			t.Errorf("%s: the operations do not make the text from the head", c.name)
		}
		if comments(m.Text) != comments(base) && !strings.Contains(c.theirs, "set walls/one = ") {
			t.Errorf("%s: a comment is lost", c.name)
		}
	}
}

// sameKeys compares two documents with the keys of every group in one order: who came first decides where a new key goes.
func sameKeys(a, b []byte) bool {
	one, _ := text.Parse(a)
	two, _ := text.Parse(b)
	return text.Equal(inKeyOrder(one), inKeyOrder(two))
}

func inKeyOrder(n *text.Node) *text.Node {
	out := *n
	out.Entries, out.Items = nil, nil
	for _, e := range n.Entries {
		out.Entries = append(out.Entries, text.Entry{Key: e.Key, Value: inKeyOrder(e.Value)})
	}
	slices.SortFunc(out.Entries, func(a, b text.Entry) int { return strings.Compare(a.Key, b.Key) })
	for _, c := range n.Items {
		out.Items = append(out.Items, inKeyOrder(c))
	}
	return &out
}

// Where their operations are not known (a text put in whole), the names they gave are found from the two texts.
func TestMergeWithoutTheirOperations(t *testing.T) {
	base := []byte(shared)
	for _, c := range merges {
		head, yours := apply(t, base, ops(t, c.theirs)), ops(t, c.yours)
		a, b := Merge(base, head, ops(t, c.theirs), yours), Merge(base, head, nil, yours)
		if say(a.Clashes) != say(b.Clashes) || !bytes.Equal(a.Text, b.Text) {
			t.Errorf("%s: %q %v\n%s", c.name, say(b.Clashes), b.Found, b.Text)
		}
	}
}

// Operations that do not even fit the text that they were made on are refused, not guessed at.
func TestMergeOfWhatCanNotBe(t *testing.T) {
	base := []byte(shared)
	for _, c := range []string{"remove nowhere", "add name = N", "set name/first = N", "rename walls/one = two"} {
		m := Merge(base, base, nil, ops(t, c))
		if !m.Found.Stops() || len(m.Ops) > 0 || !bytes.Equal(m.Text, base) {
			t.Errorf("%s: %+v", c, m)
		}
	}
}

// Taking back what one person did, after another has done something else, leaves the other's work.
func TestMergeOfUndo(t *testing.T) {
	base, done := []byte(shared), 0
	for _, c := range merges {
		if c.clash != "" || c.theirs == "" || c.yours == "" {
			continue
		}
		yours := ops(t, c.yours)
		back, found := Invert(base, yours)
		if found.Stops() {
			t.Fatalf("%s: %v", c.name, found)
		}
		now := apply(t, base, yours)
		m := Merge(base, now, yours, ops(t, c.theirs)) // they come second this time
		undone := Merge(now, m.Text, m.Ops, back)
		if len(m.Clashes)+len(undone.Clashes) > 0 || len(m.Ops) == 0 {
			continue // they built on what is to be taken back, or it was the same
		}
		done++
		if want := apply(t, base, ops(t, c.theirs)); !sameKeys(undone.Text, want) {
			t.Errorf("%s: %v got\n%s\nwant\n%s", c.name, undone.Found, undone.Text, want)
		}
	}
	if done < 12 {
		t.Errorf("only %d cases were taken back", done)
	}
}

// Whoever comes first, the outcome is the same: both changes or a clash. Each person changes a thing once: what is
// changed there and back has met the other on its way.
func TestMergeEitherWay(t *testing.T) {
	base := []byte(shared)
	tree, _ := text.Parse(base)
	all := paths(tree, nil)
	rapid.Check(t, func(t *rapid.T) {
		one, two := drawOps(t, "one", base, all), drawOps(t, "two", base, all)
		first, second := apply(t, base, one), apply(t, base, two)
		a, b := Merge(base, first, one, two), Merge(base, second, two, one)
		if (len(a.Clashes) > 0) != (len(b.Clashes) > 0) || a.Found.Stops() != b.Found.Stops() {
			t.Fatalf("%v\n%v\n%s %v\n%s %v", one, two, say(a.Clashes), a.Found, say(b.Clashes), b.Found)
		}
		if len(a.Clashes) == 0 && !a.Found.Stops() && !sameKeys(a.Text, b.Text) {
			t.Fatalf("%v\n%v\n%s\n%s", one, two, a.Text, b.Text)
		}
	})
}

// drawOps draws one to three operations that can be done one after the other.
func drawOps(t *rapid.T, who string, src []byte, all [][]string) []Op {
	var out []Op
	for i := range rapid.IntRange(1, 3).Draw(t, who) {
		path := rapid.SampledFrom(all).Draw(t, "path")
		o := Op{Do: text.Verb(rapid.IntRange(0, 3).Draw(t, "do")), Path: path, Value: rapid.SampledFrom([]string{"72", "x", "[1, 2]", who}).Draw(t, "value")}
		if o.Do == text.Add {
			o.Path = append(slices.Clone(path[:len(path)-1]), "new "+rapid.SampledFrom([]string{"a", "b"}).Draw(t, "key"))
		}
		if o.Do == text.Rename && len(path)%2 == 1 {
			continue // the key of a group or of a fact is no name: walls > one, lay > one > fields > main are
		}
		if o.Do == text.Rename {
			o.Value = "called " + rapid.SampledFrom([]string{"a", "b", who}).Draw(t, "name") + []string{"", "1", "2"}[i]
		}
		again := slices.ContainsFunc(out, func(p Op) bool { return overlap(p.Path, o.Path) })
		if next, found := Apply(src, []Op{o}); !found.Stops() && !again && !sameKeys(next, src) {
			src, out = next, append(out, o)
		}
	}
	return out
}

func overlap(a, b []string) bool {
	n := min(len(a), len(b))
	return slices.Equal(a[:n], b[:n])
}

// Whatever is sent: no panic, and the operations that are given back make the text that is given back.
func FuzzMerge(f *testing.F) {
	for _, c := range merges[:12] {
		f.Add(shared, c.theirs, c.yours)
	}
	for _, c := range merges[20:] {
		f.Add(shared, c.theirs, c.yours)
	}
	f.Fuzz(func(t *testing.T, src, one, two string) {
		theirs, yours := loose(one), loose(two)
		base := []byte(src)
		head, found := Apply(base, theirs)
		if found.Stops() {
			theirs = nil
		}
		m := Merge(base, head, theirs, yours)
		got, found := Apply(head, m.Ops)
		if found.Stops() || !bytes.Equal(got, m.Text) || len(m.Clashes) > 0 && !bytes.Equal(m.Text, head) {
			t.Fatalf("%q %v %v: %+v", src, theirs, yours, m)
		}
		if back, found := Invert(head, m.Ops); !found.Stops() {
			if undone, found := Apply(m.Text, back); found.Stops() || !sameKeys(undone, head) {
				t.Fatalf("%q %v: %v gives %q", head, m.Ops, back, undone)
			}
		}
		Describe(base, m.Text)
	})
}

// loose reads operations and leaves out what is none.
func loose(s string) []Op {
	var all []Op
	for _, one := range strings.Split(s, "; ") {
		left, value, _ := strings.Cut(one, " = ")
		verb, path, _ := strings.Cut(left, " ")
		o := Op{Path: strings.Split(path, "/"), Value: value}
		if o.Do.UnmarshalText([]byte(verb)) == nil && len(all) < 4 {
			all = append(all, o)
		}
	}
	return all
}
