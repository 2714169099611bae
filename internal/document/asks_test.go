package document

import (
	"slices"
	"strings"
	"testing"
)

// Every map by name at the top can be asked for; an answer that is the table's own example reads without a word.
func TestAsksReadBack(t *testing.T) {
	for _, k := range root.shape.rows {
		asks, ok := Asks(k.name)
		if ok != (k.shape.kind == namedShape) {
			t.Errorf("%s: asked %v", k.name, ok)
		}
		for _, a := range asks {
			if a.What == "" || a.Example == "" {
				t.Errorf("%s > %v has no words or no example", k.name, a.Path)
			}
			if a.Choices != nil && !a.List && !slices.Contains(a.Choices, a.Example) {
				t.Errorf("%s > %v: the example %s is none of the answers %v", k.name, a.Path, a.Example, a.Choices)
			}
		}
	}
}

func TestAsksOfATap(t *testing.T) {
	asks, _ := Asks("taps")
	var got []string
	for _, a := range asks {
		s := strings.Join(a.Path, " > ")
		if len(a.Refers) > 0 {
			s += " (" + strings.Join(a.Refers, ", ") + ")"
		}
		if a.Length {
			s += " length"
		}
		got = append(got, s)
	}
	for _, want := range []string{"serves (basin)", "in (wall)", "reach length", "outlet > drop length", "outlet > bore", "body > depth", "handle > swings length"} {
		if !slices.Contains(got, want) {
			t.Errorf("%s is not asked: %v", want, got)
		}
	}
}
