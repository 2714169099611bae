// Package render_test holds the encoders against each other: one drawing, read back from what each of them wrote.
package render_test

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/render/pdf"
	"dryfit/internal/render/pdf/pdfread"
	"dryfit/internal/render/svg"
)

// sheet has something of everything.
func sheet() draw.Page {
	p := draw.A4.Landscape()
	items, in := parts.Frame(p)
	wall := draw.Span(60_000, 70_000, 200_000, 160_000)
	items = append(items, draw.Rect(wall, draw.Line(draw.Heavy), draw.Fill{On: true, Color: draw.Pale, Hatch: draw.Diagonal}))
	items = append(items, draw.Circle{C: draw.At(100_000, 100_000), R: 17_463, Pen: draw.Line(draw.Normal), Fill: draw.Fill{On: true, Color: draw.White, Hatch: draw.Cross}})
	items = append(items, parts.Chain{Feature: 160_000, Line: 170_000, At: []draw.Um{60_000, 63_000, 120_000, 200_000}, Texts: []string{"1/8", "57-3/16", "80"}}.Items()...)
	items = append(items, parts.Running{Vertical: true, Feature: 60_000, Line: 50_000, Origin: parts.Mark{At: 70_000, Text: "0"},
		Marks: []parts.Mark{{At: 71_000, Text: "1"}, {At: 130_000, Text: "60"}, {At: 160_000, Text: "90"}}}.Items()...)
	items = append(items, parts.Ruler(draw.At(30_000, 30_000), false).Items()...)
	items = append(items, parts.TitleBlock{Title: "Basin wall", Sheet: 1, Sheets: 2}.Items(draw.At(in.Hi.X, in.Lo.Y), in.W())...)
	items = append(items, draw.Group{Clip: &[2]draw.XY{wall.Lo, wall.Hi}, Items: []draw.Item{draw.Stroke(draw.Line(draw.Wide).As(draw.Chain), draw.At(0, 90_000), draw.At(297_000, 91_000))}})
	return draw.Page{Title: "Basin wall", W: p.W, H: p.H, Items: items}
}

func TestSVGAgreesWithPDF(t *testing.T) {
	p := sheet()
	fromPDF, fromSVG := readPDF(t, p), readSVG(t, p)
	if len(fromPDF.Paths) != len(fromSVG.Paths) || len(fromPDF.Texts) != len(fromSVG.Texts) {
		t.Fatalf("PDF has %d paths and %d texts, SVG %d and %d", len(fromPDF.Paths), len(fromPDF.Texts), len(fromSVG.Paths), len(fromSVG.Texts))
	}
	for i, a := range fromPDF.Paths {
		samePath(t, i, a, fromSVG.Paths[i])
	}
	for i, a := range fromPDF.Texts {
		b := fromSVG.Texts[i]
		if a.Body != b.Body || math.Abs(a.Turn-b.Turn) > 0.001 || math.Abs(a.Em-b.Em) > 0.01 {
			t.Errorf("text %d: %v in PDF, %v in SVG", i, a, b)
		}
	}
}

func samePath(t *testing.T, i int, a, b pdfread.Path) {
	if a.Op == "f*" {
		a.Width = 0 // the pen that PDF holds is not used
	}
	if len(a.Lines) != len(b.Lines) || math.Abs(a.Width-b.Width) > 0.01 {
		t.Fatalf("path %d: %v in PDF, %v in SVG", i, a, b)
	}
	for k := range a.Lines {
		for n := range a.Lines[k] {
			if p, q := a.Lines[k][n], b.Lines[k][n]; math.Hypot(p.X-q.X, p.Y-q.Y) > 0.01 {
				t.Errorf("path %d, line %d, point %d: %v in PDF, %v in SVG", i, k, n, p, q)
			}
		}
	}
}

func readPDF(t *testing.T, p draw.Page) pdfread.Page {
	var b bytes.Buffer
	if err := pdf.Write(&b, []draw.Page{p}, pdf.Meta{}); err != nil {
		t.Fatal(err)
	}
	pages, err := pdfread.Read(b.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return pages[0]
}

// readSVG gives the drawing as pdfread would: millimetres from the lower left, circles as four points and back.
func readSVG(t *testing.T, p draw.Page) pdfread.Page {
	var b bytes.Buffer
	if err := svg.Write(&b, p, svg.Options{}); err != nil {
		t.Fatal(err)
	}
	r := &svgReader{}
	for d := xml.NewDecoder(&b); ; {
		tok, err := d.Token()
		if err == io.EOF {
			return r.page
		}
		if err != nil {
			t.Fatal(err)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			r.start(tok)
		case xml.CharData:
			if r.inText {
				r.page.Texts[len(r.page.Texts)-1].Body += string(tok)
			}
		case xml.EndElement:
			r.inText = r.inText && tok.Name.Local != "text"
		}
	}
}

type svgReader struct {
	page   pdfread.Page
	inText bool
}

func (r *svgReader) start(e xml.StartElement) {
	a := map[string]string{}
	for _, at := range e.Attr {
		a[at.Name.Local] = at.Value
	}
	path := pdfread.Path{Width: num(a["stroke-width"])}
	switch e.Name.Local {
	case "svg":
		var x, y float64
		fmt.Sscan(a["viewBox"], &x, &y, &r.page.W, &r.page.H)
	case "path":
		path.Lines = r.data(a["d"])
		r.page.Paths = append(r.page.Paths, path)
	case "circle":
		x, y, rad := num(a["cx"]), r.page.H-num(a["cy"]), num(a["r"])
		path.Lines = [][]pdfread.Pt{{{X: x + rad, Y: y}, {X: x, Y: y + rad}, {X: x - rad, Y: y}, {X: x, Y: y - rad}, {X: x + rad, Y: y}, {X: x + rad, Y: y}}}
		r.page.Paths = append(r.page.Paths, path)
	case "text":
		var turn float64
		fmt.Sscanf(a["transform"], "rotate(%f", &turn)
		r.inText = true
		r.page.Texts = append(r.page.Texts, pdfread.Text{Em: num(a["font-size"]), Turn: -turn})
	}
}

func (r *svgReader) data(d string) [][]pdfread.Pt {
	var out [][]pdfread.Pt
	for _, sub := range strings.Split(d, "M")[1:] {
		var line []pdfread.Pt
		for _, point := range strings.Split(strings.TrimSuffix(sub, "Z"), "L") {
			x, y, _ := strings.Cut(point, " ")
			line = append(line, pdfread.Pt{X: num(x), Y: r.page.H - num(y)})
		}
		if strings.HasSuffix(sub, "Z") {
			line = append(line, line[0])
		}
		out = append(out, line)
	}
	return out
}

func num(s string) float64 {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0
	}
	return v
}
