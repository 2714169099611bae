package unit

import (
	"encoding/json"
	"testing"
)

func TestFormat(t *testing.T) {
	in, mm := DefaultStyle(Inches), DefaultStyle(Millimetres)
	for _, c := range []struct {
		style Style
		l     Length
		want  string
		exact string
	}{
		{in, 59*Inch + 3*Inch/4, "59-3/4 in", "59-3/4 in"},
		{in, 12 * Inch, "12 in", "12 in"},
		{in, Inch / 2, "1/2 in", "1/2 in"},
		{in, -Inch / 2, "-1/2 in", "-1/2 in"},
		{in, -3*Inch - Inch/8, "-3-1/8 in", "-3-1/8 in"},
		{in, 0, "0 in", "0 in"},
		{in, Inch / 32, "1/16 in", "1/32 in"}, // half a mark goes up
		{in, -Inch / 32, "0 in", "-1/32 in"},  // also below zero
		{in, 5*Inch + 17*Inch/32, "5-9/16 in", "5-17/32 in"},
		{in, Inch / 128, "0 in", "1/128 in"},
		{in, Millimetre, "1/16 in", "0.039 in"}, // 1/25.4 = 0.03937
		{in, -Millimetre, "-1/16 in", "-0.039 in"},
		{in, Inch - 1, "1 in", "1 in"}, // an exact figure that is no 1/128 is told to a thousandth
		{mm, 1520 * Millimetre, "1520 mm", "1520 mm"},
		{mm, 1520*Millimetre + 8000, "1521 mm", "1520.5 mm"},
		{mm, Inch, "25 mm", "25.4 mm"},
		{mm, Inch / 128, "0 mm", "0.1984375 mm"},
		{mm, 1, "0 mm", "0.0000625 mm"},
		{mm, -1, "0 mm", "-0.0000625 mm"},
		{Style{Millimetres, Millimetre / 2}, 10*Millimetre + 7999, "10.5 mm", "10.4999375 mm"},
		{Style{Inches, ThirtySecond}, 5*Inch + 17*Inch/32, "5-17/32 in", "5-17/32 in"},
	} {
		if got := c.style.Format(c.l); got != c.want {
			t.Errorf("Format(%d) = %q, want %q", c.l, got, c.want)
		}
		if got := c.style.Exact(c.l); got != c.exact {
			t.Errorf("Exact(%d) = %q, want %q", c.l, got, c.exact)
		}
	}
}

func TestJSON(t *testing.T) {
	for _, c := range []struct {
		l    Length
		want string
	}{{Inch, "25.4"}, {0, "0"}, {-Inch / 128, "-0.1984375"}, {Reach, "33554.432"}} {
		b, err := json.Marshal(c.l)
		if err != nil || string(b) != c.want {
			t.Errorf("%d: %s, %v", c.l, b, err)
		}
		var back Length
		if err := json.Unmarshal(b, &back); err != nil || back != c.l {
			t.Errorf("%s: %d, %v", b, back, err)
		}
	}
	for _, bad := range []string{`"x"`, `null`, `true`, `{}`, `0.00001`} {
		var l Length
		if json.Unmarshal([]byte(bad), &l) == nil {
			t.Errorf("%s was taken for a length", bad)
		}
	}
}
