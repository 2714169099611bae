package joinery

import (
	"strings"
	"testing"
)

// sloping is a room 96 x 72 in whose floor falls by 1/2 in from A and D to B and C.
const sloping = `dryfit: 1
name: shop
units: in
survey:
  corners: A B C D
  tape to: board
  tape: {A-B: 96, B-C: 72, C-D: 96, D-A: 72, A-C: 120, B-D: 120}
  level line: {down: {A: 40, B: 40-1/2, C: 40-1/2, D: 40}, up: {A: 50, B: 50, C: 50, D: 50}}
walls: {back: {along: A-B%back}, right: {along: B-C}, front: {along: C-D}, left: {along: D-A%left}}
floor: {build-up: [board 1/4]}
tools: {saws: {big saw: {reach: 2-1/2}}}
stock:
  ply: {kind: sheet, size: 96 x 48 x 3/4, measured: 3/4}
  base: {kind: stick, size: 120 x 5-1/4 x 1/2}
`

func line(s Scribe) string {
	var out []string
	for _, p := range s.Line {
		out = append(out, exact(p.At)+" "+exact(p.Cut))
	}
	return s.Name + ": " + strings.Join(out, ", ")
}

// Worked by hand. From 24 to 72 the floor falls by 48/96 of 1/2: 1/4. With a floor line of 40 at 48 it is level to there and falls by 1/2 over
// the other 48: 40, 40 and 40-1/4 below the level line at the cabinet's left, middle and right. Off comes what each is over the lowest.
func TestFootFollowsTheFloor(t *testing.T) {
	for _, c := range []struct{ back, scribe, want, codes string }{
		{"", "{for: box, edge: foot, leave: 1/4}", "foot, left side: 0 0, 20 0; foot, right side: 0 0, 20 0; foot, front: 0 1/4, 48 0", ""},
		{"", "{for: box, edge: foot, leave: 3/16}", "foot, left side: 0 0, 20 0; foot, right side: 0 0, 20 0; foot, front: 0 1/4, 48 0", "scribe-short"},
		{"", "{for: box, edge: foot}", "foot, left side: 0 0, 20 0; foot, right side: 0 0, 20 0; foot, front: 0 1/4, 48 0", "scribe-leave"},
		{", floor: {48: 40}", "{for: box, edge: foot, leave: 1/2}", "foot, left side: 0 0, 20 0; foot, right side: 0 0, 20 0; foot, front: 0 1/4, 24 1/4, 48 0", ""},
		{"", "{for: base, edge: foot, leave: 1/2}", "foot, back, from corner A to corner B: 0 1/2, 96 0", ""},
	} {
		src := strings.NewReplacer("%back", c.back, "%left", "").Replace(sloping) + "cabinets:\n  box: {in: back, across: 24 to 72 from A, height: 34, depth: 20, stock: {panels: ply}}\ntrim:\n  base: {kind: baseboard, along: [back], stock: base}\nscribes:\n  foot: " + c.scribe + "\n"
		p, r := shop(t, src)
		var got []string
		for _, s := range p.Scribes {
			got = append(got, line(s))
		}
		if strings.Join(got, "; ") != c.want || codes(r) != c.codes {
			t.Errorf("%s%s: %q, want %q; %q", c.back, c.scribe, got, c.want, codes(r))
		}
		for _, s := range p.Scribes {
			if (s.Origin == "left end") != s.Turned && !strings.Contains(s.Name, "right side") { // worked out with a strip of paper: the foot away, the face up
				t.Errorf("%s counts from the %s, turned %v", s.Name, s.Origin, s.Turned)
			}
		}
		if p.Cabinets[0].Pieces[0].Part.Over.Length != p.Scribes[0].Leave && strings.Contains(c.scribe, "for: box") {
			t.Error("the sides are not sawn longer by what is left on")
		}
	}
}

// A filler's edge up a wall that leans in by 1/4 over 90 in: over the 34 in of the cabinet 34/360, a side of a top that runs along a belly.
func TestEdgesBesideTheSolvedWall(t *testing.T) {
	src := strings.NewReplacer("%back", "", "%left", ", out of plumb: {D: 1/4, A: 1/4}").Replace(strings.Replace(sloping, "40-1/2, C: 40-1/2", "40, C: 40", 1))
	p, r := shop(t, src+"cabinets:\n  box: {in: back, across: 1 to 49 from A, height: 36, depth: 20, stock: {panels: ply}}\nscribes:\n  up: {for: box, edge: left, leave: 1/4}\n")
	if len(p.Scribes) != 1 || codes(r) != "" {
		t.Fatal(codes(r))
	}
	if s := p.Scribes[0]; exact(s.Line[1].At) != "36" || mils(s.Line[0].Cut) != 0 || mils(s.Line[1].Cut) != 100 { // 36/90 of 1/4
		t.Error(line(s))
	}
	// Of a wall whose lean nobody read nothing is known.
	if _, r := shop(t, strings.NewReplacer("%back", "", "%left", "").Replace(sloping)+"cabinets:\n  box: {in: back, across: 1 to 49 from A, height: 36, depth: 20, stock: {panels: ply}}\nscribes:\n  up: {for: box, edge: left, leave: 1/4}\n"); codes(r) != "wood-missing" {
		t.Error(codes(r))
	}
}
