package sheet

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// evenly makes a rod of so many spans of one length with joints of 3 mm, from so far above the datum, each edge numbered.
func evenly(upright bool, n int, long, from unit.Length) batten {
	b := batten{upright: upright}
	for i := range n {
		lo := from + unit.Length(i)*(long+3*unit.Millimetre)
		b.spans = append(b.spans, report.Span{Name: fmt.Sprint(i + 1), Lo: lo, Hi: lo + long})
		b.marks = append(b.marks, battenMark{lo, fmt.Sprint(lo / unit.Millimetre)})
	}
	return b
}

// The wood reaches from the datum to the last mark, at the largest scale that has room: 4 courses of 297 mm are 1197 mm from their foot, which
// at 1:10 are just within 120 mm, and with the datum 500 mm below them 1697 mm: 84.85 mm at 1:20.
func TestBattensAreToScale(t *testing.T) {
	const mm = unit.Millimetre
	for _, c := range []struct {
		from unit.Length
		n    int64
		long draw.Um
	}{{0, 10, 119_700}, {500 * mm, 20, 84_850}, {-2000 * mm, 20, 100_000}} {
		s := evenly(true, 4, 297*mm, c.from).scale(battenHigh)
		if s.n != c.n || s.long() != c.long {
			t.Errorf("from %d mm: %d µm at 1:%d, want %d at 1:%d", c.from/mm, s.long(), s.n, c.long, c.n)
		}
	}
}

// 200 chips of 23 mm are 5.2 m: at 1:50 their marks are half a millimetre apart, and lettering is 2.5 mm high.
func TestMarksTooNearAreLeftToTheTable(t *testing.T) {
	for _, upright := range []bool{false, true} {
		if s := evenly(upright, 200, 23*unit.Millimetre, 0).scale(battenHigh); s.run().Fits() {
			t.Errorf("upright %v: 200 numbers over %d µm fit", upright, s.long())
		}
		if s := evenly(upright, 8, 297*unit.Millimetre, 0).scale(battenHigh); !s.run().Fits() {
			t.Errorf("upright %v: 8 numbers over %d µm do not fit", upright, s.long())
		}
	}
}

// Each wall and floor with rods has them drawn, one for each table.
func TestEveryRodIsDrawn(t *testing.T) {
	for _, r := range demo.Rooms() {
		p, err := plan.Make(context.Background(), r.File, r.Text, plan.Options{})
		if err != nil {
			t.Fatal(err)
		}
		battens, tables := 0, 0
		for _, page := range Book(p, Paper{}) {
			if !strings.Contains(page.Title, "Gauge rods") {
				continue
			}
			for _, it := range page.Items {
				switch x := it.(type) {
				case draw.Path:
					battens += count(x.Class == "batten")
				case draw.Text:
					tables += count(strings.HasPrefix(x.Body, "Gauge rod ") && !strings.Contains(x.Body, "continued"))
				}
			}
		}
		if battens == 0 || battens != tables {
			t.Errorf("%s: %d battens for %d tables", r.File, battens, tables)
		}
	}
}

func count(is bool) int {
	if is {
		return 1
	}
	return 0
}
