package sheet_test

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/render/pdf"
	"dryfit/internal/render/pdf/pdfread"
	"dryfit/internal/sheet"
	"dryfit/internal/unit"
)

// toPrint is how far a printed length may be off: what a rule shows.
const toPrint = 0.1 // mm

// printedPages reads the book back from its own PDF.
func printedPages(t *testing.T, pages []draw.Page) []pdfread.Page {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, pages, pdf.Meta{Plain: true}); err != nil {
		t.Fatal(err)
	}
	out, err := pdfread.Read(b.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// The board of every laid face is as wide and as high on paper as the title block's scale says, measured in the PDF
// file itself; and so is the bar that each page carries to check its print with (4 in, or 100 mm).
func TestPrintedLengths(t *testing.T) {
	for _, r := range demo.Rooms() {
		p := planned(t, r)
		for _, paper := range draw.Papers() {
			pages := sheet.Book(p, sheet.PaperNamed(paper.Name, p.Style.System))
			file := printedPages(t, pages)
			for _, f := range p.Tiling.Faces {
				i := faceSheet(pages, f.Name)
				if i < 0 {
					t.Errorf("%s: no sheet of %s", r.File, f.Name)
					continue
				}
				n := scaleOf(t, file[i])
				face, _ := p.Room.Face(f.Name)
				b := face.Board.Bounds()
				if !hasShape(file[i], b.W().MM()/n, b.H().MM()/n) {
					t.Errorf("%s on %s: the board of %s is not %.2f by %.2f mm at 1:%v", r.File, paper.Name, f.Name, b.W().MM()/n, b.H().MM()/n, n)
				}
			}
			bar := 100.0
			if p.Style.System == unit.Inches {
				bar = 101.6
			}
			for i, page := range file {
				if !hasShape(page, bar, 2) {
					t.Errorf("%s, page %d: no bar of %v mm", r.File, i+1, bar)
				}
			}
		}
	}
}

// faceSheet is the page that shows a face whole.
func faceSheet(pages []draw.Page, face string) int {
	for i, p := range pages {
		title := strings.ToLower(p.Title)
		if strings.HasPrefix(title, strings.ToLower(face)+", ") && !strings.Contains(title, "stands before it") && !strings.Contains(title, "rough-in") {
			return i
		}
	}
	return -1
}

// scaleOf reads the scale as printed in the title block.
func scaleOf(t *testing.T, p pdfread.Page) float64 {
	t.Helper()
	for _, x := range p.Texts {
		var n float64
		if _, err := fmt.Sscanf(x.Body, "1:%g", &n); err == nil {
			return n
		}
	}
	t.Fatal("no scale on the page")
	return 0
}

// hasShape finds a painted outline so wide and so high.
func hasShape(p pdfread.Page, w, h float64) bool {
	for _, path := range p.Paths {
		for _, line := range path.Lines {
			gotW, gotH := size(line)
			if math.Abs(gotW-w) < toPrint && math.Abs(gotH-h) < toPrint {
				return true
			}
		}
	}
	return false
}

func size(line []pdfread.Pt) (w, h float64) {
	if len(line) == 0 {
		return 0, 0
	}
	lo, hi := line[0], line[0]
	for _, p := range line {
		lo = pdfread.Pt{X: math.Min(lo.X, p.X), Y: math.Min(lo.Y, p.Y)}
		hi = pdfread.Pt{X: math.Max(hi.X, p.X), Y: math.Max(hi.Y, p.Y)}
	}
	return hi.X - lo.X, hi.Y - lo.Y
}
