package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/unit"
)

// view is plan.json.
type view struct {
	Format   int          `json:"format" doc:"version of this structure: 1"`
	Name     string       `json:"name" doc:"of the room"`
	Revision string       `json:"revision" doc:"first eight hex digits of the SHA-256 of the document's text"`
	Units    units        `json:"units" doc:"what the sentences in this file are written in; every length is in millimetres all the same"`
	Mark     unit.Length  `json:"mark" doc:"finest mark of the tape, to which saw sizes are rounded"`
	Survey   survey       `json:"survey" doc:"the readings, adjusted, and the corners that they give"`
	Finished finished     `json:"finishedFloor" doc:"what heights above the finished floor count from"`
	Frame    frame        `json:"floorFrame" doc:"whether the floor's joists are stiff enough"`
	Faces    []face       `json:"faces" doc:"every plane of the room: walls, floor, faces of openings"`
	Tiling   []work       `json:"tiling" doc:"the tile work, a face each"`
	Goods    []good       `json:"goods" doc:"how many tiles, and what is cut from which"`
	Fit      fitting      `json:"fit" doc:"every clearance and connection on the finished faces"`
	Clash    meetings     `json:"clash" doc:"the trades against each other"`
	Stock    cutting      `json:"stock" doc:"what is cut from sheets, boards and sticks"`
	Lining   []boarded    `json:"lining" doc:"where the sheets of board or membrane go"`
	Wood     woodwork     `json:"wood" doc:"what is built: cabinets, tops, lines to scribe, trim, finish"`
	Takeoff  needs        `json:"takeoff" doc:"what setting and finishing take: mortar, grout, spacers and the rest"`
	Order    shopping     `json:"order" doc:"what to buy, in packs, and what it costs"`
	Days     days         `json:"days" doc:"when what is done, and what waits on what"`
	Findings []finding    `json:"findings" doc:"all that is wrong, to be looked at, not checked or worth knowing"`
	Assumed  []assumption `json:"assumptions" doc:"what was taken because the document is silent"`
}

// units are the document's.
type units string

func (units) choices() []string { return []string{"in", "mm"} }

// finished says where heights count from.
type finished struct {
	Y    *unit.Length `json:"y,omitempty" doc:"from the level line, up; absent: not known"`
	Rule string       `json:"rule" doc:"in words"`
	At   place        `json:"at" doc:"in the document"`
}

// frame is the check of the floor's joists.
type frame struct {
	Checked  bool         `json:"checked" doc:"false: a fact is missing, see the findings"`
	Ratio    int64        `json:"ratio,omitempty" doc:"span over deflection"`
	Need     int64        `json:"need,omitempty" doc:"what the tile asks for"`
	Deflects *unit.Length `json:"deflects,omitempty" doc:"under the load given"`
	At       place        `json:"at" doc:"in the document"`
}

func viewOf(p plan.Plan) view {
	d := p.Document
	out := view{Format: Format, Name: p.Name, Revision: p.Revision, Units: units(p.Style.System.String()), Mark: p.Style.Mark,
		Survey:   surveyOf(p),
		Finished: finished{known(p.Room.FinishedFloor, p.Room.FinishedKnown), p.Room.FinishedRule, placeOf(orPath(d.Survey.Finished.At, "survey > finished floor"))},
		Frame:    frameOf(p), Faces: facesOf(p), Tiling: workOf(p), Goods: goodsOf(p), Stock: cuttingOf(p), Lining: boardedOf(p), Fit: fittingOf(p), Clash: meetingsOf(p), Wood: woodOf(p), Takeoff: needsOf(p), Order: shoppingOf(p), Days: daysOf(p, report.CausesOf(p)), Findings: findingsOf(p), Assumed: assumedOf(p)}
	return out
}

func frameOf(p plan.Plan) frame {
	f := p.Room.Frame
	out := frame{Checked: f.Checked, Need: f.Need, At: placeOf(orPath(p.Document.Floor.Frame.At, "floor > frame"))}
	if f.Checked {
		out.Ratio, out.Deflects = f.Ratio, known(f.Deflects, true)
	}
	return out
}

// orPath is the place where a fact would be written, when it is not.
func orPath(at diag.Place, path string) diag.Place {
	if at.Path == "" {
		at.Path = path
	}
	return at
}

// list is never null in JSON: an empty list is a list.
func list[T, V any](from []T, view func(T) V) []V {
	out := make([]V, 0, len(from))
	for _, x := range from {
		out = append(out, view(x))
	}
	return out
}
