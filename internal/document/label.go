package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Good is one good for setting and finishing, with what its label says: what is silent is not known, and a typical figure
// that stands in for it is told as one.
type Good struct {
	Name string
	At   diag.Place
	Kind GoodKind
	// For are the faces that it is for; none: every face that needs its kind and has no good of its own.
	For       []Name
	InsteadOf Value[string] // the good that this one is compared with; it is not part of the plan
	Color     Value[string]
	Packs     []Pack
	Supply    Supply

	Yields     Value[Rate]   // of a powder: what it fills when mixed: `0.45 cu ft per 50 lb`
	Density    Value[Rate]   // of a powder: how much goes into a volume of joint or bed: `1.6 kg per L`
	Covers     Value[Rate]   // of a coat or a sheet: `200 sq ft per gal`
	CoversWith []TrowelCover // of a mortar, by trowel
	Coats      Value[int]
	Water      Value[Rate] // to mix with: `5.5 qt per 50 lb`
	Waste      Value[unit.Ratio]
	Needs      Value[unit.Quantity] // of what nothing here reckons

	Grain       Value[GroutGrain]
	Joint       Value[Range] // the joints that it is for
	Scratches   Value[bool]  // may scratch polished faces and glass
	NeutralCure Value[bool]
	NonStaining Value[bool]
	Carries     Value[Rate] // of a board: the weight of tiling for an area
	Weighs      Value[Rate] // of a board: its own weight for an area
	Thick       Value[unit.Length]
	Spacing     Value[unit.Length] // of screws: from one to the next along a stud
	TileEdge    Value[unit.Length]
	Size        Value[unit.Length] // of a small part of plumbing

	PotLife, OpenTime, Slake Value[unit.Minutes]
	Range                    Value[Warmth] // temperatures that it may be used at
	Cures                    Cures
}

// GoodKind is what a good is for.
type GoodKind uint8

const (
	OtherGood GoodKind = iota
	Mortar
	Grout
	Sealer
	Sealant
	BackerRod
	Membrane
	JointTape
	BackerBoard
	Screws
	Primer
	Paint
	Leveler
	CrossSpacers
	TeeSpacers
	Wedges
	ClipStems
	ClipCaps
	EdgeTrim
	Adhesive
	WoodFinish
	Protection
	Cleaner
	SawBlade
	CoreBit
	SupplyLine
	WCSeal
	TrapGood
	Tailpiece
	Escutcheon
	WCBolts
	FlangeRing
)

var goodKinds = []word[GoodKind]{{"mortar", Mortar}, {"grout", Grout}, {"sealer", Sealer}, {"sealant", Sealant}, {"backer rod", BackerRod},
	{"membrane", Membrane}, {"tape", JointTape}, {"board", BackerBoard}, {"screws", Screws}, {"primer", Primer}, {"paint", Paint},
	{"leveler", Leveler}, {"cross spacers", CrossSpacers}, {"tee spacers", TeeSpacers}, {"wedges", Wedges}, {"clip stems", ClipStems},
	{"clip caps", ClipCaps}, {"trim", EdgeTrim}, {"adhesive", Adhesive}, {"wood finish", WoodFinish}, {"protection", Protection},
	{"cleaner", Cleaner}, {"blade", SawBlade}, {"core bit", CoreBit}, {"supply line", SupplyLine}, {"WC seal", WCSeal}, {"trap", TrapGood}, {"tailpiece", Tailpiece},
	{"escutcheon", Escutcheon}, {"WC bolts", WCBolts}, {"flange ring", FlangeRing}, {"other", OtherGood}}

// String is the word that a document uses.
func (k GoodKind) String() string {
	for _, w := range goodKinds {
		if w.is == k {
			return w.text
		}
	}
	return ""
}

// GroutGrain is how coarse a grout is.
type GroutGrain uint8

const (
	Unsanded GroutGrain = iota
	Sanded
	ReadyMixed
)

var label = record("a good for setting or finishing, as its label says", func(g *Good, at diag.Place) { g.At = at },
	sure("kind", "what it is", choice(wordList(goodKinds), goodKinds...), func(g *Good) *GoodKind { return &g.Kind }).must().like("mortar"),
	part("for", "the faces that it is for", list(called("face")), func(g *Good) *[]Name { return &g.For }).unless("every face that needs its kind and has no good of its own").like("[basin wall, floor]"),
	fact("instead of", "the good that this one is compared with; it is priced and not ordered", calledText("good"), func(g *Good) *Value[string] { return &g.InsteadOf }).like("white mortar"),
	fact("color", "its color", words, func(g *Good) *Value[string] { return &g.Color }).like("white"),
	part("packs", "the packs that the shop sells, each with its price", packs, func(g *Good) *[]Pack { return &g.Packs }).like("{50 lb bag: 28.50}"),
	fact("from", "who sells it", calledText("supplier"), func(g *Good) *Value[string] { return &g.Supply.From }).like("tile yard"),
	fact("lead time", "from the order to the delivery", duration, func(g *Good) *Value[unit.Minutes] { return &g.Supply.LeadTime }).unless("as the supplier says").like("10 days"),
	fact("ordered on", "when it was ordered", date, func(g *Good) *Value[string] { return &g.Supply.OrderedOn }).unless("not ordered yet").like("2026-03-02"),
	fact("yields", "the volume that it fills when mixed", rate("a yield: 0.45 cu ft per 50 lb", unit.ByVolume, unit.ByMass), func(g *Good) *Value[Rate] { return &g.Yields }).like("0.45 cu ft per 50 lb"),
	fact("density", "how much powder goes into a volume of joint or bed", rate("a weight for a volume: 1.6 kg per L", unit.ByMass, unit.ByVolume), func(g *Good) *Value[Rate] { return &g.Density }).like("1.6 kg per L"),
	fact("covers", "the area that one coat, one sheet or one layer covers", rate("an area: 200 sq ft per gal", unit.ByArea, unit.ByVolume, unit.ByMass, unit.ByCount), func(g *Good) *Value[Rate] { return &g.Covers }).like("200 sq ft per gal"),
	part("covers with", "the area that a mortar covers, by trowel", coversWith, func(g *Good) *[]TrowelCover { return &g.CoversWith }).like("{square 1/4 x 3/8 x 1/4: 65 sq ft per 50 lb}"),
	fact("coats", "how many coats it needs", count("a whole number from 1", 1, 20), func(g *Good) *Value[int] { return &g.Coats }).like("2"),
	fact("water", "the water to mix it with", rate("water: 5.5 qt per 50 lb", unit.ByVolume, unit.ByMass), func(g *Good) *Value[Rate] { return &g.Water }).like("5.5 qt per 50 lb"),
	fact("waste", "what stays in the pail and on the tools, as a share on top", share, func(g *Good) *Value[unit.Ratio] { return &g.Waste }).unless("10 %").like("10 %"),
	fact("needs", "how much of it is needed, where nothing here reckons it", quantity, func(g *Good) *Value[unit.Quantity] { return &g.Needs }).like("4 pieces"),
	fact("grain", "how coarse a grout is", choice("unsanded, sanded or ready-mixed", word[GroutGrain]{"unsanded", Unsanded}, word[GroutGrain]{"sanded", Sanded}, word[GroutGrain]{"ready-mixed", ReadyMixed}), func(g *Good) *Value[GroutGrain] { return &g.Grain }).like("sanded"),
	fact("joint", "the joints that it is for", lengthRange, func(g *Good) *Value[Range] { return &g.Joint }).like("1/8 to 1/2"),
	fact("scratches", "whether it may scratch polished faces and glass", yesNo, func(g *Good) *Value[bool] { return &g.Scratches }).like("yes"),
	fact("neutral cure", "whether a sealant cures without acid", yesNo, func(g *Good) *Value[bool] { return &g.NeutralCure }).like("yes"),
	fact("non-staining", "whether the label says that it does not stain stone", yesNo, func(g *Good) *Value[bool] { return &g.NonStaining }).like("yes"),
	fact("carries", "the weight of tiling that a board carries", rate("a weight for an area: 32 kg per m2", unit.ByMass, unit.ByArea), func(g *Good) *Value[Rate] { return &g.Carries }).like("32 kg per m2"),
	fact("weighs", "its own weight for an area", rate("a weight for an area: 32 kg per m2", unit.ByMass, unit.ByArea), func(g *Good) *Value[Rate] { return &g.Weighs }).like("2.9 lb per sq ft"),
	fact("thick", "its thickness", length(thin), func(g *Good) *Value[unit.Length] { return &g.Thick }).like("1/2"),
	fact("spacing", "from one screw to the next", length(over), func(g *Good) *Value[unit.Length] { return &g.Spacing }).like("8"),
	fact("tile edge", "the longest tile edge that two leveling clips are enough for", length(over), func(g *Good) *Value[unit.Length] { return &g.TileEdge }).like("24"),
	fact("size", "of a small part of plumbing: the length of a supply line, a tailpiece or bolts, the diameter of an escutcheon, the nominal size of a trap, the thickness of a ring", length(over), func(g *Good) *Value[unit.Length] { return &g.Size }).like("12"),
	fact("pot life", "how long a batch can be used", duration, func(g *Good) *Value[unit.Minutes] { return &g.PotLife }).like("2 h"),
	fact("open time", "how long a spread bed or a coat takes tile", duration, func(g *Good) *Value[unit.Minutes] { return &g.OpenTime }).like("30 min"),
	fact("slake", "how long a batch rests before it is mixed again", duration, func(g *Good) *Value[unit.Minutes] { return &g.Slake }).like("10 min"),
	fact("temperature", "the temperatures of air and surface that it may be used at", warmths, func(g *Good) *Value[Warmth] { return &g.Range }).like("50 to 90 F"),
	part("cures", "how long it takes, at the temperature that the label states", cures, func(g *Good) *Cures { return &g.Cures }).like("{at: 70 F, walk: 24 h, grout: 24 h}"),
)

var labels = named("good", label, func(g *Good, e text.Entry) { g.Name, g.At = e.Key, e.At })

func wordList[E any](words []word[E]) string {
	s := words[0].text
	for _, w := range words[1:] {
		s += ", " + w.text
	}
	return s
}

// GoodKinds lists the words for kinds of goods, for a form that asks for one.
func GoodKinds() []string {
	out := make([]string, len(goodKinds))
	for i, k := range goodKinds {
		out[i] = k.text
	}
	return out
}
