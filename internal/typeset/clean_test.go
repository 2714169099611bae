package typeset

import (
	"strings"
	"testing"
)

// What the quick look lets through, the slow one leaves as it is; and it lets every printed character of ASCII through.
func TestQuickLookIsTheSlowOne(t *testing.T) {
	for r := rune(0); r < 0x100; r++ {
		s := "a" + string(r)
		if slow := strings.Map(cleanRune, s); isClean(s) && slow != s {
			t.Errorf("%q is let through, and cleaned is %q", s, slow)
		}
		if printed := r >= ' ' && r <= '~'; isClean(s) != printed {
			t.Errorf("%q: let through: %v", s, isClean(s))
		}
		for _, f := range []*Face{FaceOf(false), FaceOf(true)} {
			if f.glyph(r) != f.glyphs[r] {
				t.Errorf("%q measures otherwise", r)
			}
		}
	}
	if isClean("a\xff") || isClean("½") || isClean("a\u200bb") {
		t.Error("what is no text, or stands outside ASCII, takes the slow way")
	}
}
