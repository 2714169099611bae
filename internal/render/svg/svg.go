// Package svg writes a page as SVG 1.1.
//
// Takes a page of package draw; gives a drawing in millimetres, one user unit to a millimetre, y downward as SVG
// has it. Rules: the same page gives the same bytes; every user text is cleaned and escaped; ids, classes and
// titles of the display list come through, so that a web page can find and name each thing.
package svg

import (
	"bytes"
	"encoding/base64"
	"fmt"
	"io"
	"strconv"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/typeset"
)

// Options say what the drawing is for.
type Options struct {
	Inline bool   // to stand within a web page: no XML declaration
	Embed  bool   // carry the typeface inside, for a file that travels alone
	Prefix string // before ids that the writer makes itself, where several drawings share a page
	Fluid  bool   // no fixed size: as wide as the place that holds it
	Sheet  bool   // the page's style sheet says how letters are spaced: its policy forbids style attributes
}

// Write encodes one page.
func Write(w io.Writer, page draw.Page, opt Options) error {
	e := &encoder{page: page, opt: opt}
	e.head()
	e.items(page.Items)
	e.put("</svg>\n")
	_, err := w.Write(e.out.Bytes())
	return err
}

type encoder struct {
	page  draw.Page
	opt   Options
	out   bytes.Buffer
	clips int
}

func (e *encoder) put(format string, args ...any) { fmt.Fprintf(&e.out, format, args...) }

func (e *encoder) head() {
	if !e.opt.Inline {
		e.put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
	}
	w, h := mm(e.page.W), mm(e.page.H)
	size := fmt.Sprintf(` width="%smm" height="%smm"`, w, h)
	if e.opt.Fluid {
		size = ""
	}
	e.put(`<svg xmlns="http://www.w3.org/2000/svg"%s viewBox="0 0 %s %s" role="%s"`, size, w, h, e.role())
	// Kerning and ligatures are off because the measured widths know neither; spaces count, since they are measured.
	e.put(" font-family=\"'%s', sans-serif\"", typeset.Family)
	if !e.opt.Sheet {
		e.put(" style=\"font-kerning:none;font-variant-ligatures:none\"")
	}
	e.put(" xml:space=\"preserve\"")
	e.put(" fill=\"none\" stroke-linejoin=\"round\">\n")
	e.title(e.page.Title)
	if e.opt.Embed {
		e.faces()
	}
	e.put("<rect class=\"paper\" width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>\n", w, h)
}

// role: within a web page each titled thing is read out by itself, a file is one picture.
func (e *encoder) role() string {
	if e.opt.Inline {
		return "group"
	}
	return "img"
}

// faces embeds the weights that the page uses.
func (e *encoder) faces() {
	used := map[bool]bool{}
	for _, p := range typeset.Placements(e.page) {
		used[p.Text.Bold] = true
	}
	e.put("<style>\n")
	for _, bold := range []bool{false, true} {
		if used[bold] {
			e.put("@font-face{font-family:'%s';font-weight:%s;src:url(data:font/ttf;base64,%s)}\n", typeset.Family,
				weight(bold), base64.StdEncoding.EncodeToString(typeset.Data(bold)))
		}
	}
	e.put("</style>\n")
}

func weight(bold bool) string {
	if bold {
		return "bold"
	}
	return "normal"
}

func (e *encoder) title(t string) {
	if t != "" {
		e.put("<title>%s</title>\n", escape(t))
	}
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
			panic(fmt.Sprintf("svg: no such item: %T", it))
		}
	}
}

var entities = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;", "'", "&#39;")

// escape makes a text safe as content and within an attribute's double quotes.
func escape(s string) string { return entities.Replace(typeset.Clean(s)) }

// mm prints micrometres as millimetres, exactly: "12", "0.35", "-1.5".
func mm(v draw.Um) string { return string(appendMM(nil, v)) }

func appendMM(b []byte, v draw.Um) []byte {
	if v < 0 {
		b, v = append(b, '-'), -v
	}
	b = strconv.AppendInt(b, int64(v/1000), 10)
	rest := v % 1000
	if rest == 0 {
		return b
	}
	b = append(b, '.', byte('0'+rest/100), byte('0'+rest/10%10), byte('0'+rest%10))
	for b[len(b)-1] == '0' {
		b = b[:len(b)-1]
	}
	return b
}

// appendAt prints a place with a verb of path data before it.
func (e *encoder) appendAt(b []byte, verb byte, at draw.XY) []byte {
	b = append(appendMM(append(b, verb), at.X), ' ')
	return appendMM(b, e.page.H-at.Y)
}

func hex(c draw.Color) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
