package outside

import "testing"

// TestLeast: of 3x + 2y >= 7 at 4 and 3 a piece, x = 1, y = 2 costs 10; not whole, 7/3 of x would cost 9 1/3.
func TestLeast(t *testing.T) {
	var p Program
	x, y := p.Var(4, 0, None), p.Var(3, 0, 5)
	p.AtLeast([]Term{{x, 3}, {y, 2}}, 7)
	if got := p.Least(t); got != 10 {
		t.Errorf("got %d", got)
	}
	p.AtMost([]Term{{y, 1}}, 1)
	if got := p.Least(t); got != 11 {
		t.Errorf("with one y at most: got %d", got)
	}
}
