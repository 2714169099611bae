package unit

import "testing"

// NIST SP 811 (2008), appendix B.8: t/°C = (t/°F - 32)/1.8; 4.2.1.1: 0 °C = 273.15 K.
func TestTemperature(t *testing.T) {
	for _, c := range []struct {
		fahrenheit int64 // thousandths
		want       Temperature
		inches, mm string
	}{
		{32_000, 0, "32 °F", "0 °C"},
		{212_000, 100 * Celsius, "212 °F", "100 °C"},
		{-40_000, -40 * Celsius, "-40 °F", "-40 °C"},
		{68_000, 20 * Celsius, "68 °F", "20 °C"},
		{54_000, 12_222, "54 °F", "12.2 °C"},
		{53_600, 12 * Celsius, "53.6 °F", "12 °C"},
		{0, -17_778, "0 °F", "-17.8 °C"},
	} {
		got := FromFahrenheit(c.fahrenheit)
		in, mm := Style{System: Inches}.Temperature(got), Style{System: Millimetres}.Temperature(got)
		if got != c.want || in != c.inches || mm != c.mm {
			t.Errorf("%d: %d %s %s, want %d %s %s", c.fahrenheit, got, in, mm, c.want, c.inches, c.mm)
		}
	}
	if k := Temperature(0).Kelvin(); k != 273.15 {
		t.Error(k)
	}
}

func TestMinutes(t *testing.T) {
	for _, c := range []struct {
		m           Minutes
		long, hours string
	}{
		{0, "0 min", "0 h"},
		{45, "45 min", "0.8 h"},
		{60, "1 h", "1 h"},
		{210, "3 h 30 min", "3.5 h"},
		{Day, "24 h", "24 h"},
		{2282, "38 h 2 min", "38 h"},
		{3 * Day, "3 days", "72 h"},
		{3*Day + 90, "3 days 1 h 30 min", "73.5 h"},
		{-30, "-30 min", "-0.5 h"},
	} {
		if c.m.String() != c.long || c.m.Hours() != c.hours {
			t.Errorf("%d: %s, %s", c.m, c.m, c.m.Hours())
		}
	}
}
