package web

import (
	"bytes"
	"html/template"
	"strings"

	"rsc.io/qr"

	"dryfit/internal/draw"
	"dryfit/internal/render/svg"
)

// quietZone is the white margin that a reader needs (ISO/IEC 18004: four modules).
const quietZone = 4

// code is a link as a matrix code (ISO/IEC 18004), 15 % of which may be dirty.
func code(link string) (*qr.Code, error) { return qr.Encode(link, qr.M) }

// picture draws the code, each dark run of a row as one box.
func picture(link string) (template.HTML, error) {
	c, err := code(link)
	if err != nil {
		return "", err
	}
	const module = draw.MM
	side := draw.Um(c.Size+2*quietZone) * module
	page := draw.Page{Title: "Code of the link " + link, W: side, H: side}
	for y := range c.Size {
		for x := 0; x < c.Size; x++ {
			from := x
			for x < c.Size && c.Black(x, y) {
				x++
			}
			if x > from {
				top := side - draw.Um(quietZone+y)*module
				box := draw.Span(draw.Um(quietZone+from)*module, top-module, draw.Um(quietZone+x)*module, top)
				page.Items = append(page.Items, draw.Rect(box, draw.Pen{}, draw.Fill{On: true, Color: draw.Black}))
			}
		}
	}
	var b bytes.Buffer
	err = svg.Write(&b, page, svg.Options{Inline: true, Fluid: true, Sheet: true})
	return template.HTML(b.String()), err
}

// Terminal draws a link's code with half blocks, dark on light whatever the colors of the terminal.
func Terminal(link string) (string, error) {
	c, err := code(link)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	for y := -quietZone; y < c.Size+quietZone; y += 2 {
		b.WriteString("\x1b[30;107m")
		for x := -quietZone; x < c.Size+quietZone; x++ {
			b.WriteString([...]string{" ", "▀", "▄", "█"}[bit(c.Black(x, y))+2*bit(c.Black(x, y+1))])
		}
		b.WriteString("\x1b[0m\n")
	}
	return b.String(), nil
}

func bit(b bool) int {
	if b {
		return 1
	}
	return 0
}
