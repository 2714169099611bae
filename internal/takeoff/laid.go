package takeoff

import (
	"dryfit/internal/geom"
	"dryfit/internal/lining"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// laid are the sheets that are laid out on a face one by one.
func (m *maker) laid(face string) []lining.Sheet {
	for _, f := range m.lining.Faces {
		if f.Name == face {
			return f.Sheets
		}
	}
	return nil
}

// joints is how long the seams between the sheets of a face are: what their outlines have more than the face's, each seam counted from both sides.
func joints(f site.Face, laid []lining.Sheet) unit.Length {
	sum := -round(f.Board)
	for _, s := range laid {
		sum += round(s.Region)
	}
	return max(0, sum/2)
}

// round is how long the outlines of a region are.
func round(g geom.Region) (sum unit.Length) {
	for _, r := range g {
		for i, v := range r {
			sum += geom.Dist(v.P, r[(i+1)%len(r)].P)
		}
	}
	return sum
}

// screwsOf: every sheet has its own row on each stud that it reaches, with one at each end and one for each begun spacing between.
func screwsOf(laid []lining.Sheet, stud, screw unit.Length) (n int) {
	for _, s := range laid {
		n += int((up(s.Rect.W(), stud) + 1) * (up(s.Rect.H(), screw) + 1))
	}
	return n
}
