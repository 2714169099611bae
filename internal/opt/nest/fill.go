package nest

import "slices"

// filling is one run of the dynamic program: the greatest worth of parts that a
// panel of each size holds, and, where the parts are limited, which it uses. A
// panel keeps a few sets of parts only, so that with limits the answer is a good
// filling and not always the best; without limits and with full axes it is the
// best.
type filling struct {
	m      *model
	x, y   *axis
	worth  []int64 // by kind
	limits *counters
	places [][]place // by point: kinds whose size that is
	keep   int       // sets of a panel
	set    []uint64  // the one at hand
	ops    int
}

// place is a kind as it lies.
type place struct {
	kind   int
	turned bool
}

// mostSets and setsInAll bound the sets that are kept, so that large sheets take
// no more time than is good.
const (
	mostSets  = 12
	setsInAll = 30000
)

// table is the panels of one layer. Each keeps a few sets of parts, the one that
// is worth most first; a worth of 0 ends the list.
type table struct {
	n, keep int // points across; sets of a panel
	val     []int64
	set     []uint64
	from    []origin
}

// origin tells how a panel is made.
type origin struct {
	how  how
	turn bool
	arg  int16
	a, b uint8 // which set of the panel it is made of, or of the piece and the rest
}

type how uint8

const (
	empty    how = iota
	part         // arg: kind
	narrower     // the panel one point narrower
	lower        // the panel one point lower
	crossed      // arg: point of the crosscut
	ripped       // arg: point of the rip
	inner        // the same panel of the layer below
)

func (f *filling) newTable() *table {
	n := len(f.x.at) * len(f.y.at) * f.keep
	t := &table{n: len(f.x.at), keep: f.keep, val: make([]int64, n), from: make([]origin, n)}
	if f.limits != nil {
		t.set = make([]uint64, n*f.limits.words)
	}
	return t
}

// newFilling prepares for parts of some worth, no more than most of each; a nil
// most is no limit.
func newFilling(m *model, x, y *axis, worth []int64, most []int) *filling {
	f := &filling{m: m, x: x, y: y, worth: worth, keep: 1}
	if most != nil {
		f.limits = newCounters(most)
		f.set = make([]uint64, f.limits.words)
		f.keep = max(2, min(mostSets, setsInAll/(len(x.at)*len(y.at))))
	}
	f.places = make([][]place, len(x.at)*len(y.at))
	for k, q := range m.kinds {
		if worth[k] <= 0 || most != nil && most[k] == 0 {
			continue
		}
		f.lay(k, q.w, q.h, false)
		if q.turns {
			f.lay(k, q.h, q.w, true)
		}
	}
	return f
}

func (f *filling) lay(k int, w, h int64, turned bool) {
	i, j := f.x.index(w), f.y.index(h)
	if i >= 0 && j >= 0 {
		p := j*len(f.x.at) + i
		f.places[p] = append(f.places[p], place{k, turned})
	}
}

// setOf is a set of a panel.
func (f *filling) setOf(t *table, at int) []uint64 {
	if f.limits == nil {
		return nil
	}
	w := f.limits.words
	return t.set[at*w : at*w+w]
}

// insert puts a set into the list of a panel if it is new there and among the
// best.
func (f *filling) insert(t *table, p int, v int64, o origin) {
	f.ops += 6
	list := t.val[p*t.keep : p*t.keep+t.keep]
	at := len(list)
	for at > 0 && list[at-1] < v {
		at--
	}
	for q := at - 1; q >= 0 && list[q] == v; q-- {
		if f.limits == nil || slices.Equal(f.setOf(t, p*t.keep+q), f.set) {
			return
		}
	}
	if at == len(list) {
		return
	}
	from := t.from[p*t.keep : p*t.keep+t.keep]
	copy(list[at+1:], list[at:])
	copy(from[at+1:], from[at:])
	list[at], from[at] = v, o
	if f.limits != nil {
		w := f.limits.words
		sets := t.set[p*t.keep*w : (p+1)*t.keep*w]
		copy(sets[(at+1)*w:], sets[at*w:])
		copy(sets[at*w:], f.set)
	}
}

// copyFrom makes a panel of another where that is worth more.
func (f *filling) copyFrom(t *table, p int, s *table, q int, h how) {
	f.ops += t.keep
	if t.val[p*t.keep] == 0 {
		f.copyAll(t, p, s, q, h)
		return
	}
	least := &t.val[p*t.keep+t.keep-1]
	for i, v := range s.val[q*t.keep : q*t.keep+t.keep] {
		if v <= *least {
			return
		}
		copy(f.set, f.setOf(s, q*t.keep+i))
		f.insert(t, p, v, origin{how: h, a: uint8(i)})
	}
}

// copyAll makes a panel that holds nothing of another.
func (f *filling) copyAll(t *table, p int, s *table, q int, h how) {
	copy(t.val[p*t.keep:(p+1)*t.keep], s.val[q*t.keep:])
	for i := range t.keep {
		t.from[p*t.keep+i] = origin{how: h, a: uint8(i)}
	}
	if f.limits != nil {
		w := t.keep * f.limits.words
		copy(t.set[p*w:p*w+w], s.set[q*w:])
	}
}

// lie puts the parts that are exactly of the panel's size.
func (f *filling) lie(t *table, p int) {
	for _, l := range f.places[p] {
		if f.limits != nil {
			clear(f.set)
			f.set[f.limits.word[l.kind]] = f.limits.one[l.kind]
		}
		f.insert(t, p, f.worth[l.kind], origin{how: part, arg: int16(l.kind), turn: l.turned})
	}
}

// pair makes a panel of two where they are worth more and may be used together.
func (f *filling) pair(t *table, p int, s *table, a, b int, o origin) {
	least := &t.val[p*t.keep+t.keep-1]
	rest := t.val[b*t.keep : b*t.keep+t.keep]
	for i, v := range s.val[a*t.keep : a*t.keep+t.keep] {
		if v == 0 || v+rest[0] <= *least {
			return
		}
		for j, w := range rest {
			if w == 0 || v+w <= *least {
				break
			}
			f.ops += 2
			if f.together(s, a*t.keep+i, t, b*t.keep+j) {
				o.a, o.b = uint8(i), uint8(j)
				f.insert(t, p, v+w, o)
			}
		}
	}
}

// together adds two sets if that keeps the limits.
func (f *filling) together(s *table, a int, t *table, b int) bool {
	if f.limits == nil {
		return true
	}
	as, bs := f.setOf(s, a), f.setOf(t, b)
	if !f.limits.fits(as, bs) {
		return false
	}
	for i, w := range as {
		f.set[i] = w + bs[i]
	}
	return true
}
