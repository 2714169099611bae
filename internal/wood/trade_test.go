package wood

import (
	"testing"

	"dryfit/internal/unit"
)

// PS 20 as engineeringtoolbox.com prints it, in sixteenths.
func TestDressed(t *testing.T) {
	for nominal, want := range map[string][2]unit.Length{
		"1x2": {12, 24}, "1x3": {12, 40}, "1x4": {12, 56}, "1x5": {12, 72}, "1x6": {12, 88}, "1x7": {12, 104}, "1x8": {12, 116},
		"1x9": {12, 132}, "1x10": {12, 148}, "1x11": {12, 164}, "1x12": {12, 180}, "1x14": {12, 212}, "1x16": {12, 244},
		"5/4x6": {16, 88}, "2x3": {24, 40}, "2x4": {24, 56}, "2x6": {24, 88}, "2x8": {24, 116}, "2x10": {24, 148}, "2x12": {24, 180}, "2x16": {24, 244},
		"3x4": {40, 56}, "3x10": {40, 148}, "4x4": {56, 56}, "4x14": {56, 212},
	} {
		th, w, ok := Dressed(nominal)
		if !ok || th != want[0]*unit.Inch/16 || w != want[1]*unit.Inch/16 {
			t.Errorf("%s: got %v x %v, %v", nominal, th.In(), w.In(), ok)
		}
	}
	for _, odd := range []string{"", "2", "2x13", "6x6", "0x4", "5/8x4", "x4", "2x4x8", "1/4x2", "2x7", "axb", "x", "2x", "9x10"} {
		if _, _, ok := Dressed(odd); ok {
			t.Errorf("%q is taken", odd)
		}
	}
}

// PS 1-19 on the APA's pages: thousandths of an inch.
func TestPlywood(t *testing.T) {
	for _, c := range []struct {
		category    unit.Length
		sanded      bool
		least, most float64
	}{
		{3 * unit.Inch / 4, false, .719, .781},
		{23 * unit.Inch / 32, false, .688, .750},
		{unit.Inch / 2, false, .469, .531},
		{unit.Inch / 4, false, .219, .281},
		{unit.Inch, false, .950, 1.050},
		{3 * unit.Inch / 4, true, .734, .766},
		{unit.Inch, true, .970, 1.030},
	} {
		least, most := Plywood(c.category, c.sanded)
		within(t, "least", least.In(), c.least, .001)
		within(t, "most", most.In(), c.most, .001)
	}
}

// The limits are printed in inches and, rounded, in millimeters.
func TestGaps(t *testing.T) {
	for _, c := range []struct {
		limit  unit.Length
		in, mm float64
		slack  float64
	}{
		{GapFlat.Limit, .012, .3, .02}, {GapShaped.Limit, .025, .65, .05}, {GapOther.Limit, .050, 1.3, .1}, {GapMoulded.Limit, .075, 1.9, .1},
		{GapOthers.Limit, .050, 1.3, .1}, {FlushFlat.Limit, .012, .3, .02}, {FlushShaped.Limit, .025, .65, .05}, {FlushOther.Limit, .050, 1.3, .1},
	} {
		within(t, "in", c.limit.In(), c.in, .0001)
		within(t, "mm", c.limit.MM(), c.mm, c.slack)
	}
}

// The saw is set to 90° less half the corner: 90 takes 45, 92 takes 44, 88 takes 46. Two cuts of 45° on a corner of 92° in 3/4 in
// stock leave a wedge of 2° over 26.94 mm, which opens 0.94 mm: over the 0.3 mm that flat wood may gap.
func TestMiter(t *testing.T) {
	for corner, want := range map[unit.Angle]unit.Angle{90: 45, 92: 44, 88: 46, 180: 0} {
		if got := Miter(corner * unit.Degree); got != want*unit.Degree {
			t.Errorf("corner %d: got %d", corner, got/unit.Degree)
		}
	}
	stock := 3 * unit.Inch / 4
	open := Opening(stock, 45*unit.Degree, 92*unit.Degree)
	within(t, "opening", open.MM(), .94, .01)
	if open <= GapFlat.Limit {
		t.Error("the example is over the limit")
	}
	if tight := Opening(stock, Miter(92*unit.Degree), 92*unit.Degree); tight != 0 {
		t.Errorf("sawn right it still gapes %v mm", tight.MM())
	}
}

// A board foot is 144 cubic inches: 1 x 12 x 12. A 4/4 board of 7-1/2 in by 8 ft has 5; thin stock counts as 1 in.
func TestFeet(t *testing.T) {
	for _, c := range []struct {
		thick, wide, long unit.Length
		want              BoardFeet
	}{
		{unit.Inch, 12 * unit.Inch, unit.Foot, 1000},
		{unit.Inch, 15 * unit.Inch / 2, 8 * unit.Foot, 5000},
		{unit.Inch / 2, 15 * unit.Inch / 2, 8 * unit.Foot, 5000},
		{2 * unit.Inch, 10 * unit.Inch, 12 * unit.Foot, 20000},
		{unit.Inch, 1, 1, 1},
	} {
		if got := Feet(c.thick, c.wide, c.long); got != c.want {
			t.Errorf("got %d, want %d", got, c.want)
		}
	}
}

// By hand: staves of 4 in serve 8 in, so 40 in want 5 clamps, 4 in from the ends and 8 in apart; 41 in want 6.
func TestClamps(t *testing.T) {
	if got := ClampRow(40*unit.Inch, 4*unit.Inch); got != (Clamps{5, 4 * unit.Inch, 8 * unit.Inch}) {
		t.Errorf("got %+v", got)
	}
	if got := ClampRow(41*unit.Inch, 4*unit.Inch); got.Count != 6 {
		t.Errorf("got %+v", got)
	}
	if got := ClampRow(6*unit.Inch, 4*unit.Inch); got != (Clamps{1, 3 * unit.Inch, 0}) {
		t.Errorf("got %+v", got)
	}
	// 100 psi on 40 sq in of joint is 4000 lbf, 17,793 N; 700 kPa is 101.5 psi.
	if f := Force(40*unit.SquareInch, PressLight); f < 17_793 || f > 18_100 {
		t.Errorf("got %d N", f)
	}
}

func TestSurfaced(t *testing.T) {
	for q, want := range map[int]float64{4: .8125, 5: 1.0625} {
		if got, ok := Surfaced(q); !ok || got.In() != want {
			t.Errorf("%d/4: got %v", q, got.In())
		}
	}
	if _, ok := Surfaced(8); ok {
		t.Error("8/4 is not known")
	}
}
