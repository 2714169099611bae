package cut

import (
	"dryfit/internal/document"
	"dryfit/internal/opt/bar"
	"dryfit/internal/unit"
)

// stickBudget bounds the search for one lot, in steps of opt/bar.
const stickBudget = 4_000

// sticks cuts the kinds out of lengths. What is lost at the ends of a bought stick is to the optimizer two more bad stretches.
func (c *cutter) sticks() {
	p := bar.Problem{Kerf: int64(c.lot.Kerf), Budget: stickBudget}
	for _, k := range c.kinds {
		p.Pieces = append(p.Pieces, bar.Piece{Length: int64(k.length), Count: len(k.pieces)})
	}
	for i, s := range c.sup {
		p.Stocks = append(p.Stocks, bar.Stock{Length: int64(s.length), Price: c.prices.each[i], Count: s.count, Defects: spans(s)})
	}
	r := c.known.packed(p)
	for _, i := range r.Unfit {
		c.tooLarge(c.stock, c.sup, c.kinds[i])
	}
	for _, s := range r.Sticks {
		u := c.use(s.Stock)
		u.Panels = c.runs(c.sup[s.Stock], s.Cuts)
		u.Steps = steps(u.Panels)
	}
	c.lacking(r.Lacking)
	c.verdict(r.Money, r.Lower, r.Proof.By, r.Complete)
}

func spans(s supply) []bar.Span {
	var out []bar.Span
	for _, b := range s.bad {
		out = append(out, bar.Span{From: int64(b.From), To: int64(b.To)})
	}
	if s.trim > 0 {
		out = append(out, bar.Span{To: int64(s.trim)}, bar.Span{From: max(0, int64(s.length-s.trim)), To: int64(s.length)})
	}
	return out
}

// runs divides each clear run of a stick by crosscuts.
func (c *cutter) runs(s supply, cuts []bar.Cut) []Panel {
	var out []Panel
	for _, r := range c.clearRuns(s) {
		run := Panel{Rect: rect(r.From, 0, r.To-r.From, s.width), Piece: NoPiece}
		for _, q := range cuts {
			if at := unit.Length(q.At); at >= r.From && at < r.To {
				p := c.place(q.Piece)
				run.Into = append(run.Into, Panel{Rect: rect(at, 0, c.kinds[q.Piece].length, s.width), Piece: p.piece})
			}
		}
		out = append(out, c.closed(run))
	}
	return out
}

// clearRuns are the stretches of a stick that can be used. A bad stretch narrower than the kerf takes a kerf.
func (c *cutter) clearRuns(s supply) []document.Stretch {
	from := s.trim
	var out []document.Stretch
	add := func(to unit.Length) {
		if to > from {
			out = append(out, document.Stretch{From: from, To: to})
		}
	}
	for _, b := range s.bad {
		add(b.From)
		from = max(from, b.To, b.From+c.lot.Kerf)
	}
	add(s.length - s.trim)
	return out
}

// closed adds what is left behind the last piece of a run, and makes a run that is one piece that piece.
func (c *cutter) closed(run Panel) Panel {
	end := run.Rect.Min.X
	if n := len(run.Into); n > 0 {
		end = run.Into[n-1].Rect.Max.X + c.lot.Kerf
	}
	if run.Rect.Max.X > end {
		rest := Panel{Rect: run.Rect, Piece: NoPiece}
		rest.Rect.Min.X = end
		rest.Keep = rest.Rect.W() >= c.leastKept()
		run.Into = append(run.Into, rest)
	}
	if len(run.Into) == 1 && run.Into[0].Rect == run.Rect {
		return run.Into[0]
	}
	run.Cut = Crosscut
	return run
}
