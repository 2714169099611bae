package takeoff

import (
	"fmt"
	"math"
	"testing"

	"dryfit/internal/catalog"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/rule"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// stack lays n x n tiles with a joint to the right of and above each, so that the region is whole cells of the pattern.
func stacked(n int, l, w, joint unit.Length) tiling.Field {
	var pieces []piece.Piece
	for i := range n * n {
		at := geom.Point{X: unit.Length(i%n) * (l + joint), Y: unit.Length(i/n) * (w + joint)}
		r := geom.RectRing(geom.Rect{Min: at, Max: at.Add(geom.Point{X: l, Y: w})}, -1, -2, -3, -4)
		pieces = append(pieces, piece.Piece{Address: fmt.Sprint(i), OnFace: geom.Region{r}, Area: r.Area()})
	}
	size := unit.Length(n)
	region := geom.RectRing(geom.Rect{Max: geom.Point{X: size * (l + joint), Y: size * (w + joint)}}, 1, 1, 1, 1)
	return tiling.Field{Name: "main", Joint: joint, Region: geom.Region{region}, Layouts: []tiling.Layout{{Pieces: pieces}}}
}

// The common formula (L+W)/(L W) w d rho counts every crossing twice; rho d [1 - L W/((L+w)(W+w))] counts it once. Both columns worked out
// from those at 1.6 kg/L; what the pieces leave is the second.
func TestGroutAgainstFormula(t *testing.T) {
	for _, c := range []struct {
		l, w, joint, deep unit.Length
		formula, exact    float64 // kg/m²
	}{
		{300, 300, 3, 8, 0.2560, 0.2522},
		{600, 300, 3, 9, 0.2160, 0.2135},
		{600, 600, 2, 10, 0.1067, 0.1061},
		{150, 150, 3, 6, 0.3840, 0.3728},
		{100, 100, 2, 6, 0.3840, 0.3728},
		{25, 25, 3, 4, 1.5360, 1.2980},
	} {
		f := stacked(4, c.l*mm, c.w*mm, c.joint*mm)
		volume := catalog.Spread(f.Region.Area()-area(f), c.deep*mm)
		dry, ok := catalog.DryGrout.Rate.For(unit.Fills(volume))
		got := unit.Mass(dry.N).Kg() / f.Region.Area().M2()
		if !ok || math.Abs(got-c.exact) > 0.00005 {
			t.Errorf("%d x %d: %.5f kg/m², want %.4f", c.l, c.w, got, c.exact)
		}
		byFormula := float64(c.l+c.w) / float64(c.l*c.w) * float64(c.joint) * float64(c.deep) * 1.6
		if math.Abs(byFormula-c.formula) > 0.00005 || got >= byFormula {
			t.Errorf("%d x %d: formula %.5f, want %.4f, more than %.4f", c.l, c.w, byFormula, c.formula, got)
		}
	}
}

// A sheet of chips 25 mm with 3 mm joints has of each 28 mm square 784 - 625 mm² of joint.
func TestChipJoints(t *testing.T) {
	known := func(l unit.Length) document.Value[unit.Length] { return document.Value[unit.Length]{V: l, Known: true} }
	sheet := document.Tile{Kind: document.Mosaic, Chip: known(25 * mm), ChipJoint: known(3 * mm)}
	pieces := []piece.Piece{{Area: (280 * mm).Times(280 * mm)}} // ten by ten, with half a joint all round
	if got, want := chipJoints(sheet, pieces), unit.Area(100*(784-625))*unit.SquareMillimetre; got != want {
		t.Errorf("%d, want %d", got, want)
	}
	if chipJoints(document.Tile{Kind: document.Stone}, pieces) != 0 {
		t.Error("stone has no chips")
	}
}

// Unsanded up to 1/8 in, sanded from there on; at exactly that both (common practice).
func TestGrains(t *testing.T) {
	for _, c := range []struct {
		joint            unit.Length
		unsanded, sanded bool
	}{{in / 16, true, false}, {in/8 - 1, true, false}, {in / 8, true, true}, {in/8 + 1, false, true}, {in / 4, false, true}} {
		if u, s := rule.Grains(c.joint); u != c.unsanded || s != c.sanded {
			t.Errorf("%d: %v %v", c.joint, u, s)
		}
	}
}
