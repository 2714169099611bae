// Package laytest reads a face from one line and draws random ones, for tests:
//
//	0,0 3000,0 3000,2400 0,2400 / 500,500 900,500 900,1000 500,1000
//	3000x2400 - 400x500@500,500
//
// Corners in millimetres, the outline first, openings after slashes, in either direction; or a rectangle at 0,0 less
// rectangles with their size and lower left corner. Edges are labelled from 1 in the order in which they stand.
package laytest

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"pgregory.net/rapid"

	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// Face reads the notation; it panics on what it can not read.
func Face(line string) geom.Region {
	if !strings.Contains(line, " ") || strings.Contains(line, " - ") {
		return boxes(strings.Split(line, " - "))
	}
	var rings [][]geom.Point
	for text := range strings.SplitSeq(line, "/") {
		var ring []geom.Point
		for s := range strings.FieldsSeq(text) {
			ring = append(ring, Point(s))
		}
		rings = append(rings, ring)
	}
	return Region(rings...)
}

// Point reads "12,34.5" in millimetres.
func Point(text string) geom.Point {
	x, y, ok := strings.Cut(text, ",")
	if !ok {
		panic(fmt.Sprintf("laytest: %q is no point", text))
	}
	return geom.Point{X: mm(x), Y: mm(y)}
}

// Region makes the first ring the outline and the others openings, whichever way they run.
func Region(rings ...[]geom.Point) geom.Region {
	var out geom.Region
	label := geom.Label(1)
	for i, points := range rings {
		var r geom.Ring
		for _, p := range points {
			r = append(r, geom.Vertex{P: p, Edge: label})
			label++
		}
		if (r.Area2() > 0) != (i == 0) {
			r = r.Reverse()
		}
		out = append(out, r)
	}
	return out
}

func boxes(parts []string) geom.Region {
	var rings [][]geom.Point
	for _, s := range parts {
		size, at, _ := strings.Cut(s, "@")
		w, h, _ := strings.Cut(size, "x")
		r := geom.Rect{Max: geom.Point{X: mm(w), Y: mm(h)}}
		if at != "" {
			r = geom.Rect{Min: Point(at), Max: r.Max.Add(Point(at))}
		}
		c := r.Corners()
		rings = append(rings, c[:])
	}
	return Region(rings...)
}

func mm(text string) unit.Length {
	l, err := unit.Parse(text, unit.Millimetres)
	if err != nil {
		panic(err)
	}
	return l
}

// Draw gives a random face: a star-shaped outline of 4 to 12 corners, often far from convex, about one to three metres
// wide, and up to two openings: copies of the outline drawn together, one within the other's reach never.
func Draw(t *rapid.T) geom.Region {
	center := geom.Point{X: length(t, -800, 800), Y: length(t, -800, 800)}
	star := star(t, center)
	rings := [][]geom.Point{star}
	if rapid.Bool().Draw(t, "opening") {
		rings = append(rings, drawn(star, center, rapid.IntRange(10, 70).Draw(t, "percent")))
	}
	return Region(rings...)
}

func star(t *rapid.T, center geom.Point) []geom.Point {
	n := rapid.IntRange(4, 12).Draw(t, "corners")
	var out []geom.Point
	turn := rapid.IntRange(0, 359).Draw(t, "turn")
	for i := range n {
		angle := (float64(turn) + 360*(float64(i)+float64(rapid.IntRange(0, 60).Draw(t, "wobble"))/100)/float64(n)) * math.Pi / 180
		radius := float64(length(t, 250, 1400))
		out = append(out, center.Add(geom.Point{X: unit.FromFloat(radius * math.Cos(angle)), Y: unit.FromFloat(radius * math.Sin(angle))}))
	}
	return out
}

func drawn(ring []geom.Point, center geom.Point, percent int) []geom.Point {
	out := slices.Clone(ring)
	for i, p := range out {
		d := p.Sub(center)
		out[i] = center.Add(geom.Point{X: d.X.MulDiv(int64(percent), 100), Y: d.Y.MulDiv(int64(percent), 100)})
	}
	return out
}

func length(t *rapid.T, lo, hi int64) unit.Length {
	return unit.Length(rapid.Int64Range(lo*16000, hi*16000).Draw(t, "length"))
}
