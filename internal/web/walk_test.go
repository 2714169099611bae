package web

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A person who has never seen the program makes a room and types readings with the keyboard alone. The room is a 3-4-5
// triangle twice: 72 by 96 has a diagonal of 120 (Euclid I.47).
func TestNewRoomTyped(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 360, 760, false)
	b.open("/")
	b.do(chromedp.Focus(chromedp.ID("name")))
	b.keys("Attic" + kb.Enter)
	b.until(`location.pathname.endsWith("/measure")`)
	b.until(`document.readyState === "complete" && document.querySelector("#drawing").textContent.includes("A-B ?")`) // with its script
	eval[bool](b, `(document.querySelector(".line input").focus(), true)`)
	for i, reading := range []string{"72", "96", "6'", "96", "120"} {
		b.keys(reading)
		if i == 0 {
			b.until(`document.querySelector("#drawing").textContent.includes("B-C ?")`) // the drawing grows while typing
		}
		b.keys(kb.Tab)
	}
	b.until(`document.querySelector("#answer").textContent.includes("nothing checks them")`)
	b.keys("119")
	b.until(`document.querySelector("#drawing").textContent.includes("119 ?")`) // suspect at once, before it is kept
	b.seen("suspect-360")
	b.keys(kb.Backspace + kb.Backspace + kb.Backspace + "120" + kb.Tab)
	b.until(`document.querySelector("#answer").textContent.includes("they agree") && document.body.dataset.head === "7"`)
	has(t, s.head(3), "A-B: 72\n", "C-D: 6'", "B-D: 120\n")
	b.picture("typed-360")
}

// What can not be a length is refused at its input and nothing is kept.
func TestBadReadingStaysAtItsInput(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 768, 1000, false)
	b.open("/room/1/measure")
	before := s.head(1)
	b.do(chromedp.Focus(chromedp.CSS(".line input")))
	b.keys(kb.End + "x" + kb.Tab)
	b.until(`document.querySelector(".line .said.stop") !== null`)
	if got := eval[string](b, `document.querySelector(".line input").value`); got != "71-7/16x" {
		t.Errorf("what was typed has become %q", got)
	}
	if s.head(1) != before {
		t.Error("a reading that can not be read was kept")
	}
}

// A hand drags the pattern; figures follow while it moves, and letting go keeps the place as a pin in the document.
func TestDrag(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 1280, 1000, false)
	b.open("/room/1/layout")
	before := eval[string](b, `document.querySelector("#figures").innerText`)
	at := eval[[]float64](b, `(() => { const r = document.querySelector("#face svg").getBoundingClientRect(); return [r.x + r.width / 2, r.y + Math.min(r.height, 500) / 2]; })()`)
	b.do(chromedp.MouseEvent("mousePressed", at[0], at[1], chromedp.ButtonLeft, chromedp.ClickCount(1)))
	for i := range 6 {
		b.do(chromedp.MouseEvent("mouseMoved", at[0]+float64(4*(i+1)), at[1]+float64(i), chromedp.ButtonLeft))
	}
	b.until(`document.querySelector("#figures").innerText !== ` + quoted(before))
	if strings.Contains(s.head(1), "pin:") {
		t.Error("a drag that goes on was kept")
	}
	b.do(chromedp.MouseEvent("mouseReleased", at[0]+24, at[1]+5, chromedp.ButtonLeft, chromedp.ClickCount(1)))
	b.until(`document.body.dataset.head === "2"`)
	has(t, s.head(1), "pin: {across: ", "# This room is invented.")
	b.until(`!document.querySelector("#undo button").disabled`)
	b.do(chromedp.Click(chromedp.CSS("#undo button")))
	b.until(`document.body.dataset.head === "3"`)
	if strings.Contains(s.head(1), "pin:") {
		t.Error("undo left the pin")
	}
}

// Arrow keys do what the hand does.
func TestArrowKeys(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 768, 1000, true)
	b.open("/room/2/layout")
	b.do(chromedp.Focus(chromedp.ID("face")))
	b.keys(kb.ArrowRight + kb.ArrowRight + kb.ArrowDown)
	b.until(`document.body.dataset.head === "2"`)
	has(t, s.head(2), "pin: {across: ")
	b.until(`document.activeElement.id === "face"`)
}

// Two people have a room open: what one changes the other sees without doing anything.
func TestTwoPeople(t *testing.T) {
	s := open(t, nil)
	one := browse(s, 1280, 900, false)
	one.open("/room/1/measure")
	two := one.another(360, 760)
	two.open("/room/1/measure")
	two.until(`document.documentElement.classList.contains("js")`)
	one.do(chromedp.Focus(chromedp.CSS(".line input")))
	one.keys(kb.End + kb.Backspace + kb.Backspace + kb.Backspace + kb.Backspace + kb.Backspace + "-1/2" + kb.Tab)
	two.until(`document.querySelector(".line input").value === "71-1/2" && document.querySelector("#drawing").textContent.includes("71-1/2")`)
}

// Two people type into the same input: the second sees both values, chooses, and nothing of either was lost before.
func TestTwoPeopleClash(t *testing.T) {
	s := open(t, nil)
	one := browse(s, 1280, 900, false)
	one.open("/room/1/measure")
	two := one.another(360, 760)
	two.open("/room/1/measure")
	two.until(`document.documentElement.classList.contains("js")`)
	two.do(chromedp.Focus(chromedp.CSS(".line input"))) // and is called away
	one.do(chromedp.Focus(chromedp.CSS(".line input")))
	one.do(chromedp.Evaluate[chromedp.Void](`document.activeElement.select()`))
	one.keys("71-1/2" + kb.Tab)
	two.until(`document.body.dataset.head === "2"`)
	two.do(chromedp.Evaluate[chromedp.Void](`document.activeElement.select()`))
	two.keys("71-5/8" + kb.Tab)
	two.until(`document.body.innerText.includes("71-1/2") && document.body.innerText.includes("71-5/8") && document.querySelector(".clash button") !== null`)
	has(t, s.head(1), "A-B: 71-1/2\n")
	two.picture("clash-360")
	two.do(chromedp.Click(chromedp.CSS(".clash button")))
	one.until(`document.querySelector(".line input").value === "71-5/8"`)
	has(t, s.head(1), "A-B: 71-5/8\n")
}

// One gives a wall a name while the other types into a form of it: what is typed goes to the wall, and then the page is
// the one with the new name.
func TestRenameUnderAPage(t *testing.T) {
	s := open(t, nil)
	one := browse(s, 1280, 900, false)
	one.open("/room/1/measure")
	one.until(`document.documentElement.classList.contains("js")`)
	eval[bool](one, `(() => { document.querySelectorAll("details").forEach(d => { d.open = true; }); document.querySelector('input[name=\'list:["walls","long wall","build-up"]\']').focus(); return true; })()`)
	if w := s.post("/room/1/edit", "base", "1", "back", "/room/1/measure", `rename:["walls","long wall"]`, "bath wall"); w.Code != 303 {
		t.Fatal(w.Code)
	}
	one.until(`document.querySelector("#told").textContent.includes("loaded anew")`)
	eval[bool](one, `(() => { document.activeElement.select(); return true; })()`)
	one.keys("board 5/8, tile")
	eval[bool](one, `(() => { document.activeElement.blur(); return true; })()`)
	one.until(`document.querySelector('input[name=\'list:["walls","bath wall","build-up"]\']').value === "board 5/8, tile" && document.body.dataset.head === "3"`)
	if doc := s.head(1); strings.Contains(doc, "\n  long wall:") || !strings.Contains(doc, "board 5/8, tile") {
		t.Errorf("the document is\n%s", doc)
	}
}

// A piece is ticked while the server can not be reached; the tick waits on the device and comes later.
func TestTickOffline(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 360, 760, false)
	b.open("/room/1/wall")
	b.until(`document.querySelector("[data-next]").textContent.length > 1`)
	first := eval[string](b, `document.querySelector("[data-next]").textContent`)
	eval[bool](b, `(() => { window.really = window.fetch; window.fetch = () => Promise.reject(new Error("no connection")); return true; })()`)
	b.do(chromedp.Click(chromedp.CSS("[data-set]")))
	b.until(`document.querySelector("[data-next]").textContent !== ` + quoted(first))
	b.until(`window.dryfitTick.unsent(document.querySelector("[data-wall]").dataset.send) === 1`)
	b.seen("wall-360")
	eval[bool](b, `(() => { window.fetch = window.really; dispatchEvent(new Event("online")); return true; })()`)
	b.until(`window.dryfitTick.unsent(document.querySelector("[data-wall]").dataset.send) === 0`)
	ticks, err := s.store.Ticks(b.ctx, 1)
	if err != nil || len(ticks) != 1 || !ticks[0].Ticked || ticks[0].Address != "basin wall > "+first {
		t.Errorf("ticks %+v, %v; want one for %s", ticks, err, first)
	}
}
