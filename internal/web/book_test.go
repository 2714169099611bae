package web

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

func TestFiles(t *testing.T) {
	s := open(t, nil)
	for name, begins := range map[string]string{"book.pdf": "%PDF-", "plan.json": "{", "room.yaml": "# A washroom in inches", "wall.html": "<!doctype html>", "pieces.csv": "", "order.csv": "what,good,", "order.xlsx": "PK"} {
		w := s.ask("GET", "/room/1/get/"+name, nil)
		if w.Code != 200 || !strings.HasPrefix(w.Body.String(), begins) || w.Body.Len() < 1000 {
			t.Errorf("%s: %d, %d bytes, %.20q", name, w.Code, w.Body.Len(), w.Body)
		}
		if d := w.Header().Get("Content-Disposition"); d != `attachment; filename="quarry-row-washroom-`+name+`"` {
			t.Errorf("%s: %s", name, d)
		}
		if name == "plan.json" && !json.Valid(w.Body.Bytes()) {
			t.Error("plan.json is no JSON")
		}
	}
	for path, want := range map[string]int{"/room/1/sheet/1": 200, "/room/1/sheet/0": 404, "/room/1/sheet/999": 404, "/room/1/sheet/x": 404, "/room/1/get/room.db": 404,
		"/room/1/thumb.svg?face=basin+wall&field=main&k=1": 200, "/room/1/thumb.svg?face=basin+wall&k=7": 404, "/room/1/bare.svg?face=floor": 200, "/room/1/bare.svg?face=x": 404,
		"/room/1/plan.svg": 200, "/corners/6": 200, "/corners/99": 404} {
		if w := s.ask("GET", path, nil); w.Code != want {
			t.Errorf("%s: %d", path, w.Code)
		}
	}
}

// What a browser asks for is the same in its own units, and the files stay in the document's.
func TestUnitsAreForShowing(t *testing.T) {
	s := open(t, nil)
	own := s.ask("GET", "/room/1/get/pieces.csv", nil).Body.String()
	r := newGet("/room/1/layout")
	r.Header.Set("Cookie", "dryfit-units=mm")
	page := s.send(r).Body.String()
	has(t, page, " mm</dd>")
	r = newGet("/room/1/get/pieces.csv")
	r.Header.Set("Cookie", "dryfit-units=mm")
	if s.send(r).Body.String() != own {
		t.Error("a file follows the page's units")
	}
	r = newGet("/room/1/measure")
	r.Header.Set("Cookie", "dryfit-units=mm")
	has(t, s.send(r).Body.String(), `value="71-7/16"`) // what was typed stays as typed
}

// The walls' file works opened by itself, with nothing served: the next piece, a tick, and the tick still there after
// the page was closed.
func TestWallsFileAlone(t *testing.T) {
	s := open(t, nil)
	file := s.ask("GET", "/room/1/get/wall.html", nil).Body.Bytes()
	for _, outside := range []string{"http://127", "https://", `src="/`, `href="/`} {
		if bytes.Contains(file, []byte(outside)) {
			t.Errorf("the file asks for %q", outside)
		}
	}
	b := browse(s, 360, 760, false)
	path := writeTemp(t, file)
	b.do(chromedp.Navigate("file://" + path))
	b.until(`document.querySelectorAll("[data-wall]").length === 5`)
	first := eval[string](b, `document.querySelector("[data-next]").textContent`)
	b.do(chromedp.Click(chromedp.CSS("[data-set]")))
	b.until(`document.querySelector("[data-next]").textContent !== ` + quoted(first))
	second := eval[string](b, `document.querySelector("[data-next]").textContent`)
	b.do(chromedp.Navigate("about:blank"), chromedp.Navigate("file://"+path))
	b.until(`document.querySelector("[data-next]").textContent === ` + quoted(second))
	b.picture("alone-360")
}
