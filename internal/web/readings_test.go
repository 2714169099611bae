package web

import (
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"dryfit/internal/store"
)

// Each line: a form of the page Measure as it is sent, and the line that the document has then, its comments kept.
func TestReadingForms(t *testing.T) {
	for _, c := range []struct {
		name, path string
		form       []string
		want       string
	}{
		{"a reading at a distance", "edit", []string{"pair", `["walls","basin wall","profile"]`, "new.at", "60", "new.off", "-1/16"}, "profile: {0: 0, 18: 1/16, 36: 1/8, 54: 1/16, 71: 0, 60: -1/16}"},
		{"the first of its kind", "edit", []string{"pair", `["walls","long wall","ceiling"]`, "new.at", "0", "new.off", "55-3/4"}, "ceiling: {0: 55-3/4}"},
		{"a reading changed", "edit", []string{`set:["walls","basin wall","studs","48"]`, "-3/16"}, "studs: {0: 0, 16: -1/16, 32: 0, 48: -3/16, 64: -1/16, 71: 0}"},
		{"a reading emptied", "edit", []string{`set:["walls","basin wall","studs","48"]`, ""}, "studs: {0: 0, 16: -1/16, 32: 0, 64: -1/16, 71: 0}"},
		{"one more under the straightedge", "edit", []string{"behind", `["walls","basin wall","straightedge"]`, "new.length", "6 ft", "new.gap", "1/16", "new.across", "", "new.up", ""}, "      - {gap: 1/16, length: 6 ft}"},
		{"the first under the straightedge", "edit", []string{"behind", `["walls","long wall","straightedge"]`, "new.length", "6 ft", "new.gap", "1/16"}, "straightedge: [{gap: 1/16, length: 6 ft}]"},
		{"one of two changed", "edit", []string{`set:["walls","basin wall","straightedge","#2","gap"]`, "1/8"}, "      - {length: 24, gap: 1/8, across: 12 from A, up: 60 above floor}"},
		{"one of the floor's", "edit", []string{"behind", `["floor","straightedge"]`, "new.length", "48", "new.gap", "1/8"}, "    - {gap: 1/8, length: 48}"},
		{"a gap that is not known yet", "edit", []string{"behind", `["floor","straightedge"]`, "new.length", "48", "new.gap", ""}, "    - {length: 48, gap: unknown}"},
		{"a gap emptied", "edit", []string{`set:["walls","basin wall","straightedge","#2","gap"]`, ""}, "{length: 24, gap: unknown,"},
		{"a pipe of which little is known", "edit", []string{"add", `["stub-outs"]`, "new.name", "drain", "new.in", "", "new.diameter", ""}, "drain: {in: unknown, diameter: unknown}"},
		{"a diameter emptied", "edit", []string{`set:["stub-outs","WC supply","diameter"]`, ""}, "up: 8 above floor, diameter: unknown}"},
		{"how a corner is made", "edit", []string{`set:["corners","C","soft joint"]`, "3/16"}, "corners: {C: {soft joint: 3/16}}"},
		{"a pipe moved in the floor", "edit", []string{`set:["stub-outs","WC flange","off","basin wall"]`, "12-3/4"}, "off: {basin wall: 12-3/4, window wall: 16-1/4}"},
		{"a new box in the floor", "edit", []string{"add", `["boxes"]`, "new.name", "floor drain", "new.in", "floor", "new.width", "6", "new.height", "6", "new.off:basin wall", "30", "new.off:long wall", "36"},
			"floor drain: {height: 6, in: floor, off: {basin wall: 30, long wall: 36}, width: 6}"},
		{"a new corner", "corners", []string{"corners", "add", "name", "E", "after", "C"}, "  corners: A B C E D\n"},
	} {
		s := openTiles(t)
		form := append([]string{"base", "1", "back", "/room/1/measure"}, c.form...)
		if w := s.post("/room/1/"+c.path, form...); w.Code != 303 {
			t.Errorf("%s: %d %.300s", c.name, w.Code, words(w.Body.String()))
		} else if doc := s.head(1); !strings.Contains(doc, c.want) || strings.Count(doc, "#") != strings.Count(s.first(1), "#") {
			t.Errorf("%s: the document lacks %q or a comment:\n%s", c.name, c.want, doc)
		}
	}
}

// What can not be is said on the page with what was typed, and nothing is kept.
func TestReadingFormsRefuse(t *testing.T) {
	for _, c := range []struct {
		name, path string
		form       []string
		want       []string
	}{
		{"a reading that is there", "edit", []string{"pair", `["walls","basin wall","profile"]`, "new.at", "18", "new.off", "1/8"}, []string{"there is one already", `value="1/8"`}},
		{"no length", "edit", []string{"pair", `["walls","basin wall","profile"]`, "new.at", "20", "new.off", "flat"}, []string{"flat", `value="flat"`, "Mend:"}},
		{"half of it", "edit", []string{"pair", `["walls","basin wall","profile"]`, "new.at", "20", "new.off", ""}, []string{"Both are needed"}},
		{"a pipe of no width", "edit", []string{"add", `["stub-outs"]`, "new.name", "drain", "new.in", "floor", "new.diameter", "wide"}, []string{"wide", `value="drain"`, "Mend:"}},
		{"a corner by a taken name", "corners", []string{"corners", "add", "name", "B", "after", "C"}, []string{"B is named already", `value="B"`}},
		{"corners twice", "corners", []string{"corners", "order", "order", "A B B D"}, []string{"each once", `value="A B B D"`}},
	} {
		s := open(t, nil)
		before := s.head(1)
		w := s.post("/room/1/"+c.path, append([]string{"base", "1", "back", "/room/1/measure"}, c.form...)...)
		if w.Code != 422 || s.head(1) != before {
			t.Errorf("%s: %d, or something was kept", c.name, w.Code)
		}
		for _, word := range c.want {
			if !strings.Contains(w.Body.String(), word) {
				t.Errorf("%s: the page lacks %q", c.name, word)
			}
		}
	}
}

func words(page string) string {
	return regexp.MustCompile(`<[^>]*>|\s+`).ReplaceAllString(page, " ")
}

// first is the text of a room's first revision.
func (s *site) first(room store.RoomID) string {
	s.Helper()
	r, err := s.store.At(s.Context(), room, 1)
	if err != nil {
		s.Fatal(err)
	}
	return string(r.Text)
}

// A reading is added with the keyboard alone: the sketch follows while it is typed, and the inputs wait for the next one.
func TestReadingTyped(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 390, 844, false)
	b.open("/room/1/measure")
	b.until(`document.documentElement.classList.contains("js")`)
	eval[bool](b, `(() => { for (const d of document.querySelectorAll("details")) d.open = true; window.strip = [...document.querySelectorAll("[data-another]")].find(f => f.elements.pair && f.elements.pair.value === '["walls","long wall","profile"]'); window.sketch = () => strip.closest(".readings").querySelector(".sketch").textContent; strip.elements["new.at"].focus(); return true; })()`)
	b.keys("40" + kb.Tab + "3/16")
	b.until(`sketch().includes("3/16") && sketch().includes("40")`)
	if s.head(1) != s.first(1) {
		t.Error("what is only typed was kept")
	}
	b.keys(kb.Enter)
	b.until(`document.body.dataset.head === "2" && strip.elements["new.at"].value === "" && document.activeElement === strip.elements["new.at"]`)
	has(t, s.head(1), "profile: {40: 3/16}")
	b.keys("48" + kb.Tab + "x" + kb.Enter)
	b.until(`strip.querySelector(".said.stop") !== null && strip.elements["new.off"].value === "x"`)
	b.do(chromedp.Evaluate[chromedp.Void](`strip.scrollIntoView()`))
	b.seen("reading-390")
}
