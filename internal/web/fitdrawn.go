package web

import (
	"html/template"
	"slices"
	"strings"

	"dryfit/internal/draw"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
)

// fitDrawn are the drawings of the Fit page and where each thing is in them.
type fitDrawn struct {
	Plan   *seenFit
	Sides  []seenFit // a section through each basin
	Fronts []seenFit // each wall with something before it
	at     map[string][]string
}

// seenFit is one drawing with the tables that say the same in words.
type seenFit struct {
	ID, Title string
	Drawing   template.HTML
	Tables    []report.Table
}

// fitDrawings draws what is placed.
func (v *view) fitDrawings() (fitDrawn, error) {
	d := fitDrawn{at: map[string][]string{}}
	if s, ok := sheet.ClearancesOnScreen(v.Plan, d.names("plan")); ok {
		f, err := seen("plan", "Plan, from above", s, report.Stands(v.Plan), report.ClearTable(v.Plan))
		if err != nil {
			return d, err
		}
		d.Plan = &f
	}
	for _, b := range v.Plan.Fit.Places.Basins {
		s, ok := sheet.SideOnScreen(v.Plan, b.Name, d.names("side "+b.Name))
		if !ok {
			continue
		}
		heights, _ := report.SideHeights(v.Plan, b.Name)
		offs, _ := report.SideOffs(v.Plan, b.Name)
		f, err := seen("side "+b.Name, capital(b.Name)+" from the side", s,
			report.HeightTable(v.Plan, "Heights of "+b.Name, heights), report.OffTable(v.Plan, "Distances of "+b.Name, "Off the finished wall", offs))
		if err != nil {
			return d, err
		}
		d.Sides = append(d.Sides, f)
	}
	return d, v.fitFronts(&d)
}

func (v *view) fitFronts(d *fitDrawn) error {
	for _, w := range report.FitWalls(v.Plan) {
		s, ok := sheet.FrontOnScreen(v.Plan, w, d.names("front "+w))
		if !ok {
			continue
		}
		heights, _ := report.HeightsOn(v.Plan, w)
		across, _ := report.AcrossOn(v.Plan, w)
		f, err := seen("front "+w, capital(w)+", facing it", s,
			report.HeightTable(v.Plan, "Heights on "+w, heights), report.OffTable(v.Plan, "Places along "+w, "From the finished wall at its left end", across))
		if err != nil {
			return err
		}
		d.Fronts = append(d.Fronts, f)
	}
	return nil
}

func seen(key, title string, s sheet.Screen, tables ...report.Table) (seenFit, error) {
	id := idOf("drawing " + key)
	html, err := drawn(withoutIDs(s.Page), id+"-")
	return seenFit{ID: id, Title: title, Drawing: html, Tables: tables}, err
}

// withoutIDs takes the names off single strokes: several drawings share the page, and only things are linked to.
func withoutIDs(p draw.Page) draw.Page {
	items := slices.Clone(p.Items)
	for i, it := range items {
		if path, ok := it.(draw.Path); ok {
			path.ID = ""
			items[i] = path
		}
	}
	p.Items = items
	return p
}

// names gives each thing of a drawing its name there, the first of its shapes alone, and notes it.
func (d *fitDrawn) names(drawing string) func(path string) string {
	had := map[string]bool{}
	return func(path string) string {
		if had[path] {
			return ""
		}
		had[path] = true
		id := idOf(drawing + " at " + path)
		d.at[path] = append(d.at[path], id)
		return id
	}
}

// of is the name of what a check speaks of, in the drawing that shows it best: what is about the room, in the plan; all else in the last
// drawing that has it but a section goes before an elevation. "" where it is in none.
func (d fitDrawn) of(l report.CheckLine) string {
	if strings.HasSuffix(l.ID, "> clear in front") {
		if ids := d.at[l.Path+" > clear"]; len(ids) > 0 {
			return ids[0]
		}
	}
	ids := d.at[l.Path]
	switch {
	case len(ids) == 0:
		return ""
	case len(ids) == 1 || l.Group == "room" || l.Group == "WC" || l.Group == "access" || l.Group == "door":
		return ids[0]
	}
	return ids[1]
}
