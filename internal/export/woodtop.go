package export

import (
	"dryfit/internal/document"
	"dryfit/internal/joinery"
	"dryfit/internal/part"
	"dryfit/internal/unit"
	"dryfit/internal/wood"
)

// slab is a top. Its frame has x from its left end and z off the finished wall.
type slab struct {
	Name   string        `json:"name" doc:"the user's"`
	At     place         `json:"at" doc:"in the document"`
	Wall   string        `json:"wall" doc:"that it is on"`
	On     string        `json:"on,omitempty" doc:"the cabinet that it lies on; absent: none"`
	Made   madeWord      `json:"made" doc:"of what"`
	X      unit.Length   `json:"x" doc:"of its left end, in the wall's frame"`
	Up     unit.Length   `json:"up" doc:"its underside over the finished floor"`
	Width  unit.Length   `json:"width" doc:"along the wall"`
	Back   unit.Length   `json:"back" doc:"its rear edge, off the finished wall"`
	Depth  unit.Length   `json:"depth" doc:"its front edge, off the finished wall"`
	Thick  unit.Length   `json:"thick" doc:"finished"`
	Holes  []topHole     `json:"holes" doc:"cut-outs, holes and recesses"`
	Glue   *glueUp       `json:"glueUp,omitempty" doc:"of staves; absent: it is no such slab, or its staves are not given"`
	Moves  *woodMovement `json:"movement,omitempty" doc:"over the year, across the grain; absent: none, or not worked out"`
	Ways   []passage     `json:"passages" doc:"what it has to pass on its way in"`
	Reach  []toolReach   `json:"reach" doc:"whether the tools get through"`
	Length unit.Length   `json:"sawLonger" doc:"what is left on its length for scribing"`
	Wider  unit.Length   `json:"sawWider" doc:"what is left on its depth for scribing"`
}

// madeWord is what a top is made of.
type madeWord string

var madeWords = [...]madeWord{document.StaveTop: "staves", document.SheetTop: "sheet", document.StoneTop: "stone"}

func (madeWord) choices() []string {
	out := make([]string, len(madeWords))
	for i, w := range madeWords {
		out[i] = string(w)
	}
	return out
}

// topHole is a hole through a top or a recess in it.
type topHole struct {
	Name   string      `json:"name" doc:"what it is for"`
	X      unit.Length `json:"x" doc:"its middle, from the left end"`
	Z      unit.Length `json:"z" doc:"its middle, off the finished wall"`
	Across unit.Length `json:"across" doc:"of its outline, along the wall"`
	Deep   unit.Length `json:"deep" doc:"of its outline, square to the wall"`
	Recess unit.Length `json:"recess" doc:"its depth; 0: it goes through"`
	Left   []leftWood  `json:"left" doc:"the wood beside and under it"`
}

// leftWood is what is left beside a hole.
type leftWood struct {
	To   string      `json:"to" doc:"an edge, the underside or another hole"`
	Left unit.Length `json:"left" doc:"between"`
	Need unit.Length `json:"need" doc:"at least"`
}

// glueUp is how a slab is glued up.
type glueUp struct {
	Rough     []unit.Length `json:"rough" doc:"widths of the staves as sawn, from the front"`
	Jointed   []unit.Length `json:"jointed" doc:"and after jointing"`
	Width     unit.Length   `json:"width" doc:"of the slab before it is trimmed"`
	Spare     unit.Length   `json:"spare" doc:"more than is needed"`
	Length    unit.Length   `json:"length" doc:"of the staves as sawn"`
	Thick     unit.Length   `json:"thick" doc:"of the staves as sawn"`
	Area      area          `json:"area" doc:"of all joints"`
	Clamps    int           `json:"clamps" doc:"how many"`
	BoardFeet thousandths   `json:"boardFeet" doc:"to buy"`
}

// woodMovement is what a solid slab does.
type woodMovement struct {
	Species string      `json:"species" doc:"the wood"`
	Glued   share       `json:"glued" doc:"moisture when it is glued and cut"`
	Driest  share       `json:"driest" doc:"moisture in the house"`
	Wettest share       `json:"wettest" doc:"moisture in the house"`
	By      string      `json:"by" doc:"where the moisture of the house comes from"`
	Shrinks unit.Length `json:"shrinks" doc:"the whole depth"`
	Swells  unit.Length `json:"swells" doc:"the whole depth"`
	Fixed   unit.Length `json:"fixed" doc:"where it is held fast, off the finished wall"`
	Slots   []woodSlot  `json:"slots" doc:"rows of screws"`
	Gaps    []woodPlay  `json:"gaps" doc:"where it moves past what stands still"`
}

// woodSlot is a row of screws in slots in the rail below.
type woodSlot struct {
	Z      unit.Length   `json:"z" doc:"of the screw, off the finished wall"`
	Away   unit.Length   `json:"away" doc:"from the line that is held fast"`
	In     unit.Length   `json:"in" doc:"how far it may move toward that line"`
	Out    unit.Length   `json:"out" doc:"how far it may move from it"`
	Long   unit.Length   `json:"long" doc:"of the slot: the screw and both"`
	Middle unit.Length   `json:"middle" doc:"of the slot, off the finished wall"`
	Rail   string        `json:"rail,omitempty" doc:"the piece that the slots are cut into; absent: it lies on no cabinet"`
	Along  []unit.Length `json:"along" doc:"the screws, from the left end of the top"`
}

// woodPlay is the room beside something that a slab moves past.
type woodPlay struct {
	Where string       `json:"where" doc:"the wall, or what passes through the slab"`
	Needs unit.Length  `json:"needs" doc:"how far the slab moves there"`
	Room  *unit.Length `json:"room,omitempty" doc:"on each side; absent: not known, or what passes moves with the slab"`
	Held  bool         `json:"held" doc:"it is clamped to the slab and moves with it"`
}

// toolReach is how a tool gets through.
type toolReach struct {
	Tool  string      `json:"tool" doc:"saw or bit"`
	Name  string      `json:"name,omitempty" doc:"the user's; absent: no reach is given"`
	Deep  unit.Length `json:"deep" doc:"its reach; 0: not given"`
	Sides int         `json:"sides" doc:"1: through from one face; 2: from both; 0: not, or not known"`
}

func slabOf(t joinery.Top) slab {
	out := slab{Name: t.Name, At: placeOf(t.At), Wall: t.Wall, On: t.On, Made: madeWords[t.Kind], X: t.X, Up: t.Up, Width: t.Width, Back: t.Back, Depth: t.Depth, Thick: t.Thick,
		Holes:  list(t.Holes, func(h joinery.Hole) topHole { return topHoleOf(t, h) }),
		Reach:  list(t.Reaches, func(r joinery.Reach) toolReach { return toolReach{r.What, r.Tool, r.Deep, r.Sides} }),
		Ways:   list(t.Passages, passageOf),
		Length: t.Part.Over.Length, Wider: t.Part.Over.Width}
	if t.Glue.Known {
		out.Glue = glueOf(t.Glue)
	}
	if m := t.Moves; m.Known {
		out.Moves = &woodMovement{m.Species, share(m.Glued), share(m.Least), share(m.Most), m.Source, m.Shrinks, m.Swells, m.FixedAt,
			list(m.Slots, func(s joinery.Slot) woodSlot {
				return woodSlot{s.Z, s.Away, s.In, s.Out, s.Long, s.Middle, s.Rail, append([]unit.Length{}, s.Along...)}
			}),
			list(m.Gaps, func(g joinery.Play) woodPlay {
				return woodPlay{g.Name, g.Needs, known(g.Room, g.Known && !g.Held), g.Held}
			})}
	}
	return out
}

func topHoleOf(t joinery.Top, h joinery.Hole) topHole {
	out := topHole{Name: h.Name, X: h.X, Z: h.Z, Across: h.Outline.Across, Deep: h.Outline.Deep, Recess: h.Recess, Left: []leftWood{}}
	for _, w := range t.Woods {
		if w.Of == h.Name {
			out.Left = append(out.Left, leftWood{w.To, w.Left, w.Need})
		}
	}
	return out
}

func glueOf(g joinery.Glue) *glueUp {
	out := glueUp{Rough: []unit.Length{}, Jointed: []unit.Length{}, Width: g.Width, Spare: g.Spare, Length: g.Length, Thick: g.Thick, Area: area(g.Area), Clamps: g.Clamps.Count, BoardFeet: boardFeet(g.BoardFeet)}
	for _, s := range g.Staves {
		out.Rough, out.Jointed = append(out.Rough, s.Rough), append(out.Jointed, s.Jointed)
	}
	return &out
}

func boardFeet(f wood.BoardFeet) thousandths { return thousandths(f) }

// trim is one kind of trim.
type trim struct {
	Name string    `json:"name" doc:"the user's"`
	At   place     `json:"at" doc:"in the document"`
	Kind string    `json:"kind" doc:"the trade's word"`
	Runs []trimRun `json:"runs" doc:"straight lines of it"`
}

// trimRun is one straight line of trim.
type trimRun struct {
	Wall   string       `json:"wall" doc:"that it is on"`
	Where  string       `json:"where" doc:"in words"`
	Length unit.Length  `json:"length" doc:"of its back, which lies on the wall"`
	Left   trimEnd      `json:"left" doc:"its left end"`
	Right  trimEnd      `json:"right" doc:"its right end"`
	Pieces []trimLength `json:"pieces" doc:"from the left"`
	Scarfs []trimScarf  `json:"scarfs" doc:"where its pieces meet, from the left"`
	Into   []trimStud   `json:"into" doc:"of a ledger: the studs that it is screwed into"`
	Falls  unit.Length  `json:"floorFalls" doc:"of the floor under it"`
}

// trimEnd is how an end meets what is there.
type trimEnd struct {
	At     string `json:"at" doc:"what is there"`
	Joint  string `json:"joint" doc:"the trade's word"`
	Corner angle  `json:"corner" doc:"inside angle of the finished faces; 0: no corner"`
	Saw    angle  `json:"saw" doc:"how far the saw is swung from square"`
}

// trimLength is one piece.
type trimLength struct {
	Long   unit.Length `json:"long" doc:"to its long point"`
	Short  unit.Length `json:"short" doc:"to its short point"`
	Longer unit.Length `json:"sawLonger" doc:"for a cope, to be trimmed"`
}

func trimOf(t joinery.Trim) trim {
	return trim{t.Name, placeOf(t.At), t.Kind.String(), list(t.Runs, func(r joinery.Run) trimRun {
		return trimRun{r.Wall, r.Where, r.Length, trimEndOf(r.Ends[0]), trimEndOf(r.Ends[1]), list(r.Pieces, trimLengthOf),
			list(r.Scarfs, func(s joinery.Scarf) trimScarf { return trimScarf{s.X, s.On} }), list(r.Into, func(s joinery.Stud) trimStud { return trimStud{s.Name, s.X} }), r.Falls}
	})}
}

func trimEndOf(e joinery.TrimEnd) trimEnd {
	return trimEnd{e.What, e.Joint, angle(e.Angle), angle(e.Saw)}
}

func trimLengthOf(l joinery.Length) trimLength {
	return trimLength{l.Long, l.Short, overOf(l.Part)}
}

func overOf(p part.Part) unit.Length { return p.Over.Length }

// trimScarf is where two pieces meet.
type trimScarf struct {
	X  unit.Length `json:"x" doc:"the middle of the lap, in the wall's frame"`
	On string      `json:"on,omitempty" doc:"the stud that it lies on; absent: none that is recorded"`
}

// trimStud is a stud.
type trimStud struct {
	Name string      `json:"name" doc:"the user's, or how it is known"`
	X    unit.Length `json:"x" doc:"its middle, in the wall's frame"`
}
