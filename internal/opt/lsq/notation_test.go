package lsq

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// network notation: readings parted by commas, each "A-B 2400", "A>B x 30" (offset along x) or "A>B y 30".
func readings(t testing.TB, text string, sigma float64) []Observation {
	t.Helper()
	var obs []Observation
	for _, part := range strings.Split(text, ",") {
		f := strings.Fields(part)
		v, err := strconv.ParseFloat(f[len(f)-1], 64)
		if err != nil || len(f[0]) != 3 {
			t.Fatalf("bad reading %q", part)
		}
		o := Observation{From: int(f[0][0] - 'A'), To: int(f[0][2] - 'A'), Value: v, Sigma: sigma}
		if len(f) == 3 {
			o.Kind = map[string]Kind{"x": OffsetX, "y": OffsetY}[f[1]]
		}
		obs = append(obs, o)
	}
	return obs
}

func name(i int) string { return string(rune('A' + i)) }

func names(list []int) string {
	s := ""
	for _, i := range list {
		s += name(i)
	}
	return s
}

// pairs prints observations as "A-B C-D".
func pairs(obs []Observation, list []int) string {
	var s []string
	for _, i := range list {
		s = append(s, name(obs[i].From)+"-"+name(obs[i].To))
	}
	return strings.Join(s, " ")
}

func pairList(list []Pair) string {
	var s []string
	for _, p := range list {
		s = append(s, name(p.From)+"-"+name(p.To))
	}
	return strings.Join(s, " ")
}

// points are written "0,0 3,0 3,4".
func points(t testing.TB, text string) (list []Point) {
	t.Helper()
	for _, f := range strings.Fields(text) {
		var p Point
		if _, err := fmt.Sscanf(f, "%g,%g", &p.X, &p.Y); err != nil {
			t.Fatalf("bad point %q", f)
		}
		list = append(list, p)
	}
	return list
}

// measured gives exact distances between points for pairs such as "AB BC".
func measured(at []Point, list string, sigma float64) (obs []Observation) {
	for _, f := range strings.Fields(list) {
		a, b := int(f[0]-'A'), int(f[1]-'A')
		obs = append(obs, Observation{Distance, a, b, math.Hypot(at[b].X-at[a].X, at[b].Y-at[a].Y), sigma})
	}
	return obs
}

func mustAdjust(t testing.TB, p Problem) Result {
	t.Helper()
	res, v := Adjust(p)
	if v.Outcome != Adjusted {
		t.Fatalf("not adjusted: %+v", v)
	}
	return res
}

func near(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %g", what, got, want, tolerance)
	}
}

// sameShape compares all distances between points: the shape without its place.
func sameShape(t testing.TB, got, want []Point, tolerance float64) {
	t.Helper()
	for i := range want {
		for j := range want[:i] {
			near(t, fmt.Sprintf("distance %d-%d", i, j), length(got[i], got[j]), length(want[i], want[j]), tolerance)
		}
	}
}

func shoelace(at []Point) float64 {
	s := 0.0
	for i := range at {
		j := (i + 1) % len(at)
		s += at[i].X*at[j].Y - at[j].X*at[i].Y
	}
	return s / 2
}
