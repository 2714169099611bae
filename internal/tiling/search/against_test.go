package search

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// randomRoom writes a room in the notation: up to three openings, some reaching the floor, some over each other.
func randomRoom(rng *rand.Rand) string {
	w, h := 500+rng.IntN(1000), 400+rng.IntN(800)
	var b strings.Builder
	fmt.Fprintf(&b, "room %d %d", w, h)
	xs, ys := spread(rng, w), spread(rng, h)
	for i := range rng.IntN(4) {
		x0, x1, y0, y1 := xs[2*i], xs[2*i+1], ys[2*i], ys[2*i+1]
		if rng.IntN(3) == 0 {
			y0 = 0
		}
		fmt.Fprintf(&b, " | open o%d %d %d %d %d", i, min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1))
	}
	for range rng.IntN(3) {
		fmt.Fprintf(&b, " | hole %d %d %d", rng.IntN(w), rng.IntN(h), 10+rng.IntN(60))
	}
	bonds := []string{"stack", "running 1/2", "running 1/3", "running 1/4", "vertical running 1/2", "vertical stack", "vertical running 1/3", "running 1/3 back", "running 2/5"}
	fmt.Fprintf(&b, " | tile %d %d %d | %s", 90+rng.IntN(210), 90+rng.IntN(210), rng.IntN(6), bonds[rng.IntN(len(bonds))])
	fmt.Fprintf(&b, " | mark %d | sight %d | hidden left %d | hidden ceiling %d | weight right %d", 10+rng.IntN(12),
		rng.IntN(h), rng.IntN(25), rng.IntN(25), rng.IntN(4))
	if rng.IntN(2) == 0 {
		fmt.Fprintf(&b, " | sight %d | enough %d | sliver %d", rng.IntN(h), 20+rng.IntN(40), 20+rng.IntN(40))
	}
	if rng.IntN(3) > 0 {
		fmt.Fprintf(&b, " | center %d", rng.IntN(w))
	}
	return b.String()
}

// spread returns six different places at least 30 apart and from both ends, in any order.
func spread(rng *rand.Rand, size int) []int {
	slots := rng.Perm(size/40 - 1)[:6]
	for i := range slots {
		slots[i] = 40*(slots[i]+1) + rng.IntN(10)
	}
	return slots
}

// Every markable offset of 500 random rooms is laid tile by tile and measured; the search must find the same best
// under every order of importance, and its measures of any one layout must be the same.
func TestBestAgainstBruteForce(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	rooms := 500
	if testing.Short() {
		rooms = 60
	}
	for n := range rooms {
		line := randomRoom(rng)
		in := read(t, line)
		in.Mark = max(in.Mark, max(in.Bond.Pitch.X, in.Bond.Pitch.Y).Ceil(unit.Millimetre)/14)
		in.Zero = geom.Point{X: unit.Length(rng.IntN(9)) * unit.Millimetre}
		compare(t, line, &in)
		if t.Failed() {
			t.Fatalf("room %d", n)
		}
	}
}

func compare(t *testing.T, line string, in *Input) {
	p := newProblem(in)
	center := p.center[0]
	if p.flip {
		center = p.center[1]
	}
	b := newBrute(in, center.At)
	var all []costs
	across, along := p.across(), newRows(p)
	for j := range p.t.steps {
		cols, _ := along.at(p.t.at(j))
		for i := range p.s.steps {
			o := p.origin(j, i)
			want := b.costs(o)
			all = append(all, want)
			if got := joined(cols, across, i, j); got != want {
				t.Errorf("%s\nmark %s origin %s %s:\n got %v\nwant %v", line, in.Mark.JSON(), o.X.JSON(), o.Y.JSON(), got, want)
				return
			}
			if got := p.assess(o).costs; got != want {
				t.Errorf("%s\nassess at %s %s:\n got %v\nwant %v", line, o.X.JSON(), o.Y.JSON(), got, want)
				return
			}
		}
	}
	for _, preset := range judge.Presets() {
		in.Order = preset.Order
		first := Best(*in).Finalists[0]
		if got, want := append(vector(first), even(first, in.Mark)), bruteBest(all, ranked(preset.Order)); !slices.Equal(got, want) {
			t.Errorf("%s\n%s: got %v want %v", line, preset.Name, got, want)
		}
	}
}

func joined(cols, across *columns, i, j int) (out costs) {
	for m := range out {
		out[m] = fold(m, cols[m][i], across[m][j])
	}
	return out
}

func vector(c Candidate) (out []int64) {
	for _, m := range c.Measures {
		out = append(out, m.Cost)
	}
	return out
}

// even is balance to the mark, which decides last.
func even(c Candidate, mark unit.Length) int64 {
	for _, m := range c.Measures {
		if m.Name == judge.Balance {
			return int64(m.Length / mark)
		}
	}
	return nothing
}

func bruteBest(all []costs, order []int) (best []int64) {
	for _, c := range all {
		var v []int64
		for _, m := range order {
			v = append(v, c[m])
		}
		if best == nil || slices.Compare(v, best) < 0 {
			best = v
		}
	}
	return best
}
