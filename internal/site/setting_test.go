package site

import "testing"

// Worked by hand: a back wall of 60 in board to board runs through, the sides have a bed of 3/16 in and tile of 3/8 in, the
// soft joint is 1/8 in. To the saw 60 - 2 x 1/8 = 59-3/4; seen 60 - 2 x (3/16 + 3/8) = 58-7/8; a side wall 32 in deep
// loses 9/16 + 1/8 at the back wall and has 31-5/16 left to where it ends.
func TestBackWallRunsThrough(t *testing.T) {
	r := alcove(t)
	r.lay("white", "back", "left", "right")
	got := r.solve()
	back := got.face("back")
	lo, hi := spanAt(t, back.Cut, 0)
	wantLength(t, "back to the saw", hi-lo, "59-3/4")
	wantLength(t, "back seen", hi-lo-back.Edges[labelLeft-1].Hidden-back.Edges[labelRight-1].Hidden, "58-7/8")
	for _, side := range []struct {
		face string
		edge int
	}{{"left", int(labelRight)}, {"right", int(labelLeft)}} {
		f := got.face(side.face)
		wantLength(t, side.face+" board", f.shape.width, "32")
		wantLength(t, side.face+" to where it ends", f.shape.width-f.Edges[side.edge-1].Gap, "31-5/16")
	}
	if !back.Edges[labelLeft-1].Runs || got.face("left").Edges[labelRight-1].Runs {
		t.Error("the back wall runs through and the left wall butts")
	}
}

// The same corner the other way: the sides are set first, so that the back wall butts.
func TestSidesRunThrough(t *testing.T) {
	r := alcove(t)
	r.lay("white", "back", "left", "right")
	r.order("left", "right", "back")
	got := r.solve()
	lo, hi := spanAt(t, got.face("back").Cut, 0)
	wantLength(t, "back to the saw", hi-lo, "58-5/8") // 60 - 2 x (9/16 + 1/8)
	wantLength(t, "side to the saw at the back", got.face("left").Edges[labelRight-1].Gap, "1/8")
	wantLength(t, "side hidden at the back", got.face("left").Edges[labelRight-1].Hidden, "7/16")
}
