package web

import (
	"net/url"
	"strings"
	"testing"
)

// A price typed on the page is in the document and in the sum; one that can not be read is told, and changes nothing.
func TestPriceOfAGood(t *testing.T) {
	s := open(t, nil)
	before := s.get("/room/1/buy")
	has(t, before, "3 x 5 ft sheet", "13.98", "Goods and their prices", "order.xlsx")
	post := func(packs string) string {
		form := url.Values{"base": {"1"}, "back": {"/room/1/buy"}, `set:["goods","backing board","packs"]`: {packs}}
		return s.ask("POST", "/room/1/edit", form).Body.String()
	}
	post("{3 x 5 ft sheet: 20}")
	after := s.get("/room/1/buy")
	has(t, after, "20.00", "260.00") // 13 sheets
	if strings.Contains(after, "13.98") {
		t.Error("the old price is still there")
	}
}
