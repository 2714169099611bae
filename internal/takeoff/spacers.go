package takeoff

import (
	"dryfit/internal/catalog"
	"dryfit/internal/document"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// spacers counts them by kind from the joints: where four pieces meet a cross, where three meet a tee, and where a joint runs
// out at the edge of the field a straight one. Under the first course go two wedges to a tile (common practice).
func (m *maker) spacers(w *work, f tiling.Field, c census) {
	if f.Joint <= 0 {
		return
	}
	size := unit.DefaultStyle(m.doc.Units).Fine().Format(f.Joint)
	for _, k := range []struct {
		kind document.GoodKind
		what string
		n    int
	}{{document.CrossSpacers, "cross spacers ", c.crosses}, {document.TeeSpacers, "tee spacers ", c.tees}, {document.Wedges, "straight spacers or wedges ", c.straights}} {
		g, named := m.good(k.kind, w.out.Name, forJoint(f.Joint))
		m.add(k.kind, called(named, k.kind, k.what+size), g, named, part{Part: Part{Face: w.out.Name, For: "joints of " + f.Name, Amount: unit.Count(k.n)}}).back = true
	}
	if n := m.onFloor(w, f); n > 0 {
		g, named := m.good(document.Wedges, w.out.Name, forJoint(f.Joint))
		m.add(document.Wedges, called(named, document.Wedges, "straight spacers or wedges "+size), g, named, part{Part: Part{Face: w.out.Name, For: "under the first course of " + f.Name, Amount: unit.Count(2 * n)}}).back = true
	}
}

// called is what a line is called: a good that serves joints of several widths has one line.
func called(named bool, kind document.GoodKind, sized string) string {
	if named {
		return kind.String()
	}
	return sized
}

// onFloor counts the pieces of a wall that stand on the floor's joint.
func (m *maker) onFloor(w *work, f tiling.Field) int {
	high, ok := floorLine(w, f)
	if !ok || w.face.Kind != site.WallFace {
		return 0
	}
	n := 0
	for _, p := range f.Chosen().Pieces {
		if p.OnFace.Bounds().Min.Y <= high {
			n++
		}
	}
	return n
}

// floorLine is the highest point of a field's edge along the floor.
func floorLine(w *work, f tiling.Field) (high unit.Length, ok bool) {
	for _, r := range f.Region {
		for i, v := range r {
			if e, known := edgeOf(w.tiling.Edges, v.Edge); known && e.Kind == site.AtFloor {
				y := max(v.P.Y, r[(i+1)%len(r)].P.Y)
				if !ok || y > high {
					high, ok = y, true
				}
			}
		}
	}
	return high, ok
}

// clips counts leveling clips where the document has them, and gives each to the piece that is set last of its two.
func (m *maker) clips(w *work, f tiling.Field, c census) {
	g, named := m.good(document.ClipStems, w.out.Name, forJoint(f.Joint))
	if !named {
		return
	}
	turn := map[string]int{}
	for i, a := range w.tiling.Setting {
		turn[a] = i
	}
	pieces, total := f.Chosen().Pieces, 0
	for _, s := range c.shared {
		n := clips(s.length, g.TileEdge.Or(catalog.ClipEdge))
		total += n
		later := pieces[s.a].Address
		if turn[pieces[s.b].Address] > turn[later] {
			later = pieces[s.b].Address
		}
		m.clip(w.out.Name, later, n)
	}
	w.out.Clips += total
	m.add(document.ClipStems, "clip stems", g, named, part{Part: Part{Face: w.out.Name, For: "joints of " + f.Name, Amount: unit.Count(total)}})
	if caps, ok := m.good(document.ClipCaps, w.out.Name, anyGood); ok {
		m.add(document.ClipCaps, "clip caps", caps, true, part{Part: Part{Face: w.out.Name, For: "joints of " + f.Name, Amount: unit.Count(total)}}).back = true
	}
}

func (m *maker) clip(face, address string, n int) {
	if i, ok := m.at[face+"\n"+address]; ok {
		m.out.Pieces[i].Clips += n
	}
}
