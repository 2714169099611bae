package geom

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"dryfit/internal/unit"
)

const wall = "0 0:1, 100 0:2, 100 80:3, 0 80:4"

// Worked out by hand.
func TestMinus(t *testing.T) {
	for _, c := range []struct {
		name     string
		openings []string
		want     string
	}{
		{"none", nil, wall},
		{"a window", []string{"30 30:5, 50 30:6, 50 60:7, 30 60:8"}, wall + " / 30 30:8, 30 60:7, 50 60:6, 50 30:5"},
		{"a door to the floor", []string{"30 0:5, 50 0:6, 50 60:7, 30 60:8"},
			"0 0:1, 30 0:8, 30 60:7, 50 60:6, 50 0:1, 100 0:2, 100 80:3, 0 80:4"},
		{"a door below the floor", []string{"30 -9:5, 50 -9:6, 50 60:7, 30 60:8"},
			"0 0:1, 30 0:8, 30 60:7, 50 60:6, 50 0:1, 100 0:2, 100 80:3, 0 80:4"},
		{"two that touch", []string{"20 20:5, 40 20:6, 40 40:7, 20 40:8", "40 20:9, 60 20:10, 60 40:11, 40 40:12"},
			wall + " / 20 20:8, 20 40:7, 40 40:11, 60 40:10, 60 20:9, 40 20:5"},
		{"two that overlap", []string{"20 20:5, 40 20:6, 40 40:7, 20 40:8", "30 30:9, 50 30:10, 50 50:11, 30 50:12"},
			wall + " / 20 20:8, 20 40:7, 30 40:12, 30 50:11, 50 50:10, 50 30:9, 40 30:6, 40 20:5"},
		{"one in the other", []string{"20 20:5, 60 20:6, 60 60:7, 20 60:8", "30 30:9, 50 30:10, 50 50:11, 30 50:12"},
			wall + " / 20 20:8, 20 60:7, 60 60:6, 60 20:5"},
		{"twice the same: the first one's labels", []string{"20 20:5, 60 20:6, 60 60:7, 20 60:8", "20 20:9, 60 20:10, 60 60:11, 20 60:12"},
			wall + " / 20 20:8, 20 60:7, 60 60:6, 60 20:5"},
		{"from side to side: two parts", []string{"-5 30:5, 105 30:6, 105 50:7, -5 50:8"},
			"0 0:1, 100 0:2, 100 30:5, 0 30:4 / 0 50:7, 100 50:2, 100 80:3, 0 80:4"},
		{"outside, flush: the outline keeps its label", []string{"100 20:5, 120 20:6, 120 60:7, 100 60:8"}, wall},
		{"all of it", []string{"-1 -1, 101 -1, 101 81, -1 81"}, ""},
		{"a corner that touches the outline", []string{"50 0:5, 60 20:6, 50 40:7, 40 20:8"},
			wall + " / 50 0:8, 40 20:7, 50 40:6, 60 20:5"},
		{"slanting: corners rounded half up", []string{"90 -10:5, 110 -10:6, 110 10:7"},
			"0 0:1, 100 0:2, 100 80:3, 0 80:4"},
	} {
		var openings []Region
		for _, o := range c.openings {
			openings = append(openings, parse(t, o))
		}
		got, err := parse(t, wall).Minus(openings)
		if err != nil || show(got) != show(parse(t, c.want)) {
			t.Errorf("%s:\n got %s, %v\nwant %s", c.name, show(got), err, show(parse(t, c.want)))
		}
	}
}

func TestAndUnion(t *testing.T) {
	for _, c := range []struct{ name, g, h, and, union string }{
		{"apart", square, "20 0, 30 0, 30 10", "", square + " / 20 0, 30 0, 30 10"},
		{"touching along an edge: no area", square, "10 0:5, 20 0:6, 20 10:7, 10 10:8", "",
			"0 0:1, 10 0:5, 20 0:6, 20 10:7, 10 10:3, 0 10:4"},
		{"overlapping", square, "5 5:5, 15 5:6, 15 15:7, 5 15:8", "5 5:5, 10 5:2, 10 10:3, 5 10:8",
			"0 0:1, 10 0:2, 10 5:5, 15 5:6, 15 15:7, 5 15:8, 5 10:3, 0 10:4"},
		{"the first one's labels on a common edge", square, "0 0:5, 10 0:6, 10 5:7, 0 5:8", "0 0:1, 10 0:2, 10 5:7, 0 5:4",
			square},
		{"with nothing", square, "", "", square},
		{"a hole stays", holed, "0 0:9, 10 0:9, 10 10:9, 0 10:9", holed, square},
	} {
		and, err1 := parse(t, c.g).And(parse(t, c.h))
		union, err2 := parse(t, c.g).Union(parse(t, c.h))
		if err1 != nil || show(and) != show(parse(t, c.and)) {
			t.Errorf("%s: and %s, %v, want %s", c.name, show(and), err1, show(parse(t, c.and)))
		}
		if err2 != nil || show(union) != show(parse(t, c.union)) {
			t.Errorf("%s: union %s, %v, want %s", c.name, show(union), err2, show(parse(t, c.union)))
		}
	}
}

func TestBooleanRefusesWhatIsNoRegion(t *testing.T) {
	for _, c := range []struct {
		opening string
		want    InvalidError
	}{
		{"0 0, 4 4, 4 0, 0 4", InvalidError{2, 0, 0, 0, 2}},
		{"0 0, 4 0", InvalidError{2, 0, 0, 0, 1}},
		{square + " / 5 5, 5 7, 15 7, 15 5", InvalidError{2, 0, 1, 1, 1}}, // a hole that crosses its outer
		{square + " / 4 0, 4 2, 6 2, 6 0", InvalidError{2, 0, 1, 0, 3}},   // a hole that shares a stretch
	} {
		_, err := parse(t, wall).Minus([]Region{parse(t, square), parse(t, c.opening)})
		var invalid *InvalidError
		if !errors.As(err, &invalid) || *invalid != c.want {
			t.Errorf("%s: %v, want %v", c.opening, err, &c.want)
		}
	}
}

// Outers one in the other are no region either, but no two edges of them meet: the library's panic becomes an error, or
// its answer stands.
func TestBooleanNeverPanics(t *testing.T) {
	r := lattice{rand.New(rand.NewPCG(5, 5))}
	for range 500 {
		g := r.room(8)
		g = append(g, r.convex(4).moved(r.point(0, 9).Add), r.convex(3).moved(r.point(0, 9).Add).Reverse())
		if out, err := g.Minus([]Region{{r.tile()}}); err != nil && out != nil {
			t.Fatal("a region and an error")
		}
	}
}

// A room is what a tile takes of it and what it leaves, and labels lie on their edges in both; the area taken is that
// of the clipper of this package, which shares no code with the library.
func TestMinusAndAgainstClipper(t *testing.T) {
	r := rooms{rand.New(rand.NewPCG(2, 2)), unit.Micrometre}
	for k := range 500 {
		g := r.room()
		tile := r.tile(g)
		taken, err1 := g.And(Region{tile})
		rest, err2 := g.Minus([]Region{{tile}})
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		slack := slackOf(taken) + slackOf(rest)
		if d := math.Abs(float64(taken.Area2()+rest.Area2()-g.Area2())) / 2; d > slack {
			t.Errorf("case %d: %.0f lost", k, d)
		}
		if d := math.Abs(float64(taken.Area2()-g.ClipConvex(tile).Area2())) / 2; d > slack {
			t.Errorf("case %d: %.0f off the clipper", k, d)
		}
		checkLabels(t, taken, append(sources(g, false), sources(Region{tile}, false)...))
		checkLabels(t, rest, append(sources(g, false), sources(Region{tile}, true)...))
	}
}
