package site

import (
	"strings"
	"testing"

	"dryfit/internal/document"
)

// Walls in the order of the corners: back A-B, right B-C, front C-D, left D-A.
func TestOrderOfSetting(t *testing.T) {
	for _, c := range []struct {
		what        string
		laid, order string
		back, door  string
		want        string
	}{
		{"the floor first, then the first wall, then its neighbors, the left one first", "left,front,back,right,floor", "", "", "", "floor,back,left,right,front"},
		{"the back wall that is written", "left,front,back,right", "", "right", "", "right,back,front,left"},
		{"across from the door", "left,front,back,right", "", "", "right", "left,front,back,right"},
		{"as written, the rest after", "left,front,back,right,floor", "right,left", "", "", "right,left,floor,back,front"},
		{"walls before the floor", "left,back,floor", "back,left,floor", "", "", "back,left,floor"},
		{"only what is laid", "back,floor", "left,back", "", "", "back,floor"},
		{"a niche: back, sill, head, jambs", "back,niche > left jamb,niche > sill,niche > back,niche > head", "", "", "", "back,niche > back,niche > sill,niche > head,niche > left"},
	} {
		r := rectangle60(t, exact60)
		r.lay("white", strings.Split(c.laid, ",")...)
		if c.order != "" {
			r.order(strings.Split(c.order, ",")...)
		}
		if c.back != "" {
			r.Setting.BackWall = val(c.back)
		}
		r.Openings = append(r.Openings, document.Opening{Name: "niche", Kind: document.Niche, In: document.Name{Text: "back"}})
		if c.door != "" {
			r.Openings = append(r.Openings, document.Opening{Name: "door", Kind: document.Door, In: document.Name{Text: c.door}})
		}
		s := &solver{doc: r.Room, inner: map[string]build{}}
		s.placeWalls()
		s.orderOfSetting()
		if got := strings.Join(s.names, ","); got != c.want {
			t.Errorf("%s: %s, want %s", c.what, got, c.want)
		}
	}
}

// Walls that do not fit the outline are said; one that is written the wrong way round is turned.
func TestWallsPlaced(t *testing.T) {
	r := rectangle60(t, exact60)
	r.Walls[1].Left, r.Walls[1].Right = "C", "B"
	r.Walls[2].Left, r.Walls[2].Right = "A", "C"
	r.wall("second back", "A-B", "board 1/2")
	got := r.solve()
	got.wantSaid("wall-turned", "facing right, B is on the left", "B-C")
	got.wantSaid("wall-not-a-side", "front does not run between two neighboring corners")
	got.wantSaid("wall-twice", "second back runs along A-B as back does")
	if f := got.face("right"); f.LeftCorner != "B" {
		t.Errorf("right wall's left corner is %s", f.LeftCorner)
	}
}
