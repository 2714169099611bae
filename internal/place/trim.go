package place

import (
	"dryfit/internal/document"
	"dryfit/internal/space"
)

// trims adds the envelopes of what trim stands before a wall: the legs of casings, and baseboards.
func (p *placer) trims() {
	for _, t := range p.doc.Trim {
		stock, ok := p.doc.StockNamed(t.Stock.Text)
		if !ok || !stock.Thick.Known || !stock.Width.Known {
			continue
		}
		for _, w := range p.out.Walls {
			switch t.Kind {
			case document.Casing:
				p.casing(w, t, stock)
			case document.Baseboard:
				p.baseboard(w, t, stock)
			}
		}
	}
}

// casing: a leg on each side of an opening, from the reveal outward, over the opening's height.
func (p *placer) casing(w Wall, t document.Trim, stock document.Stock) {
	for _, o := range w.Face.Openings {
		if !names(t.Round, o.Name) {
			continue
		}
		reveal := t.Reveal.Or(0)
		for _, leg := range []struct {
			name string
			x    space.Span
		}{
			{"left", space.Span{Lo: o.Rect.Min.X - reveal - stock.Width.V, Hi: o.Rect.Min.X - reveal}},
			{"right", space.Span{Lo: o.Rect.Max.X + reveal, Hi: o.Rect.Max.X + reveal + stock.Width.V}},
		} {
			e := space.Envelope{Name: t.Name + " of " + o.Name + ", " + leg.name, Owner: t.At.Path, At: t.At, Kind: space.Trim, Uses: []string{under(stock.At, "size"), under(o.At, "across"), under(o.At, "up")}}
			p.solid(w.Frame.Box(e, leg.x, space.Span{Lo: max(o.Rect.Min.Y, p.room.FinishedFloor), Hi: o.Rect.Max.Y + stock.Width.V}, space.Span{Lo: 0, Hi: stock.Thick.V}))
		}
	}
}

// baseboard runs along its walls but for doors; what stands there is the scribe's affair.
func (p *placer) baseboard(w Wall, t document.Trim, stock document.Stock) {
	if len(t.Along) > 0 && !names(t.Along, w.Name) {
		return
	}
	b := w.Face.Board.Bounds()
	from := b.Min.X
	put := func(x space.Span) {
		if x.Lo < x.Hi {
			e := space.Envelope{Name: t.Name + " along " + w.Name, Owner: t.At.Path, At: t.At, Kind: space.Trim, Uses: []string{under(stock.At, "size")}}
			p.solid(w.Frame.Box(e, x, space.Span{Lo: p.room.FinishedFloor, Hi: p.room.FinishedFloor + stock.Width.V}, space.Span{Lo: 0, Hi: stock.Thick.V}))
		}
	}
	for _, o := range w.Face.Openings {
		if o.Kind == "door" {
			put(space.Span{Lo: from, Hi: o.Rect.Min.X})
			from = o.Rect.Max.X
		}
	}
	put(space.Span{Lo: from, Hi: b.Max.X})
}

func names(list []document.Name, name string) bool {
	for _, n := range list {
		if n.Text == name {
			return true
		}
	}
	return false
}
