package document

import (
	"math/big"

	"dryfit/internal/diag"
	"dryfit/internal/unit"
)

// Trim is one kind of trim: a baseboard round the room, the casing of an opening, a jamb extension, a shoe, a ledger.
type Trim struct {
	Name   string
	At     diag.Place
	Kind   TrimKind
	Along  []Name // walls; silent: all
	Round  []Name // openings, of casings and jamb extensions
	Stock  Name
	Inside Value[InsideJoint]
	Reveal Value[unit.Length] // of a casing, back from the edge of the jamb
	Jamb   Value[unit.Length] // of a jamb extension: the depth of the jamb now, from the stud face
	Ends   Value[unit.Length] // gap at a free end
	Sill   Value[bool]        // a casing goes round the foot too
	Skip   []Name             // cabinets and openings that a run stops at beside doors
}

// TrimKind is what the trim is.
type TrimKind uint8

const (
	Baseboard TrimKind = iota
	Shoe
	Casing
	JambExtension
	Ledger
)

func (k TrimKind) String() string { return trimNames[k].text }

// InsideJoint is how trim meets in an inside corner.
type InsideJoint uint8

const (
	Coped InsideJoint = iota
	Mitered
	Butted
)

var trimNames = []word[TrimKind]{{"baseboard", Baseboard}, {"shoe", Shoe}, {"casing", Casing}, {"jamb extension", JambExtension}, {"ledger", Ledger}}

var trim = record("one kind of trim", func(t *Trim, at diag.Place) { t.At = at },
	sure("kind", "what it is", choice("baseboard, shoe, casing, jamb extension or ledger", trimNames...), func(t *Trim) *TrimKind { return &t.Kind }).must().like("baseboard"),
	part("along", "the walls that it runs along", list(called("wall")), func(t *Trim) *[]Name { return &t.Along }).unless("all walls").like("[basin wall, end wall]"),
	part("round", "the openings that it goes round", list(called("opening")), func(t *Trim) *[]Name { return &t.Round }).unless("none").like("[window]"),
	part("stock", "the stick that it is cut from", called("stock"), func(t *Trim) *Name { return &t.Stock }).must().like("base 5-1/4"),
	fact("inside corners", "coped, mitered or butted", choice("coped, mitered or butted", word[InsideJoint]{"coped", Coped}, word[InsideJoint]{"mitered", Mitered}, word[InsideJoint]{"butted", Butted}), func(t *Trim) *Value[InsideJoint] { return &t.Inside }).unless("coped").like("coped"),
	fact("reveal", "of a casing: how far it stands back from the inside of the jamb", length(within), func(t *Trim) *Value[unit.Length] { return &t.Reveal }).unless("3/16 in or 5 mm").like("1/4"),
	fact("jamb", "of a jamb extension: how far the jamb stands before the stud face now, less than that is -", length(eachWay), func(t *Trim) *Value[unit.Length] { return &t.Jamb }).like("1/2"),
	fact("end gap", "the room to leave where it stops at a casing, a cabinet or a fixture", length(fine), func(t *Trim) *Value[unit.Length] { return &t.Ends }).unless("0").like("1/16"),
	fact("all round", "whether a casing goes round the foot of a window too", yesNo, func(t *Trim) *Value[bool] { return &t.Sill }).unless("no").like("yes"),
	part("stops at", "cabinets that a run stops at", list(called("cabinet")), func(t *Trim) *[]Name { return &t.Skip }).unless("none").like("[vanity]"),
)

// Scribe is a row of offsets that say how an edge has to be cut to lie against a wall or a floor.
type Scribe struct {
	Name    string
	At      diag.Place
	For     Name // a cabinet or a top
	Edge    Value[ScribeEdge]
	Offsets []Station // from the left (of a side: from the back; of a filler: from the floor) to the gap there
	TakenOn Value[Surface]
	Leave   Value[unit.Length]
}

// ScribeEdge is the edge that is scribed.
type ScribeEdge uint8

const (
	ScribeBack ScribeEdge = iota
	ScribeLeft
	ScribeRight
	ScribeFoot
)

var scribe = record("offsets to scribe an edge by", func(s *Scribe, at diag.Place) { s.At = at },
	part("for", "what is scribed: a top, a cabinet or a trim", called("top", "cabinet", "trim"), func(s *Scribe) *Name { return &s.For }).must().like("vanity top"),
	fact("edge", "the edge: back, left, right or foot", choice("back, left, right or foot", word[ScribeEdge]{"back", ScribeBack}, word[ScribeEdge]{"left", ScribeLeft}, word[ScribeEdge]{"right", ScribeRight}, word[ScribeEdge]{"foot", ScribeFoot}), func(s *Scribe) *Value[ScribeEdge] { return &s.Edge }).unless("back").like("back"),
	part("offsets", "from the part, set parallel, to the wall, at distances from the left end of the edge; of an end or a side from the back", stations(within), func(s *Scribe) *[]Station { return &s.Offsets }).unless("from the wall's own readings").like("{0: 1/8, 12: 1/4, 24: 3/16}"),
	fact("taken on", "what the offsets were taken on", surface, func(s *Scribe) *Value[Surface] { return &s.TakenOn }).unless("tile face").like("tile face"),
	fact("leave", "the extra width that the part has for it", length(within), func(s *Scribe) *Value[unit.Length] { return &s.Leave }).like("1/2"),
)

// Finish is what is brushed or wiped on wood, in coats.
type Finish struct {
	Name  string
	At    diag.Place
	On    []Name // cabinets, tops, trim
	Coats Value[int]
	Cover Value[int64] // square metres a liter, in thousandths
	Hours Value[int]
	Cures Value[int]
	Grits []int
}

var finish = record("what is brushed or wiped on wood", func(f *Finish, at diag.Place) { f.At = at },
	part("on", "what it goes on", list(called("cabinet", "top", "trim")), func(f *Finish) *[]Name { return &f.On }).must().like("[vanity, vanity top]"),
	fact("coats", "how many coats", count("a whole number from 1", 1, 20), func(f *Finish) *Value[int] { return &f.Coats }).must().like("3"),
	fact("covers", "the area that a can covers, one coat", coverage, func(f *Finish) *Value[int64] { return &f.Cover }).like("10 m2/L"),
	fact("between coats", "hours from coat to coat", count("a whole number", 0, 1000), func(f *Finish) *Value[int] { return &f.Hours }).like("12"),
	fact("until used", "hours from the last coat until it may be used", count("a whole number", 0, 10_000), func(f *Finish) *Value[int] { return &f.Cures }).like("72"),
	part("sanding", "the grits, coarse to fine", list(count("a whole number from 1", 1, 5000)), func(f *Finish) *[]int { return &f.Grits }).like("[80, 120, 180]"),
)

// coverage reads an area a volume, in square millimetres a cubic millimetre x 1e-6: thousandths of a square metre a liter.
var coverage = measured("an area a can: 10 m2/L or 400 sq ft/gal", `^`+decimalPattern+`\s*(m2/L|m²/L|sq ft/gal)$`, coverageMost,
	word[*big.Rat]{"m2/L", thousand}, word[*big.Rat]{"m²/L", thousand}, word[*big.Rat]{"sq ft/gal", squareFootAGallon})

// Hygrometer is one reading of the room's air.
type Hygrometer struct {
	At       diag.Place
	On       Value[string]
	Humidity Value[Shares]
	Warmth   Value[int64] // thousandths of a degree Celsius
}

var hygrometer = record("a reading of the air", func(h *Hygrometer, at diag.Place) { h.At = at },
	fact("on", "the day", date, func(h *Hygrometer) *Value[string] { return &h.On }).like("2026-01-10"),
	fact("humidity", "the relative humidity", percent, func(h *Hygrometer) *Value[Shares] { return &h.Humidity }).must().like("32 %"),
	fact("temperature", "the temperature of the air", warmth, func(h *Hygrometer) *Value[int64] { return &h.Warmth }).unless("70 F").like("68 F"),
)
