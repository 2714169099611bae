package document

import "dryfit/internal/diag"

// woodNames adds the names of wood work to those that may be referred to.
func (m *Room) woodNames(add func(kind, name string)) {
	for _, s := range m.Stock {
		add("stock", s.Name)
	}
	for _, c := range m.Cabinets {
		add("cabinet", c.Name)
	}
	for _, t := range m.Tops {
		add("top", t.Name)
	}
	for _, t := range m.Trim {
		add("trim", t.Name)
	}
}

// Cabinet returns the cabinet of that name.
func (m *Room) Cabinet(name string) (Cabinet, bool) {
	for _, c := range m.Cabinets {
		if c.Name == name {
			return c, true
		}
	}
	return Cabinet{}, false
}

// StockNamed returns the good of that name.
func (m *Room) StockNamed(name string) (Stock, bool) {
	for _, s := range m.Stock {
		if s.Name == name {
			return s, true
		}
	}
	return Stock{}, false
}

// WallOf is the wall that a top is on: its own, or that of its cabinet.
func (m *Room) WallOf(t Slab) Name {
	if t.In.Text != "" {
		return t.In
	}
	c, _ := m.Cabinet(t.On.V)
	return c.In
}

// checkTop checks that it is told what a top lies on, and that its places count from ends of that wall.
func (r *reader) checkTop(m *Room, walls map[string]Wall, t Slab) {
	in := m.WallOf(t)
	if !t.On.Known && !t.On.Unknown && t.In.Text == "" {
		r.stop("not-located", t.At, "what does {0} lie on?", "add on: and a cabinet, or in: and a wall", diag.T(t.Name))
	}
	r.onWall(walls, in, t.Across)
	r.onWall(walls, in, t.Recess.Across)
	for _, c := range t.CutOuts {
		r.onWall(walls, in, c.Across)
	}
}

// ColumnCount is how many columns a cabinet has: as many as are told, or as its fronts and shelves name.
func (c Cabinet) ColumnCount() int {
	if len(c.Columns) > 0 {
		return len(c.Columns)
	}
	n := 1
	for _, f := range c.Fronts {
		n = max(n, f.Column.Or(1))
	}
	for _, s := range c.Shelves {
		n = max(n, s.Column.Or(1))
	}
	return n
}
