package site

import (
	"testing"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/unit"
)

// nicheRoom has a niche of 14 x 20 in, 4 in deep, boarded with 1/2 in inside, all five faces and the wall tiled with 3/8 in on a bed of
// 1/8 in: a finish of 1/2 in everywhere.
func nicheRoom(t *testing.T) *room {
	r := alcove(t)
	r.Walls[0].BuildUp = r.layers("board 1/2, bed 1/8, tile")
	o := r.opening("niche", "back", document.Niche, "center 30 from A", "48 above floor", "14", "20")
	o.Depth, o.BuildUp = val(r.in("4")), r.layers("board 1/2, bed 1/8, tile")
	r.lay("white", "back", "niche > back", "niche > left", "niche > right", "niche > head", "niche > sill")
	return r
}

// The board inside takes 1/2 in from every side: 13 x 19 in at the board, 3-1/2 in deep.
func TestNicheFaces(t *testing.T) {
	r := nicheRoom(t)
	got := r.solve()
	if o := got.face("back").Openings[0]; o.Rect != r.rect("23-1/2", "8-1/2", "36-1/2", "27-1/2") {
		t.Errorf("niche at the board: %v", o.Rect)
	}
	for _, c := range []struct{ face, w, h string }{
		{"niche > sill", "13", "3-1/2"}, {"niche > head", "13", "3-1/2"}, {"niche > left", "19", "3-1/2"}, {"niche > right", "19", "3-1/2"},
		{"niche > back", "13", "18.93"}, // the sill is 2 % of 3-1/2 in higher at the back
	} {
		b := got.face(c.face).Board.Bounds()
		wantLength(t, c.face+" long", b.W(), c.w)
		wantLength(t, c.face+" deep", b.H(), c.h)
	}
	if f := got.face("niche > sill").SlopeFall; f != 20_000 {
		t.Errorf("fall %v, want 2 %%", f)
	}
}

// The sill runs under the jambs, the back behind all. Finish 1/2 in, soft joint 1/8 in.
func TestNicheEdges(t *testing.T) {
	got := nicheRoom(t).solve()
	for _, c := range []struct {
		face, edge  string
		runs        bool
		gap, hidden string
	}{
		{"niche > back", "niche, sill", true, "1/8", "3/8"},
		{"niche > back", "niche, left", true, "1/8", "3/8"},
		{"niche > sill", "niche, left", true, "1/8", "3/8"},
		{"niche > left", "niche, sill", false, "5/8", "0"},
		{"niche > left", "niche, head", false, "5/8", "0"},
		{"niche > sill", "niche, back", false, "5/8", "0"},
		{"niche > sill", "niche, rim", false, "-1/8", "0"}, // trim as wide as the tile, 3/8, less the wall's finish of 1/2
		{"back", "niche, bottom", false, "-1/8", "0"},
	} {
		e := edgeNamed(t, got.face(c.face), c.edge)
		if e.Runs != c.runs {
			t.Errorf("%s at %s: runs %v", c.face, c.edge, e.Runs)
		}
		wantLength(t, c.face+" gap at "+c.edge, e.Gap, c.gap)
		wantLength(t, c.face+" hidden at "+c.edge, e.Hidden, c.hidden)
	}
}

func edgeNamed(t *testing.T, f Face, name string) Edge {
	t.Helper()
	for _, e := range f.Edges {
		if e.Name == name {
			return e
		}
	}
	t.Fatalf("%s has no edge %q", f.Name, name)
	return Edge{}
}

// The jamb's lower edge follows the sill: at the rim it starts at 0, at the back 2 % of the depth higher.
func TestJambFollowsTheSill(t *testing.T) {
	f := nicheRoom(t).solve().face("niche > left")
	front := f.Board.Spans(geom.Horizontal, 0)
	back := f.Board.Spans(geom.Horizontal, f.Board.Bounds().Max.Y)
	wantLength(t, "at the rim", front[0].Lo, "0")
	wantLength(t, "at the back", back[0].Lo, "0.07")
}

// A window's reveals: "left jamb" is its left face; a joint to the frame at the back, no back face.
func TestWindowReveals(t *testing.T) {
	r := alcove(t)
	o := r.opening("window", "back", document.Window, "12 from A", "48 above floor", "20", "30")
	o.Depth, o.Edge, o.SillFall = val(r.in("5")), val(document.Miter), val(unit.Ratio(0))
	r.lay("white", "back", "window > left jamb", "window > right jamb", "window > sill")
	got := r.solve()
	left := got.face("window > left jamb")
	wantLength(t, "joint to the frame", edgeNamed(t, left, "window, frame").Gap, "1/8")
	rim := edgeNamed(t, left, "window, rim")
	if !rim.Miter {
		t.Error("the rim is mitered")
	}
	wantLength(t, "miter reaches the wall's finished face", rim.Gap, "-9/16")
	wantLength(t, "to the head, which is not tiled", edgeNamed(t, left, "window, head").Gap, "1/8")
	wantLength(t, "wall at the left rim", edgeNamed(t, got.face("back"), "window, left").Gap, "-9/16")
	wantLength(t, "wall at the untiled head", edgeNamed(t, got.face("back"), "window, top").Gap, "1/8")
}

func TestDepthMissing(t *testing.T) {
	r := nicheRoom(t)
	r.Openings[0].Depth = document.Value[unit.Length]{}
	r.solve().wantSaid("depth-unknown", "niche")
	r.Openings[0].Depth = document.Value[unit.Length]{Unknown: true, At: diag.Place{Line: 50}}
	r.solve().wantSaid("depth-unknown", "niche")
	r.Openings[0].Depth = document.Value[unit.Length]{At: diag.Place{Line: 50}} // written, and told as unreadable
	r.solve().wantNot("depth-unknown")
}

// The wall is a plane over a belly of 1/4 in at 30 in: its face stands 1/4 + 1/8 + 3/8 = 3/4 in off the corner line, so 1/2 in off the board at the
// belly, and halfway to the corner 5/8 in. The sill of a niche in the middle reaches to there, less a profile of 3/8 in.
func TestRimOverABelly(t *testing.T) {
	r := nicheRoom(t)
	r.Walls[0].Profile, r.Walls[0].Face, r.Walls[0].LeastBed = r.stations("0 0, 30 1/4, 60 0"), val(document.Plane), val(r.in("1/8"))
	r.Openings[0].Trim = val(r.in("3/8"))
	got := r.solve()
	wantLength(t, "sill", edgeNamed(t, got.face("niche > sill"), "niche, rim").Gap, "-1/8")
	s := &solver{doc: r.Room, out: Room{tapedTo: document.Board}}
	w := wall{doc: r.Walls[0], build: build{set: true, bed: r.in("3/8"), tile: r.in("3/8")}}
	wantLength(t, "face off the board halfway", s.finishOver(w, got.face("back"), r.in("15")), "5/8")
}

// An opening that goes through has a far side, where the tile's edge shows; a door's jambs stand on the floor's tile.
func TestThroughAndDoor(t *testing.T) {
	r := alcove(t)
	hatch := r.opening("hatch", "back", document.Plain, "6 from A", "48 above floor", "12", "12")
	hatch.Depth = val(r.in("5"))
	door := r.opening("door", "back", document.Door, "24 from A", "", "28", "80")
	door.Depth = val(r.in("4"))
	r.lay("white", "back", "hatch > sill", "door > left jamb", "floor")
	got := r.solve()
	far := edgeNamed(t, got.face("hatch > sill"), "hatch, far side")
	if far.Kind != FreeEdge || !far.Shows || far.Gap != 0 {
		t.Errorf("far side %+v", far)
	}
	jamb := got.face("door > left jamb")
	wantLength(t, "jamb, from the floor's board", jamb.Board.Bounds().W(), "80-9/16") // 80 above the finished floor, which is 9/16 up
	foot := edgeNamed(t, jamb, "floor")
	wantLength(t, "over the floor's tile and a joint", foot.Gap, "11/16")
	if foot.Kind != AtFloor {
		t.Errorf("foot %+v", foot)
	}
	if f := got.face("hatch > sill"); f.SlopeFall != 20_000 {
		t.Errorf("fall %v", f.SlopeFall)
	}
}

func TestDepthTooSmall(t *testing.T) {
	r := nicheRoom(t)
	r.Openings[0].Depth = val(r.in("1/2")) // all of it is the board behind
	r.solve().wantSaid("depth-too-small", "niche")
}

func TestWindowHasNoBack(t *testing.T) {
	r := alcove(t)
	r.opening("window", "back", document.Window, "12 from A", "48 above floor", "20", "30").Depth = val(r.in("5"))
	r.lay("white", "window > back", "window > sill")
	got := r.solve()
	got.wantSaid("no-back", "window has no back")
	got.face("window > sill")
}
