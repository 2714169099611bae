package web

import (
	"strings"
	"testing"
)

// Every page of every demo room answers, with its question, and holds no script or style of its own.
func TestPages(t *testing.T) {
	s := open(t, nil)
	for _, room := range []string{"/room/1", "/room/2"} {
		for page, question := range map[string]string{
			"measure": "What have I really got?", "layout": "Where does everything land?", "cut": "What do I cut, from what?",
			"book": "Take away", "source": "What does the document say?", "history": "What changed",
		} {
			body := s.get(room + "/" + page)
			has(t, body, question, "not checked", "Local codes and licensed trades decide")
			if strings.Contains(body, " style=") || strings.Contains(body, "<style") || strings.Contains(body, " onclick") {
				t.Errorf("%s %s: style or script in the page, which its policy forbids", room, page)
			}
		}
	}
	has(t, s.get("/"), "Quarry Row washroom", "A new room")
	has(t, s.get("/room/1/wall"), "basin wall")
}
