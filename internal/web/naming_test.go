package web

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/text"
)

// A thing is called something else by a form, wherever the document speaks of it. Each line: what, its new name, what the
// document says then, and what it says no more.
func TestRename(t *testing.T) {
	for _, c := range []struct {
		path, name string
		says       []string
		gone       string
	}{
		{`["walls","basin wall"]`, "north wall", []string{"  north wall:\n", "in: north wall", "order: [floor, north wall,"}, "in: basin wall"},
		{`["survey","corners","B"]`, "Q", []string{"corners: A Q C D", "A-Q: 71-7/16", "Q-C: 96-5/16", "Q-D:", "P-Q: 64-15/16", "Q: 40-3/8"}, "A-B:"},
		{`["tiles","field porcelain"]`, "mosaic: gray", []string{`tile: "mosaic: gray"`}, "field porcelain"},
		{`["openings","window"]`, "hatch", []string{"  hatch:\n", "hatch > sill"}, "window > sill"},
		{`["stub-outs","hot stop"]`, "hot valve", []string{"hot valve:"}, "hot stop:"},
	} {
		s := openTiles(t)
		w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", "rename:"+c.path, " "+c.name+" ")
		if w.Code != 303 {
			t.Errorf("%s: %d %s", c.path, w.Code, w.Body)
			continue
		}
		doc := s.head(1)
		has(t, doc, c.says...)
		if strings.Contains(doc, c.gone) {
			t.Errorf("%s: the document still says %q", c.path, c.gone)
		}
		has(t, s.get("/room/1/history"), "renamed ", " to "+htmlOf(c.name))
		if strings.Contains(s.get("/room/1/history"), "added ") {
			t.Errorf("%s: a new name is told as more than one change", c.path)
		}
	}
}

// A name that can not be had is said at the input, with what was typed, and nothing is kept.
func TestRenameRefused(t *testing.T) {
	s := open(t, nil)
	before := s.head(1)
	for _, c := range []struct{ path, name string }{
		{`["walls","basin wall"]`, "long wall"}, {`["walls","basin wall"]`, "floor"}, {`["walls","basin wall"]`, "unknown"},
		{`["walls","basin wall"]`, ""}, {`["walls","no such wall"]`, "x"}, {`["survey","corners","A"]`, "B"},
		{`["survey","corners","A"]`, "left"}, {`["openings","window"]`, "basin wall"}, {`["tiles","field porcelain"]`, "a\nb"},
	} {
		w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", "rename:"+c.path, c.name)
		if w.Code != 422 || s.head(1) != before {
			t.Errorf("%s to %q: %d", c.path, c.name, w.Code)
		}
	}
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","basin wall"]`, "long wall")
	has(t, w.Body.String(), `value="long wall" required`, `aria-invalid="true"`, "another thing has that name")
	if w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","basin wall"]`, "basin wall"); w.Code != 303 || s.head(1) != before {
		t.Errorf("the name that it has: %d", w.Code)
	}
}

// One gives a wall a name while another fills in the form of the old one: both stand.
func TestRenameWhileAnotherTypes(t *testing.T) {
	s := open(t, nil)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","long wall"]`, "bath wall")
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `list:["walls","long wall","build-up"]`, "board 5/8, bed 1/4, tile")
	if w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	tree, _ := text.Parse([]byte(s.head(1)))
	if n := text.At(tree, []string{"walls", "bath wall", "build-up"}); n == nil || text.Flow(n) != "[board 5/8, bed 1/4, tile]" || text.At(tree, []string{"walls", "long wall"}) != nil {
		t.Errorf("the document is\n%s", s.head(1))
	}
}

// A room that has faults already can still be renamed in: what stopped it before is no reason to refuse a name.
func TestRenameInARoomWithFaults(t *testing.T) {
	s := openTiles(t)
	s.post("/room/1/source", "base", "1", "text", strings.Replace(s.head(1), "along: A-B", "along: A-X", 1))
	if w := s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", `rename:["walls","basin wall"]`, "north wall"); w.Code != 303 {
		t.Errorf("%d %s", w.Code, w.Body)
	}
}

// Photos stay with their wall, when it gets a name and when that is taken back.
func TestPhotosFollowNames(t *testing.T) {
	s := openTiles(t)
	s.sendPhotos("basin wall", "", jpegOf(t, chart(30, 20)))
	s.sendPhotos("window > sill", "", jpegOf(t, chart(30, 20)))
	faces := func() string {
		var all []string
		for _, p := range s.photos() {
			all = append(all, p.Face)
		}
		slices.Sort(all)
		return strings.Join(all, "; ")
	}
	before := faces()
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","basin wall"]`, "north wall")
	s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", `rename:["openings","window"]`, "hatch")
	if want := "hatch > sill; north wall"; faces() != want || before != "basin wall; window > sill" {
		t.Errorf("the photos are of %s, want %s", faces(), want)
	}
	s.post("/room/1/undo", "back", "/")
	s.post("/room/1/undo", "back", "/")
	if faces() != before {
		t.Errorf("taken back, the photos are of %s", faces())
	}
}

func TestRenamedFace(t *testing.T) {
	for _, c := range []struct{ face, kind, old, now, want string }{
		{"a", "walls", "a", "b", "b"},
		{"a", "openings", "a", "b", "a"},
		{"a > sill", "openings", "a", "b", "b > sill"},
		{"a > sill", "walls", "a", "b", "a > sill"},
		{"ab > sill", "openings", "a", "b", "ab > sill"},
	} {
		if got := renamedFace(c.face, text.Op{Do: text.Rename, Path: []string{c.kind, c.old}, Value: c.now}); got != c.want {
			t.Errorf("%+v: %q", c, got)
		}
	}
}
