package export

import (
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/plan"
	"dryfit/internal/site"
	"dryfit/internal/unit"
)

// survey is the adjusted outline of the floor, in the plan frame: the first corner at the origin, the first wall along x.
type survey struct {
	At       place        `json:"at" doc:"in the document"`
	Verdict  verdict      `json:"verdict" doc:"what the readings say of each other"`
	Fixed    bool         `json:"fixed" doc:"the readings fix the shape"`
	Freedom  int          `json:"freedom" doc:"readings more than needed"`
	Closing  *unit.Length `json:"closing,omitempty" doc:"the largest closing error, or, where a reading is to be taken again, that of the first such; absent: nothing checks the readings"`
	Suspects []string     `json:"suspects" doc:"readings that are likely to be wrong"`
	Area     area         `json:"area" doc:"of the outline at the studs"`
	Corners  []corner     `json:"corners" doc:"in the document's order"`
	Points   []spot       `json:"points" doc:"further floor points"`
	Readings []reading    `json:"readings" doc:"every tape reading"`
}

// verdict is what the readings say of each other.
type verdict string

var verdicts = [...]verdict{"unsolved", "nothing checks them", "they agree", "one is suspect", "they cannot tell which is wrong"}

func (verdict) choices() []string { return words(verdicts[:]) }

// corner is one corner of the floor.
type corner struct {
	Name      string       `json:"name" doc:"the user's"`
	At        place        `json:"at" doc:"in the document"`
	Stud      point        `json:"stud" doc:"where the bare walls meet, at the floor"`
	Board     point        `json:"board" doc:"where the boards meet"`
	Finished  point        `json:"finished" doc:"where the finished faces meet"`
	Angle     angle        `json:"angle" doc:"inside, between the finished faces,"`
	Outside   bool         `json:"outside" doc:"an outside corner: more than 180 degrees"`
	BareFloor *unit.Length `json:"bareFloor,omitempty" doc:"from the level line, up; absent: not known"`
	Ceiling   *unit.Length `json:"ceiling,omitempty" doc:"from the level line, up; absent: not known"`
}

// spot is a named point on the floor.
type spot struct {
	Name string `json:"name" doc:"the user's"`
	At   place  `json:"at" doc:"in the document"`
	P    point  `json:"p" doc:"in the plan frame"`
}

// reading is one tape reading after the adjustment.
type reading struct {
	Name       string       `json:"name" doc:"from corner to corner"`
	At         place        `json:"at" doc:"in the document"`
	Use        use          `json:"use" doc:"what became of it"`
	By         string       `json:"by,omitempty" doc:"what superseded it, or why it is not used"`
	Measured   unit.Length  `json:"measured" doc:"as read"`
	Reduced    unit.Length  `json:"reduced" doc:"to the studs at the floor"`
	Correction *unit.Length `json:"correction,omitempty" doc:"adjusted less measured; absent: not used"`
	Closing    *unit.Length `json:"closing,omitempty" doc:"measured less what all others make it; absent: nothing checks it"`
	Standard   *thousandths `json:"standard,omitempty" doc:"standardized correction; absent: nothing checks it"`
	Differs    *unit.Length `json:"differs,omitempty" doc:"of a superseded one: newer less older"`
}

// use is what became of a reading.
type use string

var uses = [...]use{"used", "superseded", "not used"}

func (use) choices() []string { return words(uses[:]) }

func words[S ~string](list []S) []string { return listOf(list) }

func listOf[S ~string](from []S) []string {
	return list(from, func(s S) string { return string(s) })
}

func surveyOf(p plan.Plan) survey {
	s, d := p.Room.Survey, p.Document.Survey
	out := survey{At: placeOf(orPath(d.At, "survey")), Verdict: verdicts[s.Verdict], Fixed: s.Fixed, Freedom: s.Freedom,
		Closing: known(s.Closing, s.Verdict > site.NoCheck), Area: area(s.Area), Corners: []corner{}, Points: []spot{}}
	out.Suspects = list(s.Suspects, func(i int) string { return s.Readings[i].Name })
	for _, c := range s.Corners {
		out.Corners = append(out.Corners, corner{c.Name, placeOf(named(d.Corners, c.Name, "survey > corners")), pointOf(c.Raw), pointOf(c.Board),
			pointOf(c.Finished), angle(c.Angle), c.Outside, known(c.BareFloor, c.FloorKnown), known(c.CeilingY, c.CeilingKnown)})
	}
	for _, c := range s.Points {
		out.Points = append(out.Points, spot{c.Name, placeOf(named(d.Points, c.Name, "survey > points")), pointOf(c.P)})
	}
	out.Readings = list(s.Readings, readingOf)
	return out
}

// named finds where a name is written.
func named(names []document.Name, name, path string) diag.Place {
	for _, n := range names {
		if n.Text == name {
			return orPath(n.At, path)
		}
	}
	return diag.Place{Path: path}
}

func readingOf(r site.Reading) reading {
	out := reading{Name: r.Name, At: placeOf(r.At), Use: uses[r.Use], By: r.By, Measured: r.Measured, Reduced: r.ToStud}
	out.Correction = known(r.Residual, r.Use == site.Used)
	if r.Use == site.Used && r.Checked {
		n := thousandths(r.Standard)
		out.Closing, out.Standard = known(r.Closing, true), &n
	}
	out.Differs = known(r.Differs, r.Use == site.Superseded)
	return out
}
