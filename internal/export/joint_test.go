package export_test

import "testing"

// TestJointNear: two sheets a joint of 3 apart, and corners of openings: 7 off the joint in its band, above the band, and 150 off.
func TestJointNear(t *testing.T) {
	s, u := readBox4{0, 0, 100 * mm, 500 * mm}, readBox4{103 * mm, 0, 300 * mm, 500 * mm}
	for c, want := range map[pt]bool{{108.5, 250}: true, {108.5, 501}: false, {251.5, 250}: false, {251.4, 250}: true} {
		if s.jointNear(u, c) != want {
			t.Errorf("upright joint, corner %v: want %v", c, want)
		}
		turned := func(b readBox4) readBox4 { return readBox4{b.Bottom, b.Left, b.Top, b.Right} }
		if turned(s).jointNear(turned(u), pt{c.y, c.x}) != want {
			t.Errorf("level joint, corner %v: want %v", c, want)
		}
	}
	if u.jointNear(s, pt{108.5, 250}) {
		t.Error("the sheet on the right has no joint on its right")
	}
}
