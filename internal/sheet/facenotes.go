package sheet

import (
	"fmt"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/draw"
	"dryfit/internal/draw/parts"
	"dryfit/internal/report"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// drill is the diameter on the drawing of a hole.
func (w *wall) drill(hole string, given unit.Length) unit.Length {
	return report.DrillOf(w.face, hole, given)
}

// faceNotes says in words what belongs to a face: how to read it, how to start, its tile, edges, holes, layouts.
func (w *wall) faceNotes(f *flow, d *facade) {
	f.key(w.legend(d))
	f.notes("", w.howToRead(d)...)
	f.notes("Stops work here", w.found(diag.Stop)...)
	f.notes("To look at here", w.found(diag.Look)...)
	for _, z := range w.face.Fields {
		f.notes(capital(z.Name), w.fieldNotes(z)...)
	}
	f.notes("On this face", w.remarks()...)
	f.table(report.Holes(w.p, w.site, w.face), 0)
	if w.site.Kind == site.WallFace {
		f.table(report.Buried(w.p, w.site), 0)
	}
	f.table(report.Edges(w.p, w.site), 0)
	for _, z := range w.face.Fields {
		f.table(report.Layouts(w.p, w.site, z), 0)
	}
	f.notes("Assumed here", w.assumed()...)
	f.notes("Not checked here", w.found(diag.Unchecked)...)
}

func (w *wall) howToRead(d *facade) []string {
	_, across, up := report.Datum(w.p, w.site)
	out := []string{fmt.Sprintf("Running dimensions: columns %s; courses %s. Where faces mix, its pieces bear %s before their numbers.", across, up, w.face.Mark)}
	if rows := report.Columns(d.main()); len(rows) > 1 {
		out = append(out, fmt.Sprintf("Below the drawing: %s; above it: %s. All are on the gauge-rod sheet.", rows[0].Which, rows[1].Which))
	}
	if w.face.Ledger != nil {
		out = append(out, capital(report.LedgerWords(w.p, *w.face.Ledger))+". "+w.onLedger(d))
	}
	if len(d.small) > 0 {
		out = append(out, report.Count(len(d.small), "piece is", "pieces are")+" too small here for a number: the part sheets that follow show them.")
	}
	return out
}

// onLedger says how to set from the ledger: its line is the top of the first course, so the course above it stands a joint
// higher.
func (w *wall) onLedger(d *facade) string {
	on := "stand the course above on it"
	if j := d.main().Joint; j > 0 {
		on += " with spacers of " + w.p.Style.Fine().Format(j)
	}
	return "Fix the top edge of the ledger there, " + on + ", and set upward; what is under it comes last."
}

// fieldNotes says what a field is made of, where it begins, and what speaks for and against its layout.
func (w *wall) fieldNotes(z tiling.Field) []string {
	s, c := w.p.Style, z.Chosen()
	out := []string{fmt.Sprintf("%s %s, %s, joint %s: %d set whole, %d cut; by themselves the cuts take %s, no way needs fewer than %d.",
		z.Tile, sizes(s, z), z.Bond, s.Fine().Format(z.Joint), c.Whole, c.CutCount, report.Count(c.Tiles, "tile", "tiles"), c.TilesLeast)}
	if len(z.Layouts) == 0 {
		return []string{"No layout was found for it; see the findings."}
	}
	at, across, _ := report.Datum(w.p, w.site)
	out = append(out, fmt.Sprintf("A joint crossing lies %s %s and %s.", s.Format(c.Origin.X-at.X), across, report.UpWords(w.p, w.site, c.Origin.Y)))
	if z.Held {
		out = append(out, "The layout is held where you pinned it.")
	}
	for _, x := range []struct{ head, words string }{{"For it: ", c.Why.Say(s)}, {"Against it: ", c.WhyNot.Say(s)}, {"Search: ", z.Searched.Say(s)}} {
		if x.words != "" {
			out = append(out, x.head+x.words+".")
		}
	}
	return out
}

// sizes words the tile's real sizes, which are finer than a tape shows.
func sizes(s unit.Style, z tiling.Field) string {
	s = s.Fine()
	var out []string
	for _, x := range z.Sizes {
		out = append(out, s.Bare(x.Length)+" × "+s.Bare(x.Width))
	}
	return strings.Join(out, " and ")
}

// remarks are bed, flatness, shims and the floor's structure.
func (w *wall) remarks() []string {
	s := w.p.Style
	var out []string
	for _, x := range []struct {
		what  string
		thick unit.Length
	}{{"Board", w.site.BoardThick}, {"Bed", w.site.BedThick}, {"Tile", w.site.TileThick}} {
		if x.thick > 0 {
			out = append(out, fmt.Sprintf("%s %s thick.", x.what, s.Fine().Format(x.thick)))
		}
	}
	if w.site.BedMost > w.site.BedLeast {
		out = append(out, fmt.Sprintf("Bed from %s to %s over the face.", s.Fine().Format(w.site.BedLeast), s.Fine().Format(w.site.BedMost)))
	}
	out = []string{strings.Join(out, " ")}
	out = append(out, flatness(s, w.site.Flat))
	for _, x := range w.site.Shims {
		out = append(out, shim(s, x))
	}
	if w.site.Kind == site.FloorFace {
		out = append(out, w.frame())
	}
	return out
}

func flatness(s unit.Style, f site.Flatness) string {
	switch {
	case !f.Checked:
		return "Flatness: not checked, no straightedge reading."
	case f.Over > 0:
		return fmt.Sprintf("Flatness: %s more than %s allows; about %s of filler makes it right.", s.Format(f.Over), cite(f.Rule), report.VolumeWords(s, f.Fill))
	}
	return "Flatness: within " + cite(f.Rule) + " where it was read."
}

// cite words the rule that a face names by its id; an id without a record is shown as it is.
func cite(id string) string {
	for _, r := range []rule.Rule{rule.FlatSmall10, rule.FlatSmall12, rule.FlatLarge10, rule.FlatLarge24} {
		if r.ID == id {
			return r.Cite()
		}
	}
	return id
}

func shim(s unit.Style, x site.Shim) string {
	switch {
	case x.By > 0:
		return fmt.Sprintf("Stud at %s: shim %s.", s.Format(x.X), s.Format(x.By))
	case x.By < 0:
		return fmt.Sprintf("Stud at %s: plane off %s.", s.Format(x.X), s.Format(-x.By))
	}
	return fmt.Sprintf("Stud at %s: as it is.", s.Format(x.X))
}

// frame is the line about the structure under a floor.
func (w *wall) frame() string {
	f := w.p.Room.Frame
	if !f.Checked {
		return "Floor structure: not checked. A licensed engineer decides whether it is stiff enough for tile or stone."
	}
	verdict := "is stiff enough by that number"
	if f.Ratio < f.Need {
		verdict = "is NOT stiff enough"
	}
	return fmt.Sprintf("Floor structure: L/%d where this tile needs L/%d; it %s. A licensed engineer decides.", f.Ratio, f.Need, verdict)
}

// legend explains what the drawing shows, and nothing that it does not.
func (w *wall) legend(d *facade) []parts.Entry {
	out := []parts.Entry{
		{Pen: draw.Line(draw.Narrow), Text: "whole: course-column"},
		{Pen: draw.Line(draw.Narrow), Fill: draw.Fill{Hatch: draw.Diagonal}, Text: "cut"},
	}
	line := func(is bool, p draw.Pen, text string) {
		if is {
			out = append(out, parts.Entry{Pen: p, Line: true, Text: text})
		}
	}
	line(len(w.face.Movement) > 0, softPen, "soft joint, no grout")
	line(w.site.Kind == site.WallFace, levelPen, "level line")
	line(w.site.Kind == site.WallFace && w.p.Room.FinishedKnown, floorPen, "finished floor")
	line(w.face.Ledger != nil, ledgerPen, "ledger, first course")
	line(len(w.site.Lines) > 0, centerPen, "center line")
	line(d.hasBoardEdges(), hiddenPen, "board's edge at opening")
	line(len(w.site.Buried) > 0, buriedPen, "in the wall (W)")
	return out
}

// about says whether a document path speaks of this face, its goods or what is in it.
func (w *wall) about(path string) bool {
	keys := strings.Split(path, " > ")
	for _, z := range w.face.Fields {
		if has(keys, z.Tile) {
			return true
		}
	}
	for _, h := range w.site.Holes {
		if has(keys, h.Name) {
			return true
		}
	}
	for _, o := range w.site.Openings {
		if has(keys, o.Name) {
			return true
		}
	}
	return has(keys, w.face.Name) || strings.Contains(path, "> "+w.face.Name)
}

func has(keys []string, name string) bool {
	for _, k := range keys {
		if k == name {
			return true
		}
	}
	return false
}

func (w *wall) assumed() []string {
	var out []string
	for _, a := range w.p.Assumed {
		if w.about(a.At.Path) {
			out = append(out, capital(a.Say(w.p.Style))+" ("+a.Source+").")
		}
	}
	return out
}

// found are the findings of a class that speak of this face, each with what would mend it.
func (w *wall) found(c diag.Class) []string {
	var out []string
	for _, f := range w.p.Findings {
		if f.Class != c || !w.about(f.At.Path) {
			continue
		}
		words := capital(f.Say(w.p.Style)) + "."
		if f.Mend != "" {
			words += " Mend: " + f.SayMend(w.p.Style) + "."
		}
		out = append(out, words)
	}
	return out
}
