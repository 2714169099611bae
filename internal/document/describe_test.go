package document

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/text"
)

func TestDescribe(t *testing.T) {
	base := []byte(shared)
	for _, c := range []struct{ ops, want string }{
		{"set survey/tape/A-B = 71-7/8", "survey > tape > A-B: was 72, now 71-7/8"},
		{"set survey/tape/A-B = 8' 2-3/8\"", "survey > tape > A-B: was 72, now 8' 2-3/8\""},
		{"set survey/tape/A-B = unknown", "survey > tape > A-B: was 72, now unknown"},
		{"set name = Bath # 2", "name: was Shared room, now Bath"},
		{"set name = Bath: 2", "name: was Shared room, now Bath: 2"},
		{"add tiles/oak = {size: 6 x 6 x 3/8}", "added tiles > oak: {size: 6 x 6 x 3/8}"},
		{"remove walls/two", "removed walls > two: was {along: B-C}"},
		{"remove walls/one/build-up", "removed walls > one > build-up: was [board 1/2, tile]"},
		{"set walls/one/build-up = [board 1/2, bed 1/4, tile]", "walls > one > build-up: was [board 1/2, tile], now [board 1/2, bed 1/4, tile]"},
		{"rename walls/one = front", "renamed walls > one to front"}, // lay names it too, and that goes without saying
		{"rename walls/one = front; set walls/front/along = C-D", "renamed walls > one to front; walls > front > along: was A-B, now C-D"},
		{"rename tiles/slate = stone", "renamed tiles > slate to stone"},
		{"rename survey/corners/A = Q", "renamed survey > corners > A to Q"},
		{"rename survey/corners/A = Q; set survey/tape/Q-B = 73", "renamed survey > corners > A to Q; survey > tape > Q-B: was 72, now 73"},
		{"rename lay/one = two", "removed lay > one: was {fields: {main: {tile: slate}}}; added lay > two: {fields: {main: {tile: slate}}}"},
		{"remove survey/tape/A-B; add survey/tape/A-B = 72", "moved survey > tape > A-B"},
		{"remove survey/tape/A-B; add survey/tape/A-B = 73", "moved survey > tape > A-B: was 72, now 73"},
		{"set survey/tape/A-C/#2 = 121", "survey > tape > A-C: was [120, 120-1/8], now [120, 121]"},
		{"set walls/two = ~", "walls > two: was {along: B-C}, now nothing"},
		{"set name = Shared room", ""},
	} {
		got := strings.Join(Describe(base, apply(t, base, ops(t, c.ops))), "; ")
		if got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.ops, got, c.want)
		}
	}
}

func TestDescribeLists(t *testing.T) {
	a := []byte("gaps:\n  - {length: 72, gap: 1/8}\n  - {length: 24, gap: 1/16}\n")
	b := []byte("gaps:\n  - {length: 72, gap: 1/8}\n  - {length: 24, gap: 1/8, up: 4}\n")
	want := []string{"gaps > #2 > gap: was 1/16, now 1/8", "added gaps > #2 > up: 4"}
	if got := Describe(a, b); !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
}

func TestDescribeLayout(t *testing.T) {
	a := []byte("a: 1\n")
	if got := Describe(a, a); got != nil {
		t.Errorf("%q", got)
	}
	if got := Describe(a, []byte("# new\na: 1\n")); !slices.Equal(got, []string{"comments or layout alone"}) {
		t.Errorf("%q", got)
	}
}

// What is told is all there is: undoing each change that is told gives the text before. Here for every value of a demo.
func TestChangesLeaveNothingOut(t *testing.T) {
	src := readFile(t, "../demo/gable.yaml")
	tree, _ := text.Parse(src)
	for i, path := range paths(tree, nil) {
		if i%7 > 0 {
			continue
		}
		for _, o := range []Op{{Do: text.Set, Path: path, Value: "42"}, {Do: text.Remove, Path: path}, {Do: text.Rename, Path: path, Value: "Anew"}} {
			after, found := Apply(src, []Op{o})
			if found.Stops() {
				continue
			}
			all := Changes(src, after)
			if len(all) == 0 || len(all) > 2 || bytes.Equal(src, after) {
				t.Errorf("%v %v is told as %v", o.Do, o.Path, all)
			}
			if o.Do == text.Set && !slices.Equal(all[0].Path, path) {
				t.Errorf("set %v is told as %v", path, all)
			}
		}
	}
}
