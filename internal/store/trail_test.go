package store

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// A history in one line: "." is an edit, "u3" undoes revision 3; the first is the room itself.
func undoesOf(line string) (u []int64) {
	for _, word := range strings.Fields(line) {
		var n int64
		fmt.Sscanf(word, "u%d", &n)
		u = append(u, n)
	}
	return u
}

func TestTrail(t *testing.T) {
	for _, c := range []struct {
		history    string
		undo, redo int64
	}{
		{"", 0, 0},
		{".", 0, 0},
		{". .", 2, 0},
		{". . .", 3, 0},
		{". . . u3", 2, 4},
		{". . . u3 u2", 0, 5},
		{". . . u3 u2 u5", 6, 4},    // 6 brings 2 back
		{". . . u3 u2 u5 u4", 7, 0}, // and 7 brings 3 back
		{". . . u3 u2 u5 u4 u7", 6, 8},
		{". . . u3 .", 5, 0},    // a new edit ends redoing
		{". . . u3 . u5", 2, 6}, // and undoing goes on below it
		{". . . u2", 3, 4},      // out of order: 3 still stands
		{". . u2 u2", 4, 0},     // undone twice by two people: the second is an edit of its own
	} {
		if got := trail(undoesOf(c.history)); got != (Trail{c.undo, c.redo}) {
			t.Errorf("%q: %+v, want %d %d", c.history, got, c.undo, c.redo)
		}
	}
}

// Someone who only presses undo, redo and edit must see what the plainest editor shows: a list of states and a place in
// it. What an inverse brings back is worked out from the links alone.
func TestTrailAgainstAnEditorOfStates(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		states, place := []string{"1"}, 0
		undoes := []int64{0}
		before, after := []string{"", ""}, []string{"", "1"} // the document around each revision
		store := func(u int64, text string) {
			before, after = append(before, after[len(after)-1]), append(after, text)
			undoes = append(undoes, u)
		}
		for range rapid.IntRange(0, 40).Draw(t, "presses") {
			now := trail(undoes)
			if (now.Undo != 0) != (place > 0) || (now.Redo != 0) != (place < len(states)-1) {
				t.Fatalf("%v: %+v at %d of %d states", undoes, now, place, len(states))
			}
			switch press := rapid.SampledFrom([]string{"undo", "redo", "edit"}).Draw(t, "press"); {
			case press == "undo" && place > 0:
				place--
				store(now.Undo, before[now.Undo])
			case press == "redo" && place < len(states)-1:
				place++
				store(now.Redo, before[now.Redo])
			case press == "edit":
				text := fmt.Sprint(len(undoes) + 1)
				states = append(states[:place+1:place+1], text)
				place++
				store(0, text)
			}
			if got := after[len(after)-1]; got != states[place] {
				t.Fatalf("%v: shows %q, want %q", undoes, got, states[place])
			}
		}
	})
}

func TestTrailOfARoom(t *testing.T) {
	s := fresh(t)
	room := newRoom(t, s, "room")
	appended(t, s, room.ID, next(1))
	inverse := next(2)
	inverse.Undoes = 2
	if r := appended(t, s, room.ID, inverse); r.Undoes != 2 {
		t.Errorf("%+v", r)
	}
	got, err := s.Trail(t.Context(), room.ID)
	if err != nil || got != (Trail{0, 3}) {
		t.Errorf("%+v %v", got, err)
	}
	_, err = s.Trail(t.Context(), 99)
	wantKind(t, "no such room", err, NotFound)
}
