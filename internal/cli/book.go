package cli

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"sync"

	"dryfit/internal/draw"
	"dryfit/internal/export"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
	"dryfit/internal/render/pdf"
	"dryfit/internal/render/png"
	"dryfit/internal/render/svg"
	"dryfit/internal/sheet"
)

// made is one file or group of files that was written.
type made struct{ name, what string }

// pngDPI is fine enough to read 1.8 mm lettering on a screen.
const pngDPI = 150

// writeBook writes every format of a plan into a folder and says what it wrote, as far as it came.
func writeBook(ctx context.Context, p plan.Plan, src []byte, dir string, paper sheet.Paper, step func(string)) ([]made, error) {
	step("look for what mends")
	mends, err := mend.Make(ctx, p.Name, src, p, mend.Options{})
	if err != nil {
		return nil, err
	}
	step("draw the sheets")
	pages := sheet.MendedBook(p, mends, paper)
	var out []made
	for _, part := range []struct {
		made
		write func() error
	}{
		{made{"book.pdf", fmt.Sprintf("%d pages, to print at 100 %%", len(pages))}, func() error {
			return writeWith(filepath.Join(dir, "book.pdf"), func(w io.Writer) error {
				return pdf.Write(w, pages, pdf.Meta{Title: p.Name, Subject: "revision " + p.Revision})
			})
		}},
		{made{"sheets/*.svg, *.png", "each page as a drawing and as a picture"}, func() error {
			return writeSheets(ctx, pages, filepath.Join(dir, "sheets"), step)
		}},
		{made{"pieces.csv", "every piece with its cut"}, func() error {
			return writeFile(filepath.Join(dir, "pieces.csv"), export.PiecesCSV(p))
		}},
		{made{"checks.csv", "every clearance and connection"}, func() error {
			return writeFile(filepath.Join(dir, "checks.csv"), export.ChecksCSV(p))
		}},
		{made{"stock.csv", "every piece of a sheet, board or stick"}, func() error {
			return writeFile(filepath.Join(dir, "stock.csv"), export.StockCSV(p))
		}},
		{made{"wood.csv", "every part of wood with what is done to it"}, func() error {
			return writeFile(filepath.Join(dir, "wood.csv"), export.WoodCSV(p))
		}},
		{made{"order.csv", "what to buy, a row for each pack"}, func() error {
			return writeFile(filepath.Join(dir, "order.csv"), export.OrderCSV(p))
		}},
		{made{"order.xlsx", "the order and what it was reckoned from"}, func() error {
			b, err := export.OrderXLSX(p)
			if err != nil {
				return err
			}
			return writeFile(filepath.Join(dir, "order.xlsx"), b)
		}},
		{made{"days.csv", "every job with its days"}, func() error {
			return writeFile(filepath.Join(dir, "days.csv"), export.DaysCSV(p))
		}},
		{made{"days.ics", "the days for a calendar"}, func() error {
			return writeFile(filepath.Join(dir, "days.ics"), export.Calendar(p))
		}},
		{made{"plan.json", "the whole plan for other programs"}, func() error {
			return writeFile(filepath.Join(dir, "plan.json"), export.JSON(p))
		}},
	} {
		step("write " + part.name)
		if err := part.write(); err != nil {
			return out, err
		}
		out = append(out, part.made)
	}
	return out, nil
}

// mostAtOnce bounds the pictures in memory: one takes some 15 MB.
const mostAtOnce = 4

// writeSheets writes each page as SVG and PNG, as many at a time as there are processors, and removes pages of an
// earlier plan that are no longer there.
func writeSheets(ctx context.Context, pages []draw.Page, dir string, step func(string)) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	kept := map[string]bool{}
	errs := make([]error, len(pages))
	slots := make(chan struct{}, min(mostAtOnce, runtime.GOMAXPROCS(0)))
	var all sync.WaitGroup
	for i, page := range pages {
		name := sheetName(i, len(pages), page)
		kept[name+".svg"], kept[name+".png"] = true, true
		slots <- struct{}{}
		step(fmt.Sprintf("draw sheet %d of %d", i+1, len(pages)))
		all.Go(func() {
			defer func() { <-slots }()
			if errs[i] = ctx.Err(); errs[i] == nil {
				errs[i] = writeSheet(filepath.Join(dir, name), page)
			}
		})
	}
	all.Wait()
	if err := errors.Join(errs...); err != nil {
		return err
	}
	return removeOthers(dir, kept)
}

// sheetName numbers a page with as many digits as the last one has, so that a folder lists them in order.
func sheetName(i, of int, page draw.Page) string {
	return fmt.Sprintf("%0*d-%s", max(2, len(strconv.Itoa(of))), i+1, sheet.FileName(page.Title))
}

func writeSheet(stem string, page draw.Page) error {
	var b bytes.Buffer
	if err := svg.Write(&b, page, svg.Options{}); err != nil {
		return err
	}
	if err := writeFile(stem+".svg", b.Bytes()); err != nil {
		return err
	}
	return writeWith(stem+".png", func(w io.Writer) error { return png.Write(w, page, pngDPI) })
}

// removeOthers removes our own numbered sheets that this plan did not write; anything else stays.
func removeOthers(dir string, kept map[string]bool) error {
	for _, pattern := range []string{"[0-9][0-9]-*.*", "[0-9][0-9][0-9]-*.*", "[0-9][0-9][0-9][0-9]-*.*"} {
		old, err := filepath.Glob(filepath.Join(dir, pattern))
		if err != nil {
			return err
		}
		for _, name := range old {
			if ext := filepath.Ext(name); kept[filepath.Base(name)] || ext != ".svg" && ext != ".png" {
				continue
			}
			if err := os.Remove(name); err != nil {
				return err
			}
		}
	}
	return nil
}
