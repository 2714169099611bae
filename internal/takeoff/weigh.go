package takeoff

import (
	"strings"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Weight is what tile, mortar and grout weigh on a square metre of a face, and what its ground carries.
type Weight struct {
	OnEach       unit.Mass  `json:"onEach"` // on a square metre, rounded up
	Known        bool       `json:"known"`
	Typical      bool       `json:"typical"` // some figure is no label's: always that of the fresh mortar
	Carries      unit.Mass  `json:"carries"` // a square metre of the ground carries
	CarriesKnown bool       `json:"carriesKnown"`
	Source       string     `json:"source"` // of what it carries
	Share        unit.Ratio `json:"share"`  // of what it carries; valid if both are known
}

// weigh holds what a wall's tiling weighs against what its ground carries.
func (m *maker) weigh(w *work) {
	k := &w.out.Weight
	total, _, ok := m.tileMass(w)
	if !ok || w.out.Area <= 0 {
		return
	}
	m.assume(diag.Place{Path: "goods"}, catalog.WetMortar.Cite(), "{0} weighs {1}, {2} {3}", diag.T(catalog.WetMortar.What), sayRate(catalog.WetMortar.Rate, m.doc.Units), diag.T(catalog.WetGrout.What), sayRate(catalog.WetGrout.Rate, m.doc.Units))
	total += m.heavy(catalog.WetMortar, w.out.Bed) + m.heavy(catalog.WetGrout, w.out.Joints)
	seen := w.out.Area + w.out.JointsArea
	k.Known, k.Typical = true, true
	k.OnEach = unit.Mass(unit.Weighs(total).Share(int64(unit.Metre.Times(unit.Metre)), int64(seen)).N)
	if w.face.Kind != site.WallFace {
		return
	}
	m.carries(w)
	m.overload(w)
}

// tileMass is what the tile of a face weighs: by its box's label, else by what its kind typically weighs.
func (m *maker) tileMass(w *work) (sum unit.Mass, typical, ok bool) {
	for _, f := range w.tiling.Fields {
		mass, typ, known := m.massOf(m.tile(f.Tile), f, area(f))
		if !known {
			return 0, false, false
		}
		sum, typical = sum+mass, typical || typ
	}
	return sum, typical, true
}

// massOf is what an area of a tile weighs.
func (m *maker) massOf(t document.Tile, f tiling.Field, a unit.Area) (mass unit.Mass, typical, ok bool) {
	if t.BoxWeighs.Known && t.PerBox.Known && len(t.Set) == 0 && len(f.Sizes) == 1 {
		box := f.Sizes[0].Length.Times(f.Sizes[0].Width) * unit.Area(t.PerBox.V)
		return unit.Mass(t.BoxWeighs.V.Share(int64(a), int64(box)).N), false, true
	}
	if !t.Thick.Known {
		return 0, false, false
	}
	d := density(t)
	m.assume(t.At, d.Cite(), "{0}: {1} weighs {2}, which is typical and no label's", diag.T(t.Name), diag.T(d.What), sayRate(d.Rate, m.doc.Units))
	return m.heavy(d, catalog.Spread(a, t.Thick.V)), true, true
}

func density(t document.Tile) catalog.Typical {
	switch t.Kind {
	case document.Porcelain:
		return catalog.PorcelainTile
	case document.Stone:
		return catalog.StoneTile
	case document.Glass:
		return catalog.GlassTile
	}
	return catalog.CeramicTile
}

func (m *maker) heavy(d catalog.Typical, v unit.Volume) unit.Mass {
	q, _ := d.Rate.For(unit.Fills(v))
	return unit.Mass(q.N)
}

// carries looks up what the ground of a wall carries: its board's label, else what is published for gypsum and plywood.
func (m *maker) carries(w *work) {
	k := &w.out.Weight
	layers, _ := m.layers(w.face)
	for i := len(layers) - 1; i >= 0; i-- {
		if layers[i].What != document.BoardLayer {
			continue
		}
		k.Carries, k.Source, k.CarriesKnown = m.groundOf(w.out.Name, layers[i].Label)
		return
	}
}

func (m *maker) groundOf(face, label string) (unit.Mass, string, bool) {
	if g, ok := m.good(document.BackerBoard, face, anyGood); ok && g.Carries.Known {
		q := unit.Spreads(unit.Metre.Times(unit.Metre))
		each, _ := g.Carries.V.For(q)
		return unit.Mass(each.N), "label of " + g.Name, true
	}
	label = strings.ToLower(label)
	for _, p := range []struct {
		word string
		rule rule.Rule
	}{{"plaster", rule.PlasterCarries}, {"gypsum", rule.GypsumCarries}, {"plywood", rule.PlywoodCarries}} {
		if strings.Contains(label, p.word) {
			return unit.Mass(p.rule.Number) * unit.Kilogram, p.rule.Cite(), true
		}
	}
	return 0, "", false
}

// overload tells of a wall that is to carry more than it can, and of small tile that must be bedded solid.
func (m *maker) overload(w *work) {
	k, say := &w.out.Weight, unit.DefaultStyle(m.doc.Units)
	each := diag.T(say.Say(unit.Weighs(k.OnEach)) + " on a square metre")
	if m.doc.Units == unit.Inches {
		each = diag.T(say.Say(onFoot(k.OnEach)) + " on a square foot")
	}
	if !k.CarriesKnown {
		m.found(diag.Unchecked, "wall-load", w.lay.At, "not checked: whether {0} carries its tiling, which weighs {1}; what its board carries is missing", "add the board to goods with what its label says: carries: 32 kg per m2", diag.T(w.out.Name), each)
		return
	}
	k.Share = unit.Ratio(unit.Quantity{N: int64(unit.One)}.Share(int64(k.OnEach), int64(k.Carries)).N)
	if k.OnEach > k.Carries {
		m.found(diag.Stop, "wall-load", w.lay.At, "{0} is to carry {1}; its ground carries {2} of that ({3})", "take lighter tile or a stronger board", diag.T(w.out.Name), each, diag.Percent(unit.Ratio(int64(unit.One)*int64(k.Carries)/int64(k.OnEach))/10_000*10_000), diag.T(k.Source))
		return
	}
	m.solid(w)
}

// solid: small tile heavier than 70 % of what the ground carries is bedded solid.
func (m *maker) solid(w *work) {
	k := w.out.Weight
	for _, f := range w.tiling.Fields {
		small := len(f.Sizes) > 0 && f.Sizes[0].Length.Times(f.Sizes[0].Width) < rule.SolidBedArea.Area
		if small && NeedsSolidBed(k.OnEach, k.Carries) {
			m.found(diag.Note, "solid-bed", f.At, "{0} on {1}: so heavy a tile is bedded solid, without hollows ({2})", "back-butter it", diag.T(f.Tile), diag.T(w.out.Name), diag.T(rule.SolidBed.Cite())).Rule = rule.SolidBed.ID
		}
	}
}

// NeedsSolidBed: tiling heavier than 70 % of what its ground carries (BS 5385-1:2018).
func NeedsSolidBed(each, carries unit.Mass) bool {
	return int64(each) > int64(unit.Weighs(carries).Share(int64(rule.SolidBed.Ratio), int64(unit.One)).N)
}

// onFoot turns the weight on a square metre into that on a square foot.
func onFoot(m unit.Mass) unit.Quantity {
	return unit.Weighs(m).Share(int64(unit.SquareFoot), int64(unit.Metre.Times(unit.Metre)))
}
