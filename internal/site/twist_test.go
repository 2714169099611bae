package site

import (
	"testing"

	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// twisted is the alcove whose back wall, 60 in wide and 96 high, leans by one figure at A and by another at B.
func twisted(t *testing.T, leans, tile string) *room {
	r := alcove(t)
	r.Tiles = nil
	r.tile("white", tile, document.Ceramic)
	r.lay("white", "back", "left")
	w := &r.Walls[0]
	w.Lean, w.Face, w.LeastBed = r.at(leans), val(document.Plane), val(r.in("1/8"))
	return r
}

// Worked by hand: leans of 3/8 in and -1/4 in differ by 5/8 in. A plane through two opposite corners and parallel to the diagonal between the
// others stands half of that, 5/16 in, off both of them, and least bed of 1/8 in on top: 7/16 in. More than a thin bed of 1/4 in.
func TestPlaneOverATwist(t *testing.T) {
	got := twisted(t, "A 3/8, B -1/4", "12 x 6 x 3/8").solve()
	f := got.face("back")
	wantLength(t, "least bed", f.BedLeast, "1/8")
	wantLength(t, "most bed", f.BedMost, "7/16")
	wantLength(t, "bed at the low corners", f.BedThick, "7/16")
	wantLength(t, "a neighbor ends short of the farthest corner", got.face("left").Edges[labelRight-1].Gap, "15/16") // 7/16 + 3/8 + 1/8
	got.wantSaid("twisted", "5/8 in differently", "5/16 in farther")
	got.wantSaid("bed-thick", "up to 7/16 in", "1/4 in at most")
	got.wantNot("twist-not-flat")
}

// Along the diagonal of 60 x 96 in, 113.2 in, a twist of 5/8 in is a hollow of a quarter, 5/32 in: more than 1/8 in of ANSI A108.01/.02 for
// tile with an edge of 15 in, less than 1/4 in for smaller tile. A twist of 3/8 in is 3/32 in.
func TestTwistAgainstFlatness(t *testing.T) {
	large := twisted(t, "A 3/8, B -1/4", "24 x 12 x 3/8").solve()
	large.wantSaid("twist-not-flat", "5/32 in", "1/8 in is allowed")
	twisted(t, "A 3/8, B 0", "24 x 12 x 3/8").solve().wantNot("twist-not-flat")
}

// Both ends lean alike: a plane that is out of plumb, and nothing to tell.
func TestLeaningPlaneIsNoTwist(t *testing.T) {
	got := twisted(t, "A 3/8, B 3/8", "24 x 12 x 3/8").solve()
	for _, code := range []string{"twisted", "twist-unread", "bed-thick", "twist-not-flat"} {
		got.wantNot(code)
	}
	f := got.face("back")
	wantLength(t, "bed", f.BedThick, "3/16")
}

// A face that follows keeps its bed, and it is told; one that nothing is said of does so too, and that is listed as assumed.
func TestFollowingATwist(t *testing.T) {
	for _, face := range []document.Value[document.FaceRule]{val(document.Follow), {}} {
		r := twisted(t, "A 1/8, B -1/8", "12 x 6 x 3/8")
		r.Walls[0].Face = face
		got := r.solve()
		f := got.face("back")
		wantLength(t, "least", f.BedLeast, "3/16")
		wantLength(t, "most", f.BedMost, "3/16")
		got.wantSaid("twisted", "1/4 in differently", "its tile follows", "1/8 in out of the plane")
		got.wantNot("bed-thick")
		assumed := 0
		for _, a := range got.assumed {
			if a.Say(unit.DefaultStyle(unit.Inches)) == "the tile face of back follows its twist" {
				assumed++
			}
		}
		if want := map[bool]int{true: 0, false: 1}[face.Known]; assumed != want {
			t.Errorf("written %v: assumed %d times", face.Known, assumed)
		}
	}
}

// One end read, the other not: nobody knows, and nothing is computed from a zero that is not written.
func TestTwistUnread(t *testing.T) {
	got := twisted(t, "A 3/8", "12 x 6 x 3/8").solve()
	got.wantSaid("twist-unread", "back", "at B")
	wantLength(t, "bed", got.face("back").BedMost, "3/16")
	quiet := alcove(t)
	quiet.lay("white", "back")
	quiet.solve().wantNot("twist-unread")
}

// The clever span against the slow obvious one: the surface d (u - 1/2) (v - 1/2) plus its profile, on a grid of 1/64 of the wall each way.
func TestSpanAgainstAGrid(t *testing.T) {
	for _, c := range []struct{ leans, profile string }{
		{"A 1/2, B -1/2", ""}, {"A 1/2, B -1/2", "30 1/4"}, {"A 0, B 1/2", "15 1/8, 45 -1/8"}, {"A -1/4, B 1/4", "0 0, 7-1/2 1/16, 52-1/2 3/16, 60 0"},
		{"A 0, B 0", "30 1/8"},
	} {
		r := twisted(t, c.leans, "12 x 6 x 3/8")
		r.Walls[0].Profile = r.stations(c.profile)
		got := r.solve()
		f := got.face("back")
		high, low := grid(r)
		if most := f.BedLeast + high - low; (f.BedMost - most).Abs() > near {
			t.Errorf("%+v: most %d, on a grid %d", c, f.BedMost, most)
		}
	}
}

func grid(r *room) (high, low unit.Length) {
	w := r.Walls[0]
	d := (w.Lean[1].Value.V - w.Lean[0].Value.V).MM()
	const n = 64
	for i := 0; i <= n; i++ {
		for j := 0; j <= n; j++ {
			u, v := float64(i)/n, float64(j)/n
			z := unit.FromMM(d*(u-0.5)*(v-0.5)) + profileAt(w.Profile, r.in("60").MulDiv(int64(i), n), r.in("60"))
			high, low = max(high, z), min(low, z)
		}
	}
	return high, low
}

// profileAt draws straight lines from corner to corner over the stations.
func profileAt(list []document.Station, x, width unit.Length) unit.Length {
	from := document.Station{}
	for _, to := range append(list[:len(list):len(list)], document.Station{X: width}) {
		if x <= to.X && to.X > from.X {
			return from.Value + (to.Value-from.Value).MulDiv(int64(x-from.X), int64(to.X-from.X))
		}
		from = to
	}
	return from.Value
}
