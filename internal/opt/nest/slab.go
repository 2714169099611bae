package nest

// slab is a way of cutting: a part, or two slabs divided by a cut. Its size is
// what it needs, kerf included.
type slab struct {
	w, h   int64
	cut    Cut // Whole: a part
	a, b   *slab
	kind   int // NoPart: left whole, for the offcut
	turned bool
}

// blank is room that no part lies in.
func (s *slab) blank() bool { return s.cut == Whole && s.kind == NoPart }

// leaf is a part.
func (m *model) leaf(kind int, turned bool) *slab {
	k := m.kinds[kind]
	if turned {
		return &slab{w: k.h, h: k.w, kind: kind, turned: true}
	}
	return &slab{w: k.w, h: k.h, kind: kind}
}

// join puts b above or beside a; either may be nil.
func join(cut Cut, a, b *slab) *slab {
	switch {
	case a == nil:
		return b
	case b == nil:
		return a
	case cut == Crosscut:
		return &slab{w: a.w + b.w, h: max(a.h, b.h), cut: cut, a: a, b: b}
	}
	return &slab{w: max(a.w, b.w), h: a.h + b.h, cut: cut, a: a, b: b}
}

// along is the size that cuts of that direction divide.
func (s *slab) along(cut Cut) int64 {
	if cut == Crosscut {
		return s.w
	}
	return s.h
}

// counts adds the parts of a slab to counts by kind.
func (s *slab) counts(n []int) {
	switch {
	case s == nil || s.blank():
	case s.cut == Whole:
		n[s.kind]++
	default:
		s.a.counts(n)
		s.b.counts(n)
	}
}

// pattern is a filled sheet; sheet -1 is a part that is left out.
type pattern struct {
	sheet int
	takes []take // by kind, ascending
	slab  *slab
}

type take struct{ kind, n int }

const lacking = -1

// patternOf counts what a slab takes.
func (m *model) patternOf(sheet int, s *slab) pattern {
	n := make([]int, len(m.kinds))
	s.counts(n)
	p := pattern{sheet: sheet, slab: s}
	for k, c := range n {
		if c > 0 {
			p.takes = append(p.takes, take{k, c})
		}
	}
	return p
}

// key tells patterns apart by what they take.
func (p pattern) key() string {
	b := make([]byte, 0, 4+4*len(p.takes))
	b = append(b, byte(p.sheet), byte(p.sheet>>8))
	for _, t := range p.takes {
		b = append(b, byte(t.kind), byte(t.kind>>8), byte(t.n), byte(t.n>>8))
	}
	return string(b)
}

// cost of a plan, parts left out included.
func (m *model) cost(plan []pattern) int64 {
	var sum int64
	for _, p := range plan {
		sum += m.price(p.sheet)
	}
	return sum
}

func (m *model) price(sheet int) int64 {
	if sheet == lacking {
		return m.lack
	}
	return m.sheets[sheet].price
}

// prune leaves of a slab what is still needed and counts it off.
func (s *slab) prune(need []int) *slab {
	if s == nil || s.blank() {
		return nil
	}
	if s.cut == Whole {
		if need[s.kind] == 0 {
			return nil
		}
		need[s.kind]--
		return s
	}
	a, b := s.a.prune(need), s.b.prune(need)
	if a == s.a && b == s.b {
		return s
	}
	return join(s.cut, a, b)
}
