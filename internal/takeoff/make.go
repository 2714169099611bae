package takeoff

import (
	"slices"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/fit"
	"dryfit/internal/joinery"
	"dryfit/internal/lining"
	"dryfit/internal/place"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// From is what the quantities are reckoned from.
type From struct {
	Document document.Room
	Room     site.Room
	Tiles    tiling.Plan
	Wood     joinery.Plan
	Places   place.Plan
	Parts    []fit.Part  // small parts of plumbing
	Board    lining.Plan // sheets that are laid out one by one
}

// Make reckons what the plan takes.
func Make(from From) (Plan, diag.List, []diag.Assumption) {
	m := &maker{doc: from.Document, room: from.Room, tiles: from.Tiles, places: from.Places, lining: from.Board, at: map[string]int{}}
	for _, f := range from.Tiles.Faces {
		m.face(f)
	}
	m.build()
	m.sealants()
	m.beads()
	m.bits()
	m.finishes(from.Wood)
	m.fixtures(from.Parts)
	m.rest()
	m.lines()
	m.recipes()
	m.stack()
	return m.out, m.findings, m.assumed
}

// maker carries what one run needs.
type maker struct {
	doc      document.Room
	room     site.Room
	tiles    tiling.Plan
	places   place.Plan
	lining   lining.Plan
	out      Plan
	needs    []*need
	at       map[string]int // of pieces, by face and address
	findings diag.List
	assumed  []diag.Assumption
}

func (m *maker) found(c diag.Class, code string, at diag.Place, text, mend string, v ...diag.Value) *diag.Finding {
	return m.findings.Add(c, code, at, text, mend, v...)
}

// assume notes a default once.
func (m *maker) assume(at diag.Place, source, text string, v ...diag.Value) {
	a := diag.Assumption{At: at, Text: text, Values: v, Source: source}
	same := func(o diag.Assumption) bool {
		return o.At == a.At && o.Text == a.Text && o.Source == a.Source && slices.Equal(o.Values, a.Values)
	}
	if !slices.ContainsFunc(m.assumed, same) {
		m.assumed = append(m.assumed, a)
	}
}

func (m *maker) tile(name string) document.Tile {
	for _, t := range m.doc.Tiles {
		if t.Name == name {
			return t
		}
	}
	return document.Tile{Name: name}
}

func (m *maker) lay(face string) document.Lay {
	for _, l := range m.doc.Lay {
		if l.Face == face {
			return l
		}
	}
	return document.Lay{Face: face}
}

// good is the good of a kind for a face: one that names the face, else one that names none. Two that would both do are told.
func (m *maker) good(kind document.GoodKind, face string, suits func(document.Good) bool) (document.Good, bool) {
	var named, open []document.Good
	for _, g := range m.doc.Goods {
		if g.Kind != kind || g.InsteadOf.Known || g.InsteadOf.Unknown || !suits(g) {
			continue
		}
		switch {
		case len(g.For) == 0:
			open = append(open, g)
		case slices.ContainsFunc(g.For, func(n document.Name) bool { return n.Text == face }):
			named = append(named, g)
		}
	}
	all := named
	if len(all) == 0 {
		all = open
	}
	if len(all) == 0 {
		return document.Good{Kind: kind}, false
	}
	if len(all) > 1 {
		m.found(diag.Look, "goods-both", all[1].At, "{0} and {1} are both {2} for {3}: the first is taken", "say which faces each is for, or write instead of",
			diag.T(all[0].Name), diag.T(all[1].Name), diag.T(kind.String()), diag.T(face))
	}
	return all[0], true
}

func anyGood(document.Good) bool { return true }

// forJoint keeps goods whose label allows a joint, or says nothing of it.
func forJoint(joint unit.Length) func(document.Good) bool {
	return func(g document.Good) bool {
		return !g.Joint.Known || g.Joint.V.From <= joint && joint <= g.Joint.V.To
	}
}
