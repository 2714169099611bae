package web

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"sync"
	"testing"
)

// Many who wait for a page while it is made share the next one, which is begun after the last of them came.
func TestWhoWaitsSharesAPage(t *testing.T) {
	var l sentPages
	var made, version int64
	begun, goOn := make(chan struct{}), make(chan struct{})
	fresh := func() ([]byte, error) {
		made++
		if made == 1 {
			close(begun)
			<-goOn
		}
		return fmt.Append(nil, version), nil
	}
	k := pageKey{address: "/room/1/cut", queue: "1"}
	ask := func() string {
		b, err := l.page(t.Context(), func() int64 { return version }, k, fresh)
		if err != nil {
			t.Error(err)
		}
		return string(b)
	}
	var all sync.WaitGroup
	all.Go(func() { ask() })
	<-begun
	version = 7 // an edit while the page is made
	const readers = 20
	got := make([]string, readers)
	for i := range readers {
		all.Go(func() { got[i] = ask() })
	}
	l.waitFor(k.queue, readers+1)
	close(goOn)
	all.Wait()
	for _, g := range got {
		if g != "7" {
			t.Errorf("a reader who came after the edit got %s", g)
		}
	}
	if made != 2 || len(l.queue) != 0 {
		t.Errorf("made %d times, %d queues left", made, len(l.queue))
	}
}

// waitFor returns when so many are in a queue. Who is about to enter gets the processor meanwhile.
func (l *sentPages) waitFor(queue string, many int) {
	for {
		l.mu.Lock()
		n := 0
		if t := l.queue[queue]; t != nil {
			n = t.waiting
		}
		l.mu.Unlock()
		if n == many {
			return
		}
		runtime.Gosched()
	}
}

// Who goes away leaves the queue; a page that failed is made again; what is kept stays within its bound.
func TestPagesThatAreNotKept(t *testing.T) {
	var l sentPages
	k := pageKey{address: "a", queue: "q"}
	still := func() int64 { return 1 }
	fail := errors.New("no")
	if _, err := l.page(t.Context(), still, k, func() ([]byte, error) { return nil, fail }); err != fail {
		t.Error(err)
	}
	gone, cancel := context.WithCancel(t.Context())
	if err := l.enter(t.Context(), "q"); err != nil {
		t.Fatal(err)
	}
	cancel()
	if _, err := l.page(gone, still, k, func() ([]byte, error) { return nil, nil }); !errors.Is(err, context.Canceled) {
		t.Error("who has gone away waits:", err)
	}
	l.leave("q")
	for i := range 100 {
		k.address = fmt.Sprint(i)
		if b, err := l.page(t.Context(), still, k, func() ([]byte, error) { return make([]byte, sentBytes/10), nil }); err != nil || len(b) == 0 {
			t.Fatal(err)
		}
	}
	if l.bytes > sentBytes || len(l.made) != len(l.order) || len(l.made) < 9 || len(l.queue) != 0 {
		t.Errorf("%d bytes, %d pages, %d in order, %d queues", l.bytes, len(l.made), len(l.order), len(l.queue))
	}
}

// What a page depends on beside its address makes another page: the units and the light of who asks, and what is stored.
func TestPageIsWhatIsStored(t *testing.T) {
	s := open(t, nil)
	s.ask("HEAD", "/room/1/measure", nil)
	first := s.get("/room/1/measure")
	has(t, first, `value="/room/1/measure"`)
	if again := s.get("/room/1/measure"); again != first {
		t.Error("the same page is another the second time")
	}
	s.post("/room/1/edit", "back", "/room/1/measure", `set:["name"]`, "another name")
	if now := s.get("/room/1/measure"); now == first {
		t.Error("an edit is not seen")
	}
}
