package joinery

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"dryfit/internal/demo"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/text"
	"dryfit/internal/unit"
)

// Every figure of the wood work in the built-in rooms is made unknown in turn. Whatever then changes in what is built is owned up to by a
// finding or an assumption that was not there before: nothing turns into a silent zero.
func TestEachFigureUnknown(t *testing.T) {
	for _, r := range demo.Rooms() {
		root, _ := text.Parse(r.Text)
		shape := shapeOf(t, r.File, r.Text)
		before, said := built(r.File, r.Text, shape)
		for _, group := range []string{"stock", "cabinets", "tops", "scribes", "trim", "finish"} {
			n := root.Get(group)
			if n == nil {
				continue
			}
			for _, path := range figures(n, []string{group}) {
				src, found := document.Apply(r.Text, []document.Op{{Do: text.Set, Path: path, Value: "unknown"}})
				if found.Stops() {
					t.Errorf("%s: %s can not be made unknown: %v", r.File, strings.Join(path, " > "), found)
					continue
				}
				after, now := built(r.File, src, shape)
				if reflect.DeepEqual(before, after) || slices.ContainsFunc(now, func(w string) bool { return !slices.Contains(said, w) }) {
					continue
				}
				t.Errorf("%s: with %s unknown other wood is built, and nothing is said", r.File, strings.Join(path, " > "))
			}
		}
	}
}

func shapeOf(t *testing.T, file string, src []byte) site.Room {
	t.Helper()
	doc, found := document.Read(file, src)
	if found.Stops() {
		t.Fatal(found)
	}
	shape, _, _ := site.Solve(doc)
	return shape
}

// built is the wood of a room, and all that is said of it but notes.
func built(file string, src []byte, shape site.Room) (Plan, []string) {
	doc, read := document.Read(file, src)
	p, found, assumed := Make(doc, shape)
	var said []string
	style := unit.DefaultStyle(unit.Millimetres)
	for _, f := range append(read, found...) {
		if f.Class != diag.Note {
			said = append(said, f.Code+" "+f.Say(style))
		}
	}
	for _, a := range assumed {
		said = append(said, a.Say(style))
	}
	return p, said
}

// figures lists the paths of all single values that hold a digit.
func figures(n *text.Node, path []string) [][]string {
	var out [][]string
	for _, e := range n.Entries {
		at := append(slices.Clone(path), e.Key)
		if e.Value.Kind == text.Scalar && strings.ContainsAny(e.Value.Text, "0123456789") {
			out = append(out, at)
		}
		out = append(out, figures(e.Value, at)...)
	}
	return out
}
