package web

import "testing"

func TestWholeFigures(t *testing.T) {
	for in, want := range map[string]string{
		"15-19/64 to 15-9/32":   "15-\u206019/64 to 15-\u20609/32",
		"a2-1":                  "a2-1",
		"2026-03-02":            "2026-03-02",
		"over 5-1/2 to 9-7/16 ": "over 5-\u20601/2 to 9-\u20607/16 ",
	} {
		if got := whole(in); got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}
