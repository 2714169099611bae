package rule

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A code goes before stricter advice, which is told beside it; an inspector's number goes before both.
func TestBookOrder(t *testing.T) {
	b := For(IRC | IPC)
	e, ok := b.Least(WCFront)
	if !ok || e.Rule.ID != "wc-front-ipc" || e.Own || e.Rule.Advice {
		t.Errorf("IPC first: %+v", e.Rule)
	}
	if better, ok := b.Better(WCFront, AtLeast); !ok || better.Limit != 30*in {
		t.Errorf("30 in is advised beyond 21: %+v", better)
	}
	own := For(IRC|IPC, Inspected{"wc-front-irc", int64(23 * in)})
	if e, _ := own.Least(WCFront); !e.Own || e.Rule.Limit != 23*in || len(e.Also) < 2 {
		t.Errorf("the inspector's 23 in: %+v", e)
	}
	if e, _ := own.Least(WCFront); e.Cite() != "your inspector's number, in place of IRC R307.1, P2705.1(5) (from memory)" {
		t.Error(e.Cite())
	}
	if e, ok := b.Least(HandGap); !ok || !e.Rule.Advice {
		t.Error("habit is told without being chosen")
	}
	if _, ok := b.Most(MirrorBottom); ok {
		t.Error("the ADA was not chosen")
	}
	if _, ok := b.Better(MirrorBottom, AtMost); ok {
		t.Error("nor does it advise")
	}
	if e, ok := b.Usual(WCRoughIn); !ok || e.Rule.Limit != 12*in {
		t.Error("12 in is the usual outlet")
	}
	if got := For(IRC, Inspected{"no such", 1}); len(got.own) != 0 {
		t.Error("an unknown id changes nothing")
	}
}

// Two lower numbers of one inspector: the stricter holds.
func TestTwoOwnNumbers(t *testing.T) {
	b := For(IPC|UPC, Inspected{"wc-front-ipc", int64(22 * in)}, Inspected{"wc-front-upc", int64(20 * in)})
	if e, _ := b.Least(WCFront); e.Rule.Limit != 22*in {
		t.Error(e.Rule.Limit.In())
	}
}

// What cannot all hold is said: an inspector's 19 in against the ADA's most of 18. No two published sets stand against each other.
func TestConflicts(t *testing.T) {
	got := For(ADA, Inspected{"wc-side-ada-least", int64(19 * in)}).Conflicts()
	if len(got) != 1 || got[0].Least.Rule.Limit != 19*in || got[0].Most.Rule.Limit != 18*in {
		t.Errorf("%+v", got)
	}
	for s := Sets(0); s < 1<<len(setNames); s++ {
		for _, c := range For(s).Conflicts() {
			t.Errorf("%v: %s against %s", s, c.Least.Rule.ID, c.Most.Rule.ID)
		}
	}
}

// Choosing more sets never allows more.
func TestMoreSetsAreStricter(t *testing.T) {
	var subjects []Subject
	for s := range bySubject {
		subjects = append(subjects, s)
	}
	slices.Sort(subjects)
	rapid.Check(t, func(t *rapid.T) {
		a := Sets(rapid.Uint16Range(0, 1<<len(setNames)-1).Draw(t, "a"))
		b := a | Sets(rapid.Uint16Range(0, 1<<len(setNames)-1).Draw(t, "b"))
		s := rapid.SampledFrom(subjects).Draw(t, "subject")
		few, ok := For(a).Least(s)
		many, also := For(b).Least(s)
		if ok && (!also || !few.Rule.Advice && few.Rule.stricter(many.Rule)) {
			t.Fatalf("%s: %v by %v, %v by %v", s, few.Rule.Value(), a, many.Rule.Value(), b)
		}
		few, ok = For(a).Most(s)
		many, also = For(b).Most(s)
		if ok && (!also || !few.Rule.Advice && few.Rule.stricter(many.Rule)) {
			t.Fatalf("%s: %v by %v, %v by %v", s, few.Rule.Value(), a, many.Rule.Value(), b)
		}
	})
}

func TestChoices(t *testing.T) {
	for _, c := range Choices() {
		got, ok := ChoiceNamed(" " + c.Name)
		if !ok || got != c || c.Sets&advised != 0 || c.What == "" {
			t.Errorf("%+v", c)
		}
	}
	if _, ok := ChoiceNamed("moon"); ok {
		t.Error("no such choice")
	}
	if got := (IRC | UK).String(); got != "IRC, UK practice" {
		t.Error(got)
	}
	ids := IDs()
	if !slices.IsSorted(ids) || !slices.Contains(ids, "air-gap") || slices.Contains(ids, "wc-roughin") {
		t.Error(ids)
	}
}
