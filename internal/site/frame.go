package site

import (
	"math"

	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/unit"
)

// frame checks the joists under a tiled floor: a simple beam under an even load bends 5 w L^4 / (384 E I).
func (s *solver) frame() {
	if !s.floor.set {
		return
	}
	need := rule.DeflectCeramic
	if s.floor.stone {
		need = rule.DeflectStone
	}
	s.out.Frame.Need = need.Number
	fr := s.doc.Floor.Frame
	at := fr.At
	if !fr.Given {
		at = diag.Place{Path: "floor > frame", Line: s.doc.Floor.At.Line, Column: s.doc.Floor.At.Column}
	}
	if missing := unknownOf(fr); missing != "" {
		s.list.Add(diag.Unchecked, "frame-unknown", at, "not checked: whether the floor's frame is stiff enough for this tile (L/{0}); {1} is not known", "write it under floor > frame; a licensed engineer decides",
			diag.N(need.Number), diag.T(missing)).Rule = need.ID
	} else {
		s.bend(fr, need)
	}
	s.subfloor(fr, at)
}

// unknownOf names the first fact of the frame that is not known; a value that is not known is zero.
func unknownOf(fr document.Frame) string {
	switch {
	case fr.JoistW.V <= 0 || fr.JoistD.V <= 0:
		return "the size of the joists"
	case fr.Spacing.V <= 0:
		return "the spacing of the joists"
	case fr.Span.V <= 0:
		return "the span of the joists"
	case fr.Modulus.V <= 0:
		return "the modulus of the joists' wood"
	case fr.Load.V <= 0:
		return "the load"
	}
	return ""
}

func (s *solver) bend(fr document.Frame, need rule.Rule) {
	d := deflection(fr)
	out := &s.out.Frame
	out.Checked, out.Deflects = true, unit.FromMM(float64(d*1000))
	ratio := fr.Span.V.MM() / 1000 / d
	out.Ratio = int64(math.Floor(ratio + 0.5))
	if ratio >= float64(need.Number) {
		return
	}
	out.Ratio = min(out.Ratio, need.Number-1) // what fails does not show as what passes
	s.list.Add(diag.Stop, "frame-bends", fr.At, "the joists bend {0} over their span of {1}, L/{2}; this tile needs L/{3}", "stiffen the frame or choose another tile; a licensed engineer decides",
		diag.X(s.fine(out.Deflects)), diag.X(fr.Span.V), diag.N(out.Ratio), diag.N(need.Number)).Rule = need.ID
}

// deflection is in metres. Products are converted so that no machine fuses them with a sum; there is none here.
func deflection(fr document.Frame) float64 {
	m := func(l unit.Length) float64 { return l.MM() / 1000 }
	depth, span := m(fr.JoistD.V), m(fr.Span.V)
	inertia := m(fr.JoistW.V) * depth * depth * depth / 12
	load := float64(fr.Load.V) * m(fr.Spacing.V)
	return 5 * load * span * span * span * span / (384 * float64(fr.Modulus.V) * inertia)
}

// subfloor: natural stone needs two layers.
func (s *solver) subfloor(fr document.Frame, at diag.Place) {
	r := rule.StoneSubfloor
	switch {
	case !s.floor.stone:
	case len(fr.Subfloor) == 0:
		s.list.Add(diag.Unchecked, "subfloor-unknown", at, "not checked: natural stone on a wood floor needs two layers of subfloor", "write its layers under floor > frame > subfloor").Rule = r.ID
	case int64(len(fr.Subfloor)) < r.Number:
		s.list.Add(diag.Stop, "subfloor-single", at, "natural stone on a wood floor needs {0} layers of subfloor; {1} is there", "add a layer", diag.N(r.Number), diag.N(len(fr.Subfloor))).Rule = r.ID
	}
}
