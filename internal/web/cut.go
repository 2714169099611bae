package web

import (
	"net/http"

	"dryfit/internal/plan"
	"dryfit/internal/report"
)

var cutPage = pageOf{name: "cut", tab: "Cut", fill: cut, whole: true}

// cutting is what to cut, from what.
type cutting struct {
	Goods report.Table
	Plans []cutPlan
	Faces []faceCuts
	Recut []said // pieces that were cut before the plan changed
	Stock *stockCuts
	Wood  *woodWork
	Enter shelves
}

var woodEnter = shelves{Title: "Wood and what is made of it", Page: "cut", Back: "To what to cut", Help: "What stands here is what sheets, sticks and parts are worked out from. Leave open what you do not know yet."}

// woodShelves is what wood is cut from, and what is made of it.
var woodShelves = []shelf{
	{"stock", "Sheets, boards and sticks", "stock", "birch 3/4"},
	{"cabinets", "Cabinets", "cabinet", "vanity"},
	{"tops", "Tops", "top", "vanity top"},
	{"kits", "Lists of parts", "list of parts", "step"},
	{"trim", "Trim", "trim", "baseboard"},
	{"scribes", "Scribes", "scribe", "top back"},
	{"finish", "Finish", "finish", "clear oil"},
	{"tools > saws", "Saws", "saw", "track saw"},
	{"tools > bits", "Bits", "bit", "straight bit"},
}

// cutPlan is which piece comes out of which tile of a good.
type cutPlan struct {
	Table report.Table
	Bound string
}

// faceCuts are the pieces of one face and the settings of the saw that make them.
type faceCuts struct {
	Name   string
	Pieces []pieceLine
	Saw    report.Table
	Whole  string
}

func cut(v *view, r *http.Request) (*frame, error) {
	if err := v.make(plan.Options{}); err != nil {
		return nil, err
	}
	c := cutting{Goods: report.Goods(v.Plan), Enter: v.shelvesOf(woodShelves, woodEnter, r.FormValue("enter"))}
	if c.Enter.Shelf != nil {
		return &frame{Title: "Cut", Question: "What do I cut, from what?", Answer: "Written here, it is cut and drawn on the page of cuts.", Body: c}, nil
	}
	for _, g := range v.Plan.Tiling.Goods {
		if g.CutFrom > 0 {
			c.Plans = append(c.Plans, cutPlan{report.Cutting(v.Plan, g), capital(report.Bound(g))})
		}
	}
	done, err := v.ticks()
	if err != nil {
		return nil, err
	}
	all := map[string][]pieceLine{}
	for _, f := range v.Plan.Tiling.Faces {
		all[f.Name] = v.pieces(f)
		c.Faces = append(c.Faces, v.faceCuts(f, all[f.Name], done))
	}
	if c.Recut, err = v.recut(v.Plan.Tiling.Faces, all); err != nil {
		return nil, err
	}
	if c.Stock, err = v.stockCuts(done, r.FormValue("drawn")); err != nil {
		return nil, err
	}
	if c.Wood, err = v.woodWork(); err != nil {
		return nil, err
	}
	c.Recut = append(c.Recut, v.recutStock(c.Stock, done)...)
	v.Extra = c.Recut
	answer := "Nothing is laid out yet, so no tile is cut."
	if len(c.Faces) > 0 {
		answer = "To buy: " + report.Facts(v.Plan)[2].Answer + "."
	}
	return &frame{Title: "Cut", Question: "What do I cut, from what?", Answer: answer, Body: c}, nil
}

func (v *view) faceCuts(f plan.Face, pieces []pieceLine, done map[string]string) faceCuts {
	out := faceCuts{Name: f.Name, Saw: report.Saw(v.Plan, f), Whole: report.WholeWords(f)}
	for _, p := range pieces {
		if !p.Whole {
			p.Done = stands(done[p.Tick], p.Hash)
			out.Pieces = append(out.Pieces, p)
		}
	}
	return out
}
