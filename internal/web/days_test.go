package web

import (
	"html"
	"regexp"
	"strings"
	"testing"
)

var quickDone = regexp.MustCompile(`<button name="(value:[^"]*)" value="([^"]*)">Done as planned`)

// One button writes into the document that a job was done as planned; the rest of the days is then planned from there.
func TestDoneAsPlanned(t *testing.T) {
	s := open(t, nil)
	body := s.get("/room/2/days")
	has(t, body, "What do I do today, and what waits on what?", "Sat, May 2: next", "Jobs against days", `class="hardens"`, "Why it does not end earlier", "get/days.ics")
	m := quickDone.FindStringSubmatch(body)
	if m == nil {
		t.Fatal("no button marks anything done")
	}
	if w := s.post("/room/2/edit", "base", "1", "back", "/room/2/days", html.UnescapeString(m[1]), html.UnescapeString(m[2])); w.Code != 303 {
		t.Fatal(w.Code, w.Body.String())
	}
	has(t, s.head(2), "protect: {started: 2026-05-02 9:00, finished: 2026-05-02 10:00}")
	has(t, s.get("/room/2/days"), "protect</b>, ", ", done", "What was noted")
}

// A job that went otherwise is written in its own times; what can not be is refused at its input, and nothing is kept.
func TestDoneOtherwise(t *testing.T) {
	s := open(t, nil)
	at := func(key string) string { return `set:["days","done","protect","` + key + `"]` }
	w := s.post("/room/2/edit", "base", "1", "back", "/room/2/days", at("started"), "2026-05-02 9:30", at("took"), "2 h", at("temperature"), "12 C", at("finished"), "")
	if w.Code != 303 {
		t.Fatal(w.Code, w.Body.String())
	}
	has(t, s.head(2), "protect:", "started: 2026-05-02 9:30", "took: 2 h", "temperature: 12 C")
	before := s.head(2)
	w = s.post("/room/2/edit", "base", "2", "back", "/room/2/days", `set:["days","done","protect","took"]`, "-2 h")
	if w.Code != 422 || !strings.Contains(w.Body.String(), "less than no time") || s.head(2) != before {
		t.Error(w.Code, "a job of less than no time was kept, or not told of")
	}
}

// A room that has no days yet asks when the work begins, and has them once that is told.
func TestFirstDays(t *testing.T) {
	s := open(t, nil)
	if w := s.post("/room/1/edit", "base", "1", "back", "/room/1/days", "remove", `["days"]`); w.Code != 303 {
		t.Fatal(w.Code)
	}
	has(t, s.get("/room/1/days"), "No days are planned", "First day of work")
	if w := s.post("/room/1/edit", "base", "2", "back", "/room/1/days", `set:["days","starts on"]`, "2026-03-07", `list:["days","hours","Saturday"]`, "8:00 to 12:00, 13:00 to 17:00"); w.Code != 303 {
		t.Fatal(w.Code, w.Body.String())
	}
	has(t, s.get("/room/1/days"), "All is done on ", "Sat, March 7")
}
