package cut

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/geom"
	"dryfit/internal/money"
	"dryfit/internal/unit"
)

// supply is pieces of stock that are alike: a size that is sold, or what is on hand under one name.
type supply struct {
	name          string // of what is on hand
	onHand        bool
	at            diag.Place
	length, width unit.Length
	count         int // unlimited where it is sold
	price         document.Value[money.Amount]
	trim          unit.Length
	bad           []document.Stretch
}

const unlimited = -1

// supplies lists what there is of a stock: on hand first.
func (m *maker) supplies(s document.Stock) []supply {
	var out []supply
	for _, p := range s.Sale.OnHand {
		if q, ok := m.onHand(s, p); ok {
			out = append(out, q)
		}
	}
	if !s.Sale.Sold.Or(true) {
		return out
	}
	trim := m.trim(s)
	add := func(at diag.Place, l, w unit.Length, p document.Value[money.Amount]) {
		out = append(out, supply{at: at, length: l, width: w, count: unlimited, price: p, trim: trim})
	}
	add(s.At, s.Length.V, s.Width.V, s.Sale.Price)
	for _, o := range s.Sale.Others {
		w := o.Width
		if w == 0 {
			w = s.Width.V
		}
		add(o.At, o.Length, w, o.Price)
	}
	return out
}

// trim is what is lost at the edges of what is bought.
func (m *maker) trim(s document.Stock) unit.Length {
	if s.Sale.Trim.Unknown {
		m.found.Add(diag.Unchecked, "trim-unknown", s.Sale.Trim.At, "the edge trim of {0} is unknown: its sheets are reckoned to their factory edges", "look at an edge, and write what has to come off, or 0", diag.T(s.Name))
	}
	return s.Sale.Trim.V
}

func (m *maker) onHand(s document.Stock, p document.OnHand) (supply, bool) {
	q := supply{name: p.Name, onHand: true, at: p.At, length: p.Length.V, width: p.Width.Or(s.Width.V), count: p.Count.Or(1), bad: merged(p.Bad, p.Length.V)}
	if !p.Length.Known || p.Width.Unknown || p.Count.Unknown {
		m.found.Add(diag.Unchecked, "on-hand-unsized", p.At, "{0}, on hand, is not cut from: its size or count is not known", "measure it", diag.T(p.Name))
		return q, false
	}
	if s.Kind == document.StickStock && q.width != s.Width.V {
		m.found.Add(diag.Stop, "on-hand-section", p.At, "{0}, on hand, is {1} wide, and {2} is {3}", "list it under a stock of its own width", diag.T(p.Name), diag.X(q.width), diag.T(s.Name), diag.X(s.Width.V))
		return q, false
	}
	return q, true
}

// merged sorts bad stretches, joins those that overlap and drops what lies beyond the end.
func merged(bad []document.Stretch, length unit.Length) []document.Stretch {
	var out []document.Stretch
	sorted := slices.Clone(bad)
	slices.SortFunc(sorted, func(a, b document.Stretch) int { return int(a.From - b.From) })
	for _, b := range sorted {
		b.To = min(b.To, length)
		switch last := len(out) - 1; {
		case b.From >= length:
		case last >= 0 && b.From <= out[last].To:
			out[last].To = max(out[last].To, b.To)
		default:
			out = append(out, b)
		}
	}
	return out
}

// clear returns the rectangles that can be cut from: the whole without its trim, or what lies between bad stretches.
func (s supply) clear() []geom.Rect {
	from := s.trim
	var out []geom.Rect
	add := func(to unit.Length) {
		if r := (geom.Rect{Min: geom.Point{X: from, Y: s.trim}, Max: geom.Point{X: to, Y: s.width - s.trim}}); r.W() > 0 && r.H() > 0 {
			out = append(out, r)
		}
	}
	for _, b := range s.bad {
		add(b.From)
		from = max(from, b.To)
	}
	add(s.length - s.trim)
	return out
}
