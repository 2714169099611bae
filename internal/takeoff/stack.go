package takeoff

import (
	"math"

	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// Stack is what lies on the floor before it is set: tile and powders.
type Stack struct {
	Tile    unit.Mass `json:"tile"`
	Powders unit.Mass `json:"powders"`
	Known   bool      `json:"known"`
	Typical bool      `json:"typical"`
	// Spread is the least floor that it must be spread over, by the load that the floor's frame was reckoned with; valid if SpreadKnown.
	Spread      unit.Area `json:"spread"`
	SpreadKnown bool      `json:"spreadKnown"`
}

// stack weighs what is brought in, and tells what is too heavy for one person.
func (m *maker) stack() {
	s := &m.out.Stack
	s.Known = true
	for _, g := range m.tiles.Goods {
		mass, typical, ok := m.brought(g)
		s.Tile, s.Typical, s.Known = s.Tile+mass, s.Typical || typical, s.Known && ok
	}
	for _, l := range m.out.Lines {
		if l.Known && l.InsteadOf == "" && l.Need.Of == unit.ByMass {
			s.Powders += unit.Mass(l.Need.N)
		}
	}
	m.lifts()
	m.spread(s)
}

// brought is what all tiles of one good weigh, spares included.
func (m *maker) brought(g tiling.Good) (mass unit.Mass, typical, ok bool) {
	t := m.tile(g.Tile)
	if t.BoxWeighs.Known && t.PerBox.Known && len(t.Set) == 0 {
		return unit.Mass(t.BoxWeighs.V.Share(int64(g.Buy), int64(t.PerBox.V)).N), false, true
	}
	if !t.Thick.Known {
		return 0, false, false
	}
	a := g.Blank.Length.Times(g.Blank.Width) * unit.Area(g.Buy)
	return m.heavy(density(t), catalog.Spread(a, t.Thick.V)), true, true
}

// standard gravity, in metres for a second squared, exact by definition (NIST SP 811, B.8).
const gravity = 9.80665

// spread divides the stack's weight by the load that the floor's frame is meant for. Pascals are newtons on a square metre.
func (m *maker) spread(s *Stack) {
	load := m.doc.Floor.Frame.Load
	if !s.Known || s.Tile+s.Powders == 0 {
		return
	}
	total := diag.T(unit.DefaultStyle(m.doc.Units).Say(unit.Weighs(s.Tile + s.Powders)))
	if !load.Known {
		m.found(diag.Unchecked, "stack-load", m.doc.Floor.At, "not checked: where {0} of tile and powders may lie; the load that the floor is meant for is missing", "write it under floor: frame: {load: 50 psf}; until then spread boxes along the bearing walls", total)
		return
	}
	s.SpreadKnown = true
	square := math.Ceil((s.Tile + s.Powders).Kg() * gravity / float64(load.V) * 1000)
	s.Spread = unit.Area(square) * unit.Metre.Times(unit.Metre) / 1000
	if floor := m.room.Survey.Area; floor > 0 && s.Spread > floor {
		m.found(diag.Look, "stack-load", load.At, "{0} of tile and powders are more than the floor of {1} is meant for at once: it takes {2}", "bring them in by turns, or store them elsewhere", total, diag.Area(floor), diag.Area(s.Spread))
		return
	}
	m.found(diag.Note, "stack-load", load.At, "spread {0} of tile and powders over {1} at least, along the bearing walls", "", total, diag.Area(s.Spread))
}

// liftPounds is the load constant as those print it who weigh in pounds.
const liftPounds = 51

// lifts tells of packs that are too heavy for one person.
func (m *maker) lifts() {
	limit := unit.Mass(rule.LiftMost.Number) * unit.Kilogram
	if m.doc.Units == unit.Inches {
		limit = liftPounds * unit.Pound
	}
	tell := func(what string, q unit.Quantity, at diag.Place) {
		if q.Of == unit.ByMass && unit.Mass(q.N) > limit {
			m.found(diag.Note, "lift", at, "{0} weighs {1}: more than {2}, which one person lifts in the best of postures ({3})", "lift it by two, or open it where it stands",
				diag.T(what), diag.T(unit.DefaultStyle(m.doc.Units).Say(q)), diag.T(unit.DefaultStyle(m.doc.Units).Say(unit.Weighs(limit))), diag.T(rule.LiftMost.Cite())).Rule = rule.LiftMost.ID
		}
	}
	for _, t := range m.doc.Tiles {
		if t.BoxWeighs.Known {
			tell("a box of "+t.Name, t.BoxWeighs.V, t.BoxWeighs.At)
		}
	}
	for _, g := range m.doc.Goods {
		for _, p := range g.Packs {
			tell(p.Name+" of "+g.Name, p.Size, p.At)
			if q, ok := g.Weighs.V.For(p.Size); ok && g.Weighs.Known && p.Size.Of == unit.ByArea {
				tell(p.Name+" of "+g.Name, q, p.At)
			}
		}
	}
}

// recipes says how each powder of the plan is mixed.
func (m *maker) recipes() {
	for _, n := range m.needs {
		if n.kind != document.Mortar && n.kind != document.Grout && n.kind != document.Leveler {
			continue
		}
		r := Recipe{Good: n.good.Name, Kind: n.kind, PotLife: n.good.PotLife.Or(0), OpenTime: n.good.OpenTime.Or(0), Slake: n.good.Slake.Or(0),
			Water: n.good.Water.V, WaterKnown: n.good.Water.Known}
		if !m.powder(&r, n) {
			continue
		}
		m.out.Recipes = append(m.out.Recipes, r)
	}
}

// powder finds the weight for a volume; false for what is not mixed here, or of which nothing is known.
func (m *maker) powder(r *Recipe, n *need) bool {
	g := n.good
	if by, sold := soldBy(g); sold && by == unit.ByVolume {
		return false
	}
	one := unit.Fills(unit.Liter)
	for _, v := range []document.Value[unit.Rate]{g.Yields, g.Density} {
		if q, ok := v.V.For(one); v.Known && ok {
			r.Dry, r.Source = unit.Rate{Amount: q, Per: one}, "label of "+g.Name
			return true
		}
	}
	typical := n.parts[0].typical
	if typical == nil || g.Grain.Known && g.Grain.V == document.ReadyMixed {
		return false
	}
	r.Dry, r.Typical, r.Source = typical.Rate, true, typical.What+" ("+typical.Cite()+")"
	return true
}
