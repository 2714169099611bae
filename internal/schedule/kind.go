package schedule

import (
	"dryfit/internal/document"
	"dryfit/internal/unit"
)

// Kind is a kind of job. Its text is the first word of the job's name and the key of its pace.
type Kind string

// The jobs of a bathroom, in about the order in which they are done.
const (
	Protect      Kind = "protect"
	PressureTest Kind = "pressure test"
	Board        Kind = "board"
	Prime        Kind = "prime"
	Membrane     Kind = "membrane"
	FloodTest    Kind = "flood test"
	DryLay       Kind = "dry-lay"
	Ledger       Kind = "ledger" // that the first course stands on
	Set          Kind = "set"
	Cut          Kind = "cut"   // a pace only: the time for one cut piece
	Drill        Kind = "drill" // a pace only: the time for one hole
	ClipsOff     Kind = "clips"
	PreSeal      Kind = "pre-seal"
	GroutFace    Kind = "grout"
	Clean        Kind = "clean"
	Seal         Kind = "seal"
	Silicone     Kind = "silicone"
	Cabinet      Kind = "build cabinet"
	GlueUp       Kind = "glue up"
	CutOuts      Kind = "cut-outs"
	Coat         Kind = "coat"
	Sand         Kind = "sand"
	Install      Kind = "install"
	Scribe       Kind = "scribe"
	WC           Kind = "WC"
	Basin        Kind = "basin"
	Tap          Kind = "tap"
	Mirror       Kind = "mirror"
	Fix          Kind = "fix" // a shelf, a fan, lights, a radiator, a shower, a door
	Trim         Kind = "trim"
	WasteTest    Kind = "waste test"
	FinalClean   Kind = "final clean"
	Own          Kind = "own"
)

// trait is what is known of a kind of job beforehand. Every speed is common practice: no published figure was found.
type trait struct {
	kind  Kind
	speed document.Speed
	least unit.Minutes // where an amount is small
	hands int
	shop  bool
	whole bool // not to be interrupted
	stops []string
	sign  string
}

func each(m unit.Minutes) document.Speed {
	return document.Speed{Of: document.Each, Seconds: 60 * int64(m)}
}
func area(m unit.Minutes) document.Speed {
	return document.Speed{Of: document.PerArea, Seconds: 60 * int64(m)}
}
func length(m unit.Minutes) document.Speed {
	return document.Speed{Of: document.PerLength, Seconds: 60 * int64(m)}
}

var water, power = []string{"water"}, []string{"power"}

var traits = []trait{
	{kind: Protect, speed: each(60), hands: 1},
	{kind: PressureTest, speed: each(60), hands: 1, stops: water, sign: "inspector"},
	{kind: Board, speed: area(20), least: 30, hands: 1},
	{kind: Prime, speed: area(6), least: 15, hands: 1, whole: true},
	{kind: Membrane, speed: area(25), least: 30, hands: 1},
	{kind: FloodTest, speed: each(30), hands: 1, sign: "inspector"},
	{kind: DryLay, speed: area(15), least: 30, hands: 1},
	{kind: Ledger, speed: each(30), hands: 1},
	{kind: Set, speed: area(60), least: 30, hands: 1},
	{kind: Cut, speed: each(5)},
	{kind: Drill, speed: each(10)},
	{kind: ClipsOff, speed: area(5), least: 15, hands: 1},
	{kind: PreSeal, speed: area(6), least: 15, hands: 1},
	{kind: GroutFace, speed: area(18), least: 30, hands: 1, whole: true},
	{kind: Clean, speed: area(6), least: 15, hands: 1},
	{kind: Seal, speed: area(6), least: 15, hands: 1},
	{kind: Silicone, speed: length(6), least: 30, hands: 1},
	{kind: Cabinet, speed: each(8 * unit.Hour), hands: 1, shop: true},
	{kind: GlueUp, speed: each(2 * unit.Hour), hands: 1, shop: true, whole: true},
	{kind: CutOuts, speed: each(90), hands: 1, shop: true},
	{kind: Coat, speed: each(30), hands: 1, shop: true, whole: true},
	{kind: Sand, speed: each(30), hands: 1, shop: true},
	{kind: Install, speed: each(2 * unit.Hour), hands: 1},
	{kind: Scribe, speed: each(60), hands: 1},
	{kind: WC, speed: each(2 * unit.Hour), hands: 2, whole: true, stops: water},
	{kind: Basin, speed: each(90), hands: 1},
	{kind: Tap, speed: each(60), hands: 1, stops: water},
	{kind: Mirror, speed: each(45), hands: 1},
	{kind: Fix, speed: each(60), hands: 1},
	{kind: Trim, speed: each(3 * unit.Hour), hands: 1},
	{kind: WasteTest, speed: each(30), hands: 1},
	{kind: FinalClean, speed: each(60), hands: 1},
}

// traitOf returns what is known of a kind; false of the user's own.
func traitOf(k Kind) (trait, bool) {
	for _, t := range traits {
		if t.kind == k {
			return t, true
		}
	}
	return trait{}, false
}
