package order_test

import (
	"slices"
	"strings"
	"testing"

	"dryfit/internal/cut"
	"dryfit/internal/demo"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/order"
	"dryfit/internal/schedule"
	"dryfit/internal/site"
	"dryfit/internal/takeoff"
	"dryfit/internal/text"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// bought is what one document takes and costs.
type bought struct {
	needs takeoff.Plan
	order order.Plan
	said  []string
}

func buy(t *testing.T, file string, src []byte, room site.Room, tiles tiling.Plan) bought {
	t.Helper()
	doc, found := document.Read(file, src)
	needs, list, assumed := takeoff.Make(takeoff.From{Document: doc, Room: room, Tiles: tiles})
	o, more, _ := order.Make(doc, tiles, cut.Plan{}, needs, schedule.Plan{})
	b := bought{needs: needs, order: o}
	for _, l := range []diag.List{found, list, more} {
		for _, f := range l {
			b.said = append(b.said, f.Code+" "+f.Say(unit.DefaultStyle(unit.Millimetres)))
		}
	}
	for _, a := range assumed {
		b.said = append(b.said, a.Say(unit.DefaultStyle(unit.Millimetres)))
	}
	return b
}

// Every number of the labels, prices and tiles of both rooms is made unknown in turn. What then takes or costs another amount says so: the line is
// marked, or there is a finding or an assumption that was not there before. A cost with an unknown price in it is not called whole without a word.
func TestEveryLabelUnknownInTurn(t *testing.T) {
	for _, r := range demo.Rooms() {
		doc, _ := document.Read(r.File, r.Text)
		room, _, _ := site.Solve(doc)
		tiles, _, _ := tiling.Make(doc, room, tiling.Options{})
		before := buy(t, r.File, r.Text, room, tiles)
		root, _ := text.Parse(r.Text)
		tried := 0
		for _, path := range numbersOf(root, nil) {
			src, found := document.Apply(r.Text, []document.Op{{Do: text.Set, Path: path, Value: "unknown"}})
			where := strings.Join(path, " > ")
			if found.Stops() {
				t.Errorf("%s: %s can not be made unknown: %v", r.File, where, found)
				continue
			}
			tried++
			after := buy(t, r.File, src, room, tiles)
			if priced := slices.Contains(path, "packs") || path[len(path)-1] == "price"; priced && after.order.Whole && used(before.order, path[1]) && !told(before, after) {
				t.Errorf("%s: without %s the cost is called whole", r.File, where)
			}
			if !same(before, after) && !told(before, after) {
				t.Errorf("%s: with %s unknown the order is another, and nothing is said", r.File, where)
			}
		}
		if tried < 60 {
			t.Errorf("%s: only %d numbers", r.File, tried)
		}
	}
}

// used: the good is bought, so that its price is in the cost. The choice may fall on another of its packs.
func used(o order.Plan, good string) bool {
	return slices.ContainsFunc(o.Lines, func(l order.Line) bool { return l.Good == good && l.Priced })
}

// numbersOf lists the paths of all values with a figure under goods, buying and tiles.
func numbersOf(n *text.Node, path []string) [][]string {
	var out [][]string
	for _, e := range n.Entries {
		at := append(slices.Clone(path), e.Key)
		if !slices.Contains([]string{"goods", "buying", "tiles"}, at[0]) {
			continue
		}
		if e.Value.Kind == text.Scalar && len(at) > 2 && strings.ContainsAny(e.Value.Text, "0123456789") {
			out = append(out, at)
		}
		out = append(out, numbersOf(e.Value, at)...)
	}
	return out
}

// same compares what is needed, bought and paid.
func same(a, b bought) bool {
	if a.order.Total != b.order.Total || len(a.order.Lines) != len(b.order.Lines) || len(a.needs.Lines) != len(b.needs.Lines) {
		return false
	}
	for i, l := range a.needs.Lines {
		if l.Need != b.needs.Lines[i].Need {
			return false
		}
	}
	for i, f := range a.needs.Faces {
		if f.Weight != b.needs.Faces[i].Weight {
			return false
		}
	}
	return true
}

// told: something is said, or marked, that was not before.
func told(a, b bought) bool {
	if slices.ContainsFunc(b.said, func(w string) bool { return !slices.Contains(a.said, w) }) || len(b.order.Unpriced) > len(a.order.Unpriced) || a.order.Whole && !b.order.Whole {
		return true
	}
	for i := range min(len(a.needs.Lines), len(b.needs.Lines)) {
		if x, y := a.needs.Lines[i], b.needs.Lines[i]; x.Known && !y.Known || !x.Typical && y.Typical {
			return true
		}
	}
	return false
}
