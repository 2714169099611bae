package sheet

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/draw"
	"dryfit/internal/plan"
	"dryfit/internal/typeset"
)

func planned(t *testing.T, text []byte) plan.Plan {
	t.Helper()
	p, err := plan.Make(context.Background(), "room", text, plan.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// On every drawing for a screen words stand clear of each other and within the drawing.
func TestScreenWordsStandClear(t *testing.T) {
	for _, room := range demo.Rooms() {
		p := planned(t, room.Text)
		pages := map[string]draw.Page{}
		survey, scaled := SurveyOnScreen(p, nil)
		if !scaled {
			t.Errorf("%s: the plan of the floor is not to scale", room.File)
		}
		pages["survey"] = survey.Page
		for _, f := range p.Room.Faces {
			if s, ok := BareOnScreen(p, f.Name); ok {
				pages["bare "+f.Name] = s.Page
			}
			if s, ok := FaceOnScreen(p, f.Name); ok {
				pages["laid "+f.Name] = s.Page
			}
		}
		for name, page := range pages {
			for _, o := range typeset.Overlaps(page) {
				t.Errorf("%s, %s: %+v", room.File, name, o)
			}
			whole := draw.Span(0, 0, page.W, page.H)
			for _, w := range typeset.Placements(page) {
				if !whole.Holds(w.Box) {
					t.Errorf("%s, %s: %q leaves the drawing", room.File, name, w.Text.Body)
				}
			}
		}
	}
}

// A sketch has the corners that were asked for, goes round clockwise and never crosses itself; it fills as it is read.
func TestSketches(t *testing.T) {
	for n := 3; n <= 12; n++ {
		ring := sketched(n, 1000, 800)
		if len(ring) != n {
			t.Errorf("%d corners for %d", len(ring), n)
		}
		var twice draw.Um
		for i, a := range ring {
			b := ring[(i+1)%n]
			twice += a.X*b.Y - b.X*a.Y // the shoelace formula: negative where it goes clockwise
		}
		if twice >= 0 {
			t.Errorf("%d corners: counter-clockwise", n)
		}
	}
	const doc = "dryfit: 1\nname: x\nunits: in\nsurvey:\n  corners: A B C D\n  tape: {A-B: 72%s}\n"
	first, scaled := SurveyOnScreen(planned(t, fmt.Appendf(nil, doc, "")), []Line{{"B", "C"}, {"C", "D"}})
	if words := wordsOn(first.Page); scaled || !strings.Contains(words, "72") || !strings.Contains(words, "B-C ?") || strings.Contains(words, "C-D ?") {
		t.Errorf("scaled %v, %s", scaled, words)
	}
	_, scaled = SurveyOnScreen(planned(t, fmt.Appendf(nil, doc, ", B-C: 96, C-D: 72, D-A: 96, A-C: 120")), nil)
	if !scaled {
		t.Error("five readings fix four corners") // 2n - 3
	}
}

func wordsOn(p draw.Page) string {
	var out []string
	for _, w := range typeset.Placements(p) {
		out = append(out, w.Text.Body)
	}
	return strings.Join(out, " | ")
}
