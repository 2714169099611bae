package web

import (
	"bytes"
	"encoding/json"
	"html/template"
	"net/http"

	"dryfit/internal/plan"
	"dryfit/internal/report"
	"dryfit/internal/sheet"
)

var wallPage = pageOf{name: "wall", fill: atWall}

// wallView is one face as it is worked at: its drawing, and its pieces in the order of setting.
type wallView struct {
	Face    string
	Drawing template.HTML
	Pieces  []pieceLine
	Data    template.JS // the pieces for the page's script, as JSON
	Key     string      // under which a phone keeps its ticks
	Bare    template.HTML
	Recut   []said         // pieces that were cut before the plan changed
	Rough   []report.Table // the rough-in card: what pierces the face and what is inside it
}

// Script is the pieces as data: "<" is escaped in it, so that no name of the user's ends the element it stands in.
func scriptData(v any) (template.JS, error) {
	b, err := json.Marshal(v)
	return template.JS(b), err
}

func atWall(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{UpTo: plan.UpToSite}); err != nil {
		return nil, err
	}
	face := v.chosenFace(r)
	if err := v.make(plan.Options{UpTo: plan.UpToTiling, Face: face}); err != nil {
		return nil, err
	}
	f, _, ok := v.laid(face, "")
	if !ok {
		return nil, fault{http.StatusNotFound, "That face is not laid."}
	}
	w, err := v.wall(f)
	if err != nil {
		return nil, err
	}
	return &frame{Title: capital(face), Body: w}, nil
}

func (v *view) wall(f plan.Face) (wallView, error) {
	screen, _ := sheet.FaceOnScreen(v.Plan, f.Name)
	drawing, err := drawn(screen.Page, f.Mark+"-")
	if err != nil {
		return wallView{}, err
	}
	done, err := v.ticks()
	if err != nil {
		return wallView{}, err
	}
	w := wallView{Face: f.Name, Drawing: drawing, Pieces: v.pieces(f), Key: "dryfit-ticks-" + itoa(int64(v.ID))}
	for i, p := range w.Pieces {
		w.Pieces[i].Done = stands(done[p.Tick], p.Hash)
	}
	if w.Recut, err = v.recut([]plan.Face{f}, map[string][]pieceLine{f.Name: w.Pieces}); err != nil {
		return wallView{}, err
	}
	if err := v.roughIn(&w, f); err != nil {
		return wallView{}, err
	}
	w.Data, err = scriptData(w.Pieces)
	return w, err
}

// roughIn fills the card that says where pipes, boxes and what is in the wall are.
func (v *view) roughIn(w *wallView, f plan.Face) error {
	bare, ok := sheet.BareOnScreen(v.Plan, f.Name)
	face, known := v.Plan.Room.Face(f.Name)
	if !ok || !known {
		return nil
	}
	w.Rough = []report.Table{report.Holes(v.Plan, face, f), report.Buried(v.Plan, face)}
	var err error
	w.Bare, err = drawn(bare.Page, f.Mark+"-bare-")
	return err
}

// loneBook is the walls in one file.
type loneBook struct {
	Name, Revision string
	Walls          []wallView
	Style          template.CSS
	Script         template.JS
	Assumed        []string
	Findings       []said
	Tally          Tally
}

// alone writes the walls as one file that needs nothing else: drawings, sizes, the next piece, and ticks that it keeps
// on the phone.
func (v *view) alone() ([]byte, error) {
	b := loneBook{Name: v.Name(), Revision: v.Plan.Revision, Style: template.CSS(v.server.assets.text("alone.css")), Script: template.JS(v.server.assets.text("wall.js")),
		Assumed: v.Assumed(), Findings: v.Findings(), Tally: v.Tally()}
	for _, f := range sheet.Laid(v.Plan) {
		w, err := v.wall(f)
		if err != nil {
			return nil, err
		}
		w.Key += "-alone"
		b.Walls = append(b.Walls, w)
	}
	var out bytes.Buffer
	err := v.server.look["alone"].Execute(&out, b)
	return out.Bytes(), err
}
