package export

import (
	"dryfit/internal/clash"
	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/fit"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// fitting is every clearance and connection.
type fitting struct {
	Sets   []string   `json:"sets" doc:"the sets of requirements that it was held against"`
	Checks []check    `json:"checks" doc:"one for each clearance and connection, in the order in which they were made"`
	Jets   []jet      `json:"jets" doc:"where the water of each tap lands"`
	Card   []cardLine `json:"card" doc:"the rough-in card: points in open walls, for work before any tile exists"`
}

// check is one clearance or connection.
type check struct {
	ID      string       `json:"id" doc:"stable"`
	At      place        `json:"at" doc:"of what is checked, in the document"`
	Group   string       `json:"group" doc:"basin, tap, waste, supply, WC, door, box, fitting, room or access"`
	What    string       `json:"what" doc:"in words"`
	State   state        `json:"state" doc:"what came of it"`
	Says    string       `json:"says,omitempty" doc:"the value in words; absent: not checked"`
	Value   *unit.Length `json:"value,omitempty" doc:"absent: it is no length, or not checked"`
	Limit   *unit.Length `json:"limit,omitempty" doc:"absent: it has none"`
	Most    bool         `json:"most" doc:"the limit is the most that is allowed; else the least"`
	Margin  *unit.Length `json:"margin,omitempty" doc:"what is left to the limit; less than nothing: it misses by so much"`
	Rule    string       `json:"rule,omitempty" doc:"id of the published requirement; absent: the data sheets or the user ask it"`
	Source  string       `json:"source,omitempty" doc:"where the limit comes from"`
	Advice  bool         `json:"advice" doc:"a habit: a miss is to be looked at and stops nothing"`
	Missing []string     `json:"missing" doc:"facts without which it was not checked, as document paths"`
	Uses    []string     `json:"uses" doc:"every fact that it hangs on, as document paths"`
	Moves   []term       `json:"moves" doc:"how the margin moves with each thing that may move"`
	Layers  []term       `json:"layers" doc:"how the margin moves with each layer of a build-up"`
}

type state string

func (state) choices() []string {
	return []string{fit.Fits.String(), fit.Misses.String(), fit.NotChecked.String(), fit.Told.String()}
}

// term is how much a margin moves with a fact.
type term struct {
	Path string `json:"path" doc:"of the fact, in the document"`
	Per  share  `json:"per" doc:"by which the margin grows where the fact grows by one"`
}

// jet is where water lands.
type jet struct {
	Tap       string      `json:"tap" doc:"the user's name of it"`
	Basin     string      `json:"basin" doc:"the user's name of it"`
	OutletOff unit.Length `json:"outletOff" doc:"the outlet off the finished wall"`
	OutletY   unit.Length `json:"outletY" doc:"from the level line, up"`
	Bottom    unit.Length `json:"bottom" doc:"of the basin, from the level line, up"`
	Nearest   unit.Length `json:"nearest" doc:"off the finished wall, where the slowest stream lands"`
	Farthest  unit.Length `json:"farthest" doc:"off the finished wall, where the fastest stream lands"`
	Wide      unit.Length `json:"wide" doc:"the stream where it lands"`
	Waste     unit.Length `json:"waste" doc:"center of the waste off the finished wall"`
}

// cardLine is one line of the rough-in card.
type cardLine struct {
	Name       string       `json:"name" doc:"the user's"`
	What       string       `json:"what" doc:"in words"`
	At         place        `json:"at" doc:"in the document"`
	Face       string       `json:"face" doc:"the wall"`
	Level      unit.Length  `json:"level" doc:"from the level line, up"`
	OverFloor  unit.Length  `json:"overFloor" doc:"above the finished floor"`
	Stud       string       `json:"stud,omitempty" doc:"the recorded stud that it is told from; absent: none is recorded"`
	FromStud   *unit.Length `json:"fromStud,omitempty" doc:"from the nearer edge of that stud, to the right"`
	Corner     string       `json:"corner" doc:"left corner of the wall"`
	FromCorner unit.Length  `json:"fromCorner" doc:"from that corner of the studs, to the right"`
	BuildUp    unit.Length  `json:"buildUp" doc:"what will lie on the studs there"`
}

// meetings are the trades against each other.
type meetings struct {
	Meetings []meeting `json:"meetings" doc:"things that come near each other"`
	CutOuts  []cutOut  `json:"cutOuts" doc:"what is cut out of drawers to clear plumbing"`
}

// meeting is two things near each other.
type meeting struct {
	ID     string      `json:"id" doc:"stable"`
	At     place       `json:"at" doc:"of the first, in the document"`
	One    string      `json:"one" doc:"in words"`
	Other  string      `json:"other" doc:"in words"`
	Apart  unit.Length `json:"apart" doc:"less than nothing: they take so much of each other's room"`
	Need   unit.Length `json:"need" doc:"how far apart they must be"`
	Misses bool        `json:"misses" doc:"they are too near"`
	Rule   string      `json:"rule,omitempty" doc:"id of the requirement"`
}

// cutOut is what is cut out of a drawer.
type cutOut struct {
	Drawer  string      `json:"drawer" doc:"in words"`
	At      place       `json:"at" doc:"in the document"`
	For     []string    `json:"for" doc:"what it clears"`
	From    unit.Length `json:"from" doc:"from the left side of the drawer's box"`
	To      unit.Length `json:"to" doc:"from the left side of the drawer's box"`
	Deep    unit.Length `json:"deep" doc:"from the back of the box"`
	Up      unit.Length `json:"up" doc:"from the underside of the box to the lowest of what it clears"`
	Through bool        `json:"through" doc:"its bottom is cut too"`
}

func fittingOf(p plan.Plan) fitting {
	return fitting{Sets: list(p.Fit.Sets, func(s string) string { return s }), Checks: list(p.Fit.Checks, func(k fit.Check) check { return checkOf(p.Style, k) }),
		Jets: list(p.Fit.Jets, func(j fit.Jet) jet {
			return jet{j.Tap, j.Basin, j.OutletOff, j.OutletY, j.Bottom, j.Nearest, j.Farthest, j.Wide, j.Waste}
		}),
		Card: list(p.Fit.Card, spotOf)}
}

func checkOf(s unit.Style, k fit.Check) check {
	same := func(s string) string { return s }
	out := check{ID: k.ID, At: placeOf(k.At), Group: k.Group, What: (diag.Finding{Text: k.What, Values: k.Values}).Say(s), State: state(k.State.String()), Most: k.Most, Rule: k.Rule, Source: k.Cite, Advice: k.Advice,
		Missing: list(k.Missing, same), Uses: list(k.Uses, same), Moves: list(k.Moves, termOf), Layers: list(k.Layers, termOf)}
	if k.State == fit.NotChecked {
		return out
	}
	out.Says = k.Value.Say(s)
	if k.Length {
		out.Value = known(unit.Length(k.Value.Num), true)
		out.Limit, out.Margin = known(unit.Length(k.Limit.Num), k.State != fit.Told), known(k.Margin, k.State != fit.Told)
	}
	return out
}

func termOf(t figure.Term) term { return term{t.Path, share(t.Per)} }

func spotOf(s fit.Spot) cardLine {
	return cardLine{Name: s.Name, What: s.What, At: placeOf(s.At), Face: s.Wall, Level: s.Level, OverFloor: s.OverFloor, Stud: s.Stud, FromStud: known(s.FromStud, s.Stud != ""), Corner: s.Corner, FromCorner: s.FromCorner, BuildUp: s.BuildUp}
}

func meetingsOf(p plan.Plan) meetings {
	return meetings{Meetings: list(p.Clash.Meetings, func(m clash.Meeting) meeting {
		return meeting{m.ID, placeOf(m.At), m.One, m.Other, m.Apart, m.Need, m.Misses, m.Rule}
	}), CutOuts: list(p.Clash.CutOuts, func(c clash.CutOut) cutOut {
		return cutOut{c.Drawer, placeOf(c.At), c.For, c.From, c.To, c.Deep, c.Up, c.Through}
	})}
}
