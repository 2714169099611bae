package web

import (
	"html"
	"net/url"
	"regexp"
	"strings"
	"testing"
)

// Each line: what the first does, what the second does on the same page, each offer of the clash and what the document
// says when it is taken.
func TestClashOffers(t *testing.T) {
	const one, two = `rename:["walls","long wall"]`, `rename:["walls","window wall"]`
	for _, c := range []struct {
		name          string
		theirs, yours []string
		offers        []string // label: what the document says then, "!" before what it does not
	}{
		{"two names for one wall", []string{one, "bath wall"}, []string{one, "left wall"}, []string{"Take mine: \n  left wall:\n!bath wall"}},
		{"one name for two walls", []string{one, "bath wall"}, []string{two, "bath wall"}, []string{"Call mine bath wall 2: \n  bath wall 2:\n    along: B-C"}},
		{"they took it out", []string{"remove", `["boxes","outlet"]`}, []string{`rename:["boxes","outlet"]`, "socket"}, []string{"Put it back, and call it socket: socket: {in: basin wall"}},
		{"both added one of the name", []string{"add", `["tiles"]`, "new.name", "oak", "new.size", "6 x 2 x 3/8", "new.kind", "glass"}, []string{"add", `["tiles"]`, "new.name", "oak", "new.size", "8 x 2 x 3/8", "new.kind", "glass"},
			[]string{"Take mine: oak: {kind: glass, size: 8 x 2 x 3/8}", "Keep both: call mine oak 2: oak 2: {kind: glass, size: 8 x 2 x 3/8}"}},
		{"a name and a value that clashes", []string{`set:["name"]`, "Attic"}, []string{one, "bath wall", `set:["name"]`, "Loft"}, []string{"Take mine: name: Loft"}},
	} {
		for i, want := range c.offers {
			s := open(t, nil)
			head := []string{"base", "1", "back", "/room/1/measure"}
			if w := s.post("/room/1/edit", append(head[:4:4], c.theirs...)...); w.Code != 303 {
				t.Fatalf("%s: %d %s", c.name, w.Code, words(w.Body.String()))
			}
			w := s.post("/room/1/edit", append(head[:4:4], c.yours...)...)
			forms := regexp.MustCompile(`(?s)name="base" value="(\d+)".*?<input type="hidden" name="([^"]*)" value="([^"]*)"><button class="main">([^<]*)`).FindAllStringSubmatch(w.Body.String(), -1)
			if w.Code != 409 || len(forms) != len(c.offers) || !strings.Contains(w.Body.String(), "Keep what is there") {
				t.Fatalf("%s: %d, %d offers of %d: %s", c.name, w.Code, len(forms), len(c.offers), words(w.Body.String()))
			}
			label, says, _ := strings.Cut(want, ": ")
			if strings.HasPrefix(label, "Keep both") {
				label, says = "Keep both: call mine oak 2", strings.TrimPrefix(want, "Keep both: call mine oak 2: ")
			}
			f := forms[i]
			if html.UnescapeString(f[4]) != label {
				t.Errorf("%s: the offer is %q, want %q", c.name, f[4], label)
			}
			form := url.Values{"base": {f[1]}, "back": {"/room/1/measure"}, html.UnescapeString(f[2]): {html.UnescapeString(f[3])}}
			if w := s.ask("POST", "/room/1/edit", form); w.Code != 303 {
				t.Fatalf("%s: taking it: %d %s", c.name, w.Code, words(w.Body.String()))
			}
			says, not, _ := strings.Cut(says, "!")
			if doc := s.head(1); !strings.Contains(doc, says) || not != "" && strings.Contains(doc, not) {
				t.Errorf("%s: %s: the document is\n%s", c.name, label, doc)
			}
		}
	}
}
