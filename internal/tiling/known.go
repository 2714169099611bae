package tiling

import (
	"reflect"
	"slices"
	"sync"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/lay"
	"dryfit/internal/tiling/piece"
	"dryfit/internal/tiling/search"
)

// Known keeps what was searched and laid of the last few fields, for runs that follow each other while a person moves one
// pattern: a field of which all that the search and the laying see is alike is taken from there. A plan is the same to
// the byte with it and without. The zero value is ready, nil keeps nothing, and runs may share it at the same time.
type Known struct {
	mu   sync.Mutex
	list []*settled // the newest last
}

// likeness is all that the search and the laying of a field see. Where it stands in the document is no part of it.
type likeness struct {
	seen   search.Input // without what counts a layout
	region geom.Region
	hits   []lay.Hit
	field  piece.Field
	blanks []blank
}

// settled is what came of one field. It is not changed once it is kept.
type settled struct {
	like   likeness
	found  search.Result
	counts map[geom.Point]count // of the layouts found
	best   laidOut              // the first of them
}

// fieldsKept bounds the memory: a face with a border has some eight fields, and a hand moves the pattern of one face.
const fieldsKept = 24

func (k *Known) find(like likeness) *settled {
	k.mu.Lock()
	defer k.mu.Unlock()
	for i, s := range slices.Backward(k.list) {
		if reflect.DeepEqual(s.like, like) {
			k.list = append(slices.Delete(k.list, i, i+1), s)
			return s
		}
	}
	return nil
}

func (k *Known) keep(s *settled) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if len(k.list) >= fieldsKept {
		k.list = slices.Delete(k.list, 0, 1)
	}
	k.list = append(k.list, s)
}

// best searches a field, or takes what a run before this one found.
func (m *maker) best(g *ground, in search.Input) search.Result {
	if m.options.Known == nil {
		return search.Best(in)
	}
	like := m.likeness(g, in)
	s := m.options.Known.find(like)
	if s == nil {
		s = m.settle(g, like, search.Best(in))
		m.options.Known.keep(s)
	}
	g.settled = s
	return s.found
}

func (m *maker) likeness(g *ground, in search.Input) likeness {
	in.Count = nil
	like := likeness{seen: in, region: g.region, hits: g.hits, field: m.pieceField(g, piece.Numbers{})}
	for size := range g.good.sizes {
		like.blanks = append(like.blanks, m.blank(g.good, size))
	}
	return like
}

// settle keeps the pieces of the best layout, and of the others what was counted.
func (m *maker) settle(g *ground, like likeness, r search.Result) *settled {
	s := &settled{like: like, found: r, counts: map[geom.Point]count{}}
	for i, c := range r.Finalists {
		laid := m.at(g, c.Origin)
		s.counts[c.Origin] = laid.count
		if i == 0 {
			s.best = laid
		}
	}
	return s
}

// counted is how many tiles a layout takes.
func (m *maker) counted(g *ground, origin geom.Point) count {
	if g.settled != nil {
		if n, ok := g.settled.counts[origin]; ok {
			return n
		}
	}
	return m.at(g, origin).count
}

// laidBest gives the best layout of a field that was settled before this run.
func (s *settled) laidBest(origin geom.Point) (laidOut, bool) {
	if s == nil || len(s.found.Finalists) == 0 || s.found.Finalists[0].Origin != origin {
		return laidOut{}, false
	}
	return s.best, true
}
