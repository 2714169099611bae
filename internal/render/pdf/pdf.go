// Package pdf writes pages as one PDF file at exact scale.
//
// Takes pages of package draw; gives a file whose pages have the pages' sizes, whose outline has their titles and
// whose lettering is real text in an embedded subset of the typeface. Rules: the same pages give the same bytes
// (dates are a constant of ours); what a user typed is cleaned first, since the PDF library fails on broken UTF-8
// and on characters above U+FFFF; numbers are written to 0.01 pt, so a point is right to 0.002 mm.
package pdf

import (
	"fmt"
	"io"
	"time"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"

	"codeberg.org/go-pdf/fpdf"
)

// Meta is what the file says of itself.
type Meta struct {
	Title, Subject string
	Plain          bool // leave the page contents uncompressed, so that a test can read them
}

// epoch stands for the date in every file: a plan depends on its document alone, not on when it was printed.
var epoch = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

const family = "sheet"

// Write encodes the pages. The error is the writer's, or the library's, which would be a bug.
func Write(w io.Writer, pages []draw.Page, meta Meta) error {
	e := &encoder{Fpdf: open(meta)}
	for _, p := range pages {
		e.page(p)
	}
	return e.Output(w)
}

func open(meta Meta) *fpdf.Fpdf {
	f := fpdf.New("P", "mm", "A4", "")
	f.SetCompression(!meta.Plain)
	f.SetCreationDate(epoch)
	f.SetModificationDate(epoch)
	f.SetCatalogSort(true)
	f.SetProducer("Dryfit", true)
	f.SetCreator("Dryfit", true)
	f.SetTitle(typeset.Clean(meta.Title), true)
	f.SetSubject(typeset.Clean(meta.Subject), true)
	f.SetLang("en-US")
	f.SetAutoPageBreak(false, 0)
	f.SetMargins(0, 0, 0)
	f.AddUTF8FontFromBytes(family, "", typeset.Data(false))
	f.AddUTF8FontFromBytes(family, "B", typeset.Data(true))
	f.SetLineJoinStyle("round")
	return f
}

type encoder struct {
	*fpdf.Fpdf
	h draw.Um // height of the page
}

func (e *encoder) page(p draw.Page) {
	e.h = p.H
	e.AddPageFormat("P", fpdf.SizeType{Wd: mm(p.W), Ht: mm(p.H)})
	if p.Title != "" {
		e.SetFont(family, "", 1) // the library writes a bookmark in Unicode only while such a font is current
		e.Bookmark(typeset.Clean(p.Title), 0, 0)
	}
	e.items(p.Items)
}

func (e *encoder) items(items []draw.Item) {
	for _, it := range items {
		switch it := it.(type) {
		case draw.Path:
			e.path(it)
		case draw.Circle:
			e.circle(it)
		case draw.Text:
			e.text(it)
		case draw.Group:
			e.group(it)
		default:
			panic(fmt.Sprintf("pdf: no such item: %T", it))
		}
	}
}

func mm(v draw.Um) float64 { return float64(v) / 1000 }

func (e *encoder) x(v draw.Um) float64 { return mm(v) }

// y: the library counts from the top.
func (e *encoder) y(v draw.Um) float64 { return mm(e.h - v) }
