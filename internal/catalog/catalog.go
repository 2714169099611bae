// Package catalog holds typical figures of goods, with their sources: what stands in where a label is silent.
//
// A typical figure is told as one wherever it is used, and a label's own always counts before it. Nothing here names a
// product.
package catalog

import (
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// Typical is one typical figure: a rate with the range that it comes from.
type Typical struct {
	ID     string
	What   string // in plain words
	Rate   unit.Rate
	Least  unit.Quantity // the range, per the same
	Most   unit.Quantity
	Source string
	Known  rule.Known
}

// Cite names the source as a finding or a sheet prints it.
func (t Typical) Cite() string { return rule.Rule{Source: t.Source, Known: t.Known}.Cite() }

// perLiter is a weight of so many grams for a liter.
func perLiter(grams, least, most int) (unit.Rate, unit.Quantity, unit.Quantity) {
	return unit.Rate{Amount: weighs(grams), Per: unit.Fills(unit.Liter)}, weighs(least), weighs(most)
}

func weighs(grams int) unit.Quantity { return unit.Weighs(unit.Mass(grams) * unit.Gram) }

// perGallon is an area of so many square feet for a US gallon of 231 cubic inches.
func perGallon(sqft, least, most int) (unit.Rate, unit.Quantity, unit.Quantity) {
	return unit.Rate{Amount: spreads(sqft), Per: unit.Fills(gallon)}, spreads(least), spreads(most)
}

const gallon unit.Volume = 3_785_412 // 231 x 16,387.064 mm³

func spreads(sqft int) unit.Quantity { return unit.Spreads(unit.Area(sqft) * unit.SquareFoot) }

func liter(id, what string, grams, least, most int) Typical {
	r, lo, hi := perLiter(grams, least, most)
	return Typical{ID: id, What: what, Rate: r, Least: lo, Most: hi, Known: rule.Practice}
}

func coat(id, what string, sqft, least, most int) Typical {
	r, lo, hi := perGallon(sqft, least, most)
	return Typical{ID: id, What: what, Rate: r, Least: lo, Most: hi, Known: rule.Practice}
}

// Powders: what goes dry into a liter of joint or bed; and what a liter of bed weighs wet.
var (
	DryGrout  = liter("dry-grout", "dry grout in a liter of joint", 1600, 1500, 1800)
	DryMortar = liter("dry-mortar", "dry mortar in a liter of bed", 1300, 1200, 1500)
	WetMortar = liter("wet-mortar", "a liter of fresh mortar", 1700, 1500, 1800)
	WetGrout  = liter("wet-grout", "a liter of fresh grout", 1900, 1800, 2000)
)

// Tile, by what it is made of.
var (
	CeramicTile   = liter("ceramic", "a liter of ceramic tile", 2000, 1800, 2100)
	PorcelainTile = liter("porcelain", "a liter of porcelain tile", 2400, 2300, 2450)
	StoneTile     = liter("stone", "a liter of stone tile", 2750, 2500, 3000)
	GlassTile     = liter("glass", "a liter of glass tile", 2500, 2450, 2550)
)

// Coats. The rate used is the thirsty end of the range, so that what is bought suffices.
var (
	SealerOpen   = coat("sealer-open", "one coat of penetrating sealer on very porous stone or brick", 50, 50, 150)
	SealerMedium = coat("sealer-medium", "one coat of penetrating sealer on limestone, slate or grout", 150, 150, 400)
	SealerDense  = coat("sealer-dense", "one coat of penetrating sealer on dense, polished stone", 400, 400, 1000)
	PaintCoat    = coat("paint", "one coat of paint, 4 thousandths of an inch wet", 350, 350, 400)
)

// Counts and shares that are common practice.
const (
	Coats                       = 2                       // of sealer and of paint
	Waste            unit.Ratio = 100_000                 // what stays in the pail; trade habit is 5 to 15 %
	Skim                        = 3 * unit.Millimetre / 2 // of back-buttering; trade habit is 1 to 2 mm
	ScrewApart                  = 8 * unit.Inch           // along a stud, for cement board
	StudApart                   = 16 * unit.Inch
	ScrewApartMetric            = 200 * unit.Millimetre
	StudApartMetric             = 400 * unit.Millimetre
	FilletLeg                   = 6 * unit.Millimetre // of a fillet of sealant round a pipe
	ClipReach                   = 2 * unit.Inch       // from a tile's corner to its leveling clip
	ClipEdge                    = 24 * unit.Inch      // an edge up to this has two clips; then one more for each begun foot
)

// Spread is an area of a bed or a coat, thick: the volume, rounded half up once.
func Spread(a unit.Area, thick unit.Length) unit.Volume {
	return unit.VolumeOf(a.M2() * 1e6 * thick.MM())
}

// WetFilm is how thick a coat lies that covers so much for a volume.
func WetFilm(r unit.Rate) unit.Length {
	if r.Amount.Of != unit.ByArea || r.Per.Of != unit.ByVolume || r.Amount.N <= 0 {
		return 0
	}
	return unit.FromMM(float64(r.Per.N) / (unit.Area(r.Amount.N).M2() * 1e6))
}
