package cli_test

import (
	"context"
	"fmt"
	"net/http"
	"net/url"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"dryfit/internal/store"
)

// phones send edits, each of its own thing and one after the other, until the server is gone.
const phones = 3

// sent names an edit.
type sent struct {
	phone  string
	number int64
}

// storm kills the server once so many edits are acknowledged, while others are under way, and adds those that were
// acknowledged to the list.
func (p program) storm(t *testing.T, round, enough int, acknowledged map[sent]string) {
	t.Helper()
	client := &http.Client{Transport: &http.Transport{}, CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	defer client.CloseIdleConnections()
	var done atomic.Int64
	var mu sync.Mutex
	var all sync.WaitGroup
	for phone := range phones {
		all.Go(func() {
			for n := 1; ; n++ {
				from := sent{fmt.Sprintf("phone %d in round %d", phone, round), int64(n)}
				line := []string{"A-B", "B-C", "C-D"}[phone]
				value := fmt.Sprintf("%d", 2000+round*10+n%10)
				answer, err := client.PostForm(p.address+"/room/3/edit", url.Values{"back": {"/room/3/measure"}, "client": {from.phone}, "seq": {fmt.Sprint(n)},
					`set:["survey","tape","` + line + `"]`: {value}})
				if err != nil {
					return // the server is gone
				}
				answer.Body.Close()
				if answer.StatusCode != http.StatusSeeOther {
					t.Errorf("an edit was answered with %d", answer.StatusCode)
					return
				}
				mu.Lock()
				acknowledged[from] = line + ": " + value
				mu.Unlock()
				if done.Add(1) == int64(enough) {
					p.cmd.Process.Kill()
				}
			}
		})
	}
	all.Wait()
	p.cmd.Wait()
}

// A server that is killed in the middle of edits (kill -9) has kept each that it said it has, and starts again on the
// same folder.
func TestKilledServerLosesNoEdit(t *testing.T) {
	rounds := 50
	if testing.Short() {
		rounds = 5
	}
	data, acknowledged := t.TempDir(), map[sent]string{}
	for round := range rounds {
		p := serveAlone(t, data)
		if round == 0 {
			answer, err := http.PostForm(p.address+"/rooms", url.Values{"name": {"Attic"}, "units": {"mm"}, "corners": {"4"}})
			if err != nil || answer.StatusCode != 200 {
				t.Fatal(answer, err)
			}
			answer.Body.Close()
		}
		before := len(acknowledged)
		p.storm(t, round, 2+3*round%7, acknowledged)
		if len(acknowledged) == before {
			t.Fatalf("round %d: no edit was acknowledged", round)
		}
		foundAgain(t, data, acknowledged)
	}
	t.Logf("%d edits acknowledged over %d kills", len(acknowledged), rounds)
}

// foundAgain opens the folder and looks for every acknowledged edit, and for what it wrote.
func foundAgain(t *testing.T, data string, acknowledged map[sent]string) {
	t.Helper()
	ctx := context.Background()
	s, err := store.Open(ctx, data, store.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	defer s.Close()
	for from, wrote := range acknowledged {
		r, found, err := s.Delivered(ctx, 3, store.Delivery{Client: from.phone, Seq: from.number})
		if err != nil || !found {
			t.Fatalf("edit %d of %s, %s, was acknowledged and is lost: %v", from.number, from.phone, wrote, err)
		}
		if !strings.Contains(string(r.Text), "    "+wrote+"\n") {
			t.Fatalf("revision %d lacks %q", r.Number, wrote)
		}
	}
	head, err := s.Head(ctx, 3)
	if err != nil || head.Number < int64(1+len(acknowledged)) {
		t.Fatalf("%d revisions for %d edits: %v", head.Number, len(acknowledged), err)
	}
}
