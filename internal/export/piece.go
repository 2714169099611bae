package export

import (
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/tiling"
	cutpiece "dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// piece is one tile or part of one. The tile's own frame has its length along x and its lower left corner at the origin.
type piece struct {
	ID      string     `json:"id" doc:"mark of the face and address: unique in the room"`
	Address string     `json:"address" doc:"course and column, as on the sheets: unique on the face"`
	Path    string     `json:"path" doc:"of its field in the document"`
	Course  int        `json:"course" doc:"from 1, upward"`
	Column  int        `json:"column" doc:"from 1, to the right"`
	Size    int        `json:"size" doc:"index into the field's sizes"`
	Turn    int        `json:"turn" doc:"quarter turns of the tile in the pattern, counter-clockwise"`
	Whole   bool       `json:"whole" doc:"its outline is the whole tile, though it may be drilled"`
	Area    area       `json:"area" doc:"of the outline in the tile; half a unit of the grid is rounded up"`
	InTile  outline    `json:"inTile" doc:"in the tile's own frame: exact; what no neighbor needs may be cut from nearer to a factory side than the pattern has it, and then that side has a factory label here and the face's on the face"`
	OnFace  outline    `json:"onFace" doc:"in the face's frame: exact, but each vertex rounded once where the pattern is turned"`
	Sides   []side     `json:"sides" doc:"what the labels of the outline are"`
	Cut     *cut       `json:"cut,omitempty" doc:"what to do at the saw; absent: nothing, as of a piece whose edge takes off so little that the joint forgives it"`
	Holes   []drilling `json:"holes" doc:"what to drill"`
}

// side says what one label of a piece's outline is.
type side struct {
	Label geom.Label `json:"label" doc:"negative: a factory side; positive: the face's edge that cuts it"`
	Name  string     `json:"name" doc:"in words"`
	Kept  bool       `json:"kept" doc:"a factory side that must stay, because a neighbor's joint is there"`
}

// cut is what to do at the saw.
type cut struct {
	Kind         cutKind      `json:"kind" doc:"shape of the piece"`
	Steps        []step       `json:"steps" doc:"settings of the saw in their order"`
	Says         string       `json:"says" doc:"the same in words, as sawn"`
	Neck         *unit.Length `json:"neck,omitempty" doc:"narrowest width left, of a piece with an inward corner"`
	Tolerance    unit.Length  `json:"tolerance" doc:"how far the wall may differ from the numbers here"`
	MeasureFirst bool         `json:"measureFirst" doc:"that is more than the joint forgives: take the size at the wall"`
	Visible      unit.Length  `json:"visible" doc:"narrowest width that is seen"`
	TaperShows   bool         `json:"taperShows" doc:"the two ends differ so much that an eye sees it"`
	Snaps        bool         `json:"snaps" doc:"can be snapped; all else needs a saw"`
}

// cutKind names the shape of a cut piece.
type cutKind string

func (cutKind) choices() []string {
	var out []string
	for k := cutpiece.Straight; k <= cutpiece.Odd; k++ {
		out = append(out, report.KindWords(k))
	}
	return out
}

// step is one setting of the saw.
type step struct {
	Keep   string      `json:"keep" doc:"what is measured from: a factory side ('left'), two where the cut runs across a corner ('bottom and left'), or a cut made before ('cut: corner A')"`
	From   unit.Length `json:"from" doc:"exact, at the lower or left end; across a corner: along the first side"`
	To     unit.Length `json:"to" doc:"exact, at the other end; across a corner: along the second side"`
	SawA   unit.Length `json:"sawFrom" doc:"from, rounded so that the piece fits"`
	SawB   unit.Length `json:"sawTo" doc:"to, rounded so that the piece fits"`
	Along  *along      `json:"along,omitempty" doc:"of a cut that does not run right across: where it runs, along the side measured from"`
	Meets  string      `json:"meets" doc:"the edge that the cut meets"`
	Leaves unit.Length `json:"leaves" doc:"the joint there, once the cut is rounded"`
	Wide   bool        `json:"wide" doc:"that is more than the edge forgives: cut closer than the mark"`
	Chips  int         `json:"chips,omitempty" doc:"whole chips kept of a mosaic sheet"`
}

// along is a stretch of a side, from its left or lower end.
type along struct {
	From unit.Length `json:"from" doc:"where the cut begins"`
	To   unit.Length `json:"to" doc:"where it ends"`
}

// drilling is a hole in a piece.
type drilling struct {
	Name   string       `json:"name" doc:"of the face's hole"`
	Drill  unit.Length  `json:"drill" doc:"diameter"`
	Bit    *unit.Length `json:"bit,omitempty" doc:"core bit to use; absent: none of the person's fits"`
	Bite   bool         `json:"bite" doc:"it crosses the piece's edge: cut as a notch"`
	FromX  unit.Length  `json:"fromX" doc:"center from an upright edge"`
	EdgeX  string       `json:"edgeX" doc:"which"`
	FromY  unit.Length  `json:"fromY" doc:"center from a level edge"`
	EdgeY  string       `json:"edgeY" doc:"which"`
	CutX   *unit.Length `json:"cutX,omitempty" doc:"center from the upright cut, where the piece has one"`
	CutAtX string       `json:"cutEdgeX,omitempty" doc:"which"`
	CutY   *unit.Length `json:"cutY,omitempty" doc:"center from the level cut, where the piece has one"`
	CutAtY string       `json:"cutEdgeY,omitempty" doc:"which"`
	ToEdge *unit.Length `json:"toEdge,omitempty" doc:"rim to the piece's nearest edge; absent: it crosses the edge"`
	Says   string       `json:"says" doc:"in words"`
}

// pieceID is a piece's name in the whole room.
func pieceID(mark, address string) string { return mark + " " + address }

func piecesOf(p plan.Plan, f tiling.Face, z tiling.Field) []piece {
	return list(z.Chosen().Pieces, func(c cutpiece.Piece) piece {
		out := piece{ID: pieceID(f.Mark, c.Address), Address: c.Address, Path: z.At.Path, Course: c.Course, Column: c.Column, Size: c.Size,
			Turn: int(c.Turn), Whole: c.Whole, Area: area(c.Area), InTile: outlineOf(c.InTile), OnFace: outlineOf(c.OnFace), Cut: cutOf(p.Style, c.Cut)}
		out.Sides = list(c.Edges, func(e cutpiece.PieceEdge) side { return side{e.Label, e.Name, e.Keep} })
		out.Holes = list(c.Holes, func(h cutpiece.PieceHole) drilling { return drillingOf(p.Style, h) })
		return out
	})
}

func cutOf(s unit.Style, c cutpiece.Cut) *cut {
	if c.Kind == cutpiece.NoCut {
		return nil
	}
	return &cut{Kind: cutKind(report.KindWords(c.Kind)), Steps: list(c.Steps, stepOf), Says: report.CutWords(s, c), Neck: given(c.Neck),
		Tolerance: c.Tolerance, MeasureFirst: c.MeasureFirst, Visible: c.Visible, TaperShows: c.TaperShows, Snaps: c.Snaps}
}

func stepOf(s cutpiece.Step) step {
	out := step{Keep: s.Keep, From: s.From, To: s.To, SawA: s.SawFrom, SawB: s.SawTo, Meets: s.Edge, Leaves: s.Leaves, Wide: s.Wide, Chips: s.Chips}
	if s.Along != [2]unit.Length{} {
		out.Along = &along{s.Along[0], s.Along[1]}
	}
	return out
}

func drillingOf(s unit.Style, h cutpiece.PieceHole) drilling {
	return drilling{Name: h.Name, Drill: h.Drill, Bit: given(h.Bit), Bite: h.Bite, FromX: h.FromX, EdgeX: h.EdgeX, FromY: h.FromY, EdgeY: h.EdgeY,
		CutX: known(h.CutX, h.CutEdgeX != ""), CutAtX: h.CutEdgeX, CutY: known(h.CutY, h.CutEdgeY != ""), CutAtY: h.CutEdgeY,
		ToEdge: known(h.ToEdge, !h.Bite), Says: report.HoleWords(s, h)}
}
