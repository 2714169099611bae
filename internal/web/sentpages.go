package web

import (
	"context"
	"net/http"
	"slices"
	"sync"
)

// sentPages keeps the last pages of rooms as they were sent, so that a page seen before costs nothing while nothing changes:
// a page depends on what is stored and on what its key holds, and on nothing else.
//
// Pages of one queue are made one at a time. Who waits in it takes a page that was begun since; so many readers share one
// plan, and edits that come faster than the whole plan is made are planned together.
type sentPages struct {
	mu    sync.Mutex
	made  map[pageKey]sentPage
	order []pageKey // the oldest first
	bytes int
	queue map[string]*ticket
}

// pageKey is all that a page depends on beside the store.
type pageKey struct {
	address      string // with the method: a page made for HEAD does not name its own address
	light, units string
	change       bool
	minute       string
	queue        string
}

// sentPage is a page of what was stored at a version, or of something newer.
type sentPage struct {
	version int64
	bytes   []byte
}

// ticket lets one at a time through.
type ticket struct {
	free    chan struct{}
	waiting int
}

const sentBytes = 8 << 20 // some forty pages

// asked is what a request asks for.
func (s *Server) asked(p pageOf, r *http.Request) pageKey {
	k := pageKey{address: r.Method + " " + r.URL.RequestURI(), light: cookie(r, "dryfit-light", "light", "dark"), units: cookie(r, "dryfit-units", "in", "mm"), change: mayChange(r)}
	k.queue = k.address + " " + k.light + " " + k.units
	if p.whole {
		k.queue = r.PathValue("room")
	}
	if p.dated {
		k.minute = s.now().Format("2006-01-02 15:04 -0700")
	}
	return k
}

// page gives a page of what is stored now, or of something newer: one that is kept, or one that is made when its turn comes.
func (l *sentPages) page(ctx context.Context, version func() int64, k pageKey, fresh func() ([]byte, error)) ([]byte, error) {
	now := version()
	if b, ok := l.find(k, now); ok {
		return b, nil
	}
	if err := l.enter(ctx, k.queue); err != nil {
		return nil, err
	}
	defer l.leave(k.queue)
	if b, ok := l.find(k, now); ok {
		return b, nil
	}
	now = version() // asked for before anything is read: what changes later makes another page
	b, err := fresh()
	if err == nil {
		l.keep(k, sentPage{now, b})
	}
	return b, err
}

func (l *sentPages) find(k pageKey, version int64) ([]byte, bool) {
	l.mu.Lock()
	defer l.mu.Unlock()
	p, have := l.made[k]
	return p.bytes, have && p.version >= version
}

func (l *sentPages) keep(k pageKey, p sentPage) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.made == nil {
		l.made = map[pageKey]sentPage{}
	}
	l.drop(k)
	for len(l.order) > 0 && l.bytes+len(p.bytes) > sentBytes {
		l.drop(l.order[0])
	}
	l.bytes += len(p.bytes)
	l.made[k], l.order = p, append(l.order, k)
}

func (l *sentPages) drop(k pageKey) {
	if p, have := l.made[k]; have {
		l.bytes -= len(p.bytes)
		delete(l.made, k)
		l.order = slices.Delete(l.order, slices.Index(l.order, k), slices.Index(l.order, k)+1)
	}
}

// enter waits for the turn in a queue, or until who waits has gone away.
func (l *sentPages) enter(ctx context.Context, queue string) error {
	l.mu.Lock()
	t := l.queue[queue]
	if t == nil {
		if l.queue == nil {
			l.queue = map[string]*ticket{}
		}
		t = &ticket{free: make(chan struct{}, 1)}
		t.free <- struct{}{}
		l.queue[queue] = t
	}
	t.waiting++
	l.mu.Unlock()
	select {
	case <-t.free:
		return nil
	case <-ctx.Done():
		l.forget(queue, t)
		return ctx.Err()
	}
}

func (l *sentPages) leave(queue string) {
	l.mu.Lock()
	t := l.queue[queue]
	l.mu.Unlock()
	t.free <- struct{}{}
	l.forget(queue, t)
}

// forget drops a queue that nobody is in.
func (l *sentPages) forget(queue string, t *ticket) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if t.waiting--; t.waiting == 0 {
		delete(l.queue, queue)
	}
}
