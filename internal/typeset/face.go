// Package typeset measures lettering with the one typeface that every sheet uses, Liberation Sans, regular and
// bold, whole in the program (SIL Open Font License 1.1).
//
// Takes text and the height of its capitals in micrometres of paper, as ISO 3098 states lettering; gives widths,
// boxes, lines broken to a width. Rules: what is measured is what is printed (Clean is applied on both sides, no
// kerning, no ligatures); widths are rounded up; nothing a user types makes any of it fail.
package typeset

import (
	"fmt"
	"sync"

	"dryfit/internal/draw"

	"github.com/go-fonts/liberation/liberationsansbold"
	"github.com/go-fonts/liberation/liberationsansregular"
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Family is the name under which the typeface is embedded.
const Family = "Liberation Sans"

// Data is the font file.
func Data(bold bool) []byte {
	if bold {
		return liberationsansbold.TTF
	}
	return liberationsansregular.TTF
}

// Face is one weight with its metrics in font units.
type Face struct {
	Font   *sfnt.Font
	UnitEm int // font units in an em
	Cap    int // height of capitals in font units
	glyphs map[rune]glyph
	basic  [lastBasic + 1]glyph // those of the keyboard again: nearly all lettering, measured very often
}

// lastBasic ends the characters of ASCII that are printed.
const lastBasic = '~'

func (f *Face) glyph(r rune) glyph {
	if r >= 0 && r <= lastBasic {
		return f.basic[r]
	}
	return f.glyphs[r]
}

type glyph struct{ advance, top, bottom int }

var regular = sync.OnceValue(func() *Face { return load(Data(false)) })
var bold = sync.OnceValue(func() *Face { return load(Data(true)) })

// FaceOf returns the weight.
func FaceOf(isBold bool) *Face {
	if isBold {
		return bold()
	}
	return regular()
}

// lastRune is where the search for glyphs ends: fpdf, which embeds the face, refuses runes above U+FFFF.
const lastRune = 0xFFFF

func load(ttf []byte) *Face {
	f, err := sfnt.Parse(ttf)
	must(err)
	var buf sfnt.Buffer
	em := fixed.Int26_6(f.UnitsPerEm())
	m, err := f.Metrics(&buf, em, font.HintingNone)
	must(err)
	face := &Face{Font: f, UnitEm: int(em), Cap: int(m.CapHeight), glyphs: map[rune]glyph{}}
	for r := rune(' '); r <= lastRune; r++ {
		if i, err := f.GlyphIndex(&buf, r); err == nil && i != 0 {
			b, advance, err := f.GlyphBounds(&buf, i, em, font.HintingNone)
			must(err)
			face.glyphs[r] = glyph{int(advance), -int(b.Min.Y), -int(b.Max.Y)}
		}
	}
	for r := range face.basic {
		face.basic[r] = face.glyphs[rune(r)]
	}
	return face
}

// must: the font is part of the program, so that a fault in it is ours.
func must(err error) {
	if err != nil {
		panic(fmt.Sprintf("typeset: the embedded font does not read: %v", err))
	}
}

// Em is the size of type, as font formats state it, whose capitals are as high as asked.
func Em(size draw.Um, bold bool) draw.Um {
	f := FaceOf(bold)
	return f.scale(f.UnitEm, size)
}

// scale turns font units into paper, half up, for lettering with capitals of that height.
func (f *Face) scale(units int, size draw.Um) draw.Um {
	n, d := 2*int64(units)*int64(size)+int64(f.Cap), 2*int64(f.Cap)
	q := n / d
	if n%d < 0 {
		q--
	}
	return draw.Um(q)
}
