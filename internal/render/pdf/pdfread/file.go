// Package pdfread reads back the PDF files that package pdf writes, so that a test can measure what is printed
// instead of trusting what was meant.
//
// Takes the bytes of a file; gives, for each page, its size and every painted path and text, in millimetres from
// the lower left corner, with all transformations applied. It knows PDF 1.3 objects, page contents, transforms and
// the Identity-H text that one font writer makes, and it shares no code with the writer. For tests only.
package pdfread

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"regexp"
	"strconv"
)

// Page is what one page shows.
type Page struct {
	W, H  float64 // mm
	Paths []Path
	Texts []Text
}

// Pt is a place in millimetres.
type Pt struct{ X, Y float64 }

// Path is one painted path: its subpaths with the end points of their pieces, curves' handles left out.
type Path struct {
	Lines   [][]Pt
	Handles [][]Pt  // of the curves, two each, by subpath
	Op      string  // the operator that painted it: S, f*, B*
	Width   float64 // of the pen, mm
	Dash    string  // as written
	Color   string  // of the pen, as written
}

// Text is one shown string.
type Text struct {
	At   Pt
	Turn float64 // degrees
	Em   float64 // size of type, mm
	Font string
	Body string
}

const mmPerPoint = 25.4 / 72 // ISO 32000-1, 8.3.2.3: the default unit is 1/72 in

var (
	objectAt  = regexp.MustCompile(`(?s)(\d+) 0 obj\n(.*?)endobj`)
	kidRef    = regexp.MustCompile(`(\d+) 0 R`)
	kidsList  = regexp.MustCompile(`(?s)/Kids \[(.*?)\]`)
	contentIs = regexp.MustCompile(`/Contents (\d+) 0 R`)
	mediaBox  = regexp.MustCompile(`/MediaBox \[([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)\]`)
	streamIs  = regexp.MustCompile(`(?s)^(.*?)stream\r?\n(.*)\r?\nendstream`)
)

type file struct{ objects map[string][]byte }

// Read reads a whole file.
func Read(data []byte) ([]Page, error) {
	if !bytes.HasPrefix(data, []byte("%PDF-1.")) || !bytes.Contains(data, []byte("%%EOF")) {
		return nil, fmt.Errorf("pdfread: no PDF file, or not all of it")
	}
	f := file{map[string][]byte{}}
	for _, m := range objectAt.FindAllSubmatch(data, -1) {
		f.objects[string(m[1])] = m[2]
	}
	return f.pages()
}

func (f file) pages() ([]Page, error) {
	root := f.objects["1"] // the writer's page tree is flat and its first object
	kids := kidsList.FindSubmatch(root)
	if kids == nil {
		return nil, fmt.Errorf("pdfread: no page tree")
	}
	box := mediaBox.FindSubmatch(root)
	var out []Page
	for _, ref := range kidRef.FindAllSubmatch(kids[1], -1) {
		p, err := f.page(f.objects[string(ref[1])], box)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

// page reads one page; box is the one that it inherits from the tree.
func (f file) page(dict []byte, box [][]byte) (Page, error) {
	if own := mediaBox.FindSubmatch(dict); own != nil {
		box = own
	}
	content := contentIs.FindSubmatch(dict)
	if box == nil || content == nil {
		return Page{}, fmt.Errorf("pdfread: a page without size or contents")
	}
	body, err := f.stream(string(content[1]))
	if err != nil {
		return Page{}, err
	}
	p := Page{W: (number(box[3]) - number(box[1])) * mmPerPoint, H: (number(box[4]) - number(box[2])) * mmPerPoint}
	return p, interpret(body, &p)
}

func (f file) stream(ref string) ([]byte, error) {
	m := streamIs.FindSubmatch(f.objects[ref])
	if m == nil {
		return nil, fmt.Errorf("pdfread: object %s is no stream", ref)
	}
	if !bytes.Contains(m[1], []byte("/FlateDecode")) {
		return m[2], nil
	}
	z, err := zlib.NewReader(bytes.NewReader(m[2]))
	if err != nil {
		return nil, fmt.Errorf("pdfread: object %s: %w", ref, err)
	}
	return io.ReadAll(z)
}

func number(b []byte) float64 {
	v, err := strconv.ParseFloat(string(b), 64)
	if err != nil {
		return 0
	}
	return v
}
