package web

import (
	"fmt"
	"testing"
)

// BenchmarkPreview is one step of a drag, from its request to its page.
func BenchmarkPreview(b *testing.B) {
	s := open(b, nil)
	for i := 0; b.Loop(); i++ {
		w := s.post("/room/1/pin", "base", "1", "back", "/room/1/layout", "face", "basin wall", "field", "main", "dx", fmt.Sprint(3000+i*1600%90000), "dy", "0", "preview", "1")
		if w.Code != 200 {
			b.Fatal(w.Code)
		}
	}
}
