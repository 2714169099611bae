package store

import "sync"

// Change says how far a room has come: a page holds it against what it shows and fetches what is newer. Numbers only
// grow; one that has not been told yet is 0.
type Change struct {
	Head  int64 // the last revision
	Tick  int64 // the last tick's number
	Photo int64 // grows with each change to the room's photos, from 0 when the store is opened
	Moved bool  // into the bin, out of it, or gone for good: ask for the room again
}

// feed tells subscribers of changes. A writer never waits for one: a channel holds one Change, and what a slow reader
// has not fetched yet is merged with what comes.
type feed struct {
	mu     sync.Mutex
	subs   map[RoomID]map[*subscriber]struct{}
	photos int64
	closed bool
}

type subscriber struct {
	ch   chan Change
	told Change // the sum of all that was sent, so that changes told out of order never lead back
}

func newFeed() *feed { return &feed{subs: map[RoomID]map[*subscriber]struct{}{}} }

// Subscribe gives a channel of a room's changes from now on, merged where its reader is slower than the writers. Call
// stop when done; it closes the channel, and so does closing the store. A reader that subscribes first and then reads
// the room misses nothing.
func (s *Store) Subscribe(id RoomID) (changes <-chan Change, stop func()) {
	return s.feed.join(id)
}

func (f *feed) join(id RoomID) (<-chan Change, func()) {
	f.mu.Lock()
	defer f.mu.Unlock()
	sub := &subscriber{ch: make(chan Change, 1)}
	if f.closed {
		close(sub.ch)
		return sub.ch, func() {}
	}
	if f.subs[id] == nil {
		f.subs[id] = map[*subscriber]struct{}{}
	}
	f.subs[id][sub] = struct{}{}
	return sub.ch, func() { f.leave(id, sub) }
}

func (f *feed) leave(id RoomID, sub *subscriber) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if _, here := f.subs[id][sub]; !here {
		return
	}
	close(sub.ch)
	delete(f.subs[id], sub)
	if len(f.subs[id]) == 0 {
		delete(f.subs, id)
	}
}

func (f *feed) tell(id RoomID, c Change) {
	f.mu.Lock()
	defer f.mu.Unlock()
	for sub := range f.subs[id] {
		sub.send(c)
	}
}

// tellPhotos tells that a room's photos are not what they were.
func (f *feed) tellPhotos(id RoomID) {
	f.mu.Lock()
	f.photos++
	count := f.photos
	f.mu.Unlock()
	f.tell(id, Change{Photo: count})
}

// send puts the newest state into the channel. The feed's lock is held, so nobody else fills the channel meanwhile.
func (s *subscriber) send(c Change) {
	now := s.told.with(c)
	if now == s.told {
		return
	}
	select {
	case waiting := <-s.ch:
		now.Moved = now.Moved || waiting.Moved
	default:
	}
	s.ch <- now
	now.Moved = false // an event, not a state
	s.told = now
}

// with merges by the greater number.
func (c Change) with(d Change) Change {
	return Change{max(c.Head, d.Head), max(c.Tick, d.Tick), max(c.Photo, d.Photo), c.Moved || d.Moved}
}

func (f *feed) close() {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.closed = true
	for _, subs := range f.subs {
		for sub := range subs {
			close(sub.ch)
		}
	}
	f.subs = map[RoomID]map[*subscriber]struct{}{}
}
