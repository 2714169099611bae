package parts

import (
	"sort"
	"testing"

	"dryfit/internal/draw"

	"pgregory.net/rapid"
)

// The least sum of squared moves by trying every placement on a small grid. Rounding an isotonic least-squares
// solution to whole numbers keeps it the least among whole numbers, so equality is asked for.
func TestSpreadMovesLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := um(t, "want", rapid.IntRange(1, 5).Draw(t, "n"), 0, 8)
		sort.Slice(want, func(i, j int) bool { return want[i] < want[j] })
		apart := um(t, "apart", len(want)-1, 0, 3)
		var within *Limits
		if rapid.Bool().Draw(t, "limited") {
			within = &Limits{-1, -1 + sum(apart) + draw.Um(rapid.IntRange(0, 8).Draw(t, "slack"))}
		}
		got := spread(want, apart, within)
		for i := 1; i < len(got); i++ {
			if got[i]-got[i-1] < apart[i-1] {
				t.Fatalf("%v are too near for %v", got, apart)
			}
		}
		if within != nil && (got[0] < within.Lo || got[len(got)-1] > within.Hi) {
			t.Fatalf("%v leave %v", got, *within)
		}
		if g, b := moves(got, want), leastMoves(want, apart, within, nil); g != b {
			t.Fatalf("%v for %v apart %v within %v: %d, the least is %d", got, want, apart, within, g, b)
		}
	})
}

func um(t *rapid.T, name string, n, lo, hi int) []draw.Um {
	out := make([]draw.Um, n)
	for i := range out {
		out[i] = draw.Um(rapid.IntRange(lo, hi).Draw(t, name))
	}
	return out
}

func sum(v []draw.Um) (s draw.Um) {
	for _, x := range v {
		s += x
	}
	return s
}

func moves(got, want []draw.Um) (s draw.Um) {
	for i := range got {
		s += (got[i] - want[i]) * (got[i] - want[i])
	}
	return s
}

func leastMoves(want, apart []draw.Um, within *Limits, so []draw.Um) draw.Um {
	if len(so) == len(want) {
		return moves(so, want)
	}
	best := draw.Um(1 << 40)
	for at := draw.Um(-14); at <= 24; at++ {
		n := len(so)
		if n > 0 && at < so[n-1]+apart[n-1] || within != nil && (at < within.Lo || at > within.Hi) {
			continue
		}
		if moves(append(so, at), want) < best {
			best = min(best, leastMoves(want, apart, within, append(so, at)))
		}
	}
	return best
}

func TestSpreadBeyondTheRoomStandsOutEvenly(t *testing.T) {
	got := spread([]draw.Um{5, 5, 5}, []draw.Um{10, 10}, &Limits{0, 10})
	if got[0] != -5 || got[2] != 15 {
		t.Errorf("%v", got)
	}
	if spread(nil, nil, nil) != nil {
		t.Error("something of nothing")
	}
}
