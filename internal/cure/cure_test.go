package cure

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"dryfit/internal/unit"
)

const c = unit.Celsius

// real is the time that 24 h at 20 °C take, not held to the label: the formula alone.
func real(f Form, t unit.Temperature) unit.Minutes {
	return through(Constant(t), Label{24 * unit.Hour, 20 * c}, 0, func(t unit.Temperature) unit.Ratio { return f.Speed(t, 20*c) })
}

// The hours that 24 h at 20 °C take, worked out from the printed formulas of ASTM C1074 outside of this program: datum
// -10 °C (Saul) and 0 °C (C1074 appendix X1), E = 40,000 and 45,000 J/mol, and Q = E/R = 5000 K;
// and from EN 1992-1-1, equation B.10.
func TestHoursForADay(t *testing.T) {
	forms := []Form{NurseSaul(-10 * c), NurseSaul(0), Arrhenius(40_000), Arrhenius(41_570), Arrhenius(45_000), Eurocode{}} // 5000 K x 8.314
	for _, row := range []struct {
		celsius unit.Temperature
		want    []string
	}{
		{5, []string{"48.00", "96.00", "58.16", "60.21", "64.96", "50.13"}},
		{10, []string{"36.00", "48.00", "42.85", "43.83", "46.07", "38.88"}},
		{15, []string{"28.80", "32.00", "31.91", "32.27", "33.06", "30.42"}},
		{25, []string{"20.57", "19.20", "18.23", "18.03", "17.61", "19.09"}},
		{30, []string{"18.00", "16.00", "13.97", "13.67", "13.05", "15.29"}},
	} {
		for i, f := range forms {
			var want float64
			fmt.Sscan(row.want[i], &want)
			// A minute is 0.0167 h: half of one, and half of the printed hundredth.
			if got := float64(real(f, row.celsius*c)) / 60; math.Abs(got-want) > 0.0084+0.005 {
				t.Errorf("%d °C by %v: %.4f h, want %s", row.celsius, f, got, row.want[i])
			}
		}
	}
}

// Age factors, reference 20 °C and 23 °C, four decimals, worked out as above.
func TestSpeed(t *testing.T) {
	for _, row := range []struct {
		f             Form
		at, reference unit.Temperature
		want          int64 // ten-thousandths
	}{
		{Arrhenius(40_000), 5, 20, 4127}, {Arrhenius(40_000), 10, 20, 5601}, {Arrhenius(40_000), 30, 20, 17184}, {Arrhenius(40_000), 40, 20, 28525},
		{Arrhenius(45_000), 5, 20, 3695}, {Arrhenius(45_000), 10, 20, 5210}, {Arrhenius(45_000), 30, 20, 18387}, {Arrhenius(45_000), 40, 20, 32518},
		{Arrhenius(40_000), 10, 23, 4743}, {Arrhenius(40_000), 20, 23, 8468}, {Arrhenius(40_000), 30, 23, 14552},
		{Arrhenius(40_000), 20, 20, 10000}, {NurseSaul(-10 * c), 20, 20, 10000}, {NurseSaul(0), -3, 20, 0},
	} {
		if got := (int64(row.f.Speed(row.at*c, row.reference*c)) + 50) / 100; got != row.want {
			t.Errorf("%v at %d from %d: %d, want %d", row.f, row.at, row.reference, got, row.want)
		}
	}
}

// The factor of EN 1992-1-1, equation B.10, as it stands: exp(13.65 - 4000/278) = 0.4778 at 5 °C, and so on.
func TestEurocode(t *testing.T) {
	for at, want := range map[unit.Temperature]string{5: "0.4778", 10: "0.6161", 20: "0.9981", 30: "1.5662"} {
		if got := fmt.Sprintf("%.4f", eurocode(at*c)); got != want {
			t.Errorf("%d °C: %s, want %s", at, got, want)
		}
	}
}

// 24 h at 20 °C take 38.0 h at 12 °C by hand: 24 exp(40000/8.314 (1/285.15 - 1/293.15)) = 24 x 1.5848; at 30 °C they stay 24 h.
func TestWait(t *testing.T) {
	day := Label{24 * unit.Hour, 20 * c}
	for _, row := range []struct {
		what string
		h    History
		want string
	}{
		{"at 12 °C", Constant(12 * c), "38 h"},
		{"at 30 °C", Constant(30 * c), "24 h"},
		{"at 20 °C", Constant(20 * c), "24 h"},
		{"not measured", nil, "24 h"},
		{"half of it at 20, then 12 °C: 12 + 19.02", History{{0, 20 * c}, {12 * 60, 12 * c}}, "31 h"},
		{"a warm half counts as 20 °C", History{{0, 30 * c}, {12 * 60, 12 * c}}, "31 h"},
		{"a warmer room after the wait changes nothing", History{{0, 12 * c}, {40 * 60, 20 * c}}, "38 h"},
	} {
		if got := Wait(Cement, row.h, day, 0).Hours(); got != row.want {
			t.Errorf("%s: %s, want %s", row.what, got, row.want)
		}
	}
	if Wait(NurseSaul(0), Constant(-5*c), day, 0) != Never {
		t.Error("hardens below the datum")
	}
	if got := Wait(NurseSaul(0), History{{0, -5 * c}, {60, 20 * c}}, day, 0); got != 25*60 {
		t.Error("an hour of frost:", got)
	}
}

// 28 days at 15 °C with a datum of -11 °C are 728 °C days (an exercise in print): of 31 K a day at 20 °C that makes 23.48 days.
func TestAge(t *testing.T) {
	if got := Age(NurseSaul(-11*c), Constant(15*c), 20*c, 0, 28*unit.Day); got != 33_817 {
		t.Error(got)
	}
	// 7 days of 12 h at 20 and 12 h at 10 °C: 7 x 12 x 31 + 7 x 12 x 21 = 4368 °C h (textbook of concrete technology, from memory): 140.9 h at 20 °C.
	var h History
	for d := range unit.Minutes(7) {
		h = append(h, Reading{d * unit.Day, 20 * c}, Reading{d*unit.Day + 12*60, 10 * c})
	}
	if got := Age(NurseSaul(-11*c), h, 20*c, 0, 7*unit.Day); got.Hours() != "140.9 h" {
		t.Error(got.Hours())
	}
}

// What has waited as Wait says has the age of the label; colder never waits less, and nothing waits less than the label says.
func TestWaitReachesTheAge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var h History
		at := unit.Minutes(0)
		for range rapid.IntRange(1, 5).Draw(t, "readings") {
			h = append(h, Reading{at, unit.Temperature(rapid.IntRange(-5_000, 20_000).Draw(t, "temperature"))})
			at += unit.Minutes(rapid.IntRange(1, 3000).Draw(t, "until"))
		}
		l := Label{unit.Minutes(rapid.IntRange(1, 5000).Draw(t, "label")), 20 * c}
		from := unit.Minutes(rapid.IntRange(0, 4000).Draw(t, "from"))
		w := Wait(Cement, h, l, from)
		if age := Age(Cement, h, l.At, from, from+w); w < l.Time || age < l.Time-1 || age > l.Time+1 {
			t.Fatalf("waits %v for %v: age %v", w, l.Time, age)
		}
		for i := range h {
			h[i].Temp -= 1000
		}
		if colder := Wait(Cement, h, l, from); colder < w {
			t.Fatalf("colder: %v after %v", colder, w)
		}
	})
}

func TestRange(t *testing.T) {
	h := History{{0, 20 * c}, {100, 5 * c}, {200, 30 * c}}
	for _, row := range []struct{ from, to, coldest, warmest int64 }{{0, 100, 20, 20}, {0, 101, 5, 20}, {150, 300, 5, 30}, {250, 300, 30, 30}, {-50, -10, 20, 20}} {
		lo, hi := h.Range(unit.Minutes(row.from), unit.Minutes(row.to))
		if int64(lo/c) != row.coldest || int64(hi/c) != row.warmest {
			t.Error(row, lo, hi)
		}
	}
}

// The colder of two histories at every minute, against looking at each minute.
func TestColdest(t *testing.T) {
	draw := func(t *rapid.T, name string) (h History) {
		at := unit.Minutes(0)
		for range rapid.IntRange(0, 4).Draw(t, name) {
			h = append(h, Reading{at, unit.Temperature(rapid.IntRange(-5, 30).Draw(t, "temperature"))})
			at += unit.Minutes(rapid.IntRange(0, 20).Draw(t, "until"))
		}
		return h
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b := draw(t, "a"), draw(t, "b")
		both := Coldest(a, b)
		if len(a)+len(b) == 0 {
			if len(both) > 0 {
				t.Fatal("made up")
			}
			return
		}
		for m := unit.Minutes(0); m < 90; m++ {
			got, _, _ := both.at(m)
			var want []unit.Temperature
			for _, h := range []History{a, b} {
				if len(h) > 0 {
					v, _, _ := h.at(m)
					want = append(want, v)
				}
			}
			if got != slices.Min(want) {
				t.Fatalf("at %d: %d of %v and %v", m, got, a, b)
			}
		}
	})
}
