package store

import (
	"sync"
	"testing"
)

// waiting takes what a channel holds now.
func waiting(t *testing.T, ch <-chan Change) (c Change) {
	t.Helper()
	select {
	case c = <-ch:
	default:
		t.Error("nothing was told")
	}
	return c
}

func silent(t *testing.T, ch <-chan Change) {
	t.Helper()
	select {
	case c, open := <-ch:
		t.Errorf("told %+v, open %v", c, open)
	default:
	}
}

func TestFeedTellsEachKind(t *testing.T) {
	s := fresh(t)
	room, other := newRoom(t, s, "room"), newRoom(t, s, "other")
	ch, stop := s.Subscribe(room.ID)
	defer stop()
	appended(t, s, other.ID, next(1))
	silent(t, ch)
	appended(t, s, room.ID, next(1))
	if got := waiting(t, ch); got != (Change{Head: 2}) {
		t.Errorf("%+v", got)
	}
	number := tick(t, s, room.ID, Tick{Address: "a"})[0].Number
	if got := waiting(t, ch); got != (Change{Head: 2, Tick: number}) {
		t.Errorf("%+v", got)
	}
	p := addPhoto(t, s, room.ID, snapshot("wall A", 1))
	before := waiting(t, ch)
	if err := s.RemovePhoto(t.Context(), room.ID, p.ID); err != nil {
		t.Fatal(err)
	}
	if after := waiting(t, ch); after.Photo <= before.Photo || after.Moved {
		t.Errorf("%+v after %+v", after, before)
	}
	for range 2 { // into the bin twice is told twice: each is an event
		if err := s.PutInBin(t.Context(), room.ID, noon); err != nil {
			t.Fatal(err)
		}
		if got := waiting(t, ch); !got.Moved || got.Head != 2 {
			t.Errorf("%+v", got)
		}
	}
}

func TestFeedMergesForASlowReader(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	ch, stop := s.Subscribe(room.ID)
	for base := range int64(20) { // nobody reads, and no writer waits
		appended(t, s, room.ID, next(base+1))
	}
	if err := s.PutInBin(t.Context(), room.ID, noon); err != nil {
		t.Fatal(err)
	}
	if err := s.TakeOut(t.Context(), room.ID); err != nil {
		t.Fatal(err)
	}
	appended(t, s, room.ID, next(21))
	if got := waiting(t, ch); got != (Change{Head: 22, Moved: true}) {
		t.Errorf("%+v", got)
	}
	silent(t, ch)
	stop()
	stop() // twice is harmless
	if _, open := <-ch; open {
		t.Error("still open")
	}
	if len(s.feed.subs) != 0 {
		t.Errorf("%d rooms still have subscribers", len(s.feed.subs))
	}
	appended(t, s, room.ID, next(22))
}

func TestFeedNeverLeadsBack(t *testing.T) {
	f := newFeed()
	ch, _ := f.join(1)
	for _, head := range []int64{6, 5, 7, 7, 2} { // two writers may tell in the other order
		f.tell(1, Change{Head: head})
	}
	if got := waiting(t, ch); got.Head != 7 {
		t.Errorf("%+v", got)
	}
	f.tell(1, Change{Head: 7})
	silent(t, ch)
}

func TestFeedEndsWithTheStore(t *testing.T) {
	s := fresh(t)
	ch, stop := s.Subscribe(1)
	closed(t, s)
	if _, open := <-ch; open {
		t.Error("still open")
	}
	stop()
	late, stop := s.Subscribe(1)
	if _, open := <-late; open {
		t.Error("open after closing")
	}
	stop()
}

// Every reader sees the last edit, however many come and go.
func TestFeedWithManyReaders(t *testing.T) {
	const edits = 30
	s := fresh(t)
	room := newRoom(t, s, "room")
	var done sync.WaitGroup
	for range 20 {
		ch, stop := s.Subscribe(room.ID)
		done.Go(func() {
			defer stop()
			var last int64
			for last < 1+edits {
				c := <-ch
				if c.Head <= last {
					t.Errorf("%d after %d", c.Head, last)
					return
				}
				last = c.Head
			}
		})
	}
	for base := range int64(edits) {
		appended(t, s, room.ID, next(base+1))
	}
	done.Wait()
}
