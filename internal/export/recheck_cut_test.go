package export_test

import (
	"math/big"
)

// readStock is what plan.json says of stock.
type readStock struct {
	Pieces []struct {
		Name         string
		Sawn         struct{ Length, Width rat }
		Lot, From    *int
		Stock, Grain string
	}
	Lots []struct {
		Stock, Kind         string
		Kerf                rat
		Plain, Priced, Best bool
		Money, Least        *rat
		Lacking             []int
		Buy                 []struct {
			Length, Width rat
			Count         int
			Price         *rat
		}
		Used []readUsed
	}
}

type readUsed struct {
	Number              int
	OnHand              string
	Length, Width, Trim rat
	Clear               []readRect
	Panels              []struct {
		Rect         readRect
		Piece        *int
		Turned, Keep bool
	}
	Cuts []struct {
		Way     string
		Panel   readRect
		At, Set rat
	}
}

type readRect struct{ X, Y, Length, Width rat }

func (q readRect) key() string {
	return q.X.String() + " " + q.Y.String() + " " + q.Length.String() + " " + q.Width.String()
}

// sheets saws every sheet by its cuts and finds each piece, of its size, once; sums what is bought and what it costs.
func (r *rechecker) sheets(text topKeys) {
	var p struct{ Stock readStock }
	if err := readKeys(text, &p); err != nil {
		r.complain("stock: %v", err)
		return
	}
	seen := make([]int, len(p.Stock.Pieces))
	for li, l := range p.Stock.Lots {
		bought := 0
		for _, u := range l.Used {
			if u.OnHand == "" {
				bought++
			}
			fallen := r.sawn(l.Stock, u, l.Kerf)
			for _, q := range u.Panels {
				if q.Piece == nil {
					continue
				}
				piece := p.Stock.Pieces[*q.Piece]
				seen[*q.Piece]++
				w, h := piece.Sawn.Length, piece.Sawn.Width
				if q.Turned {
					w, h = h, w
				}
				if !fallen[q.Rect.key()] || q.Rect.Length.Cmp(w.Rat) != 0 || l.Kind != "stick" && q.Rect.Width.Cmp(h.Rat) != 0 {
					r.complain("%s: %s does not fall off %d in its size", l.Stock, piece.Name, u.Number)
				}
				if piece.Lot == nil || *piece.Lot != li || *piece.From != u.Number {
					r.complain("%s is said to come from elsewhere", piece.Name)
				}
			}
		}
		cost := zero()
		for _, b := range l.Buy {
			bought -= b.Count
			if b.Price != nil {
				cost.Add(cost, new(big.Rat).Mul(b.Price.Rat, big.NewRat(int64(b.Count), 1)))
			}
		}
		if bought != 0 {
			r.complain("%s: what is cut is not what is bought", l.Stock)
		}
		if l.Priced && (l.Money == nil || l.Least == nil || cost.Cmp(l.Money.Rat) != 0 || l.Least.Cmp(cost) > 0) {
			r.complain("%s: it costs %v", l.Stock, cost)
		}
	}
	for i, n := range seen {
		if q := p.Stock.Pieces[i]; (n == 1) != (q.Lot != nil) || n > 1 {
			r.complain("%s is cut %d times", q.Name, n)
		}
	}
}

// sawn makes the cuts one after the other.
func (r *rechecker) sawn(stock string, u readUsed, kerf rat) map[string]bool {
	free := map[string]bool{}
	for _, c := range u.Clear {
		free[c.key()] = true
	}
	for i, c := range u.Cuts {
		if !free[c.Panel.key()] {
			r.complain("%s %d: cut %d divides what is not there", stock, u.Number, i+1)
		}
		delete(free, c.Panel.key())
		low, high := c.Panel, c.Panel
		behind := zero().Add(c.Set.Rat, kerf.Rat)
		if c.Way == "crosscut" {
			low.Length = c.Set
			high.X, high.Length = rat{zero().Add(c.Panel.X.Rat, behind)}, rat{zero().Sub(c.Panel.Length.Rat, behind)}
		} else {
			low.Width = c.Set
			high.Y, high.Width = rat{zero().Add(c.Panel.Y.Rat, behind)}, rat{zero().Sub(c.Panel.Width.Rat, behind)}
		}
		free[low.key()] = true
		if high.Length.Sign() > 0 && high.Width.Sign() > 0 {
			free[high.key()] = true
		}
	}
	return free
}
