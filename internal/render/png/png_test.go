package png

import (
	"bytes"
	"image"
	"image/color"
	stdpng "image/png"
	"io"
	"math"
	"strings"
	"testing"

	page "dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// sheet is 101.6 mm square: 400 pixels at 100 dpi, a pixel being 254 um.
func sheet(items ...page.Item) page.Page {
	return page.Page{W: 101_600, H: 101_600, Items: items}
}

const px = 254

func paint(t *testing.T, p page.Page) *image.RGBA {
	img, err := Paint(p, 100)
	if err != nil {
		t.Fatal(err)
	}
	return img
}

// ink is how dark a picture is, in black pixels, and the smallest window with anything dark in it.
func ink(img *image.RGBA) (sum float64, window image.Rectangle) {
	b := img.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			dark := 255 - float64(color.GrayModel.Convert(img.At(x, y)).(color.Gray).Y)
			sum += dark / 255
			if dark > 100 {
				window = window.Union(image.Rect(x, y, x+1, y+1))
			}
		}
	}
	return sum, window
}

func TestSizeAndResolution(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, page.Page{W: page.A4.W, H: page.A4.H}, 150); err != nil {
		t.Fatal(err)
	}
	img, err := stdpng.Decode(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	// 210 x 297 mm at 150 dpi: 1240.2 by 1753.9 pixels; 150 / 0.0254 = 5905.5 dots a metre.
	if img.Bounds() != image.Rect(0, 0, 1240, 1754) {
		t.Errorf("A4 at 150 dpi is %v", img.Bounds())
	}
	if i := bytes.Index(b.Bytes(), []byte("pHYs")); i < 0 || !bytes.Equal(b.Bytes()[i+4:i+13], []byte{0, 0, 0x17, 0x12, 0, 0, 0x17, 0x12, 1}) {
		t.Error("no resolution of 5906 dots a metre in the file")
	}
}

func TestLinesLieWhereTheyShould(t *testing.T) {
	pen := page.Line(10 * px)
	for name, c := range map[string]struct {
		from, to page.XY
		want     image.Rectangle
	}{
		"level":   {page.At(20*px, 300*px), page.At(220*px, 300*px), image.Rect(20, 95, 220, 105)},
		"upright": {page.At(50*px, 100*px), page.At(50*px, 300*px), image.Rect(45, 100, 55, 300)},
	} {
		sum, window := ink(paint(t, sheet(page.Stroke(pen, c.from, c.to))))
		if window != c.want || math.Abs(sum-2000) > 1 {
			t.Errorf("%s: %.1f black pixels in %v, want 2000 in %v", name, sum, window, c.want)
		}
	}
}

func TestThinLinesDoNotFade(t *testing.T) {
	sum, _ := ink(paint(t, sheet(page.Stroke(page.Line(50), page.At(20*px, 300*px), page.At(220*px, 300*px)))))
	if math.Abs(sum-200) > 2 {
		t.Errorf("a hairline of 200 pixels has %.1f", sum)
	}
}

func TestAreas(t *testing.T) {
	black := page.Fill{On: true}
	outer, hole := page.Span(40*px, 40*px, 240*px, 140*px), page.Span(60*px, 60*px, 110*px, 110*px)
	island := page.Span(70*px, 70*px, 80*px, 80*px)
	backward := []page.XY{hole.Ring()[3], hole.Ring()[2], hole.Ring()[1], hole.Ring()[0]}
	ringOf := func(rings ...[]page.XY) page.Item { return page.Path{Rings: rings, Closed: true, Fill: black} }
	for name, c := range map[string]struct {
		item page.Item
		want float64
	}{
		"rectangle":            {ringOf(outer.Ring()), 20_000},
		"hole, same sense":     {ringOf(outer.Ring(), hole.Ring()), 17_500},
		"hole, other sense":    {ringOf(outer.Ring(), backward), 17_500},
		"hole first":           {ringOf(hole.Ring(), outer.Ring()), 17_500},
		"island in the hole":   {ringOf(outer.Ring(), hole.Ring(), island.Ring()), 17_600},
		"circle":               {page.Circle{C: page.At(200*px, 200*px), R: 100 * px, Fill: black}, math.Pi * 10_000},
		"circle's line":        {page.Circle{C: page.At(200*px, 200*px), R: 100 * px, Pen: page.Line(10 * px)}, math.Pi * (105*105 - 95*95)},
		"off the page":         {ringOf(page.Span(-900*px, -900*px, -800*px, -800*px).Ring()), 0},
		"half off the page":    {ringOf(page.Span(-50*px, 0, 50*px, 50*px).Ring()), 2_500},
		"clipped":              {page.Group{Clip: &[2]page.XY{page.At(0, 0), page.At(100*px, 100*px)}, Items: []page.Item{ringOf(outer.Ring())}}, 3_600},
		"clipped by nothing":   {page.Group{Items: []page.Item{ringOf(outer.Ring())}}, 20_000},
		"two that do not fill": {page.Path{Rings: [][]page.XY{{page.At(0, 0), page.At(5, 5)}, {}}, Fill: black}, 0},
	} {
		sum, _ := ink(paint(t, sheet(c.item)))
		if math.Abs(sum-c.want) > 0.002*c.want+1 {
			t.Errorf("%s: %.1f black pixels, want %.1f", name, sum, c.want)
		}
	}
}

// A dash pattern covers its share of the line: ISO 128-20's dashed line 12 of 15, chain 24.5 of 30.5.
func TestDashesCoverTheirShare(t *testing.T) {
	for d, share := range map[page.Dash]float64{page.Solid: 1, page.Dashed: 12. / 15, page.Chain: 24.5 / 30.5, page.ChainTwo: 25. / 34} {
		pen := page.Line(2 * px).As(d)
		sum, _ := ink(paint(t, sheet(page.Stroke(pen, page.At(0, 200*px), page.At(400*px, 200*px)))))
		if got := sum / 800; math.Abs(got-share) > 0.05 {
			t.Errorf("line type %d covers %.3f, want %.3f", d, got, share)
		}
	}
}

// Capitals are as high as ISO 3098 lettering says, and ink stays within the box that the layout counts on.
func TestTextFillsItsBox(t *testing.T) {
	for _, turn := range []int{0, 90} {
		for _, anchor := range []page.Anchor{page.Start, page.Middle, page.End} {
			text := page.Text{At: page.At(200*px, 200*px), Size: 50 * px, Anchor: anchor, Turn: turn, Body: "HxH"}
			_, window := ink(paint(t, sheet(text)))
			high := window.Dy()
			if turn == 90 {
				high = window.Dx()
			}
			if high != 50 {
				t.Errorf("turn %d: capitals of 50 pixels are %d high", turn, high)
			}
			box := typeset.BoxOf(text)
			room := image.Rect(int(box.Lo.X/px)-1, 400-int(box.Hi.Y/px)-1, int(box.Hi.X/px)+1, 400-int(box.Lo.Y/px)+1)
			if !window.In(room) || window.Dx() < room.Dx()-16 || window.Dy() < room.Dy()-16 {
				t.Errorf("turn %d anchor %d: ink in %v, box %v", turn, anchor, window, room)
			}
		}
	}
}

func TestHostileTextIsPainted(t *testing.T) {
	for _, s := range []string{"a\xff\xfeb", "😀", "\x00", "漢字", strings.Repeat("W", 20_000)} {
		paint(t, sheet(page.Text{At: page.At(px, px), Size: 2_500, Body: s}, page.Text{Turn: 90, Bold: true, Size: 2_500, Body: s}))
	}
	paint(t, sheet(page.Text{Body: "no size"}, page.Circle{}, page.Path{}, page.Group{}))
}

func TestSizesThatCannotBe(t *testing.T) {
	for _, p := range []page.Page{{}, {W: -1, H: 5}, {W: 1 << 50, H: 1 << 50}, {W: 2_000_000_000, H: 1_000_000}} {
		if _, err := Paint(p, 100); err == nil {
			t.Errorf("%d by %d um was painted", p.W, p.H)
		}
	}
	if _, err := Paint(sheet(), 0); err == nil {
		t.Error("no dots per inch was painted")
	}
	if err := Write(failing{}, sheet(), 10); err == nil {
		t.Error("a full disk went unnoticed")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func BenchmarkPaintTwoThousandTiles(b *testing.B) {
	p := page.Page{W: page.A4.W, H: page.A4.H}
	for i := range 2_000 {
		at := page.At(page.Um(10_000+i%40*4_800), page.Um(10_000+i/40*5_500))
		p.Items = append(p.Items, page.Rect(page.Span(at.X, at.Y, at.X+4_500, at.Y+5_200), page.Line(page.Narrow), page.Fill{On: true, Color: page.Pale}))
	}
	for b.Loop() {
		if _, err := Paint(p, 150); err != nil {
			b.Fatal(err)
		}
	}
}
