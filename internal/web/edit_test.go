package web

import (
	"fmt"
	"html"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"sync"
	"testing"

	"dryfit/internal/text"
)

// Each line: the document, one input of a form and what is typed; then the operation that it makes, or none.
func TestInputsBecomeOperations(t *testing.T) {
	const doc = "name: n\nsurvey:\n  tape: {A-B: 71, B-C: unknown, C-D: [70, 71], D-A: {length: 9, to: board}}\nwalls:\n  w: {build-up: [board 1/2, tile]}\n"
	tree, _ := text.Parse([]byte(doc))
	for _, c := range []struct{ name, typed, want string }{
		{`set:["name"]`, "n", ""},
		{`set:["name"]`, " m ", "set name = m"},
		{`set:["name"]`, "a: b", `set name = "a: b"`},
		{`set:["name"]`, "", "remove name = "},
		{`set:["survey","tape","A-B"]`, "71", ""},
		{`set:["survey","tape","A-B"]`, "", "set survey > tape > A-B = unknown"},
		{`set:["survey","tape","B-C"]`, "", ""},
		{`set:["survey","tape","B-C"]`, `5' 11"`, `set survey > tape > B-C = 5' 11"`},
		{`set:["survey","tape","D-A","length"]`, "10", "set survey > tape > D-A > length = 10"},
		{`again:["survey","tape","A-B"]`, "72", "set survey > tape > A-B = [71, 72]"},
		{`again:["survey","tape","C-D"]`, "72", "set survey > tape > C-D = [70, 71, 72]"},
		{`again:["survey","tape","B-C"]`, "72", "set survey > tape > B-C = 72"},
		{`again:["survey","tape","D-A"]`, "8", "set survey > tape > D-A = [{length: 9, to: board}, 8]"},
		{`again:["survey","tape","D-A"]`, "", ""},
		{`list:["walls","w","build-up"]`, "board 1/2, tile", ""},
		{`list:["walls","w","build-up"]`, "board 1/2,bed 3/16 ,, tile", "set walls > w > build-up = [board 1/2, bed 3/16, tile]"},
		{`remove`, `["walls","w"]`, "remove walls > w = "},
		{`other`, "x", ""},
	} {
		ops, err := opsOf(url.Values{c.name: {c.typed}}, tree)
		var got []string
		for _, op := range ops {
			got = append(got, fmt.Sprintf("%s %s = %s", op.Do, strings.Join(op.Path, " > "), op.Value))
		}
		if err != nil || strings.Join(got, "; ") != c.want {
			t.Errorf("%s %q: %q, %v; want %q", c.name, c.typed, got, err, c.want)
		}
	}
	for _, bad := range []string{"set:", "set:x", "set:[]", `set:[""]`, `set:{"a":1}`, `set:[1]`} {
		if _, err := opsOf(url.Values{bad: {"v"}}, tree); err == nil {
			t.Errorf("%s was taken", bad)
		}
	}
}

func TestAddThing(t *testing.T) {
	s := open(t, nil)
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", "add", `["stub-outs"]`, "new.name", "shower arm", "new.in", "long wall",
		"new.across", "30 from A", "new.up", "center 78 above floor", "new.diameter", "3/4")
	if w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	has(t, s.head(1), "shower arm: {across: 30 from A, diameter: 3/4, in: long wall, up: center 78 above floor}")
	w = s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", "remove", `["stub-outs","shower arm"]`)
	if w.Code != 303 || strings.Contains(s.head(1), "shower arm") {
		t.Errorf("%d: it is still there", w.Code)
	}
}

// What can not be is refused whole, is said where it was typed, and what was typed is still there.
func TestRefusedWhole(t *testing.T) {
	s := open(t, nil)
	before := s.head(1)
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["survey","tape","A-B"]`, "72", `set:["survey","tape","B-C"]`, "about 8 feet")
	if w.Code != http.StatusUnprocessableEntity || s.head(1) != before {
		t.Errorf("%d; kept: %v", w.Code, s.head(1) != before)
	}
	has(t, w.Body.String(), `value="about 8 feet"`, `said stop`, "write it like one of these")
	w = s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", "add", `["openings"]`, "new.name", "hatch", "new.in", "no such wall")
	if w.Code != http.StatusUnprocessableEntity || s.head(1) != before {
		t.Errorf("a thing on no wall: %d", w.Code)
	}
}

// Two people: changes of different values both stand; of the same value neither is stored over.
func TestClash(t *testing.T) {
	s := open(t, nil)
	change := func(base, line, value string) int {
		w := s.post("/room/1/edit", "base", base, "back", "/room/1/measure", `set:["survey","tape","`+line+`"]`, value)
		if w.Code == http.StatusConflict {
			has(t, w.Body.String(), "Nothing is stored over", "71-3/8", "71-1/2", "Take mine")
		}
		return w.Code
	}
	for _, c := range []struct {
		base, line, value string
		want              int
	}{
		{"1", "A-B", "71-3/8", 303},
		{"1", "B-C", "96-3/8", 303}, // another value, on an old revision
		{"1", "A-B", "71-3/8", 303}, // the same change twice
		{"1", "A-B", "71-1/2", 409}, // a clash
		{"3", "A-B", "71-1/2", 303}, // seen, and set after all
	} {
		if got := change(c.base, c.line, c.value); got != c.want {
			t.Errorf("%+v: %d", c, got)
		}
	}
	has(t, s.head(1), "A-B: 71-1/2\n", "B-C: 96-3/8\n")
}

// Two people in one place of the document: what differs merges, and a clash shows what both say and what was before.
// Each line: what the first does, what the second does on the same page, and what comes of it.
func TestTwoPeopleInOnePlace(t *testing.T) {
	const hot, cold = `["stub-outs","hot stop"]`, `["stub-outs","cold stop"]`
	add := func(name string) []string {
		return []string{"add", `["stub-outs"]`, "new.name", name, "new.in", "long wall", "new.across", "30 from A", "new.up", "center 78 above floor", "new.diameter", "3/4"}
	}
	for _, c := range []struct {
		name          string
		theirs, yours []string
		code          int
		says          []string // by the document, or by the page of a clash
	}{
		{"two facts of one pipe", []string{`set:["stub-outs","hot stop","diameter"]`, "3/4"}, []string{`set:["stub-outs","hot stop","up"]`, "22 above floor"}, 303,
			[]string{"hot stop:    {in: basin wall, across: 4 left of basin line,  up: 22 above floor, diameter: 3/4}"}},
		{"two pipes added", add("shower arm"), add("body spray"), 303, []string{"shower arm: {", "body spray: {"}},
		{"one pipe added twice", add("shower arm"), add("shower arm"), 303, []string{"shower arm: {"}},
		{"one taken out, one changed", []string{"remove", hot}, []string{`set:["stub-outs","cold stop","diameter"]`, "3/4"}, 303, []string{"diameter: 3/4}"}},
		{"taken out and changed", []string{"remove", cold}, []string{`set:["stub-outs","cold stop","diameter"]`, "3/4"}, 409,
			[]string{"stub-outs &gt; cold stop", "nothing: it was taken out", "diameter: 3/4}", "diameter: 5/8}", "Take mine"}},
		{"changed and taken out", []string{`set:["stub-outs","cold stop","diameter"]`, "3/4"}, []string{"remove", cold}, 409,
			[]string{"stub-outs &gt; cold stop", "nothing: you took it out", "diameter: 3/4}", "diameter: 5/8}", "Take mine"}},
		{"one fact, two values", []string{`set:["stub-outs","cold stop","diameter"]`, "3/4"}, []string{`set:["stub-outs","cold stop","diameter"]`, "1/2"}, 409,
			[]string{"stub-outs &gt; cold stop &gt; diameter", "<pre>3/4</pre>", "<pre>1/2</pre>", "<pre>5/8</pre>"}},
	} {
		s := openTiles(t)
		both := []string{"base", "1", "back", "/room/1/measure"}
		if w := s.post("/room/1/edit", append(both[:4:4], c.theirs...)...); w.Code != 303 {
			t.Fatalf("%s: theirs: %d %s", c.name, w.Code, w.Body)
		}
		w := s.post("/room/1/edit", append(both[:4:4], c.yours...)...)
		if w.Code != c.code {
			t.Errorf("%s: %d, want %d\n%s", c.name, w.Code, c.code, w.Body)
		}
		if c.code == 303 {
			has(t, s.head(1), c.says...)
		} else {
			has(t, w.Body.String(), c.says...)
		}
	}
}

// One value of a form clashes: the others are kept, and the page says so.
func TestClashKeepsTheRestOfTheForm(t *testing.T) {
	s := open(t, nil)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["survey","tape","A-B"]`, "71-3/8")
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["survey","tape","A-B"]`, "71-1/2", `set:["survey","tape","B-C"]`, "96-3/8", `set:["name"]`, "Attic")
	if w.Code != 409 {
		t.Fatalf("%d", w.Code)
	}
	has(t, w.Body.String(), "What else you had typed is kept", "<pre>71-3/8</pre>", "<pre>71-1/2</pre>", `name="base" value="3"`)
	has(t, s.head(1), "A-B: 71-3/8\n", "B-C: 96-3/8\n", "name: Attic\n")
}

// What a clash offers does what it says: the second person's value stands, as they meant it, in its place.
func TestTakeMine(t *testing.T) {
	s := openTiles(t)
	s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", "remove", `["stub-outs","cold stop"]`)
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["stub-outs","cold stop","diameter"]`, "3/4")
	form := regexp.MustCompile(`name="(value:[^"]*)" value="([^"]*)"`).FindStringSubmatch(w.Body.String())
	if form == nil {
		t.Fatalf("nothing is offered: %s", w.Body)
	}
	if w = s.post("/room/1/edit", "base", "2", "back", "/room/1/measure", html.UnescapeString(form[1]), html.UnescapeString(form[2])); w.Code != 303 {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	has(t, s.head(1), "cold stop: {in: basin wall, across: 4 right of basin line, up: 21 above floor, diameter: 3/4}")
}

// Many write at once: every edit that was acknowledged is in the head, and every one made a revision of its own.
func TestManyWriters(t *testing.T) {
	s := open(t, nil)
	lines := []string{"A-B", "B-C", "C-D", "D-A", "A-C"}
	var all sync.WaitGroup
	for _, line := range lines {
		all.Go(func() {
			for k := range 4 {
				w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `set:["survey","tape","`+line+`"]`, fmt.Sprintf("9%d-1/%d", k, 2+2*k))
				if w.Code != 303 && w.Code != http.StatusConflict {
					t.Errorf("%s: %d", line, w.Code)
				}
			}
		})
	}
	all.Wait()
	for _, line := range lines {
		has(t, s.head(1), line+": 90-1/2\n") // the first of each stands: the later ones clash with it, having not seen it
	}
}
