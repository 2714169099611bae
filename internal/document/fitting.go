package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Fitting is what is fixed to a face at the end: a mirror, a light, a fan, a bar.
type Fitting struct {
	Name   string
	At     diag.Place
	Kind   FittingKind
	KindAt diag.Place
	In     Name
	Across Across
	Up     Up
	Serves Name // a basin or a WC
	Width  Value[unit.Length]
	Height Value[unit.Length]
	Depth  Value[unit.Length] // how far it stands off the face
	Posts  Value[unit.Length] // from center to center of its two fixings, along the wall; none: one in the middle
	Screws Value[[]ScrewSpot] // where its screws are, from its own center
	Into   Value[unit.Length] // how far its screws go into the wall, from the finished face
	Rose   Value[unit.Length] // diameter of its fixing plates
	Bar    Value[unit.Length] // diameter of a bar
	Runs   Value[FittingRuns]
	Flow   Value[FlowRange]
	Weight Value[int64] // grams
	Off    []AtWall
}

// ScrewSpot is one screw: how far right of and over the fitting's center.
type ScrewSpot struct{ Right, Over unit.Length }

// FittingKind is what a fitting is.
type FittingKind uint8

const (
	Mirror FittingKind = iota
	Light
	Fan
	TowelBar
	PaperHolder
	GrabBar
	Hook
	WallShelf
)

// FittingRuns is when a fan runs.
type FittingRuns uint8

const (
	RunsWhenWanted FittingRuns = iota
	RunsAlways
)

var fittingWords = []word[FittingKind]{{"mirror", Mirror}, {"light", Light}, {"fan", Fan}, {"towel bar", TowelBar}, {"paper holder", PaperHolder}, {"grab bar", GrabBar}, {"hook", Hook}, {"shelf", WallShelf}}

func (k FittingKind) String() string { return fittingWords[k].text }

var fittingKind = choice("mirror, light, fan, towel bar, paper holder, grab bar, hook or shelf", fittingWords...)

var fitting = record("what is fixed to a face at the end", func(f *Fitting, at diag.Place) { f.At = at },
	key[Fitting]{row{name: "kind", what: "what it is", need: true, example: "mirror", shape: fittingKind.shape}, func(r *reader, f *Fitting, n *text.Node) {
		f.Kind, _ = fittingKind.read(r, n)
		f.KindAt = n.At
	}},
	part("in", "the wall, or floor; of a fan in the ceiling nothing", called("face"), func(f *Fitting) *Name { return &f.In }).unless("it is in the ceiling").like("basin wall"),
	part("across", "where along the wall", across, func(f *Fitting) *Across { return &f.Across }).like("on basin line"),
	part("up", "how high", up, func(f *Fitting) *Up { return &f.Up }).like("bottom 42 above floor"),
	part("serves", "the basin or the WC that it belongs to", called("basin", "WC"), func(f *Fitting) *Name { return &f.Serves }).like("bowl"),
	fact("width", "its width", length(over), func(f *Fitting) *Value[unit.Length] { return &f.Width }).like("24"),
	fact("height", "its height", length(over), func(f *Fitting) *Value[unit.Length] { return &f.Height }).like("30"),
	fact("depth", "how far it stands off the face", length(over), func(f *Fitting) *Value[unit.Length] { return &f.Depth }).like("3"),
	fact("posts", "from center to center of its two fixings, along the wall", length(over), func(f *Fitting) *Value[unit.Length] { return &f.Posts }).unless("one fixing in the middle").like("24"),
	fact("screws", "where its screws are: right of and over its center, one after the other", screwSpots, func(f *Fitting) *Value[[]ScrewSpot] { return &f.Screws }).unless("one at the center of each fixing").like("-11 13, 11 13"),
	fact("into", "how far its screws go into the wall, from the finished face", length(over), func(f *Fitting) *Value[unit.Length] { return &f.Into }).like("2-1/2"),
	fact("rose", "the diameter of its fixing plates", length(bore), func(f *Fitting) *Value[unit.Length] { return &f.Rose }).like("2"),
	fact("bar", "the diameter of a bar", length(bore), func(f *Fitting) *Value[unit.Length] { return &f.Bar }).like("1-1/4"),
	fact("runs", "when a fan runs", choice("when wanted or always", word[FittingRuns]{"when wanted", RunsWhenWanted}, word[FittingRuns]{"always", RunsAlways}), func(f *Fitting) *Value[FittingRuns] { return &f.Runs }).like("when wanted"),
	fact("flow", "what a fan moves, as installed", flows, func(f *Fitting) *Value[FlowRange] { return &f.Flow }).like("80 cfm"),
	fact("weight", "what it weighs", weight, func(f *Fitting) *Value[int64] { return &f.Weight }).like("22 lb"),
	part("off", "in the floor: its center square off the walls", atWalls, func(f *Fitting) *[]AtWall { return &f.Off }).like("{basin wall: 12-1/2, end wall: 20}"),
)

const screwSay = "screws, each as how far right of (−: left) and over (−: under) the center: -11 13, 11 13"

var screwSpots = form[[]ScrewSpot]{&shape{say: screwSay, pattern: `^[^,]*[0-9½¼¾⅛⅜⅝⅞⅓⅔][^,]* [^,]*[0-9½¼¾⅛⅜⅝⅞⅓⅔].*$`}, func(r *reader, n *text.Node) ([]ScrewSpot, bool) {
	if !r.want(n, text.Scalar, screwSay) {
		return nil, false
	}
	var all []ScrewSpot
	for _, one := range splitAt(n.Text, ',') {
		a, b, two := cutSpace(one)
		if !two {
			r.stop("screw-unreadable", n.At, "{0} is no place of a screw", "write each as its distance right of and over the center: -11 13", diag.T(short(one)))
			return nil, false
		}
		right, ok1 := r.length(n, a, eachWay)
		over, ok2 := r.length(n, b, eachWay)
		if !ok1 || !ok2 {
			return nil, false
		}
		all = append(all, ScrewSpot{right, over})
	}
	return all, true
}}

// Person is one who uses the room.
type Person struct {
	Name  string
	At    diag.Place
	Eyes  Value[unit.Length] // over the floor, as the person stands or sits at the basin
	Tall  Value[unit.Length]
	Seat  Value[bool] // uses the basin from a wheelchair
	Wants Value[Span] // rim height that suits
}

var person = record("one who uses the room", func(p *Person, at diag.Place) { p.At = at },
	fact("eyes", "the height of the eyes over the floor at the basin, standing or sitting", length(over), func(p *Person) *Value[unit.Length] { return &p.Eyes }).like("61"),
	fact("tall", "the height of the person", length(over), func(p *Person) *Value[unit.Length] { return &p.Tall }).unless("eyes alone count").like("66"),
	fact("sits", "whether the basin is used sitting", yesNo, func(p *Person) *Value[bool] { return &p.Seat }).unless("no").like("no"),
	fact("rim", "the height of a basin's rim that suits the person", lengthsForm, func(p *Person) *Value[Span] { return &p.Wants }).like("33 to 36"),
)
