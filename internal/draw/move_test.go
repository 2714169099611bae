package draw

import (
	"reflect"
	"testing"
)

func everything() []Item {
	return []Item{
		Path{ID: "p", Rings: [][]XY{{At(1, 2), At(3, 4)}, {At(5, 6)}}, Closed: true},
		Circle{C: At(7, 8), R: 9},
		Text{At: At(10, 11), Body: "t"},
		Group{Clip: &[2]XY{At(0, 0), At(50, 50)}, Items: []Item{Text{At: At(12, 13)}, Group{Items: []Item{Circle{C: At(1, 1)}}}}},
	}
}

// There and back is where it was, and the original has not moved.
func TestMoved(t *testing.T) {
	items := everything()
	there := Moved(items, At(100, -20))
	if !reflect.DeepEqual(items, everything()) {
		t.Error("the original moved")
	}
	if back := Moved(there, At(-100, 20)); !reflect.DeepEqual(back, items) {
		t.Errorf("there and back: %v", back)
	}
	want := []XY{At(101, -18), At(107, -12), At(110, -9), At(100, -20), At(112, -7), At(101, -19)}
	g := there[3].(Group)
	got := []XY{there[0].(Path).Rings[0][0], there[1].(Circle).C, there[2].(Text).At, g.Clip[0], g.Items[0].(Text).At, g.Items[1].(Group).Items[0].(Circle).C}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestReachAndShare(t *testing.T) {
	p := Path{Rings: [][]XY{{}, {At(5, 9)}, {At(-3, 4), At(8, 1)}}}
	if got := p.Reach(); got != Span(-3, 1, 8, 9) {
		t.Errorf("path reaches %v", got)
	}
	if got := (Circle{C: At(10, 20), R: 5}).Reach(); got != Span(5, 15, 15, 25) {
		t.Errorf("circle reaches %v", got)
	}
	for _, c := range []struct{ a, b, want Box }{
		{Span(0, 0, 10, 10), Span(5, 5, 20, 20), Span(5, 5, 10, 10)},
		{Span(0, 0, 10, 10), Span(2, 2, 3, 3), Span(2, 2, 3, 3)},
		{Span(0, 0, 10, 10), Span(20, 20, 30, 30), Span(20, 20, 20, 20)},
	} {
		if got := c.a.And(c.b); got != c.want {
			t.Errorf("%v and %v share %v", c.a, c.b, got)
		}
	}
}
