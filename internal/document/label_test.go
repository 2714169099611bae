package document

import (
	"testing"

	"dryfit/internal/money"
	"dryfit/internal/unit"
)

// What the full document says of goods, worked out from its text by hand.
func TestLabels(t *testing.T) {
	room, _ := Read("full.yaml", readFile(t, "testdata/full.yaml"))
	g, buy := room.Goods[0], room.Buying
	for _, c := range []struct {
		what      string
		got, want any
	}{
		{"kind", g.Kind, Mortar},
		{"for", g.For[1].Text, "floor"},
		{"pack", g.Packs[0].Size, unit.Weighs(50 * unit.Pound)},
		{"price", g.Packs[0].Price.V, 28*money.One + 500},
		{"a price that is unknown", g.Packs[1].Price.Unknown, true},
		{"0.45 x 28,316,846.592 mm³", g.Yields.V.Amount, unit.Fills(12_742_581)},
		{"per", g.Yields.V.Per, unit.Weighs(50 * unit.Pound)},
		{"trowel", g.CoversWith[0].Trowel, Trowel{SquareNotch, unit.Inch / 4, 3 * unit.Inch / 8, unit.Inch / 4, 0}},
		{"touching V notches", g.CoversWith[1].Trowel, Trowel{VNotch, 3 * unit.Inch / 16, 5 * unit.Inch / 32, 0, 0}},
		{"5.5 qt, a quart 946,352.946 mm³", g.Water.V.Amount, unit.Fills(5_204_941)},
		{"pot life", g.PotLife.V, 2 * unit.Hour},
		{"50 F", g.Range.V.From, 10 * unit.Celsius},
		{"70 F", g.Cures.Temp.V, unit.Temperature(21_111)},
		{"28 days", g.Cures.Full.V, 28 * unit.Day},
		{"recoat", g.Cures.Recoat.V, TimeSpan{4 * unit.Hour, 24 * unit.Hour}},
		{"joint range", room.Goods[2].Joint.V, Range{unit.Inch / 8, unit.Inch / 2}},
		{"sheet", room.Goods[5].Packs[0].Size, unit.Spreads(15 * unit.SquareFoot)},
		{"2.9 x 725,747,792, half up", room.Goods[5].Weighs.V.Amount, unit.Weighs(2_104_668_597)},
		{"box of 200", room.Goods[6].Packs[0].Size, unit.Count(200)},
		{"one joint is a range too", room.Goods[7].Joint.V, Range{unit.Inch / 8, unit.Inch / 8}},
		{"each", room.Goods[8].Packs[0].Size, unit.Count(1)},
		{"currency", buy.Currency.V, money.Currency("USD")},
		{"tax", buy.Tax.V, unit.Ratio(82_500)},
		{"free from", buy.Suppliers[0].FreeFrom.V, 500 * money.One},
		{"tile's price", room.Tiles[0].Price.V, TilePrice{Amount: 84 * money.One, By: ByBox}},
		{"held", room.Lay[0].Trowel.V.Held, 60 * unit.Degree},
	} {
		if c.got != c.want {
			t.Errorf("%s: got %v, want %v", c.what, c.got, c.want)
		}
	}
}

func TestClasses(t *testing.T) {
	for _, c := range []struct {
		g     Good
		class CureClass
		ok    bool
	}{
		{Good{Kind: Mortar}, CureCement, true},
		{Good{Kind: Grout}, CureCement, true},
		{Good{Kind: Grout, Grain: Value[GroutGrain]{V: ReadyMixed, Known: true}}, CureCement, false},
		{Good{Kind: Sealant}, CureSilicone, true},
		{Good{Kind: Screws}, 0, false},
		{Good{Kind: Mortar, Cures: Cures{Class: Value[CureClass]{V: CureGlue, Known: true}}}, CureGlue, true},
	} {
		if class, ok := c.g.Class(); ok != c.ok || ok && class != c.class {
			t.Errorf("%v: %v %v", c.g.Kind, class, ok)
		}
	}
}
