package web

import (
	"fmt"
	"html/template"
	"net/http"
	"net/url"

	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

var layoutPage = pageOf{name: "layout", tab: "Lay out", fill: layout}

// laidOut is one face with its layout, the others that were found, and what may be asked of it.
type laidOut struct {
	Faces   []faceTab
	Face    string
	Field   string
	Drawing template.HTML
	Scale   int64
	CanMove bool
	Fixed   string // why the pattern can not be moved by hand
	Held    bool
	Figures []figure
	Step    string // how far one press of an arrow moves the pattern
	StepUm  int64
	Choices []choice
	Compare report.Table
	Why     string
	Pieces  []pieceLine
	Whole   string
	Asks    []field
	Tiles   collection
	NewFace []string // faces without tile work
	Goods   []string
	Says    []said
}

// faceTab is one face to choose.
type faceTab struct {
	Name, Address string
	Here          bool
}

// figure is one number of a layout.
type figure struct{ Name, Value string }

// choice is one of the best few layouts.
type choice struct {
	K            int
	Name, Reason string
	Picture      string
	Here         bool
}

// pieceLine is one piece in words: what a tap on it shows.
type pieceLine struct {
	ID, Address, Kind, Cut, Exact, Holes, Keep, Tolerance string
	Whole                                                 bool
	Tick                                                  string // its address by the name of its face, which a tick binds to
	Hash                                                  string // its outline and what it is cut to, likewise
	Done                                                  bool
}

func layout(v *view, r *http.Request) (*frame, error) {
	l := laidOut{Face: r.FormValue("face")}
	if !v.Unsaved || text.At(v.Tree, []string{"lay", l.Face}) == nil { // while a hand moves a pattern its face is known, and every step counts
		if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
			return nil, err
		}
		l.Face = v.chosenFace(r)
	}
	if err := v.make(plan.Options{UpTo: plan.UpToTiling, Face: l.Face, Quick: v.Unsaved}); err != nil {
		return nil, err
	}
	v.choosable(&l)
	answer := "No tile is laid on any face yet. Say which tile there is, then on which face it goes."
	if f, z, ok := v.laid(l.Face, r.FormValue("field")); ok {
		l.Field = z.Name
		if err := v.showFace(&l, f, z); err != nil {
			return nil, err
		}
		answer = fmt.Sprintf("%s: %d whole, %d cut. %s", capital(l.Face), z.Chosen().Whole, z.Chosen().CutCount, capital(z.Chosen().Why.Say(v.Plan.Style)))
	} else if l.Face != "" {
		answer = capital(l.Face) + " can not be laid yet: " + v.missing() + "."
	}
	if !v.Unsaved {
		if err := v.asks(&l); err != nil {
			return nil, err
		}
	}
	return &frame{Title: "Lay out", Question: "Where does everything land?", Answer: answer, Body: l, Moved: v.Unsaved && l.Drawing != ""}, nil
}

// chosenFace is the face that is asked for, or the first with tile work.
func (v *view) chosenFace(r *http.Request) string {
	asked := r.FormValue("face")
	for _, l := range v.Plan.Document.Lay {
		if l.Face == asked {
			return asked
		}
	}
	if len(v.Plan.Document.Lay) > 0 {
		return v.Plan.Document.Lay[0].Face
	}
	return ""
}

func (v *view) choosable(l *laidOut) {
	has := map[string]bool{}
	for _, f := range v.Plan.Document.Lay {
		has[f.Face] = true
		l.Faces = append(l.Faces, faceTab{f.Face, v.Address() + "/layout?face=" + url.QueryEscape(f.Face), f.Face == l.Face})
	}
	for _, f := range v.faces() {
		if !has[f] {
			l.NewFace = append(l.NewFace, f)
		}
	}
	for _, t := range v.Plan.Document.Tiles {
		l.Goods = append(l.Goods, t.Name)
	}
}

// laid finds a field of a face: the one named, else the one with the most pieces.
func (v *view) laid(face, field string) (f plan.Face, z plan.Field, ok bool) {
	for _, f = range v.Plan.Tiling.Faces {
		if f.Name != face {
			continue
		}
		for _, c := range f.Fields {
			if len(c.Layouts) == 0 {
				continue
			}
			if c.Name == field {
				return f, c, true
			}
			if !ok || c.Region.Area2() > z.Region.Area2() {
				z, ok = c, true
			}
		}
		return f, z, ok
	}
	return f, z, false
}

func (v *view) showFace(l *laidOut, f plan.Face, z plan.Field) error {
	screen, ok := sheet.FaceOnScreen(v.Plan, f.Name)
	if !ok {
		return nil
	}
	var err error
	if l.Drawing, err = drawn(screen.Page, "face-"); err != nil {
		return err
	}
	l.Scale, l.Held = screen.Scale, z.Held
	_, l.CanMove = v.crossing(f.Name, z)
	if !l.CanMove {
		l.Fixed = "The pattern of this face can not be moved by hand: the document has no words for where a joint is on it. Choose among the layouts below."
	}
	l.Step, l.StepUm = v.Plan.Style.Format(v.step()), int64(v.step()/unit.Micrometre)
	l.Figures = v.figures(z)
	l.Why = z.Chosen().Why.Say(v.Plan.Style)
	l.Says = v.about([]string{"lay", f.Name})
	if v.Unsaved { // a hand moves the pattern: the figures follow, the lists wait until it rests
		return nil
	}
	l.Pieces = v.pieces(f)
	l.Whole = piecesWords(l.Pieces)
	return v.choices(l)
}

// piecesWords counts what the list of all pieces holds.
func piecesWords(all []pieceLine) string {
	whole := 0
	for _, p := range all {
		if p.Whole {
			whole++
		}
	}
	return fmt.Sprintf("All %d: %d to cut or drill, %d whole.", len(all), len(all)-whole, whole)
}

// step is how far one press moves the pattern: a quarter inch or five millimetres.
func (v *view) step() unit.Length {
	if v.Plan.Style.System == unit.Millimetres {
		return 5 * unit.Millimetre
	}
	return unit.Inch / 4
}

// figures are the numbers that a hand follows while it moves the pattern.
func (v *view) figures(z plan.Field) []figure {
	c := z.Chosen()
	out := []figure{{"whole tiles", fmt.Sprint(c.Whole)}, {"cut pieces", fmt.Sprint(c.CutCount)}, {"tiles cut up", fmt.Sprint(c.Tiles)}}
	for _, m := range c.Measures {
		switch m.Name {
		case "narrowest cut", "slivers in sight", "holes clear of joints", "balance":
			value := v.Plan.Style.Format(m.Length)
			switch {
			case m.None:
				value = "none"
			case m.IsCount:
				value = fmt.Sprint(m.Count)
			case m.Length < 0:
				value = "in by " + v.Plan.Style.Format(-m.Length)
			}
			out = append(out, figure{string(m.Name), value})
		}
	}
	return out
}

// pieces words every piece of a face in the order of setting.
func (v *view) pieces(f plan.Face) []pieceLine {
	s, own := v.Plan.Style, ownStyle(v.Plan)
	var out []pieceLine
	for _, c := range report.InSettingOrder(f) {
		p := pieceLine{ID: f.Mark + " " + c.Address, Address: c.Address, Kind: report.PieceKind(c), Whole: c.Uncut() && len(c.Holes) == 0,
			Holes: report.HolesWords(s, c.Holes), Tick: f.Name + " > " + c.Address}
		cut := "whole"
		if !c.Uncut() {
			p.Cut, p.Exact, p.Keep, p.Tolerance = report.CutWords(s, c.Cut), report.ExactWords(s, c.Cut), report.KeptWords(c), report.ToleranceWords(s, c.Cut)
			cut = report.CutWords(own, c.Cut)
		}
		p.Hash = outlineOf(c.InTile, cut, report.HolesWords(own, c.Holes))
		out = append(out, p)
	}
	return out
}
