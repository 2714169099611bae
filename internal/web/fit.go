package web

import (
	"net/http"
	"strings"

	"dryfit/internal/document"
	"dryfit/internal/mend"
	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/text"
)

var fitPage = pageOf{name: "fit", tab: "Fit", fill: fitting}

// fitShelves are what is held against each other, in the order in which a person meets it.
var fitShelves = []shelf{
	{"cabinets", "Cabinets", "cabinet", "vanity"},
	{"tops", "Tops", "top", "vanity top"},
	{"basins", "Basins", "basin", "bowl"},
	{"taps", "Taps", "tap", "basin tap"},
	{"wastes", "Wastes and traps", "waste", "basin waste"},
	{"stops", "Stop valves", "stop valve", "cold stop valve"},
	{"WCs", "WCs", "WC", "WC"},
	{"fittings", "Mirrors, lights, bars, fans", "fitting", "mirror"},
	{"people", "Who uses the room", "person", "tallest"},
}

var fitEnter = shelves{Title: "What is to be fitted", Page: "fit", Help: "As the data sheets say. Leave open what you do not know yet: what hangs on it is then not checked, and says so."}

// fitted is what the page says of what is placed.
type fitted struct {
	fitDrawn
	Groups []checkGroup
	Cards  []report.Table
	All    *remedy // mends all at once
	Moves  moves
	Margin report.Table
	Enter  shelves
	Empty  bool
}

// remedy is a change that the page offers.
type remedy struct {
	report.Remedy
	Sets []setting
}

// setting is what an input of a remedy's form writes.
type setting struct{ Name, Value string }

func remedyOf(r report.Remedy) remedy {
	out := remedy{Remedy: r}
	for _, op := range r.Ops {
		out.Sets = append(out.Sets, setting{doValue + ":" + pathName(op.Path), op.Value})
	}
	return out
}

// mended looks for what mends the plan. Nobody waits for it on an edit that is not kept.
func (v *view) mended() (mend.Mends, error) {
	if v.Unsaved {
		return mend.Mends{}, nil
	}
	return mend.Of(v.ctx, document.DraftOf("room.yaml", text.Source{Src: v.Text, Tree: v.Tree}), v.Plan, mend.Options{})
}

// checkGroup is all checks of one state.
type checkGroup struct {
	Title, Class string
	Open         bool
	Checks       []checkSaid
}

// checkSaid is a check with the inputs for what it lacks.
type checkSaid struct {
	report.CheckLine
	ID, Class string
	Shown     string // its name in a drawing; "" where it is in none
	Ways      []remedy
	Asks      []field
	Other     []string // facts that this page has no input for, or has asked for already
}

var checkTitles = [...]struct {
	state, title string
	open         bool
}{
	{"misses", "Does not fit", true}, {"not checked", "Not checked: something is not known", true},
	{"fits", "Fits", false}, {"told", "Worth knowing at the wall", false},
}

// marginsShown is how many of the narrowest margins the page lists.
const marginsShown = 12

func fitting(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToFit}); err != nil {
		return nil, err
	}
	m, err := v.mended()
	if err != nil {
		return nil, err
	}
	d, err := v.fitDrawings()
	if err != nil {
		return nil, err
	}
	f := fitted{fitDrawn: d, Enter: v.shelvesOf(fitShelves, fitEnter, r.FormValue("enter")), Groups: v.checkGroups(m, d), Margin: report.Margins(v.Plan, m, marginsShown)}
	if all, ok := report.Together(v.Plan, m); ok {
		one := remedyOf(all)
		f.All = &one
	}
	f.Empty = len(v.Plan.Fit.Checks) == 0
	f.Moves = v.moves()
	for _, wall := range report.SpotWalls(v.Plan) {
		f.Cards = append(f.Cards, report.Spots(v.Plan, wall))
	}
	return &frame{Title: "Fit", Question: "Does it all fit, and what if not?", Answer: report.FitAnswer(v.Plan), Body: f}, nil
}

func (v *view) checkGroups(m mend.Mends, d fitDrawn) []checkGroup {
	lines := report.Checks(v.Plan)
	asked := map[string]bool{}
	var out []checkGroup
	for _, t := range checkTitles {
		g := checkGroup{Title: t.title, Open: t.open, Class: classOf(t.state)}
		for _, l := range lines {
			if l.State == t.state {
				c := v.checkSaid(l, asked)
				c.Shown = d.of(l)
				for _, r := range report.Remedies(v.Plan, m, l.ID) {
					c.Ways = append(c.Ways, remedyOf(r))
				}
				g.Checks = append(g.Checks, c)
			}
		}
		if len(g.Checks) > 0 {
			out = append(out, g)
		}
	}
	return out
}

// checkSaid asks for what a check lacks, each fact once on the page.
func (v *view) checkSaid(l report.CheckLine, asked map[string]bool) checkSaid {
	out := checkSaid{CheckLine: l, ID: idOf(l.ID), Class: classOf(l.State)}
	for _, m := range l.Missing {
		f, ok := v.askFor(m.Path)
		if !ok || asked[f.Name] {
			out.Other = append(out.Other, m.Words)
			continue
		}
		asked[f.Name] = true
		out.Asks = append(out.Asks, f)
	}
	return out
}

func classOf(state string) string { return strings.ReplaceAll(state, " ", "-") }

// Offer pairs the frame with a change that is offered, for a template of both.
func (f *frame) Offer(r remedy) offered { return offered{f, r} }

type offered struct {
	Frame *frame
	Of    remedy
}
