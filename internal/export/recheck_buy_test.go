package export_test

import (
	"math"
	"math/big"
)

// rat is an exact decimal.
type rat struct{ *big.Rat }

func (r *rat) UnmarshalJSON(b []byte) error {
	r.Rat = new(big.Rat)
	return r.Rat.UnmarshalText(b)
}

func zero() *big.Rat { return new(big.Rat) }

// readAmount is an amount by the one key that it has.
type readAmount map[string]rat

// one gives the key and the number.
func (a readAmount) one() (string, *big.Rat) {
	for k, v := range a {
		if len(a) == 1 {
			return k, v.Rat
		}
	}
	return "", zero()
}

// grain is how fine an amount of a kind is: a piece, 1/1,600,000 g, a cubic millimetre, a square of the grid, the grid.
var grain = map[string]*big.Rat{"pieces": big.NewRat(1, 1), "kilograms": big.NewRat(1, 1_600_000_000), "liters": big.NewRat(1, 1_000_000), "area": big.NewRat(1, mm*mm), "length": big.NewRat(1, mm)}

type (
	readNeeds struct {
		Lines []struct {
			What, Good string
			Parts      []struct{ Takes readAmount }
			Waste      rat
			Need       readAmount
			Missing    string
		}
		Faces []readBed
	}
	readBed struct {
		Face   string
		Trowel struct {
			Notch               string
			Width, Depth, Tooth num
			Held                *degrees
		}
		Comb, Skim          num
		Area, JointsArea    square
		Hollow, Bed, Joints rat
		Contact             *rat
	}
	readPacks struct {
		Size       readAmount
		Count      int
		Price, Sum *rat
	}
	readOrder struct {
		Currency string
		Lines    []struct {
			What, Good, Supplier string
			Tile                 bool
			Need, Have, Left     readAmount
			Packs                []readPacks
			Cost                 *rat
		}
		Trips []struct {
			Supplier        string
			Goods, Delivery rat
			Free, Delivered bool
		}
		Goods, Delivery, Tax, Total *rat
		Whole                       bool
		Unpriced                    []string
	}
)

// buying checks that parts add up to needs, that packs hold them, and that the sums of the order are those of its lines.
func (r *rechecker) buying(text topKeys) {
	var p struct {
		Takeoff readNeeds
		Order   readOrder
	}
	if err := readKeys(text, &p); err != nil {
		r.complain("takeoff and order: %v", err)
		return
	}
	r.needs(p.Takeoff)
	for _, f := range p.Takeoff.Faces {
		r.bed(f)
	}
	r.packs(p.Order)
	r.sums(p.Order)
}

// needs: a need is its parts and the waste, to the next grain.
func (r *rechecker) needs(n readNeeds) {
	for _, l := range n.Lines {
		kind, sum := "", zero()
		for _, x := range l.Parts {
			k, v := x.Takes.one()
			kind = k
			sum.Add(sum, v)
		}
		k, need := l.Need.one()
		if l.Missing != "" || len(l.Need) == 0 {
			continue
		}
		sum.Mul(sum, zero().Add(big.NewRat(1, 1), l.Waste.Rat))
		over := zero().Sub(need, sum)
		if k != kind || over.Sign() < 0 || over.Cmp(grain[k]) >= 0 {
			r.complain("%s: its parts with the waste are %s %s, the need is said to be %s", l.What, sum.FloatString(6), kind, need.FloatString(6))
		}
	}
}

// bed: the notch's geometry gives the comb; comb, skim and hollows the bed; region less pieces the joints.
func (r *rechecker) bed(f readBed) {
	if got := combOf(f); math.Abs(got-f.Comb.mm()) > 1e-3 {
		r.complain("%s: its trowel leaves %.4f mm, said to be %.4f", f.Face, got, f.Comb.mm())
	}
	tile, joints := 0.0, 0.0
	for _, w := range r.plan.Tiling {
		if w.Face != f.Face {
			continue
		}
		for _, z := range w.Fields {
			pieces := 0.0
			for _, p := range z.Pieces {
				pieces += float64(p.Area) / mm / mm
			}
			tile += pieces
			joints += shapeOf(z.Region).area() - pieces + hardJoints(w, z)
		}
	}
	if got := float64(f.Area) / mm / mm; math.Abs(got-tile) > 1 {
		r.complain("%s: its tile covers %.1f mm², said to be %.1f", f.Face, tile, got)
	}
	if got := float64(f.JointsArea) / mm / mm; math.Abs(got-joints) > 0.5 {
		r.complain("%s: its joints cover %.1f mm², said to be %.1f", f.Face, joints, got)
	}
	hollow, _ := f.Hollow.Float64()
	bed, _ := f.Bed.Float64()
	if want := tile*(f.Comb.mm()+f.Skim.mm())/1e6 + hollow; math.Abs(want-bed) > 1e-5 {
		r.complain("%s: its bed takes %.5f L, said to be %.5f", f.Face, want, bed)
	}
}

func combOf(f readBed) float64 {
	w, d, pitch := f.Trowel.Width.mm(), f.Trowel.Depth.mm(), f.Trowel.Width.mm()+f.Trowel.Tooth.mm()
	section := w * d
	switch f.Trowel.Notch {
	case "V":
		section /= 2
	case "U":
		section = w*(d-w/2) + math.Pi*w*w/8
	}
	if f.Trowel.Held != nil {
		section *= math.Sin(float64(*f.Trowel.Held) / 1e6 * math.Pi / 180)
	}
	return section / pitch
}

// hardJoints is the area of the joints along a field's outline that are no sealant's, in mm².
func hardJoints(w readWork, z readField) float64 {
	sum := 0.0
	for _, ring := range z.Region {
		for i, v := range ring {
			o := ring[(i+1)%len(ring)]
			for _, e := range w.Edges {
				if e.Label == v.Edge && !e.Soft {
					sum += math.Hypot(float64(o.X-v.X), float64(o.Y-v.Y)) / mm * e.Joint.mm()
				}
			}
		}
	}
	return sum
}

// packs: what is bought holds what is needed, and the rest is left.
func (r *rechecker) packs(o readOrder) {
	tiles := 0
	for _, l := range o.Lines {
		if l.Tile {
			if _, n := l.Need.one(); tiles < len(r.plan.Goods) && n.Cmp(big.NewRat(int64(r.plan.Goods[tiles].Buy), 1)) != 0 {
				r.complain("%s: the order needs %s tiles, the goods %d", l.What, n.FloatString(0), r.plan.Goods[tiles].Buy)
			}
			tiles++
		}
		if len(l.Packs) == 0 {
			continue
		}
		have, cost := zero(), zero()
		for _, k := range l.Packs {
			_, size := k.Size.one()
			n := big.NewRat(int64(k.Count), 1)
			have.Add(have, zero().Mul(size, n))
			if k.Price == nil || k.Sum == nil {
				continue
			}
			cost.Add(cost, k.Sum.Rat)
			if zero().Mul(k.Price.Rat, n).Cmp(k.Sum.Rat) != 0 {
				r.complain("%s: %d packs at %s are said to cost %s", l.What, k.Count, k.Price.FloatString(2), k.Sum.FloatString(2))
			}
		}
		_, said := l.Have.one()
		_, need := l.Need.one()
		_, left := l.Left.one()
		if have.Cmp(said) != 0 || zero().Sub(have, need).Cmp(left) != 0 || left.Sign() < 0 {
			r.complain("%s: its packs hold %s of %s, said to be %s with %s left", l.What, have.FloatString(4), need.FloatString(4), said.FloatString(4), left.FloatString(4))
		}
		if l.Cost != nil && cost.Cmp(l.Cost.Rat) != 0 {
			r.complain("%s: its packs cost %s, said to be %s", l.What, cost.FloatString(2), l.Cost.FloatString(2))
		}
	}
}

// sums: the totals are those of lines and trips, to the coin.
func (r *rechecker) sums(o readOrder) {
	if o.Currency == "" {
		return
	}
	if o.Goods == nil || o.Delivery == nil || o.Tax == nil || o.Total == nil {
		r.complain("order: a currency and no totals")
		return
	}
	goods, delivery, unpriced := zero(), zero(), 0
	by := map[string]*big.Rat{}
	for _, l := range o.Lines {
		if l.Cost == nil {
			unpriced++
			continue
		}
		goods.Add(goods, l.Cost.Rat)
		if by[l.Supplier] == nil {
			by[l.Supplier] = zero()
		}
		by[l.Supplier].Add(by[l.Supplier], l.Cost.Rat)
	}
	for _, t := range o.Trips {
		delivery.Add(delivery, t.Delivery.Rat)
		if sum := by[t.Supplier]; sum != nil && sum.Cmp(t.Goods.Rat) != 0 {
			r.complain("trip to %s: its goods are %s, said to be %s", t.Supplier, sum.FloatString(2), t.Goods.FloatString(2))
		}
		if t.Free && t.Delivery.Sign() != 0 {
			r.complain("trip to %s: free, and costs something", t.Supplier)
		}
	}
	total := zero().Add(o.Goods.Rat, o.Delivery.Rat)
	total.Add(total, o.Tax.Rat)
	switch {
	case goods.Cmp(o.Goods.Rat) != 0:
		r.complain("order: its lines are %s, said to be %s", goods.FloatString(2), o.Goods.FloatString(2))
	case delivery.Cmp(o.Delivery.Rat) != 0:
		r.complain("order: its deliveries are %s, said to be %s", delivery.FloatString(2), o.Delivery.FloatString(2))
	case total.Cmp(o.Total.Rat) != 0:
		r.complain("order: its total is %s, said to be %s", total.FloatString(2), o.Total.FloatString(2))
	case unpriced != len(o.Unpriced) || o.Whole && unpriced > 0:
		r.complain("order: %d lines have no price, said to be %d", unpriced, len(o.Unpriced))
	}
}
