package web

import (
	"encoding/binary"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// photoFile is a file on the person's device.
func photoFile(t *testing.T, name string, b []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, b, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// A person chooses photos on a phone: one comes and is seen upright; a drawing that is called a photo is told of where it was chosen.
func TestPhotosInABrowser(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 360, 760, false)
	b.open("/room/1/photos")
	files := []string{photoFile(t, "wall.jpg", withSegment(jpegOf(t, chart(640, 480)), 0xe1, camera(binary.LittleEndian, 6))), photoFile(t, "drawing.jpg", []byte("<svg/>"))}
	b.do(chromedp.Click(chromedp.CSS(`section.shots .send summary`)))
	b.do(chromedp.SetUploadFiles(chromedp.CSS(`section.shots input[type="file"]`), files))
	b.do(chromedp.Click(chromedp.CSS(`section.shots .send button`)))
	b.until(`document.querySelector("section.shots .said.stop").textContent.includes("drawing.jpg: it is no JPEG or PNG picture")`)
	b.until(`document.querySelector("section.shots img").naturalWidth === 480 && document.querySelector("section.shots img").naturalHeight === 640`)
	b.picture("photos-360")
	axe, err := os.ReadFile(os.Getenv("DRYFIT_AXE"))
	if err != nil {
		t.Log("NOT CHECKED: DRYFIT_AXE names no axe.min.js, so this page was not held against WCAG 2.2")
	}
	for _, width := range []int64{360, 1280} {
		for _, light := range []string{"light", "dark"} {
			b.do(chromedp.EmulateViewport(width, 900))
			eval[bool](b, fmt.Sprintf(`fetch("/look", {method: "POST", body: new URLSearchParams({light: %q, back: "/"})}).then(r => r.ok)`, light))
			b.open("/room/1/photos")
			eval[bool](b, `(document.querySelectorAll("details").forEach(d => { d.open = true; }), true)`)
			if err == nil {
				for _, wrong := range b.axe(string(axe), "0") {
					t.Errorf("%d px, %s: %s", width, light, wrong)
				}
			}
			b.wide("photos", width)
			b.picture(fmt.Sprintf("photos-%d-%s", width, light))
		}
	}
}

// Two people have the photos open: one that the one adds, removes or puts back is there, or not, for the other at once.
func TestPhotosFollowed(t *testing.T) {
	s := open(t, nil)
	b := browse(s, 390, 844, false)
	b.open("/room/1/photos")
	b.until(`document.documentElement.classList.contains("js")`)
	const shown = `document.querySelectorAll("section.shots img").length === `
	s.sendPhotos("basin wall", "", jpegOf(t, chart(30, 20)))
	b.until(shown + `1`)
	at := fmt.Sprintf("/room/1/photos/%d/", s.photos()[0].ID)
	s.post(at+"remove", "", "")
	b.until(shown + `0 && document.querySelector("#aside").textContent.includes("Put it back")`)
	b.do(chromedp.Evaluate[chromedp.Void](`document.querySelector("#aside details").open = true`))
	b.picture("photos-removed-390")
	b.do(chromedp.Click(chromedp.CSS(`#aside form[action$="/back"] button`)))
	b.until(shown + `1`)
}
