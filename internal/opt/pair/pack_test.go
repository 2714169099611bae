package pair

import (
	"testing"

	"pgregory.net/rapid"
)

// keeps are mostly corners, as most pieces at the edge of a field have one.
var keeps = []Side{0, Left, Bottom, Right, Top, Left | Bottom, Bottom | Right, Right | Top,
	Top | Left, Left | Right, Bottom | Top, Left | Bottom | Top, Left | Bottom | Right, allSides}

// drawProblem draws pieces for a small blank.
func drawProblem(t *rapid.T, most int, shapes bool) Problem {
	small := func(name string, lo, hi int64) int64 { return rapid.Int64Range(lo, hi).Draw(t, name) }
	p := Problem{W: small("w", 3, 6), H: small("h", 3, 5), Kerf: small("kerf", 0, 1)}
	p.LeastStrip = rapid.SampledFrom([]int64{0, 0, 1, 2}).Draw(t, "least")
	for range rapid.IntRange(2, most).Draw(t, "n") {
		pc := Piece{W: small("pw", 1, p.W), H: small("ph", 1, p.H)}
		pc.Keep = rapid.SampledFrom(keeps).Draw(t, "keep")
		if pc.W < p.W && pc.Keep.has(Left|Right) {
			pc.Keep &^= Left
		}
		if pc.H < p.H && pc.Keep.has(Bottom|Top) {
			pc.Keep &^= Top
		}
		pc.Turns = rapid.SampledFrom([]Turn{0, Turn0, HalfTurns, AllTurns, Turn90}).Draw(t, "turns")
		if shapes && small("shaped", 0, 2) > 0 {
			pc.Shape = corners(box(pc.W, pc.H), int(small("drop", 0, 4)))
		}
		p.Pieces = append(p.Pieces, pc)
	}
	return p
}

// corners drops one corner of four, or none.
func corners(b []Pt, drop int) []Pt {
	if drop == 4 {
		return b
	}
	return append(b[:drop:drop], b[drop+1:]...)
}

// countable takes out the pieces that no blank yields.
func countable(p Problem) Problem {
	var ps []Piece
	for _, pc := range p.Pieces {
		if possible(p, pc) {
			ps = append(ps, pc)
		}
	}
	p.Pieces = ps
	return p
}

func TestPackAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := countable(drawProblem(t, 7, false))
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Fatalf("%v: %+v", err, p)
		}
		if want := fewest(p); r.Blanks != want || r.Lower > want {
			t.Fatalf("%d blanks, lower %d (%s), brute force %d: %+v", r.Blanks, r.Lower, r.Proof, want, p)
		}
	})
}

func TestShapesAgainstBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := countable(drawProblem(t, 5, true))
		r := Pack(p)
		if err := check(p, r); err != nil {
			t.Fatalf("%v: %+v", err, p)
		}
		if want := fewest(p); r.Blanks < want || r.Lower > want {
			t.Fatalf("%d blanks, lower %d (%s), brute force %d: %+v", r.Blanks, r.Lower, r.Proof, want, p)
		}
	})
}
