package web

import (
	"fmt"
	"regexp"
	"strings"
	"testing"
)

// Every sheet and stick is drawn on one page of the cuts, and each page leads to what is drawn on the others.
func TestEveryStockIsDrawn(t *testing.T) {
	s := open(t, nil)
	figures := regexp.MustCompile(`(?s)<figure class="diagram" id="(stock-[0-9-]+)">(.*?)</figure>`)
	links := regexp.MustCompile(`href="\?drawn=(\d+)#(stock-[0-9-]+)"`)
	drawn, want := map[string]int{}, map[string]string{}
	pages := 0
	for page := 0; page == 0 || page < pages; page++ {
		body := s.get(fmt.Sprintf("/room/1/cut?drawn=%d", page))
		here := 0
		for _, f := range figures.FindAllStringSubmatch(body, -1) {
			if strings.Contains(f[2], "<svg") {
				drawn[f[1]]++
				here++
				want[f[1]] = fmt.Sprint(page)
			} else if l := links.FindStringSubmatch(f[2]); l == nil || l[2] != f[1] {
				t.Errorf("%s is neither drawn nor led to", f[1])
			}
		}
		if here == 0 || here > stockDrawings {
			t.Errorf("page %d draws %d", page, here)
		}
		if page == 0 {
			all := len(figures.FindAllString(body, -1))
			pages = (all + stockDrawings - 1) / stockDrawings
			if pages < 2 {
				t.Fatalf("%d sheets and sticks: too few to test with", all)
			}
		}
	}
	for id, n := range drawn {
		if n != 1 {
			t.Errorf("%s is drawn %d times", id, n)
		}
	}
	for _, l := range links.FindAllStringSubmatch(s.get("/room/1/cut"), -1) {
		if want[l[2]] != l[1] {
			t.Errorf("%s is said to be drawn on page %s, and is on %s", l[2], l[1], want[l[2]])
		}
	}
}
