package export

import (
	"dryfit/internal/plan"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// work is the tile work on one face.
type work struct {
	Face     string     `json:"face" doc:"its name among the faces"`
	Mark     string     `json:"mark" doc:"unique in the room: it stands before an address in a piece's id"`
	At       place      `json:"at" doc:"in the document"`
	Edges    []edge     `json:"edges" doc:"what the positive labels of outlines of this face's fields and pieces are: the face's own, then those between fields"`
	Fields   []field    `json:"fields" doc:"zones, each with its tile and bond"`
	Ledger   *ledger    `json:"ledger,omitempty" doc:"the straight edge that the first full course stands on or reaches to; absent: the bond has no straight courses from the floor"`
	Movement []movement `json:"movementJoints" doc:"joints that must stay soft"`
	Setting  []string   `json:"setting" doc:"addresses of all pieces in the order of setting"`
}

// ledger is the line of the first course.
type ledger struct {
	Y          unit.Length `json:"y" doc:"top of the first course, from the level line"`
	AboveFloor unit.Length `json:"aboveFloor" doc:"the same above the finished floor at its lowest point along it"`
	CutHigh    unit.Length `json:"cutHigh" doc:"height of the first course where the floor is lowest"`
	CutLow     unit.Length `json:"cutLow" doc:"where it is highest"`
	Joint      unit.Length `json:"joint" doc:"the joint between the first course and the floor"`
	JointMost  unit.Length `json:"jointMost" doc:"what it widens to where whole tiles do not reach down to it"`
}

// movement is a movement joint.
type movement struct {
	Where string `json:"where" doc:"the edge"`
	From  point  `json:"from" doc:"in the face's frame"`
	To    point  `json:"to" doc:"in the face's frame"`
	Rule  string `json:"rule" doc:"id of the published requirement"`
}

// field is one zone of a face.
type field struct {
	Name     string      `json:"name" doc:"the user's"`
	At       place       `json:"at" doc:"in the document"`
	Tile     string      `json:"tile" doc:"the good"`
	Bond     string      `json:"bond" doc:"the pattern"`
	Joint    unit.Length `json:"joint" doc:"between its tiles"`
	Sizes    []size      `json:"sizes" doc:"real sizes of the good, by the index in a piece's size"`
	Region   outline     `json:"region" doc:"where its tile may be, in the face's frame"`
	Angle    angle       `json:"angle" doc:"of the pattern against the face,"`
	Searched string      `json:"searched" doc:"how the offsets were searched"`
	Held     bool        `json:"held" doc:"the first layout is pinned by the person"`
	Layouts  []layout    `json:"layouts" doc:"the first is laid; others are what else would do, best first"`
	Pieces   []piece     `json:"pieces" doc:"of the layout that is laid"`
	Moves    []move      `json:"moves" doc:"openings that should move while they can"`
}

// size is one real size of a good.
type size struct {
	Name   string      `json:"name,omitempty" doc:"of a set's size"`
	Length unit.Length `json:"length" doc:"along x in the tile's own frame"`
	Width  unit.Length `json:"width" doc:"along y in the tile's own frame"`
}

// layout is one way to lay a field.
type layout struct {
	Origin     point     `json:"origin" doc:"in the face's frame: a corner of a tile of the pattern"`
	Measures   []measure `json:"measures" doc:"most important first"`
	Why        string    `json:"why,omitempty" doc:"what speaks for it"`
	WhyNot     string    `json:"whyNot,omitempty" doc:"what speaks against it"`
	Whole      int       `json:"whole" doc:"tiles that go up uncut"`
	Cut        int       `json:"cut" doc:"pieces that are cut"`
	Tiles      int       `json:"tiles" doc:"whole tiles that this field's cut pieces alone come from"`
	TilesLeast int       `json:"tilesLeast" doc:"no way needs fewer"`
}

// measure is one judged number.
type measure struct {
	Name   string       `json:"name" doc:"as in the document's list of what to look for"`
	None   bool         `json:"none" doc:"there is nothing to measure"`
	Length *unit.Length `json:"length,omitempty" doc:"of a measure that is a length"`
	Count  *int         `json:"count,omitempty" doc:"of a measure that is a count"`
	Exact  bool         `json:"exact" doc:"its best value is proven over the offsets that can be marked"`
	Where  string       `json:"where,omitempty" doc:"the piece or the edge that decides it"`
	Says   string       `json:"says" doc:"in words"`
}

// move is how far an opening should move so that its edges fall on joints.
type move struct {
	Opening string      `json:"opening" doc:"the user's name"`
	At      place       `json:"at" doc:"in the document"`
	Across  unit.Length `json:"across" doc:"to the right; negative: to the left"`
	Up      unit.Length `json:"up" doc:"negative: down"`
	Why     string      `json:"why" doc:"in words"`
}

func workOf(p plan.Plan) []work {
	return list(p.Tiling.Faces, func(f tiling.Face) work {
		out := work{Face: f.Name, Mark: f.Mark, At: placeOf(f.At), Edges: edgesOf(f.Edges, f.At), Setting: f.Setting}
		out.Fields = list(f.Fields, func(z tiling.Field) field { return fieldOf(p, f, z) })
		out.Movement = list(f.Movement, func(m tiling.Movement) movement {
			return movement{m.Where, pointOf(m.From), pointOf(m.To), m.Rule}
		})
		if f.Ledger != nil {
			l := ledger(*f.Ledger)
			out.Ledger = &l
		}
		if out.Setting == nil {
			out.Setting = []string{}
		}
		return out
	})
}

func fieldOf(p plan.Plan, f tiling.Face, z tiling.Field) field {
	out := field{Name: z.Name, At: placeOf(z.At), Tile: z.Tile, Bond: z.Bond, Joint: z.Joint, Region: outlineOf(z.Region), Angle: angle(z.Angle),
		Searched: z.Searched.Say(p.Style), Held: z.Held, Pieces: piecesOf(p, f, z)}
	out.Sizes = list(z.Sizes, func(s tiling.Size) size { return size(s) })
	out.Layouts = list(z.Layouts, func(l tiling.Layout) layout { return layoutOf(p.Style, l) })
	out.Moves = list(z.Moves, func(m tiling.Move) move {
		return move{m.Opening, placeOf(m.At), m.Across, m.Up, m.Why.Say(p.Style)}
	})
	return out
}

func layoutOf(s unit.Style, l tiling.Layout) layout {
	return layout{Origin: pointOf(l.Origin), Why: l.Why.Say(s), WhyNot: l.WhyNot.Say(s), Whole: l.Whole, Cut: l.CutCount, Tiles: l.Tiles, TilesLeast: l.TilesLeast,
		Measures: list(l.Measures, func(m judge.Measure) measure { return measureOf(s, m) })}
}

func measureOf(s unit.Style, m judge.Measure) measure {
	out := measure{Name: string(m.Name), None: m.None, Exact: m.Exact, Where: m.Where, Says: judge.Say(m).Say(s)}
	switch {
	case m.None:
	case m.IsCount:
		out.Count = &m.Count
	default:
		out.Length = &m.Length
	}
	return out
}
