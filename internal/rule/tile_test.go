package rule

import (
	"testing"

	"dryfit/internal/unit"
)

func inches(t *testing.T, s string) unit.Length {
	t.Helper()
	l, err := unit.Parse(s, unit.Inches)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// The printed example of ANSI A108.02-2017 4.3.8: a total variation of 1/16 in asks for a joint of 3/16 in; the
// joint is never below 1/16 in.
func TestJointForVariation(t *testing.T) {
	for _, c := range []struct{ variation, joint string }{
		{"1/16", "3/16"}, {"1/32", "3/32"}, {"0", "1/16"}, {"1/64", "1/16"},
	} {
		if got := JointFor(inches(t, c.variation)); got != inches(t, c.joint) {
			t.Errorf("variation %s: joint %v, want %s", c.variation, unit.DefaultStyle(unit.Inches).Exact(got), c.joint)
		}
	}
}

// The printed example of ANSI A108.02 4.3.8.1: 1/32 in of warpage makes 1/8 in into 5/32 in.
func TestOffsetJoint(t *testing.T) {
	for _, c := range []struct {
		rectified   bool
		warp, joint string
	}{{true, "1/32", "5/32"}, {true, "0", "1/8"}, {false, "0", "3/16"}, {false, "1/32", "7/32"}} {
		if got, _ := OffsetJoint(c.rectified, inches(t, c.warp)); got != inches(t, c.joint) {
			t.Errorf("rectified %v warp %s: want %s", c.rectified, c.warp, c.joint)
		}
	}
}

// ANSI A108.02-2013 4.3.7: 1/32 in plus warpage for joints from 1/16 to under 1/4 in, 1/16 in plus warpage from 1/4 in;
// natural stone 1/32 in.
func TestLippage(t *testing.T) {
	for _, c := range []struct {
		joint, warp string
		stone       bool
		want        string
	}{
		{"1/8", "1/32", false, "1/16"}, {"15/64", "0", false, "1/32"}, {"1/4", "0", false, "1/16"},
		{"1/4", "1/32", false, "3/32"}, {"1/8", "1/32", true, "1/32"},
	} {
		if got, _ := Lippage(inches(t, c.joint), inches(t, c.warp), c.stone); got != inches(t, c.want) {
			t.Errorf("%+v: got %s", c, unit.DefaultStyle(unit.Inches).Exact(got))
		}
	}
}

// EJ171: 3/8 in at 8 ft and 1/2 in at 12 ft; its example adds 1/16 in for a range of 115 °F (7/16 in at 8 ft: computed).
func TestMovementWidth(t *testing.T) {
	for _, c := range []struct {
		twelve bool
		rangeF int
		want   string
	}{{false, 100, "3/8"}, {true, 100, "1/2"}, {false, 115, "7/16"}, {true, 130, "5/8"}, {false, 60, "3/8"}} {
		if got := MovementWidth(c.twelve, c.rangeF); got != inches(t, c.want) {
			t.Errorf("%+v: got %s", c, unit.DefaultStyle(unit.Inches).Exact(got))
		}
	}
}

// Every record says where it comes from.
func TestEveryRuleCites(t *testing.T) {
	for _, r := range []Rule{JointVariation, JointLeast, LargeSide, OffsetJointRectified, OffsetJointCalibrated, OffsetMost,
		LippageNarrow, LippageWide, LippageStone, HalfTile, LeastStrip, EdgeOfHole, MovementInside, MovementSun,
		MovementOutside8, MovementOutside12, MovementRange} {
		if r.ID == "" || r.What == "" || r.Cite() == "" {
			t.Errorf("%+v lacks its id, words or source", r)
		}
	}
}
