package web

import (
	"fmt"
	"net/url"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"
)

// BenchmarkDrag moves a pattern by hand in a browser: from the pointer's event to the picture that follows from it, by the
// browser's own clock, on a server that has planned nothing but the page. The first step and the slowest of the following
// ones are told beside the median.
func BenchmarkDrag(b *testing.B) {
	for _, c := range handMoved {
		b.Run("room "+c.room+", "+c.face, func(b *testing.B) {
			const steps = 40
			var first, all []float64
			for b.Loop() {
				took := dragged(b, "/room/"+c.room+"/layout?face="+url.QueryEscape(c.face), steps)
				first, all = append(first, took[0]), append(all, took[1:]...)
			}
			slices.Sort(all)
			b.ReportMetric(0, "ns/op")
			b.ReportMetric(slices.Max(first), "first-ms")
			b.ReportMetric(all[len(all)/2], "median-ms")
			b.ReportMetric(all[len(all)*95/100], "95%-ms")
			b.ReportMetric(all[len(all)-1], "worst-ms")
		})
	}
}

// dragged moves the pattern of a page step by step, each after the picture of the one before.
func dragged(t testing.TB, page string, steps int) []float64 {
	t.Helper()
	b := browse(open(t, nil), 1280, 1000, false)
	b.open(page)
	b.until(`document.documentElement.classList.contains("js") && document.readyState === "complete"`)
	b.until(`[...document.images].every(i => i.complete || i.getBoundingClientRect().top > innerHeight)`) // the page is at rest
	at := eval[[]float64](b, `(() => { const r = document.querySelector("#face svg").getBoundingClientRect(); return [r.x + r.width / 2, r.y + Math.min(r.height, 500) / 2]; })()`)
	b.do(chromedp.MouseEvent("mousePressed", at[0], at[1], chromedp.ButtonLeft, chromedp.ClickCount(1)))
	for i := range steps {
		b.do(chromedp.MouseEvent("mouseMoved", at[0]+float64(6+i*3), at[1]+float64(i%7), chromedp.ButtonLeft))
		b.until(fmt.Sprintf(`performance.getEntriesByName("pattern followed").length === %d`, i+1))
	}
	return eval[[]float64](b, `performance.getEntriesByName("pattern followed").map(e => e.duration)`)
}
