package order

import (
	"fmt"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/money"
	"dryfit/internal/schedule"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// tile is the line of one tile good: boxes where they are sold so, else tiles. Spares and breakage are in the need already.
func (m *maker) tile(g tiling.Good, all tiling.Plan) Line {
	t := m.tileNamed(g.Tile)
	l := Line{What: tileName(t, g), Good: g.Tile, Tile: true, At: t.At, Need: unit.Count(g.Buy), Known: true, Proven: true}
	m.supply(&l, t.Supply)
	m.date(&l, []schedule.Kind{schedule.DryLay, schedule.Set}, facesWith(all, g.Tile))
	p := Packs{Name: "tile", Size: unit.Count(1), Count: g.Buy}
	boxed := g.PerBox > 0
	if boxed {
		p = Packs{Name: fmt.Sprintf("box of %d", g.PerBox), Size: unit.Count(g.PerBox), Count: g.Boxes}
	}
	p.Price, p.Priced = m.tilePrice(t, g, boxed)
	p.Sum = p.Price.Times(p.Count)
	l.Packs = []Packs{p}
	l.Have = unit.Count(p.Count * int(p.Size.N))
	l.Left = unit.Count(int(l.Have.N - l.Need.N))
	l.Cost, l.Priced = p.Sum, p.Priced
	if spare := g.Breakage / max(1, g.PerBox); boxed && spare > 0 && m.takesBack(l.Supplier) {
		p.Count, p.Sum = spare, p.Price.Times(spare)
		l.Back = []Packs{p}
	}
	if !l.Priced && m.currency() {
		m.findings.Add(diag.Unchecked, "price-missing", t.At, "not priced: {0}; its price, or how many are in a box, is missing", "write price: 84.00 per box, and per box", diag.T(t.Name))
	}
	return l
}

// facesWith are the faces that a tile is laid on.
func facesWith(all tiling.Plan, tile string) []string {
	var out []string
	for _, f := range all.Faces {
		if slices.ContainsFunc(f.Fields, func(z tiling.Field) bool { return z.Tile == tile }) {
			out = append(out, f.Name)
		}
	}
	return out
}

func (m *maker) takesBack(supplier string) bool {
	s, ok := m.supplier(supplier)
	return ok && s.TakesBack.Or(false)
}

func (m *maker) tileNamed(name string) document.Tile {
	for _, t := range m.doc.Tiles {
		if t.Name == name {
			return t
		}
	}
	return document.Tile{Name: name}
}

func tileName(t document.Tile, g tiling.Good) string {
	if len(t.Set) > g.Size {
		return t.Name + ", " + t.Set[g.Size].Name
	}
	return t.Name
}

// tilePrice is what a box costs, or a tile. By area, a box costs what the area of its tiles does, by the size on the label.
func (m *maker) tilePrice(t document.Tile, g tiling.Good, boxed bool) (money.Amount, bool) {
	if !t.Price.Known || !m.currency() {
		return 0, false
	}
	n := int64(1)
	if boxed {
		n = int64(g.PerBox)
	}
	switch p := t.Price.V; p.By {
	case document.ByBox:
		return p.Amount, boxed
	case document.ByTile:
		return p.Amount.Times(int(n)), true
	default:
		each := labelled(t, g)
		return p.Amount.Per(n*int64(each), p.Area.N, m.doc.Buying.Currency.V), each > 0
	}
}

// labelled is the area of one tile by its label, which is what a shop charges for.
func labelled(t document.Tile, g tiling.Good) unit.Area {
	if len(t.Set) > g.Size {
		return t.Set[g.Size].Length.Times(t.Set[g.Size].Width)
	}
	return t.Length.Or(0).Times(t.Width.Or(0))
}
