package web

import (
	"strings"
	"testing"
)

// A price typed on the page is in the document and in the sum; one that can not be read is told, and changes nothing.
func TestPriceOfAGood(t *testing.T) {
	s := open(t, nil)
	before := s.get("/room/1/buy")
	has(t, before, "150 ft roll", "14.20", "Goods and their prices", "order.xlsx")
	w := s.post("/room/1/edit", "base", "1", "back", "/room/1/buy", `set:["goods","board tape","packs","150 ft roll"]`, "17.77")
	if w.Code != 303 {
		t.Fatal(w.Code, w.Body)
	}
	after := s.get("/room/1/buy")
	has(t, after, "17.77")
	if strings.Contains(after, "14.20") {
		t.Error("the old price is still there")
	}
	w = s.post("/room/1/edit", "base", "2", "back", "/room/1/buy", "pair", `["goods","backing board","packs"]`, "new.at", "4 x 8 ft sheet", "new.off", "31.50")
	has(t, s.head(1), "4 x 8 ft sheet: 31.50}")
	if w.Code != 303 {
		t.Fatal(w.Code, w.Body)
	}
	w = s.post("/room/1/edit", "base", "3", "back", "/room/1/buy", "pair", `["goods","backing board","packs"]`, "new.at", "big sheet", "new.off", "$3")
	if w.Code != 422 {
		t.Error(w.Code)
	}
	has(t, w.Body.String(), `value="big sheet"`, "how much is in the pack big sheet?")
}
