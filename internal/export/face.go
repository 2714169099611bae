package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/geom"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// face is one plane that can be tiled. A wall's frame has x = 0 at the left end of its board and y = 0 at the level line; a
// floor's is the plan frame; a face of an opening has its own, named in its kind's words.
type face struct {
	Name     string    `json:"name" doc:"the user's; faces of openings are 'niche > sill'"`
	At       place     `json:"at" doc:"in the document"`
	Kind     faceKind  `json:"kind" doc:"what it is"`
	Left     string    `json:"left,omitempty" doc:"corner at the left end of a wall"`
	Right    string    `json:"right,omitempty" doc:"corner at the right end of a wall"`
	Board    outline   `json:"board" doc:"the surface that is tiled, openings cut out"`
	Cut      outline   `json:"cut" doc:"where tile may be: the board less the joint at each edge"`
	Edges    []edge    `json:"edges" doc:"what the labels of the outlines are"`
	Layers   layers    `json:"layers" doc:"thicknesses, from the studs outward"`
	Floor    *reach    `json:"floor,omitempty" doc:"of the floor along a wall, from the level line; absent: not known"`
	Holes    []hole    `json:"holes" doc:"round penetrations"`
	Lines    []line    `json:"centerLines" doc:"named upright lines"`
	Openings []opening `json:"openings" doc:"openings and boxes"`
	Buried   []buried  `json:"inTheWall" doc:"recorded while it was open"`
	Flat     flatness  `json:"flatness" doc:"straightedge readings against the published tolerance"`
	Shims    []shim    `json:"shims" doc:"what each stud needs"`
	Set      bool      `json:"set" doc:"the document lays tile on it"`
	Order    int       `json:"order,omitempty" doc:"of setting, from 1"`
	Fall     *share    `json:"fall,omitempty" doc:"outward fall of a sill, as a ratio"`
}

// faceKind is what a face is.
type faceKind string

var faceKinds = [...]faceKind{"wall", "floor", "face of an opening"}

func (faceKind) choices() []string { return words(faceKinds[:]) }

// edge is what bounds a face. Distances are square to it, in the plane of the face.
type edge struct {
	Label  geom.Label  `json:"label" doc:"as vertices of outlines bear it"`
	Kind   edgeKind    `json:"kind" doc:"what it is"`
	Name   string      `json:"name" doc:"in words"`
	At     place       `json:"at" doc:"in the document"`
	Other  string      `json:"meets,omitempty" doc:"the face on the other side"`
	Runs   bool        `json:"runs" doc:"this face's tile runs through behind the other's; else it butts against it"`
	Gap    unit.Length `json:"gap" doc:"from the board's edge to where tile ends; negative: tile reaches past the board"`
	Hidden unit.Length `json:"hidden" doc:"how much of the tile the other face's tile covers"`
	Joint  unit.Length `json:"joint" doc:"width of the joint here"`
	Soft   bool        `json:"soft" doc:"a flexible joint, not grout"`
	Shows  bool        `json:"shows" doc:"the edge of the tile is seen"`
	Miter  bool        `json:"miter" doc:"the tile is mitered here"`
	Weight int         `json:"weight" doc:"how much the eye follows it"`
}

// edgeKind is what bounds a face.
type edgeKind string

var edgeKinds = [...]edgeKind{"floor", "ceiling", "inside corner", "outside corner", "opening", "free"}

func (edgeKind) choices() []string { return words(edgeKinds[:]) }

// layers are the thicknesses of a face's build-up.
type layers struct {
	Board    unit.Length `json:"board" doc:"board and all under it"`
	Bed      unit.Length `json:"bed" doc:"mortar, as stated"`
	BedLeast unit.Length `json:"bedLeast" doc:"least over the face"`
	BedMost  unit.Length `json:"bedMost" doc:"most over the face"`
	Tile     unit.Length `json:"tile" doc:"of the tile"`
	TileOff  unit.Length `json:"tileOff" doc:"face of the tile off the straight line between the board's corners"`
}

// reach is a least and a greatest height.
type reach struct {
	Low  unit.Length `json:"low" doc:"lowest"`
	High unit.Length `json:"high" doc:"highest"`
}

// hole is a round penetration.
type hole struct {
	Name     string       `json:"name" doc:"the user's"`
	At       place        `json:"at" doc:"in the document"`
	Center   point        `json:"center" doc:"in the face's frame"`
	Diameter *unit.Length `json:"diameter,omitempty" doc:"of the pipe; absent: not known"`
	Drill    *unit.Length `json:"drill,omitempty" doc:"asked for; absent: the pipe and its clearance"`
}

// line is a named upright line on a face.
type line struct {
	Name string      `json:"name" doc:"the user's"`
	At   place       `json:"at" doc:"in the document"`
	X    unit.Length `json:"x" doc:"in the face's frame"`
}

// opening is an opening or a box in a face.
type opening struct {
	Name  string       `json:"name" doc:"the user's"`
	At    place        `json:"at" doc:"in the document"`
	Kind  string       `json:"kind" doc:"window, door, niche, opening or box"`
	Rect  rect         `json:"rect" doc:"at the board"`
	Depth *unit.Length `json:"depth,omitempty" doc:"into the wall; absent: not given"`
	Moves *unit.Length `json:"mayMove,omitempty" doc:"how far it may still be moved; absent: not at all"`
}

// buried is a recorded thing in the wall.
type buried struct {
	Name string `json:"name" doc:"the user's"`
	At   place  `json:"at" doc:"in the document"`
	Kind string `json:"kind" doc:"stud, blocking, pipe, cable or nail plate"`
	Rect rect   `json:"rect" doc:"in the face's frame"`
}

// flatness is what straightedge readings say.
type flatness struct {
	Checked bool         `json:"checked" doc:"false: a fact is missing"`
	Rule    string       `json:"rule,omitempty" doc:"id of the published requirement"`
	Over    *unit.Length `json:"over,omitempty" doc:"by how much the worst reading is over; 0: within; absent: not checked"`
	Fill    *liters      `json:"fill,omitempty" doc:"filler to make it right; absent: not checked"`
}

// shim is what one stud needs to come into the plane.
type shim struct {
	X  unit.Length `json:"x" doc:"from the left end"`
	By unit.Length `json:"by" doc:"positive: a shim; negative: planing"`
}

func facesOf(p plan.Plan) []face {
	return list(p.Room.Faces, func(f site.Face) face { return faceOf(p, f) })
}

func faceOf(p plan.Plan, f site.Face) face {
	out := face{Name: f.Name, At: placeOf(f.At), Kind: faceKinds[f.Kind], Left: f.LeftCorner, Right: f.RightCorner,
		Board: outlineOf(f.Board), Cut: outlineOf(f.Cut), Edges: edgesOf(f.Edges, f.At), Set: f.Set, Order: f.Order,
		Layers: layers{f.BoardThick, f.BedThick, f.BedLeast, f.BedMost, f.TileThick, f.TileOff}}
	if f.Kind == site.WallFace && p.Room.FinishedKnown {
		out.Floor = &reach{f.LowFloor, f.HighFloor}
	}
	if f.SlopeFall != 0 {
		fall := share(f.SlopeFall)
		out.Fall = &fall
	}
	out.pierced(p, f)
	out.Flat = flatnessOf(f.Flat)
	out.Shims = list(f.Shims, func(s site.Shim) shim { return shim(s) })
	return out
}

// pierced tells what goes through the face or lies behind it.
func (out *face) pierced(p plan.Plan, f site.Face) {
	out.Holes = list(f.Holes, func(h site.Hole) hole {
		return hole{h.Name, placeOf(h.At), pointOf(h.Center), given(h.Diameter), given(h.Drill)}
	})
	out.Lines = list(f.Lines, func(l site.CenterLine) line { return line{l.Name, placeOf(lineAt(p, l.Name)), l.X} })
	out.Openings = list(f.Openings, func(o site.Opening) opening {
		return opening{o.Name, placeOf(o.At), o.Kind, rectOf(o.Rect), given(o.Depth), given(o.Moves)}
	})
	out.Buried = list(f.Buried, func(b site.Buried) buried { return buried{b.Name, placeOf(b.At), b.Kind, rectOf(b.Rect)} })
}

// edgesOf lists edges by their labels. An edge between two fields is where its face's fields are.
func edgesOf(list []site.Edge, face diag.Place) []edge {
	out := make([]edge, 0, len(list))
	for i, e := range list {
		at := e.At
		if at.Path == "" {
			at = face
		}
		out = append(out, edge{geom.Label(i + 1), edgeKinds[e.Kind], e.Name, placeOf(at), e.Other, e.Runs, e.Gap, e.Hidden,
			e.Joint, e.Soft, e.Shows, e.Miter, e.Weight})
	}
	return out
}

func flatnessOf(f site.Flatness) flatness {
	out := flatness{Checked: f.Checked, Rule: f.Rule}
	if f.Checked {
		fill := liters(f.Fill)
		out.Over, out.Fill = known(f.Over, true), &fill
	}
	return out
}
