package typeset

import (
	"encoding/binary"
	"strings"
	"testing"
	"unicode/utf8"

	"dryfit/internal/draw"

	"codeberg.org/go-pdf/fpdf"
	"pgregory.net/rapid"
)

// The height of capitals from the file's own OS/2 table (OpenType: sCapHeight at offset 88), read here by hand.
func TestCapHeightIsTheFonts(t *testing.T) {
	for _, bold := range []bool{false, true} {
		ttf := Data(bold)
		os2 := table(t, ttf, "OS/2")
		want := int(int16(binary.BigEndian.Uint16(os2[88:])))
		if f := FaceOf(bold); f.Cap != want || want < 1000 {
			t.Errorf("bold %v: capitals are %d units high, the file says %d", bold, f.Cap, want)
		}
	}
}

func table(t *testing.T, ttf []byte, tag string) []byte {
	n := int(binary.BigEndian.Uint16(ttf[4:]))
	for i := range n {
		e := ttf[12+16*i:]
		if string(e[:4]) == tag {
			return ttf[binary.BigEndian.Uint32(e[8:]):]
		}
	}
	t.Fatalf("no table %s", tag)
	return nil
}

// Widths against the PDF library's own reader of the font. It keeps widths as whole thousandths of an em, so a
// character may differ by half of one.
func TestWidthAgainstAnotherReader(t *testing.T) {
	pdf := fpdf.New("P", "mm", "A4", "")
	pdf.AddUTF8FontFromBytes("f", "", Data(false))
	pdf.AddUTF8FontFromBytes("f", "B", Data(true))
	for _, text := range []string{"Hamburgefonstiv", "8' 2-3/8\"", "11-13/16 × 23-5/8", "ÅÄÖ äöü ß", "½ ¼ ¾ ⅛ ⅜ ⅝ ⅞", "±1° − 2′ 3″", "WAVA To"} {
		for i, style := range []string{"", "B"} {
			pdf.SetFont("f", style, 10)
			pdf.SetFontUnitSize(100)
			size := draw.Um(100_000)
			em := Em(size, i == 1)
			got := float64(Width(text, size, i == 1)) / float64(em)
			want := pdf.GetStringWidth(text) / 100
			if slack := 0.0006 * float64(utf8.RuneCountInString(text)); got < want-slack || got > want+slack {
				t.Errorf("%q %s: %.4f em, the other reader has %.4f", text, style, got, want)
			}
		}
	}
}

func TestClean(t *testing.T) {
	for in, want := range map[string]string{
		"plain":                     "plain",
		"a\tb\nc\r\nd":              "a b c  d",
		"bell\a nul\x00 esc\x1b[0":  "bell nul esc[0",
		"\xff\xfe broken":           "? broken",
		"ok 😀 then":                 "ok ? then",
		"漢字":                        "??",
		"heart ❤️.":                 "heart ?.",
		"soft\u00adhyphen":          "softhyphen",
		"turn\u202eback":            "turnback",
		"10\u00a0mm":                "10\u00a0mm",
		"½ ⅜ ′ ″ × ±":               "½ ⅜ ′ ″ × ±",
		"<script>alert(1)</script>": "<script>alert(1)</script>",
	} {
		if got := Clean(in); got != want {
			t.Errorf("Clean(%q) = %q, want %q", in, got, want)
		}
	}
}

func FuzzClean(f *testing.F) {
	for _, s := range []string{"", "a\xffb", "😀", "\u202e", "é", "\ufeff", "\U0010ffff"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c := Clean(s)
		if !utf8.ValidString(c) || Clean(c) != c {
			t.Errorf("Clean(%q) = %q, cleaned again %q", s, c, Clean(c))
		}
		for _, r := range c {
			if r > lastRune || r < ' ' || !has(r) {
				t.Errorf("Clean(%q) leaves %q", s, r)
			}
		}
		for _, room := range []draw.Um{-1, 0, 1, 10_000} {
			fits(t, s, room)
		}
	})
}

func fits(t interface{ Errorf(string, ...any) }, s string, room draw.Um) {
	if short := Fit(s, 2500, false, room); Width(short, 2500, false) > max(room, 0) {
		t.Errorf("Fit(%q, %d) = %q", s, room, short)
	}
	var kept strings.Builder
	for _, line := range Wrap(s, 2500, false, room) {
		if Width(line, 2500, false) > max(room, 0) && utf8.RuneCountInString(line) > 1 {
			t.Errorf("Wrap(%q, %d) has the line %q", s, room, line)
		}
		kept.WriteString(line)
	}
	if got, want := squeezed(kept.String()), squeezed(Clean(s)); got != want {
		t.Errorf("Wrap(%q, %d) kept %q of %q", s, room, got, want)
	}
}

func squeezed(s string) string { return strings.ReplaceAll(s, " ", "") }

func TestFitAndWrapOnRandomText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.StringOf(rapid.RuneFrom([]rune("abcWil .-\n\t½é漢"))).Draw(t, "text")
		fits(t, s, draw.Um(rapid.Int64Range(-10, 80_000).Draw(t, "room")))
	})
}

func TestFitKeepsWhatFits(t *testing.T) {
	const text = "Boathouse washroom"
	w := Width(text, 2500, false)
	if got := Fit(text, 2500, false, w); got != text {
		t.Errorf("exact room gives %q", got)
	}
	got := Fit(text, 2500, false, w-1)
	if !strings.HasSuffix(got, Ellipsis) || len(got) < 10 {
		t.Errorf("a micrometre less gives %q", got)
	}
}

func TestWrap(t *testing.T) {
	wide := Width("level line", 2500, false)
	for _, c := range []struct{ in, want string }{
		{"level line", "level line"},
		{"level line here", "level line|here"},
		{"  level   line  ", "level line"},
		{"", ""},
		{"a\n\nb", "a||b"},
		{"deep is 12 mm", "deep is|12 mm"},
		{"1234567890123 mm", "123456|789012|3 mm"},
	} {
		if got := strings.Join(Wrap(c.in, 2500, false, wide), "|"); got != c.want {
			t.Errorf("Wrap(%q) = %q, want %q", c.in, got, c.want)
		}
	}
}
