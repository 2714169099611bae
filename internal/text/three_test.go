package text

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Each line: the text, what one and what the other made of it, and the two together; "|" ends a line, and no outcome
// means that they can not be put together.
func TestThree(t *testing.T) {
	for _, c := range []struct{ base, mine, theirs, want string }{
		{"a: 1|b: 2|", "a: 1|b: 2|", "a: 1|b: 3|", "a: 1|b: 3|"},
		{"a: 1|b: 2|", "a: 4|b: 2|", "a: 1|b: 3|", "a: 4|b: 3|"},
		{"a: 1|b: 2|", "# new|a: 1|b: 2|", "a: 1|b: 3|", "# new|a: 1|b: 3|"},
		{"a: 1|b: 2|", "a: 1|# new|b: 2|", "a: 3|b: 4|", "a: 3|# new|b: 4|"},
		{"a: 1|b: 2|", "a: 1   # twice|b: 2|", "a: 5|b: 2|", "a: 5   # twice|b: 2|"},
		{"a: 1 # old words|", "a: 1 # new words|", "a: 2 # old words|", "a: 2 # new words|"},
		{"a: 1|", "a: 2|", "a: 3|", ""},
		{"a: 1|", "a: 2|", "a: 2|", "a: 2|"},
		{"a: 1|b: 2|", "b: 2|", "a: 1|", ""},
		{"a: 1|b: 2|c: 3|", "b: 2|c: 3|", "a: 1|b: 2|", "b: 2|"},
		{"", "a: 1|", "", "a: 1|"},
		{"a: 1", "a: 1|# end|", "a: 2", "a: 2|# end|"},
	} {
		lines := func(s string) []byte { return []byte(strings.ReplaceAll(s, "|", "\n")) }
		got, ok := Three(lines(c.base), lines(c.mine), lines(c.theirs))
		if said := strings.ReplaceAll(string(got), "\n", "|"); ok != (c.want != "") || ok && said != c.want {
			t.Errorf("%s, %s, %s: %q %v", c.base, c.mine, c.theirs, said, ok)
		}
	}
}

// Where one has changed nothing the other's text comes out, and it does not matter who is who.
func TestThreeLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		part := rapid.SampledFrom([]string{"a: 1\n", "b: 2\n", "# c\n", "d e f\n", "\n"})
		text := func(label string) []byte {
			return []byte(strings.Join(rapid.SliceOfN(part, 0, 6).Draw(t, label), ""))
		}
		base, mine, theirs := text("base"), text("mine"), text("theirs")
		if got, ok := Three(base, mine, base); !ok || string(got) != string(mine) {
			t.Fatalf("%q %v", got, ok)
		}
		if got, ok := Three(base, mine, mine); !ok || string(got) != string(mine) {
			t.Fatalf("%q %v", got, ok)
		}
		one, ok1 := Three(base, mine, theirs)
		two, ok2 := Three(base, theirs, mine)
		if ok1 != ok2 || ok1 && string(one) != string(two) && len(one) != len(two) {
			t.Fatalf("%q %v, %q %v", one, ok1, two, ok2)
		}
	})
}
