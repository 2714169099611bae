package web

import (
	"bytes"
	"context"
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/export"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
	"dryfit/internal/render/pdf"
	"dryfit/internal/render/svg"
	"dryfit/internal/sheet"
)

var bookPage = pageOf{name: "book", tab: "Book", fill: book, whole: true}

// bound is the book: its sheets and what can be taken away.
type bound struct {
	Sheets []leaf
	Files  []file
	Faces  []string
}

type leaf struct {
	N              int
	Title, Address string
	Wide           bool
}

type file struct{ Name, Says string }

func book(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{}); err != nil {
		return nil, err
	}
	b := bound{Files: []file{
		{"book.pdf", "all sheets, to print at 100 %"},
		{"wall.html", "the walls as one file that works on a phone without this machine"},
		{"pieces.csv", "every piece with its cut"},
		{"checks.csv", "every clearance and connection"},
		{"stock.csv", "every piece of a sheet, board or stick"},
		{"wood.csv", "every part of wood with what is done to it"},
		{"order.csv", "what to buy, a row for each pack"},
		{"order.xlsx", "the order and what it was reckoned from, as a spreadsheet"},
		{"days.ics", "the days for a calendar"},
		{"days.csv", "every job with its days"},
		{"plan.json", "the whole plan for other programs"},
		{"room.yaml", "the room document itself"},
	}}
	for i, p := range v.sheets() {
		b.Sheets = append(b.Sheets, leaf{i + 1, p.Title, fmt.Sprintf("%s/sheet/%d?at=%d", v.Address(), i+1, v.Head), p.W > p.H})
	}
	answer := fmt.Sprintf("%d sheets, drawn from revision %s of the document.", len(b.Sheets), v.Plan.Revision)
	return &frame{Title: "Book", Question: "What hangs on the wall and lies at the saw?", Answer: answer, Body: b}, nil
}

// sheets draws the book in the document's own units.
func (v *view) sheets() []draw.Page {
	return v.server.plans.book(v.Text, func() []draw.Page {
		m, err := mend.Make(context.WithoutCancel(v.ctx), "room.yaml", v.Text, v.Plan, mend.Options{}) // others may want it if who asked goes away
		if err != nil {
			panic("web: " + err.Error()) // only a canceled context is one
		}
		return sheet.MendedBook(v.own(), m, sheet.Paper{})
	})
}

// sheet is one sheet as a drawing.
func (s *Server) sheet(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	if err := v.make(plan.Options{}); err != nil {
		return err
	}
	pages := v.sheets()
	n, err := strconv.Atoi(r.PathValue("n"))
	if err != nil || n < 1 || n > len(pages) {
		return fault{http.StatusNotFound, "The book has no such sheet."}
	}
	w.Header().Set("Cache-Control", "private, max-age=3600")
	return sendDrawing(w, r, pages[n-1])
}

func sendDrawing(w http.ResponseWriter, r *http.Request, p draw.Page) error {
	var b bytes.Buffer
	if err := svg.Write(&b, p, svg.Options{}); err != nil {
		return err
	}
	// A drawing that is opened by itself may carry the letter spacing of its own.
	w.Header().Set("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'")
	return send(w, r, "image/svg+xml", http.StatusOK, b.Bytes())
}

// download gives one of the files.
func (s *Server) download(w http.ResponseWriter, r *http.Request) error {
	v, err := s.view(r)
	if err != nil {
		return err
	}
	name := r.PathValue("file")
	kind, b, err := v.file(name, r)
	if err != nil {
		return err
	}
	stem := sheet.FileName(v.Name())
	w.Header().Set("Content-Disposition", `attachment; filename="`+stem+"-"+name+`"`)
	return send(w, r, kind, http.StatusOK, b)
}

func (v *view) file(name string, r *http.Request) (kind string, b []byte, err error) {
	if name == "room.yaml" {
		return "application/yaml; charset=utf-8", v.Text, nil
	}
	if err := v.make(plan.Options{}); err != nil {
		return "", nil, err
	}
	switch name {
	case "book.pdf":
		var out bytes.Buffer
		err = pdf.Write(&out, v.sheets(), pdf.Meta{Title: v.Name(), Subject: "revision " + v.Plan.Revision})
		return "application/pdf", out.Bytes(), err
	case "pieces.csv":
		return "text/csv; charset=utf-8", export.PiecesCSV(v.own()), nil
	case "checks.csv":
		return "text/csv; charset=utf-8", export.ChecksCSV(v.own()), nil
	case "stock.csv":
		return "text/csv; charset=utf-8", export.StockCSV(v.own()), nil
	case "wood.csv":
		return "text/csv; charset=utf-8", export.WoodCSV(v.own()), nil
	case "order.csv":
		return "text/csv; charset=utf-8", export.OrderCSV(v.own()), nil
	case "order.xlsx":
		b, err = export.OrderXLSX(v.own())
		return "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", b, err
	case "days.csv":
		return "text/csv; charset=utf-8", export.DaysCSV(v.own()), nil
	case "days.ics":
		return "text/calendar; charset=utf-8", export.Calendar(v.own()), nil
	case "plan.json":
		return "application/json", export.JSON(v.own()), nil
	case "wall.html":
		b, err = v.alone()
		return "text/html; charset=utf-8", b, err
	}
	return "", nil, fault{http.StatusNotFound, "There is no file " + strings.ToValidUTF8(name, "?") + "."}
}
