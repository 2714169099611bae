package report

import (
	"slices"
	"strings"

	"dryfit/internal/diag"
	"dryfit/internal/figure"
	"dryfit/internal/fit"
	places "dryfit/internal/place"
	"dryfit/internal/plan"
	"dryfit/internal/unit"
)

// Mark is one place along a line that a drawing and its table both tell: a height over the level line, or a distance.
type Mark struct {
	At   unit.Length
	Name string
	Path string // of what it belongs to
}

// marks collects those that are known, and what is missing for the others.
type marks struct {
	list    []Mark
	missing []string
}

func (m *marks) add(f figure.Figure, name string, at diag.Place) {
	if !f.Known() {
		m.missing = append(m.missing, f.Missing...)
		return
	}
	m.list = append(m.list, Mark{f.V, name, at.Path})
}

// sorted gives the marks in their order, and in words what is missing.
func (m *marks) sorted() ([]Mark, []string) {
	slices.SortStableFunc(m.list, func(a, b Mark) int { return int(sign(a.At - b.At)) })
	slices.Sort(m.missing)
	var words []string
	for _, path := range slices.Compact(m.missing) {
		words = append(words, fit.Words(path))
	}
	return m.list, words
}

func sign(l unit.Length) unit.Length {
	switch {
	case l < 0:
		return -1
	case l > 0:
		return 1
	}
	return 0
}

// FitWalls are the walls on or before which something is placed, in the document's order.
func FitWalls(p plan.Plan) []string {
	var out []string
	for _, w := range p.Fit.Places.Walls {
		if heights, _ := HeightsOn(p, w.Name); len(heights) > 0 {
			out = append(out, w.Name)
		}
	}
	return out
}

// HeightsOn are the heights over the level line of all that is placed on or before a wall, the lowest first, and what is missing for the rest.
func HeightsOn(p plan.Plan, wall string) ([]Mark, []string) {
	var m marks
	all := p.Fit.Places
	for _, c := range all.Cabinets {
		if c.Wall == wall {
			if c.Doc.Bottom.Known {
				m.add(c.Bottom, c.Name+", bottom", c.Doc.At)
			}
			m.add(c.Top, c.Name+", top", c.Doc.At)
		}
	}
	for _, t := range all.Tops {
		if t.Wall == wall {
			m.add(t.Surface, t.Name, t.Doc.At)
		}
	}
	for _, b := range all.Basins {
		if b.Wall == wall {
			m.add(b.Rim, b.Name+", rim", b.Doc.At)
		}
	}
	for _, t := range all.Taps {
		if t.Wall == wall {
			m.add(t.OutletY, t.Name+", outlet", t.Doc.At)
		}
	}
	m.pipes(all, wall)
	for _, c := range all.WCs {
		if c.Wall == wall {
			m.add(c.Floor.Add(c.Seat), c.Name+", seat", c.Doc.At)
		}
	}
	m.hung(all, wall)
	return m.sorted()
}

// pipes are what comes out of a wall.
func (m *marks) pipes(all places.Plan, wall string) {
	for _, s := range all.Stubs {
		if s.Wall == wall {
			m.add(s.Y, s.Name, s.Doc.At)
		}
	}
	for _, b := range all.Boxes {
		if b.Wall == wall {
			m.add(b.Y, b.Name+", middle", b.Doc.At)
		}
	}
}

// hung are fittings: what is told by its edges gives both, a bar its middle.
func (m *marks) hung(all places.Plan, wall string) {
	for _, f := range all.Fittings {
		switch {
		case f.Wall != wall || wall == "":
		case f.Doc.Height.Known:
			m.add(f.Bottom, f.Name+", bottom", f.Doc.At)
			m.add(f.Top, f.Name+", top", f.Doc.At)
		default:
			m.add(f.Y, f.Name+", middle", f.Doc.At)
		}
	}
}

// AcrossOn are the places along a wall of all that is placed on or before it, from the finished wall at its left end, and what is missing for
// the rest.
func AcrossOn(p plan.Plan, wall string) ([]Mark, []string) {
	var m marks
	all := p.Fit.Places
	w, ok := all.Wall(wall)
	if !ok {
		return nil, nil
	}
	for _, c := range all.Cabinets {
		if c.Wall == wall {
			m.add(c.Left, c.Name+", left", c.Doc.At)
			m.add(c.Right, c.Name+", right", c.Doc.At)
		}
	}
	for _, b := range all.Basins {
		if b.Wall == wall {
			m.add(b.X, b.Name+", waste", b.Doc.At)
		}
	}
	for _, t := range all.Taps {
		if t.Wall == wall {
			m.add(t.X, t.Name, t.Doc.At)
		}
	}
	for _, c := range all.WCs {
		if c.Wall == wall {
			m.add(c.X, c.Name+", center", c.Doc.At)
		}
	}
	m.alongWall(all, wall)
	list, missing := m.sorted()
	left, _ := FinishedEnds(p, w)
	for i := range list {
		list[i].At -= left
	}
	return list, missing
}

func (m *marks) alongWall(all places.Plan, wall string) {
	for _, s := range all.Stubs {
		if s.Wall == wall {
			m.add(s.X, s.Name, s.Doc.At)
		}
	}
	for _, b := range all.Boxes {
		if b.Wall == wall {
			m.add(b.X, b.Name+", middle", b.Doc.At)
		}
	}
	for _, f := range all.Fittings {
		if f.Wall == wall {
			m.add(f.X, f.Name+", middle", f.Doc.At)
		}
	}
}

// FinishedEnds are where a wall's finished face ends at its two corners, in its own frame.
func FinishedEnds(p plan.Plan, w places.Wall) (left, right unit.Length) {
	left, _ = w.Frame.Of(p.Room.Survey.Corner(w.Face.LeftCorner).Finished)
	right, _ = w.Frame.Of(p.Room.Survey.Corner(w.Face.RightCorner).Finished)
	return left, right
}

// SideHeights are the heights over the level line in a section through a basin, the lowest first, and what is missing for the rest.
func SideHeights(p plan.Plan, basin string) ([]Mark, []string) {
	var m marks
	all := p.Fit.Places
	b, ok := all.Basin(basin)
	if !ok {
		return nil, nil
	}
	if t, on := all.Top(b.Top); on {
		if c, under := all.Cabinet(t.Doc.On.V); under && c.Doc.Bottom.Known {
			m.add(c.Bottom, "under the "+c.Name, c.Doc.At)
		}
		m.add(t.Underside, "under the top", t.Doc.At)
		m.add(t.Surface, "top", t.Doc.At)
	}
	m.add(b.Bottom, "bowl, at the waste", b.Doc.At)
	m.add(b.Rim, "rim", b.Doc.At)
	for _, t := range all.Taps {
		if t.Doc.Serves.Text == basin {
			m.add(t.OutletY, "tap's outlet", t.Doc.At)
		}
	}
	for _, w := range all.Wastes {
		if w.Basin == basin {
			m.add(w.TailY, "tailpiece ends", w.Doc.At)
		}
	}
	for _, s := range sideStubs(all, basin) {
		m.add(s.Y, s.Name, s.Doc.At)
	}
	return m.sorted()
}

// sideStubs are the pipes that a basin's waste and the stops of its taps end on.
func sideStubs(all places.Plan, basin string) []places.Stub {
	var names []string
	for _, w := range all.Wastes {
		if w.Basin == basin {
			names = append(names, w.Stub)
		}
	}
	for _, v := range all.Stops {
		for _, t := range all.Taps {
			if v.Serves == t.Name && t.Doc.Serves.Text == basin {
				names = append(names, v.Stub)
			}
		}
	}
	var out []places.Stub
	for _, s := range all.Stubs {
		if slices.Contains(names, s.Name) && !s.InFloor {
			out = append(out, s)
		}
	}
	return out
}

// SideOffs are the distances off the finished wall in a section through a basin, the nearest first, and what is missing for the rest.
func SideOffs(p plan.Plan, basin string) ([]Mark, []string) {
	var m marks
	all := p.Fit.Places
	b, ok := all.Basin(basin)
	if !ok {
		return nil, nil
	}
	half := b.Deep.Half()
	m.add(b.MidOff.Sub(half), "basin's back", b.Doc.At)
	m.add(b.Off, "waste", b.Doc.At)
	m.add(b.MidOff.Add(half), "basin's front", b.Doc.At)
	if t, on := all.Top(b.Top); on {
		m.add(t.Depth, "top's front", t.Doc.At)
		if c, under := all.Cabinet(t.Doc.On.V); under {
			m.add(c.Depth, c.Name+"'s front", c.Doc.At)
		}
	}
	for _, t := range all.Taps {
		if t.Doc.Serves.Text == basin {
			m.add(t.OutletOff, "tap's outlet", t.Doc.At)
		}
	}
	for _, j := range p.Fit.Jets {
		if j.Basin == basin {
			t, _ := all.Tap(j.Tap)
			m.add(figure.Number(j.Nearest), "water, nearest", t.Doc.At)
			m.add(figure.Number(j.Farthest), "water, farthest", t.Doc.At)
		}
	}
	return m.sorted()
}

// HeightTable tells heights from the finished floor, where that is known, and from the level line.
func HeightTable(p plan.Plan, title string, all []Mark) Table {
	s := p.Style
	t := Table{Title: title, Columns: numbers(text("What", "Above the finished floor", "From the level line"), 1, 2), Empty: "No height is known."}
	for _, m := range slices.Backward(all) {
		over := "not known"
		if p.Room.FinishedKnown {
			over = s.Format(m.At - p.Room.FinishedFloor)
		}
		t.Rows = append(t.Rows, []string{m.Name, over, level(s, m.At)})
	}
	return t
}

// OffTable tells distances off or along a finished wall.
func OffTable(p plan.Plan, title, from string, all []Mark) Table {
	t := Table{Title: title, Columns: numbers(text("What", from), 1), Empty: "No distance is known."}
	for _, m := range all {
		t.Rows = append(t.Rows, []string{m.Name, p.Style.Format(m.At)})
	}
	return t
}

// Stands is where fixtures and fittings stand in the plan: their center lines square off the finished walls at the ends of their wall, and how
// far they come into the room.
func Stands(p plan.Plan) Table {
	t := Table{Title: "Where things stand, on the finished faces", Columns: numbers(text("What", "Wall", "Center from the left end", "Center from the right end", "Off the wall to", "Waste or outlet off the wall"), 2, 3, 4, 5),
		Empty: "Nothing is placed yet."}
	all := p.Fit.Places
	row := func(name, wall string, x, front, waste figure.Figure) {
		w, ok := all.Wall(wall)
		if !ok {
			t.Rows = append(t.Rows, []string{name, wall, "not known", "not known", said(p.Style, front), said(p.Style, waste)})
			return
		}
		left, right := FinishedEnds(p, w)
		t.Rows = append(t.Rows, []string{name, wall, said(p.Style, x.Plus(-left)), said(p.Style, x.Neg().Plus(right)), said(p.Style, front), said(p.Style, waste)})
	}
	for _, c := range all.Cabinets {
		row(c.Name, c.Wall, c.Left.Add(c.Right).Half(), c.Depth, figure.Missing(""))
	}
	for _, b := range all.Basins {
		row(b.Name, b.Wall, b.X, b.MidOff.Add(b.Deep.Half()), b.Off)
	}
	for _, c := range all.WCs {
		row(c.Name, c.Wall, c.X, c.Front, c.Off)
	}
	for i, r := range t.Rows {
		if slices.ContainsFunc(all.Cabinets, func(c places.Cabinet) bool { return c.Name == r[0] }) {
			t.Rows[i][5] = ""
		}
	}
	return t
}

func said(s unit.Style, f figure.Figure) string {
	if !f.Known() {
		return "not known"
	}
	return s.Format(f.V)
}

// CheckTableOf is the table of checks of some things: what hangs on any of the document's paths.
func CheckTableOf(p plan.Plan, title string, paths ...string) Table {
	t := checkTable(Checks(p), func(l CheckLine) bool {
		return slices.ContainsFunc(paths, func(path string) bool { return l.Path == path || strings.HasPrefix(l.Path, path+" > ") })
	})
	t.Title, t.Empty = title, "Nothing of it is checked."
	return t
}

// Around are the paths of a basin and of all that belongs to it: its top and cabinet, taps, wastes, stops.
func Around(p plan.Plan, basin string) []string {
	all := p.Fit.Places
	b, ok := all.Basin(basin)
	if !ok {
		return nil
	}
	out := []string{b.Doc.At.Path}
	if t, on := all.Top(b.Top); on {
		out = append(out, t.Doc.At.Path)
	}
	for _, t := range all.Taps {
		if t.Doc.Serves.Text != basin {
			continue
		}
		out = append(out, t.Doc.At.Path)
		for _, v := range all.Stops {
			if v.Serves == t.Name {
				out = append(out, v.Doc.At.Path)
			}
		}
	}
	for _, w := range all.Wastes {
		if w.Basin == basin {
			out = append(out, w.Doc.At.Path)
		}
	}
	return out
}
