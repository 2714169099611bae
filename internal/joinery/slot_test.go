package joinery

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/part"
	"dryfit/internal/unit"
)

const slotted = woodShop + `cabinets:
  vanity: {in: back, across: 14 to 44 from A, height: 32, depth: 20, stock: {panels: ply}}
tops:
  slab:
    on: vanity
    made of: staves
    stock: oak
    thickness: 1-1/2
    depth: 21
    overhang: {left: 1, right: 1}
    staves: {count: 8, rough width: 3}
    wood: {glued at: 12 %, in the house: 6 %}
    fixing: {fixed at: back, screws: [%rows], diameter: 3/16%more}
`

// White oak moves by 0.00365 for each percent: 18 in from the line that is held, from 12 to 6 %, by 0.3942 toward it; the slot is 0.1875 + 0.3942
// = 0.5817 long, its middle 18 - 0.1971 = 17.8029 off the wall and so 2.1971 from the front edge of a rail whose front is 20 off it. The rail
// is from 3/4 to 29-1/4 of the cabinet, 1-3/4 to 30-1/4 of the top, which begins 1 in before it: screws 3 in from its ends, 22-1/2 apart, and
// one between, since no two stand farther apart than 12.
func TestSlotsInRails(t *testing.T) {
	p, r := shop(t, strings.NewReplacer("%rows", "2, 18", "%more", "").Replace(slotted))
	if got := codes(r); got != "" {
		t.Fatal(got)
	}
	s := p.Tops[0].Moves.Slots[1]
	if mils(s.In) != 394 || mils(s.Long) != 582 || mils(s.Middle) != 17_803 || s.Rail != "front rail" || fmt.Sprint(lengths(s.Along)) != "[4-3/4 16 27-1/4]" {
		t.Errorf("%d %d %d %s %v", mils(s.In), mils(s.Long), mils(s.Middle), s.Rail, lengths(s.Along))
	}
	rail := pieceNamed(t, p.Cabinets[0], "front rail")
	if len(rail.Part.Holes) != 3 {
		t.Fatal(rail.Part.Holes)
	}
	for i, want := range []string{"3", "14-1/4", "25-1/2"} {
		h := rail.Part.Holes[i]
		if exact(h.At.X) != want || mils(h.At.Y) != 2197 || mils(h.Diameter+h.Slot) != 582 || h.Along != part.UpAxis || !h.Through || h.On != part.Face {
			t.Errorf("%d: %s, %d, %+v", i, exact(h.At.X), mils(h.At.Y), h)
		}
	}
	if len(rail.Part.Check()) > 0 {
		t.Error(rail.Part.Check())
	}
	// The rear row stands 2 in from the line: 0.0438.
	if h := pieceNamed(t, p.Cabinets[0], "rear rail").Part.Holes; len(h) != 3 || mils(h[0].Slot) != 44 {
		t.Error(h)
	}
}

// Rows and screws that miss their rail.
func TestSlotsBesideRails(t *testing.T) {
	for _, c := range []struct{ rows, more, want, along string }{
		{"2, 18", ", along: [4, 28]", "", "[4 28]"},
		{"2, 10", "", "screw-norail", "[]"},                          // rails are from 0 to 4 and from 16 to 20
		{"2, 19-7/8", "", "screw-norail", "[]"},                      // 0.4353 + 0.1875 long, middle 19.66: to 19.97, and 1/4 of wood is kept
		{"2, 18", ", along: [1-13/16, 28]", "screw-outside", "[28]"}, // the screw would stand from 1.72
		{"2, 18", ", along: [unknown, 28]", "wood-missing wood-unchecked", "[28]"},
	} {
		p, r := shop(t, strings.NewReplacer("%rows", c.rows, "%more", c.more).Replace(slotted))
		got := strings.Join(distinctWords(codes(r)), " ")
		if last := p.Tops[0].Moves.Slots; got != c.want || fmt.Sprint(lengths(last[len(last)-1].Along)) != c.along {
			t.Errorf("%s%s: %q, want %q; %v", c.rows, c.more, got, c.want, lengths(last[len(last)-1].Along))
		}
	}
}

func pieceNamed(t testing.TB, c Cabinet, name string) Piece {
	t.Helper()
	for _, p := range c.Pieces {
		if p.Part.Name == name {
			return p
		}
	}
	t.Fatalf("no %s in %s", name, c.Name)
	return Piece{}
}

func lengths(all []unit.Length) []string {
	out := make([]string, len(all))
	for i, l := range all {
		out[i] = exact(l)
	}
	return out
}

func distinctWords(s string) []string {
	all := strings.Fields(s)
	slices.Sort(all)
	return slices.Compact(all)
}
