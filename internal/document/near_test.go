package document

import (
	"testing"

	"pgregory.net/rapid"
)

// Distances worked out by hand; "restricted" shows at ca → abc, which is 3 and not 2.
func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"", "abc", 3}, {"slate", "slate", 0}, {"salte", "slate", 1}, {"slat", "slate", 1}, {"slates", "slate", 1},
		{"plate", "slate", 1}, {"kitten", "sitting", 3}, {"ca", "abc", 3}, {"ab", "ba", 1}, {"tile", "lite", 2}, {"½", "x", 1},
	} {
		if got := distance([]rune(c.a), []rune(c.b)); got != c.want {
			t.Errorf("%s, %s: %d, want %d", c.a, c.b, got, c.want)
		}
	}
}

// slowDistance is the definition, by recursion.
func slowDistance(a, b []rune) int {
	switch {
	case len(a) == 0:
		return len(b)
	case len(b) == 0:
		return len(a)
	}
	i, j := len(a)-1, len(b)-1
	d := min(slowDistance(a[:i], b)+1, slowDistance(a, b[:j])+1, slowDistance(a[:i], b[:j])+differ(a[i], b[j]))
	if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
		d = min(d, slowDistance(a[:i-1], b[:j-1])+1)
	}
	return d
}

func TestDistanceByDefinition(t *testing.T) {
	word := rapid.StringOfN(rapid.RuneFrom([]rune("abc")), 0, 6, -1)
	rapid.Check(t, func(t *rapid.T) {
		a, b := []rune(word.Draw(t, "a")), []rune(word.Draw(t, "b"))
		if got, want := distance(a, b), slowDistance(a, b); got != want {
			t.Fatalf("%s, %s: %d, want %d", string(a), string(b), got, want)
		}
	})
}

func TestNearest(t *testing.T) {
	names := []string{"basin wall", "end wall", "door wall"}
	for _, c := range []struct{ typed, want string }{
		{"basin wal", "basin wall"}, {"Basin-Wall", "basin wall"}, {"ned wall", "end wall"}, {"dor wall", "door wall"},
		{"window", ""}, {"x", ""}, {"", ""}, {"wall", ""},
	} {
		if got := nearest(c.typed, names); got != c.want {
			t.Errorf("%q: %q, want %q", c.typed, got, c.want)
		}
	}
}
