package export

import (
	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/part"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// woodwork is what is built of wood.
type woodwork struct {
	Cabinets []cabinet    `json:"cabinets" doc:"each with its parts at their places"`
	Tops     []slab       `json:"tops" doc:"slabs on cabinets and walls"`
	Scribes  []scribe     `json:"scribes" doc:"lines to cut edges to"`
	Trim     []trim       `json:"trim" doc:"baseboards, casings, jamb extensions, shoes, ledgers"`
	Finish   []woodFinish `json:"finish" doc:"what is brushed or wiped on wood"`
}

// boxCorner is a place in the frame of a cabinet.
type boxCorner struct {
	X unit.Length `json:"x" doc:"from the left side of the carcass"`
	Y unit.Length `json:"y" doc:"up from the finished floor"`
	Z unit.Length `json:"z" doc:"off the finished wall"`
}

// box lies along the axes of its cabinet.
type box struct {
	Lo boxCorner `json:"lo" doc:"the corner with the least of each"`
	Hi boxCorner `json:"hi" doc:"the corner with the most of each"`
}

func cornerOf(p joinery.Point) boxCorner { return boxCorner{p[0], p[1], p[2]} }
func boxOf(b joinery.Box) box            { return box{cornerOf(b.Lo), cornerOf(b.Hi)} }

// cabinet is one cabinet.
type cabinet struct {
	Name    string       `json:"name" doc:"the user's"`
	At      place        `json:"at" doc:"in the document"`
	Wall    string       `json:"wall" doc:"that it stands at"`
	X       unit.Length  `json:"x" doc:"of its left side, in the wall's frame"`
	Asked   box          `json:"asked" doc:"the outside of the carcass that is asked for"`
	Proud   unit.Length  `json:"proud" doc:"how far fronts stand before the carcass"`
	Raise   *unit.Length `json:"raise,omitempty" doc:"what is added under its lowest corner; absent: it hangs, or the floor is not known"`
	Pieces  []builtPart  `json:"pieces" doc:"every part at its place"`
	Screws  []woodScrew  `json:"screws" doc:"into the wall"`
	Ways    []passage    `json:"passages" doc:"what it has to pass on its way in, put together"`
	Drawers []drawerBox  `json:"drawers" doc:"their boxes, closed"`
}

// builtPart is one part at its place. Length, width and thickness are along the part; the box is in the cabinet.
type builtPart struct {
	Part     string        `json:"part" doc:"its name"`
	Stock    string        `json:"stock" doc:"what it is cut from"`
	Box      box           `json:"box" doc:"finished, tongues included"`
	Length   unit.Length   `json:"length" doc:"along the part, from its left end"`
	Width    unit.Length   `json:"width" doc:"from its front edge"`
	Thick    unit.Length   `json:"thick" doc:"from its face"`
	Grain    grainWord     `json:"grain" doc:"how the grain runs in it"`
	Carcass  bool          `json:"carcass" doc:"it is no front and of no drawer"`
	Channels []woodChannel `json:"channels" doc:"dadoes, grooves, rabbets, laps, recesses"`
	Holes    []woodHole    `json:"holes" doc:"bores"`
	Work     []string      `json:"work" doc:"all that is done to it, in words"`
}

// grainWord is how grain runs.
type grainWord string

func (grainWord) choices() []string {
	return []string{part.Along.String(), part.Across.String(), part.Any.String()}
}

// sideWord is a side of a part.
type sideWord string

func (sideWord) choices() []string {
	var out []string
	for s := part.Face; s <= part.Right; s++ {
		out = append(out, s.String())
	}
	return out
}

// woodChannel is a box cut into a side. On face and back its area counts from the left end and the front edge; on the edges from the left
// end and the face; on the ends from the front edge and the face.
type woodChannel struct {
	Kind  string      `json:"kind" doc:"the trade's word"`
	Side  sideWord    `json:"side" doc:"that it is cut into"`
	From  point       `json:"from" doc:"corner of its area"`
	To    point       `json:"to" doc:"the other corner"`
	Depth unit.Length `json:"depth" doc:"from the side"`
	For   string      `json:"for" doc:"what goes in"`
}

// woodHole is a bore.
type woodHole struct {
	Side     sideWord    `json:"side" doc:"that it is bored from"`
	Center   point       `json:"center" doc:"in the side's coordinates"`
	Diameter unit.Length `json:"diameter" doc:"of the bore"`
	Depth    unit.Length `json:"depth" doc:"from the side"`
	Through  bool        `json:"through" doc:"it goes through"`
	Slot     unit.Length `json:"slot" doc:"how much longer than wide it is; 0: round"`
	Along    wayOfSlot   `json:"along" doc:"the side's coordinate along which a slot runs"`
	For      string      `json:"for" doc:"what it is for"`
}

// wayOfSlot is a coordinate of a side.
type wayOfSlot string

func (wayOfSlot) choices() []string { return []string{"x", "y"} }

// woodScrew is a screw into the wall.
type woodScrew struct {
	At     point       `json:"at" doc:"in the wall's frame"`
	Length unit.Length `json:"length" doc:"of the screw"`
	Into   string      `json:"into" doc:"the stud or blocking that it lands in"`
	Hold   unit.Length `json:"hold" doc:"how far it goes into that"`
}

// drawerBox is a drawer's box.
type drawerBox struct {
	Name   string      `json:"name" doc:"of its front"`
	Box    box         `json:"box" doc:"outside, closed"`
	Travel unit.Length `json:"travel" doc:"how far it comes out"`
	Cut    bool        `json:"cutOut" doc:"it is cut out round plumbing; the cuts are in its parts"`
}

func woodOf(p plan.Plan) woodwork {
	w := p.Wood
	return woodwork{
		Cabinets: list(w.Cabinets, func(c joinery.Cabinet) cabinet { return cabinetOf(p, c) }),
		Tops:     list(w.Tops, slabOf), Scribes: list(w.Scribes, scribeOf), Trim: list(w.Trim, trimOf), Finish: list(w.Finishes, finishOf),
	}
}

func cabinetOf(p plan.Plan, c joinery.Cabinet) cabinet {
	return cabinet{Name: c.Name, At: placeOf(c.At), Wall: c.Wall, X: c.X, Asked: boxOf(c.Asked), Proud: c.Proud, Raise: known(c.Stands.Most, c.Stands.Known),
		Pieces:  list(c.Pieces, func(q joinery.Piece) builtPart { return pieceOfWood(p, q) }),
		Screws:  list(c.Hung, func(s joinery.Screw) woodScrew { return woodScrew{point{s.X, s.Y}, s.Length, s.Into, s.Hold} }),
		Ways:    list(c.Passages, passageOf),
		Drawers: list(c.Drawers, func(d joinery.Drawer) drawerBox { return drawerBox{d.Name, boxOf(d.Box), d.Travel, d.Cut} })}
}

func pieceOfWood(p plan.Plan, q joinery.Piece) builtPart {
	s := q.Part.Size
	return builtPart{Part: q.Part.Name, Stock: q.Part.Stock, Box: boxOf(q.Box), Length: s.Length, Width: s.Width, Thick: s.Thick, Grain: grainWord(q.Part.Grain.String()),
		Carcass: q.Role != joinery.FrontRole && q.Role != joinery.DrawerRole,
		Channels: list(q.Part.Channels, func(c part.Channel) woodChannel {
			return woodChannel{c.Kind.String(), sideWord(c.On.String()), pointOf(c.Area.Min), pointOf(c.Area.Max), c.Depth, c.For}
		}),
		Holes: list(q.Part.Holes, func(h part.Hole) woodHole {
			return woodHole{sideWord(h.On.String()), pointOf(h.At), h.Diameter, h.Depth, h.Through, h.Slot, wayOfSlot([]string{"x", "y"}[h.Along]), h.For}
		}),
		Work: append([]string{}, report.PartWork(p, q.Part)...)}
}

// woodFinish is one finish.
type woodFinish struct {
	Name    string   `json:"name" doc:"the user's"`
	On      []string `json:"on" doc:"cabinets, tops, trim"`
	Area    area     `json:"area" doc:"of one coat: both faces and all edges of every part"`
	Coats   int      `json:"coats,omitempty" doc:"absent: not given"`
	Volume  *liters  `json:"volume,omitempty" doc:"of all coats; absent: how far it goes is not given"`
	Between int      `json:"hoursBetweenCoats,omitempty" doc:"absent: not given"`
	Until   int      `json:"hoursUntilUsed,omitempty" doc:"after the last coat; absent: not given"`
}

func finishOf(f joinery.Finish) woodFinish {
	out := woodFinish{Name: f.Name, On: append([]string{}, f.On...), Area: area(f.Area), Coats: f.Coats, Between: f.Between, Until: f.Until}
	if f.Covered {
		v := liters(f.Volume)
		out.Volume = &v
	}
	return out
}

// scribe is a line to cut an edge to.
type scribe struct {
	Name  string       `json:"name" doc:"the user's"`
	For   string       `json:"for" doc:"what is scribed"`
	Edge  edgeWord     `json:"edge" doc:"of it"`
	At    place        `json:"at" doc:"in the document"`
	By    string       `json:"by" doc:"where the line comes from"`
	From  string       `json:"from" doc:"the end that the line counts from: left end, back or foot"`
	Line  []scribeMark `json:"line" doc:"along the edge, from that end"`
	Needs unit.Length  `json:"needs" doc:"the deepest cut: what has to be left on"`
	Leave *unit.Length `json:"leave,omitempty" doc:"what is left on; absent: not given"`
}

// edgeWord is an edge that is scribed.
type edgeWord string

var edgeWords = [...]edgeWord{document.ScribeBack: "back", document.ScribeLeft: "left", document.ScribeRight: "right", document.ScribeFoot: "foot"}

func (edgeWord) choices() []string {
	out := make([]string, len(edgeWords))
	for i, w := range edgeWords {
		out[i] = string(w)
	}
	return out
}

// scribeMark is one station.
type scribeMark struct {
	At     unit.Length `json:"at" doc:"along the edge"`
	Offset unit.Length `json:"offset" doc:"gap to the wall with the part set parallel"`
	Cut    unit.Length `json:"cut" doc:"what comes off there"`
}

func scribeOf(s joinery.Scribe) scribe {
	return scribe{s.Name, s.For, edgeWords[s.Edge], placeOf(s.At), s.Source, s.Origin,
		list(s.Line, func(q joinery.ScribePoint) scribeMark { return scribeMark{q.At, q.Offset, q.Cut} }), s.Needs, known(s.Leave, s.LeaveKnown)}
}
