package document

import (
	"strings"
	"testing"

	"dryfit/internal/diag"
)

const ringRoom = `dryfit: 1
name: n
units: in
survey:
  corners: A B C D   # clockwise
  tape: {A-B: 72, B-C: 96, C-D: 72, D-A: 96, A-C: 120}
  level line: {down: {A: 40, B: 40, C: 40, D: 40}}
walls:
  one: {along: A-B, build-up: [board 1/2, tile], out of plumb: {A: 0, B: 1/8}}
  two: {along: B-C}
  three: {along: C-D}
  four: {along: D-A}
stub-outs:
  near: {in: one, across: 30 from A, up: 20 above floor, diameter: 5/8}
  far: {in: two, across: 20 to 22 from C, up: 20 above floor, diameter: 5/8}
`

// Each line: what is done to the corners; what the document says then, or what stands in the way.
func TestCornersChange(t *testing.T) {
	for _, c := range []struct {
		do   string
		edit func(src []byte) ([]Op, []string)
		want []string
	}{
		{"a corner in wall one: the half with the pipe keeps the name", add("E", "A"), []string{"corners: A E B C D   # clockwise", "one: {along: A-E, build-up: [board 1/2, tile], out of plumb: {A: 0}}",
			"wall EB: {along: E-B, build-up: [board 1/2, tile], out of plumb: {B: 1/8}}", "A-E: unknown", "E-B: unknown", "A-B: 72"}},
		{"a corner in wall two, whose pipe is measured from its right end", add("E", "B"), []string{"corners: A B E C D", "two: {along: E-C}", "wall BE: {along: B-E}"}},
		{"a corner after the last", add("E", "D"), []string{"corners: A B C D E", "four: {along: D-E}", "wall EA: {along: E-A}"}},
		{"a name that is taken", add("C", "A"), []string{"stop name-twice"}},
		{"a name of two words", add("E F", "A"), []string{"stop point-name"}},
		{"after a corner that is gone", add("E", "X"), []string{"stop corner-gone"}},
		{"both walls at a corner hold a pipe, so neither can go", remove("B"), []string{"stop unknown-name"}},
		{"a corner between walls of which one is empty", remove("D"), []string{"corners: A B C", "three: {along: C-A}", "tape: {A-B: 72, B-C: 96, A-C: 120}", "down: {A: 40, B: 40, C: 40}"}},
		{"two corners change places", order("A B D C"), []string{"corners: A B D C", "two: {along: B-D}", "20 to 22 from D", "three: {along: D-C}", "four: {along: C-A}"}},
		{"the walk was the other way round", order("A D C B"), []string{"one: {along: B-A", "two: {along: C-B}", "20 to 22 from C"}},
		{"a corner twice", order("A B C C"), []string{"stop corners-other"}},
	} {
		ops, stops := c.edit([]byte(ringRoom))
		said := strings.Join(stops, "\n")
		if len(stops) == 0 {
			next, found := Apply([]byte(ringRoom), ops)
			if found.Stops() {
				t.Errorf("%s: %v", c.do, found)
			}
			if _, found := Read("room", next); found.Stops() {
				t.Errorf("%s: the document then stops: %v\n%s", c.do, found, next)
			}
			said = string(next)
		}
		for _, w := range c.want {
			if !strings.Contains(said, w) {
				t.Errorf("%s: no %q in\n%s", c.do, w, said)
			}
		}
	}
}

func add(name, after string) func([]byte) ([]Op, []string) {
	return func(src []byte) ([]Op, []string) { ops, found := AddCorner(src, name, after); return ops, codes(found) }
}

func remove(name string) func([]byte) ([]Op, []string) {
	return func(src []byte) ([]Op, []string) { ops, found := RemoveCorner(src, name); return ops, codes(found) }
}

func order(s string) func([]byte) ([]Op, []string) {
	return func(src []byte) ([]Op, []string) {
		ops, found := OrderCorners(src, strings.Fields(s))
		return ops, codes(found)
	}
}

func codes(found diag.List) (out []string) {
	for _, f := range found {
		out = append(out, "stop "+f.Code+" "+f.At.Path+": "+f.Text)
	}
	return out
}

// What is measured over a whole wall is of no other wall: it has to go first, by the person's own hand.
func TestCornerInMeasuredWall(t *testing.T) {
	src := []byte(strings.Replace(ringRoom, "out of plumb: {A: 0, B: 1/8}", "width: 72", 1))
	if ops, found := AddCorner(src, "E", "A"); len(ops) > 0 || !found.Stops() {
		t.Errorf("%v %v", ops, found)
	}
}
