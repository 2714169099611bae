package schedule

import (
	"dryfit/internal/diag"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/unit"
)

// placed is a piece to set, with what makes it work.
type placed struct {
	face    string
	address string
	area    unit.Area
	cut     bool
	holes   int
	foot    unit.Length // its lowest and highest point on the face
	head    unit.Length
}

// defaultReach is how high a wall is set in one day: four courses of 12 in with their joints. The lowest carry the rest while their
// mortar is wet (common practice).
const defaultReach = 50 * unit.Inch

// tile makes the setting of a subject: a floor's layout is laid dry first; a wall goes up by what a day can carry.
func (m *maker) tile(s *subject) {
	if s.floor {
		dry := m.add(DryLay, s.name, s.at, Basis{Area: m.tiledArea(s)})
		m.onto(s, dry)
		s.ready = dry
	}
	if wall := m.wallOf(s.name); wall != "" {
		m.afterUnder(s, wall)
	}
	parts := m.parts(s)
	for i, pieces := range parts {
		b := basisOf(pieces)
		t := m.add(Set, s.name, s.at, b)
		m.tasks[t].pieces = pieces
		if len(parts) > 1 {
			m.tasks[t].Part = i + 1
			m.tasks[t].Name = nameOf(Set, s.name, i+1)
		}
		if i == 0 {
			s.first = t
			m.onto(s, t)
		} else {
			m.waits(s.set, t, m.waitFor(toHold, s.name))
			m.still(s, t)
		}
		s.set = t
	}
}

// afterUnder puts the faces of an opening behind the board and membrane of the wall that it is in.
func (m *maker) afterUnder(s *subject, wall string) {
	for _, i := range m.of(Board, Prime, Membrane) {
		if m.tasks[i].Subject == wall && s.ready < 0 {
			s.ready = i
		}
	}
}

func (m *maker) tiledArea(s *subject) (sum unit.Area) {
	for _, p := range m.placedOn(s) {
		sum += p.area
	}
	return sum
}

func basisOf(pieces []placed) Basis {
	var b Basis
	for _, p := range pieces {
		b.Area += p.area
		b.Holes += p.holes
		if p.cut {
			b.Cuts++
		}
	}
	return b
}

// placedOn lists the pieces of a subject in the order of setting.
func (m *maker) placedOn(s *subject) []placed {
	var out []placed
	for _, f := range s.faces {
		byAddress := map[string]piece.Piece{}
		for _, field := range f.Fields {
			for _, p := range field.Chosen().Pieces {
				byAddress[p.Address] = p
			}
		}
		for _, a := range f.Setting {
			p := byAddress[a]
			box := p.OnFace.Bounds()
			out = append(out, placed{f.Name, a, p.Area, !p.Whole, len(p.Holes), box.Min.Y, box.Max.Y})
		}
	}
	return out
}

// parts divides a wall's pieces into what is set in one go: courses up to the height of a day, and last what stands under the
// ledger, which can come off only when the courses on it hold. A floor and an opening are one part.
func (m *maker) parts(s *subject) [][]placed {
	all := m.placedOn(s)
	if s.floor || m.wallOf(s.name) != "" || len(all) == 0 {
		return [][]placed{all}
	}
	f, _ := m.room.Face(s.name)
	if f.Kind != site.WallFace {
		return [][]placed{all}
	}
	return byReach(all, m.reach(), s.faces[0].Ledger)
}

func byReach(all []placed, reach unit.Length, l *tiling.Ledger) [][]placed {
	var out [][]placed
	start, base, under := 0, all[0].foot, underLedger(all[0], l)
	for i, p := range all {
		below := underLedger(p, l)
		if i > start && (below != under || p.head > base+reach && p.foot > base) {
			out = append(out, all[start:i])
			start, base, under = i, p.foot, below
		}
	}
	return append(out, all[start:])
}

func underLedger(p placed, l *tiling.Ledger) bool { return l != nil && p.head <= l.Y }

func (m *maker) reach() unit.Length {
	if m.days.Reach.Known {
		return m.days.Reach.V
	}
	m.assume(m.days.At, practice, "a wall is set {0} high in a day; then the courses below must get hold", diag.F(defaultReach))
	return defaultReach
}
