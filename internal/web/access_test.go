package web

import (
	"fmt"
	"os"
	"testing"
)

// Every page, at the width of a phone, a tablet and a desk, light and dark, keeps the rules of WCAG 2.2 A and AA that axe-core can
// check. DRYFIT_AXE names the file axe.min.js of the package axe-core.
func TestAccess(t *testing.T) {
	axe, err := os.ReadFile(os.Getenv("DRYFIT_AXE"))
	if err != nil {
		t.Skip("NOT CHECKED: DRYFIT_AXE names no axe.min.js, so no page was held against WCAG 2.2")
	}
	s := open(t, NewShare("http://192.0.2.7:8080"))
	b := browse(s, 1280, 900, false)
	b.open("/")
	if found := b.axe(string(axe), `document.body.append(document.createElement("img"))`); len(found) != 1 {
		t.Fatalf("a planted picture without words is found %d times", len(found))
	}
	for _, width := range []int64{360, 820, 1280} {
		b := browse(s, width, 900, false) // a window of its own: each has its time
		for _, light := range []string{"light", "dark"} {
			b.open("/")
			eval[bool](b, fmt.Sprintf(`fetch("/look", {method: "POST", body: new URLSearchParams({light: %q, back: "/"})}).then(r => r.ok)`, light))
			for _, page := range append(everyPage(), "/room/99/measure") {
				b.open(page)
				b.picture(fmt.Sprintf("%s-%d-%s", idOfPage(page), width, light))
				eval[bool](b, `(document.querySelectorAll("details").forEach(d => { d.open = true; }), true)`)
				for _, wrong := range b.axe(string(axe), "0") {
					t.Errorf("%s at %d px, %s: %s", page, width, light, wrong)
				}
				b.wide(page, width)
				if width < 400 { // where there is the least room
					b.picture(fmt.Sprintf("%s-%d-%s-open", idOfPage(page), width, light))
				}
			}
		}
	}
}

// axe runs the checks on the page after a step, and words what they find.
func (b *browser) axe(script, first string) []string {
	b.Helper()
	eval[bool](b, script+";"+first+";true")
	return eval[[]string](b, `axe.run(document, {runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]}).then(r => r.violations.map(v => v.id + ": " + v.help + " | " + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + " " + n.any.concat(n.all).map(a => a.message).join(" ").slice(0, 200)).join(" | ")))`)
}

// wide: no page is wider than its window; tables scroll by themselves.
func (b *browser) wide(page string, width int64) {
	b.Helper()
	if got := eval[int64](b, `document.documentElement.scrollWidth`); got > width {
		b.Errorf("%s is %d px wide in a window of %d: %s", page, got, width, eval[string](b, `[...document.querySelectorAll("main *")].filter(e => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest(".scroll, nav")).slice(0, 3).map(e => e.outerHTML.slice(0, 120)).join(" | ")`))
	}
}

func idOfPage(path string) string {
	out := ""
	for _, r := range path {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			out += string(r)
		}
	}
	return "page-" + out
}
