package document

import (
	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Basin is one basin as its data sheet says, and where it is wanted. Its place is that of its waste.
type Basin struct {
	Name     string
	At       diag.Place
	Kind     BasinKind
	KindAt   diag.Place
	On, In   Name // the top that it stands on, or the wall that it hangs on
	Across   Across
	Off      Value[unit.Length] // from the finished wall to the center of the waste
	Up       Up                 // of a wall-hung one: its rim
	Outline  Value[Outline]
	Forward  Value[unit.Length] // how far the middle of the outline is farther from the wall than the waste
	Right    Value[unit.Length] // how far it is to the right of the waste
	Height   Value[unit.Length] // from its underside to its rim
	Lip      Value[unit.Length] // how far the rim stands over the top
	Foot     Value[Outline]     // what stands in the recess of its top
	Rim      Value[unit.Length] // thickness of its wall at the rim
	Bottom   Value[unit.Length] // thickness at the waste
	Depth    Value[unit.Length] // inside, from the rim down to the waste
	Hole     Value[unit.Length] // diameter of the waste's hole in the basin
	Overflow Value[bool]
	Weight   Value[int64] // grams
}

// BasinKind is how a basin is held.
type BasinKind uint8

const (
	Vessel BasinKind = iota
	SemiRecessed
	DropIn
	Undermount
	WallHungBasin
)

var basinKind = choice("vessel, semi-recessed, drop-in, undermount or wall-hung", word[BasinKind]{"vessel", Vessel}, word[BasinKind]{"semi-recessed", SemiRecessed},
	word[BasinKind]{"drop-in", DropIn}, word[BasinKind]{"undermount", Undermount}, word[BasinKind]{"wall-hung", WallHungBasin})

var basin = record("a basin", func(b *Basin, at diag.Place) { b.At = at },
	key[Basin]{row{name: "kind", what: "how it is held", need: true, example: "vessel", shape: basinKind.shape}, func(r *reader, b *Basin, n *text.Node) {
		b.Kind, _ = basinKind.read(r, n)
		b.KindAt = n.At
	}},
	part("on", "the top that it stands on, or hangs under", called("top"), func(b *Basin) *Name { return &b.On }).unless("it hangs on a wall").like("vanity top"),
	part("in", "the wall that it hangs on", called("wall"), func(b *Basin) *Name { return &b.In }).unless("it stands on a top").like("basin wall"),
	part("across", "where along the wall the center of its waste is", across, func(b *Basin) *Across { return &b.Across }).like("on basin line"),
	fact("off", "from the finished wall to the center of its waste", length(over), func(b *Basin) *Value[unit.Length] { return &b.Off }).like("11"),
	part("up", "of a wall-hung basin: the height of its rim", up, func(b *Basin) *Up { return &b.Up }).like("top 34 above floor"),
	fact("outline", "its outline seen from above, width along the wall x depth", outlineForm, func(b *Basin) *Value[Outline] { return &b.Outline }).like("oval 20 x 15"),
	fact("forward", "how far the middle of its outline is before the waste, seen from the wall", length(eachWay), func(b *Basin) *Value[unit.Length] { return &b.Forward }).unless("the waste is in the middle").like("1"),
	fact("right", "how far the middle of its outline is to the right of the waste", length(eachWay), func(b *Basin) *Value[unit.Length] { return &b.Right }).unless("the waste is in the middle").like("0"),
	fact("height", "from its underside to its rim", length(over), func(b *Basin) *Value[unit.Length] { return &b.Height }).like("5"),
	fact("lip", "how far the rim of a drop-in or semi-recessed basin stands over the top", length(within), func(b *Basin) *Value[unit.Length] { return &b.Lip }).like("1/2"),
	fact("foot", "the outline of what stands in the recess of its top", outlineForm, func(b *Basin) *Value[Outline] { return &b.Foot }).like("round 8"),
	fact("rim", "the thickness of its wall at the rim", length(over), func(b *Basin) *Value[unit.Length] { return &b.Rim }).like("3/8"),
	fact("bottom", "its thickness at the waste", length(over), func(b *Basin) *Value[unit.Length] { return &b.Bottom }).like("1/2"),
	fact("depth", "inside, from the rim down to the waste", length(over), func(b *Basin) *Value[unit.Length] { return &b.Depth }).like("4-1/2"),
	fact("waste hole", "the diameter of the hole for the waste", length(bore), func(b *Basin) *Value[unit.Length] { return &b.Hole }).like("1-3/4"),
	fact("overflow", "whether it has an overflow", yesNo, func(b *Basin) *Value[bool] { return &b.Overflow }).like("no"),
	fact("weight", "what it weighs", weight, func(b *Basin) *Value[int64] { return &b.Weight }).like("28 lb"),
)
