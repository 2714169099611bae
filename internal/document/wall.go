package document

import (
	"cmp"
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Station is a reading at a distance from the left end of a wall: `{0: 0, 35: 1/4}`.
type Station struct {
	X     unit.Length
	Value unit.Length
	At    diag.Place
}

// Wall is one wall between two neighboring corners of the survey.
type Wall struct {
	Name         string
	At           diag.Place
	Left         string // from `along: A-B`: A is on the left for one who faces the wall
	Right        string
	BuildUp      []Layer            // `build-up`, from the studs outward
	Lean         []AtCorner         // `out of plumb: {A: 1/4}`: the top leans into the room (+) over the wall's height at that end
	WidthTop     Value[unit.Length] // `width: {bottom: , top: }`
	WidthBottom  Value[unit.Length]
	Heights      []AtCorner         // `height: {A: , B: }`, bare floor to ceiling
	Diagonals    []AtCorner         // `diagonals: {A: }`: from the bottom corner named to the opposite top corner
	WidthTo      Value[Surface]     // `measured to` for the five above
	FloorLine    []Station          // `floor`: from the level line down to the bare floor, along the wall
	CeilingLine  []Station          // `ceiling`: from the level line up, along the wall; a sloping or broken ceiling
	Profile      []Station          // `profile`: surface off the straight line from corner to corner, + into the room
	Studs        []Station          // `studs`: face of each stud off that line, + into the room
	Straightedge []Gap              // `straightedge`
	Face         Value[FaceRule]    // `tile face: plane` or `follow`
	LeastBed     Value[unit.Length] // `least bed`
	Carries      Value[string]
}

// FaceRule says whether the tile face is a plane over the high spots or follows the wall.
type FaceRule uint8

const (
	Plane FaceRule = iota
	Follow
)

// Gap is one straightedge reading: `{length: 8 ft, gap: 3/16, across: 30 from A, up: 20 above floor}`.
type Gap struct {
	Length, Gap unit.Length
	Across      Across
	Up          Up
	At          diag.Place
}

var wall = record("a wall between two neighboring corners", func(w *Wall, at diag.Place) { w.At = at },
	key[Wall]{row{name: "along", what: "the two corners that the wall runs between; facing it, the first is on the left", need: true, example: "A-B", shape: lineShape}, readAlong},
	sure("build-up", "the layers from the studs outward", layers, func(w *Wall) *[]Layer { return &w.BuildUp }).like("[board 1/2 in, membrane 1 mm, bed 3/16, tile]").orUnknown(),
	part("out of plumb", "how far the top leans into the room (+) or away (-) over the wall's height, at each end", atCorners(length(eachWay)), func(w *Wall) *[]AtCorner { return &w.Lean }).like("{A: 1/4, B: -1/8}"),
	key[Wall]{row{name: "width", what: "the wall's own width", example: "{bottom: 71-3/8, top: 71-1/4}", shape: wallWidth.shape}, readWallWidth},
	part("height", "from the bare floor to the ceiling, at each end", atCorners(length(over)), func(w *Wall) *[]AtCorner { return &w.Heights }).like("{A: 95-5/8, B: 95-3/4}"),
	part("diagonals", "from the bottom corner named to the opposite top corner", atCorners(length(over)), func(w *Wall) *[]AtCorner { return &w.Diagonals }).like("{A: 119-3/8}"),
	fact("measured to", "what the tape touched in the readings above", surface, func(w *Wall) *Value[Surface] { return &w.WidthTo }).unless("as tape to says").like("stud"),
	part("floor", "from the level line down to the bare floor, at distances from the wall's left end", stations(within), func(w *Wall) *[]Station { return &w.FloorLine }).like("{0: 40-1/8, 35: 40-1/4}"),
	part("ceiling", "from the level line up to the ceiling, at distances from the wall's left end", stations(within), func(w *Wall) *[]Station { return &w.CeilingLine }).like("{0: 55, 36: 55, 71: 42-1/2}"),
	part("profile", "the surface off the straight line from corner to corner, + into the room, at distances from the left end", stations(eachWay), func(w *Wall) *[]Station { return &w.Profile }).like("{0: 0, 35: 1/4, 71: 0}"),
	part("studs", "the face of each stud off that line, + into the room", stations(eachWay), func(w *Wall) *[]Station { return &w.Studs }).like("{0: 0, 16: -1/8, 32: -1/4}"),
	part("straightedge", "gaps under a straightedge", list(complete(gap)), func(w *Wall) *[]Gap { return &w.Straightedge }).like("[{length: 8 ft, gap: 3/16, across: 30 from A, up: 20 above floor}]"),
	fact("tile face", "whether the tile face is a plane over the high spots or follows the wall", choice("plane or follow", word[FaceRule]{"plane", Plane}, word[FaceRule]{"follow", Follow}), func(w *Wall) *Value[FaceRule] { return &w.Face }).unless("plane over a profile; a wall that is only twisted is followed").like("plane"),
	fact("least bed", "the thinnest bed that the mortar allows", length(fine), func(w *Wall) *Value[unit.Length] { return &w.LeastBed }).unless("over a profile the bed among the layers; else 1/8 in, common practice").like("1/8"),
	fact("carries", "what the wall has to carry, in words", words, func(w *Wall) *Value[string] { return &w.Carries }).like("wall-hung basin"),
)

var lineShape = &shape{say: "two corners: A-B", pattern: `^\s*[^\s-]+\s*-\s*[^\s-]+\s*$`}

func readAlong(r *reader, w *Wall, n *text.Node) {
	if !r.want(n, text.Scalar, "two corners, like A-B") {
		return
	}
	e := text.Entry{Key: n.Text, At: n.At}
	if left, right, ok := r.line(e); ok {
		w.Left, w.Right = left, right
	}
}

type ends struct{ bottom, top Value[unit.Length] }

var wallWidth = either(form[ends]{length(over).shape, func(r *reader, n *text.Node) (ends, bool) {
	v := valueOf(r, length(over), n)
	return ends{bottom: v}, v.Known
}}, record("the width at the bottom and at the top", func(*ends, diag.Place) {},
	fact("bottom", "the width at the floor", length(over), func(e *ends) *Value[unit.Length] { return &e.bottom }).like("71-3/8"),
	fact("top", "the width at the ceiling", length(over), func(e *ends) *Value[unit.Length] { return &e.top }).like("71-1/4"),
))

func readWallWidth(r *reader, w *Wall, n *text.Node) {
	e, _ := wallWidth.read(r, n)
	w.WidthBottom, w.WidthTop = e.bottom, e.top
}

// stations reads values by distance from the left end, in order of distance.
func stations(s span) form[[]Station] {
	f := length(s)
	sh := &shape{kind: namedShape, say: "by distance from the left end: " + s.say, names: "distance", key: lengthPattern, item: f.shape}
	return form[[]Station]{sh, func(r *reader, n *text.Node) ([]Station, bool) {
		if !r.want(n, text.Map, "values by distance, like {0: 0, 35: 1/4}") {
			return nil, false
		}
		var all []Station
		for _, e := range n.Entries {
			if st, ok := readStation(r, e, f); ok {
				all = append(all, st)
			}
		}
		return r.inOrder(all), true
	}}
}

func readStation(r *reader, e text.Entry, f form[unit.Length]) (Station, bool) {
	x, ok := r.length(&text.Node{At: e.At}, e.Key, within)
	if isUnknown(e.Value) {
		r.unknown(e.Value, "the reading at "+e.Key)
		return Station{}, false
	}
	if e.Value.Kind == text.Empty {
		r.empty(e, row{name: e.Key, shape: f.shape})
		return Station{}, false
	}
	v, read := f.read(r, e.Value)
	return Station{x, v, e.At}, ok && read
}

// inOrder sorts stations by distance; two at one place contradict each other.
func (r *reader) inOrder(all []Station) []Station {
	slices.SortStableFunc(all, func(a, b Station) int { return cmp.Compare(a.X, b.X) })
	for i := 1; i < len(all); i++ {
		if all[i].X == all[i-1].X {
			r.stop("station-twice", all[i].At, "two readings at {0}", "keep the one that is right", diag.X(all[i].X))
		}
	}
	return all
}

var gap = record("a gap under a straightedge", func(g *Gap, at diag.Place) { g.At = at },
	part("length", "the length of the straightedge", length(over), func(g *Gap) *unit.Length { return &g.Length }).must().like("8 ft"),
	part("gap", "the widest gap under it", length(fine), func(g *Gap) *unit.Length { return &g.Gap }).must().like("3/16"),
	part("across", "where along the wall", across, func(g *Gap) *Across { return &g.Across }).like("30 from A"),
	part("up", "how high", up, func(g *Gap) *Up { return &g.Up }).like("20 above floor"),
)
