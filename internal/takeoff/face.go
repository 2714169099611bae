package takeoff

import (
	"dryfit/internal/catalog"
	"dryfit/internal/diag"
	"dryfit/internal/document"
	"dryfit/internal/rule"
	"dryfit/internal/site"
	"dryfit/internal/tiling"
	"dryfit/internal/unit"
)

// work is one face with everything that its lines are made from.
type work struct {
	tiling tiling.Face
	face   site.Face
	lay    document.Lay
	out    Face
}

// face reckons all that setting one face takes.
func (m *maker) face(f tiling.Face) {
	w := &work{tiling: f, lay: m.lay(f.Name), out: Face{Name: f.Name}}
	w.face, _ = m.room.Face(f.Name)
	if !w.laid() {
		return
	}
	m.bed(w)
	m.joints(w)
	m.sealer(w)
	m.weigh(w)
	m.out.Faces = append(m.out.Faces, w.out)
}

// laid: some field of the face has pieces.
func (w *work) laid() bool {
	for _, f := range w.tiling.Fields {
		if len(f.Chosen().Pieces) > 0 {
			return true
		}
	}
	return false
}

// area is what the tile of a field covers.
func area(f tiling.Field) unit.Area {
	var sum unit.Area
	for _, p := range f.Chosen().Pieces {
		sum += p.Area
	}
	return sum
}

// edge is the longest edge of a field's tile; of a mosaic that of a chip.
func (m *maker) edge(f tiling.Field) unit.Length {
	if t := m.tile(f.Tile); t.Kind == document.Mosaic && t.Chip.Known {
		return t.Chip.V
	}
	var longest unit.Length
	for _, s := range f.Sizes {
		longest = max(longest, s.Length, s.Width)
	}
	return longest
}

// bed reckons the mortar: what the trowel leaves, the skim on the backs, and what fills hollows.
func (m *maker) bed(w *work) {
	o := &w.out
	m.trowel(w)
	o.Comb = Comb(o.Trowel)
	o.Butter = w.lay.BackButter.Or(m.butters(w))
	if o.Butter {
		o.Skim = catalog.Skim
	}
	for _, f := range w.tiling.Fields {
		o.Area += area(f)
	}
	o.Hollow = m.hollow(w)
	comb, skim := catalog.Spread(o.Area, o.Comb), catalog.Spread(o.Area, o.Skim)
	o.Bed = comb + skim + o.Hollow
	g, named := m.good(document.Mortar, o.Name, anyGood)
	o.Mortar = g.Name
	line := func(what string, v unit.Volume, a unit.Area) {
		m.add(document.Mortar, "mortar", g, named, part{Part: Part{Face: o.Name, For: what, Amount: unit.Fills(v)}, typical: &catalog.DryMortar, area: a, trowel: o.Trowel})
	}
	line("bed", comb, o.Area)
	line("back-butter", skim, 0)
	line("hollows", o.Hollow, 0)
	m.contact(w)
	m.whiteBed(w, g, named)
	m.shares(w)
}

// trowel is the person's own, or one proposed for the largest tile of the face.
func (m *maker) trowel(w *work) {
	if w.lay.Trowel.Known {
		w.out.Trowel = w.lay.Trowel.V
		return
	}
	var longest unit.Length
	ribbed := false
	for _, f := range w.tiling.Fields {
		longest = max(longest, m.edge(f))
		ribbed = ribbed || m.tile(f.Tile).Ribbed.Or(false)
	}
	var source string
	w.out.Trowel, source = propose(longest, ribbed, m.doc.Units)
	w.out.Proposed = true
	m.assume(w.lay.At, source, "{0}: trowel with {1}, for tile of {2} and its back", diag.T(w.out.Name), diag.T(TrowelWords(w.out.Trowel, m.doc.Units)), diag.L(longest))
}

// TrowelWords names a trowel as a document writes it.
func TrowelWords(t document.Trowel, s unit.System) string {
	style := unit.DefaultStyle(s).Fine()
	words := t.Notch.String() + " notches " + style.Bare(t.Width) + " x " + style.Bare(t.Depth)
	if t.Tooth > 0 {
		words += " x " + style.Bare(t.Tooth)
	}
	return words + " " + s.String()
}

// butters: a large edge, natural stone or a wet place asks for mortar on the back too.
func (m *maker) butters(w *work) bool {
	yes := m.wet(w)
	for _, f := range w.tiling.Fields {
		yes = yes || m.edge(f) > rule.BackButter.Limit || m.tile(f.Tile).Kind == document.Stone
	}
	if yes {
		m.assume(w.lay.At, rule.BackButter.Cite(), "{0}: the backs are skimmed with {1} of mortar", diag.T(w.out.Name), diag.F(catalog.Skim))
	}
	return yes
}

func (m *maker) wet(w *work) bool { return w.lay.Wet.Or(false) || m.doc.Climate.Exterior.Or(false) }

// contactLeast is the share of a back that must be in mortar.
func (m *maker) contactLeast(w *work) rule.Rule {
	if m.wet(w) {
		return rule.CoverWet
	}
	for _, f := range w.tiling.Fields {
		if m.tile(f.Tile).Kind == document.Stone {
			return rule.CoverStone
		}
	}
	return rule.CoverDry
}

// contact holds what the trowel leaves against the bed that is planned: less mortar than that leaves hollows behind the tile.
func (m *maker) contact(w *work) {
	o, least := &w.out, m.contactLeast(w)
	o.ContactLeast = least.Ratio
	bed := w.face.BedLeast
	if bed <= 0 {
		m.found(diag.Unchecked, "contact-unknown", w.lay.At, "not checked: contact of mortar and tile on {0}, the thickness of its bed is missing", "write it in the build-up: bed 3/16", diag.T(o.Name))
		return
	}
	o.ContactKnown = true
	o.Contact = min(unit.One, unit.Ratio(int64(o.Comb+o.Skim)*int64(unit.One)/int64(bed)))
	if o.Contact < least.Ratio {
		m.found(diag.Look, "contact-short", w.lay.At, "{0}: the trowel leaves {1} of mortar, {2} of the bed of {3}; {4} must be in contact ({5})",
			"take a larger notch, back-butter, or plan a thinner bed; lift a tile now and then to see", diag.T(o.Name), diag.F(o.Comb+o.Skim), diag.Percent(o.Contact/10_000*10_000), diag.F(bed),
			diag.Percent(least.Ratio), diag.T(least.Cite())).Rule = least.ID
	}
	if over := o.Comb - bed; over > proud {
		m.found(diag.Look, "bed-proud", w.lay.At, "{0}: the trowel leaves {1} of mortar where a bed of {2} is planned: the tile will stand out, and what is reckoned from its face will not fit",
			"take a smaller notch, or write that bed in the build-up", diag.T(o.Name), diag.F(o.Comb), diag.F(bed))
	}
}

// proud is how much more than the planned bed a trowel may leave: so much is pressed out in beating a tile in (our own judgment).
const proud = unit.Inch / 16

// hollow is the mortar that makes a plane of a wall that is none: the mean of the bed over the face, less the bed at its thinnest.
func (m *maker) hollow(w *work) unit.Volume {
	f := w.face
	if f.BedMost <= f.BedLeast {
		return 0
	}
	i := indexOf(m.doc.Walls, func(d document.Wall) bool { return d.Name == f.Name })
	if i < 0 {
		return 0
	}
	wall := m.doc.Walls[i]
	mean := f.BedThick - f.BedLeast - twist(wall).MulDiv(1, 4) - meanProfile(wall.Profile, f.Board.Bounds().W())
	return catalog.Spread(w.out.Area, max(0, mean))
}

// twist is the difference of the leans at the two ends.
func twist(w document.Wall) unit.Length {
	if len(w.Lean) != 2 || !w.Lean[0].Value.Known || !w.Lean[1].Value.Known {
		return 0
	}
	return (w.Lean[0].Value.V - w.Lean[1].Value.V).Abs()
}

// meanProfile is the mean height of a profile over a wall's width; at both ends it is nothing, and a reading beyond counts there.
func meanProfile(profile []document.Station, width unit.Length) unit.Length {
	if width <= 0 {
		return 0
	}
	var x, y unit.Length
	sum := 0.0
	step := func(nx, ny unit.Length) {
		sum += float64(nx-x) * float64(y+ny) / 2
		x, y = nx, ny
	}
	for _, p := range profile {
		step(min(max(x, p.X), width), p.Value)
	}
	step(width, 0)
	return unit.FromFloat(sum / float64(width))
}

func indexOf[T any](list []T, is func(T) bool) int {
	for i, x := range list {
		if is(x) {
			return i
		}
	}
	return -1
}

// whiteBed: behind light stone and glass only white mortar stays unseen.
func (m *maker) whiteBed(w *work, g document.Good, named bool) {
	for _, f := range w.tiling.Fields {
		t := m.tile(f.Tile)
		light := t.Light.Or(t.Kind == document.Glass)
		switch {
		case !light:
		case named && g.Color.Known && !white(g.Color.V):
			m.found(diag.Look, "mortar-shows", g.Color.At, "{0} is {1}: behind {2} it can show through or stain", "take white mortar", diag.T(g.Name), diag.T(g.Color.V), diag.T(t.Name))
		case !named || !g.Color.Known:
			m.found(diag.Unchecked, "mortar-color", f.At, "not checked: whether the mortar shows through {0}; its color is missing", "take white mortar, and write color: white", diag.T(t.Name))
		}
	}
}

// shares divides the bed over the pieces, so that a day's batches can be formed. Hollows are spread evenly.
func (m *maker) shares(w *work) {
	thick := w.out.Comb + w.out.Skim
	if w.out.Area > 0 {
		thick += unit.FromMM(float64(w.out.Hollow) / (w.out.Area.M2() * 1e6))
	}
	for _, f := range w.tiling.Fields {
		for _, p := range f.Chosen().Pieces {
			m.at[w.out.Name+"\n"+p.Address] = len(m.out.Pieces)
			m.out.Pieces = append(m.out.Pieces, Piece{Face: w.out.Name, Address: p.Address, Area: p.Area, Mortar: catalog.Spread(p.Area, thick)})
		}
	}
}
