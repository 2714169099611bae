package web

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// On a phone the readings go in with two thumbs: a keypad with fractions stands where the keyboard would.
func TestKeypad(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 360, 760, false)
	b.do(chromedp.EmulateViewport(360, 760, chromedp.EmulateMobile, chromedp.EmulateTouch))
	b.open("/room/1/measure")
	b.until(`document.documentElement.classList.contains("js")`)
	b.do(chromedp.Tap(chromedp.CSS(".line input")))
	b.until(`!document.getElementById("keypad").hidden`)
	b.seen("keypad-360")
	for _, k := range []string{"back", "back", "back", "back", "back", "3/8", "5/16", "1/2", "next"} { // a fraction takes the place of the one before
		b.do(chromedp.Tap(chromedp.CSS(`[data-key="` + k + `"]`)))
	}
	b.until(`document.body.dataset.head === "2"`)
	has(t, s.head(1), "A-B: 71-1/2\n")
	b.until(`document.activeElement === document.querySelectorAll(".line input")[1]`)
}

// A finger on the drawing scrolls the page until the person says that it is to move the pattern; targets are at least
// 48 px high and wide (24 px is what WCAG 2.2, 2.5.8, asks; 48 is ours, for gloves).
func TestFinger(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 360, 760, false)
	b.do(chromedp.EmulateViewport(360, 760, chromedp.EmulateMobile, chromedp.EmulateTouch))
	b.open("/room/1/layout")
	b.do(chromedp.Tap(chromedp.CSS("[data-hand]")))
	b.until(`document.querySelector("#face").classList.contains("byhand")`)
	b.do(chromedp.Tap(chromedp.CSS(`.pad button[name="dx"]`)))
	b.until(`document.body.dataset.head === "2"`)
	b.until(`document.querySelector("#face").classList.contains("byhand")`) // still, after the drawing was drawn anew
	b.seen("finger-360")
	for _, page := range []string{"/room/1/layout", "/room/1/wall", "/room/1/measure", "/room/1/cut", "/"} {
		b.open(page)
		for _, small := range eval[[]string](b, `[...document.querySelectorAll("button, .button, .tabs a, .faces a, summary, select, main input:not([type=hidden]):not([type=radio]):not([type=checkbox])")].filter(e => e.offsetParent).filter(e => { const r = e.getBoundingClientRect(); return r.height < 47.5 || r.width < 47.5; }).map(e => e.outerHTML.slice(0, 90))`) {
			t.Errorf("%s: too small for a glove: %s", page, small)
		}
	}
}
