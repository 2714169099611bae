package web

import "testing"

// No page does what its policy forbids, and no script of ours fails on the way.
func TestNothingIsForbiddenToThePages(t *testing.T) {
	s := open(t, NewShare("http://192.0.2.7:80"))
	b := browse(s, 1280, 900, false)
	reports := `new Promise(done => { new ReportingObserver(all => done(all.map(r => r.type + " " + JSON.stringify(r.body))), {buffered: true}).observe(); setTimeout(() => done([]), 250); })`
	b.open("/")
	planted := `(() => { document.body.setAttribute("style", "color: red"); return ` + reports + `; })()`
	if got := eval[[]string](b, planted); len(got) == 0 {
		t.Fatal("a planted style is not reported, so this test finds nothing")
	}
	for _, page := range everyPage() {
		b.open(page)
		for _, wrong := range eval[[]string](b, reports) {
			t.Errorf("%s: %.300s", page, wrong)
		}
	}
}
