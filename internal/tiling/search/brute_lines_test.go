package search

import (
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// lines measures balance, sight lines and holes from the tiles themselves.
func (b *brute) lines(o geom.Point, out *costs) {
	mark, joint := b.in.Mark, b.in.Bond.Pitch.X-b.size(true)
	twice := b.offCenter(o)
	sights := make([]map[int]unit.Length, len(b.in.Sights))
	for i := range sights {
		sights[i] = map[int]unit.Length{}
	}
	b.each(o, func(r geom.Rect, course, column int) {
		if !b.in.Bond.Vertical {
			column = 0
		}
		for i, s := range b.in.Sights {
			d := min((s.Y - r.Min.Y).Abs(), (s.Y - r.Max.Y).Abs())
			if s.Y <= r.Min.Y && s.Y >= r.Min.Y-joint || s.Y >= r.Max.Y && s.Y <= r.Max.Y+joint {
				d = 0
			}
			if old, ok := sights[i][column]; !ok || d < old {
				sights[i][column] = d
			}
		}
		for _, h := range b.in.Holes {
			if inX, inY := r.Min.X <= h.Center.X && h.Center.X <= r.Max.X, r.Min.Y <= h.Center.Y && h.Center.Y <= r.Max.Y; inX && inY {
				clear := min(h.Center.X-r.Min.X, r.Max.X-h.Center.X, h.Center.Y-r.Min.Y, r.Max.Y-h.Center.Y)
				b.rim(h, clear, out)
			}
		}
	})
	for _, h := range b.in.Holes {
		if !b.covered(o, h.Center) {
			b.rim(h, 0, out)
		}
	}
	out[balance] = int64(twice / (2 * 4 * mark)) // even within four marks
	out[evenness] = int64(twice / (2 * mark))
	for _, s := range sights {
		worst := unit.Length(0)
		for _, d := range s {
			worst = max(worst, d)
		}
		out[sightLines] += int64(worst / mark)
	}
}

func (b *brute) covered(o, p geom.Point) (in bool) {
	b.each(o, func(r geom.Rect, _, _ int) {
		in = in || r.Min.X <= p.X && p.X <= r.Max.X && r.Min.Y <= p.Y && p.Y <= r.Max.Y
	})
	return in
}

func (b *brute) rim(h Hole, clear unit.Length, out *costs) {
	clear -= (h.Drill + 1) / 2
	if b.in.Enough > 0 {
		clear = min(clear, b.in.Enough)
	}
	out[holes] = max(out[holes], -int64(clear.Floor(b.in.Mark)/b.in.Mark))
}

// offCenter tries every axis midway between the left side of one tile and the right side of another, and takes those
// about which the left sides of all tiles mirror to right sides of tiles, but for rounding. It returns twice the
// distance of the center line to the nearest. Tiles of a course (or column) and its like are the same modulo the pitch.
func (b *brute) offCenter(o geom.Point) unit.Length {
	pitch, sides, w := b.in.Bond.Pitch.X, []unit.Length(nil), b.size(true)
	for i := range b.in.Bond.Shifts {
		if b.in.Bond.Vertical {
			sides = append(sides, b.tile(o, 0, i).Min.X)
		} else {
			sides = append(sides, b.tile(o, i, 0).Min.X)
		}
	}
	best := wide
	for _, l := range sides {
		for _, r := range sides {
			if twice := l + r + w; mirrored(sides, twice, w, pitch) {
				d := ((2*b.center-twice)%pitch + pitch) % pitch
				best = min(best, d, pitch-d)
			}
		}
	}
	return best
}

func mirrored(sides []unit.Length, twice, w, pitch unit.Length) bool {
	for _, l := range sides {
		hit := false
		for _, m := range sides {
			d := ((twice-l-w-m)%pitch + pitch) % pitch
			hit = hit || d <= 2 || d >= pitch-2
		}
		if !hit {
			return false
		}
	}
	return true
}
