package web

import (
	"fmt"
	"net/url"
	"testing"
)

// handMoved are faces whose pattern a hand moves in the benchmarks: walls, and floors with and without a border.
var handMoved = []struct{ room, face string }{
	{"1", "basin wall"}, {"1", "window wall"}, {"1", "long wall"}, {"1", "floor"},
	{"2", "shower wall"}, {"2", "eaves wall"}, {"2", "short wall"}, {"2", "floor"},
}

// BenchmarkPreview is one step of a drag on the server, from its request to its page.
func BenchmarkPreview(b *testing.B) {
	for _, c := range handMoved {
		b.Run("room "+c.room+", "+c.face, func(b *testing.B) {
			s := open(b, nil)
			page := "/room/" + c.room + "/layout?face=" + url.QueryEscape(c.face)
			s.get(page)
			for i := 0; b.Loop(); i++ {
				w := s.post("/room/"+c.room+"/pin", "base", "1", "back", page, "face", c.face, "field", "main", "dx", fmt.Sprint(3000+i*1600%90000), "dy", "0", "preview", "1")
				if w.Code != 200 {
					b.Fatal(w.Code)
				}
			}
		})
	}
}
