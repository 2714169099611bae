package web

import (
	"context"
	"crypto/sha256"
	"slices"
	"sync"

	"dryfit/internal/draw"
	"dryfit/internal/plan"
)

// planner makes plans and keeps the last few: a plan depends on its document and its options alone.
type planner struct {
	mu    sync.Mutex
	made  map[planKey]*making
	order []planKey // the one asked for last at the end
	known plan.Known
	texts texts
}

type planKey struct {
	text  [sha256.Size]byte
	upTo  plan.Stage
	face  string
	quick bool
}

// book gives the sheets of a document, drawn once.
func (p *planner) book(text []byte, drawn func() []draw.Page) []draw.Page {
	m := p.find(planKey{text: sha256.Sum256(text)})
	m.bookOnce.Do(func() { m.book = drawn() })
	return m.book
}

// making is a plan that is made once, for all who wait for it.
type making struct {
	once sync.Once
	plan plan.Plan
	err  error

	bookOnce sync.Once
	book     []draw.Page
}

const plansKept = 24

// make gives the plan of a document. A plan once begun is finished even if who asked goes away: others may want it.
func (p *planner) make(ctx context.Context, text []byte, o plan.Options) (plan.Plan, error) {
	k := planKey{sha256.Sum256(text), o.UpTo, o.Face, o.Quick}
	if p.has(k.full()) {
		k = k.full()
	}
	m := p.find(k)
	o.Known, o.Quick = &p.known, k.quick
	m.once.Do(func() {
		doc, found := p.texts.of(text).room()
		m.plan, m.err = plan.Of(context.WithoutCancel(ctx), text, doc, found, o)
	})
	return m.plan, m.err
}

// full is the same plan with all that a quick one leaves out.
func (k planKey) full() planKey {
	k.quick = false
	return k
}

func (p *planner) has(k planKey) bool {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.made[k] != nil
}

func (p *planner) find(k planKey) *making {
	p.mu.Lock()
	defer p.mu.Unlock()
	if m := p.made[k]; m != nil {
		i := slices.Index(p.order, k)
		p.order = append(slices.Delete(p.order, i, i+1), k)
		return m
	}
	if p.made == nil {
		p.made = map[planKey]*making{}
	}
	if len(p.order) == plansKept {
		delete(p.made, p.order[0])
		p.order = p.order[1:]
	}
	m := &making{}
	p.made[k], p.order = m, append(p.order, k)
	return m
}
