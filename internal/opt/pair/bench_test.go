package pair

import "testing"

// sequence is a small fixed generator of numbers (Park and Miller, CACM 31,
// 1988), so that a benchmark is the same everywhere.
type sequence int64

func (s *sequence) between(lo, hi int64) int64 {
	*s = *s * 16807 % 2147483647
	return lo + int64(*s)%(hi-lo+1)
}

// wall is the cut pieces of a wall of 300 x 600 tiles with two tapered ends,
// four openings and top and bottom cuts, in tenths of a millimeter.
func wall(turns Turn) Problem {
	p := Problem{W: 6000, H: 3000, Kerf: 25}
	s := sequence(7)
	for range 12 {
		p.Pieces = append(p.Pieces,
			Piece{W: s.between(1800, 1840), H: 3000, Keep: Bottom | Right | Top, Turns: turns},
			Piece{W: s.between(3300, 3360), H: 3000, Keep: Bottom | Left | Top, Turns: turns})
	}
	for range 20 {
		p.Pieces = append(p.Pieces, Piece{W: 6000, H: s.between(1190, 1220), Keep: Left | Top | Right, Turns: turns})
	}
	for range 16 {
		w, h := s.between(700, 4200), s.between(500, 2900)
		p.Pieces = append(p.Pieces, Piece{W: w, H: h, Keep: []Side{Left | Bottom, Right | Top, Top, Left}[s.between(0, 3)], Turns: turns})
	}
	return p
}

// triangles is the edge of a floor at 45 degrees: tiles cut along a diagonal,
// with the two factory edges kept.
func triangles(n int, lo, hi int64) Problem {
	p := Problem{W: 3000, H: 3000, Kerf: 25}
	s := sequence(11)
	for range n {
		a := s.between(lo, hi)
		p.Pieces = append(p.Pieces, Piece{W: a, H: a, Keep: Left | Bottom,
			Shape: []Pt{{0, 0}, {a, 0}, {0, a}}, Turns: AllTurns})
	}
	return p
}

// trims is small pieces without a side to keep.
func trims(n int) Problem {
	p := Problem{W: 6000, H: 3000, Kerf: 25}
	s := sequence(3)
	for range n {
		p.Pieces = append(p.Pieces, Piece{W: s.between(400, 2600), H: s.between(400, 1800), Turns: AllTurns})
	}
	return p
}

// distinct is strips that all differ, two to a tile.
func distinct(n int) Problem {
	p := Problem{W: 6000, H: 3000, Kerf: 25}
	s := sequence(5)
	for range n {
		p.Pieces = append(p.Pieces, Piece{W: s.between(300, 5900), H: 3000, Keep: Bottom | Left | Top, Turns: HalfTurns})
	}
	return p
}

func BenchmarkPack(b *testing.B) {
	for _, c := range []struct {
		name string
		p    Problem
	}{
		{"wall60", wall(HalfTurns)}, {"wall60directional", wall(Turn0)},
		{"triangles400", triangles(400, 200, 2900)}, {"triangles400large", triangles(400, 1600, 2900)},
		{"triangles100", triangles(100, 200, 2900)},
		{"trims60", trims(60)}, {"trims300", trims(300)}, {"distinct600", distinct(600)},
	} {
		b.Run(c.name, func(b *testing.B) {
			var r Result
			for b.Loop() {
				r = Pack(c.p)
			}
			b.ReportMetric(float64(r.Blanks), "blanks")
			b.ReportMetric(float64(r.Blanks-r.Lower), "gap")
			b.ReportMetric(float64(r.Steps), "steps")
		})
	}
}
