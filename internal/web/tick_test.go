package web

import (
	"encoding/json"
	"net/http/httptest"
	"strings"
	"testing"

	"dryfit/internal/plan"
)

// sends ticks as a phone does, of the revision that it shows.
func (s *site) ticks(all ...sentTick) int {
	s.Helper()
	b, err := json.Marshal(all)
	if err != nil {
		s.Fatal(err)
	}
	r := httptest.NewRequest("POST", "http://127.0.0.1:8080/room/1/ticks", strings.NewReader(string(b)))
	r.RemoteAddr = "127.0.0.1:5000"
	return s.send(r).Code
}

// cuts are the pieces to cut of a face in the order of the page.
func (s *site) cuts(face string) []pieceLine {
	s.Helper()
	v, err := s.server.view(roomRequest("1"))
	if err == nil {
		err = v.make(plan.Options{UpTo: plan.UpToTiling, Face: face})
	}
	if err != nil {
		s.Fatal(err)
	}
	var out []pieceLine
	for _, f := range v.Plan.Tiling.Faces {
		for _, p := range v.pieces(f) {
			if f.Name == face && !p.Whole {
				out = append(out, p)
			}
		}
	}
	return out
}

func (s *site) ticked(p pieceLine) bool {
	s.Helper()
	page := s.get("/room/1/cut")
	at := strings.Index(page, `data-tick="`+htmlOf(p.Tick)+`"`)
	return at >= 0 && strings.Contains(page[at:at+strings.Index(page[at:], ">")], " checked")
}

// A tick stays with its wall when the wall gets a name, when that is taken back, and when it comes late from a phone that
// shows the old name.
func TestTicksFollowNames(t *testing.T) {
	s := openTiles(t)
	pieces := s.cuts("basin wall")
	one, two := pieces[0], pieces[1]
	if s.ticks(sentTick{Piece: one.Tick, Outline: one.Hash, Client: "phone", Done: true, Seq: 1, Head: 1}) != 204 || !s.ticked(one) {
		t.Fatal("a tick is not kept")
	}
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","basin wall"]`, "north wall")
	s.ticks(sentTick{Piece: two.Tick, Outline: two.Hash, Client: "phone", Done: true, Seq: 2, Head: 1})
	now := s.cuts("north wall")
	if now[0].Address != one.Address || !strings.HasPrefix(now[0].Tick, "north wall > ") {
		t.Fatalf("the first piece is %+v", now[0])
	}
	if !s.ticked(now[0]) || !s.ticked(now[1]) || s.ticked(now[2]) {
		t.Error("ticks did not follow the new name")
	}
	s.post("/room/1/undo", "back", "/room/1/measure")
	if !s.ticked(one) || !s.ticked(two) {
		t.Error("ticks did not follow the name back")
	}
}

// A piece that was cut before the plan changed is told with both sizes; one that is gone is told too.
func TestRecut(t *testing.T) {
	s := open(t, nil)
	var sent []sentTick
	was := s.cuts("basin wall")
	for i, p := range was {
		sent = append(sent, sentTick{Piece: p.Tick, Outline: p.Hash, Client: "phone", Done: true, Seq: int64(i + 1), Head: 1})
	}
	s.ticks(sent...)
	if page := s.get("/room/1/cut"); strings.Contains(page, "Cut before the plan changed") {
		t.Fatal("nothing has changed yet")
	}
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["walls","basin wall","out of plumb","A"]`, "1/2")
	s.post("/room/1/pin", "base", "2", "back", "/room/1/layout?face=basin+wall", "face", "basin wall", "field", "main", "dx", "30000", "dy", "0")
	now := map[string]pieceLine{}
	for _, p := range s.cuts("basin wall") {
		now[p.Tick] = p
	}
	page := s.get("/room/1/cut")
	has(t, page, "Cut before the plan changed")
	told := 0
	for _, p := range was {
		n, there := now[p.Tick]
		want := htmlOf("basin wall, piece " + p.Address + ": cut to " + cutTo(p.Hash) + ", now " + cutTo(n.Hash))
		if !there {
			want = htmlOf("basin wall, piece " + p.Address + ": cut to " + cutTo(p.Hash) + ", and now there is no such piece")
		}
		changed := !there || cutTo(n.Hash) != cutTo(p.Hash)
		if changed != strings.Contains(page, want) {
			t.Errorf("changed %v, told %v: %s", changed, !changed, want)
		}
		if changed {
			told++
		}
	}
	if told == 0 {
		t.Error("nothing changed, so nothing was tested")
	}
	has(t, s.get("/room/1/wall?face=basin+wall"), "basin wall, piece ")
}

// What a tick says is held against the figures that a piece is cut by, not against its thousandths.
func TestTickStands(t *testing.T) {
	for _, c := range []struct {
		was, now string
		want     bool
	}{
		{"abc length 4-3/8", "abc length 4-3/8", true}, {"abc length 4-3/8", "xyz length 4-3/8", true},
		{"abc length 4-3/8", "abd length 4-1/2", false}, {"abc ", "xyz ", false}, {"abc", "abc", true}, {"", "abc whole", false},
	} {
		if got := stands(c.was, c.now); got != c.want {
			t.Errorf("%q, %q: %v", c.was, c.now, got)
		}
	}
}
