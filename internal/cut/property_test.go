package cut

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Any mix of stock and parts is cut so that the saw's own steps give every piece, and the same document gives the same plan.
func TestAnyParts(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		doc := room(t, "in", drawnTools(r), drawnStock(r), drawnKit(r))
		p, _, _ := Make(doc, nil)
		if err := recut(doc, p); err != nil {
			r.Fatal(err)
		}
		if again, _, _ := Make(doc, nil); !reflect.DeepEqual(p, again) {
			r.Fatal("two plans differ")
		}
	})
}

func drawnTools(r *rapid.T) string {
	return "tools: {saws: {s: {reach: 4, kerf: " + rapid.SampledFrom([]string{"0", "1/16", "1/8", "2 mm"}).Draw(r, "kerf") +
		", first: " + rapid.SampledFrom([]string{"either", "rip", "crosscut"}).Draw(r, "first") + "}}}"
}

func drawnStock(r *rapid.T) string {
	kind := rapid.SampledFrom([]string{"sheet", "board", "stick"}).Draw(r, "kind")
	s := "{kind: " + kind + ", size: 96 x 20 x 1, edge trim: " + rapid.SampledFrom([]string{"0", "1/4", "1"}).Draw(r, "trim")
	if rapid.Bool().Draw(r, "priced") {
		s += ", price: 40, other sizes: {48 x 20: 22.50, 120 x 20: 55.10}"
	}
	if rapid.Bool().Draw(r, "plain") {
		s += ", grain: none"
	}
	if rapid.Bool().Draw(r, "on hand") {
		s += ", on hand: {rest: {size: 60 x 20, count: 2, bad: [20 to 22, 21 to 25, 50 to 90]}}"
	}
	if rapid.Bool().Draw(r, "not sold") {
		s += ", sold: no"
	}
	return "stock: {ply: " + s + "}}"
}

func drawnKit(r *rapid.T) string {
	var parts []string
	for i := range rapid.IntRange(1, 5).Draw(r, "parts") {
		p := fmt.Sprintf("p%d %d x %d x 1, count: %d, grain: %s", i, rapid.IntRange(2, 70).Draw(r, "length"), rapid.IntRange(2, 19).Draw(r, "width"),
			rapid.IntRange(1, 4).Draw(r, "count"), rapid.SampledFrom([]string{"along", "across", "any"}).Draw(r, "grain"))
		if rapid.IntRange(0, 3).Draw(r, "match") == 0 {
			p += ", match: m"
		}
		parts = append(parts, p)
	}
	return kit("ply", strings.Join(parts, "; "))
}
