package web

import (
	"fmt"
	"html/template"
	"strconv"

	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
)

// stockCuts is what is cut from sheets, boards and sticks.
type stockCuts struct {
	Buy, Offcuts report.Table
	Lots         []stockLot
	Boards       []report.Table // sheets on the faces that they cover
}

// stockLot is one stock with its drawings and its pieces.
type stockLot struct {
	Name, Words, Kerf string
	Used              []stockUsed
	Pieces            []stockPiece
}

// stockUsed is one sheet, board or stick and the order of its cuts. One that is not drawn here is on the page that Drawn leads to.
type stockUsed struct {
	Name    string
	ID      string
	Drawn   string
	Drawing template.HTML
	Legend  []string
	Steps   report.Table
}

// stockPiece is one piece to tick off.
type stockPiece struct {
	ID, Name, Saw, Finished, Grain, Edging, From, Hash string
	Done                                               bool
}

// stockCuts words the lots; nil where nothing is cut from stock. Of so many drawings, a page of them is drawn.
func (v *view) stockCuts(done map[string]string, page string) (*stockCuts, error) {
	p := v.Plan
	if len(p.Cut.Lots) == 0 {
		return nil, nil
	}
	out := &stockCuts{Buy: report.StockBuy(p), Offcuts: report.Offcuts(p)}
	for _, f := range p.Lining.Faces {
		out.Boards = append(out.Boards, report.Lining(p, f))
	}
	here, _ := strconv.Atoi(page) // no number is the first page
	drawings := 0
	for i, l := range p.Cut.Lots {
		lot := stockLot{Name: l.Stock, Words: report.LotWords(p, l), Kerf: report.KerfOf(p, l), Pieces: stockPieces(p, i, done)}
		for k, u := range l.Used {
			x := stockUsed{Name: report.UsedWords(p, l, u), ID: fmt.Sprintf("stock-%d-%d", i, k), Legend: sheet.Legend(p, l, u), Steps: report.CutSteps(p, l, u)}
			if on := drawings / stockDrawings; on != here {
				x.Drawn = fmt.Sprintf("?drawn=%d#%s", on, x.ID)
			} else if svg, err := drawn(sheet.StockOnScreen(p, l, u), x.ID+"-"); err == nil {
				x.Drawing = svg
			} else {
				return nil, err
			}
			drawings++
			lot.Used = append(lot.Used, x)
		}
		out.Lots = append(out.Lots, lot)
	}
	return out, nil
}

// stockDrawings is how many sheets and sticks one page draws: more would weigh too much for a phone.
const stockDrawings = 12

// stockPieces are the pieces of a lot. A tick is bound to a piece's name and to the size that it is sawn to.
func stockPieces(p plan.Plan, lot int, done map[string]string) []stockPiece {
	var out []stockPiece
	rows, own := report.StockPieces(p, lot).Rows, p
	own.Style = ownStyle(p) // a tick means the same to every reader
	for _, q := range p.Cut.Pieces {
		if q.Lot != lot {
			continue
		}
		r := rows[len(out)]
		s := stockPiece{ID: "stock > " + q.Name, Name: r[0], Saw: r[1], Finished: r[2], Grain: r[3], Edging: r[4], From: r[5]}
		sawn := geom.Rect{Max: geom.Point{X: q.Sawn.Length, Y: q.Sawn.Width}}
		s.Hash = outlineOf(geom.Region{geom.RectRing(sawn, 0, 0, 0, 0)}, report.SawTo(own, p.Cut.Lots[lot], q), "")
		s.Done = stands(done[s.ID], s.Hash)
		out = append(out, s)
	}
	return out
}

// recutStock: pieces of stock that were ticked and that the plan cuts otherwise now.
func (v *view) recutStock(c *stockCuts, done map[string]string) []said {
	if c == nil {
		return nil
	}
	var out []said
	for _, l := range c.Lots {
		for _, q := range l.Pieces {
			was, ticked := done[q.ID]
			if !ticked || q.Done {
				continue
			}
			var found diag.List
			found.Add(diag.Look, "piece-recut", diag.Place{Path: l.Name}, "{0}: cut to {1}, now {2}", "measure the piece that is there; use it where it fits, or cut it anew", diag.T(q.Name), diag.T(orUnknown(cutTo(was))), diag.T(q.Saw))
			out = append(out, v.say(found[0]))
		}
	}
	return out
}
