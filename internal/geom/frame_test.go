package geom

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

func TestTurn(t *testing.T) {
	for turn, want := range []string{"1 2:7, 5 2, 5 3", "-2 1:7, -2 5, -3 5", "-1 -2:7, -5 -2, -5 -3", "2 -1:7, 2 -5, 3 -5"} {
		g := parse(t, "1 2:7, 5 2, 5 3")
		if got := show(Turn(turn).Region(g)); got != show(parse(t, want)) {
			t.Errorf("turned %d: %s, want %s", turn, got, want)
		}
		if got := show(Region{Turn(turn).Ring(g[0])}); got != show(parse(t, want)) {
			t.Errorf("ring turned %d: %s, want %s", turn, got, want)
		}
	}
	if got, want := Turn(1).Rect(rectOf(t, "1 2 5 7")), rectOf(t, "-7 1 -2 5"); got != want {
		t.Errorf("%v, want %v", got, want)
	}
}

func TestMove(t *testing.T) {
	if got, want := show(parse(t, "1 2:7, 5 2, 5 3").Move(pt(-1, 10))), "0 12:7, 4 12, 4 13"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// Quarter turns go there and back exactly, anywhere within reach, and agree with Turn.
func TestFrameQuarterTurns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, origin := drawPoint(t), drawPoint(t)
		k := rapid.IntRange(-5, 5).Draw(t, "quarters")
		f := Frame{origin, unit.Angle(k) * 90 * unit.Degree}
		if back := f.Out(f.In(p)); back != p {
			t.Fatalf("%v came back as %v", p, back)
		}
		if got, want := f.Out(p), origin.Add(Turn((k%4+4)%4).Point(p)); got != want {
			t.Fatalf("%v, want %v", got, want)
		}
	})
}

// sines from closed forms, in 200 bits: sin 15° = (√6-√2)/4, sin 30° = 1/2, sin 45° = √2/2, sin 60° = √3/2,
// sin 75° = (√6+√2)/4, sin 18° = (√5-1)/4.
func TestSineAgainstClosedForms(t *testing.T) {
	root := func(v int64) *big.Float {
		return new(big.Float).SetPrec(200).Sqrt(big.NewFloat(float64(v)).SetPrec(200))
	}
	sum := func(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(200).Add(a, b) }
	neg := func(a *big.Float) *big.Float { return new(big.Float).Neg(a) }
	one := big.NewFloat(1)
	for _, c := range []struct {
		degrees  unit.Angle
		value    *big.Float // times 4
		distance int64
	}{
		{0, big.NewFloat(0), 0}, {90, big.NewFloat(4), 0}, {30, big.NewFloat(2), 4},
		{15, sum(root(6), neg(root(2))), 4}, {18, sum(root(5), neg(one)), 4}, {45, root(8), 4},
		{60, root(12), 4}, {75, sum(root(6), root(2)), 4},
	} {
		want, _ := new(big.Float).SetMantExp(c.value, 60).Int64() // 4·sin in 2^-60 is sin in 2^-62
		if got := fixedSin(c.degrees * unit.Degree); abs(got-want) > uint64(c.distance) {
			t.Errorf("sin %d°: %d, want %d", c.degrees, got, want)
		}
	}
	if fixedSin(45*unit.Degree)-fixedCos(45*unit.Degree) > 4 {
		t.Error("sine and cosine of 45° differ")
	}
}

// Against the standard library to a hundredth of a count beyond the rounding; and a turn keeps distances.
func TestFrameAgainstFloats(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPoint(t)
		p.X, p.Y = p.X/2, p.Y/2
		a := unit.Angle(rapid.Int64Range(-720_000_000, 720_000_000).Draw(t, "angle"))
		f := Frame{pt(1000, -77), a}
		got := f.Out(p).Sub(f.Origin)
		s, c := math.Sincos(a.Radians())
		x, y := float64(p.X)*c-float64(p.Y)*s, float64(p.X)*s+float64(p.Y)*c
		if math.Abs(float64(got.X)-x) > 0.51 || math.Abs(float64(got.Y)-y) > 0.51 {
			t.Fatalf("%v turned by %d: %v, want %f %f", p, a, got, x, y)
		}
		if back := f.In(f.Out(p)).Sub(p); back.X.Abs() > 1 || back.Y.Abs() > 1 {
			t.Fatalf("%v came back off by %v", p, back)
		}
	})
}

// A region goes as its points go, labels and order kept.
func TestRegionInFrame(t *testing.T) {
	f := Frame{pt(3, 4), 30 * unit.Degree}
	g := parse(t, "0 0:1, 1000 0:2, 1000 1000:3 / 700 400:4, 600 300:5, 700 300:6")
	in, out := g.In(f), g.Out(f)
	for i, r := range g {
		for k, v := range r {
			if in[i][k] != (Vertex{f.In(v.P), v.Edge}) || out[i][k] != (Vertex{f.Out(v.P), v.Edge}) {
				t.Errorf("vertex %d of ring %d: %v and %v", k, i, in[i][k], out[i][k])
			}
		}
	}
}
