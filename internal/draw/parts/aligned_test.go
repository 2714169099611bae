package parts

import (
	"math"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"

	"pgregory.net/rapid"
)

// The line is parallel to what it measures, as long, and Offset away; the words stand above it and are never
// upside down.
func TestAlignedIsParallel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		far := rapid.Int64Range(0, 150_000)
		a := Aligned{From: draw.At(draw.Um(far.Draw(t, "x")), draw.Um(far.Draw(t, "y"))), Text: "119-3/4",
			To: draw.At(draw.Um(far.Draw(t, "x")), draw.Um(far.Draw(t, "y"))), Offset: draw.Um(rapid.Int64Range(-20_000, 20_000).Draw(t, "off"))}
		items := a.Items()
		if a.From == a.To {
			return
		}
		line := items[0].(draw.Path).Rings[0]
		dx, dy := float64(a.To.X-a.From.X), float64(a.To.Y-a.From.Y)
		for i, p := range []draw.XY{a.From, a.To} {
			ux, uy := float64(line[i].X-p.X), float64(line[i].Y-p.Y)
			d := math.Hypot(dx, dy)
			if along := (ux*dx + uy*dy) / d; math.Abs(along) > 1.5 {
				t.Fatalf("end %d is %.2f um along", i, along)
			}
			if across := (dx*uy - dy*ux) / d; math.Abs(across-float64(a.Offset)) > 1.5 {
				t.Fatalf("end %d is %.2f um across, want %d", i, across, a.Offset)
			}
		}
		if struck := typeset.Struck(wide(items)); len(struck) > 0 && math.Hypot(dx, dy) > 30_000 {
			t.Fatal(struck)
		}
		text := texts(items)[0]
		if text.Turn <= -90 || text.Turn > 90 {
			t.Fatalf("turned by %d", text.Turn)
		}
	})
}

// Where the measured thing is level or plumb, it is the Dimension of the same place.
func TestAlignedAgreesWithDimension(t *testing.T) {
	for _, c := range []struct {
		a Aligned
		d Dimension
	}{
		{Aligned{From: draw.At(10_000, 40_000), To: draw.At(90_000, 40_000), Offset: 10_000, Text: "80"}, Dimension{From: 10_000, To: 90_000, Feature: 40_000, Line: 50_000, Text: "80"}},
		{Aligned{From: draw.At(10_000, 40_000), To: draw.At(90_000, 40_000), Offset: -10_000, Text: "80"}, Dimension{From: 10_000, To: 90_000, Feature: 40_000, Line: 30_000, Text: "80"}},
		{Aligned{From: draw.At(40_000, 90_000), To: draw.At(40_000, 10_000), Offset: 10_000, Text: "80"}, Dimension{Vertical: true, From: 10_000, To: 90_000, Feature: 40_000, Line: 50_000, Text: "80"}},
	} {
		if got, want := texts(c.a.Items()), texts(c.d.Items()); got[0] != want[0] {
			t.Errorf("%+v, want %+v", got[0], want[0])
		}
	}
	if items := (Aligned{From: draw.At(5, 5), To: draw.At(5, 5), Text: "0"}).Items(); items != nil {
		t.Errorf("a dimension of nothing: %v", items)
	}
}

// Sheets of every size: frame, block and ruler clear of each other and of the room left.
func TestSheetLeavesItsRoomClear(t *testing.T) {
	for _, p := range draw.Papers() {
		for _, paper := range []draw.Paper{p, p.Landscape()} {
			for _, inches := range []bool{false, true} {
				tb := TitleBlock{Document: "Boathouse washroom", Title: "Basin wall", Sheet: 1, Sheets: 9, Scale: "1:10", Revision: "7"}
				items, room := Sheet(paper, tb, inches)
				page := draw.Page{W: paper.W, H: paper.H, Items: items}
				if over, struck := typeset.Overlaps(page), typeset.Struck(page); len(over)+len(struck) > 0 {
					t.Errorf("%s: %v %v", paper.Name, over, struck)
				}
				for _, text := range typeset.Placements(page) {
					if text.Box.Meets(room) {
						t.Errorf("%s: %q stands in the room left", paper.Name, text.Text.Body)
					}
				}
				if room.W() < paper.W*8/10 || room.H() < paper.H*7/10 {
					t.Errorf("%s %d wide: only %d by %d um left", paper.Name, paper.W, room.W(), room.H())
				}
			}
		}
	}
}
