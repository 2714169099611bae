package geom

import (
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestClassify(t *testing.T) {
	for _, c := range []struct {
		region, rect string
		want         Where
	}{
		{square, "2 2 4 4", Inside}, {square, "0 0 10 10", Inside}, {square, "0 0 1 1", Inside}, // flush is inside
		{square, "10 0 12 5", Outside}, {square, "10 10 12 12", Outside}, {square, "20 20 22 22", Outside}, // touching is outside
		{square, "9 9 11 11", Across}, {square, "-5 -5 15 15", Across}, {square, "0 0 11 10", Across},
		{holed, "4 4 6 6", Outside}, {holed, "3 4 6 6", Across}, {holed, "5 5 6 6", Outside}, {holed, "0 0 4 10", Inside},
		{holed, "3 3 7 7", Across}, {holed, "0 0 10 10", Across},
		{cup, "3 4 7 10", Outside}, {cup, "3 5 7 12", Outside}, {cup, "3 3 7 5", Across}, {cup, "0 0 10 4", Inside},
		{triangle, "0 0 10 10", Across}, {triangle, "0 8 1 9", Outside}, {triangle, "3 1 7 5", Inside}, {triangle, "1 0 2 2", Inside},
		{triangle, "1 0 2 3", Across}, {triangle, "0 5 2 7", Outside},
		{"", "0 0 1 1", Outside},
	} {
		g := parse(t, c.region)
		for turn := range Turn(4) {
			h, r := turn.Region(g), turn.Rect(rectOf(t, c.rect))
			if got := NewIndex(h).Classify(r); got != c.want {
				t.Errorf("%s in %s, turned %d: %d, want %d", c.rect, c.region, turn, got, c.want)
			}
			if h.Covers(r) != (c.want == Inside) || h.Meets(r) != (c.want != Outside) {
				t.Errorf("%s in %s, turned %d: covers %v, meets %v", c.rect, c.region, turn, h.Covers(r), h.Meets(r))
			}
		}
	}
}

// The slow way: a rectangle of unit squares, each asked for by its middle, against rooms on even counts at 0°, 45°,
// 90°, whose lines run along the sides or diagonals of those squares.
func TestClassifyAgainstSquares(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawRoom(t)
		x, y := unit.Length(rapid.IntRange(-26, 26).Draw(t, "x")), unit.Length(rapid.IntRange(-26, 26).Draw(t, "y"))
		r := Rect{pt(x, y), pt(x+unit.Length(rapid.IntRange(1, 12).Draw(t, "w")), y+unit.Length(rapid.IntRange(1, 12).Draw(t, "h")))}
		if got, want := NewIndex(g).Classify(r), squares(g, r); got != want {
			t.Fatalf("%v in %s: %d, want %d", r, show(g), got, want)
		}
		if a, b := show(g.ClipRect(r, [4]Label{21, 22, 23, 24})), show(NewIndex(g).ClipRect(r, [4]Label{21, 22, 23, 24})); a != b {
			t.Fatalf("clipped %s, through the index %s", a, b)
		}
	})
}

func squares(g Region, r Rect) Where {
	in, out := false, false
	for x := r.Min.X; x < r.Max.X; x++ {
		for y := r.Min.Y; y < r.Max.Y; y++ {
			s := g.contains(pt(2*x+1, 2*y+1), 2)
			in, out = in || s >= 0, out || s <= 0
		}
	}
	switch {
	case in && out:
		return Across
	case in:
		return Inside
	}
	return Outside
}

// benchWall is 3 m by 2.4 m with four openings.
func benchWall() Region {
	box := func(x0, y0, x1, y1 unit.Length) Ring {
		return RectRing(Rect{pt(x0, y0), pt(x1, y1)}, 1, 2, 3, 4).moved(func(p Point) Point {
			return pt(p.X*unit.Millimetre, p.Y*unit.Millimetre)
		})
	}
	return Region{box(0, 0, 3000, 2400), box(410, 900, 1090, 1730).Reverse(), box(1305, 255, 1422, 377).Reverse(),
		box(1600, 1111, 1712, 1234).Reverse(), box(2200, 300, 2710, 1801).Reverse()}
}

func BenchmarkWallClip(b *testing.B) {
	g := benchWall()
	const w, h = 198 * unit.Millimetre, 122 * unit.Millimetre
	b.ReportAllocs()
	for b.Loop() {
		ix := NewIndex(g)
		for k := range unit.Length(300) {
			at := pt((k%15)*w+unit.Length(7*k), (k/15)*h)
			ix.ClipRect(Rect{at, at.Add(pt(w, h))}, [4]Label{})
		}
	}
}

func BenchmarkWallClipWithoutIndex(b *testing.B) {
	g := benchWall()
	const w, h = 198 * unit.Millimetre, 122 * unit.Millimetre
	b.ReportAllocs()
	for b.Loop() {
		for k := range unit.Length(300) {
			at := pt((k%15)*w+unit.Length(7*k), (k/15)*h)
			g.ClipRect(Rect{at, at.Add(pt(w, h))}, [4]Label{})
		}
	}
}

// BenchmarkHerringbone clips 2,500 pieces of 20 by 100 mm against a room turned by 45° into the pattern's frame, with
// six round holes of 64 corners.
func BenchmarkHerringbone(b *testing.B) {
	g := benchWall()
	r := rooms{rand.New(rand.NewPCG(1, 1)), unit.Micrometre}
	for k := range 6 {
		hole := r.turned(float64(k), round64(40*float64(unit.Millimetre))).Reverse()
		at := pt(unit.Length(k*220+1300)*unit.Millimetre, 2100*unit.Millimetre)
		g = append(g, hole.moved(at.Add))
	}
	g = g.In(Frame{Angle: 45 * unit.Degree})
	var tiles []Rect
	for k := range unit.Length(2500) {
		at := pt(k%50*50-100, k/50*80-2100)
		size := pt(100, 20)
		if k%2 == 1 {
			size = pt(20, 100)
		}
		mm := func(p Point) Point { return pt(p.X*unit.Millimetre, p.Y*unit.Millimetre) }
		tiles = append(tiles, Rect{mm(at), mm(at.Add(size))})
	}
	b.ReportAllocs()
	for b.Loop() {
		ix := NewIndex(g)
		for _, t := range tiles {
			ix.ClipRect(t, [4]Label{})
		}
	}
}

func round64(radius float64) (pts [][2]float64) {
	for k := range 64 {
		s := rotationBy(unit.Angle(k) * 360 * unit.Degree / 64)
		p := s.point(pt(unit.Length(radius), 0))
		pts = append(pts, [2]float64{float64(p.X), float64(p.Y)})
	}
	return pts
}
