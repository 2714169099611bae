package export

import (
	"bytes"
	"encoding/csv"
	"fmt"

	stockcut "dryfit/internal/cut"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// cutting is what is cut from stock.
type cutting struct {
	Pieces []woodPiece `json:"pieces" doc:"every single piece of a part or kit, those alike each by itself"`
	Lots   []lot       `json:"lots" doc:"by stock"`
}

// woodPiece is one thing to saw out.
type woodPiece struct {
	Name     string `json:"name" doc:"what it belongs to, its own name, its number among those alike"`
	At       place  `json:"at" doc:"in the document"`
	Finished solid  `json:"finished" doc:"size when it is done, edging included"`
	Sawn     solid  `json:"sawn" doc:"size to which it is sawn out"`
	Grain    string `json:"grain" doc:"how the grain runs: along its length, across it, or any way"`
	Stock    string `json:"stock" doc:"the user's name of it"`
	Lot      *int   `json:"lot,omitempty" doc:"index among the lots; absent: no stock is found for it, see the findings"`
	From     *int   `json:"from,omitempty" doc:"number of the sheet, board or stick of that lot, from 1; absent with the lot, and where none is left for it"`
}

// solid is three sizes.
type solid struct {
	Length unit.Length `json:"length" doc:"along x in the part's own frame"`
	Width  unit.Length `json:"width" doc:"along y"`
	Thick  unit.Length `json:"thick" doc:"along z"`
}

// lot is all that is cut from one stock.
type lot struct {
	Stock   string      `json:"stock" doc:"the user's name of it"`
	At      place       `json:"at" doc:"in the document"`
	Kind    string      `json:"kind" doc:"sheet, board or stick"`
	Kerf    unit.Length `json:"kerf" doc:"lost with each cut"`
	Plain   bool        `json:"plain" doc:"it has no grain, so pieces may lie either way"`
	Used    []used      `json:"used" doc:"what is cut, in its order"`
	Buy     []stockBuy  `json:"buy" doc:"by size"`
	Lacking []int       `json:"lacking" doc:"indices of pieces that no stock is left for"`
	Priced  bool        `json:"priced" doc:"every price is known; else the least area, or length of stick, was looked for"`
	Money   *price      `json:"money,omitempty" doc:"what is bought costs; absent: not known"`
	Least   *price      `json:"least,omitempty" doc:"proven: no way costs less; absent: not known"`
	Proof   string      `json:"proof" doc:"what proves it"`
	Best    bool        `json:"best" doc:"proven: nothing costs less, and at that cost no larger offcut can stay"`
}

// stockBuy is a number of one size.
type stockBuy struct {
	Length unit.Length `json:"length" doc:"of one"`
	Width  unit.Length `json:"width" doc:"of one"`
	Count  int         `json:"count" doc:"how many"`
	Price  *price      `json:"price,omitempty" doc:"of one; absent: not known"`
}

// used is one sheet, board or stick.
type used struct {
	Number int         `json:"number" doc:"in its lot, from 1"`
	OnHand string      `json:"onHand,omitempty" doc:"the user's name of the piece on hand; absent: bought"`
	Begins unit.Length `json:"begins" doc:"where it begins along a piece on hand that has bad stretches"`
	Length unit.Length `json:"length" doc:"along x, which is along its grain"`
	Width  unit.Length `json:"width" doc:"along y"`
	Trim   unit.Length `json:"trim" doc:"cut off at each edge, or each end of a stick, first"`
	Clear  []panelRect `json:"clear" doc:"what can be cut from: without the trim, between bad stretches"`
	Panels []panel     `json:"panels" doc:"what it falls into: pieces, what is kept, waste"`
	Cuts   []sawCut    `json:"cuts" doc:"in the order in which the saw makes them"`
}

// panelRect is a rectangle of a sheet or stick.
type panelRect struct {
	X      unit.Length `json:"x" doc:"left edge"`
	Y      unit.Length `json:"y" doc:"front edge"`
	Length unit.Length `json:"length" doc:"along x"`
	Width  unit.Length `json:"width" doc:"along y"`
}

func (panelRect) shared() string { return "A rectangle of a sheet, board or stick, in its own frame" }

// panel is one rectangle that is not divided further.
type panel struct {
	Rect   panelRect `json:"rect" doc:"where it lies"`
	Piece  *int      `json:"piece,omitempty" doc:"index of the piece; absent: kept or waste"`
	Turned bool      `json:"turned" doc:"the piece's own length lies across the stock"`
	Keep   bool      `json:"keep" doc:"an offcut worth keeping"`
}

// sawCut is one cut from edge to edge.
type sawCut struct {
	Number int         `json:"number" doc:"from 1"`
	Way    string      `json:"way" doc:"rip, along x, or crosscut"`
	Panel  panelRect   `json:"panel" doc:"what it divides"`
	At     unit.Length `json:"at" doc:"where the kerf begins: x of a crosscut, y of a rip"`
	Set    unit.Length `json:"set" doc:"from the panel's low edge to the kerf"`
}

func cuttingOf(p plan.Plan) cutting {
	return cutting{
		Pieces: list(p.Cut.Pieces, func(q stockcut.Piece) woodPiece { return woodPieceOf(p, q) }),
		Lots:   list(p.Cut.Lots, lotOf),
	}
}

func woodPieceOf(p plan.Plan, q stockcut.Piece) woodPiece {
	out := woodPiece{Name: q.Name, At: placeOf(q.Part.At), Finished: solid(q.Part.Size), Sawn: solid(q.Sawn), Grain: q.Part.Grain.String(), Stock: q.Part.Stock}
	if q.Lot >= 0 {
		number := p.Cut.Lots[q.Lot].Used[q.Used].Number
		out.Lot, out.From = &q.Lot, &number
	}
	return out
}

func lotOf(l stockcut.Lot) lot {
	out := lot{Stock: l.Stock, At: placeOf(l.At), Kind: report.UsedKind(l), Kerf: l.Kerf, Plain: l.Plain, Priced: l.Verdict.Priced, Proof: l.Verdict.By, Best: l.Verdict.Best,
		Used: list(l.Used, usedOf), Lacking: list(l.Lacking, func(i int) int { return i })}
	out.Buy = list(l.Buy, func(b stockcut.Purchase) stockBuy {
		s := stockBuy{Length: b.Length, Width: b.Width, Count: b.Count}
		if b.Priced {
			each := price(b.Price)
			s.Price = &each
		}
		return s
	})
	if l.Verdict.Priced {
		money, least := price(l.Verdict.Money), price(l.Verdict.Lower)
		out.Money, out.Least = &money, &least
	}
	return out
}

func usedOf(u stockcut.Used) used {
	out := used{Number: u.Number, Begins: u.From, Length: u.Size.Length, Width: u.Size.Width, Trim: u.Trim}
	if u.OnHand {
		out.OnHand = u.Name
	}
	out.Clear = list(u.Panels, func(q stockcut.Panel) panelRect { return panelRectOf(q.Rect) })
	out.Panels = list(report.Leaves(u), func(q stockcut.Panel) panel {
		v := panel{Rect: panelRectOf(q.Rect), Turned: q.Turned, Keep: q.Keep}
		if q.Piece != stockcut.NoPiece {
			v.Piece = &q.Piece
		}
		return v
	})
	out.Cuts = list(u.Steps, func(s stockcut.Step) sawCut {
		return sawCut{s.Number, s.Way.String(), panelRectOf(s.Panel), s.At, s.Size}
	})
	return out
}

func panelRectOf(r geom.Rect) panelRect { return panelRect{r.Min.X, r.Min.Y, r.W(), r.H()} }

// StockCSV returns stock.csv: one row for each piece that is cut from a sheet, board or stick. It is UTF-8 after RFC 4180; sizes
// are in millimetres.
func StockCSV(p plan.Plan) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	row := func(cells ...string) {
		if err := w.Write(cells); err != nil {
			panic(err) // a buffer in memory takes everything
		}
	}
	row("piece", "stock", "from", "saw length (mm)", "saw width (mm)", "length (mm)", "width (mm)", "thickness (mm)", "grain", "edging")
	for _, q := range p.Cut.Pieces {
		from, grain := "", ""
		if q.Lot >= 0 {
			l := p.Cut.Lots[q.Lot]
			from, grain = fmt.Sprintf("%s %d", report.UsedKind(l), l.Used[q.Used].Number), report.GrainWords(l, q.Part)
		}
		row(guarded(q.Name), guarded(q.Part.Stock), from, q.Sawn.Length.JSON(), q.Sawn.Width.JSON(), q.Part.Size.Length.JSON(), q.Part.Size.Width.JSON(), q.Part.Size.Thick.JSON(), grain, report.BandWords(q.Part))
	}
	w.Flush()
	return b.Bytes()
}
