package pdf

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"runtime"
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/render/pdf/pdfread"
	"dryfit/internal/typeset"

	"pgregory.net/rapid"
)

func write(t interface{ Fatal(...any) }, meta Meta, pages ...draw.Page) []byte {
	var b bytes.Buffer
	if err := Write(&b, pages, meta); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func read(t interface{ Fatal(...any) }, data []byte) []pdfread.Page {
	pages, err := pdfread.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return pages
}

func printed(t interface{ Fatal(...any) }, pages ...draw.Page) []pdfread.Page {
	return read(t, write(t, Meta{Plain: true}, pages...))
}

func letter(items ...draw.Item) draw.Page {
	return draw.Page{W: draw.Letter.W, H: draw.Letter.H, Items: items}
}

// close to 0.01 mm: what PDF's hundredths of a point can hold (0.0035 mm) with room for a turn.
func close(a float64, b draw.Um) bool { return math.Abs(a-float64(b)/1000) < 0.01 }

func at(p pdfread.Pt, q draw.XY) bool { return close(p.X, q.X) && close(p.Y, q.Y) }

// The promise of every sheet: a printed length is right to 0.1 mm, measured in the file itself.
func TestHundredMillimetresAreHundred(t *testing.T) {
	for _, paper := range draw.Papers() {
		for _, p := range []draw.Paper{paper, paper.Landscape()} {
			page := draw.Page{W: p.W, H: p.H, Items: []draw.Item{
				draw.Stroke(draw.Line(draw.Wide), draw.At(20_000, 30_000), draw.At(120_000, 30_000)),
				draw.Stroke(draw.Line(draw.Wide), draw.At(20_000, 30_000), draw.At(20_000, 130_000)),
			}}
			for _, line := range printed(t, page)[0].Paths {
				a, b := line.Lines[0][0], line.Lines[0][1]
				if l := math.Hypot(b.X-a.X, b.Y-a.Y); math.Abs(l-100) > 0.1 {
					t.Errorf("%s: 100 mm is %.3f mm", p.Name, l)
				}
			}
		}
	}
}

func TestPageBoxes(t *testing.T) {
	var pages []draw.Page
	for _, p := range draw.Papers() {
		pages = append(pages, draw.Page{W: p.W, H: p.H}, draw.Page{W: p.H, H: p.W})
	}
	got := printed(t, pages...)
	if len(got) != len(pages) {
		t.Fatalf("%d pages, want %d", len(got), len(pages))
	}
	for i, p := range pages {
		if !close(got[i].W, p.W) || !close(got[i].H, p.H) {
			t.Errorf("page %d is %.3f by %.3f mm, want %d by %d um", i, got[i].W, got[i].H, p.W, p.H)
		}
	}
}

// Two hundred drawn rings on one page, since opening a file reads both fonts.
func TestPlacesAreTheDisplayLists(t *testing.T) {
	place := rapid.Custom(func(t *rapid.T) draw.XY {
		return draw.At(draw.Um(rapid.Int64Range(0, 215_900).Draw(t, "x")), draw.Um(rapid.Int64Range(0, 279_400).Draw(t, "y")))
	})
	rings := rapid.SliceOfN(place, 3, 8)
	clip := [2]draw.XY{{}, draw.At(draw.Letter.W, draw.Letter.H)}
	var items []draw.Item
	var want [][]draw.XY
	for seed := range 200 {
		ring, pen := rings.Example(seed), draw.Line(draw.Um(100+seed))
		items = append(items, draw.Path{Rings: [][]draw.XY{ring}, Closed: true, Pen: pen, Fill: draw.Fill{On: true}},
			draw.Group{Clip: &clip, Items: []draw.Item{draw.Path{Rings: [][]draw.XY{ring}, Pen: pen}}})
		want = append(want, append(ring[:len(ring):len(ring)], ring[0]), ring)
	}
	got := printed(t, letter(items...))[0].Paths
	if len(got) != len(want) {
		t.Fatalf("%d paths, want %d", len(got), len(want))
	}
	for i := range want {
		if op := []string{"B*", "S"}[i%2]; got[i].Op != op {
			t.Errorf("path %d is painted by %s, want %s", i, got[i].Op, op)
		}
		same(t, got[i], want[i], draw.Um(100+i/2))
	}
}

func same(t *testing.T, p pdfread.Path, want []draw.XY, width draw.Um) {
	if len(p.Lines) != 1 || len(p.Lines[0]) != len(want) {
		t.Fatalf("got %v, want %v", p.Lines, want)
	}
	for k, q := range want {
		if !at(p.Lines[0][k], q) {
			t.Fatalf("point %d is at %v, want %v", k, p.Lines[0][k], q)
		}
	}
	if !close(p.Width, width) {
		t.Fatalf("pen %.4f mm, want %d um", p.Width, width)
	}
}

// A circle of four cubic curves: points on the curves are within 0.03 % of the radius.
func TestCirclesAreRound(t *testing.T) {
	for _, r := range []draw.Um{1_500, 17_463, 80_000} {
		c := draw.At(100_000, 120_000)
		p := printed(t, letter(draw.Circle{C: c, R: r, Pen: draw.Line(draw.Narrow)}))[0].Paths[0]
		ends, handles := p.Lines[0], p.Handles[0]
		if len(ends) < 5 || len(handles) != 8 {
			t.Fatalf("no four curves: %v", p)
		}
		for i := range 4 {
			for _, k := range []float64{0, 0.2, 0.5, 0.7} {
				q := bezier(ends[i], handles[2*i], handles[2*i+1], ends[i+1], k)
				got := math.Hypot(q.X-100, q.Y-120)
				if math.Abs(got-float64(r)/1000) > float64(r)/1000*0.0004+0.008 {
					t.Errorf("radius %d um: %.4f mm at curve %d, %.1f", r, got, i, k)
				}
			}
		}
	}
}

func bezier(a, b, c, d pdfread.Pt, k float64) pdfread.Pt {
	mix := func(a, b, c, d float64) float64 {
		return a*(1-k)*(1-k)*(1-k) + 3*b*k*(1-k)*(1-k) + 3*c*k*k*(1-k) + d*k*k*k
	}
	return pdfread.Pt{X: mix(a.X, b.X, c.X, d.X), Y: mix(a.Y, b.Y, c.Y, d.Y)}
}

func TestTextsStandWhereTheyShould(t *testing.T) {
	for _, anchor := range []draw.Anchor{draw.Start, draw.Middle, draw.End} {
		for _, turn := range []int{0, 90, 37, -20} {
			for _, bold := range []bool{false, true} {
				want := draw.Text{At: draw.At(100_000, 120_000), Size: 3_500, Anchor: anchor, Turn: turn, Bold: bold, Body: "11-13/16 × ⅜"}
				got := printed(t, letter(want))[0].Texts
				if len(got) != 1 || got[0].Body != want.Body || math.Abs(got[0].Turn-float64(turn)) > 1e-3 {
					t.Fatalf("%v reads back as %v", want, got)
				}
				if !at(got[0].At, typeset.Start(want)) || !close(got[0].Em, typeset.Em(want.Size, bold)) {
					t.Errorf("%v stands at %v, %.3f mm high", want, got[0].At, got[0].Em)
				}
			}
		}
	}
}

// The library caches the font across the state that a clip or a turn restores; the text after must have its own.
func TestTextAfterClipAndTurnKeepsItsType(t *testing.T) {
	clip := [2]draw.XY{{}, draw.At(50_000, 50_000)}
	text := func(size draw.Um, turn int) draw.Item {
		return draw.Text{At: draw.At(10_000, 10_000), Size: size, Turn: turn, Body: fmt.Sprint(size)}
	}
	got := printed(t, letter(text(2_500, 0), draw.Group{Clip: &clip, Items: []draw.Item{text(7_000, 0), text(5_000, 90)}}, text(5_000, 0), text(2_500, 0)))[0]
	for i, size := range []draw.Um{2_500, 7_000, 5_000, 5_000, 2_500} {
		if !close(got.Texts[i].Em, typeset.Em(size, false)) {
			t.Errorf("text %d is %.3f mm, want capitals of %d um", i, got.Texts[i].Em, size)
		}
	}
}

func TestHatchIsTheDisplayLists(t *testing.T) {
	p := draw.Rect(draw.Span(20_000, 20_000, 60_000, 50_000), draw.Pen{}, draw.Fill{Hatch: draw.Cross})
	got, want := printed(t, letter(p))[0].Paths, p.HatchLines()
	if len(got) != 1 || len(got[0].Lines) != len(want) || len(want) < 20 {
		t.Fatalf("%d lines, want %d", len(got[0].Lines), len(want))
	}
	for i, s := range want {
		if !at(got[0].Lines[i][0], s.A) || !at(got[0].Lines[i][1], s.B) {
			t.Errorf("line %d is %v, want %v", i, got[0].Lines[i], s)
		}
	}
}

func TestSameBytes(t *testing.T) {
	pages := []draw.Page{{Title: "One", W: draw.A4.W, H: draw.A4.H}, letter(
		draw.Text{Size: 2_500, Body: "the quick brown fox, 0123456789"}, draw.Text{Size: 2_500, Bold: true, Body: "äöü ⅜"},
		draw.Circle{C: draw.At(9_000, 9_000), R: 5_000, Fill: draw.Fill{Hatch: draw.Dots}})}
	meta := Meta{Title: "Boathouse", Subject: "sheets"}
	first := write(t, meta, pages...)
	before := runtime.GOMAXPROCS(1)
	defer runtime.GOMAXPROCS(before)
	for range 5 {
		if !bytes.Equal(first, write(t, meta, pages...)) {
			t.Fatal("two files of the same pages differ")
		}
	}
	if plain := write(t, Meta{Plain: true}, pages...); len(read(t, first)) != len(read(t, plain)) || len(first) >= len(plain) {
		t.Errorf("compressed %d bytes, plain %d", len(first), len(plain))
	}
}

func TestHostileTextNeverLosesTheFile(t *testing.T) {
	for _, s := range []string{"a\xff\xfeb", "😀", "\U0010ffff", "<script>", "a)b(c\\d", "\r\n\t\x00", "\u202eabc", "漢字", strings.Repeat("W", 20_000), "(", "\\"} {
		p := letter(draw.Text{Size: 2_500, At: draw.At(5_000, 5_000), Body: s}, draw.Text{Size: 2_500, Turn: 90, Bold: true, Body: s})
		p.Title = s
		pages := read(t, write(t, Meta{Title: s, Subject: s, Plain: true}, p))
		for _, text := range pages[0].Texts {
			if text.Body != typeset.Clean(s) {
				t.Errorf("%.30q reads back as %.60q", s, text.Body)
			}
		}
	}
}

func TestOutlineHasTheTitles(t *testing.T) {
	p := letter()
	p.Title = "Basin wall"
	data := write(t, Meta{Plain: true}, letter(), p)
	var title []byte
	for _, u := range p.Title {
		title = append(title, 0, byte(u))
	}
	if !bytes.Contains(data, append([]byte("/Title (\xfe\xff"), title...)) {
		t.Error("no bookmark")
	}
}

// Sizes that PDF or the library cannot hold must come back as an error, not as half a file.
func TestNoPagesIsStillAFile(t *testing.T) {
	if pages := read(t, write(t, Meta{})); len(pages) > 1 {
		t.Errorf("%d pages of none", len(pages))
	}
}

func TestWriterFailureIsTold(t *testing.T) {
	if err := Write(failing{}, []draw.Page{letter()}, Meta{}); err == nil {
		t.Error("a full disk went unnoticed")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }
