package web

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// watch notes what gets the focus and whether that can be seen: an outline of 2 px or more (WCAG 2.2, 2.4.7 and 2.4.13).
const watch = `(() => {
  document.querySelectorAll("details").forEach(d => { d.open = true; });
  window.reached = new Set(); window.unseen = [];
  document.addEventListener("focusin", e => {
    reached.add(e.target);
    const s = getComputedStyle(e.target);
    if (s.outlineStyle === "none" || parseFloat(s.outlineWidth) < 2) unseen.push(e.target.outerHTML.slice(0, 120));
  });
  return true;
})()`

// controls are what a mouse could use and is there to be seen; of a group of radio buttons the chosen one is a stop.
const controls = `[...document.querySelectorAll("a[href], button:enabled, input:enabled, select:enabled, textarea:enabled, summary, [tabindex='0'], [data-show]")]
  .filter(e => e.type !== "hidden" && (e.type !== "radio" || e.checked) && e.checkVisibility())`

// On every page the Tab key reaches everything that can be used, what has the focus can be seen, and there is a way out.
func TestTabReachesEverything(t *testing.T) {
	s := open(t, NewShare("http://192.0.2.7:80"))
	s.sendPhotos("basin wall", "before it was closed up", jpegOf(t, chart(30, 20)))
	b := browse(s, 1280, 900, false)
	for _, page := range []string{"/", "/share", "/room/1/measure", "/room/1/layout", "/room/1/layout?face=floor", "/room/1/cut", "/room/1/book",
		"/room/1/photos", "/room/1/source", "/room/1/history", "/room/1/wall"} {
		b.open(page)
		b.until(`document.readyState === "complete" && ` + watch)
		n := eval[int](b, controls+`.length`)
		if n < 3 {
			t.Errorf("%s has %d controls", page, n)
		}
		b.keys(strings.Repeat(kb.Tab, n+n/2+5)) // a file input and a list that scrolls may be more stops than one
		if missed := eval[[]string](b, controls+`.filter(e => !reached.has(e)).map(e => e.outerHTML.slice(0, 120))`); len(missed) > 0 {
			t.Errorf("%s: of %d controls the Tab key does not reach %d: %q", page, n, len(missed), missed[:min(5, len(missed))])
		}
		if unseen := eval[[]string](b, `unseen`); len(unseen) > 0 {
			t.Errorf("%s: it can not be seen that these have the focus: %q", page, unseen[:min(5, len(unseen))])
		}
	}
}

// tabTo presses Tab until what a selector finds has the focus.
func (b *browser) tabTo(selector string) {
	b.Helper()
	for range 600 {
		if eval[bool](b, `document.activeElement.matches(`+quoted(selector)+`)`) {
			return
		}
		b.keys(kb.Tab)
	}
	b.Fatalf("the Tab key never came to %s", selector)
}

// follow goes to another page of the room by its tab.
func (b *browser) follow(page string) {
	b.Helper()
	b.tabTo(`.tabs a[href$="/` + page + `"]`)
	b.keys(kb.Enter)
	b.until(fmt.Sprintf(`location.pathname.endsWith("/%s") && document.documentElement.classList.contains("js")`, page))
}

// A whole visit without a mouse: from the list of rooms through every page, doing on each what it is for.
func TestKeyboardOnly(t *testing.T) {
	s := openTiles(t)
	b := browse(s, 1280, 900, false)
	b.open("/")
	b.tabTo(`a[href="/room/1/measure"]`)
	b.keys(kb.Enter)
	b.until(`location.pathname === "/room/1/measure" && document.documentElement.classList.contains("js")`)
	head := func(n int) { t.Helper(); b.until(fmt.Sprintf(`document.body.dataset.head === "%d"`, n)) }

	b.tabTo(".line input") // Measure: a reading, then another name for a wall
	b.keys("71-1/2" + kb.Tab)
	head(2)
	has(t, s.head(1), "A-B: 71-1/2\n")
	b.tabTo(`details.part:has(input[name*='"walls","basin wall"']) > summary`)
	b.keys(kb.Enter)
	b.tabTo("details.part[open] details.thing > summary")
	b.keys(kb.Enter)
	b.tabTo(`input[name^='rename:["walls"']`)
	b.keys("north wall" + kb.Enter)
	head(3)
	has(t, s.head(1), "in: north wall")

	b.follow("layout")
	b.tabTo("#face")
	b.keys(kb.ArrowRight + kb.ArrowUp)
	head(4)
	has(t, s.head(1), "pin: {across: ")
	b.tabTo("[data-show]") // tap a tile to see its cut
	b.keys(kb.Enter)
	b.until(`document.querySelector("#piece h2").textContent.startsWith("Piece ")`)
	b.follow("layout")
	b.tabTo(`.pad button[name="dy"]`)
	b.keys(kb.Enter)
	head(5)
	b.tabTo(`.faces a[href$="face=floor"]`)
	b.keys(kb.Enter)
	b.until(`new URLSearchParams(location.search).get("face") === "floor" && document.documentElement.classList.contains("js")`)
	b.tabTo("#face")
	b.keys(kb.ArrowLeft)
	head(6)
	has(t, s.head(1), "pin: {off: {")

	b.follow("cut")
	b.tabTo("table.ticks th button")
	b.keys(kb.Enter)
	b.until(`document.querySelector("th[aria-sort]") !== null`)
	b.tabTo("input[data-tick]")
	b.keys(" ")
	b.until(`document.activeElement.checked && window.dryfitTick && window.dryfitTick.unsent("/room/1/ticks") === 0`)
	if ticks, err := s.store.Ticks(b.ctx, 1); err != nil || len(ticks) != 1 {
		t.Errorf("ticks %+v, %v", ticks, err)
	}

	b.follow("book")
	b.tabTo(`a[href$="/get/wall.html"], .sheets a`)
	b.follow("photos")
	b.tabTo("details.send > summary")
	b.keys(kb.Enter)
	b.until(`document.activeElement.parentElement.open`)
	b.tabTo(`input[type="file"]`)

	b.follow("source")
	b.tabTo("#text")
	b.keys("# A note.\n")
	b.tabTo("form.write button") // out of the text by Tab
	b.keys(kb.Enter)
	b.until(`location.pathname.endsWith("/source") && document.body.dataset.head === "7"`)
	has(t, s.head(1), "# A note.")

	b.follow("history")
	b.tabTo("#from")
	b.keys("1")
	b.tabTo(".between button")
	b.keys(kb.Enter)
	b.until(`location.search.includes("from=1")`)
	has(t, eval[string](b, `document.querySelector("main").innerText`), "survey > tape > A-B: was 71-7/16, now 71-1/2", "renamed walls > basin wall to north wall")
	b.tabTo(`#undo button[formaction$="/undo"]`)
	b.keys(kb.Enter)
	head(8)
	if strings.Contains(s.head(1), "# A note.") {
		t.Error("undo has left the note")
	}
	b.tabTo(`button[name="light"][value="dark"]`)
	b.keys(kb.Enter)
	b.until(`document.documentElement.dataset.light === "dark"`)

	b.follow("layout")
	b.tabTo(`a[href*="/wall?"]`)
	b.keys(kb.Enter)
	b.until(`location.pathname.endsWith("/wall") && document.querySelector("[data-next]").textContent.length < 20`)
	first := eval[string](b, `document.querySelector("[data-next]").textContent`)
	b.tabTo("[data-set]")
	b.keys(kb.Enter)
	b.until(`document.querySelector("[data-next]").textContent !== ` + quoted(first))
	b.tabTo("details.rough > summary")
	b.keys(kb.Enter)
	b.until(`document.querySelector("details.rough").open`)
}
