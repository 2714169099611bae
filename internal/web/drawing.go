package web

import (
	"bytes"
	"html/template"

	"dryfit/internal/draw"
	"dryfit/internal/render/svg"
)

// drawn writes a drawing to stand within a page. The writer escapes every text of the user's.
func drawn(p draw.Page, prefix string) (template.HTML, error) {
	var b bytes.Buffer
	err := svg.Write(&b, p, svg.Options{Inline: true, Fluid: true, Sheet: true, Prefix: prefix})
	return template.HTML(b.String()), err
}
