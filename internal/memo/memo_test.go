package memo

import (
	"slices"
	"testing"
)

type question struct {
	name  string
	sizes []int
}

// An equal question is answered from what is kept, another is not; the oldest that nobody asked for again goes first.
func TestMemo(t *testing.T) {
	solved := 0
	sum := func(q question) int {
		solved++
		n := len(q.name)
		for _, s := range q.sizes {
			n += s
		}
		return n
	}
	var m Memo[question, int]
	ask := func(name string, sizes ...int) int { return m.Of(question{name, slices.Clone(sizes)}, sum) }
	for _, c := range []struct {
		name         string
		sizes        []int
		want, solved int
	}{
		{"a", []int{1, 2}, 4, 1}, {"a", []int{1, 2}, 4, 1}, {"a", []int{2, 1}, 4, 2}, {"a", nil, 1, 3}, {"b", []int{1, 2}, 4, 4}, {"a", []int{1, 2}, 4, 4},
	} {
		if got := ask(c.name, c.sizes...); got != c.want || solved != c.solved {
			t.Errorf("%s %v: %d after %d, want %d after %d", c.name, c.sizes, got, solved, c.want, c.solved)
		}
	}
	for i := range kept - 1 {
		ask("new", i)
	}
	before := solved
	if ask("a", 1, 2); solved != before {
		t.Error("what was asked for last is gone")
	}
	if ask("b", 1, 2); solved == before || len(m.list) > kept {
		t.Errorf("the oldest of more than %d is kept", kept)
	}
	var none *Memo[question, int]
	before = solved
	for range 2 {
		if got := none.Of(question{}, sum); got != 0 {
			t.Errorf("of nothing comes %d", got)
		}
	}
	if solved != before+2 {
		t.Error("nil keeps nothing")
	}
}
