package document

import (
	"cmp"
	"strings"

	"dryfit/internal/diag"
)

// fixtureNames adds the names of plumbing to those that may be referred to.
func (m *Room) fixtureNames(add func(kind, name string)) {
	for _, s := range m.Stubs {
		add("stub-out", s.Name)
	}
	for _, b := range m.Basins {
		add("basin", b.Name)
	}
	for _, t := range m.Taps {
		add("tap", t.Name)
	}
	for _, w := range m.WCs {
		add("WC", w.Name)
	}
	for _, f := range m.Fittings {
		add("fitting", f.Name)
	}
}

// TopNamed returns the top of that name.
func (m *Room) TopNamed(name string) (Slab, bool) {
	for _, t := range m.Tops {
		if t.Name == name {
			return t, true
		}
	}
	return Slab{}, false
}

// BasinNamed returns the basin of that name.
func (m *Room) BasinNamed(name string) (Basin, bool) {
	for _, b := range m.Basins {
		if b.Name == name {
			return b, true
		}
	}
	return Basin{}, false
}

// StubNamed returns the stub-out of that name.
func (m *Room) StubNamed(name string) (Stub, bool) {
	for _, s := range m.Stubs {
		if s.Name == name {
			return s, true
		}
	}
	return Stub{}, false
}

// WallOfBasin is the wall that a basin is at: its own, or that of its top.
func (m *Room) WallOfBasin(b Basin) Name {
	if b.In.Text != "" {
		return b.In
	}
	t, _ := m.TopNamed(b.On.Text)
	return m.WallOf(t)
}

// WallOfTap is the wall that a tap is at: its own, or that of what it stands on.
func (m *Room) WallOfTap(t Tap) Name {
	if t.In.Text != "" {
		return t.In
	}
	if top, ok := m.TopNamed(t.On.Text); ok {
		return m.WallOf(top)
	}
	b, _ := m.BasinNamed(cmp.Or(t.On.Text, t.Serves.Text))
	return m.WallOfBasin(b)
}

// checkFixtures checks that it is told what basins and taps are on, and that places count from ends of their walls.
func (r *reader) checkFixtures(m *Room, walls map[string]Wall) {
	for _, b := range m.Basins {
		r.heldBy(b)
		r.onWall(walls, m.WallOfBasin(b), b.Across)
	}
	for _, t := range m.Taps {
		r.tapHeldBy(t)
		r.onWall(walls, m.WallOfTap(t), t.Across)
	}
	for _, f := range m.Fittings {
		r.onWall(walls, f.In, f.Across)
	}
	r.apartFromNames(m)
}

func (r *reader) heldBy(b Basin) {
	switch {
	case b.On.Text != "" && b.In.Text != "":
		r.stop("held-twice", b.In.At, "{0} is on a top and in a wall", "keep on: for a basin on a top, in: for one on a wall", diag.T(b.Name))
	case b.On.Text == "" && b.In.Text == "" && b.On.At.Line == 0 && b.In.At.Line == 0:
		r.stop("not-located", b.At, "what holds {0}?", "add on: and a top, or in: and a wall", diag.T(b.Name))
	case b.Kind == WallHungBasin && b.On.Text != "":
		r.stop("held-elsewise", b.On.At, "{0} is wall-hung and stands on a top", "write in: and its wall, or another kind", diag.T(b.Name))
	}
}

func (r *reader) tapHeldBy(t Tap) {
	switch {
	case t.Mounted == FromWall && t.On.Text != "":
		r.stop("held-elsewise", t.On.At, "{0} is mounted on the wall and stands on {1}", "write in: and its wall, or mounted: deck", diag.T(t.Name), diag.T(t.On.Text))
	case t.Mounted == Deck && t.MountedAt.Line > 0 && t.In.Text != "":
		r.stop("held-elsewise", t.In.At, "{0} is mounted on a deck and comes out of {1}", "write on: and its top, or mounted: wall", diag.T(t.Name), diag.T(t.In.Text))
	}
}

// apartFromNames: a name stands in the words that lead to what may move, where > parts words.
func (r *reader) apartFromNames(m *Room) {
	for _, b := range m.Basins {
		r.wordName(b.Name, b.At)
	}
	for _, t := range m.Taps {
		r.wordName(t.Name, t.At)
	}
	for _, w := range m.WCs {
		r.wordName(w.Name, w.At)
	}
}

func (r *reader) wordName(name string, at diag.Place) {
	if strings.Contains(name, ">") {
		r.stop("name-reserved", at, "{0} has > in it, which parts the words of a path", "give it another name", diag.T(short(name)))
	}
}
