package cut

import (
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/opt/nest"
	"dryfit/internal/unit"
)

// sheetBudget bounds the search for one lot, in steps of opt/nest.
const sheetBudget = 2_000

// sheets nests the kinds in sheets or boards.
func (c *cutter) sheets() {
	p, from := c.nestProblem()
	r := c.known.nested(p)
	for _, i := range r.Unfit {
		c.tooLarge(c.stock, c.sup, c.kinds[i])
	}
	for _, b := range r.Boards {
		f := from[b.Sheet]
		u := c.use(f.supply)
		u.From = f.off
		u.Size.Length, u.Bad = f.length(c.sup[f.supply]), nil
		root := c.panel(b.Clear)
		u.Panels = append(u.Panels, root)
		u.Steps = steps(u.Panels)
	}
	c.lacking(r.Lacking)
	c.verdict(r.Money, r.Lower, r.Proof.By, r.Complete)
}

// section is what a sheet of the optimizer stands for: a supply, or the part of it between two bad stretches.
type section struct {
	supply int
	off    unit.Length
	to     unit.Length
	whole  bool
}

func (f section) length(s supply) unit.Length {
	if f.whole {
		return s.length
	}
	return f.to - f.off
}

// nestProblem puts the lot in the optimizer's terms. Bad stretches of a board divide it: what lies between is a sheet of its own.
func (c *cutter) nestProblem() (nest.Problem, []section) {
	p := nest.Problem{Kerf: int64(c.lot.Kerf), First: firstCut[c.lot.First], LeastSide: int64(c.leastKept()), Budget: sheetBudget}
	for _, k := range c.kinds {
		n := len(k.pieces)
		if k.joined {
			n = 1
		}
		p.Parts = append(p.Parts, nest.Part{W: int64(k.length), H: int64(k.width), Count: n, Turns: k.turns})
	}
	var from []section
	for i, s := range c.sup {
		if s.length <= 0 || s.width <= 0 {
			continue // what it measures is not known, which is told where it is read
		}
		if len(s.bad) == 0 {
			p.Sheets = append(p.Sheets, nest.Sheet{W: int64(s.length), H: int64(s.width), Price: c.prices.each[i], Count: s.count, Trim: int64(s.trim)})
			from = append(from, section{supply: i, whole: true})
			continue
		}
		for _, r := range s.clear() {
			p.Sheets = append(p.Sheets, nest.Sheet{W: int64(r.W()), H: int64(r.H()), Count: s.count})
			from = append(from, section{supply: i, off: r.Min.X, to: r.Max.X})
		}
	}
	return p, from
}

var firstCut = map[document.FirstCut]nest.Cut{document.EitherFirst: nest.Whole, document.RipFirst: nest.Rip, document.CrosscutFirst: nest.Crosscut}

var wayOf = map[nest.Cut]Way{nest.Whole: Whole, nest.Rip: Rip, nest.Crosscut: Crosscut}

func rect(x, y, w, h unit.Length) geom.Rect {
	return geom.Rect{Min: geom.Point{X: x, Y: y}, Max: geom.Point{X: x + w, Y: y + h}}
}

// panel names the pieces of the optimizer's tree.
func (c *cutter) panel(q nest.Panel) Panel {
	out := Panel{Rect: rect(unit.Length(q.X), unit.Length(q.Y), unit.Length(q.W), unit.Length(q.H)), Cut: wayOf[q.Cut], Piece: NoPiece}
	switch {
	case q.Part != nest.NoPart && c.kinds[q.Part].joined:
		return c.joined(out, c.kinds[q.Part], q.Turned)
	case q.Part != nest.NoPart:
		p := c.place(q.Part)
		out.Piece, out.Turned = p.piece, q.Turned != p.swapped
	case q.Cut == nest.Whole:
		out.Keep = min(out.Rect.W(), out.Rect.H()) >= c.leastKept()
	}
	for _, k := range q.Into {
		child := c.panel(k)
		if child.Cut == out.Cut {
			out.Into = append(out.Into, child.Into...) // a joined panel that is cut the same way
			continue
		}
		out.Into = append(out.Into, child)
	}
	return out
}

// joined divides the panel of a match.
func (c *cutter) joined(out Panel, k kind, turned bool) Panel {
	out.Cut = k.way
	if turned {
		out.Cut = Rip + Crosscut - k.way
	}
	for _, p := range k.pieces {
		c.settle(p)
		l, w := c.lying(p)
		if turned {
			l, w = w, l
		}
		x, y := out.Rect.Min.X+p.at, out.Rect.Min.Y
		if out.Cut == Rip {
			x, y = out.Rect.Min.X, out.Rect.Min.Y+p.at
		}
		out.Into = append(out.Into, Panel{Rect: rect(x, y, l, w), Piece: p.piece, Turned: turned != p.swapped})
	}
	return out
}

// lacking lists the pieces that are left over.
func (c *cutter) lacking(counts []int) {
	for i, n := range counts {
		k := c.kinds[i]
		if k.joined && n > 0 {
			n = len(k.pieces)
		}
		for _, p := range k.pieces[len(k.pieces)-n:] {
			c.lot.Lacking = append(c.lot.Lacking, p.piece)
		}
	}
}
