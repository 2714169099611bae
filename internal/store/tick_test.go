package store

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func tick(t testing.TB, s *Store, id RoomID, ticks ...Tick) []Tick {
	t.Helper()
	standing, err := s.Tick(t.Context(), id, ticks...)
	if err != nil {
		t.Fatal(err)
	}
	return standing
}

// A tick in one word: "p3+a" is request 3 of phone p, which ticks piece a; "-" takes the tick off.
func ticksOf(line string) (list []Tick) {
	for _, word := range strings.Fields(line) {
		i := strings.IndexAny(word, "+-")
		t := Tick{Address: word[i+1:], Outline: "outline", Ticked: word[i] == '+', At: noon}
		t.From.Client = word[:1]
		fmt.Sscan(word[1:i], &t.From.Seq)
		list = append(list, t)
	}
	return list
}

func said(ticks []Tick) string {
	var words []string
	for _, t := range ticks {
		words = append(words, fmt.Sprintf("%s%d%s%s", t.From.Client, t.From.Seq, map[bool]string{true: "+", false: "-"}[t.Ticked], t.Address))
	}
	return strings.Join(words, " ")
}

func TestTicks(t *testing.T) {
	for _, c := range []struct{ sent, standing string }{
		{"p1+a", "p1+a"},
		{"p1+b p2+a", "p2+a p1+b"},           // by address
		{"p1+a p2-a", "p2-a"},                // taken off again, and still known
		{"p1+a p2-a p1+a p2-a", "p2-a"},      // all sent twice
		{"p2-a p1+a", "p2-a"},                // out of order: the phone's own last word stands
		{"p1+a q1-a", "q1-a"},                // two phones: the later arrival
		{"q1-a p1+a", "p1+a"},                // whichever it is
		{"p5+a q1-a p4+a", "q1-a"},           // p4 is late
		{"p1+a q9-a p2+a q8+a", "p2+a"},      // q8 is late
		{"p1+a p3+b p2-a", "p2-a p3+b"},      // another piece's tick does not make it late
		{"p2-a p1+a q1+a p1+a", "q1+a"},      // late once is late for ever
		{"p1+a q1+a p1+a q1+a", "q1+a"},      // a repeat moves nothing
		{"p1+a p2+a p3-a p2+a", "p3-a"},      // nor does the repeat of one in the middle
		{"p1+A p2-a p3+á", "p1+A p2-a p3+á"}, // addresses are told apart exactly
	} {
		for _, how := range []string{"one by one", "at once"} {
			s := fresh(t)
			room := newRoom(t, s, "room")
			if how == "at once" {
				if got := said(tick(t, s, room.ID, ticksOf(c.sent)...)); got != c.standing {
					t.Errorf("%s, %s: answered %q, want %q", c.sent, how, got, c.standing)
				}
			} else {
				for _, one := range ticksOf(c.sent) {
					tick(t, s, room.ID, one)
				}
			}
			got, err := s.Ticks(t.Context(), room.ID)
			if err != nil || said(got) != c.standing {
				t.Errorf("%s, %s: %q %v, want %q", c.sent, how, said(got), err, c.standing)
			}
			closed(t, s)
		}
	}
}

func TestTickKeepsWhatItSays(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	want := Tick{Address: "wall A > 3 > 4 > a", Outline: "sha-of-outline", Ticked: true, By: "editor", At: minute(3), From: Delivery{Client: "phone", Seq: 4}}
	got := tick(t, s, room.ID, want)
	want.Number = got[0].Number
	if len(got) != 1 || fmt.Sprint(got[0]) != fmt.Sprint(want) || want.Number == 0 {
		t.Errorf("%+v, want %+v", got, want)
	}
	log, err := s.TickLog(t.Context(), room.ID)
	if err != nil || fmt.Sprint(log) != fmt.Sprint(got) {
		t.Errorf("log %+v %v", log, err)
	}
}

func TestTicksAllOrNone(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	_, err := s.Tick(t.Context(), room.ID, Tick{Address: "a"}, Tick{})
	wantKind(t, "no address", err, Unusable)
	_, err = s.Tick(t.Context(), 99, Tick{Address: "a"})
	wantKind(t, "no such room", err, NotFound)
	one := Tick{Address: "a", From: Delivery{Client: "p", Seq: 1, Body: []byte("x")}}
	other := one
	other.From.Body = []byte("y")
	_, err = s.Tick(t.Context(), room.ID, one, other)
	wantKind(t, "a number twice", err, Reused)
	if got, err := s.Ticks(t.Context(), room.ID); len(got) != 0 || err != nil {
		t.Errorf("%+v %v", got, err)
	}
	if got := tick(t, s, room.ID); got != nil {
		t.Errorf("no ticks gave %+v", got)
	}
}

// However a phone's ticks are delayed, repeated and mixed, its own last word stands for each piece.
func TestTicksInAnyOrder(t *testing.T) {
	s := fresh(t)
	rapid.Check(t, func(rt *rapid.T) {
		room, err := s.Create(t.Context(), NewRoom{Name: "room", At: noon})
		if err != nil {
			rt.Fatal(err)
		}
		var said []Tick
		last := map[string]bool{}
		for seq := range rapid.IntRange(1, 8).Draw(rt, "ticks") {
			one := Tick{Address: rapid.SampledFrom([]string{"a", "b", "c"}).Draw(rt, "piece"), Ticked: rapid.Bool().Draw(rt, "ticked"), At: noon}
			one.From = Delivery{Client: "phone", Seq: int64(seq)}
			said = append(said, one)
			last[one.Address] = one.Ticked
		}
		sent := append(rapid.Permutation(said).Draw(rt, "first"), rapid.Permutation(said).Draw(rt, "again")...)
		if _, err := s.Tick(t.Context(), room.ID, sent...); err != nil {
			rt.Fatal(err)
		}
		got, err := s.Ticks(t.Context(), room.ID)
		if err != nil || len(got) != len(last) || slices.ContainsFunc(got, func(x Tick) bool { return last[x.Address] != x.Ticked }) {
			rt.Fatalf("%+v %v, want %v", got, err, last)
		}
		if log, err := s.TickLog(t.Context(), room.ID); err != nil || len(log) != len(said) {
			rt.Fatalf("%d in the log of %d, %v", len(log), len(said), err)
		}
	})
}
