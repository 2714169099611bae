package search

import (
	"fmt"
	"strings"
	"testing"

	"dryfit/internal/geom"
	"dryfit/internal/tiling/bond"
	"dryfit/internal/tiling/judge"
	"dryfit/internal/unit"
)

// read makes an input from a line of words in millimetres, entries parted by "|":
//
//	room W H | taper D (the right wall leans out by D at the top) | fall D (the floor falls by D to the right)
//	open NAME X0 Y0 X1 Y1 [moves M] | hole X Y D | tile W H JOINT | stack | running N/D [back] | vertical … | diagonal … | herringbone, …
//	mark M | center X | level Y | sight Y | hidden left|right|floor|ceiling D | weight left|… N | look PRESET
//	sliver L | enough L
func read(t testing.TB, line string) Input {
	t.Helper()
	r := reader{t: t, in: Input{Edges: []Edge{{Name: "left", Weight: 1}, {Name: "floor", Weight: 1},
		{Name: "right", Weight: 1}, {Name: "ceiling", Weight: 1}}, Mark: unit.Millimetre}, spec: bond.Spec{Kind: bond.Stack}}
	for entry := range strings.SplitSeq(line, "|") {
		r.entry(strings.Fields(entry))
	}
	return r.finish()
}

type reader struct {
	t          testing.TB
	in         Input
	spec       bond.Spec
	room       geom.Rect
	lean, fall unit.Length
	open       []geom.Region
	tile       [2]unit.Length
	joint      unit.Length
}

func (r *reader) mm(s string) unit.Length {
	l, err := unit.Parse(s, unit.Millimetres)
	if err != nil {
		r.t.Fatal(err)
	}
	return l
}

func (r *reader) all(words []string) (out []unit.Length) {
	for _, w := range words {
		out = append(out, r.mm(w))
	}
	return out
}

func (r *reader) edge(name string) *Edge {
	for i := range r.in.Edges {
		if r.in.Edges[i].Name == name {
			return &r.in.Edges[i]
		}
	}
	r.t.Fatalf("no edge %q", name)
	return nil
}

func (r *reader) entry(w []string) {
	switch w[0] {
	case "room":
		l := r.all(w[1:])
		r.room.Max = geom.Point{X: l[0], Y: l[1]}
	case "taper":
		r.lean = r.mm(w[1])
	case "fall":
		r.fall = r.mm(w[1])
	case "open":
		r.opening(w[1], r.all(w[2:6]), w[6:])
	case "hole":
		l := r.all(w[1:])
		r.in.Holes = append(r.in.Holes, Hole{fmt.Sprintf("hole %d", len(r.in.Holes)+1), geom.Point{X: l[0], Y: l[1]}, l[2]})
	case "tile":
		l := r.all(w[1:])
		r.tile, r.joint = [2]unit.Length{l[0], l[1]}, l[2]
	case "stack", "running", "vertical", "diagonal", "herringbone", "basketweave", "hexagon":
		r.bond(w)
	default:
		r.wish(w)
	}
}

func (r *reader) bond(w []string) {
	if w[0] == "vertical" {
		r.spec.Vertical, w = true, w[1:]
	}
	if w[0] == "diagonal" {
		r.spec.Diagonal, w = true, w[1:]
	}
	r.spec.Kind = bond.Kind(w[0])
	if r.spec.Kind == bond.Running {
		if _, err := fmt.Sscanf(w[1], "%d/%d", &r.spec.Num, &r.spec.Den); err != nil {
			r.t.Fatal(err)
		}
		r.spec.Back = len(w) > 2 && w[2] == "back"
	}
}

func (r *reader) wish(w []string) {
	switch w[0] {
	case "mark":
		r.in.Mark = r.mm(w[1])
	case "center":
		r.in.Center = Line{Given: true, At: r.mm(w[1])}
		r.in.Center.Through = geom.Frame{Angle: 45 * unit.Degree}.In(geom.Point{X: r.mm(w[1])})
	case "level":
		r.in.Level = Line{Given: true, At: r.mm(w[1])}
	case "sight":
		r.in.Sights = append(r.in.Sights, Sight{"sight " + w[1], r.mm(w[1])})
	case "hidden":
		r.edge(w[1]).Hidden = r.mm(w[2])
	case "weight":
		fmt.Sscan(w[2], &r.edge(w[1]).Weight)
	case "look":
		r.in.Order, _ = judge.OrderOf([]string{strings.Join(w[1:], " ")})
	case "sliver":
		r.in.Sliver = r.mm(w[1])
	case "enough":
		r.in.Enough = r.mm(w[1])
	default:
		r.t.Fatalf("unknown entry %q", w)
	}
}

func (r *reader) opening(name string, l []unit.Length, more []string) {
	rect := geom.Rect{Min: geom.Point{X: l[0], Y: l[1]}, Max: geom.Point{X: l[2], Y: l[3]}}
	first := geom.Label(len(r.in.Edges) + 1)
	for _, s := range []string{"left", "sill", "right", "head"} {
		r.in.Edges = append(r.in.Edges, Edge{Name: name + ", " + s, Opening: true, Weight: 2})
	}
	r.open = append(r.open, geom.Region{geom.RectRing(rect, first, first+1, first+2, first+3)})
	o := Opening{Name: name, Rect: rect}
	if len(more) == 2 {
		o.Moves = r.mm(more[1])
	}
	r.in.Openings = append(r.in.Openings, o)
}

func (r *reader) finish() Input {
	m := r.room.Max
	ring := geom.Ring{{P: geom.Point{}, Edge: 2}, {P: geom.Point{X: m.X, Y: -r.fall}, Edge: 3},
		{P: geom.Point{X: m.X + r.lean, Y: m.Y}, Edge: 4}, {P: geom.Point{Y: m.Y}, Edge: 1}}
	region, err := geom.Region{ring}.Minus(r.open)
	if err != nil {
		r.t.Fatal(err)
	}
	if r.spec.Diagonal {
		region = region.In(geom.Frame{Angle: 45 * unit.Degree})
	}
	r.in.Region = region
	goods := bond.Goods{Sizes: []bond.Size{{Length: r.tile[0], Width: r.tile[1]}}, Joint: r.joint, Hex: r.spec.Kind == bond.Hexagon}
	b, found := bond.Make(r.spec, goods)
	if found.Stops() {
		r.t.Fatal(found)
	}
	r.in.Bond = b
	return r.in
}
