package web

// asks are the questions about the face and its tile.
func (v *view) asks(l *laidOut) (err error) {
	if l.Tiles, err = v.collection(tileKind); err != nil {
		return err
	}
	l.Tiles.Open = l.Tiles.Open || len(l.Goods) == 0
	if l.Face == "" {
		return nil
	}
	lay := func(label, key string) field { return v.field(label, "lay", l.Face, key) }
	l.Asks = append(l.Asks, lay("Look for", "look for").oneOf("even cuts", "fewest tiles", "fewest cuts", "lines up", "holes safe"))
	for _, d := range v.Plan.Document.Lay {
		if d.Face != l.Face {
			continue
		}
		for _, z := range d.Fields {
			of := func(label, key string) field {
				return v.field(label+" of "+z.Name, "lay", l.Face, "fields", z.Name, key)
			}
			l.Asks = append(l.Asks, of("Tile", "tile").oneOf(l.Goods...), of("Bond", "bond").like("stack, running 1/2, running 1/3, diagonal, herringbone 45"),
				of("Joint", "joint").like(v.sample("1/8", "3")).tape(), of("Upright", "upright").oneOf("yes", "no"))
		}
	}
	return nil
}

// tileKind asks for a tile as its label says it.
var tileKind = kind{"tiles", "Tiles, as their labels say", "tile", "wall tile", []ask{
	{key: "size", label: "Size: length x width x thickness", inches: "24 x 12 x 3/8", metric: "600 x 300 x 9"},
	{key: "kind", label: "Made of", choices: []string{"ceramic", "porcelain", "stone", "glass", "mosaic"}},
	{key: "joint", label: "Joint", inches: "1/8", metric: "3", tape: true},
	{key: "per box", label: "Tiles in a box", inches: "8", metric: "8"},
	{key: "turns", label: "May be turned", choices: []string{"any", "half", "none"}},
	{key: "breakage", label: "More for breakage", inches: "2", metric: "2"},
	{key: "spares", label: "Spares to keep", inches: "2", metric: "2"},
}, false}
