package store

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"sync"
	"testing"
)

func TestHistory(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	appended(t, s, room.ID, next(1))
	merged := next(2)
	merged.Seen, merged.Name = 1, "Boathouse washroom"
	got := appended(t, s, room.ID, merged)
	want := Revision{Room: room.ID, Number: 3, Seen: 1, Text: text(3), Ops: []byte(`[{"set":"name"}]`), By: "editor", At: minute(2)}
	if fmt.Sprint(got) != fmt.Sprint(want) || got.Base() != 2 {
		t.Errorf("%+v, want %+v", got, want)
	}
	now, err := s.Head(t.Context(), room.ID)
	if err != nil || fmt.Sprint(now) != fmt.Sprint(want) {
		t.Errorf("head %+v %v", now, err)
	}
	first, err := s.At(t.Context(), room.ID, 1)
	if err != nil || first.Base() != 0 || first.Seen != 0 || string(first.Ops) != "[]" || !first.At.Equal(noon) || first.By != "owner" {
		t.Errorf("first %+v %v", first, err)
	}
	listed, err := s.Room(t.Context(), room.ID)
	if err != nil || listed.Name != "Boathouse washroom" || listed.Head != 3 || !listed.Changed.Equal(minute(2)) || !listed.Created.Equal(noon) {
		t.Errorf("room %+v %v", listed, err)
	}
}

func numbers(list []Revision) (n []int64) {
	for _, r := range list {
		n = append(n, r.Number)
	}
	return n
}

func TestRangeAndLog(t *testing.T) {
	s := fresh(t)
	other := newRoom(t, s, "other")
	room := newRoom(t, s, "room")
	for base := range int64(4) {
		appended(t, s, room.ID, next(base+1))
	}
	appended(t, s, other.ID, next(1))
	for _, c := range []struct {
		first, last int64
		want        []int64
	}{{1, 5, []int64{1, 2, 3, 4, 5}}, {2, 3, []int64{2, 3}}, {-9, 1, []int64{1}}, {5, 99, []int64{5}}, {4, 3, nil}} {
		got, err := s.Range(t.Context(), room.ID, c.first, c.last)
		if err != nil || !slices.Equal(numbers(got), c.want) {
			t.Errorf("range %d..%d: %v %v, want %v", c.first, c.last, numbers(got), err, c.want)
		}
	}
	got, err := s.Log(t.Context(), room.ID, 5, 3)
	if err != nil || !slices.Equal(numbers(got), []int64{4, 3, 2}) || got[0].Text != nil || len(got[0].Ops) == 0 {
		t.Errorf("log %+v %v", got, err)
	}
}

func TestConflictCarriesTheHead(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	appended(t, s, room.ID, next(1))
	for _, base := range []int64{1, 3} {
		_, _, err := s.Append(t.Context(), room.ID, next(base))
		wantKind(t, fmt.Sprint("on ", base), err, Stale)
		var c *Conflict
		if !errors.As(err, &c) || c.Base != base || c.Head.Number != 2 || !bytes.Equal(c.Head.Text, text(2)) {
			t.Errorf("%+v", c)
		}
	}
	if r, _ := s.Room(t.Context(), room.ID); r.Head != 2 {
		t.Errorf("head %d", r.Head)
	}
}

func TestDeliveredTwice(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	e := next(1)
	e.From = Delivery{Client: "phone", Seq: 7, Body: []byte("set tape A-B")}
	first := appended(t, s, room.ID, e)
	appended(t, s, room.ID, next(2)) // the head moves on before the phone asks again
	for _, body := range []string{"set tape A-B", ""} {
		e.From.Body, e.Text = []byte(body), []byte("merged in another way")
		got, again, err := s.Append(t.Context(), room.ID, e)
		if err != nil || !again || fmt.Sprint(got) != fmt.Sprint(first) {
			t.Errorf("%q: %+v %v %v", body, got, again, err)
		}
	}
	got, found, err := s.Delivered(t.Context(), room.ID, e.From)
	if err != nil || !found || got.Number != 2 {
		t.Errorf("%+v %v %v", got, found, err)
	}
	e.From.Body = []byte("set tape B-C")
	_, _, err = s.Append(t.Context(), room.ID, e)
	wantKind(t, "another request", err, Reused)
	if r, _ := s.Room(t.Context(), room.ID); r.Head != 3 {
		t.Errorf("head %d", r.Head)
	}
	closed(t, s)
	e.From.Body = []byte("set tape A-B")
	if _, again, err := reopen(t, s.dir).Append(t.Context(), room.ID, e); err != nil || !again {
		t.Errorf("after a restart: %v %v", again, err)
	}
}

// A client's numbers count in each room alone, so that nobody reads another room through a number.
func TestDeliveryIsOfOneRoom(t *testing.T) {
	s := fresh(t)
	a, b := newRoom(t, s, "a"), newRoom(t, s, "b")
	e := next(1)
	e.From = Delivery{Client: "phone", Seq: 1}
	appended(t, s, a.ID, e)
	if r := appended(t, s, b.ID, e); r.Room != b.ID {
		t.Errorf("%+v", r)
	}
	_, err := s.Tick(t.Context(), a.ID, Tick{Address: "x", From: e.From})
	wantKind(t, "the number of an edit for a tick", err, Reused)
	if _, found, err := s.Delivered(t.Context(), a.ID, Delivery{}); found || err != nil {
		t.Errorf("a request without a name: %v %v", found, err)
	}
}

// Eight writers edit one room, each merging when it comes too late. Nobody's edit is lost and none is stored twice.
func TestEightWriters(t *testing.T) {
	const writers, edits = 8, 25
	s := fresh(t)
	room := newRoom(t, s, "room")
	var done sync.WaitGroup
	for w := range writers {
		done.Go(func() {
			base := int64(1)
			for i := range edits {
				base = insist(t, s, room.ID, base, fmt.Sprint("writer ", w), int64(i))
			}
		})
	}
	done.Wait()
	sound(t, s)
	all, err := s.Range(t.Context(), room.ID, 2, 1+writers*edits)
	if err != nil || len(all) != writers*edits {
		t.Fatalf("%d revisions, %v", len(all), err)
	}
	seen := map[string]int64{}
	for _, r := range all {
		if !bytes.Equal(r.Text, text(r.Number)) || fmt.Sprint(seen[r.By]) != string(r.Ops) {
			t.Fatalf("%+v: not the next edit of its writer", r)
		}
		seen[r.By]++
	}
}

// insist stores an edit, however often the head moves meanwhile, and sends it once more when it is stored.
func insist(t *testing.T, s *Store, id RoomID, base int64, who string, seq int64) int64 {
	for {
		e := next(base)
		e.By, e.Ops, e.From = who, fmt.Append(nil, seq), Delivery{Client: who, Seq: seq}
		r, again, err := s.Append(t.Context(), id, e)
		var c *Conflict
		if errors.As(err, &c) {
			base = c.Head.Number
			continue
		}
		if err != nil || again {
			t.Errorf("%s %d: %v %v", who, seq, again, err)
			return base
		}
		if twice, again, err := s.Append(t.Context(), id, e); err != nil || !again || twice.Number != r.Number {
			t.Errorf("%s %d again: %v %v", who, seq, again, err)
		}
		return r.Number
	}
}

func TestUnusableEdits(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	appended(t, s, room.ID, next(1))
	for what, spoil := range map[string]func(*Edit){
		"no base":                func(e *Edit) { e.Base = 0 },
		"seen after its base":    func(e *Edit) { e.Seen = 3 },
		"undoes what is not yet": func(e *Edit) { e.Undoes = 3 },
		"undoes the room itself": func(e *Edit) { e.Undoes = 1 },
		"operations not JSON":    func(e *Edit) { e.Ops = []byte("{") },
	} {
		e := next(2)
		spoil(&e)
		_, _, err := s.Append(t.Context(), room.ID, e)
		wantKind(t, what, err, Unusable)
	}
	_, _, err := s.Append(t.Context(), 99, next(1))
	wantKind(t, "no such room", err, NotFound)
	_, err = s.At(t.Context(), room.ID, 3)
	wantKind(t, "no such revision", err, NotFound)
	_, err = s.Head(t.Context(), 99)
	wantKind(t, "no such head", err, NotFound)
}

func TestTextsComeBackAsTheyWere(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	for i, hostile := range []string{"", "\x00", "a\x00b", "\xff\xfe", "\r\n", "'; DROP TABLE room; --", "🛁 8′ 2⅜″", "\ufeffname: x"} {
		e := next(int64(i + 1))
		e.Text, e.Name = []byte(hostile), hostile
		if r := appended(t, s, room.ID, e); string(r.Text) != hostile {
			t.Errorf("%q came back as %q", hostile, r.Text)
		}
		if r, err := s.Room(t.Context(), room.ID); err != nil || r.Name != hostile {
			t.Errorf("name %q came back as %q, %v", hostile, r.Name, err)
		}
	}
	sound(t, s)
}
