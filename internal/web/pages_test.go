package web

import (
	"net/http"
	"strings"
	"testing"
)

// everyPage is the address of every page, for the tests that try them all: what a new page must keep to it keeps there.
func everyPage() []string {
	out := []string{"/", "/share", "/room/1/wall", "/room/1/history?from=1&to=1"}
	for _, p := range roomPages() {
		out = append(out, "/room/1/"+p.name)
	}
	return append(out, "/room/2/measure", "/room/2/layout", "/room/1/cut?drawn=1", "/room/1/cut?enter=cabinets")
}

// Every page of every demo room answers, asks its question, and holds no script or style of its own.
func TestPages(t *testing.T) {
	s := open(t, nil)
	for _, room := range []string{"/room/1/", "/room/2/"} {
		for _, p := range roomPages() {
			body := s.get(room + p.name)
			has(t, body, `<p class="question">`, "not checked", "Local codes and licensed trades decide", `aria-current="page">`+p.tab)
			if strings.Contains(body, " style=") || strings.Contains(body, "<style") || strings.Contains(body, " onclick") {
				t.Errorf("%s%s: style or script in the page, which its policy forbids", room, p.name)
			}
		}
	}
	has(t, s.get("/"), "Quarry Row washroom", "A new room")
	has(t, s.get("/room/1/wall"), "basin wall")
}

func TestQuestions(t *testing.T) {
	s := open(t, nil)
	for page, question := range map[string]string{
		"measure": "What have I really got?", "layout": "Where does everything land?", "cut": "What do I cut, from what?",
		"buy":    "What do I order, and what does it cost?",
		"source": "What does the document say?",
	} {
		has(t, s.get("/room/1/"+page), question)
	}
}

// A page has a tab where the room has something for it, or where one is on it.
func TestTabs(t *testing.T) {
	s := open(t, nil)
	v, err := s.server.view(roomRequest("1"))
	if err != nil {
		t.Fatal(err)
	}
	pages := []pageOf{{name: "always"}, {name: "walls", has: speaksOf("nothing of ours", "walls")}, {name: "nothing", has: speaksOf("nothing of ours")}}
	for here, want := range map[string]string{"always": "always walls", "nothing": "always walls nothing"} {
		got := ""
		for _, p := range tabs(pages, v, here) {
			got += " " + p.Page
		}
		if got != " "+want {
			t.Errorf("on the page %s the tabs are%s; want %s", here, got, want)
		}
	}
}

func roomRequest(room string) *http.Request {
	r := newGet("/room/" + room)
	r.SetPathValue("room", room)
	return r
}
