package nest

import (
	"testing"

	"pgregory.net/rapid"
)

// drawn is a small problem.
func drawn(t *rapid.T, side int64, parts int) Problem {
	p := Problem{
		Kerf:      rapid.Int64Range(0, 2).Draw(t, "kerf"),
		First:     rapid.SampledFrom([]Cut{Whole, Whole, Rip, Crosscut}).Draw(t, "first"),
		Stages:    rapid.SampledFrom([]int{0, 0, 1, 2, 3, 4}).Draw(t, "stages"),
		LeastSide: rapid.Int64Range(0, 2).Draw(t, "least"),
	}
	for range rapid.IntRange(1, 2).Draw(t, "sheets") {
		p.Sheets = append(p.Sheets, Sheet{
			W: rapid.Int64Range(2, side).Draw(t, "W"), H: rapid.Int64Range(2, side).Draw(t, "H"),
			Price: rapid.Int64Range(0, 4).Draw(t, "price"),
			Count: rapid.IntRange(-1, 3).Draw(t, "count"),
			Trim:  rapid.SampledFrom([]int64{0, 0, 0, 1}).Draw(t, "trim"),
		})
	}
	for parts > 0 {
		n := rapid.IntRange(1, min(parts, 3)).Draw(t, "n")
		p.Parts = append(p.Parts, Part{
			W: rapid.Int64Range(1, side-1).Draw(t, "w"), H: rapid.Int64Range(1, side-1).Draw(t, "h"),
			Count: n, Turns: rapid.Bool().Draw(t, "turns")})
		parts -= n
	}
	return p
}

// TestExact holds what few parts cost against cutting at every place.
func TestExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 8, rapid.IntRange(1, ExactParts).Draw(t, "parts"))
		r := Pack(p)
		if err := recheck(p, r); err != nil {
			t.Fatalf("%v\n%+v", err, r)
		}
		compare(t, p, r)
	})
}

func compare(t *rapid.T, p Problem, r Result) {
	want := newBrute(p, r.Unfit).best()
	got := answer{money: r.Money}
	for _, n := range r.Lacking {
		got.lack += n
	}
	if p.First == Whole && p.Stages == 0 {
		got.spare = r.Offcut.Area()
		if !r.Complete {
			t.Fatalf("not complete: %+v", r)
		}
	}
	if got != want || r.Lower != r.Money || r.Fewest != got.lack {
		t.Fatalf("got %+v (%d, %d), want %+v", got, r.Fewest, r.Lower, want)
	}
}

// TestUnfit: a part is listed just if it alone can be cut from no sheet.
func TestUnfit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawn(t, 7, 1)
		r := Pack(p)
		fits := false
		b := newBrute(p, nil)
		for _, s := range p.Sheets {
			fits = fits || s.Count != 0 && b.sheet(s, 1)
		}
		if fits == (len(r.Unfit) == 1) {
			t.Fatalf("fits: %v, unfit: %v", fits, r.Unfit)
		}
	})
}
